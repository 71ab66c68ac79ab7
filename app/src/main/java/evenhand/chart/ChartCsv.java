package evenhand.chart;

import evenhand.chart.Part.Point;
import evenhand.forms.CsvForm;
import java.util.List;

/** The numbers of a chart as CSV (RFC 4180), a row per point, in the units of its axes. */
public final class ChartCsv {
    private ChartCsv() {}

    /** Curves: what it is, whose, which part, and both coordinates. Bars: their row, and from where to where. */
    public static String write(Chart chart) {
        StringBuilder csv = new StringBuilder();
        if (chart.up() instanceof Axis.Rows rows) {
            csv.append("row,name,part,")
                    .append(CsvForm.quoted("from: " + chart.across().title()))
                    .append(',')
                    .append(CsvForm.quoted("to: " + chart.across().title()))
                    .append("\r\n");
            for (Part.Bar bar : chart.bars()) {
                row(csv, rows.rows().get(bar.row()).words(), bar.name(), bar.part(), bar.from(), bar.to());
            }
            for (Part.Whisker whisker : chart.whiskers()) {
                String row = rows.rows().get(whisker.row()).words();
                row(csv, row, whisker.name(), "value", whisker.value(), whisker.value());
                row(csv, row, whisker.name(), "doubt", whisker.low(), whisker.high());
            }
            return csv.toString();
        }
        csv.append("what,name,part,")
                .append(CsvForm.quoted(chart.across().title()))
                .append(',')
                .append(CsvForm.quoted(chart.up().title()))
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
        csv.append(CsvForm.quoted(what))
                .append(',')
                .append(CsvForm.quoted(name))
                .append(',')
                .append(CsvForm.quoted(part));
        csv.append(',').append(one + 0.0).append(',').append(other + 0.0).append("\r\n"); // + 0.0: no minus zero
    }
}
