package evenhand.drawing;

import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Outline;
import evenhand.drawing.Item.Sign;
import evenhand.drawing.Item.Tone;
import evenhand.drawing.Item.Words;
import evenhand.look.SetupStyle;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The set-up that a drawn one is held against, thin under it: only what of it stands elsewhere. */
final class Ghost {
    /** What is nearer than this stands at the same place, m: half a millimetre. */
    private static final double SAME = 0.0005;

    private static final double RING = 0.022;

    private Ghost() {}

    /**
     * What is drawn under a set-up.
     *
     * @param drawn of the set-up itself
     * @param other the same view of the base
     * @param name of the base
     */
    static List<Item> under(List<Item> drawn, List<Item> other, String name, SetupStyle style) {
        List<Item> ghost = new ArrayList<>();
        for (Item item : other) {
            if (item instanceof Outline outline && isShown(outline.ink())) {
                if (drawn.stream().noneMatch(own -> own instanceof Outline same && isSame(same, outline))) {
                    ghost.add(new Outline(outline.path(), Ink.GHOST, style));
                }
            } else if (item instanceof Mark mark) {
                if (drawn.stream().noneMatch(own -> own instanceof Mark same && isSame(same, mark))) {
                    ghost.add(new Outline(sign(mark), Ink.GHOST, style));
                }
            }
        }
        top(ghost).ifPresent(top -> ghost.add(new Words(top[0], top[1], 0, 1, name, Tone.QUIET)));
        return ghost;
    }

    /** Springs, joints and gauges of two would be a thicket. */
    private static boolean isShown(Ink ink) {
        return switch (ink) {
            case BODY, TYRE, WHEEL, LINK, ROD, AXIS -> true;
            default -> false;
        };
    }

    private static boolean isSame(Outline one, Outline other) {
        if (one.ink() != other.ink()) {
            return false;
        }
        PathIterator a = one.path().getPathIterator(null);
        PathIterator b = other.path().getPathIterator(null);
        double[] p = new double[6];
        double[] q = new double[6];
        while (!a.isDone() && !b.isDone()) {
            int kind = a.currentSegment(p);
            if (kind != b.currentSegment(q)) {
                return false;
            }
            int numbers = kind == PathIterator.SEG_CLOSE
                    ? 0
                    : kind == PathIterator.SEG_QUADTO ? 4 : kind == PathIterator.SEG_CUBICTO ? 6 : 2;
            for (int i = 0; i < numbers; i++) {
                if (!(Math.abs(p[i] - q[i]) <= SAME)) {
                    return false;
                }
            }
            a.next();
            b.next();
        }
        return a.isDone() && b.isDone();
    }

    private static boolean isSame(Mark one, Mark other) {
        return one.sign() == other.sign() && Math.hypot(one.x() - other.x(), one.z() - other.z()) <= SAME;
    }

    private static Path2D sign(Mark mark) {
        if (mark.sign() == Sign.ROLL_CENTRE) {
            return Lines.circle(Ink.GHOST, mark.x(), mark.z(), RING).path();
        }
        Path2D diamond = new Path2D.Double();
        diamond.moveTo(mark.x(), mark.z() - RING);
        diamond.lineTo(mark.x() + RING, mark.z());
        diamond.lineTo(mark.x(), mark.z() + RING);
        diamond.lineTo(mark.x() - RING, mark.z());
        diamond.closePath();
        return diamond;
    }

    /** The middle of the upper edge of the largest part: where its name belongs. */
    private static Optional<double[]> top(List<Item> ghost) {
        return ghost.stream()
                .map(item -> ((Outline) item).path().getBounds2D())
                .max(Comparator.comparingDouble(bounds -> bounds.getWidth() * bounds.getHeight()))
                .map(bounds -> new double[] {bounds.getCenterX(), bounds.getMaxY()});
    }
}
