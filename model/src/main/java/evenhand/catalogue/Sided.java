package evenhand.catalogue;

import evenhand.car.links.Pair;
import evenhand.quantity.InvalidValue;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The values of one side of a pair: what is given for this side alone, where it is, else what is given once for both.
 *
 * @param both given for the left side, and mirrored
 * @param own what differs on this side
 */
record Sided(Values both, Optional<Values> own) {
    /** Both sides of a pair; what the right one has of its own stands under {@code right}. */
    static <T> Pair<T> pair(Values values, Slot<Values> right, Function<Sided, T> side) {
        T left = side.apply(new Sided(values, Optional.empty()));
        Optional<Values> own = values.optional(right);
        if (own.isEmpty()) {
            return Pair.alike(left);
        }
        try {
            return new Pair<>(left, side.apply(new Sided(values, own)));
        } catch (InvalidValue invalid) {
            throw new InvalidValue(Path.join(right.key(), invalid.component()), String.valueOf(invalid.getMessage()));
        }
    }

    <V> Optional<V> optional(Slot<V> slot) {
        Optional<V> mine = own.flatMap(values -> values.optional(slot));
        return mine.isPresent() ? mine : both.optional(slot);
    }

    <V> V of(Slot<V> slot) {
        Optional<V> mine = own.flatMap(values -> values.optional(slot));
        return mine.isPresent() ? mine.get() : both.of(slot);
    }

    OptionalDouble maybe(Slot<Double> slot) {
        Optional<Double> value = optional(slot);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    /** The side of an object below, such as a point of a link. */
    Sided below(Slot<Values> group) {
        return new Sided(both.of(group), own.flatMap(values -> values.optional(group)));
    }
}
