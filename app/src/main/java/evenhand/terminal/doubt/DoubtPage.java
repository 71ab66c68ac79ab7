package evenhand.terminal.doubt;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.doubt.Doubt;
import evenhand.doubt.Spread;
import evenhand.forms.Table;
import evenhand.scenario.Setup;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.OneScreen;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.turn.Direction;
import evenhand.words.AimText;
import evenhand.words.JudgedWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.doubt.DoubtVerdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The verdict of {@code doubt} on one screen: what is sure, the intervals of the figures that matter, what to measure next. */
final class DoubtPage {
    /** More set-ups stand with the interval of both ways together. */
    private static final int APART = 4;

    private static final int LINES_EACH = 2;
    private static final String LESS_FIRST = " − first";

    private final Console console;
    private final Units units;

    DoubtPage(Console console, Units units) {
        this.console = console;
        this.units = units;
    }

    String write(DoubtReply doubted) {
        OneScreen page = new OneScreen(
                console,
                doubted.setups().size(),
                "--full shows every figure and what each doubt comes from"
                        + (doubted.circles().size() > 1 ? ", on each circle." : "."));
        page.title(
                doubted.scenario().title(),
                ": " + doubted.samples() + " sampled cars; " + EachWay.trial(doubted.trial(), units));
        EachWay.warnings(doubted.eachWay(), page, units);
        List<Setup> asked = doubted.setups().stream().map(SetupAnswer::setup).toList();
        page.cautions(asked);
        doubted.trial().load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        DoubtReply.Circle circle = doubted.circles().get(0);
        List<List<String>> table = table(circle);
        List<String> last = circle.narrowed()
                .map(narrowed ->
                        List.of(DoubtVerdict.measureNext(circle.measureNext().orElseThrow(), narrowed, units)))
                .orElse(List.of());
        int below = last.stream().mapToInt(words -> page.lines("", words)).sum() + table.size() + 1;
        int each = Math.max(
                1,
                Math.min(
                        LINES_EACH,
                        (page.room() - below)
                                / (circle.setups().size() * doubted.circles().size())));
        for (DoubtReply.Circle on : doubted.circles()) {
            String where = doubted.circles().size() > 1 ? " on " + units.radius(on.radius()) : "";
            on.setups().forEach(one -> verdict(doubted, one, where, page, each));
        }
        String heading =
                "Twenty to one (understeer in " + units.of(Criterion.UNDERSTEER).symbol() + ", limit in g):";
        if (table.size() > 1 && page.room() >= page.lines("", heading) + table.size()) {
            page.paragraph("", heading);
            page.columns(table);
        }
        last.forEach(words -> page.paragraph("", words));
        page.notGiven(asked);
        return page.text();
    }

    private void verdict(DoubtReply doubted, EachWay<DoubtReply.Doubted> one, String where, OneScreen page, int each) {
        Map<Direction, Doubt.Left> ways = new LinkedHashMap<>();
        List<String> phrases = new ArrayList<>();
        for (EachWay.Way<DoubtReply.Doubted> way : one.ways()) {
            way.found().ifPresent(found -> ways.put(way.direction(), found.left()));
            way.noAnswer().ifPresent(why -> phrases.add(one.turning(way) + "no answer, " + why.text()));
        }
        OptionalDouble chance = ways.values().stream()
                .flatMapToDouble(left -> left.chance().stream())
                .findFirst();
        ways.values().stream()
                .flatMapToDouble(left -> left.frontFirst().stream())
                .findFirst()
                .ifPresent(frontFirst -> phrases.add(
                        DoubtVerdict.frontFirst(frontFirst, doubted.trial().ways())));
        if (chance.isPresent() && !doubted.aim().orElseThrow().equals(Aim.frontFirst())) {
            phrases.add("the chance of \"" + AimText.write(doubted.aim().orElseThrow(), units) + "\" is "
                    + Numbers.percent(chance.getAsDouble(), 0));
        }
        if (!ways.isEmpty()) {
            phrases.addAll(DoubtVerdict.phrases(ways));
        }
        page.phrases(one.setup().name() + where + ": ", phrases, phrases.get(0), each);
    }

    private List<List<String>> table(DoubtReply.Circle circle) {
        List<List<String>> rows = new ArrayList<>();
        List<Doubt.Left> all = circle.setups().stream()
                .flatMap(one -> one.ways().stream())
                .flatMap(way -> way.found().stream())
                .map(DoubtReply.Doubted::left)
                .toList();
        List<String> heads = new ArrayList<>(List.of("", ""));
        for (Criterion criterion : DoubtVerdict.MATTERS) {
            heads.add(all.stream()
                    .flatMap(left -> DoubtVerdict.of(left, criterion).stream())
                    .map(spread -> criterion.equals(Criterion.LIMIT) ? "limit" : JudgedWords.pace(spread.judged()))
                    .findFirst()
                    .orElse(criterion.name()));
        }
        rows.add(heads);
        boolean apart = circle.setups().size() <= APART;
        for (EachWay<DoubtReply.Doubted> one : circle.setups()) {
            Map<Direction, Doubt.Left> ways = new LinkedHashMap<>();
            one.ways().forEach(way -> way.found().ifPresent(found -> ways.put(way.direction(), found.left())));
            rows.addAll(rows(one.setup().name(), ways, apart, /* signed= */ false));
        }
        Map<String, Map<Direction, Doubt.Left>> differences = new LinkedHashMap<>();
        for (DoubtReply.Turn turn : circle.turns()) {
            for (DoubtReply.Apart one : turn.differences()) {
                differences
                        .computeIfAbsent(one.setup().name(), name -> new LinkedHashMap<>())
                        .put(turn.direction(), one.left());
            }
        }
        differences.forEach((name, ways) -> rows.addAll(rows(less(name), ways, apart, /* signed= */ true)));
        return rows;
    }

    /** "As bought − first": of a long name rather its end is missing than what it is set against. */
    private static String less(String name) {
        return OneScreen.cut(Console.oneLine(name), OneScreen.NAME - LESS_FIRST.length()) + LESS_FIRST;
    }

    private List<List<String>> rows(String name, Map<Direction, Doubt.Left> ways, boolean apart, boolean signed) {
        List<List<String>> rows = new ArrayList<>();
        if (!apart && ways.size() > 1) {
            rows.add(row(name, "both", List.copyOf(ways.values()), signed));
            return rows;
        }
        ways.forEach((direction, left) -> rows.add(
                row(rows.isEmpty() ? name : "", ways.size() > 1 ? direction.key() : "", List.of(left), signed)));
        return rows;
    }

    private List<String> row(String name, String way, List<Doubt.Left> lefts, boolean signed) {
        List<String> row = new ArrayList<>(List.of(name, way));
        for (Criterion criterion : DoubtVerdict.MATTERS) {
            List<Spread> spreads = lefts.stream()
                    .flatMap(left -> DoubtVerdict.of(left, criterion).stream())
                    .toList();
            OptionalDouble low = spreads.stream().mapToDouble(Spread::low).min();
            OptionalDouble high = spreads.stream().mapToDouble(Spread::high).max();
            row.add(
                    low.isPresent() && high.isPresent()
                            ? number(criterion, low.getAsDouble(), signed) + " to "
                                    + number(criterion, high.getAsDouble(), signed)
                            : Table.NOTHING);
        }
        return row;
    }

    private String number(Criterion criterion, double si, boolean signed) {
        double shown = units.of(criterion).fromSi(si);
        return signed ? Numbers.signed(shown, units.digits(criterion)) : Numbers.fixed(shown, units.digits(criterion));
    }
}
