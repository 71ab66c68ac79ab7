package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.OptionalDouble;

/**
 * Which wheels drive, and how the force is shared between them.
 *
 * @param finalDrive shaft turns over wheel turns; where given, a driven live axle feels the shaft's torque
 * @param shaftTurns sense of the propeller shaft, driving forwards
 */
public record Drive(End axle, Differential differential, OptionalDouble finalDrive, ShaftTurns shaftTurns) {
    public static final Drive USUAL =
            new Drive(End.REAR, new Differential.Open(), OptionalDouble.empty(), ShaftTurns.ANTICLOCKWISE);

    public Drive {
        require(finalDrive.orElse(1) > 0, "finalDrive", "must be above zero");
    }

    /** Sense of turning, seen from behind. */
    public enum ShaftTurns {
        ANTICLOCKWISE,
        CLOCKWISE;

        public ShaftTurns mirrored() {
            return this == CLOCKWISE ? ANTICLOCKWISE : CLOCKWISE;
        }
    }

    /** How a differential shares the drive force. */
    public sealed interface Differential permits Differential.Open, Differential.Locked, Differential.TorqueBiasing {
        /** Halves. */
        record Open() implements Differential {}

        /** Both wheels turn at one speed. */
        record Locked() implements Differential {}

        /** Locked until the greater share is {@code biasRatio} times the lesser. */
        record TorqueBiasing(double biasRatio) implements Differential {
            public TorqueBiasing {
                require(biasRatio >= 1, "biasRatio", "must be 1 or more");
            }
        }
    }
}
