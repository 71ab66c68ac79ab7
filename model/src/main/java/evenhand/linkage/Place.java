package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Point;

/**
 * A place in the body's axes, m: x ahead, y left, z up, the origin on the body's middle plane in the axle's line, where the floor
 * was when the axle was measured.
 */
public record Place(double x, double y, double z) {
    /** One of a pair: y = +out on the left side, −out on the right. */
    static Place of(Point point, Side side) {
        return new Place(point.ahead(), side.sign() * point.out(), point.up());
    }

    static Place of(MiddlePoint point) {
        return new Place(point.ahead(), point.left(), point.up());
    }

    public Place plus(double share, Place other) {
        return new Place(x + share * other.x, y + share * other.y, z + share * other.z);
    }

    public Place minus(Place other) {
        return plus(-1, other);
    }

    double dot(Place other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Place cross(Place other) {
        return new Place(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    double distanceTo(Place other) {
        return minus(other).length();
    }

    /** The direction of this, a unit vector. */
    Place unit() {
        double length = length();
        return new Place(x / length, y / length, z / length);
    }
}
