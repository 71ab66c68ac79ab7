package evenhand.look;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The sign of a set-up on its lines, so that they are told apart without colour: six full ones, and six that are hollow. */
public enum Marker {
    DISC,
    SQUARE,
    DIAMOND,
    UP,
    DOWN,
    CROSS,
    RING,
    FRAME,
    HOLLOW_DIAMOND,
    HOLLOW_UP,
    HOLLOW_DOWN,
    STAR;

    /** A hole's size over that of the whole. */
    private static final double HOLE = 0.55;

    /** Its outline about a point, {@code size} across, to be filled. */
    public Shape at(double x, double y, double size) {
        double r = size / 2;
        return switch (this) {
            case DISC -> new Ellipse2D.Double(x - r, y - r, size, size);
            case SQUARE -> new Rectangle2D.Double(x - 0.88 * r, y - 0.88 * r, 1.76 * r, 1.76 * r);
            case DIAMOND -> polygon(x, y, 1.2 * r, 0, -1, 1, 0, 0, 1, -1, 0);
            case UP -> polygon(x, y, 1.1 * r, 0, -1, 1, 0.8, -1, 0.8);
            case DOWN -> polygon(x, y, 1.1 * r, 0, 1, 1, -0.8, -1, -0.8);
            case CROSS ->
                polygon(
                        x, y, r, -1, -0.6, -0.6, -1, 0, -0.4, 0.6, -1, 1, -0.6, 0.4, 0, 1, 0.6, 0.6, 1, 0, 0.4, -0.6, 1,
                        -1, 0.6, -0.4, 0);
            case RING -> hollow(DISC, x, y, 1.15 * size);
            case FRAME -> hollow(SQUARE, x, y, 1.15 * size);
            case HOLLOW_DIAMOND -> hollow(DIAMOND, x, y, 1.2 * size);
            case HOLLOW_UP -> hollow(UP, x, y, 1.25 * size);
            case HOLLOW_DOWN -> hollow(DOWN, x, y, 1.25 * size);
            case STAR -> star(x, y, 1.3 * r);
        };
    }

    private static Shape hollow(Marker full, double x, double y, double size) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        path.append(full.at(x, y, size), false);
        path.append(full.at(x, y, HOLE * size), false);
        return path;
    }

    private static Shape star(double x, double y, double r) {
        double[] corners = new double[20];
        for (int i = 0; i < 10; i++) {
            double from = i % 2 == 0 ? 1 : 0.45;
            corners[2 * i] = from * Math.sin(i * Math.PI / 5);
            corners[2 * i + 1] = -from * Math.cos(i * Math.PI / 5);
        }
        return polygon(x, y, r, corners);
    }

    private static Shape polygon(double x, double y, double r, double... corners) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners.length; i += 2) {
            double cornerX = x + r * corners[i];
            double cornerY = y + r * corners[i + 1];
            if (i == 0) {
                path.moveTo(cornerX, cornerY);
            } else {
                path.lineTo(cornerX, cornerY);
            }
        }
        path.closePath();
        return path;
    }
}
