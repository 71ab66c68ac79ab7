package evenhand.drawing;

import evenhand.drawing.Item.Arrow;
import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Outline;
import evenhand.drawing.Item.Words;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** What stands between two drawings of the same parts: every place on its straight way from one to the other. */
final class Between {
    private Between() {}

    /** Whether two items are the same part in other places. */
    static boolean alike(Item one, Item other) {
        if (one instanceof Outline a && other instanceof Outline b) {
            return a.ink() == b.ink() && a.style().equals(b.style()) && sameSegments(a.path(), b.path());
        }
        if (one instanceof Mark a && other instanceof Mark b) {
            return a.sign() == b.sign() && a.style().equals(b.style());
        }
        return one.getClass().equals(other.getClass());
    }

    private static boolean sameSegments(Path2D one, Path2D other) {
        PathIterator a = one.getPathIterator(null);
        PathIterator b = other.getPathIterator(null);
        double[] at = new double[6];
        while (!a.isDone() && !b.isDone()) {
            if (a.currentSegment(at) != b.currentSegment(at)) {
                return false;
            }
            a.next();
            b.next();
        }
        return a.isDone() && b.isDone();
    }

    /** A part on its way; its words are those of where it goes. */
    static Item item(Item from, Item to, double part) {
        if (from instanceof Outline a && to instanceof Outline b) {
            return new Outline(path(a.path(), b.path(), part), b.ink(), b.style());
        }
        if (from instanceof Mark a && to instanceof Mark b) {
            return new Mark(b.sign(), mid(a.x(), b.x(), part), mid(a.z(), b.z(), part), b.words(), b.style());
        }
        if (from instanceof Words a && to instanceof Words b) {
            return new Words(
                    mid(a.x(), b.x(), part), mid(a.z(), b.z(), part), b.alignX(), b.alignZ(), b.words(), b.tone());
        }
        if (from instanceof Arrow a && to instanceof Arrow b) {
            return new Arrow(
                    mid(a.x(), b.x(), part),
                    mid(a.z(), b.z(), part),
                    mid(a.tipX(), b.tipX(), part),
                    mid(a.tipZ(), b.tipZ(), part),
                    b.words(),
                    b.style());
        }
        return to;
    }

    static List<Item> items(List<Item> from, List<Item> to, double part) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < to.size(); i++) {
            items.add(item(from.get(i), to.get(i), part));
        }
        return items;
    }

    private static double mid(double from, double to, double part) {
        return from + part * (to - from);
    }

    private static Path2D path(Path2D from, Path2D to, double part) {
        Path2D path = new Path2D.Double();
        PathIterator a = from.getPathIterator(null);
        double[] p = new double[6];
        double[] q = new double[6];
        for (PathIterator b = to.getPathIterator(null); !b.isDone(); b.next(), a.next()) {
            a.currentSegment(p);
            int kind = b.currentSegment(q);
            for (int i = 0; i < q.length; i++) {
                q[i] = mid(p[i], q[i], part);
            }
            switch (kind) {
                case PathIterator.SEG_MOVETO -> path.moveTo(q[0], q[1]);
                case PathIterator.SEG_LINETO -> path.lineTo(q[0], q[1]);
                case PathIterator.SEG_QUADTO -> path.quadTo(q[0], q[1], q[2], q[3]);
                case PathIterator.SEG_CUBICTO -> path.curveTo(q[0], q[1], q[2], q[3], q[4], q[5]);
                default -> path.closePath();
            }
        }
        return path;
    }
}
