package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.OptionalDouble;

/**
 * Where the driver sits along the car: the place at which his seat is bolted to the floor. What the cushion takes up is not
 * known.
 *
 * @param behindFrontAxle m behind the front axle, where known
 */
public record Seat(OptionalDouble behindFrontAxle) {
    /** Of the wheelbase, where it is not known: a driver sits a little behind the middle. Common practice, no source. */
    private static final double USUAL_SHARE = 0.55;

    /** How it is estimated, in words. */
    public static final String RULE =
            "from the wheelbase: 0.55 ± 0.1 of it behind the front axle;" + " common practice, no source";

    /** Half-width of the estimate, two standard deviations, over the wheelbase. */
    public static final double TOLERANCE = 0.1;

    /** What a car has beyond its axles at most, over the wheelbase: no seat is bolted down farther out. */
    private static final double MOST_OVERHANG = 0.35;

    /** Nobody has measured it. */
    public static final Seat USUAL = new Seat(OptionalDouble.empty());

    /** Behind the front axle, given or estimated, m. */
    public double behindFront(double wheelbase) {
        return behindFrontAxle.orElse(USUAL_SHARE * wheelbase);
    }

    /** What a car of this wheelbase, m, asks of its seat. */
    void requireWithin(double wheelbase) {
        double share = behindFront(wheelbase) / wheelbase;
        require(
                share >= -MOST_OVERHANG && share <= 1 + MOST_OVERHANG,
                "seat.behindFrontAxle",
                "lies outside the car, whose body ends at most 0.35 of its wheelbase before the front axle and behind the"
                        + " rear one; measure from the middle of the front wheels to the bolts of the seat, backwards"
                        + " positive");
    }
}
