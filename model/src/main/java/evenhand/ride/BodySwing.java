package evenhand.ride;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.suspension.WheelDamper;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the body swings over one axle when it is pressed down and let go, without a road: the slow mode of {@link AxleRide}'s quarter
 * car, damped as there.
 *
 * @param mode of the body
 */
public record BodySwing(Modes.Mode mode) {
    /** Of a car settled at its ride height; none where its springs do not carry it, or without dampers. */
    public static Optional<BodySwing> of(Car car, End end) {
        Axle axle = car.axle(end);
        WheelRates rates = WheelRates.of(car, end);
        double sprung = (car.axleLoad(end) / Weights.GRAVITY - axle.unsprung().mass()) / 2;
        if (!(rates.heave() > 0)) {
            return Optional.empty();
        }
        QuarterCar undamped = new QuarterCar(sprung, axle.unsprung().mass() / 2, rates.heave(), rates.tyre(), 0);
        return WheelDamper.of(car, end)
                .map(damper -> damper.linearRate(AxleRide.USUAL_DAMPER_SPEED))
                .filter(rate -> rate > 0)
                .map(rate -> new BodySwing(undamped.damped(rate).modes().body()));
    }

    /** Hz; none where it creeps back. */
    public OptionalDouble frequency() {
        return mode.dampedFrequency();
    }

    /**
     * Height of a swing over the one before on the same side; none where it creeps back.
     * <pre>  exp(−2πζ/√(1 − ζ²))  </pre>
     * Source: logarithmic decrement; Thomson, Theory of Vibration, from memory.
     */
    public OptionalDouble nextSwing() {
        double damping = mode.dampingRatio();
        return damping < 1
                ? OptionalDouble.of(Math.exp(-2 * Math.PI * damping / Math.sqrt(1 - damping * damping)))
                : OptionalDouble.empty();
    }
}
