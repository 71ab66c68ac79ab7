package evenhand.terminal.balance;

import evenhand.answers.HandSumFigures;
import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.OneScreen;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupTurn;
import evenhand.terminal.reply.WorseWay;
import evenhand.turn.Along;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.AgainstSteady;
import evenhand.words.balance.AlongWords;
import evenhand.words.balance.LimitWords;
import evenhand.words.effects.NearLimitWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

/**
 * The verdict of {@code balance} on one screen: a line a set-up, then what has to be warned of, why the last set-up differs from
 * the first, what would move it, how sure it is, and what was estimated. All figures are printed with {@code --full}.
 */
final class BalancePage {
    private static final String NOTHING = "–";
    private static final int WIDTH = 100;
    private static final int LONGEST_NAME = 34;
    private static final int LEANS = 12;
    private static final int TOUCHED = 12;
    private static final int AFTER_THE_GRADIENTS = 14 + 16 + LEANS + TOUCHED;
    private static final int MOST_PACES = 3;
    private static final int MOST_WARNINGS = 4;
    private static final int NUMBER = 8;
    private static final int NEAR = 12;
    private static final int MOST_PACES_ALONG = 2;
    private static final int STEER = 9;
    private static final int LIMITS = 14;

    private static final Unit G = Dimension.ACCELERATION.metric();
    private static final Unit DEG_PER_G = Dimension.UNDERSTEER_GRADIENT.metric();

    private final Units units;
    private final Trial trial;
    private final int nameWidth;
    private final OneScreen screen;

    private BalancePage(Console console, Units units, Trial trial, int setups) {
        this.units = units;
        this.trial = trial;
        screen = new OneScreen(
                console,
                setups,
                "Near the limit: at nine tenths of it. --full shows every figure, and what happens on the way.");
        nameWidth = Math.min(LONGEST_NAME, WIDTH - AFTER_THE_GRADIENTS - gradients());
    }

    /** Columns that the gradients take. */
    private int gradients() {
        return NUMBER * paces().size() + NEAR;
    }

    static String write(BalanceReply answer, Console console, Units units) {
        int rows = (int) answer.everywhere().count() + answer.atRadius().size();
        BalancePage page = new BalancePage(console, units, answer.trial(), rows);
        page.opening(answer);
        page.heads();
        page.rows(answer.setups());
        for (BalanceReply.AtRadius circle : answer.atRadius()) {
            page.screen.line("On " + units.radius(circle.radius()) + ":");
            page.rows(circle.setups());
        }
        answer.along().ifPresent(along -> page.along(answer, along));
        page.warnings(answer);
        if (answer.along().isEmpty()) { // causes and levers are of the steady turn
            NearTheLimit.of(answer.turned(), answer.trial()).ifPresent(page::behind);
        }
        page.notGiven(answer);
        return page.screen.text();
    }

    private void opening(BalanceReply answer) {
        screen.title(
                answer.scenario().title(),
                ": " + units.radius(trial.radius()) + " circle, "
                        + (trial.ways() == Ways.BOTH
                                ? "both ways (the worse way shown)"
                                : "turning " + trial.direction().key()));
        trial.load().ifPresent(load -> screen.paragraph("", LoadWords.aboard(load, units)));
    }

