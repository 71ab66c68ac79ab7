package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import java.util.OptionalDouble;

/**
 * A rod with ends of its own.
 *
 * @param longer how much longer it was made than it was measured, m
 * @param perTurn advance per turn of its thread, m, where known
 * @param rate along its line, N/m; it counts where an axle has more links than a rigid one could move on
 * @param jointLimit greatest angle of either end's joint, rad, where it has one
 */
public record Rod(double longer, OptionalDouble perTurn, double rate, OptionalDouble jointLimit) {
    /** Rate of a rod with its bushes where none is given, N/m. Common practice, no source. */
    public static final double ESTIMATED_RATE = 2.5e6;

    /** Shortest rod, m. */
    static final double SHORTEST = 0.01;

    static final String TOO_SHORT = "the link must be at least 10 mm long; its two ends stand in one place";

    /** A rod as it was measured. */
    public static final Rod AS_MEASURED = new Rod(0, OptionalDouble.empty(), ESTIMATED_RATE, OptionalDouble.empty());

    public Rod {
        require(Math.abs(longer) < 1, "longer", "must be less than a metre");
        require(perTurn.orElse(1) > 0, "perTurn", "must be above zero");
        require(rate > 0, "rate", "must be above zero");
        require(
                jointLimit.orElse(1) > 0 && jointLimit.orElse(1) < Math.PI / 2,
                "jointLimit",
                "must lie between 0 and 90 deg");
    }

    /** This rod made so much longer, m. */
    public Rod longer(double by) {
        return new Rod(by, perTurn, rate, jointLimit);
    }

    /** Throws unless a rod measured so long, with what it was made longer, can be one. */
    void fits(double measured, String component) {
        require(measured >= SHORTEST, component, TOO_SHORT);
        require(
                measured + longer >= SHORTEST,
                "longer",
                "leaves nothing of the link: it must stay at least 10 mm long");
    }
}
