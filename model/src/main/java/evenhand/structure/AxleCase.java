package evenhand.structure;

import evenhand.car.Side;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One axle in one case: how its wheels stand and what pushes them.
 *
 * @param left force of the ground on the left tyre, in the body's axes, N
 * @param right on the right tyre
 * @param leftRaise how far above the contact point the left one acts, m
 * @param fall what the unsprung parts weigh and resist per kilogram, in the body's axes, m/s²: {@code (−ax, −ay, −g)}
 * @param shaftTorque of the propeller shaft, that turns a live axle's housing, about x, N·m
 * @param leftShaft force along the car that a drive shaft brings to the left wheel, N
 * @param leftHeld what carries the left side
 */
record AxleCase(
        double leftTravel,
        double rightTravel,
        Vector3D left,
        Vector3D right,
        double leftRaise,
        double rightRaise,
        Vector3D fall,
        double shaftTorque,
        double leftShaft,
        double rightShaft,
        Held leftHeld,
        Held rightHeld) {
    /** What is unknown of the parts that carry a side. */
    enum Held {
        /** The spring. */
        BY_SPRING,
        /** The bump stop, for the travel decides the spring. */
        BY_STOP,
        /** The damper at its full length, likewise. */
        BY_DAMPER
    }

    /** At rest, or pushed where it stands. */
    static AxleCase standing(Vector3D left, Vector3D right, double gravity) {
        return new AxleCase(
                0, 0, left, right, 0, 0, new Vector3D(0, 0, -gravity), 0, 0, 0, Held.BY_SPRING, Held.BY_SPRING);
    }

    /** Wheels that stand so, with nothing that pushes them. */
    static AxleCase at(double leftTravel, double rightTravel) {
        return new AxleCase(
                leftTravel,
                rightTravel,
                Vector3D.ZERO,
                Vector3D.ZERO,
                0,
                0,
                Vector3D.ZERO,
                0,
                0,
                0,
                Held.BY_SPRING,
                Held.BY_SPRING);
    }

    double travel(Side side) {
        return side == Side.LEFT ? leftTravel : rightTravel;
    }

    Vector3D ground(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** φs = (u_R − u_L)/t, rad, right side down positive. */
    double suspensionRoll(double track) {
        return (rightTravel - leftTravel) / track;
    }

    double raise(Side side) {
        return side == Side.LEFT ? leftRaise : rightRaise;
    }

    double shaft(Side side) {
        return side == Side.LEFT ? leftShaft : rightShaft;
    }

    Held held(Side side) {
        return side == Side.LEFT ? leftHeld : rightHeld;
    }
}
