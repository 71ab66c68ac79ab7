package evenhand.chart;

import evenhand.chart.Part.Line;
import evenhand.chart.Part.Point;
import evenhand.look.SetupStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The values of all lines at one place of a chart.
 *
 * @param place along the axis across, with its unit: "0.52 g"
 * @param values of the lines that have one there, largest first
 */
public record CrossHair(double x, String place, List<Value> values) {
    /**
     * One line's value.
     *
     * @param words the line and its value with unit: "Low, front 63.1 %"
     */
    public record Value(String label, SetupStyle style, double y, String words) {}

    public CrossHair {
        values = List.copyOf(values);
    }

    /** At this place of a chart of curves; a chart of bars has no values there. */
    public static CrossHair at(Chart chart, double x) {
        List<Value> values = new ArrayList<>();
        if (chart.up() instanceof Axis.Measure up) {
            for (Line line : chart.lines()) {
                OptionalDouble y = isRising(line.points()) ? value(line.points(), x) : OptionalDouble.empty();
                if (y.isPresent()) {
                    values.add(new Value(
                            line.label(),
                            line.style(),
                            y.getAsDouble(),
                            line.label() + " " + up.show(y.getAsDouble()) + doubt(chart, line, x, up)));
                }
            }
        }
        values.sort((one, other) -> Double.compare(other.y(), one.y()));
        return new CrossHair(x, chart.across().show(x), values);
    }

    /** How far a line is in doubt at a place, where it has a band there: " (0.42 to 0.61 deg/g)". */
    private static String doubt(Chart chart, Line line, double x, Axis.Measure up) {
        for (Part.Band band : chart.bands()) {
            if (band.name().equals(line.name()) && band.part().equals(line.part())) {
                OptionalDouble low = value(band.low(), x);
                OptionalDouble high = value(band.high(), x);
                if (low.isPresent() && high.isPresent()) {
                    return " (" + up.number(low.getAsDouble()) + " to " + up.show(high.getAsDouble()) + ")";
                }
            }
        }
        return "";
    }

    /** A line that turns back, such as a trade between two figures, has no one value at a place. */
    private static boolean isRising(List<Point> points) {
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).x() >= points.get(i - 1).x())) {
                return false;
            }
        }
        return true;
    }

    /** Between the points that lie on both sides, by a straight line; nothing beyond the first and the last. */
    static OptionalDouble value(List<Point> points, double x) {
        int low = 0;
        int high = points.size() - 1;
        if (points.isEmpty()
                || !(x >= points.get(0).x())
                || !(x <= points.get(high).x())) {
            return OptionalDouble.empty();
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (points.get(middle).x() <= x) {
                low = middle;
            } else {
                high = middle;
            }
        }
        Point from = points.get(low);
        Point to = points.get(high);
        double width = to.x() - from.x();
        double y = width > 0 ? from.y() + (x - from.x()) / width * (to.y() - from.y()) : from.y();
        return OptionalDouble.of(y);
    }

    /** The row that a place along the axis of rows lies in, in words: its name, its bars with units, what is said beside it. */
    public static List<String> row(Chart chart, double y) {
        int row = (int) Math.floor(y + 0.5);
        List<String> words = new ArrayList<>();
        if (chart.up() instanceof Axis.Rows rows
                && row >= 0
                && row < rows.rows().size()) {
            words.add(rows.rows().get(row).words());
            for (Part.Bar bar : chart.bars()) {
                if (bar.row() == row) {
                    String name = bar.part().isEmpty() ? bar.name() : bar.name() + ", " + bar.part();
                    words.add(name + " " + chart.across().showSigned(bar.to() - bar.from()));
                }
            }
            for (Part.Whisker whisker : chart.whiskers()) {
                if (whisker.row() == row) {
                    words.add(whisker.name() + " " + chart.across().show(whisker.low()) + " to "
                            + chart.across().show(whisker.high()));
                }
            }
            if (!rows.rows().get(row).beside().isEmpty()) {
                words.addAll(List.of(rows.rows().get(row).beside().split("; ")));
            }
        }
        return words;
    }
}
