package evenhand.drawing;

import evenhand.look.LabelRoom;
import evenhand.look.Theme;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Paints what can be pulled, and what is said at the hand. */
final class HandPainter {
    /** Of words at the hand, in sizes of type. */
    private static final double WIDEST = 24;

    private HandPainter() {}

    /** What can be pulled: a light ring, so that it is found without being loud. */
    static void free(Graphics2D g, Theme theme, Scaling scaling, Handle handle) {
        double x = scaling.px(handle.x());
        double y = scaling.py(handle.z());
        double r = 0.92 * theme.size();
        g.setColor(theme.mixed(theme.quiet(), 0.7));
        g.setStroke(new BasicStroke((float) (theme.size() / 12)));
        g.draw(new Arc2D.Double(x - r, y - r, 2 * r, 2 * r, 50, 80, Arc2D.OPEN));
        g.draw(new Arc2D.Double(x - r, y - r, 2 * r, 2 * r, 230, 80, Arc2D.OPEN));
    }

    /**
     * Room for words at the hand: links run along the picture, so words of a point stand above or below it where they can; words of
     * what goes up and down stand beside it.
     */
    private static Rectangle2D box(
            Handle handle, double x, double y, double wide, double high, double off, Rectangle2D area) {
        double left = Math.max(area.getX(), Math.min(x - wide / 2, area.getMaxX() - wide));
        double top = Math.max(area.getY(), Math.min(y - high / 2, area.getMaxY() - high));
        List<Rectangle2D> beside = List.of(
                new Rectangle2D.Double(x + off, top, wide, high),
                new Rectangle2D.Double(x - off - wide, top, wide, high));
        List<Rectangle2D> overAndUnder = List.of(
                new Rectangle2D.Double(left, y + off, wide, high),
                new Rectangle2D.Double(left, y - off - high, wide, high));
        List<Rectangle2D> places = new ArrayList<>(handle.isPoint() ? overAndUnder : beside);
        places.addAll(handle.isPoint() ? beside : overAndUnder);
        return places.stream()
                .filter(area::contains)
                .findFirst()
                .orElse(new Rectangle2D.Double(left, area.getMaxY() - high, wide, high));
    }

    /**
     * A handle that is pointed at, focused or pulled: its usual range, and lines of words beside it.
     *
     * @param refused why it cannot be where it was pulled to; empty where it can
     */
    static void held(
            Graphics2D g,
            Theme theme,
            Scaling scaling,
            Handle handle,
            List<String> words,
            String refused,
            Rectangle2D area) {
        double x = scaling.px(handle.x());
        double y = scaling.py(handle.z());
        double em = theme.size();
        handle.way(Handle.Direction.UP).flatMap(way -> way.usual()).ifPresent(range -> {
            Handle.Way way = handle.way(Handle.Direction.UP).orElseThrow();
            double low = scaling.py(handle.z() + way.sign() * (range.low() - way.value()));
            double high = scaling.py(handle.z() + way.sign() * (range.high() - way.value()));
            g.setColor(theme.mixed(theme.quiet(), 0.5));
            g.setStroke(new BasicStroke((float) (0.35 * em), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(new Line2D.Double(x, low, x, high));
        });
        double r = 0.55 * em;
        g.setColor(theme.background());
        g.fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        g.setColor(theme.ink());
        g.setStroke(new BasicStroke((float) (0.18 * em)));
        g.draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        double line = 1.3 * em;
        double wide = em;
        List<String> lines = new ArrayList<>(words);
        lines.addAll(LabelRoom.folded(refused, theme.plain(), g.getFontRenderContext(), WIDEST * em));
        for (String one : lines) {
            wide = Math.max(
                    wide,
                    LabelRoom.size(one, theme.plain(), g.getFontRenderContext()).getWidth() + em);
        }
        double high = line * lines.size() + 0.5 * em;
        Rectangle2D box = box(handle, x, y, wide, high, 1.2 * em, area);
        double top = box.getY();
        g.setColor(theme.background());
        g.fill(box);
        g.setColor(theme.quiet());
        g.setStroke(new BasicStroke(1));
        g.draw(box);
        g.setFont(theme.plain());
        for (int i = 0; i < lines.size(); i++) {
            g.setColor(i == 0 ? theme.ink() : i < words.size() ? theme.quiet() : theme.warning());
            LabelRoom.draw(
                    g,
                    lines.get(i),
                    new Rectangle2D.Double(box.getX() + em / 2, top + 0.25 * em + i * line, wide, line));
        }
    }
}
