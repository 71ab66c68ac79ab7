package evenhand.drawing;

import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Outline;
import evenhand.look.SetupStyle;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;

/** Outlines that the views are made of, in metres. */
final class Lines {
    private static final int COILS = 6;

    private Lines() {}

    static Outline line(Ink ink, double x1, double z1, double x2, double z2) {
        return line(ink, SetupStyle.NONE, x1, z1, x2, z2);
    }

    static Outline line(Ink ink, SetupStyle style, double x1, double z1, double x2, double z2) {
        Path2D path = new Path2D.Double();
        path.moveTo(x1, z1);
        path.lineTo(x2, z2);
        return new Outline(path, ink, style);
    }

    /** A dimension line from the ground up to a place, so far beside it. */
    static List<Outline> height(double x, double z, double beside) {
        double at = x + beside;
        double tip = 0.018;
        Path2D ends = new Path2D.Double();
        for (double[] one : new double[][] {{0, 1}, {z, -1}}) {
            ends.moveTo(at - 0.4 * tip, one[0] + one[1] * Math.signum(z) * tip);
            ends.lineTo(at, one[0]);
            ends.lineTo(at + 0.4 * tip, one[0] + one[1] * Math.signum(z) * tip);
        }
        return List.of(
                line(Ink.MEASURE, x, z, at + 0.15 * beside, z),
                line(Ink.MEASURE, at, 0, at, z),
                new Outline(ends, Ink.MEASURE, SetupStyle.NONE));
    }

    static Outline circle(Ink ink, double x, double z, double radius) {
        return new Outline(
                new Path2D.Double(new Ellipse2D.Double(x - radius, z - radius, 2 * radius, 2 * radius)),
                ink,
                SetupStyle.NONE);
    }

    /** A rectangle between two heights. */
    static Outline upright(Ink ink, double x, double width, double from, double to) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - width / 2, from);
        path.lineTo(x + width / 2, from);
        path.lineTo(x + width / 2, to);
        path.lineTo(x - width / 2, to);
        path.closePath();
        return new Outline(path, ink, SetupStyle.NONE);
    }

    /** A coil spring between two points. */
    static Outline spring(double x1, double z1, double x2, double z2, double width) {
        Path2D path = new Path2D.Double();
        double length = Math.hypot(x2 - x1, z2 - z1);
        double acrossX = -(z2 - z1) / length * width / 2;
        double acrossZ = (x2 - x1) / length * width / 2;
        path.moveTo(x1, z1);
        for (int i = 0; i < 2 * COILS; i++) {
            double along = 0.08 + 0.84 * (i + 0.5) / (2 * COILS);
            int side = i % 2 == 0 ? 1 : -1;
            path.lineTo(x1 + along * (x2 - x1) + side * acrossX, z1 + along * (z2 - z1) + side * acrossZ);
        }
        path.lineTo(x2, z2);
        return new Outline(path, Ink.SPRING, SetupStyle.NONE);
    }
}
