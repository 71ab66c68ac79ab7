package evenhand.drawing.measuring;

import evenhand.drawing.Item;
import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Tone;
import evenhand.look.SetupStyle;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws a sketch of a car of no particular make: metres, z up, the floor at 0. */
final class Pen {
    static final double WHEELBASE = 2.5;
    static final double TRACK = 1.42;
    static final double RADIUS = 0.3;

    private static final double TYRE_WIDTH = 0.18;
    private static final int COILS = 6;

    private final double width;
    private final List<Item> items = new ArrayList<>();

    /** @param width of what is to be seen, m; arrowheads follow from it */
    Pen(double width) {
        this.width = width;
    }

    Sketch sketch(String how, double x, double z, double high) {
        return new Sketch(how, items, new Rectangle2D.Double(x, z, width, high));
    }

    Pen path(Ink ink, double... xz) {
        Path2D path = new Path2D.Double();
        path.moveTo(xz[0], xz[1]);
        for (int i = 2; i + 1 < xz.length; i += 2) {
            path.lineTo(xz[i], xz[i + 1]);
        }
        return outline(ink, path);
    }

    private Pen outline(Ink ink, java.awt.Shape shape) {
        items.add(new Item.Outline(new Path2D.Double(shape), ink, SetupStyle.NONE));
        return this;
    }

    Pen circle(Ink ink, double x, double z, double radius) {
        return outline(ink, new Ellipse2D.Double(x - radius, z - radius, 2 * radius, 2 * radius));
    }

    Pen box(Ink ink, double x, double z, double wide, double high) {
        return outline(ink, new Rectangle2D.Double(x, z, wide, high));
    }

    Pen floor(double from, double to) {
        return path(Ink.GROUND, from, 0, to, 0);
    }

    /** A wheel from the side, its lowest point at a height. */
    Pen wheel(double x, double foot) {
        return circle(Ink.WHEEL, x, foot + RADIUS, RADIUS)
                .circle(Ink.PART, x, foot + RADIUS, 0.55 * RADIUS)
                .circle(Ink.PIVOT, x, foot + RADIUS, 0.025);
    }

    /** A wheel from behind. */
    Pen tyre(double x) {
        return box(Ink.TYRE, x - TYRE_WIDTH / 2, 0, TYRE_WIDTH, 2 * RADIUS);
    }

    /** A body from the side over wheels at 0 and the wheelbase, the nose to the left, tilted about the rear wheel's foot. */
    Pen bodyFromSide(double tilt) {
        double[] xz = {
            -0.36, 0.28, -0.7, 0.3, -0.72, 0.56, -0.55, 0.72, 0.45, 0.8, 0.95, 1.24, 1.25, 1.33, 1.85, 1.33, 2.25, 1.16,
            2.7, 0.86, 3.2, 0.8, 3.3, 0.6, 3.26, 0.34, 2.86, 0.28, 2.86, 0.4, 2.68, 0.62, 2.5, 0.66, 2.32, 0.62, 2.14,
            0.4, 2.14, 0.22, 0.36, 0.22, 0.36, 0.4, 0.18, 0.62, 0, 0.66, -0.18, 0.62, -0.36, 0.4, -0.36, 0.28
        };
        double sin = Math.sin(tilt);
        double cos = Math.cos(tilt);
        for (int i = 0; i < xz.length; i += 2) {
            double x = xz[i] - WHEELBASE;
            double z = xz[i + 1] - RADIUS;
            xz[i] = WHEELBASE + x * cos + z * sin;
            xz[i + 1] = RADIUS - x * sin + z * cos;
        }
        return path(Ink.BODY, xz);
    }

    /** A car from the side, level. */
    Pen carFromSide() {
        return floor(-0.9, 3.5).bodyFromSide(0).wheel(0, 0).wheel(WHEELBASE, 0);
    }

    /** A car from behind, its middle at 0. */
    Pen carFromBehind() {
        return floor(-1.1, 1.1)
                .path(
                        Ink.BODY, -0.6, 0.24, -0.8, 0.34, -0.83, 0.6, -0.76, 0.84, -0.6, 1.28, -0.5, 1.34, 0.5, 1.34,
                        0.6, 1.28, 0.76, 0.84, 0.83, 0.6, 0.8, 0.34, 0.6, 0.24, -0.6, 0.24)
                .tyre(-TRACK / 2)
                .tyre(TRACK / 2);
    }

    /** A car from above, the nose to the left: z is to its right, from the middle. */
    Pen carFromAbove() {
        path(
                Ink.BODY, -0.72, -0.5, -0.55, -0.76, 0.3, -0.82, 2.2, -0.82, 3.1, -0.76, 3.28, -0.5, 3.28, 0.5, 3.1,
                0.76, 2.2, 0.82, 0.3, 0.82, -0.55, 0.76, -0.72, 0.5, -0.72, -0.5);
        for (double x : new double[] {0, WHEELBASE}) {
            for (double side : new double[] {-1, 1}) {
                box(Ink.TYRE, x - RADIUS, side * TRACK / 2 - TYRE_WIDTH / 2, 2 * RADIUS, TYRE_WIDTH);
            }
        }
        return this;
    }

    /** A flat scale under a wheel from the side. */
    Pen scale(double x) {
        return box(Ink.FREE, x - 0.24, 0, 0.48, 0.07);
    }

