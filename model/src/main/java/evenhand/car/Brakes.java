package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.OptionalDouble;

/**
 * The brakes.
 *
 * @param frontShare share of the brake force at the front wheels, where it is known
 */
public record Brakes(OptionalDouble frontShare) {
    /** Brakes of which nothing is known. */
    public static final Brakes USUAL = new Brakes(OptionalDouble.empty());

    /** How the front share is estimated, for an answer. */
    public static final String RULE =
            "(b + 0.8*cgHeight)/wheelbase, b from the rear axle to the centre of gravity: both ends at one friction at 0.8 g";

    /** How far the estimate may be off. Common practice, no source. */
    public static final double TOLERANCE = 0.08;

    public Brakes {
        require(frontShare.orElse(0) >= 0 && frontShare.orElse(0) <= 1, "frontShare", "must lie between 0 and 1");
    }
}
