package evenhand.linkage;

/**
 * A rigid part in its present pose: where its points are and how fast they move in each of its motions.
 *
 * <p>A point is named by the place at which it was measured. Its place now is {@code p + R·(Q − p0)}: p the reference
 * point, R the turn since, kept as a quaternion so that it stays a turn. A motion is a twist: velocity of the reference
 * point and angular velocity, both per unit of what is moved. Nothing is allocated. One per thread.
 */
final class Part {
    /** Twists that a part can hold. */
    static final int MOTIONS = 2;

    private static final int TWIST = 6;

    /** Reference point as measured, m. */
    final double measuredX;

    final double measuredY;
    final double measuredZ;

    /** Reference point now, m. */
    double x;

    double y;
    double z;

    /** Turn since it was measured, row by row. */
    final double[] turn = {1, 0, 0, 0, 1, 0, 0, 0, 1};

    /** Each motion's velocity of the reference point and angular velocity. */
    final double[] twists = new double[MOTIONS * TWIST];

    private double w = 1; // quaternion of the turn
    private double i;
    private double j;
    private double k;

    Part(double measuredX, double measuredY, double measuredZ) {
        this.measuredX = measuredX;
        this.measuredY = measuredY;
        this.measuredZ = measuredZ;
        x = measuredX;
        y = measuredY;
        z = measuredZ;
    }

    /** Moves the reference point, and turns the part by a rotation vector, rad. */
    void move(double dx, double dy, double dz, double rx, double ry, double rz) {
        x += dx;
        y += dy;
        z += dz;
        double angle = Math.sqrt(rx * rx + ry * ry + rz * rz);
        double half = angle / 2;
        double scale = half < 1e-8 ? 0.5 : Math.sin(half) / angle;
        double a = Math.cos(half);
        double b = scale * rx;
        double c = scale * ry;
        double d = scale * rz;
        double nw = a * w - b * i - c * j - d * k;
        double ni = a * i + b * w + c * k - d * j;
        double nj = a * j - b * k + c * w + d * i;
        double nk = a * k + b * j - c * i + d * w;
        double length = Math.sqrt(nw * nw + ni * ni + nj * nj + nk * nk);
        w = nw / length;
        i = ni / length;
        j = nj / length;
        k = nk / length;
        toMatrix();
    }

    private void toMatrix() {
        turn[0] = 1 - 2 * (j * j + k * k);
        turn[1] = 2 * (i * j - k * w);
        turn[2] = 2 * (i * k + j * w);
        turn[3] = 2 * (i * j + k * w);
        turn[4] = 1 - 2 * (i * i + k * k);
        turn[5] = 2 * (j * k - i * w);
        turn[6] = 2 * (i * k - j * w);
        turn[7] = 2 * (j * k + i * w);
        turn[8] = 1 - 2 * (i * i + j * j);
    }

    /** How many numbers a pose takes. */
    static final int POSE = 7;

    void keep(double[] pose, int at) {
        pose[at] = x;
        pose[at + 1] = y;
        pose[at + 2] = z;
        pose[at + 3] = w;
        pose[at + 4] = i;
        pose[at + 5] = j;
        pose[at + 6] = k;
    }

    void restore(double[] pose, int at) {
        x = pose[at];
        y = pose[at + 1];
        z = pose[at + 2];
        w = pose[at + 3];
        i = pose[at + 4];
        j = pose[at + 5];
        k = pose[at + 6];
        toMatrix();
    }

    /** Turns about an axis through the reference point, which stays; the axis is a unit vector. */
    void turnTo(double angle, double ax, double ay, double az) {
        double sine = Math.sin(angle / 2);
        w = Math.cos(angle / 2);
        i = sine * ax;
        j = sine * ay;
        k = sine * az;
        toMatrix();
    }

    /** Parts of a direction that was (dx, dy, dz) as measured. */
    double turnedX(double dx, double dy, double dz) {
        return turn[0] * dx + turn[1] * dy + turn[2] * dz;
    }

    double turnedY(double dx, double dy, double dz) {
        return turn[3] * dx + turn[4] * dy + turn[5] * dz;
    }

    double turnedZ(double dx, double dy, double dz) {
        return turn[6] * dx + turn[7] * dy + turn[8] * dz;
    }

    /** Place now of the point that was measured at (px, py, pz). */
    double placeX(double px, double py, double pz) {
        return x + turnedX(px - measuredX, py - measuredY, pz - measuredZ);
    }

    double placeY(double px, double py, double pz) {
        return y + turnedY(px - measuredX, py - measuredY, pz - measuredZ);
    }

    double placeZ(double px, double py, double pz) {
        return z + turnedZ(px - measuredX, py - measuredY, pz - measuredZ);
    }

    /** The same as a place. */
    Place placeOf(Place measured) {
        return new Place(
                placeX(measured.x(), measured.y(), measured.z()),
                placeY(measured.x(), measured.y(), measured.z()),
                placeZ(measured.x(), measured.y(), measured.z()));
    }

    /** Where, of the points as measured, the one is that is at (px, py, pz) now. */
    double measuredXAt(double px, double py, double pz) {
        return measuredX + turn[0] * (px - x) + turn[3] * (py - y) + turn[6] * (pz - z);
    }

    double measuredYAt(double px, double py, double pz) {
        return measuredY + turn[1] * (px - x) + turn[4] * (py - y) + turn[7] * (pz - z);
    }

    double measuredZAt(double px, double py, double pz) {
        return measuredZ + turn[2] * (px - x) + turn[5] * (py - y) + turn[8] * (pz - z);
    }

    /** Sets the twist of a motion. */
    void twist(int motion, double vx, double vy, double vz, double wx, double wy, double wz) {
        int at = motion * TWIST;
        twists[at] = vx;
        twists[at + 1] = vy;
        twists[at + 2] = vz;
        twists[at + 3] = wx;
        twists[at + 4] = wy;
        twists[at + 5] = wz;
    }

    /** Angular velocity per unit of a motion. */
    double spinX(int motion) {
        return twists[motion * TWIST + 3];
    }

    double spinY(int motion) {
        return twists[motion * TWIST + 4];
    }

    double spinZ(int motion) {
        return twists[motion * TWIST + 5];
    }

    /** Velocity, per unit of a motion, of the point of this part that is at (px, py, pz) now: w = v + ω × (Q − p). */
    double speedX(int motion, double px, double py, double pz) {
        return twists[motion * TWIST] + spinY(motion) * (pz - z) - spinZ(motion) * (py - y);
    }

    double speedY(int motion, double px, double py, double pz) {
        return twists[motion * TWIST + 1] + spinZ(motion) * (px - x) - spinX(motion) * (pz - z);
    }

    double speedZ(int motion, double px, double py, double pz) {
        return twists[motion * TWIST + 2] + spinX(motion) * (py - y) - spinY(motion) * (px - x);
    }
}
