package evenhand.drawing;

import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Outline;
import evenhand.drawing.Item.Sign;
import evenhand.drawing.Item.Tone;
import evenhand.drawing.Item.Words;
import evenhand.look.LabelRoom;
import evenhand.look.Picture;
import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Paints drawings: thin lines, the body quiet, wheels and links dark, words where nothing else stands. */
public final class DrawingPainter {
    /** Sizes of type per metre from which on lines of parts are as thick as they get. */
    private static final double FULL_SIZE = 17;

    private static final double THINNEST = 0.5;

    /** Of words at the hand, in sizes of type. */
    private static final double WIDEST = 24;

    private final Graphics2D g;
    private final Theme theme;
    private final Scaling scaling;
    private final LabelRoom room;
    private final List<Label> labels = new ArrayList<>();

    private DrawingPainter(Graphics2D g, Theme theme, Scaling scaling, Rectangle2D area) {
        this.g = g;
        this.theme = theme;
        this.scaling = scaling;
        room = new LabelRoom(area);
    }

    /** Words in a painted drawing, and where, px. */
    public record Label(String words, Rectangle2D place) {}

    /** A drawing as it was painted. */
    public record Painted(Scaling scaling, List<Label> labels) {
        public Painted {
            labels = List.copyOf(labels);
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
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(theme.background());
        g.fill(area);
        double em = theme.size();
        double head = drawing.title().isEmpty() ? 0.7 * em : 2.2 * em;
        double foot = drawing.scaleWords().isEmpty() ? 0.7 * em : 1.9 * em;
        double beside = em * (1 + drawing.beside());
        Rectangle2D inner = new Rectangle2D.Double(
                area.getX() + beside,
                area.getY() + head,
                Math.max(1, area.getWidth() - 2 * beside),
                Math.max(1, area.getHeight() - head - foot));
        Scaling scaling = Scaling.fit(drawing.world(), inner);
        DrawingPainter painter = new DrawingPainter(g, theme, scaling, area);
        if (!drawing.title().isEmpty()) {
            painter.title(drawing, area);
        }
        if (!drawing.scaleWords().isEmpty()) {
            painter.scaleBar(drawing, area);
        }
        for (Item item : drawing.items()) {
            if (item instanceof Outline outline) {
                painter.outline(outline);
            }
        }
        drawing.handles().stream().filter(handle -> !handle.isPoint()).forEach(painter::handle);
        for (Mark mark : drawing.marks()) {
            painter.sign(mark);
        }
        for (Item item : drawing.items()) {
            if (item instanceof Item.Arrow arrow) {
                painter.arrow(arrow);
            }
        }
        for (Item item : drawing.items()) {
            if (item instanceof Item.Arrow arrow) {
                painter.arrowWords(arrow);
            }
        }
        for (Item item : drawing.items()) {
            if (item instanceof Words words) {
                painter.words(words);
            }
        }
        for (Mark mark : drawing.marks()) {
            painter.markWords(mark, drawing.marks());
        }
        return new Painted(scaling, painter.labels);
    }

    private void title(Drawing drawing, Rectangle2D area) {
        double em = theme.size();
        Font font = theme.head();
        String words = LabelRoom.cut(drawing.title(), font, g.getFontRenderContext(), area.getWidth() - 1.4 * em);
        Rectangle2D size = LabelRoom.size(words, font, g.getFontRenderContext());
        write(
                words,
                font,
                theme.ink(),
                new Rectangle2D.Double(
                        area.getX() + 0.7 * em, area.getY() + 0.7 * em, size.getWidth(), size.getHeight()));
    }

    private void scaleBar(Drawing drawing, Rectangle2D area) {
        double em = theme.size();
        double x = area.getX() + 0.7 * em;
        double y = area.getMaxY() - em;
        double length = scaling.scale() * drawing.scaleBar();
        g.setColor(theme.quiet());
        g.setStroke(new BasicStroke((float) width(1.2)));
        g.draw(new Line2D.Double(x, y, x + length, y));
        g.draw(new Line2D.Double(x, y - 0.3 * em, x, y + 0.3 * em));
        g.draw(new Line2D.Double(x + length, y - 0.3 * em, x + length, y + 0.3 * em));
        Rectangle2D size = LabelRoom.size(drawing.scaleWords(), theme.small(), g.getFontRenderContext());
        write(
                drawing.scaleWords(),
                theme.small(),
                theme.quiet(),
                new Rectangle2D.Double(
                        x + length + 0.5 * em, y - size.getHeight() / 2, size.getWidth(), size.getHeight()));
    }

    private double width(double width) {
        return width * theme.size() / 12;
    }

