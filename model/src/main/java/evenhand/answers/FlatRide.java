package evenhand.answers;

import evenhand.bump.BodyOverHump;
import evenhand.car.Car;
import evenhand.quantity.Unit;
import evenhand.ride.AxleRide;
import evenhand.ride.Ride;
import java.util.List;
import java.util.stream.IntStream;

/** What flat ride is judged by: one short hump, which only sets the body going, at many speeds. A choice, no standard. */
public final class FlatRide {
    /** Height of the hump, m. */
    public static final double HUMP_HEIGHT = 0.02;
    /** Its length, m. */
    public static final double HUMP_LENGTH = 1;
    /** From 30 to 130 km/h, in m/s. */
    public static final List<Double> SPEEDS = IntStream.rangeClosed(3, 13)
            .mapToObj(tens -> Unit.of("km/h").toSi(10 * tens))
            .toList();

    private FlatRide() {}

    /**
     * The body over the hump, from slow to fast.
     *
     * @param car settled at its ride height, whose ride this is
     */
    public static List<BodyOverHump.Passage> over(Car car, Ride ride) {
        return BodyOverHump.over(car, carried(ride.front()), carried(ride.rear()), HUMP_HEIGHT, HUMP_LENGTH, SPEEDS);
    }

    private static BodyOverHump.Carried carried(AxleRide axle) {
        return new BodyOverHump.Carried(
                axle.rates().ride(),
                axle.damped().map(damped -> damped.quarterCar().dampingRate()).orElse(0.0));
    }
}
