package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The brakes: how they are shared, or the parts that share them. Of a car it is one of the two.
 *
 * @param frontShare share of the brake force at the front wheels, where it is known
 * @param parts from the pedal to the wheels, where they are given
 */
public record Brakes(OptionalDouble frontShare, Optional<BrakeParts> parts) {
    /** Brakes of which nothing is known. */
    public static final Brakes USUAL = new Brakes(OptionalDouble.empty());

    /** How the front share is estimated, for an answer. */
    public static final String RULE =
            "(b + 0.8*cgHeight)/wheelbase, b from the rear axle to the centre of gravity: both ends at one friction at 0.8 g";

    /** How far the estimate may be off. Common practice, no source. */
    public static final double TOLERANCE = 0.08;

    /** Deceleration at which parts are said to have a front share, m/s². */
    static final double SHARE_AT = 0.5 * Weights.GRAVITY;

    public Brakes {
        require(frontShare.orElse(0) >= 0 && frontShare.orElse(0) <= 1, "frontShare", "must lie between 0 and 1");
    }

    /** Brakes of which the share alone is known. */
    public Brakes(OptionalDouble frontShare) {
        this(frontShare, Optional.empty());
    }

    /** Brakes whose share somebody estimated or measured. */
    public Brakes sharing(double share) {
        return new Brakes(OptionalDouble.of(share));
    }

    /** These brakes with the rear axle at rest further in bump by so much, m: a valve that feels it reads a fuller boot. */
    Brakes rearSunk(double travel) {
        return parts.isEmpty()
                ? this
                : new Brakes(frontShare, Optional.of(parts.get().rearSunk(travel)));
    }
}
