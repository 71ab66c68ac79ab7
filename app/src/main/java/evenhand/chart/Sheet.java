package evenhand.chart;

import evenhand.look.LabelRoom;
import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.ui.RectangleEdge;

/** A chart while it is painted: where values stand, and where words stand already. */
final class Sheet {
    final Graphics2D g;
    final Theme theme;
    final Chart chart;
    final Rectangle2D area;
    final Rectangle2D plot;
    final LabelRoom room;
    final List<ChartPainter.Label> labels = new ArrayList<>();

    private final Ruling across;
    private final Ruling up;

    Sheet(Graphics2D g, Theme theme, Chart chart, Rectangle2D area, Rectangle2D plot, Ruling across, Ruling up) {
        this.g = g;
        this.theme = theme;
        this.chart = chart;
        this.area = area;
        this.plot = plot;
        this.across = across;
        this.up = up;
        this.room = new LabelRoom(area);
    }

    double x(double value) {
        return across.valueToJava2D(value, plot, RectangleEdge.BOTTOM);
    }

    double y(double value) {
        return up.valueToJava2D(value, plot, RectangleEdge.LEFT);
    }

    double em() {
        return theme.size();
    }

    FontRenderContext context() {
        return g.getFontRenderContext();
    }

    /** A width in px for a line that is so wide with type of 12 px. */
    double width(double width) {
        return width * em() / 12;
    }

    Rectangle2D size(String words, Font font) {
        return LabelRoom.size(words, font, context());
    }

    /** Sets words into a place. */
    void write(String words, Font font, Color colour, Rectangle2D place) {
        g.setFont(font);
        g.setColor(colour);
        LabelRoom.draw(g, words, place);
        labels.add(new ChartPainter.Label(words, place));
    }

    /** Sets words into a place, with a rim of the ground that keeps them readable over lines. */
    void writeOver(String words, Font font, Color colour, Rectangle2D place) {
        LabelRoom.rim(g, words, font, theme.background(), 0.25 * em(), place);
        write(words, font, colour, place);
    }

    void marker(SetupStyle style, double x, double y, double size) {
        Shape shape = style.marker().at(x, y, size);
        g.setColor(theme.colour(style));
        g.fill(shape);
    }
}
