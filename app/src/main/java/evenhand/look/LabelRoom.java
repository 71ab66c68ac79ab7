package evenhand.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Room for words in a picture: remembers what is taken and finds a place beside a point that is free and inside. All in px, y
 * downwards.
 */
public final class LabelRoom {
    /** Sides of a point, best first: right, left, above, below, then the corners. */
    private static final double[][] SIDES = {
        {1, 0},
        {-1, 0},
        {0, -1},
        {0, 1},
        {1, -1},
        {-1, -1},
        {1, 1},
        {-1, 1},
        {1, -2},
        {-1, -2},
        {1, 2},
        {-1, 2},
        {0, -2.2},
        {0, 2.2},
        {1, -3.2},
        {-1, -3.2},
        {1, 3.2},
        {-1, 3.2}
    };

    /** Directions in which a rim is written about words, alternately at its whole and at half its width. */
    private static final int AROUND = 16;

    private final Rectangle2D inside;
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Line2D> lines = new ArrayList<>();

    public LabelRoom(Rectangle2D inside) {
        this.inside = inside;
    }

    /** Nothing else is to be put here. */
    public void take(Rectangle2D place) {
        taken.add(place);
    }

    /** Words are to stay off this line where they can. */
    public void avoid(double fromX, double fromY, double toX, double toY) {
        lines.add(new Line2D.Double(fromX, fromY, toX, toY));
    }

    public boolean isFree(Rectangle2D place) {
        return inside.contains(place) && taken.stream().noneMatch(place::intersects);
    }

    /** Whether a place is free and no line to be avoided goes through it. */
    public boolean isClear(Rectangle2D place) {
        return isFree(place) && crossed(place) == 0;
    }

    private long crossed(Rectangle2D place) {
        return lines.stream().filter(line -> line.intersects(place)).count();
    }

    /** What was taken, in order. */
    public List<Rectangle2D> taken() {
        return List.copyOf(taken);
    }

    /**
     * Takes a place for words of a size beside a point, at a distance; none where all sides are taken. A place off all lines, or on
     * the fewest, is preferred.
     */
    public Optional<Rectangle2D> beside(Point2D point, double width, double height, double distance) {
        return beside(point, List.of(), width, height, distance);
    }

    /** As that, where there are other points that words beside this one might be read as those of: none nearer than its own. */
    public Optional<Rectangle2D> beside(
            Point2D point, List<Point2D> others, double width, double height, double distance) {
        Optional<Rectangle2D> best = Optional.empty();
        long fewest = Long.MAX_VALUE;
        for (double[] side : SIDES) {
            Rectangle2D place = new Rectangle2D.Double(
                    point.getX() - width / 2 + side[0] * (width / 2 + distance),
                    point.getY() - height / 2 + side[1] * (height / 2 + (side[0] == 0 ? distance : distance / 2)),
                    width,
                    height);
            double own = distance(place, point);
            if (!isFree(place) || others.stream().anyMatch(other -> distance(place, other) <= own)) {
                continue;
            }
            long crossed = crossed(place);
            if (crossed < fewest) {
                best = Optional.of(place);
                fewest = crossed;
            }
        }
        best.ifPresent(this::take);
        return best;
    }

    private static double distance(Rectangle2D place, Point2D point) {
        double x = Math.max(0, Math.max(place.getX() - point.getX(), point.getX() - place.getMaxX()));
        double y = Math.max(0, Math.max(place.getY() - point.getY(), point.getY() - place.getMaxY()));
        return Math.hypot(x, y);
    }

    /** Size of a line of words. */
    public static Rectangle2D size(String words, Font font, FontRenderContext context) {
        Rectangle2D bounds = font.getStringBounds(words, context);
        return new Rectangle2D.Double(0, 0, Math.ceil(bounds.getWidth()), Math.ceil(bounds.getHeight()));
    }

    /** Draws a line of words into the place that it was given. */
    public static void draw(Graphics2D g, String words, Rectangle2D place) {
        float baseline = (float) (place.getY()
                + g.getFont().getLineMetrics(words, g.getFontRenderContext()).getAscent());
        g.drawString(words, (float) place.getX(), baseline);
    }

    /**
     * Draws a rim about words that are to stand over lines. On a screen it is the words themselves, written all around: their letters
     * are at hand there, while an outline would be worked out for each picture anew. On paper it is an outline, so that the words
     * stand there once.
     */
    public static void rim(Graphics2D g, String words, Font font, Color colour, double width, Rectangle2D place) {
        FontRenderContext context = g.getFontRenderContext();
        double baseline = place.getY() + font.getLineMetrics(words, context).getAscent();
        g.setColor(colour);
        if (g.getDeviceConfiguration() == null) {
            g.setStroke(new BasicStroke((float) (2 * width), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(font.createGlyphVector(context, words).getOutline((float) place.getX(), (float) baseline));
            return;
        }
        g.setFont(font);
        for (int i = 0; i < AROUND; i++) {
            double angle = 2 * Math.PI * i / AROUND;
            double reach = i % 2 == 0 ? width : width / 2;
            g.drawString(words, (float) (place.getX() + reach * Math.cos(angle)), (float)
                    (baseline + reach * Math.sin(angle)));
        }
    }

    /** Words in lines that are no wider, broken between words; none where there are no words. */
    public static List<String> folded(String words, Font font, FontRenderContext context, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && size(longer, font, context).getWidth() > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** Words cut to a width, an ellipsis in place of what is left out. */
    public static String cut(String words, Font font, FontRenderContext context, double width) {
        if (font.getStringBounds(words, context).getWidth() <= width) {
            return words;
        }
        int fits = 0;
        int most = words.codePointCount(0, words.length());
        while (most - fits > 1) {
            int middle = (fits + most) / 2;
            String part = words.substring(0, words.offsetByCodePoints(0, middle)) + "…";
            if (font.getStringBounds(part, context).getWidth() <= width) {
                fits = middle;
            } else {
                most = middle;
            }
        }
        return words.substring(0, words.offsetByCodePoints(0, fits)).stripTrailing() + "…";
    }
}
