package evenhand.chart;

import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.quantity.Dimension;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The last part of the way to the limit, where set-ups part: what each end still has in hand, and which has nothing first. */
public final class NearLimit {
    /** From this part of the lowest limit on; before it all ends have plenty. */
    private static final double FROM = 0.6;

    private static final double ALL = 100;

    private NearLimit() {}

    /** Grip in hand at each end, in per cent of what it has: 100 % less what it uses. */
    public static Chart gripInHand(List<Shown> cars, Units units) {
        Chart used = TurnCharts.gripUsed(cars, units);
        double lowest = used.lines().stream()
                .mapToDouble(line -> last(line).x())
                .min()
                .orElse(used.across().span().high());
        double highest = used.lines().stream()
                .mapToDouble(line -> last(line).x())
                .max()
                .orElse(used.across().span().high());
        Span across = new Span(FROM * lowest, highest).rounded();
        List<Part> parts = new ArrayList<>();
        used.rules().stream()
                .filter(rule -> rule.along() == Rule.Along.ACROSS && across.holds(rule.value()))
                .forEach(parts::add);
        parts.add(new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, "no grip left"));
        List<Line> lines =
                used.lines().stream().map(line -> inHand(line, across.low())).toList();
        parts.addAll(lines);
        for (Mark mark : used.marks()) {
            Point at = new Point(mark.at().x(), ALL - mark.at().y());
            parts.add(new Mark(mark.kind(), mark.name(), mark.style(), at, mark.words()));
        }
        Axis.Measure percent = (Axis.Measure) used.up();
        Span up = Span.around(
                        lines.stream().flatMap(line -> line.points().stream()).mapToDouble(Point::y))
                .including(0)
                .loosened(0.04)
                .rounded();
        return new Chart(
                "Grip in hand near the limit",
                used.across().over(across),
                Axis.Measure.of("grip in hand", units.of(Dimension.RATIO), percent.digits(), up),
                parts,
                used.notes());
    }

    /** From a place on; what is left at its end is said there, or that it is the first to let go. */
    private static Line inHand(Line used, double from) {
        List<Point> points = new ArrayList<>();
        CrossHair.value(used.points(), from).ifPresent(y -> points.add(new Point(from, ALL - y)));
        used.points().stream()
                .filter(point -> point.x() > from)
                .forEach(point -> points.add(new Point(point.x(), ALL - point.y())));
        String ending = Optional.of(used.ending())
                .filter(words -> !words.isEmpty())
                .orElseGet(() -> Numbers.fixed(ALL - last(used).y(), 0) + " % left");
        return new Line(used.name(), used.part(), ending, used.style(), used.weight(), points);
    }

    private static Point last(Line line) {
        return line.points().get(line.points().size() - 1);
    }
}
