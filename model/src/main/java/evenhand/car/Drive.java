package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which wheels drive, how the force is shared between them, and where it comes from.
 *
 * @param finalDrive shaft turns over wheel turns; where given, a driven live axle feels the shaft's torque
 * @param shaftTurns sense of the propeller shaft, driving forwards
 * @param gears engine turns over shaft turns, from the first gear on; none where they are not known
 * @param givenEfficiency part of the engine's power that reaches the wheels, where it is known
 */
public record Drive(
        End axle,
        Differential differential,
        OptionalDouble finalDrive,
        ShaftTurns shaftTurns,
        Optional<Engine> engine,
        List<Double> gears,
        OptionalDouble givenEfficiency) {
    public static final Drive USUAL =
            new Drive(End.REAR, new Differential.Open(), OptionalDouble.empty(), ShaftTurns.ANTICLOCKWISE);

    /** How the efficiency is estimated, for an answer. */
    public static final String EFFICIENCY_RULE =
            "0.9 where the rear axle drives, 0.92 where the front does; common practice";

    /** How far the estimate may be off. Common practice, no source. */
    public static final double EFFICIENCY_TOLERANCE = 0.03;

    /** A drive of which engine and gears are not known. */
    public Drive(End axle, Differential differential, OptionalDouble finalDrive, ShaftTurns shaftTurns) {
        this(axle, differential, finalDrive, shaftTurns, Optional.empty(), List.of(), OptionalDouble.empty());
    }

    public Drive {
        gears = List.copyOf(gears);
        require(finalDrive.orElse(1) > 0, "finalDrive", "must be above zero");
        require(gears.stream().allMatch(gear -> gear > 0), "gears", "must all be above zero");
        require(
                gears.isEmpty() || finalDrive.isPresent(),
                "gears",
                "say nothing without the axle's ratio; give finalDrive beside them");
        require(
                givenEfficiency.orElse(1) > 0 && givenEfficiency.orElse(1) <= 1,
                "efficiency",
                "must be above 0 and at most 1");
    }

    /** Part of the engine's power that reaches the wheels, given or estimated. */
    public double efficiency() {
        return givenEfficiency.orElse(axle == End.REAR ? 0.9 : 0.92);
    }

    /** The same drive seen in a mirror. */
    public Drive mirrored() {
        return new Drive(axle, differential, finalDrive, shaftTurns.mirrored(), engine, gears, givenEfficiency);
    }

    /** The same with another differential. */
    public Drive through(Differential other) {
        return new Drive(axle, other, finalDrive, shaftTurns, engine, gears, givenEfficiency);
    }

    /** The same with an efficiency that somebody estimated or measured. */
    public Drive losing(double efficiency) {
        return new Drive(axle, differential, finalDrive, shaftTurns, engine, gears, OptionalDouble.of(efficiency));
    }

    /** The same without engine and gears. */
    public Drive byGripAlone() {
        return new Drive(axle, differential, finalDrive, shaftTurns);
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
