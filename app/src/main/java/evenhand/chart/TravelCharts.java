package evenhand.chart;

import evenhand.chart.CurveCharts.Curve;
import evenhand.chart.CurveCharts.Quantity;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.look.SetupStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A figure of an axle over its travel, with what ends the travel and where the axle stands. */
public final class TravelCharts {
    /** A place along a curve with words: SI along the axis across. */
    public record Stop(String name, SetupStyle style, double place, String words) {}

    private TravelCharts() {}

    /**
     * The picture.
     *
     * @param here where the axle stands, SI along the axis across
     */
    public static Chart of(
            String title, Quantity across, Quantity up, List<Curve> curves, List<Stop> stops, double here) {
        Chart plain = CurveCharts.curves(title, across, up, curves);
        Span high = Span.around(plain.lines().stream()
                        .flatMap(line -> line.points().stream())
                        .mapToDouble(Point::y))
                .loosened(0.08)
                .rounded();
        List<Part> parts = new ArrayList<>();
        for (Part part : plain.parts()) {
            if (!(part instanceof Rule)) {
                parts.add(part);
            }
        }
        if (high.low() < 0 && high.high() > 0) {
            parts.add(0, new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, ""));
        }
        parts.add(0, new Rule(Rule.Kind.PACE, Rule.Along.ACROSS, across.unit().fromSi(here), ""));
        for (Stop stop : stops) {
            mark(plain, across, stop).ifPresent(parts::add);
        }
        return new Chart(title, plain.across(), up.axis(high), parts);
    }

    /** On the set-up's curve; nothing where that has no value there. */
    private static Optional<Mark> mark(Chart chart, Quantity across, Stop stop) {
        double x = across.unit().fromSi(stop.place());
        return chart.lines().stream()
                .filter(line -> line.name().equals(stop.name()))
                .findFirst()
                .flatMap(line -> {
                    OptionalDouble y = CrossHair.value(line.points(), x);
                    return y.isPresent()
                            ? Optional.of(new Mark(
                                    Mark.Kind.LIMIT,
                                    stop.name(),
                                    stop.style(),
                                    new Point(x, y.getAsDouble()),
                                    stop.words()))
                            : Optional.empty();
                });
    }
}
