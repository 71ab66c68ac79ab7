package evenhand.window.question;

import evenhand.answers.Progress;
import evenhand.car.Weights;
import evenhand.chart.Chart;
import evenhand.chart.CurveCharts;
import evenhand.chart.CurveCharts.Curve;
import evenhand.chart.CurveCharts.Quantity;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.turn.Along;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Verdict;
import evenhand.words.Alike;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.AgainstSteady;
import evenhand.words.balance.AlongWords;
import evenhand.words.balance.LimitWords;
import evenhand.words.balance.VerdictWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** In the bend: what becomes of the line when the driver lifts off, presses on or brakes. */
final class WhatIfTheDriverLifts implements Question {
    private static final String LIFTS = "lifts off";
    private static final String PRESSES = "presses on";
    private static final String BRAKES = "brakes";
    private static final Field DOES = new Field("does", "the driver", List.of(LIFTS, PRESSES, BRAKES), LIFTS);
    private static final AmountsField BY = new AmountsField(
            new Field("by", "by", List.of(), "0.2 g"),
            "change of speed",
            Dimension.ACCELERATION,
            0.0098,
            9.8,
            "0.001 g and 1 g");

    /** Curves are drawn through places so far apart. */
    private static final double STEP = 0.05 * Weights.GRAVITY;

    private static final double FURTHEST = 1.2 * Weights.GRAVITY;

    /** A set-up with its answers, the chosen way round first. */
    private record Lifted(TurnedSetup turned, List<TurnAnswer> ways) {
        String name() {
            return turned.setup().name();
        }

        Optional<TurnAnswer.Turns> way(Direction direction) {
            return ways.stream()
                    .filter(TurnAnswer.Turns.class::isInstance)
                    .map(TurnAnswer.Turns.class::cast)
                    .filter(turns -> turns.direction() == direction)
                    .findFirst();
        }

        /** Paces that it has an answer at, beside the steady turn. */
        List<AgainstSteady> against(Direction direction) {
            return way(direction).stream()
                    .flatMap(turns -> turns.paces().stream())
                    .filter(PaceAnswer.InBalance.class::isInstance)
                    .flatMap(pace -> AgainstSteady.of((PaceAnswer.InBalance) pace).stream())
                    .toList();
        }

        Optional<AgainstSteady> at(Direction direction, double pace) {
            return against(direction).stream()
                    .filter(one -> Math.abs(one.row().lateralAcceleration() - pace) < 1e-9 * pace)
                    .findFirst();
        }
    }

    @Override
    public String key() {
        return "lift";
    }

    @Override
    public String words() {
        return "What if the driver lifts?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return List.of(DOES, BY.field());
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.here(
                active,
                Stream.of(
                        "rear.links.lowerLink.body.up",
                        "rear.sideView.swingCentreHeight",
                        "brakes.frontShare",
                        "rear.bar.rollStiffness",
                        "front.bar.rollStiffness",
                        "rear.spring.rate",
                        "front.spring.rate"));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        Optional<String> refused = BY.refusal(asked.wish(BY.field()));
        if (refused.isPresent()) {
            return Reply.only(refused.get());
        }
        Along along = along(asked);
        List<Lifted> all = new ArrayList<>();
        for (TurnedSetup one : asked.shown()) {
            List<TurnAnswer> ways = new ArrayList<>();
            for (Direction direction : directions(asked)) {
                progress.goOn();
                ways.add(SteadyTurn.answer(
                        one.standing(), paces(asked), asked.work().radius(), direction, along));
            }
            all.add(new Lifted(one, ways));
            progress.at((double) all.size() / asked.shown().size());
        }
        return reply(asked, along, all);
    }

    private static List<Direction> directions(Asked asked) {
        Direction first = asked.work().direction();
        return List.of(first, first.other());
    }

    private static Along along(Asked asked) {
        double by = BY.amounts(asked.wish(BY.field())).get(0);
        String does = asked.wish(DOES);
        return new Along(does.equals(PRESSES) ? by : -by, does.equals(BRAKES) ? Along.By.BRAKES : Along.By.ENGINE);
    }

    /** The paces that are told, and those between which curves are drawn. */
    private static List<Double> paces(Asked asked) {
        TreeSet<Double> paces = new TreeSet<>(asked.work().paces());
        for (int i = 1; i * STEP < FURTHEST; i++) {
            double pace = i * STEP;
            if (paces.stream().noneMatch(told -> Math.abs(told - pace) < STEP / 10)) {
                paces.add(pace);
            }
        }
        return List.copyOf(paces);
    }

