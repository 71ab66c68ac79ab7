package evenhand.linkage;

import evenhand.car.Stops;

/**
 * How far an axle is followed, and in which steps. Sizes, from rest.
 *
 * @param bump m
 * @param droop m
 * @param roll rad
 * @param steer reference steer of a steered axle, rad
 * @param step of heave and one wheel, m; roll goes by 1 deg, steer by 5 deg
 */
public record Ranges(double bump, double droop, double roll, double steer, double step) {
    /** Where nothing else is said: 80 mm of bump, 70 mm of droop, 4 deg of roll, 30 deg of steer, in steps of 10 mm. */
    public static final Ranges USUAL = new Ranges(0.080, 0.070, Math.toRadians(4), Math.toRadians(30), 0.010);

    static final double ROLL_STEP = Math.toRadians(1);
    static final double STEER_STEP = Math.toRadians(5);

    /** As far as an axle's stops let it go, as it stands. */
    public static Ranges of(Stops stops) {
        return new Ranges(
                stops.bumpTravel().orElse(USUAL.bump),
                stops.droop().map(Stops.Droop::travel).orElse(USUAL.droop),
                USUAL.roll,
                USUAL.steer,
                USUAL.step);
    }

    public Ranges {
        bump = Math.max(0, bump);
        droop = Math.max(0, droop);
        roll = Math.abs(roll);
        steer = Math.abs(steer);
        if (!(step > 0)) {
            throw new IllegalArgumentException("step must be above zero");
        }
    }
}