    /** What lifting off, power or brakes change against the steady turn: a line a set-up, the last one in words. */
    private void along(BalanceReply answer, Along along) {
        screen.paragraph(
                "",
                AlongWords.what(along)
                        + ": steer at the road wheel beside the steady turn, deg (less: it tightens its line, more: it runs"
                        + " wide), and the limit, g.");
        StringBuilder heads = new StringBuilder(pad("", nameWidth));
        List<Direction> ways = trial.ways().directions();
        for (double pace : alongPaces()) {
            heads.append(centre(Units.pace(pace), STEER * ways.size()));
        }
        ways.forEach(way -> heads.append(left("limit " + way.key(), LIMITS)));
        screen.line(heads.toString().stripTrailing());
        for (BalanceReply.AtRadius circle : answer.circles()) {
            if (!answer.atRadius().isEmpty()) {
                screen.line("On " + units.radius(circle.radius()) + ":");
            }
            for (SetupTurn.Turned turned : Reply.only(SetupTurn.Turned.class, circle.setups())) {
                screen.line(along(turned).stripTrailing());
            }
        }
        List<SetupTurn.Turned> turned = answer.turned();
        if (!turned.isEmpty()) {
            SetupTurn.Turned last = turned.get(turned.size() - 1);
            AlongWords.of(last.turn(), last.otherTurn())
                    .forEach(sentence -> paragraph(
                            sentence.equals(AlongWords.CAUTION)
                                    ? ""
                                    : fit(last.setup().name(), nameWidth) + ": ",
                            sentence));
        }
    }

    private List<Double> alongPaces() {
        return trial.paces().subList(0, Math.min(MOST_PACES_ALONG, trial.paces().size()));
    }

    private String along(SetupTurn.Turned turned) {
        StringBuilder row = new StringBuilder(pad(fit(turned.setup().name(), nameWidth - 1), nameWidth));
        List<TurnAnswer.Turns> ways = turned.ways();
        for (int i = 0; i < alongPaces().size(); i++) {
            for (Direction direction : trial.ways().directions()) {
                int pace = i;
                row.append(left(
                        way(ways, direction)
                                .map(way -> way.paces().get(pace))
                                .filter(PaceAnswer.InBalance.class::isInstance)
                                .flatMap(here -> AgainstSteady.of((PaceAnswer.InBalance) here))
                                .map(against -> Numbers.signed(against.moreInDegrees(), 2))
                                .orElse(NOTHING),
                        STEER));
            }
        }
        for (Direction direction : trial.ways().directions()) {
            row.append(left(
                    way(ways, direction)
                            .flatMap(way -> way.steadyLimit().map(steady -> inG(steady) + " → " + inG(way.limit())))
                            .orElse(NOTHING),
                    LIMITS));
        }
        return row.toString();
    }

    private static String inG(Limit limit) {
        return Numbers.fixed(G.fromSi(limit.lateralAcceleration()), 2);
    }

    private List<Double> paces() {
        return trial.paces().subList(0, Math.min(MOST_PACES, trial.paces().size()));
    }

    private void heads() {
        boolean both = trial.ways().directions().size() > 1;
        StringBuilder above = new StringBuilder(pad("", nameWidth));
        above.append(centre(
                gradients() < 28
                        ? "push +, slide −"
                        : gradients() < 33 ? "push (+), slide (−), deg/g" : "pushes (+) or slides (−), deg/g",
                gradients()));
        above.append(centre("limit, g", both ? 14 : 8));
        above.append(centre("goes first", both ? 16 : 8))
                .append(left("leans at", LEANS))
                .append(left("rubber", TOUCHED));
        StringBuilder below = new StringBuilder(pad("", nameWidth));
        for (double pace : paces()) {
            below.append(left(Units.pace(pace), NUMBER));
        }
        below.append(left("near limit", NEAR));
        for (int column : new int[] {both ? 7 : 8, 8}) {
            for (Direction direction : trial.ways().directions()) {
                below.append(left(direction.key(), column));
            }
        }
        below.append(left("0 g, deg/g", LEANS)).append(left("met at, g", TOUCHED));
        screen.line(above.toString().stripTrailing());
        screen.line(below.toString().stripTrailing());
    }

    private void rows(List<SetupTurn> setups) {
        for (SetupTurn setup : setups) {
            StringBuilder row = new StringBuilder(pad(fit(setup.setup().name(), nameWidth - 1), nameWidth));
            if (setup instanceof SetupTurn.Turned turned) {
                figures(row, turned);
            } else if (setup instanceof SetupTurn.OnlyTheOtherWay other) {
                limits(row.append(" ".repeat(gradients())), List.of(other.turns()));
            } else {
                row.append("  no answer");
            }
            screen.line(row.toString().stripTrailing());
        }
    }

