package evenhand.chart;

import evenhand.chart.Part.Point;
import java.util.List;

/** The numbers of a chart as CSV (RFC 4180), a row per point, in the units of its axes. */
public final class ChartCsv {
    private ChartCsv() {}

    /** Curves: what it is, whose, which part, and both coordinates. Bars: their row, and from where to where. */
    public static String write(Chart chart) {
        StringBuilder csv = new StringBuilder();
        if (chart.up() instanceof Axis.Rows rows) {
            csv.append("row,name,part,")
                    .append(quoted("from: " + chart.across().title()))
                    .append(',')
                    .append(quoted("to: " + chart.across().title()))
                    .append("\r\n");
            for (Part.Bar bar : chart.bars()) {
                row(csv, rows.rows().get(bar.row()).words(), bar.name(), bar.part(), bar.from(), bar.to());
            }
            return csv.toString();
        }
        csv.append("what,name,part,")
                .append(quoted(chart.across().title()))
                .append(',')
                .append(quoted(chart.up().title()))
                .append("\r\n");
        for (Part.Line line : chart.lines()) {
            points(csv, "curve", line.name(), line.part(), line.points());
        }
        for (Part.Band band : chart.bands()) {
            points(csv, "doubt from", band.name(), band.part(), band.low());
            points(csv, "doubt to", band.name(), band.part(), band.high());
        }
        for (Part.Mark mark : chart.marks()) {
            row(csv, "mark", mark.name(), mark.words(), mark.at().x(), mark.at().y());
        }
        return csv.toString();
    }

    private static void points(StringBuilder csv, String what, String name, String part, List<Point> points) {
        for (Point point : points) {
            row(csv, what, name, part, point.x(), point.y());
        }
    }

    private static void row(StringBuilder csv, String what, String name, String part, double one, double other) {
        csv.append(quoted(what)).append(',').append(quoted(name)).append(',').append(quoted(part));
        csv.append(',').append(one + 0.0).append(',').append(other + 0.0).append("\r\n"); // + 0.0: no minus zero
    }

    private static String quoted(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
