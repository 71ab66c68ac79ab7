package evenhand.chart;

import evenhand.chart.Part.Whisker;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Paints values with what doubt leaves of them: a marker on a line with a short stroke at both ends. */
final class WhiskerPainter {
    /** Half the height of the strokes at the ends, and the size of the marker, for type of 12 px. */
    private static final double END = 4;

    private static final double MARKER = 8;

    private WhiskerPainter() {}

    static void whiskers(Sheet sheet) {
        Graphics2D g = sheet.g;
        double end = sheet.width(END);
        for (Whisker one : sheet.chart.whiskers()) {
            double y = sheet.y(one.middle());
            double low = sheet.x(one.low());
            double high = sheet.x(one.high());
            g.setColor(sheet.theme.colour(one.style()));
            g.setStroke(new BasicStroke((float) sheet.width(Part.Weight.FINE.width())));
            if (high > low) {
                g.draw(new Line2D.Double(low, y, high, y));
                g.draw(new Line2D.Double(low, y - end, low, y + end));
                g.draw(new Line2D.Double(high, y - end, high, y + end));
            }
            sheet.marker(one.style(), sheet.x(one.value()), y, sheet.width(MARKER));
            sheet.room.take(new Rectangle2D.Double(low, y - end, Math.max(2 * end, high - low), 2 * end));
        }
    }

    /** Right of each, or left where there is no room. */
    static void words(Sheet sheet) {
        double gap = 0.7 * sheet.em();
        for (Whisker one : sheet.chart.whiskers()) {
            Rectangle2D size = sheet.size(one.words(), sheet.theme.small());
            double y = sheet.y(one.middle()) - size.getHeight() / 2;
            double right = Math.max(sheet.x(one.high()), sheet.x(one.value())) + gap;
            double left = Math.min(sheet.x(one.low()), sheet.x(one.value())) - gap - size.getWidth();
            for (double x : new double[] {right, left}) {
                Rectangle2D box = new Rectangle2D.Double(x, y, size.getWidth(), size.getHeight());
                if (x >= sheet.plot.getX() && box.getMaxX() <= sheet.plot.getMaxX() + 1 && sheet.room.isFree(box)) {
                    sheet.room.take(box);
                    sheet.write(one.words(), sheet.theme.small(), sheet.theme.ink(), box);
                    break;
                }
            }
        }
    }
}
