package evenhand.terminal.compare;

import evenhand.answers.Criterion;
import evenhand.choice.Comparison;
import evenhand.choice.Comparison.Difference;
import evenhand.forms.Table;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.OneScreen;
import evenhand.terminal.reply.EachWay;
import evenhand.turn.Direction;
import evenhand.turn.PacesAnswer;
import evenhand.words.BothWays;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import evenhand.words.compare.ComparisonVerdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The verdict of {@code compare} on one screen: what a driver would notice and why, then the few figures that matter. */
final class ComparePage {
    private static final int MOST_LINES_EACH = 5;

    private final Units units;
    private final Console console;

    ComparePage(Console console, Units units) {
        this.console = console;
        this.units = units;
    }

    String write(CompareReply compared) {
        int setups = compared.setups().size() + 1;
        OneScreen page = new OneScreen(
                console,
                setups,
                "--full shows every figure and every share"
                        + (compared.circles().size() > 1 ? ", on each circle." : "."));
        page.title(
                compared.scenario().title(),
                ": compared with " + compared.base().name() + "; " + EachWay.trial(compared.trial(), units));
        EachWay.warnings(compared.circles(), page, units);
        page.cautions(compared.asked());
        compared.trial().load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        List<List<String>> table = table(compared);
        String heading = heading(compared);
        int below = EachWay.answered(compared.setups()).isEmpty()
                ? 0
                : Math.min(page.room(), 1 + page.lines("", heading) + table.size());
        page.reserve(below);
        int phrases = compared.circles().stream()
                .mapToInt(circle -> circle.setups().size())
                .sum();
        int atMost = Math.max(1, Math.min(MOST_LINES_EACH, page.room() / phrases));
        for (EachWay.Circle<CompareReply.Answered> circle : compared.circles()) {
            String on = compared.circles().size() > 1 ? " on " + units.radius(circle.radius()) : "";
            for (EachWay<CompareReply.Answered> one : circle.setups()) {
                List<String> said = phrases(one);
                String brief = ComparisonVerdict.brief(compared(one), units).orElse(said.get(0));
                page.phrases(one.setup().name() + on + ": ", said, brief, atMost);
            }
        }
        page.release(below);
        if (below > 0) {
            page.paragraph("", "");
            page.paragraph("", heading);
            page.columns(table);
        }
        page.notGiven(compared.asked());
        return page.text();
    }

    private String heading(CompareReply compared) {
        return "Understeer near the limit and at " + Units.pace(brisk(compared))
                + ", lean that each further g adds there"
                + (isApart(compared) ? " " + BothWays.turning(compared.trial().direction()) : "") + ", in "
                + units.of(Criterion.UNDERSTEER).symbol() + "; limit in g; differences from the base"
                + (compared.circles().size() > 1
                        ? ", " + units.radius(compared.trial().radius())
                        : "") + ":";
    }

    private static double brisk(CompareReply compared) {
        return compared.trial().paces().stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
    }

    /** Why there is no answer, or what would be noticed. */
    private List<String> phrases(EachWay<CompareReply.Answered> one) {
        Map<Direction, Comparison> ways = compared(one);
        List<String> phrases = new ArrayList<>();
        for (EachWay.Way<CompareReply.Answered> way : one.ways()) {
            way.noAnswer().ifPresent(why -> phrases.add(one.turning(way) + "no answer, " + why.text()));
        }
        if (ways.values().stream().anyMatch(comparison -> comparison.changes().isEmpty())) {
            phrases.add("nothing is changed, both are the same car");
        } else if (!ways.isEmpty()) {
            phrases.addAll(ComparisonVerdict.phrases(ways, units));
        }
        return phrases;
    }

    /** What was compared each way round, in order. */
    private static Map<Direction, Comparison> compared(EachWay<CompareReply.Answered> one) {
        Map<Direction, Comparison> ways = new LinkedHashMap<>();
        for (EachWay.Way<CompareReply.Answered> way : one.ways()) {
            way.found().ifPresent(answered -> ways.put(way.direction(), answered.comparison()));
        }
        return ways;
    }

