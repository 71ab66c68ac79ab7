package evenhand.chart;

import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Hatch;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Paints bars, hatched where they are parts of a sum, and the words at their ends. */
final class BarPainter {
    /** Part of its lane that a bar fills. */
    private static final double FILLED = 0.72;

    /** No bar is thicker, in sizes of type. */
    private static final double THICKEST = 2;

    private BarPainter() {}

    static void bars(Sheet sheet) {
        for (Bar bar : sheet.chart.bars()) {
            Rectangle2D place = place(sheet, bar);
            fill(sheet, bar, place, false);
            sheet.room.take(place);
        }
        for (Bar bar : sheet.chart.bars()) {
            if (bar.part().isEmpty() && bar.style().ofSetup()) {
                double tip = sheet.x(bar.to());
                sheet.marker(bar.style(), tip, place(sheet, bar).getCenterY(), sheet.width(7));
            }
        }
    }

    static Rectangle2D place(Sheet sheet, Bar bar) {
        double lane = Math.abs(sheet.y(1) - sheet.y(0)) / bar.lanes();
        double thick = Math.min(FILLED * lane, THICKEST * sheet.em());
        double from = sheet.x(Math.min(bar.from(), bar.to()));
        double to = sheet.x(Math.max(bar.from(), bar.to()));
        return new Rectangle2D.Double(from, sheet.y(bar.middle()) - thick / 2, to - from, thick);
    }

    /** A bar's inside and outline. */
    static void fill(Sheet sheet, Bar bar, Rectangle2D place, boolean marked) {
        Graphics2D g = sheet.g;
        g.setColor(bar.hatch() == Hatch.FULL ? sheet.theme.bar(bar.style()) : sheet.theme.soft(bar.style(), 0.1));
        g.fill(place);
        g.setColor(sheet.theme.colour(bar.style()));
        g.setStroke(new BasicStroke((float) sheet.width(1)));
        hatch(sheet, bar.hatch(), place);
        g.setStroke(new BasicStroke((float) sheet.width(1)));
        g.draw(place);
        if (marked) {
            sheet.marker(bar.style(), place.getCenterX(), place.getCenterY(), sheet.width(7));
        }
    }

    private static void hatch(Sheet sheet, Hatch hatch, Rectangle2D place) {
        Graphics2D g = sheet.g;
        double step = 0.5 * sheet.em();
        double h = place.getHeight();
        Shape clip = g.getClip();
        g.clip(place);
        if (hatch == Hatch.UPRIGHT) {
            for (double x = place.getX() + step / 2; x < place.getMaxX(); x += step) {
                g.draw(new Line2D.Double(x, place.getY(), x, place.getMaxY()));
            }
        }
        if (hatch == Hatch.RISING || hatch == Hatch.CROSSED) {
            for (double x = place.getX() - h; x < place.getMaxX(); x += 1.3 * step) {
                g.draw(new Line2D.Double(x, place.getMaxY(), x + h, place.getY()));
            }
        }
        if (hatch == Hatch.FALLING || hatch == Hatch.CROSSED) {
            for (double x = place.getX() - h; x < place.getMaxX(); x += 1.3 * step) {
                g.draw(new Line2D.Double(x, place.getY(), x + h, place.getMaxY()));
            }
        }
        if (hatch == Hatch.DOTTED) {
            double r = 0.12 * sheet.em();
            for (double x = place.getX() + step / 2; x < place.getMaxX(); x += step) {
                for (double y = place.getY() + step / 2; y < place.getMaxY(); y += step) {
                    g.fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
                }
            }
        }
        g.setClip(clip);
    }

    /** Words at the ends of bars: outside where there is room, else inside. */
    static void words(Sheet sheet) {
        for (Bar bar : sheet.chart.bars()) {
            if (bar.words().isEmpty()) {
                continue;
            }
            Rectangle2D size = sheet.size(bar.words(), sheet.theme.small());
            Rectangle2D place = place(sheet, bar);
            double gap = 0.55 * sheet.em();
            boolean rightwards = bar.to() >= bar.from();
            double outside = rightwards ? place.getMaxX() + gap : place.getX() - gap - size.getWidth();
            double inside = rightwards ? place.getMaxX() - gap - size.getWidth() : place.getX() + gap;
            double back = rightwards ? place.getX() - gap - size.getWidth() : place.getMaxX() + gap;
            double y = place.getCenterY() - size.getHeight() / 2;
            for (double x : new double[] {outside, inside, back}) {
                Rectangle2D box = new Rectangle2D.Double(x, y, size.getWidth(), size.getHeight());
                boolean fits = x >= sheet.plot.getX() - 1 && box.getMaxX() <= sheet.plot.getMaxX() + 1;
                if (fits && (x == inside ? size.getWidth() + 2 * gap < place.getWidth() : sheet.room.isFree(box))) {
                    sheet.room.take(box);
                    sheet.write(bar.words(), sheet.theme.small(), sheet.theme.ink(), box);
                    break;
                }
            }
        }
    }
}