    private void figures(StringBuilder row, SetupTurn.Turned turned) {
        List<TurnAnswer.Turns> ways = turned.ways();
        for (int i = 0; i < paces().size(); i++) {
            int pace = i;
            row.append(left(
                    WorseWay.of(ways, turn -> gradient(turn.paces().get(pace)))
                            .map(worse -> Numbers.fixed(DEG_PER_G.fromSi(worse.gradient()), 1))
                            .orElse(NOTHING),
                    NUMBER));
        }
        row.append(left(
                WorseWay.of(ways, turn -> turn.limit().nearUndersteer())
                        .map(worse -> Numbers.fixed(DEG_PER_G.fromSi(worse.gradient()), 1))
                        .orElse(NOTHING),
                NEAR));
        limits(row, ways);
        row.append(left(
                HandSumFigures.ROLL_GRADIENT.in(DEG_PER_G, turned.sums()).stream()
                        .mapToObj(lean -> Numbers.fixed(lean, 1))
                        .findFirst()
                        .orElse(NOTHING),
                LEANS));
        row.append(left(touched(turned), TOUCHED));
    }

    /** Limit and end that goes first, each way round. */
    private void limits(StringBuilder row, List<TurnAnswer.Turns> ways) {
        int column = trial.ways().directions().size() > 1 ? 7 : 8;
        for (Direction direction : trial.ways().directions()) {
            row.append(left(
                    of(ways, direction)
                            .map(limit -> Numbers.fixed(G.fromSi(limit.lateralAcceleration()), 2))
                            .orElse(NOTHING),
                    column));
        }
        for (Direction direction : trial.ways().directions()) {
            row.append(left(of(ways, direction).map(BalancePage::first).orElse(NOTHING), 8));
        }
    }

    private static OptionalDouble gradient(PaceAnswer pace) {
        return pace instanceof PaceAnswer.InBalance here ? here.row().understeerGradient() : OptionalDouble.empty();
    }

    private static Optional<TurnAnswer.Turns> way(List<TurnAnswer.Turns> ways, Direction direction) {
        return ways.stream().filter(way -> way.direction() == direction).findFirst();
    }

    private static Optional<Limit> of(List<TurnAnswer.Turns> ways, Direction direction) {
        return way(ways, direction).map(TurnAnswer.Turns::limit);
    }

    /** The end that goes first; the rear in capitals, as no driver wants it. */
    private static String first(Limit limit) {
        String first = LimitWords.first(limit);
        return first.equals("rear") ? first.toUpperCase(Locale.ROOT) : first;
    }

    /** Where a bump stop is met first, either way round, and at which end; a car may stand on one. */
    private static String touched(SetupTurn.Turned turned) {
        for (End end : End.values()) {
            if (turned.rest()
                    .car()
                    .axle(end)
                    .stops()
                    .bump()
                    .filter(stop -> stop.gap() < 0)
                    .isPresent()) {
                return end.key() + ", rest";
            }
        }
        return turned.ways().stream()
                .flatMap(way -> way.eventsToLimit().stream())
                .filter(event -> event.kind() == TurnEvent.Kind.STOP_TOUCHED)
                .min(Comparator.comparingDouble(TurnEvent::lateralAcceleration))
                .map(event -> event.axle().map(End::key).orElse("") + " "
                        + Numbers.fixed(G.fromSi(event.lateralAcceleration()), 2))
                .orElse("never");
    }

