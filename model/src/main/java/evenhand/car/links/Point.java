package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

/**
 * Where one of a pair stands, m: ahead of its axle's line, out from the car's middle on its own side, up from the floor.
 */
public record Point(double ahead, double out, double up) {
    public Point {
        require(Math.abs(ahead) < 10, "ahead", "must be less than ten metres from the axle's line");
        require(out >= 0, "out", "counts outwards on either side, so it must not be below zero");
        require(out < 5, "out", "must be less than five metres");
        require(Math.abs(up) < 5, "up", "must be less than five metres");
    }

    /** Distance to another point of the same side, m. */
    double distanceTo(Point other) {
        return MiddlePoint.length(ahead - other.ahead, out - other.out, up - other.up);
    }

    /** Distance in side view, m. */
    double sideDistanceTo(Point other) {
        return Math.hypot(ahead - other.ahead, up - other.up);
    }
}
