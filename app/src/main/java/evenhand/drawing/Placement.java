package evenhand.drawing;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds places for words in a drawing once its lines are known: inside, over no other words and across no leader, off the lines as
 * far as that does not lead far away. Places are weighed one after another, in the same order each time. All px, y downwards.
 */
final class Placement {
    /** Lines are kept as marked squares with this side, px. */
    private static final double CELL = 3;

    /** What a square under words weighs, against a px of way from the point that they belong to. */
    private static final double UNDER_WORDS = 20;

    private static final double UNDER_LEADER = 5;

    /** A leader across words or another leader: only where they would not be said at all. */
    private static final double ACROSS = 1000;

    /** Words beside another point are read as that point's. */
    private static final double BESIDE_ANOTHER = 40;

    /** For the place that was wished, and for that of a moment ago: words are not to jump about. */
    private static final double WISHED = 25;

    private static final double BEFORE = 60;

    private static final int DIRECTIONS = 16;

    private final Rectangle2D inside;
    private final int columns;
    private final int rows;
    private final int[] marked;
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Line2D> leaders = new ArrayList<>();
    private final List<Point2D> points = new ArrayList<>();
    private int @Nullable [] sums;

    Placement(Rectangle2D inside) {
        this.inside = inside;
        columns = (int) Math.ceil(inside.getWidth() / CELL) + 1;
        rows = (int) Math.ceil(inside.getHeight() / CELL) + 1;
        marked = new int[columns * rows];
    }

    /**
     * Words that look for a place.
     *
     * @param at the point that they belong to
     * @param gap to keep from it
     * @param wish where they would best stand, if anywhere
     * @param before where they stood a moment ago, from the point
     */
    record Sought(
            Point2D at, double width, double height, double gap, Optional<Point2D> wish, Optional<Point2D> before) {}

    /**
     * A place.
     *
     * @param leader to the point, where it is not beside it
     * @param clear whether no line runs under it
     */
    record Found(Rectangle2D place, Optional<Line2D> leader, boolean clear) {}

