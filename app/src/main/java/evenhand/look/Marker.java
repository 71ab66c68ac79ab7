package evenhand.look;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The sign of a set-up on its lines, so that they are told apart without colour. */
public enum Marker {
    DISC,
    SQUARE,
    DIAMOND,
    UP,
    DOWN,
    CROSS;

    /** Its outline about a point, {@code size} across. */
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
        };
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
