package evenhand.chart;

import evenhand.chart.ChartPainter.Painted;
import evenhand.look.LabelRoom;
import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Paints the cross-hair and the values beside it over a chart. */
final class HairPainter {
    private HairPainter() {}

    /** A line of the box: words, with a marker before them where they are of a set-up. */
    private record Entry(String words, SetupStyle style) {}

    /** The values of all lines at one place. */
    static void curves(Graphics2D g, Theme theme, Painted painted, CrossHair hair, Rectangle2D area) {
        double x = painted.x().px(hair.x());
        Rectangle2D plot = painted.plot();
        if (x < plot.getX() || x > plot.getMaxX()) {
            return;
        }
        g.setColor(theme.ink());
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(x, plot.getY(), x, plot.getMaxY()));
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry(hair.place(), SetupStyle.NONE));
        for (CrossHair.Value value : hair.values()) {
            double y = painted.y().px(value.y());
            if (value.style().ofSetup() && y >= plot.getY() - 1 && y <= plot.getMaxY() + 1) {
                g.setColor(theme.background());
                g.fill(value.style().marker().at(x, y, 0.95 * theme.size()));
                g.setColor(theme.colour(value.style()));
                g.fill(value.style().marker().at(x, y, 0.65 * theme.size()));
            }
            entries.add(new Entry(value.words(), value.style()));
        }
        box(g, theme, entries, x, plot.getY() + theme.size(), area, plot.getMaxX());
    }

    /** The bars of one row. */
    static void row(Graphics2D g, Theme theme, List<String> words, double x, double y, Rectangle2D area) {
        if (!words.isEmpty()) {
            box(
                    g,
                    theme,
                    words.stream().map(one -> new Entry(one, SetupStyle.NONE)).toList(),
                    x,
                    y,
                    area,
                    area.getMaxX());
        }
    }

    /** To the right of a place where that leaves the names of the lines free, else to its left. */
    private static void box(
            Graphics2D g, Theme theme, List<Entry> entries, double x, double y, Rectangle2D area, double free) {
        double em = theme.size();
        Font font = theme.plain();
        double line = 1.35 * em;
        double width = 0;
        for (Entry entry : entries) {
            width = Math.max(
                    width,
                    LabelRoom.size(entry.words(), font, g.getFontRenderContext())
                                    .getWidth()
                            + (entry.style().ofSetup() ? 1.2 * em : 0));
        }
        width += 1.2 * em;
        // Many set-ups stand in columns beside one another.
        int rows = (int) Math.max(1, Math.min(entries.size(), (area.getHeight() - 0.8 * em) / line));
        int columns = (entries.size() + rows - 1) / rows;
        double column = width;
        width *= columns;
        double height = rows * line + 0.8 * em;
        double right = x + em;
        double left = right + width <= free ? right : Math.max(area.getX(), x - em - width);
        double top = Math.max(area.getY(), Math.min(y, area.getMaxY() - height));
        RoundRectangle2D box = new RoundRectangle2D.Double(left, top, width, height, 0.5 * em, 0.5 * em);
        g.setColor(theme.background());
        g.fill(box);
        g.setColor(theme.quiet());
        g.setStroke(new BasicStroke(1));
        g.draw(box);
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            double at = top + 0.4 * em + i % rows * line;
            int inColumn = i / rows;
            double start = left + inColumn * column + 0.6 * em;
            if (entry.style().ofSetup()) {
                g.setColor(theme.colour(entry.style()));
                g.fill(entry.style().marker().at(start + 0.4 * em, at + line / 2, 0.65 * em));
                start += 1.2 * em;
            }
            g.setFont(font);
            g.setColor(theme.ink());
            LabelRoom.draw(g, entry.words(), new Rectangle2D.Double(start, at, width, line));
        }
    }
}
