package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What ends the travel of an axle's wheels. Gaps and travels are measured at the wheel of an independent axle, at the
 * stop of a live one; {@code base} is the distance between a live axle's stops, the springs' base where absent.
 */
public record Stops(Optional<Bump> bump, Optional<Droop> droop, Optional<Metal> metal) {
    public static final Stops NONE = new Stops(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * A bump rubber; {@code gap} m left at rest, below zero where the car stands on it.
     *
     * @param aroundDamper whether it sits on the damper's rod and works along it, into its eyes: that matters to what the eyes
     *     carry alone, for gap and curve are told at the wheel or axle all the same
     */
    public record Bump(double gap, Curve curve, OptionalDouble base, boolean aroundDamper) {
        /** A bump rubber by itself. */
        public Bump(double gap, Curve curve, OptionalDouble base) {
            this(gap, curve, base, false);
        }

        public Bump {
            require(Double.isFinite(gap), "gap", "must be a finite length");
            require(base.orElse(1) > 0, "base", "must be above zero");
        }
    }

    /** The end of droop: {@code travel} m from rest, below zero where the axle hangs on it at rest; then {@code rate} N/m. */
    public record Droop(double travel, double rate, OptionalDouble base) {
        public Droop {
            require(Double.isFinite(travel), "travel", "must be a finite length");
            require(rate > 0, "rate", "must be above zero");
            require(base.orElse(1) > 0, "base", "must be above zero");
        }
    }

    /** Where metal meets, {@code gap} m from rest. */
    public record Metal(double gap, OptionalDouble base) {
        public Metal {
            require(Double.isFinite(gap), "gap", "must be a finite length");
            require(base.orElse(1) > 0, "base", "must be above zero");
        }
    }

    /** How far the wheels rise until metal meets, or else the bump stop's curve ends; nothing where neither is known, m. */
    public OptionalDouble bumpTravel() {
        if (metal.isPresent()) {
            return OptionalDouble.of(metal.get().gap());
        }
        return bump.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(bump.get().gap() + bump.get().curve().end());
    }

    /** These stops with the wheels {@code travel} m further in bump: less gap in bump, more travel in droop. */
    Stops inBump(double travel) {
        return new Stops(
                bump.map(stop -> new Bump(stop.gap() - travel, stop.curve(), stop.base(), stop.aroundDamper())),
                droop.map(stop -> new Droop(stop.travel() + travel, stop.rate(), stop.base())),
                metal.map(stop -> new Metal(stop.gap() - travel, stop.base())));
    }

    /** These stops of a live axle; those without a base of their own stand so far apart, m. */
    public Stops onBase(double apart) {
        return new Stops(
                bump.map(stop -> new Bump(stop.gap(), stop.curve(), baseOr(stop.base(), apart), stop.aroundDamper())),
                droop.map(stop -> new Droop(stop.travel(), stop.rate(), baseOr(stop.base(), apart))),
                metal.map(stop -> new Metal(stop.gap(), baseOr(stop.base(), apart))));
    }

    private static OptionalDouble baseOr(OptionalDouble own, double apart) {
        return own.isPresent() ? own : OptionalDouble.of(apart);
    }
}
