package evenhand.ride;

import evenhand.suspension.WheelDamper;
import java.util.List;

/**
 * What a damper is worth at one of its speeds: damping ratios of the body from the eigenvalues of the two masses, with the
 * force at that speed taken as a line through the origin.
 *
 * @param damperSpeed m/s, at the damper
 * @param bump ratio in heave with the bump force both ways
 * @param rebound the same with the rebound force
 * @param mean with the mean of both, as the answer's damping ratio
 * @param rollMean the mean in roll: dampers at their arm, springs and bar at theirs, the sprung mass as if it stood over
 *     the wheels
 */
public record DampingAtSpeed(double damperSpeed, double bump, double rebound, double mean, double rollMean) {
    /** The speeds that are shown, m/s: of slow rolling, of the equivalent rate, and of a sharp bump. */
    public static final List<Double> SPEEDS = List.of(0.05, 0.1, 0.3);

    static DampingAtSpeed of(
            QuarterCar quarterCar, WheelRates rates, WheelDamper damper, double rollShare, double damperSpeed) {
        double mean = damper.linearRate(damperSpeed);
        QuarterCar inRoll = new QuarterCar(
                quarterCar.sprungMass(),
                quarterCar.unsprungMass(),
                rates.rollWithBar(),
                rates.tyre(),
                mean * rollShare);
        return new DampingAtSpeed(
                damperSpeed,
                ratio(quarterCar.damped(damper.bumpRate(damperSpeed))),
                ratio(quarterCar.damped(damper.reboundRate(damperSpeed))),
                ratio(quarterCar.damped(mean)),
                ratio(inRoll));
    }

    private static double ratio(QuarterCar car) {
        return car.modes().body().dampingRatio();
    }
}
