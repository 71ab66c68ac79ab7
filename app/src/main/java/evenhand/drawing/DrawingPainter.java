package evenhand.drawing;

import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Outline;
import evenhand.drawing.Item.Tone;
import evenhand.drawing.Item.Words;
import evenhand.look.LabelRoom;
import evenhand.look.Picture;
import evenhand.look.Theme;
import evenhand.look.Typeface;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Paints drawings: thin lines, the body quiet, wheels and links dark, words where nothing else stands. */
public final class DrawingPainter {
    private static final Pattern NUMBERS = Pattern.compile("[0-9.,−-]+");

    private final Graphics2D g;
    private final Theme theme;
    private final Scaling scaling;
    private final Inks inks;
    private final Placement room;
    private final Map<String, Point2D> before;
    private final List<Label> labels = new ArrayList<>();
    private final Map<String, Point2D> ways = new HashMap<>();
    private final Set<String> said = new HashSet<>();

    private DrawingPainter(Graphics2D g, Theme theme, Scaling scaling, Rectangle2D area, Map<String, Point2D> before) {
        this.g = g;
        this.theme = theme;
        this.scaling = scaling;
        this.before = before;
        inks = new Inks(g, theme, scaling);
        double edge = 0.3 * theme.size();
        room = new Placement(new Rectangle2D.Double(
                area.getX() + edge,
                area.getY() + edge,
                Math.max(0, area.getWidth() - 2 * edge),
                Math.max(0, area.getHeight() - 2 * edge)));
    }

    /** Words in a painted drawing, and where, px. */
    public record Label(String words, Rectangle2D place) {}

    /**
     * A drawing as it was painted.
     *
     * @param ways from the points that words belong to to the words, by what they say without its numbers
     */
    public record Painted(Scaling scaling, List<Label> labels, Map<String, Point2D> ways) {
        public Painted {
            labels = List.copyOf(labels);
            ways = Map.copyOf(ways);
        }
    }

    /** A drawing as a picture of a size, to be kept or pasted elsewhere. */
    public static Picture picture(Drawing drawing, Theme theme, int width, int height) {
        return new Picture(
                width,
                height,
                g -> paint(drawing.withoutHandles(), theme, g, new Rectangle2D.Double(0, 0, width, height)));
    }

    /** Paints a drawing into an area. */
    public static Painted paint(Drawing drawing, Theme theme, Graphics2D g, Rectangle2D area) {
        return paint(drawing, theme, g, area, 0, Map.of());
    }