    /** Words are to stay off these lines. */
    void avoid(Shape shape) {
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator path = shape.getPathIterator(null, 2); !path.isDone(); path.next()) {
            int kind = path.currentSegment(at);
            if (kind == PathIterator.SEG_MOVETO) {
                startX = at[0];
                startY = at[1];
            } else {
                double toX = kind == PathIterator.SEG_CLOSE ? startX : at[0];
                double toY = kind == PathIterator.SEG_CLOSE ? startY : at[1];
                mark(x, y, toX, toY);
                at[0] = toX;
                at[1] = toY;
            }
            x = at[0];
            y = at[1];
        }
    }

    /** Words are to stay off all of this. */
    void cover(Rectangle2D place) {
        for (double y = place.getY(); y <= place.getMaxY(); y += CELL) {
            mark(place.getX(), y, place.getMaxX(), y);
        }
    }

    /** A point that words of another are not to stand beside. */
    void point(Point2D point) {
        points.add(point);
    }

    /** No words go here. */
    void take(Rectangle2D place) {
        taken.add(place);
    }

    private void mark(double x1, double y1, double x2, double y2) {
        int steps = (int) Math.ceil(Math.hypot(x2 - x1, y2 - y1) / CELL * 1.5) + 1;
        for (int i = 0; i <= steps && steps < 100_000; i++) {
            int column = column(x1 + (x2 - x1) * i / steps);
            int row = row(y1 + (y2 - y1) * i / steps);
            if (column >= 0 && column < columns && row >= 0 && row < rows) {
                marked[row * columns + column] = 1;
            }
        }
        sums = null;
    }

    private int column(double x) {
        return (int) Math.floor((x - inside.getX()) / CELL);
    }

    private int row(double y) {
        return (int) Math.floor((y - inside.getY()) / CELL);
    }

    /** The best place, now taken; none where there is no room at all. */
    Optional<Found> place(Sought sought) {
        Best best = new Best(sought);
        sought.before().ifPresent(way -> {
            Point2D at = sought.at();
            best.weigh(at.getX() + way.getX(), at.getY() + way.getY(), -BEFORE);
        });
        sought.wish().ifPresent(corner -> best.weigh(corner.getX(), corner.getY(), -WISHED));
        double w = sought.width();
        double h = sought.height();
        for (double off : new double[] {sought.gap(), sought.gap() + h, sought.gap() + 2.5 * h}) {
            for (int i = 0; i < DIRECTIONS; i++) {
                double angle = 2 * Math.PI * i / DIRECTIONS;
                best.weigh(
                        sought.at().getX() + Math.cos(angle) * (w / 2 + off) - w / 2,
                        sought.at().getY() + Math.sin(angle) * (h / 2 + off) - h / 2,
                        0);
            }
        }
        double step = 0.8 * h;
        for (double y = inside.getY(); y + h <= inside.getMaxY(); y += step) {
            for (double x = inside.getX(); x + w <= inside.getMaxX(); x += step) {
                best.weigh(x, y, 0);
            }
        }
        Optional<Found> found = Optional.ofNullable(best.found);
        found.ifPresent(one -> {
            taken.add(one.place());
            one.leader().ifPresent(leaders::add);
        });
        return found;
    }

    /** The best of the places that were weighed. */
    private final class Best {
        private final Sought sought;
        private double least = Double.POSITIVE_INFINITY;
        private @Nullable Found found;

        Best(Sought sought) {
            this.sought = sought;
        }

        void weigh(double x, double y, double start) {
            Rectangle2D place = new Rectangle2D.Double(x, y, sought.width(), sought.height());
            Point2D at = sought.at();
            double way = distance(place, at);
            double weight = start + Math.max(0, way - sought.gap());
            if (weight >= least || !inside.contains(place) || way < sought.gap() - 0.5) {
                return;
            }
            for (Rectangle2D other : taken) {
                // Words one behind the other would be read as one line.
                if (other.intersects(
                        x - sought.height() / 2, y, place.getWidth() + sought.height(), place.getHeight())) {
                    return;
                }
            }
            for (Line2D leader : leaders) {
                if (leader.intersects(place)) {
                    return;
                }
            }
            int under = under(place);
            weight += UNDER_WORDS * under;
            for (Point2D other : points) {
                if (other.distance(at) > 1 && distance(place, other) <= Math.min(way, 2 * sought.gap())) {
                    weight += BESIDE_ANOTHER;
                }
            }
            if (weight >= least) {
                return;
            }
            Optional<Line2D> leader = way > 1.5 * sought.gap() ? Optional.of(leader(place)) : Optional.empty();
            if (leader.isPresent()) {
                Line2D line = leader.get();
                long crossed = taken.stream()
                                .filter(other -> line.intersects(other) && !other.contains(at))
                                .count()
                        + leaders.stream().filter(line::intersectsLine).count();
                weight += UNDER_LEADER * along(line) + ACROSS * crossed;
            }
            if (weight < least) {
                least = weight;
                found = new Found(place, leader, under == 0);
            }
        }

        /** From the edge of the point to the nearest place at the words' middle line or edge. */
        private Line2D leader(Rectangle2D place) {
            Point2D at = sought.at();
            double x = Math.max(place.getX(), Math.min(at.getX(), place.getMaxX()));
            double y = at.getX() >= place.getX() && at.getX() <= place.getMaxX()
                    ? at.getY() > place.getCenterY() ? place.getMaxY() : place.getY()
                    : place.getCenterY();
            double length = at.distance(x, y);
            double off = Math.min(0.6 * sought.gap(), 0.4 * length) / length;
            double before = 1 - Math.min(2, 0.2 * length) / length;
            return new Line2D.Double(
                    at.getX() + off * (x - at.getX()),
                    at.getY() + off * (y - at.getY()),
                    at.getX() + before * (x - at.getX()),
                    at.getY() + before * (y - at.getY()));
        }
    }

    private static double distance(Rectangle2D place, Point2D point) {
        double x = Math.max(0, Math.max(place.getX() - point.getX(), point.getX() - place.getMaxX()));
        double y = Math.max(0, Math.max(place.getY() - point.getY(), point.getY() - place.getMaxY()));
        return Math.hypot(x, y);
    }

    private int along(Line2D line) {
        int steps = (int) Math.ceil(line.getP1().distance(line.getP2()) / CELL);
        int count = 0;
        for (int i = 1; i <= steps; i++) {
            int column = column(line.getX1() + (line.getX2() - line.getX1()) * i / steps);
            int row = row(line.getY1() + (line.getY2() - line.getY1()) * i / steps);
            if (column >= 0 && column < columns && row >= 0 && row < rows) {
                count += marked[row * columns + column];
            }
        }
        return count;
    }

    /** Marked squares under a place. */
    private int under(Rectangle2D place) {
        int[] all = sums();
        int left = Math.max(0, column(place.getX()));
        int right = Math.min(columns - 1, column(place.getMaxX())) + 1;
        int top = Math.max(0, row(place.getY()));
        int bottom = Math.min(rows - 1, row(place.getMaxY())) + 1;
        int wide = columns + 1;
        return all[bottom * wide + right]
                - all[top * wide + right]
                - all[bottom * wide + left]
                + all[top * wide + left];
    }

    /** Of all squares above and left of each corner. */
    private int[] sums() {
        int[] known = sums;
        if (known == null) {
            int wide = columns + 1;
            known = new int[wide * (rows + 1)];
            for (int row = 0; row < rows; row++) {
                int line = 0;
                for (int column = 0; column < columns; column++) {
                    line += marked[row * columns + column];
                    known[(row + 1) * wide + column + 1] = known[row * wide + column + 1] + line;
                }
            }
            sums = known;
        }
        return known;
    }
}