    private void outline(Outline outline) {
        Shape shape = outline.path().createTransformedShape(scaling.transform());
        Ink ink = outline.ink();
        Color own = outline.style().ofSetup() ? theme.colour(outline.style()) : theme.quiet();
        switch (ink) {
            case TYRE -> fill(shape, theme.mixed(theme.ink(), 0.7));
            case RIM -> fill(shape, theme.mixed(theme.ink(), 0.25));
            case FREE -> fill(shape, theme.mixed(theme.ink(), 0.35));
            case SQUEEZED -> fill(shape, theme.warning());
            case TRACK -> draw(shape, theme.quiet(), new BasicStroke((float) width(1)));
            case GROUND -> draw(shape, theme.quiet(), new BasicStroke((float) width(1.2)));
            case BODY ->
                draw(
                        shape,
                        outline.style().ofSetup() ? own : theme.mixed(theme.quiet(), 0.6),
                        outline.style().ofSetup()
                                ? outline.style().stroke(width(1.6))
                                : new BasicStroke((float) width(1.2)));
            case LINK -> draw(shape, theme.ink(), new BasicStroke((float) width(2)));
            case ROD -> clear(shape, theme.ink(), asThick(2));
            case STOPPED -> clear(shape, theme.warning(), asThick(3));
            case PART -> draw(shape, theme.mixed(theme.ink(), 0.5), new BasicStroke((float) asThick(2.6)));
            case PIVOT -> fill(shape, theme.ink());
            case JOINT -> {
                fill(shape, theme.background());
                draw(shape, theme.ink(), new BasicStroke((float) asThick(1.2)));
            }
            case WHEEL -> {
                fill(shape, theme.mixed(theme.ink(), 0.1));
                draw(shape, theme.mixed(theme.ink(), 0.5), new BasicStroke((float) width(1.2)));
            }
            case SPRING -> draw(shape, theme.ink(), new BasicStroke((float) asThick(1.2)));
            case AXIS ->
                draw(
                        shape,
                        own,
                        new BasicStroke(
                                (float) width(1.4),
                                BasicStroke.CAP_BUTT,
                                BasicStroke.JOIN_MITER,
                                10,
                                new float[] {(float) width(9), (float) width(3), (float) width(2), (float) width(3)},
                                0));
            case DIMENSION -> draw(shape, theme.colour(new SetupStyle(0)), new BasicStroke((float) width(2)));
            case MEASURE -> draw(shape, theme.quiet(), new BasicStroke((float) width(0.8)));
        }
        if (ink != Ink.GROUND && ink != Ink.TRACK) {
            avoid(shape);
        }
    }

    /** A force: a shaft with a head that is no longer than the arrow. */
    private void arrow(Item.Arrow arrow) {
        double x = scaling.px(arrow.x());
        double y = scaling.py(arrow.z());
        double tipX = scaling.px(arrow.tipX());
        double tipY = scaling.py(arrow.tipZ());
        double length = Math.hypot(tipX - x, tipY - y);
        double head = Math.min(width(9), 0.7 * length);
        double alongX = (tipX - x) / length;
        double alongY = (tipY - y) / length;
        Color colour = theme.colour(arrow.style());
        clear(
                new Line2D.Double(x, y, tipX - head * alongX, tipY - head * alongY),
                colour,
                width(arrow.style().ofSetup() ? 2.4 : 1.4));
        Path2D point = new Path2D.Double();
        point.moveTo(tipX, tipY);
        point.lineTo(tipX - head * alongX - 0.4 * head * alongY, tipY - head * alongY + 0.4 * head * alongX);
        point.lineTo(tipX - head * alongX + 0.4 * head * alongY, tipY - head * alongY - 0.4 * head * alongX);
        point.closePath();
        fill(point, colour);
        room.avoid(x, y, tipX, tipY);
    }

    /** Beside the arrow's tip, or its foot, where there is room. */
    private void arrowWords(Item.Arrow arrow) {
        Font font = theme.plain();
        Rectangle2D size = LabelRoom.size(arrow.words(), font, g.getFontRenderContext());
        Point2D tip = new Point2D.Double(scaling.px(arrow.tipX()), scaling.py(arrow.tipZ()));
        Point2D foot = new Point2D.Double(scaling.px(arrow.x()), scaling.py(arrow.z()));
        room.beside(tip, size.getWidth(), size.getHeight(), width(4))
                .or(() -> room.beside(foot, size.getWidth(), size.getHeight(), width(4)))
                .ifPresent(place -> over(arrow.words(), font, theme.colour(arrow.style()), place));
    }

    /** The width of a part's line, thinner where the whole car is small. */
    private double asThick(double width) {
        double full = width(width);
        return full * Math.max(THINNEST, Math.min(1, scaling.scale() / theme.size() / FULL_SIZE));
    }

    /** A line with a rim of the ground, so that it is seen on what is dark. */
    private void clear(Shape shape, Color colour, double width) {
        draw(shape, theme.background(), new BasicStroke((float) (2.2 * width)));
        draw(shape, colour, new BasicStroke((float) width));
    }

