package evenhand.ride;

import evenhand.car.Car;
import evenhand.car.End;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a car rides, linear about its rest: each axle's quarter car, the body's pitch and bounce, and what a road does at a
 * speed, over the axles and where the driver sits. Cheap enough to be asked thousands of times.
 *
 * @param front front axle
 * @param rear rear axle
 * @param road that it is asked about
 * @param speed on it, m/s
 * @param pitchBounce of the sprung mass on the ride rates
 * @param seat what is felt at the driver's seat; none where an axle has no dampers
 */
public record Ride(
        AxleRide front, AxleRide rear, Road road, double speed, PitchBounce pitchBounce, Optional<SeatRide> seat)
        implements RideAnswer {

    /**
     * Asks a car.
     *
     * @param car settled at its ride height
     * @param road a class or a measured one
     * @param speed m/s, above zero
     */
    public static RideAnswer of(Car car, Road road, double speed) {
        WheelRates front = WheelRates.of(car, End.FRONT);
        WheelRates rear = WheelRates.of(car, End.REAR);
        for (End end : End.values()) {
            WheelRates rates = end == End.FRONT ? front : rear;
            String name = end.key();
            if (!(rates.heave() > 0)) {
                return new RideAnswer.NoRide(String.format(
                        Locale.ROOT,
                        "at the %s the springs as they stand give way by themselves: their load turns them aside faster"
                                + " than they stiffen, which leaves a wheel rate of %.1f N/mm; lean them less or take"
                                + " stiffer or longer ones",
                        name,
                        rates.heave() / 1000));
            }
            if (!(rates.rollWithBar() > 0)) {
                return new RideAnswer.NoRide("at the " + name + " springs and bar do not resist roll at all");
            }
        }
        PitchBounce pitchBounce = PitchBounce.of(car, front.ride(), rear.ride());
        AxleRide frontRide = AxleRide.of(car, End.FRONT, front, road, speed);
        AxleRide rearRide = AxleRide.of(car, End.REAR, rear, road, speed);
        return new Ride(frontRide, rearRide, road, speed, pitchBounce, seat(car, frontRide, rearRide, road, speed));
    }

    private static Optional<SeatRide> seat(Car car, AxleRide front, AxleRide rear, Road road, double speed) {
        if (front.damped().isEmpty() || rear.damped().isEmpty()) {
            return Optional.empty();
        }
        AxleRide.Damped atFront = front.damped().get();
        AxleRide.Damped atRear = rear.damped().get();
        HalfCar half = HalfCar.of(car, atFront.quarterCar(), atRear.quarterCar());
        return Optional.of(SeatRide.of(half, atFront.modes(), atRear.modes(), car.seatBehindFront(), road, speed));
    }

    public AxleRide axle(End end) {
        return end == End.FRONT ? front : rear;
    }

    /** Damping ratio of the body over one axle. */
    public OptionalDouble damping(End end) {
        return axle(end).dampingRatio();
    }

    /** Undamped frequency of the body over one axle, Hz. */
    public double frequency(End end) {
        return axle(end).bodyFrequency();
    }

    /** Weighted r.m.s. acceleration where the driver sits, m/s². */
    public OptionalDouble seatComfort() {
        return seat.isPresent() ? OptionalDouble.of(seat.get().weightedAcceleration()) : OptionalDouble.empty();
    }

    /** Weighted r.m.s. acceleration of the body over one axle, m/s²: where nobody sits, but one end beside the other. */
    public OptionalDouble comfort(End end) {
        return axle(end).comfort();
    }

    /** R.m.s. change of a tyre's load over its load at rest. */
    public OptionalDouble tyreLoadVariation(End end) {
        return axle(end).tyreLoadVariation();
    }
}
