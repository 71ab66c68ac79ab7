package evenhand.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/**
 * Between metres and px: the same scale both ways, z up.
 *
 * @param scale px per m
 * @param originX px of x = 0
 * @param originY px of z = 0
 */
public record Scaling(double scale, double originX, double originY) {
    /** As large as the area has room for, in its middle. */
    static Scaling fit(Rectangle2D world, Rectangle2D area) {
        double scale =
                Math.max(1e-6, Math.min(area.getWidth() / world.getWidth(), area.getHeight() / world.getHeight()));
        return new Scaling(
                scale, area.getCenterX() - scale * world.getCenterX(), area.getCenterY() + scale * world.getCenterY());
    }

    public double px(double x) {
        return originX + scale * x;
    }

    public double py(double z) {
        return originY - scale * z;
    }

    public double x(double px) {
        return (px - originX) / scale;
    }

    public double z(double py) {
        return (originY - py) / scale;
    }

    AffineTransform transform() {
        return new AffineTransform(scale, 0, 0, -scale, originX, originY);
    }
}