    private static Reply reply(Asked asked, Along along, List<Lifted> all) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        for (Lifted one : all) {
            said.put(one.name(), sentences(asked, one));
        }
        List<Alike> alike = Alike.of(said);
        List<String> headlines = new ArrayList<>(List.of(AlongWords.what(along)));
        headlines.addAll(Straight.large(asked, alike));
        List<Reply.Paragraph> more = new ArrayList<>(Straight.below(asked, alike));
        more.add(new Reply.Paragraph(Straight.MIND, List.of(AlongWords.CAUTION)));
        return new Reply(headlines, more, charts(asked, all), table(asked, all), List.of()).with(verdict(asked, all));
    }

    /** The pace of the window, then the limit; both ways round. */
    private static List<String> sentences(Asked asked, Lifted one) {
        List<String> sentences = new ArrayList<>();
        double pace = asked.work().pace();
        boolean bothWays = !one.turned().standing().turnsAlikeBothWays();
        for (Direction direction : directions(asked)) {
            if (direction != asked.work().direction() && !bothWays) {
                continue;
            }
            String opening = bothWays ? "Turning " + direction.key() + ": " : "";
            Optional<TurnAnswer.Turns> turns = one.way(direction);
            if (turns.isEmpty()) {
                sentences.add(opening + none(one, asked, direction));
                continue;
            }
            sentences.add(opening
                    + one.at(direction, pace)
                            .map(AlongWords::pace)
                            .orElse("it does not turn so at " + Units.pace(pace) + "."));
            turns.get()
                    .steadyLimit()
                    .ifPresent(steady ->
                            sentences.add(opening + AlongWords.limit(turns.get().limit(), steady)));
        }
        return sentences;
    }

    private static Optional<Verdict> verdict(Asked asked, List<Lifted> all) {
        Lines<Lifted> lines = new Lines<>(all, one -> one.turned().setup(), asked.units());
        double pace = asked.work().pace();
        for (Direction direction : directions(asked)) {
            lines.amount(
                    "steer, " + direction.key(),
                    "deg",
                    "How much more steer than in the steady turn it needs at " + Units.pace(pace)
                            + ": below zero it tightens its line by itself, above zero it runs wide.",
                    one -> one.at(direction, pace).map(there -> Numbers.signed(there.moreInDegrees(), 2)));
        }
        for (Direction direction : directions(asked)) {
            lines.words(
                    "lets go, " + direction.key(),
                    "The end that then lets go first, and where.",
                    one -> one.way(direction)
                            .map(turns -> VerdictWords.inACell(turns.limit()))
                            .orElse("no answer"),
                    one -> one.way(direction)
                            .map(turns -> !turns.limit().frontFirst())
                            .orElse(false));
        }
        return lines.verdict();
    }

    private static String none(Lifted one, Asked asked, Direction direction) {
        TurnAnswer answer = one.ways().get(direction == asked.work().direction() ? 0 : 1);
        return "no answer: " + (answer instanceof TurnAnswer.NoTurn none ? none.text() : "") + ".";
    }

    private static List<Chart> charts(Asked asked, List<Lifted> all) {
        Direction direction = asked.work().direction();
        Quantity across = new Quantity("lateral acceleration", Unit.of("g"), 3);
        return List.of(
                chart(
                        asked,
                        all,
                        "Steer that it then needs, against the steady turn (below zero: it tightens)",
                        across,
                        new Quantity("more steer at the road wheels", Unit.of("deg"), 2),
                        direction,
                        one -> Math.toRadians(one.moreInDegrees())),
                chart(
                        asked,
                        all,
                        "Which end then has less grip in hand (below zero: the rear)",
                        across,
                        new Quantity("grip balance", asked.units().of(Dimension.RATIO), 1),
                        direction,
                        one -> one.row().gripBalance()));
    }

    private static Chart chart(
            Asked asked,
            List<Lifted> all,
            String title,
            Quantity across,
            Quantity up,
            Direction direction,
            Function<AgainstSteady, Double> figure) {
        List<Curve> curves = new ArrayList<>();
        for (Lifted one : all) {
            List<AgainstSteady> rows = one.against(direction);
            if (!rows.isEmpty()) {
                curves.add(new Curve(
                        one.name(),
                        "",
                        new SetupStyle(SideBySide.look(asked, one.name())),
                        rows.stream()
                                .mapToDouble(row -> row.row().lateralAcceleration())
                                .toArray(),
                        rows.stream().mapToDouble(figure::apply).toArray()));
            }
        }
        return CurveCharts.curves(title, across, up, curves);
    }

    private static Table table(Asked asked, List<Lifted> all) {
        Columns<Lifted> table = new Columns<>(all, Lifted::name, asked.units());
        for (Direction direction : directions(asked)) {
            for (double pace : asked.work().paces()) {
                table.heading("At " + Units.pace(pace) + ", turning " + direction.key());
                row(
                        table,
                        direction,
                        pace,
                        "more steer than steady",
                        "deg",
                        one -> Numbers.signed(one.moreInDegrees(), 2));
                row(
                        table,
                        direction,
                        pace,
                        "grip balance",
                        "",
                        one -> Numbers.signedPercent(one.row().gripBalance(), 1));
                row(
                        table,
                        direction,
                        pace,
                        "the same, steady",
                        "",
                        one -> Numbers.signedPercent(one.steady().gripBalance(), 1));
            }
            table.heading("At the limit, turning " + direction.key());
            limit(table, direction, "limit", turns -> Optional.of(turns.limit().lateralAcceleration()));
            limit(
                    table,
                    direction,
                    "the same, steady",
                    turns -> turns.steadyLimit().map(limit -> limit.lateralAcceleration()));
            table.row(
                    "gives out first",
                    "",
                    one -> one.way(direction)
                            .map(turns -> LimitWords.first(turns.limit()))
                            .orElse(Table.NOTHING));
        }
        return table.table();
    }

    private static void row(
            Columns<Lifted> table,
            Direction direction,
            double pace,
            String words,
            String symbol,
            Function<AgainstSteady, String> cell) {
        table.row(words, symbol, one -> one.at(direction, pace).map(cell).orElse(Table.NOTHING));
    }

    private static void limit(
            Columns<Lifted> table,
            Direction direction,
            String words,
            Function<TurnAnswer.Turns, Optional<Double>> cell) {
        table.row(
                words,
                "g",
                one -> one.way(direction)
                        .flatMap(cell)
                        .map(si -> Numbers.fixed(si / Weights.GRAVITY, 3))
                        .orElse(Table.NOTHING));
    }
}