    /** What has to be said before anything else is believed. */
    private void warnings(BalanceReply answer) {
        List<String> warnings = new ArrayList<>();
        for (BalanceReply.AtRadius circle : answer.circles()) {
            String on = answer.atRadius().isEmpty() ? "" : ", on " + units.radius(circle.radius());
            for (SetupTurn setup : circle.setups()) {
                answer.silences(setup, circle.radius(), units)
                        .forEach(silence -> warnings.add(silence.setup() + ": no answer: " + silence.why() + "."));
                if (setup instanceof SetupTurn.Turned turned) {
                    unlessFrontFirst(turned)
                            .ifPresent(what -> warnings.add(setup.setup().name() + on + ": " + what));
                }
            }
        }
        for (String warning : warnings.subList(0, Math.min(MOST_WARNINGS, warnings.size()))) {
            screen.warning(warning);
        }
        if (warnings.size() > MOST_WARNINGS) {
            screen.warning(warnings.size() - MOST_WARNINGS + " more warnings; --full tells them.");
        }
        screen.cautions(asked(answer));
    }

    private static List<Setup> asked(BalanceReply answer) {
        return answer.setups().stream().map(SetupTurn::setup).toList();
    }

    /** What a driver meets where the front does not go first, each way round. */
    private static Optional<String> unlessFrontFirst(SetupTurn.Turned turned) {
        List<TurnAnswer.Turns> ways = turned.ways();
        if (turned.split().isPresent()) {
            return turned.split();
        }
        if (ways.stream().allMatch(way -> way.limit().frontFirst() && !LimitWords.tips(way.limit()))) {
            return Optional.empty();
        }
        if (turned.alike() || ways.size() == 1) {
            return Optional.of(LimitWords.brief(turned.turn().limit()) + ".");
        }
        return Optional.of(ways.stream()
                        .map(way -> "turning " + way.direction().key() + " " + LimitWords.brief(way.limit()))
                        .collect(Collectors.joining(", "))
                + ".");
    }

    private void behind(NearTheLimit near) {
        String last = "\"" + fit(near.last().setup().name(), nameWidth) + "\"";
        String turning = (near.last().alike() || trial.ways() != Ways.BOTH
                        ? ""
                        : ", turning " + near.direction().key())
                + (trial.radii().size() > 1 ? " on " + units.radius(trial.radius()) : "");
        String first = "\"" + fit(near.first().setup().name(), nameWidth) + "\"";
        near.why()
                .flatMap(NearLimitWords::why)
                .ifPresent(why -> paragraph("Why ", last + " against " + first + turning + ": " + why));
        NearLimitWords.levers(near.levers(), units)
                .ifPresent(levers -> paragraph("What would move ", last + " most" + turning + ": " + levers));
        paragraph("How sure: ", NearLimitWords.sure(near.doubt(), near.doubtOfDifference()));
    }

    /** What was not measured: taken as none, estimated, or unlikely. */
    private void notGiven(BalanceReply answer) {
        screen.notGiven(asked(answer));
        int estimated = most(answer, setup -> setup.estimated().size());
        int unlikely = most(answer, setup -> setup.warnings().size());
        List<String> counts = new ArrayList<>();
        if (estimated > 0) {
            counts.add("Estimated, not measured: " + estimated + (estimated == 1 ? " value." : " values."));
        }
        if (unlikely > 0) {
            counts.add("Unlikely: " + unlikely + (unlikely == 1 ? " value" : " values") + "; `check` lists them.");
        }
        if (!counts.isEmpty()) {
            paragraph("", String.join(" ", counts));
        }
    }

    private static int most(BalanceReply answer, ToIntFunction<Setup> count) {
        return answer.setups().stream()
                .mapToInt(setup -> count.applyAsInt(setup.setup()))
                .max()
                .orElse(0);
    }

    private void paragraph(String opening, String sentence) {
        screen.paragraph("", opening + sentence);
    }

    private static String fit(String name, int width) {
        return OneScreen.cut(Console.oneLine(name), width);
    }

    private static String pad(String cell, int width) {
        return cell + " ".repeat(Math.max(0, width - cell.length()));
    }

    private static String left(String cell, int width) {
        return " ".repeat(Math.max(1, width - cell.length())) + cell;
    }

    private static String centre(String cell, int width) {
        int before = Math.max(1, (width - cell.length() + 1) / 2);
        return pad(" ".repeat(before) + cell, width);
    }
}
