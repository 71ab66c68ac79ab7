package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

/** Where a thing stands that is there once, m: ahead of its axle's line, left of the car's middle, up from the floor. */
public record MiddlePoint(double ahead, double left, double up) {
    public MiddlePoint {
        require(Math.abs(ahead) < 10, "ahead", "must be less than ten metres from the axle's line");
        require(Math.abs(left) < 5, "left", "must be less than five metres");
        require(Math.abs(up) < 5, "up", "must be less than five metres");
    }

    /** Distance to another point, m. */
    double distanceTo(MiddlePoint other) {
        return length(ahead - other.ahead, left - other.left, up - other.up);
    }

    static double length(double x, double y, double z) {
        return Math.sqrt(x * x + y * y + z * z);
    }
}
