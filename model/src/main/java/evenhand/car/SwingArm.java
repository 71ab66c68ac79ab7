package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

/**
 * Where an axle swings in side view, known without its links.
 *
 * @param length ℓ from the wheel to the swing centre, m, positive towards the middle of the car
 * @param centreHeight h of that centre above the ground, m
 * @param wheelHeight of the wheel's centre above the ground where both were measured, m
 */
public record SwingArm(double length, double centreHeight, double wheelHeight) {
    public SwingArm {
        require(length != 0, "swingArm", "must not be zero: an axle swings about a point before or behind it");
    }

    /**
     * Rise per metre going forwards of the line along which a force at the contact point does no work: s = ∓h/ℓ, front −,
     * rear +.
     */
    public double contactSlope(End end) {
        return forwards(end) * centreHeight / length;
    }

    /** The same of a force at the wheel's centre: s = ∓(h − loadedRadius)/ℓ. */
    public double wheelSlope(End end) {
        return forwards(end) * (centreHeight - wheelHeight) / length;
    }

    private static double forwards(End end) {
        return end == End.FRONT ? -1 : 1;
    }
}
