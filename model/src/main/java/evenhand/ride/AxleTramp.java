package evenhand.ride;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.InertiaEstimate;
import evenhand.suspension.WheelDamper;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Tramp: a live axle rolling on its tyres under a body that stands still, wheel up, wheel down.
 *
 * <pre>  I·ψ'' + C·ψ' + (½·t²·kt + K)·ψ = 0  </pre>
 * I roll inertia of the axle, K roll stiffness of springs, stops and bar at rest, C = 2·c·e² of the dampers at their roll
 * arm e. The axle's weight leaning out and the give of the links are left out.
 *
 * <p>Source: Gillespie 1992 ch. 5 (tramp of a solid axle), equation derived.
 *
 * @param frequency undamped, Hz
 * @param dampingRatio none without damper curves
 * @param rollInertia kg·m²
 */
public record AxleTramp(double frequency, OptionalDouble dampingRatio, double rollInertia) {
    /** Of the live axle at one end; wheels of their own do not tramp. */
    static Optional<AxleTramp> of(Car car, End end, WheelRates rates, double damperSpeed) {
        if (!(car.axle(end) instanceof Axle.Live axle)) {
            return Optional.empty();
        }
        double halfTrackSquared = axle.track() * axle.track() / 4;
        double stiffness = 2 * halfTrackSquared * (rates.tyre() + rates.rollWithBar());
        double inertia = InertiaEstimate.roll(axle);
        Optional<WheelDamper> damper = WheelDamper.of(car, end);
        return Optional.of(new AxleTramp(
                Math.sqrt(stiffness / inertia) / (2 * Math.PI),
                damper.isPresent()
                        ? OptionalDouble.of(
                                rollDamping(axle, damper.get(), damperSpeed) / (2 * Math.sqrt(stiffness * inertia)))
                        : OptionalDouble.empty(),
                inertia));
    }

    private static double rollDamping(Axle axle, WheelDamper damper, double damperSpeed) {
        double arm = damper.rollArm(axle.geometry().rollCentreHeight());
        return 2 * damper.linearRate(damperSpeed) * arm * arm;
    }
}
