package evenhand.linkage;

/** Angles between directions, by tangents, so that small ones keep their digits. */
final class Angles {
    private Angles() {}

    /** Angle by which a direction leaves the plane square to another, rad, unsigned: atan2(|d·b|, |d × b|). */
    static double square(double dx, double dy, double dz, double bx, double by, double bz) {
        return Math.atan2(Math.abs(dx * bx + dy * by + dz * bz), crossLength(dx, dy, dz, bx, by, bz));
    }

    /** Angle between two directions, rad: atan2(|a × b|, a·b). */
    static double between(double ax, double ay, double az, double bx, double by, double bz) {
        return Math.atan2(crossLength(ax, ay, az, bx, by, bz), ax * bx + ay * by + az * bz);
    }

    private static double crossLength(double ax, double ay, double az, double bx, double by, double bz) {
        double x = ay * bz - az * by;
        double y = az * bx - ax * bz;
        double z = ax * by - ay * bx;
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Rise of a direction over the body's level plane, rad, front end up: atan2(z, √(x² + y²)). */
    static double rise(double x, double y, double z) {
        return Math.atan2(z, Math.sqrt(x * x + y * y));
    }

    /** An angle brought between −π and π. */
    static double wrapped(double angle) {
        return Math.IEEEremainder(angle, 2 * Math.PI);
    }
}
