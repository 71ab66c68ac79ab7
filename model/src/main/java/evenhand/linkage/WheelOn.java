package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.Stance;

/**
 * A wheel on its part, now: spin axis, centre and contact point, and the angles that come of them. {@link #read} sets the
 * fields and allocates nothing.
 */
final class WheelOn {
    final Side side;
    final double sigma;
    private final Part part;
    private final Place measuredSpin;
    private final Place measuredCentre;
    private final double radius;

    double spinX;
    double spinY;
    double spinZ;
    double centreX;
    double centreY;
    double centreZ;
    double contactX;
    double contactY;
    double contactZ;

    WheelOn(Part part, WheelPlace measured, Stance stance) {
        this.part = part;
        side = measured.side();
        sigma = side.sign();
        measuredSpin = measured.spin();
        measuredCentre = measured.centre();
        radius = stance.loadedRadius();
    }

    /** Contact point: C = W − r·e, e ∝ k − (k·a)·a. */
    void read() {
        spinX = part.turnedX(measuredSpin.x(), measuredSpin.y(), measuredSpin.z());
        spinY = part.turnedY(measuredSpin.x(), measuredSpin.y(), measuredSpin.z());
        spinZ = part.turnedZ(measuredSpin.x(), measuredSpin.y(), measuredSpin.z());
        centreX = part.placeX(measuredCentre.x(), measuredCentre.y(), measuredCentre.z());
        centreY = part.placeY(measuredCentre.x(), measuredCentre.y(), measuredCentre.z());
        centreZ = part.placeZ(measuredCentre.x(), measuredCentre.y(), measuredCentre.z());
        double flat = Math.sqrt(spinX * spinX + spinY * spinY);
        contactX = centreX + radius * spinZ * spinX / flat;
        contactY = centreY + radius * spinZ * spinY / flat;
        contactZ = centreZ - radius * flat;
    }

    /** Toe, in positive: atan2(a_x, σ·a_y). */
    double toe() {
        return Math.atan2(spinX, sigma * spinY);
    }

    /** Steer, left positive: −σ·toe. */
    double steer() {
        return -sigma * toe();
    }

    /** Camber against the body, top outwards positive: −asin a_z. */
    double camber() {
        return -Math.atan2(spinZ, Math.sqrt(spinX * spinX + spinY * spinY));
    }

    /** d(steer) per unit of a motion, by a' = ω × a. */
    double steerBy(int motion) {
        return turnInPlan(part, motion, spinX, spinY, spinZ);
    }

    /** d(camber) per unit of a motion: −a_z'/√(1 − a_z²). */
    double camberBy(int motion) {
        double change = part.spinX(motion) * spinY - part.spinY(motion) * spinX;
        return -change / Math.sqrt(spinX * spinX + spinY * spinY);
    }

    /** How fast a direction of a part turns to the left in plan, per unit of a motion. */
    static double turnInPlan(Part part, int motion, double dx, double dy, double dz) {
        double byX = part.spinY(motion) * dz - part.spinZ(motion) * dy;
        double byY = part.spinZ(motion) * dx - part.spinX(motion) * dz;
        return (dx * byY - dy * byX) / (dx * dx + dy * dy);
    }

    AxleLines.Wheel drawn() {
        return new AxleLines.Wheel(
                side,
                new Place(centreX, centreY, centreZ),
                new Place(contactX, contactY, contactZ),
                new Place(spinX, spinY, spinZ));
    }

    /** Part that carries the wheel. */
    Part part() {
        return part;
    }
}