    /** Whether the ways round are told apart. */
    private static boolean isApart(CompareReply compared) {
        return compared.trial().ways().isBoth()
                && compared.setups().stream().anyMatch(one -> one.other().isPresent());
    }

    /** The base as it is, the others by how much they differ from it; two columns where the ways are not alike. */
    private List<List<String>> table(CompareReply compared) {
        boolean both = isApart(compared);
        List<List<String>> rows = new ArrayList<>();
        List<String> heads = new ArrayList<>(List.of(""));
        List<String> below = new ArrayList<>(List.of(""));
        List<String> base = new ArrayList<>(List.of(compared.base().name()));
        List<EachWay<CompareReply.Answered>> answered = EachWay.answered(compared.setups());
        for (Criterion criterion : ComparisonVerdict.MATTERS) {
            for (int way : columns(criterion, both)) {
                Optional<Difference> first = answered.stream()
                        .flatMap(one -> difference(one, way, criterion).stream())
                        .findFirst();
                heads.add(head(criterion, both, compared));
                below.add(both ? below(criterion, way, compared) : "");
                base.add(first.map(one -> Numbers.fixed(units.of(criterion).fromSi(one.base()), criterion.digits()))
                        .orElse(Table.NOTHING));
            }
        }
        heads.add("goes first");
        below.add("");
        base.add(answered.isEmpty() ? Table.NOTHING : goesFirst(answered.get(0), CompareReply.Answered::baseTurns));
        rows.add(heads);
        if (both) {
            rows.add(below);
        }
        rows.add(base);
        for (EachWay<CompareReply.Answered> one : answered) {
            List<String> row = new ArrayList<>(List.of(one.setup().name()));
            for (Criterion criterion : ComparisonVerdict.MATTERS) {
                for (int way : columns(criterion, both)) {
                    row.add(difference(one, way, criterion)
                            .map(found ->
                                    Numbers.signed(units.of(criterion).fromSi(found.difference()), criterion.digits()))
                            .orElse(Table.NOTHING));
                }
            }
            row.add(goesFirst(one, CompareReply.Answered::turns));
            rows.add(row);
        }
        return rows;
    }

    /** The lean differs little between the ways, and has one column, of the first. */
    private static List<Integer> columns(Criterion criterion, boolean both) {
        return both && !criterion.equals(Criterion.ROLL_GRADIENT) ? List.of(0, 1) : List.of(0);
    }

    private static String head(Criterion criterion, boolean both, CompareReply compared) {
        if (criterion.equals(Criterion.LIMIT)) {
            return "limit";
        }
        if (criterion.equals(Criterion.ROLL_GRADIENT)) {
            return both ? "lean" : "lean " + Units.pace(brisk(compared));
        }
        return criterion.equals(Criterion.NEAR_UNDERSTEER) ? "near" : Units.pace(brisk(compared));
    }

    /** Below the head: which way it is; of the lean, whose way the line above tells, at which pace. */
    private static String below(Criterion criterion, int way, CompareReply compared) {
        return criterion.equals(Criterion.ROLL_GRADIENT)
                ? Units.pace(brisk(compared))
                : compared.trial().ways().directions().get(way).key();
    }

    private static Optional<Difference> difference(EachWay<CompareReply.Answered> one, int way, Criterion criterion) {
        return one.ways()
                .get(Math.min(way, one.ways().size() - 1))
                .found()
                .flatMap(answered -> ComparisonVerdict.of(answered.comparison(), criterion));
    }

    private static String goesFirst(
            EachWay<CompareReply.Answered> one, Function<CompareReply.Answered, PacesAnswer.Paces> turn) {
        List<String> ends = one.ways().stream()
                .flatMap(way -> way.found().stream())
                .map(answered -> LimitWords.first(turn.apply(answered).limit()))
                .distinct()
                .toList();
        return String.join("/", ends);
    }
}
