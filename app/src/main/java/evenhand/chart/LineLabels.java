package evenhand.chart;

import evenhand.chart.Part.Line;
import evenhand.chart.Part.Point;
import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import java.awt.BasicStroke;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Names of lines at their ends, in a column right of the plot, kept apart from each other. */
final class LineLabels {
    static final LineLabels NONE = new LineLabels(List.of(), 0, 0);

    private final List<Named> named;
    private final double lineHeight;
    private final double width;

    /** A line's name, and where the line leaves what is seen. */
    private record Named(Line line, List<String> words, Point end) {}

    private LineLabels(List<Named> named, double lineHeight, double width) {
        this.named = named;
        this.lineHeight = lineHeight;
        this.width = width;
    }

    static LineLabels of(Chart chart, Zoom zoom, Theme theme, FontRenderContext context, double widest) {
        List<Named> named = new ArrayList<>();
        double em = theme.size();
        double width = 0;
        for (Line line : chart.lines()) {
            Optional<Point> end = lastSeen(line.points(), zoom);
            if (end.isPresent()) {
                List<String> words = Wrapped.lines(words(line), theme.plain(), context, widest - 2.2 * em, 3);
                for (String one : words) {
                    width = Math.max(
                            width, theme.plain().getStringBounds(one, context).getWidth());
                }
                named.add(new Named(line, words, end.get()));
            }
        }
        return new LineLabels(named, 1.25 * em, named.isEmpty() ? 0 : Math.ceil(width + 2.2 * em));
    }

    private static String words(Line line) {
        return line.ending().isEmpty() ? line.label() : line.label() + ": " + line.ending();
    }

    /** The last place of a line inside; on the way out where it leaves. */
    static Optional<Point> lastSeen(List<Point> points, Zoom zoom) {
        for (int i = points.size() - 1; i >= 0; i--) {
            Point point = points.get(i);
            if (zoom.across().holds(point.x()) && zoom.up().holds(point.y())) {
                if (i == points.size() - 1) {
                    return Optional.of(point);
                }
                Point next = points.get(i + 1);
                double part = Math.min(part(point.x(), next.x(), zoom.across()), part(point.y(), next.y(), zoom.up()));
                return Optional.of(new Point(
                        point.x() + part * (next.x() - point.x()), point.y() + part * (next.y() - point.y())));
            }
        }
        return Optional.empty();
    }

    /** How far one may go from inside towards another value before leaving a span, at most all the way. */
    private static double part(double from, double to, Span span) {
        double edge = to > from ? span.high() : span.low();
        return to == from ? 1 : Math.max(0, Math.min(1, (edge - from) / (to - from)));
    }

    /** Of the column, px. */
    double width() {
        return width;
    }

    /** That all names need below one another, px. */
    double height() {
        return lineHeight * named.stream().mapToInt(one -> one.words().size()).sum();
    }

    void paint(Sheet sheet) {
        List<Named> sorted = new ArrayList<>(named);
        sorted.sort(Comparator.comparingDouble(one -> sheet.y(one.end().y())));
        double em = sheet.em();
        double x = sheet.plot.getMaxX() + 0.5 * em;
        double[] y = uncrossed(sheet, sorted, x);
        for (int i = 0; i < sorted.size(); i++) {
            Named one = sorted.get(i);
            double middle = y[i];
            double endX = sheet.x(one.end().x());
            double endY = sheet.y(one.end().y());
            sheet.g.setColor(sheet.theme.soft(one.line().style(), 0.55));
            sheet.g.setStroke(new BasicStroke((float) sheet.width(0.8)));
            sheet.g.draw(leader(sheet, one, x, middle));
            sheet.room.avoid(endX, endY, x, middle);
            if (one.line().style().ofSetup()) {
                sheet.marker(one.line().style(), x + 0.5 * em, middle, sheet.width(7.5));
            }
            double top = middle - one.words().size() * lineHeight / 2;
            for (String words : one.words()) {
                Rectangle2D size = sheet.size(words, sheet.theme.plain());
                Rectangle2D place = new Rectangle2D.Double(x + 1.25 * em, top, size.getWidth(), lineHeight);
                sheet.room.take(place);
                sheet.write(words, sheet.theme.plain(), sheet.theme.ink(), place);
                top += lineHeight;
            }
        }
    }

    /** Middles of the labels, px, in an order that has no two leaders cross: their lines do not all end at the same place. */
    private double[] uncrossed(Sheet sheet, List<Named> sorted, double x) {
        double[] y = spread(sheet, sorted);
        for (int round = 0; round < sorted.size(); round++) {
            boolean still = true;
            for (int i = 1; i < sorted.size(); i++) {
                if (leader(sheet, sorted.get(i - 1), x, y[i - 1])
                        .intersectsLine(leader(sheet, sorted.get(i), x, y[i]))) {
                    Collections.swap(sorted, i - 1, i);
                    y = spread(sheet, sorted);
                    still = false;
                }
            }
            if (still) {
                break;
            }
        }
        return y;
    }

    private static Line2D leader(Sheet sheet, Named one, double x, double middle) {
        return new Line2D.Double(sheet.x(one.end().x()), sheet.y(one.end().y()), x, middle);
    }

    /** Middles of the labels, px: as near to the lines' ends as they may be without overlap. */
    private double[] spread(Sheet sheet, List<Named> sorted) {
        double[] y = new double[sorted.size()];
        double[] half = new double[sorted.size()];
        double from = sheet.plot.getY() - lineHeight / 2;
        double to = sheet.plot.getMaxY() + lineHeight / 2;
        double free = from;
        for (int i = 0; i < y.length; i++) {
            half[i] = sorted.get(i).words().size() * lineHeight / 2;
            y[i] = Math.max(sheet.y(sorted.get(i).end().y()), free + half[i]);
            free = y[i] + half[i];
        }
        free = to;
        for (int i = y.length - 1; i >= 0; i--) {
            y[i] = Math.min(y[i], free - half[i]);
            free = y[i] - half[i];
        }
        return y;
    }

    /** A short piece of a set-up's line with its marker. */
    static void sample(Sheet sheet, SetupStyle style, Part.Weight weight, double from, double to, double y) {
        sheet.g.setColor(sheet.theme.colour(style));
        sheet.g.setStroke(style.stroke(sheet.width(weight.width())));
        sheet.g.draw(new Line2D.Double(from, y, to, y));
        if (style.ofSetup()) {
            sheet.marker(style, (from + to) / 2, y, sheet.width(weight == Part.Weight.HEAVY ? 7.5 : 6));
        }
    }
}