    Pen coil(double x1, double z1, double x2, double z2, double wide) {
        double length = Math.hypot(x2 - x1, z2 - z1);
        double acrossX = -(z2 - z1) / length * wide / 2;
        double acrossZ = (x2 - x1) / length * wide / 2;
        double[] xz = new double[2 * (2 * COILS + 2)];
        xz[0] = x1;
        xz[1] = z1;
        for (int i = 0; i < 2 * COILS; i++) {
            double along = 0.06 + 0.88 * (i + 0.5) / (2 * COILS);
            int side = i % 2 == 0 ? 1 : -1;
            xz[2 * i + 2] = x1 + along * (x2 - x1) + side * acrossX;
            xz[2 * i + 3] = z1 + along * (z2 - z1) + side * acrossZ;
        }
        xz[4 * COILS + 2] = x2;
        xz[4 * COILS + 3] = z2;
        return path(Ink.SPRING, xz);
    }

    /** A link between two joints. */
    Pen rod(double x1, double z1, double x2, double z2) {
        return path(Ink.LINK, x1, z1, x2, z2).joint(x1, z1).joint(x2, z2);
    }

    Pen joint(double x, double z) {
        return circle(Ink.JOINT, x, z, 0.012 * width);
    }

    Pen centreOfGravity(double x, double z) {
        items.add(new Item.Mark(Item.Sign.CENTRE_OF_GRAVITY, x, z, "centre of gravity", SetupStyle.NONE));
        return this;
    }

    Pen rollCentre(double x, double z) {
        items.add(new Item.Mark(Item.Sign.ROLL_CENTRE, x, z, "roll centre", SetupStyle.NONE));
        return this;
    }

    /** A thin line that leads to what is measured, or shows where a tool stands. */
    Pen leader(double... xz) {
        return path(Ink.MEASURE, xz);
    }

    /** A plumb line with its bob. */
    Pen plumb(double x, double from) {
        return leader(x, from, x, 0.06).path(Ink.PIVOT, x - 0.02, 0.08, x + 0.02, 0.08, x, 0.005, x - 0.02, 0.08);
    }

    /** A spirit or digital level laid along a line. */
    Pen level(double x1, double z1, double x2, double z2) {
        double length = Math.hypot(x2 - x1, z2 - z1);
        double acrossX = -(z2 - z1) / length * 0.02 * width;
        double acrossZ = (x2 - x1) / length * 0.02 * width;
        return path(Ink.PART, x1, z1, x2, z2, x2 + acrossX, z2 + acrossZ, x1 + acrossX, z1 + acrossZ, x1, z1);
    }

    /** A dimension from end to end, its words at the middle. */
    Pen dimension(double x1, double z1, double x2, double z2, String words) {
        double length = Math.hypot(x2 - x1, z2 - z1);
        double ux = (x2 - x1) / length;
        double uz = (z2 - z1) / length;
        double head = Math.min(0.025 * width, 0.3 * length);
        path(Ink.DIMENSION, x1, z1, x2, z2);
        end(x1, z1, ux, uz, head);
        end(x2, z2, -ux, -uz, head);
        // of one that stands upright they are on its right, or on its left where it is drawn from above to below
        int side = Math.abs(uz) > Math.abs(ux) ? (uz > 0 ? 1 : -1) : 0;
        return words.isEmpty() ? this : words((x1 + x2) / 2, (z1 + z2) / 2, side, side == 0 ? 1 : 0, words);
    }

    /** A tick across the end, and an arrow's head at it. */
    private void end(double x, double z, double ux, double uz, double head) {
        path(Ink.DIMENSION, x - 0.6 * head * uz, z + 0.6 * head * ux, x + 0.6 * head * uz, z - 0.6 * head * ux);
        path(
                Ink.DIMENSION,
                x + head * ux - 0.4 * head * uz,
                z + head * uz + 0.4 * head * ux,
                x,
                z,
                x + head * ux + 0.4 * head * uz,
                z + head * uz - 0.4 * head * ux);
    }

    /** An angle about a corner, from one direction to another, deg anticlockwise from the right. */
    Pen angle(double x, double z, double radius, double from, double to, String words) {
        // the picture's z goes up, that of an arc down
        outline(
                Ink.DIMENSION,
                new Arc2D.Double(x - radius, z - radius, 2 * radius, 2 * radius, -from, from - to, Arc2D.OPEN));
        double middle = Math.toRadians((from + to) / 2);
        double off = radius * 1.06;
        return words.isEmpty()
                ? this
                : words(
                        x + off * Math.cos(middle),
                        z + off * Math.sin(middle),
                        Math.cos(middle) < -0.3 ? -1 : Math.cos(middle) > 0.3 ? 1 : 0,
                        Math.sin(middle) > 0.3 ? 1 : 0,
                        words);
    }

    /** Words at a place: −1 they end there or hang below, 0 in its middle, 1 they begin there or stand above. */
    Pen words(double x, double z, int alignX, int alignZ, String words) {
        items.add(new Item.Words(x, z, alignX, alignZ, words, Tone.STRONG));
        return this;
    }

    /** Quiet words on what is drawn: "scale". */
    Pen note(double x, double z, int alignX, int alignZ, String words) {
        items.add(new Item.Words(x, z, alignX, alignZ, words, Tone.QUIET));
        return this;
    }
}
