package evenhand.chart;

import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.car.End;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.chart.Part.Weight;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.words.EventWords;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * The turn from straight ahead to the limit, as curves against lateral acceleration. Angles into the turn are positive,
 * whichever way it goes. A set-up without an answer is named in a note.
 */
public final class TurnCharts {
    /** Understeer gradients beyond these are off the chart, deg/g: towards the limit they grow beyond all bounds. */
    private static final double LEAST_GRADIENT = -10;

    private static final double MOST_GRADIENT = 14;

    /** The span of gradients is that up to this part of the limit. */
    private static final double UP_TO = 0.93;

    /** Oversteer near the limit is shown down to here, deg/g. */
    private static final double NEAR_LIMIT = -3;

    private static final Unit G = Unit.of("g");

    private final List<Shown> cars;
    private final Units units;
    private final Axis.Measure across;

    private TurnCharts(List<Shown> cars, Units units) {
        this.cars = cars;
        this.units = units;
        double highest = cars.stream()
                .flatMap(car -> car.turns().stream())
                .mapToDouble(turn -> G.fromSi(turn.limit().lateralAcceleration()))
                .max()
                .orElse(1);
        across = Axis.Measure.of("lateral acceleration", G, 3, new Span(0, highest).rounded());
    }

    /** Steer at the road wheels: how far the wheels are turned to hold the circle, and what the circle alone asks for. */
    public static Chart steer(List<Shown> cars, Units units) {
        TurnCharts charts = new TurnCharts(cars, units);
        List<Part> parts = charts.curves(TurnFigures.STEER, true);
        charts.neutral().ifPresent(parts::add);
        return charts.chart("Steer needed to hold the circle", "steer at the road wheels", TurnFigures.STEER, parts);
    }