    /**
     * Paints a drawing into an area.
     *
     * @param corner width of what else stands in the upper right corner, px
     * @param before where words stood when it was last painted: they stay there as long as that is good
     */
    static Painted paint(
            Drawing drawing, Theme theme, Graphics2D g, Rectangle2D area, double corner, Map<String, Point2D> before) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(theme.background());
        g.fill(area);
        double em = theme.size();
        List<String> title = LabelRoom.folded(
                drawing.title(), theme.head(), g.getFontRenderContext(), area.getWidth() - 1.4 * em - corner);
        double head = 0.7 * em + 1.5 * em * title.size();
        double foot = (drawing.scaleWords().isEmpty() ? 0.7 : 1.9) * em + drawing.below() * em;
        double beside = 0.5 * em;
        Rectangle2D inner = new Rectangle2D.Double(
                area.getX() + beside,
                area.getY() + head,
                Math.max(1, area.getWidth() - 2 * beside),
                Math.max(1, area.getHeight() - head - foot));
        Scaling scaling = Scaling.fit(drawing.world(), inner);
        DrawingPainter painter = new DrawingPainter(g, theme, scaling, area, before);
        painter.title(title, area, corner);
        if (!drawing.scaleWords().isEmpty()) {
            painter.foot(drawing, area);
        }
        painter.lines(drawing);
        painter.words(drawing);
        return new Painted(scaling, painter.labels, painter.ways);
    }

    private void title(List<String> title, Rectangle2D area, double corner) {
        double em = theme.size();
        Font font = theme.head();
        double y = area.getY() + 0.7 * em;
        for (String words : title) {
            Rectangle2D size = LabelRoom.size(words, font, g.getFontRenderContext());
            write(
                    words,
                    font,
                    theme.ink(),
                    new Rectangle2D.Double(area.getX() + 0.7 * em, y, size.getWidth(), size.getHeight()));
            y += 1.5 * em;
        }
        if (corner > 0) {
            room.take(
                    new Rectangle2D.Double(area.getMaxX() - corner - 0.5 * em, area.getY(), corner + em, corner + em));
        }
    }

    /** The scale bar, and what is to be known of the whole drawing. */
    private void foot(Drawing drawing, Rectangle2D area) {
        double em = theme.size();
        double x = area.getX() + 0.7 * em;
        double y = area.getMaxY() - em;
        double length = scaling.scale() * drawing.scaleBar();
        g.setColor(theme.quiet());
        g.setStroke(new BasicStroke((float) inks.width(1.2)));
        g.draw(new Line2D.Double(x, y, x + length, y));
        g.draw(new Line2D.Double(x, y - 0.3 * em, x, y + 0.3 * em));
        g.draw(new Line2D.Double(x + length, y - 0.3 * em, x + length, y + 0.3 * em));
        room.take(new Rectangle2D.Double(x, y - 0.4 * em, length, 0.8 * em));
        Rectangle2D size = LabelRoom.size(drawing.scaleWords(), theme.small(), g.getFontRenderContext());
        double end = x + length + 0.5 * em;
        write(
                drawing.scaleWords(),
                theme.small(),
                theme.quiet(),
                new Rectangle2D.Double(end, y - size.getHeight() / 2, size.getWidth(), size.getHeight()));
        Rectangle2D note = LabelRoom.size(drawing.note(), theme.small(), g.getFontRenderContext());
        double start = area.getMaxX() - 0.7 * em - note.getWidth();
        if (!drawing.note().isEmpty() && start > end + size.getWidth() + em) {
            write(
                    drawing.note(),
                    theme.small(),
                    theme.quiet(),
                    new Rectangle2D.Double(start, y - note.getHeight() / 2, note.getWidth(), note.getHeight()));
        }
    }

    private void lines(Drawing drawing) {
        for (Item item : drawing.items()) {
            if (item instanceof Outline outline) {
                Shape shape = inks.outline(outline);
                if (isWhole(outline.ink())) {
                    room.cover(shape.getBounds2D());
                } else {
                    room.avoid(shape);
                }
            }
        }
        drawing.handles().stream()
                .filter(handle -> !handle.isPoint())
                .forEach(handle -> HandPainter.free(g, theme, scaling, handle));
        for (Mark mark : drawing.marks()) {
            double reach = inks.sign(mark);
            Point2D at = px(mark.x(), mark.z());
            room.take(new Rectangle2D.Double(at.getX() - reach, at.getY() - reach, 2 * reach, 2 * reach));
            room.point(at);
        }
        for (Item item : drawing.items()) {
            if (item instanceof Item.Arrow arrow) {
                inks.arrow(arrow);
                room.avoid(new Line2D.Double(px(arrow.x(), arrow.z()), px(arrow.tipX(), arrow.tipZ())));
                room.point(px(arrow.tipX(), arrow.tipZ()));
            }
        }
    }

    /** Whether no words are to stand inside it either. */
    private static boolean isWhole(Ink ink) {
        return switch (ink) {
            case TYRE, WHEEL, TRACK, SQUEEZED -> true;
            default -> false;
        };
    }

    /** What is said loudest finds its place first. */
    private void words(Drawing drawing) {
        List<Words> all = new ArrayList<>();
        for (Item item : drawing.items()) {
            if (item instanceof Words words) {
                all.add(words);
            }
        }
        all.stream().filter(words -> words.tone() == Tone.STRONG).forEach(this::words);
        for (Mark mark : drawing.marks()) {
            seek(mark.words(), theme.plain(), theme.ink(), px(mark.x(), mark.z()), inks.width(12), Optional.empty());
        }
        for (Item item : drawing.items()) {
            if (item instanceof Item.Arrow arrow) {
                seek(
                        arrow.words(),
                        theme.plain(),
                        theme.colour(arrow.style()),
                        px(arrow.tipX(), arrow.tipZ()),
                        inks.width(4),
                        Optional.empty());
            }
        }
        all.stream().filter(words -> words.tone() == Tone.WARNING).forEach(this::words);
        all.stream().filter(words -> words.tone() == Tone.PLAIN).forEach(this::words);
        all.stream().filter(words -> words.tone() == Tone.QUIET).forEach(this::words);
    }

    private Point2D px(double x, double z) {
        return new Point2D.Double(scaling.px(x), scaling.py(z));
    }

    private void words(Words words) {
        Font font = words.tone() == Tone.STRONG ? Typeface.strong(theme.size()) : theme.plain();
        Color colour = switch (words.tone()) {
            case PLAIN, STRONG -> theme.ink();
            case QUIET -> theme.quiet();
            case WARNING -> theme.warning();
        };
        // The same of left and right is said once; what a wheel carries is said at each.
        if (words.tone() != Tone.STRONG && !said.add(words.words())) {
            return;
        }
        Rectangle2D size = LabelRoom.size(words.words(), font, g.getFontRenderContext());
        double gap = inks.width(3);
        Point2D at = px(words.x(), words.z());
        double x = at.getX() + words.alignX() * gap + (words.alignX() - 1) * size.getWidth() / 2;
        double y = at.getY() - words.alignZ() * gap - (words.alignZ() + 1) * size.getHeight() / 2;
        boolean over = words.alignX() == 0 && words.alignZ() == 0;
        seek(words.words(), font, colour, at, over ? 0 : gap, Optional.of(new Point2D.Double(x, y)));
    }

    /** Sets words at the best place for them; they are left out where there is no room at all. */
    private void seek(String words, Font font, Color colour, Point2D at, double gap, Optional<Point2D> wish) {
        Rectangle2D size = LabelRoom.size(words, font, g.getFontRenderContext());
        String key = key(words);
        room.place(new Placement.Sought(
                        at, size.getWidth(), size.getHeight(), gap, wish, Optional.ofNullable(before.get(key))))
                .ifPresent(found -> {
                    found.leader().ifPresent(leader -> {
                        g.setColor(theme.quiet());
                        g.setStroke(new BasicStroke((float) inks.width(0.8)));
                        g.draw(leader);
                    });
                    Rectangle2D place = found.place();
                    if (!found.clear()) {
                        LabelRoom.rim(g, words, font, theme.background(), inks.width(3), place);
                    }
                    write(words, font, colour, place);
                    ways.put(key, new Point2D.Double(place.getX() - at.getX(), place.getY() - at.getY()));
                });
    }

    /** What says the same of another number; of several, the one that is reached first. */
    private String key(String words) {
        String key = NUMBERS.matcher(words).replaceAll("#");
        while (ways.containsKey(key)) {
            key += "'";
        }
        return key;
    }

    private void write(String words, Font font, Color colour, Rectangle2D place) {
        g.setFont(font);
        g.setColor(colour);
        LabelRoom.draw(g, words, place);
        room.take(place);
        labels.add(new Label(words, place));
    }
}
