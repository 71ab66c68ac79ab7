package evenhand.car.mounts;

import static evenhand.quantity.InvalidValue.require;

/**
 * The way a held face looks, from what holds it outwards to the load: a unit vector in the body's axes.
 *
 * @param x forwards
 * @param y to the left
 * @param z up
 */
public record Facing(double x, double y, double z) {
    public static final Facing FORWARD = new Facing(1, 0, 0);
    public static final Facing BACK = new Facing(-1, 0, 0);
    public static final Facing LEFT = new Facing(0, 1, 0);
    public static final Facing RIGHT = new Facing(0, -1, 0);
    public static final Facing UP = new Facing(0, 0, 1);
    public static final Facing DOWN = new Facing(0, 0, -1);

    private static final double SHORTEST = 1e-9;

    /** The direction of three numbers of any length above zero. */
    public Facing {
        double length = Math.sqrt(x * x + y * y + z * z);
        require(
                length > SHORTEST && Double.isFinite(length),
                "faces",
                "has no length; give forward, back, left, right, up, down or three numbers along x, y and z");
        x /= length;
        y /= length;
        z /= length;
    }

    /** The same in a mirror that swaps left and right. */
    public Facing mirrored() {
        return new Facing(x, -y, z);
    }
}
