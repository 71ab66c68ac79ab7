package evenhand.chart;

import evenhand.answers.Criterion;
import evenhand.chart.Part.Band;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.chart.Part.Weight;
import evenhand.doubt.Spread;
import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Doubt as soft bands about curves against lateral acceleration: where a figure lies nineteen times in twenty. */
public final class DoubtCharts {
    /** A band goes as far as at least this part of the sampled cars do. */
    private static final double GET_THERE = 0.95;

    /** The scale has room for what lies before this part of a band: towards the limit some figures grow beyond all bounds. */
    private static final double UP_TO = 0.85;

    /** Where they do not, there is room for the whole: where the scale grows by no more than this. */
    private static final double ALL_OF_IT = 2.5;

    private static final String LEGEND =
            "Bands: nineteen times in twenty it lies within. Each ends where one sampled car in twenty is at its limit.";
    private static final String SURE =
            "Band: nineteen times in twenty it lies within. Where that is clear of zero, the difference is sure.";

    private static final Unit G = Unit.of("g");

    private DoubtCharts() {}

    /**
     * A set-up, and what doubt leaves of one figure of it.
     *
     * @param along at a row of paces, rising
     */
    public record Doubted(Shown car, List<Spread> along) {
        public Doubted {
            along = List.copyOf(along);
        }
    }

    /**
     * The curves of some set-ups, each with its band.
     *
     * @param criterion understeer, roll gradient or grip balance
     */
    public static Chart curves(Criterion criterion, List<Doubted> doubted, Units units) {
        List<Shown> cars = doubted.stream().map(Doubted::car).toList();
        Chart chart = criterion.equals(Criterion.UNDERSTEER)
                ? TurnCharts.understeerGradient(cars, units)
                : criterion.equals(Criterion.ROLL_GRADIENT)
                        ? TurnCharts.rollGradient(cars, units)
                        : TurnCharts.gripBalance(cars, units);
        List<Band> bands = doubted.stream()
                .map(one -> band(one.car(), one.along(), units.of(criterion)))
                .toList();
        return widened(chart, bands).behind(bands).noting(LEGEND);
    }

    /**
     * How much more of a figure a set-up has than another, with the band of the difference: narrower than the bands of the two,
     * since the same errors are in both.
     *
     * @param doubted the difference along a row of paces, rising
     */
    public static Chart difference(Criterion criterion, Shown base, Doubted doubted, Units units) {
        Shown car = doubted.car();
        Unit unit = units.of(criterion);
        List<Point> points = new ArrayList<>();
        for (Spread spread : doubted.along()) {
            spread.nominal().ifPresent(value -> points.add(new Point(pace(spread), unit.fromSi(value))));
        }
        Span wide = new Span(0, points.stream().mapToDouble(Point::x).max().orElse(1)).rounded();
        List<Band> bands = List.of(band(car, doubted.along(), unit));
        Span none = Span.around(DoubleStream.of(0)).atLeast(2 * unit.fromSi(criterion.noticeable()));
        Span high = with(none, points, UP_TO * end(bands.get(0))).loosened(0.06).rounded();
        Chart chart = new Chart(
                "How sure: \"" + car.name() + "\" less \"" + base.name() + "\"",
                Axis.Measure.of("lateral acceleration", G, 3, wide),
                Axis.Measure.of("difference in " + criterion.name(), unit, criterion.digits(), high),
                List.of(
                        new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, "no difference"),
                        new Line(car.name(), "", "", car.style(), Weight.HEAVY, points)));
        return widened(chart, bands).behind(bands).noting(SURE);
    }

    private static double pace(Spread spread) {
        return G.fromSi(spread.judged().pace().orElseThrow());
    }

    private static Band band(Shown car, List<Spread> along, Unit unit) {
        List<Spread> reached = along.stream()
                .filter(spread -> 1 - spread.noAnswerShare() >= GET_THERE)
                .toList();
        return new Band(
                car.name(), "", car.style(), edge(reached, unit, Spread::low), edge(reached, unit, Spread::high));
    }

    private static List<Point> edge(List<Spread> along, Unit unit, ToDoubleFunction<Spread> edge) {
        return along.stream()
                .map(spread -> new Point(pace(spread), unit.fromSi(edge.applyAsDouble(spread))))
                .toList();
    }

    /** Where a band ends, g. */
    private static double end(Band band) {
        return band.low().isEmpty() ? 0 : band.low().get(band.low().size() - 1).x();
    }

    /** The chart with room for its bands. */
    private static Chart widened(Chart chart, List<Band> bands) {
        Span span = ((Axis.Measure) chart.up()).span();
        for (Band band : bands) {
            span = with(
                    span,
                    Stream.concat(band.low().stream(), band.high().stream()).toList(),
                    UP_TO * end(band));
        }
        return chart.over(chart.across().span(), span.rounded());
    }

    /** With room for all points, or for those up to a place where the others would leave them little of it. */
    private static Span with(Span span, List<Point> points, double upTo) {
        Span near = span;
        Span whole = span;
        for (Point point : points) {
            whole = whole.including(point.y());
            near = point.x() <= upTo ? near.including(point.y()) : near;
        }
        return whole.width() <= ALL_OF_IT * near.width() ? whole : near;
    }
}
