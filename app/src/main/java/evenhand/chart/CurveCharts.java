package evenhand.chart;

import evenhand.chart.Part.Band;
import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Hatch;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.chart.Part.Weight;
import evenhand.look.SetupStyle;
import evenhand.words.InPrint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Charts of plain numbers, for whatever has been worked out: curves, a search for an adjustment, causes of doubt, trades between
 * two figures. Values are SI; a {@link Quantity} says how they are shown.
 */
public final class CurveCharts {
    private static final Hatch PLAIN = Hatch.FULL;

    private CurveCharts() {}

    /**
     * What the numbers of an axis are.
     *
     * @param words in plain words: "rear lateral locator height"
     * @param unit that they are shown in
     * @param digits behind the point
     */
    public record Quantity(String words, evenhand.quantity.Unit unit, int digits) {
        Axis.Measure axis(Span span) {
            return Axis.Measure.of(words, unit, digits, span);
        }

        Axis.Measure logarithmic(Span span) {
            return new Axis.Measure(words, InPrint.symbol(unit), digits, span, Axis.Scale.LOGARITHMIC);
        }

        String show(double si) {
            return evenhand.words.Numbers.fixed(unit.fromSi(si), digits)
                    + (unit.symbol().isEmpty() ? "" : " " + InPrint.symbol(unit));
        }
    }

    /**
     * One curve, SI.
     *
     * @param part which of several curves of a set-up, in words; else empty
     * @param x rising
     */
    public record Curve(String name, String part, SetupStyle style, double[] x, double[] y) {}

    /** Curves over one another, straight scales, zero among the heights. */
    public static Chart curves(String title, Quantity across, Quantity up, List<Curve> curves) {
        return chart(title, across, up, curves, false);
    }

    /** Curves over frequency, which grows by octaves. */
    public static Chart overFrequency(String title, Quantity frequency, Quantity up, List<Curve> curves) {
        return chart(title, frequency, up, curves, true);
    }