    /** Understeer gradient, with the neutral line, the paces and what happens on the way. */
    public static Chart understeerGradient(List<Shown> cars, Units units) {
        TurnCharts charts = new TurnCharts(cars, units);
        Figure<TurnRow> figure = TurnFigures.UNDERSTEER_GRADIENT;
        List<Part> parts = charts.curves(figure, false);
        parts.add(0, new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, "neutral"));
        parts.addAll(charts.events(figure, false));
        Unit unit = units.of(figure.dimension());
        Span span = gradients(cars, unit);
        Axis.Measure up = Axis.Measure.of("understeer gradient (below zero: oversteer)", unit, figure.digits(), span);
        return charts.chart("Understeer gradient", up, parts);
    }

    /** How much more understeer gradient than the base each other set-up has. */
    public static Chart understeerFromBase(List<Shown> cars, String base, Units units) {
        return Difference.from(understeerGradient(cars, units), base, "understeer");
    }

    /** How much more the other set-ups roll than the base. */
    public static Chart rollFromBase(List<Shown> cars, String base, Units units) {
        return Difference.from(roll(cars, units), base, "roll");
    }

    /** From the gradients on most of the way; where a car comes to oversteer only near its limit, the beginning of that too. */
    private static Span gradients(List<Shown> cars, Unit unit) {
        double lowest = gradients(cars, unit, 1).min().orElse(0);
        return Span.around(gradients(cars, unit, UP_TO))
                .including(Math.max(lowest, NEAR_LIMIT))
                .including(0)
                .within(LEAST_GRADIENT, MOST_GRADIENT)
                .atLeast(2)
                .loosened(0.06)
                .rounded();
    }

    /** All gradients up to a part of the limit. */
    private static DoubleStream gradients(List<Shown> cars, Unit unit, double part) {
        return cars.stream()
                .flatMap(car -> car.turns().stream())
                .flatMapToDouble(turn -> turn.rowsToLimit().stream()
                        .filter(row ->
                                row.lateralAcceleration() <= part * turn.limit().lateralAcceleration())
                        .flatMapToDouble(row -> stream(TurnFigures.UNDERSTEER_GRADIENT.in(unit, row))));
    }

    /** How much of its grip each axle uses; an axle at 100 % has none left. */
    public static Chart gripUsed(List<Shown> cars, Units units) {
        TurnCharts charts = new TurnCharts(cars, units);
        List<Part> parts = new ArrayList<>();
        Unit unit = units.of(Dimension.RATIO);
        for (Shown car : cars) {
            car.turns().ifPresent(turn -> {
                String ending =
                        "first to let go, at " + Units.exactPace(turn.limit().lateralAcceleration());
                Optional<End> first = turn.limit().firstAxle();
                parts.add(charts.line(
                        car,
                        "front",
                        first.equals(Optional.of(End.FRONT)) ? ending : "",
                        Weight.HEAVY,
                        turn,
                        TurnFigures.FRONT_GRIP_USED,
                        1));
                parts.add(charts.line(
                        car,
                        "rear",
                        first.equals(Optional.of(End.REAR)) ? ending : "",
                        Weight.FINE,
                        turn,
                        TurnFigures.REAR_GRIP_USED,
                        1));
            });
        }
        parts.add(0, new Rule(Rule.Kind.NOTE, Rule.Along.UP, 100, "no grip left"));
        parts.addAll(charts.limits(
                row -> OptionalDouble.of(unit.fromSi(Math.max(row.frontGripUsed(), row.rearGripUsed())))));
        Axis.Measure up = Axis.Measure.of("grip used", unit, 1, new Span(0, 110));
        return charts.chart("Grip used at each end, up to the limit", up, parts);
    }

    /** Which end has less grip in hand. */
    static Chart gripBalance(List<Shown> cars, Units units) {
        TurnCharts charts = new TurnCharts(cars, units);
        List<Part> parts = charts.curves(TurnFigures.GRIP_BALANCE, false);
        parts.add(0, new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, "both ends alike"));
        return charts.chart(
                "Which end has less grip in hand",
                "grip balance (below zero: the rear has less)",
                TurnFigures.GRIP_BALANCE,
                parts);
    }

    /** How much more it rolls for a little more lateral acceleration. */
    static Chart rollGradient(List<Shown> cars, Units units) {
        TurnCharts charts = new TurnCharts(cars, units);
        List<Part> parts = charts.curves(TurnFigures.ROLL_GRADIENT, false);
        return charts.chart("Roll gradient", "roll gradient", TurnFigures.ROLL_GRADIENT, parts);
    }

    /** Roll of the body. */
    public static Chart roll(List<Shown> cars, Units units) {
        TurnCharts charts = new TurnCharts(cars, units);
        List<Part> parts = charts.curves(TurnFigures.ROLL, true);
        parts.addAll(charts.events(TurnFigures.ROLL, true));
        return charts.chart("Roll of the body", "roll, outwards", TurnFigures.ROLL, parts);
    }

    /** Sideslip: which way the car points against the way it goes. */
    public static Chart sideslip(List<Shown> cars, Units units) {
        TurnCharts charts = new TurnCharts(cars, units);
        List<Part> parts = charts.curves(TurnFigures.SIDESLIP, true);
        return charts.chart(
                "Sideslip at the centre of gravity", "sideslip (below zero: tail out)", TurnFigures.SIDESLIP, parts);
    }

    /** Load of each wheel of an axle. */
    public static Chart wheelLoads(List<Shown> cars, End end, Units units) {
        return wheelLoads(
                cars,
                List.of(Wheel.values()).stream()
                        .filter(wheel -> wheel.end() == end)
                        .toList(),
                "Load of the " + EventWords.end(end) + " wheels",
                units);
    }

    /** Load of each of the four wheels. */
    public static Chart wheelLoads(List<Shown> cars, Units units) {
        return wheelLoads(cars, List.of(Wheel.values()), "Load of each wheel", units);
    }

    private static Chart wheelLoads(List<Shown> cars, List<Wheel> wheels, String title, Units units) {
        TurnCharts charts = new TurnCharts(cars, units);
        List<Part> parts = new ArrayList<>();
        for (Shown car : cars) {
            car.turns().ifPresent(turn -> {
                for (Wheel wheel : wheels) {
                    Figure<TurnRow> load = Figure.of(
                            "load",
                            "load",
                            Dimension.FORCE,
                            "N",
                            0,
                            row -> row.wheel(wheel).load());
                    Weight weight = wheel.end() == End.FRONT ? Weight.HEAVY : Weight.FINE;
                    parts.add(charts.line(car, wheel.words(), "", weight, turn, load, 1));
                }
            });
        }
        Axis.Measure up = charts.up("load on the ground", TurnFigures.LOAD.dimension(), 0, parts);
        parts.addAll(charts.lifted());
        return charts.chart(title, up, parts);
    }

    private Chart chart(String title, String words, Figure<TurnRow> figure, List<Part> parts) {
        return chart(title, up(words, figure.dimension(), units.digits(figure), parts), parts);
    }

    private Axis.Measure up(String words, Dimension dimension, int digits, List<Part> parts) {
        Span span = Span.around(parts.stream()
                        .filter(Line.class::isInstance)
                        .flatMap(line -> ((Line) line).points().stream())
                        .mapToDouble(Point::y))
                .including(0)
                .loosened(0.04)
                .rounded();
        return Axis.Measure.of(words, units.of(dimension), digits, span);
    }

    private Chart chart(String title, Axis.Measure up, List<Part> parts) {
        List<Part> all = new ArrayList<>(paces());
        if (up.span().low() < 0 && parts.stream().noneMatch(TurnCharts::isZero)) {
            all.add(new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, ""));
        }
        all.addAll(parts);
        return new Chart(title, across, up, all, notes(cars));
    }

    private static boolean isZero(Part part) {
        return part instanceof Rule rule && rule.kind() == Rule.Kind.ZERO;
    }

    /** What is not shown, and why. */
    static List<String> notes(List<Shown> cars) {
        return cars.stream()
                .flatMap(car -> car.turn() instanceof TurnAnswer.NoTurn none
                        ? java.util.stream.Stream.of(car.name() + " is not shown: " + none.text() + ".")
                        : java.util.stream.Stream.empty())
                .toList();
    }

    /** One line of every car, with its limit. */
    private List<Part> curves(Figure<TurnRow> figure, boolean signed) {
        List<Part> parts = new ArrayList<>();
        Unit unit = units.of(figure.dimension());
        for (Shown car : cars) {
            car.turns().ifPresent(turn -> {
                int sign = signed ? Shown.inwards(turn) : 1;
                parts.add(line(car, "", limit(turn), Weight.HEAVY, turn, figure, sign));
            });
        }
        for (Shown car : cars) {
            car.turns()
                    .ifPresent(turn -> figure.si(turn.limit().row())
                            .ifPresent(value -> parts.add(
                                    limit(car, turn, (signed ? Shown.inwards(turn) : 1) * unit.fromSi(value)))));
        }
        return parts;
    }

    private Line line(
            Shown car,
            String part,
            String ending,
            Weight weight,
            TurnAnswer.Turns turn,
            Figure<TurnRow> figure,
            int sign) {
        Unit unit = units.of(figure.dimension());
        List<Point> points = new ArrayList<>();
        for (TurnRow row : turn.rowsToLimit()) {
            OptionalDouble value = figure.in(unit, row);
            if (value.isPresent()) {
                points.add(new Point(G.fromSi(row.lateralAcceleration()), sign * value.getAsDouble()));
            }
        }
        return new Line(car.name(), part, ending, car.style(), weight, points);
    }

    private static Mark limit(Shown car, TurnAnswer.Turns turn, double y) {
        double g = G.fromSi(turn.limit().lateralAcceleration());
        return new Mark(Mark.Kind.LIMIT, car.name(), car.style(), new Point(g, y), LimitWords.mark(turn.limit()));
    }

    private static String limit(TurnAnswer.Turns turn) {
        return "limit " + Units.exactPace(turn.limit().lateralAcceleration());
    }

    private List<Part> limits(Function<TurnRow, OptionalDouble> height) {
        List<Part> marks = new ArrayList<>();
        for (Shown car : cars) {
            car.turns()
                    .ifPresent(turn -> height.apply(turn.limit().row()).ifPresent(y -> marks.add(limit(car, turn, y))));
        }
        return marks;
    }

    /** The paces that the first car was asked at. */
    private List<Part> paces() {
        return cars.stream()
                .flatMap(car -> car.turns().stream())
                .findFirst()
                .map(turn -> {
                    List<Part> rules = new ArrayList<>();
                    List<Double> paces = turn.paces().stream()
                            .map(pace -> pace.lateralAcceleration())
                            .sorted()
                            .toList();
                    for (int i = 0; i < paces.size(); i++) {
                        rules.add(new Rule(
                                Rule.Kind.PACE,
                                Rule.Along.ACROSS,
                                G.fromSi(paces.get(i)),
                                pace(i, paces.size()) + Units.pace(paces.get(i))));
                    }
                    return rules;
                })
                .orElseGet(ArrayList::new);
    }

    private static String pace(int index, int all) {
        return all != 2 ? "" : index == 0 ? "gentle " : "brisk ";
    }

    /** Steer for the circle alone, the neutral line; that of the first car, set-ups hardly differ in it. */
    private java.util.Optional<Line> neutral() {
        return cars.stream()
                .flatMap(car -> car.turns().stream().map(turn -> {
                    Line own = line(car, "", "", Weight.THREAD, turn, TurnFigures.ACKERMANN_STEER, Shown.inwards(turn));
                    return new Line("neutral: the circle alone", "", "", SetupStyle.NONE, Weight.THREAD, own.points());
                }))
                .findFirst();
    }

    private List<Part> events(Figure<TurnRow> figure, boolean signed) {
        List<Part> marks = new ArrayList<>();
        for (Shown car : cars) {
            car.turns().ifPresent(turn -> {
                int sign = signed ? Shown.inwards(turn) : 1;
                Line line = line(car, "", limit(turn), Weight.HEAVY, turn, figure, sign);
                for (TurnEvent event : turn.eventsToLimit()) {
                    double g = G.fromSi(event.lateralAcceleration());
                    CrossHair.value(line.points(), g)
                            .ifPresent(y -> marks.add(new Mark(
                                    Mark.Kind.EVENT,
                                    car.name(),
                                    car.style(),
                                    new Point(g, y),
                                    EventWords.brief(event))));
                }
            });
        }
        return marks;
    }

    /** Where wheels leave the ground. */
    private List<Part> lifted() {
        List<Part> marks = new ArrayList<>();
        for (Shown car : cars) {
            car.turns().ifPresent(turn -> {
                for (TurnEvent event : turn.eventsToLimit()) {
                    if (event.kind() == TurnEvent.Kind.WHEEL_LIFTED) {
                        marks.add(new Mark(
                                Mark.Kind.EVENT,
                                car.name(),
                                car.style(),
                                new Point(G.fromSi(event.lateralAcceleration()), 0),
                                EventWords.brief(event)));
                    }
                }
            });
        }
        return marks;
    }

    private static DoubleStream stream(OptionalDouble value) {
        return value.isPresent() ? DoubleStream.of(value.getAsDouble()) : DoubleStream.empty();
    }
}