    private void fill(Shape shape, Color colour) {
        g.setColor(colour);
        g.fill(shape);
    }

    private void draw(Shape shape, Color colour, BasicStroke stroke) {
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(shape);
    }

    /** Words are to stay off these lines. */
    private void avoid(Shape shape) {
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator path = shape.getPathIterator(null, 2); !path.isDone(); path.next()) {
            switch (path.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> {
                    startX = at[0];
                    startY = at[1];
                }
                case PathIterator.SEG_LINETO -> room.avoid(x, y, at[0], at[1]);
                default -> {
                    room.avoid(x, y, startX, startY);
                    at[0] = startX;
                    at[1] = startY;
                }
            }
            x = at[0];
            y = at[1];
        }
    }

    private void sign(Mark mark) {
        double x = scaling.px(mark.x());
        double y = scaling.py(mark.z());
        double r = width(6);
        Color colour = theme.colour(mark.style());
        g.setStroke(new BasicStroke((float) width(1.8)));
        if (mark.sign() == Sign.ROLL_CENTRE) {
            fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r), theme.background());
            g.setColor(colour);
            g.draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
            g.draw(new Line2D.Double(x - 1.7 * r, y, x + 1.7 * r, y));
        } else {
            double d = 1.25 * r;
            Path2D diamond = new Path2D.Double();
            diamond.moveTo(x, y - d);
            diamond.lineTo(x + d, y);
            diamond.lineTo(x, y + d);
            diamond.lineTo(x - d, y);
            diamond.closePath();
            fill(diamond, theme.background());
            Path2D lower = new Path2D.Double();
            lower.moveTo(x - d, y);
            lower.lineTo(x + d, y);
            lower.lineTo(x, y + d);
            lower.closePath();
            fill(lower, colour);
            g.setColor(colour);
            g.draw(diamond);
        }
        room.take(new Rectangle2D.Double(x - 1.3 * r, y - 1.3 * r, 2.6 * r, 2.6 * r));
    }

    private void markWords(Mark mark, List<Mark> marks) {
        Font font = theme.plain();
        Rectangle2D size = LabelRoom.size(mark.words(), font, g.getFontRenderContext());
        Point2D at = place(mark);
        List<Point2D> others = marks.stream()
                .filter(other -> !other.equals(mark))
                .map(this::place)
                .toList();
        Optional<Rectangle2D> free = room.beside(at, others, size.getWidth(), size.getHeight(), width(12))
                .or(() -> room.beside(at, size.getWidth(), size.getHeight(), width(12)));
        free.ifPresent(place -> over(mark.words(), font, theme.ink(), place));
    }

    private Point2D place(Mark mark) {
        return new Point2D.Double(scaling.px(mark.x()), scaling.py(mark.z()));
    }

    private void words(Words words) {
        Font font = words.tone() == Tone.STRONG ? evenhand.look.Typeface.strong(theme.size()) : theme.plain();
        Color colour = switch (words.tone()) {
            case PLAIN, STRONG -> theme.ink();
            case QUIET -> theme.quiet();
            case WARNING -> theme.warning();
        };
        Rectangle2D size = LabelRoom.size(words.words(), font, g.getFontRenderContext());
        double gap = width(3);
        double x = scaling.px(words.x()) + words.alignX() * gap + (words.alignX() - 1) * size.getWidth() / 2;
        double y = scaling.py(words.z()) - words.alignZ() * gap - (words.alignZ() + 1) * size.getHeight() / 2;
        Rectangle2D place = new Rectangle2D.Double(x, y, size.getWidth(), size.getHeight());
        for (int i = 0; i < 6 && !room.isFree(place); i++) {
            double move = (i / 2 + 1) * 0.6 * size.getHeight() * (i % 2 == 0 ? -1 : 1);
            place = new Rectangle2D.Double(x, y + move, size.getWidth(), size.getHeight());
        }
        room.take(place);
        over(words.words(), font, colour, place);
    }

    private void over(String words, Font font, Color colour, Rectangle2D place) {
        LabelRoom.rim(g, words, font, theme.background(), width(3), place);
        write(words, font, colour, place);
    }

    private void write(String words, Font font, Color colour, Rectangle2D place) {
        g.setFont(font);
        g.setColor(colour);
        LabelRoom.draw(g, words, place);
        room.take(place);
        labels.add(new Label(words, place));
    }

    /** What can be pulled: a light ring, so that it is found without being loud. */
    private void handle(Handle handle) {
        double x = scaling.px(handle.x());
        double y = scaling.py(handle.z());
        double r = width(11);
        g.setColor(theme.mixed(theme.quiet(), 0.7));
        g.setStroke(new BasicStroke((float) width(1)));
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