    private static Chart chart(String title, Quantity across, Quantity up, List<Curve> curves, boolean logarithmic) {
        List<Part> parts = new ArrayList<>();
        String first = curves.isEmpty() ? "" : curves.get(0).part();
        for (Curve curve : curves) {
            Weight weight = curve.part().equals(first) ? Weight.HEAVY : Weight.FINE;
            parts.add(new Line(curve.name(), curve.part(), "", curve.style(), weight, points(curve, across, up)));
        }
        Span wide = Span.around(lines(parts).mapToDouble(Point::x));
        Span high = Span.around(lines(parts).mapToDouble(Point::y))
                .including(0)
                .loosened(0.05)
                .rounded();
        if (high.low() < 0) {
            parts.add(0, new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, ""));
        }
        // An empty chart has an axis too, and none of octaves begins at zero.
        Axis.Measure axis = logarithmic
                ? across.logarithmic(curves.isEmpty() ? new Span(1, 10) : wide)
                : across.axis(wide.rounded());
        return new Chart(title, axis, up.axis(high), parts);
    }

    private static java.util.stream.Stream<Point> lines(List<Part> parts) {
        return parts.stream().filter(Line.class::isInstance).flatMap(part -> ((Line) part).points().stream());
    }

    private static List<Point> points(Curve curve, Quantity across, Quantity up) {
        return IntStream.range(0, curve.x().length)
                .filter(i -> Double.isFinite(curve.x()[i]) && Double.isFinite(curve.y()[i]))
                .mapToObj(i ->
                        new Point(across.unit().fromSi(curve.x()[i]), up.unit().fromSi(curve.y()[i])))
                .toList();
    }

    /**
     * A band of doubt about a curve, to be put behind the curves of a chart.
     *
     * @param low SI, at the same places as the curve's x
     * @param high SI
     */
    public static Band band(Curve curve, double[] low, double[] high, Quantity across, Quantity up) {
        return new Band(
                curve.name(),
                curve.part(),
                curve.style(),
                points(new Curve(curve.name(), curve.part(), curve.style(), curve.x(), low), across, up),
                points(new Curve(curve.name(), curve.part(), curve.style(), curve.x(), high), across, up));
    }

    /**
     * A search: a figure against the value of one adjustment, with the aim, the answers, where the adjustment stands now, and how
     * far the figure can be moved. SI.
     *
     * @param aim the figure's wished value; none where it is only swept
     * @param answers values of the adjustment that meet the aim
     * @param now the adjustment as it stands
     */
    public record Search(
            String name,
            SetupStyle style,
            double[] adjustment,
            double[] figure,
            OptionalDouble aim,
            List<Double> answers,
            OptionalDouble now) {}

    /** The picture of a search. */
    public static Chart search(String title, Quantity adjustment, Quantity figure, Search search) {
        Curve curve = new Curve(search.name(), "", search.style(), search.adjustment(), search.figure());
        List<Part> parts = new ArrayList<>();
        List<Point> points = points(curve, adjustment, figure);
        double aim = figure.unit().fromSi(search.aim().orElse(0));
        if (search.aim().isPresent()) {
            parts.add(new Rule(
                    Rule.Kind.AIM,
                    Rule.Along.UP,
                    aim,
                    "aim " + figure.show(search.aim().getAsDouble())));
        }
        DoubleStream heights = points.stream().mapToDouble(Point::y);
        Span reach = Span.around(heights);
        if (points.size() > 1) {
            parts.add(new Rule(
                    Rule.Kind.REACH,
                    Rule.Along.UP,
                    reach.low(),
                    "can be moved down to " + figure.axis(reach).show(reach.low())));
            parts.add(new Rule(
                    Rule.Kind.REACH,
                    Rule.Along.UP,
                    reach.high(),
                    "can be moved up to " + figure.axis(reach).show(reach.high())));
        }
        parts.add(new Line(search.name(), "", "", search.style(), Weight.HEAVY, points));
        search.now().ifPresent(now -> {
            double x = adjustment.unit().fromSi(now);
            CrossHair.value(points, x)
                    .ifPresent(y -> parts.add(new Mark(
                            Mark.Kind.EVENT,
                            search.name(),
                            search.style(),
                            new Point(x, y),
                            "now " + adjustment.show(now))));
        });
        for (double answer : search.answers()) {
            double x = adjustment.unit().fromSi(answer);
            parts.add(new Mark(
                    Mark.Kind.ANSWER, search.name(), search.style(), new Point(x, aim), adjustment.show(answer)));
        }
        Span high = search.aim().isPresent() ? reach.including(aim) : reach;
        Span wide = Span.around(points.stream().mapToDouble(Point::x));
        return new Chart(
                title, adjustment.axis(wide), figure.axis(high.loosened(0.1).rounded()), parts);
    }

    /** A cause and its size, SI: how much of a doubt, of a difference or of a cost it makes up. */
    public record Cause(String words, double size, String beside) {}

    /** Causes as bars, largest first, no more than so many. */
    public static Chart causes(
            String title, Quantity size, String name, SetupStyle style, List<Cause> causes, int most) {
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        causes.stream()
                .sorted(Comparator.comparingDouble(cause -> -Math.abs(cause.size())))
                .limit(most)
                .forEach(cause -> {
                    double value = size.unit().fromSi(cause.size());
                    String words = size.axis(new Span(0, 1)).show(value);
                    parts.add(new Bar(rows.size(), 0, 1, name, "", style, PLAIN, 0, value, words));
                    rows.add(new Axis.Row(cause.words(), cause.beside()));
                });
        parts.add(new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, ""));
        Span span = Span.around(parts.stream()
                        .flatMapToDouble(
                                part -> part instanceof Bar bar ? DoubleStream.of(bar.to()) : DoubleStream.empty()))
                .including(0)
                .loosened(0.18)
                .rounded();
        return new Chart(title, size.axis(span), new Axis.Rows("", rows), parts);
    }

    /**
     * Two figures against each other, one place for each setting: comfort against grip.
     *
     * @param name of the set-up that the settings belong to
     * @param settings their names; the places are joined in this order
     * @param chosen index of the setting that is set; below zero for none
     */
    public record Trade(String name, SetupStyle style, double[] x, double[] y, List<String> settings, int chosen) {
        public Trade {
            settings = List.copyOf(settings);
        }
    }

    /** The picture of a trade between two figures, the smaller the better for both. */
    public static Chart trade(String title, Quantity across, Quantity up, List<Trade> trades) {
        List<Part> parts = new ArrayList<>();
        for (Trade trade : trades) {
            Curve curve = new Curve(trade.name(), "", trade.style(), trade.x(), trade.y());
            List<Point> points = points(curve, across, up);
            if (points.size() != trade.settings().size()) {
                continue;
            }
            parts.add(new Line(trade.name(), "", "", trade.style(), Weight.THREAD, points));
            for (int i = 0; i < points.size(); i++) {
                Mark.Kind kind = i == trade.chosen() ? Mark.Kind.NOW : Mark.Kind.EVENT;
                parts.add(new Mark(
                        kind,
                        trade.name(),
                        trade.style(),
                        points.get(i),
                        trade.settings().get(i)));
            }
        }
        Span wide =
                Span.around(lines(parts).mapToDouble(Point::x)).loosened(0.1).rounded();
        Span high =
                Span.around(lines(parts).mapToDouble(Point::y)).loosened(0.1).rounded();
        return new Chart(title, across.axis(wide), up.axis(high), parts);
    }
}
