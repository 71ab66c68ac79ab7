package evenhand.catalogue;

import evenhand.quantity.Quantity;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The values of one object's slots, absent ones filled in as far as something stands in for them. */
public final class Values {
    private final Shape.Plain<?> plain;
    private final Entries entries;
    private final Map<String, Object> values = new HashMap<>();

    Values(Shape.Plain<?> plain, Entries entries) {
        this.plain = plain;
        this.entries = entries;
    }

    /** What the person gave for a number, its tolerance with it; none where something stands in for it. */
    public Optional<Quantity> given(Slot<Double> slot) {
        return entries.given().get(slot.key()) instanceof Entry.Measured measured
                ? Optional.of(measured.quantity())
                : Optional.empty();
    }

    /** Whether the person gave something under this key of an object below. */
    boolean isGiven(Slot<?> group, Slot<?> below) {
        return entries.given().get(group.key()) instanceof Entries inside
                && inside.given().containsKey(below.key());
    }

    <V> void put(Slot<V> slot, V value) {
        values.put(slot.key(), value);
    }

    /**
     * The value of a slot.
     *
     * @throws IllegalStateException if the slot is neither required nor stood in for, and absent: ask {@link #optional}
     */
    public <V> V of(Slot<V> slot) {
        Optional<V> value = optional(slot);
        if (value.isEmpty()) { // no lambda: asked for every number of every car
            throw new IllegalStateException("no value for " + slot.key());
        }
        return value.get();
    }

    /**
     * The value of a slot, if there is one.
     *
     * @throws IllegalStateException if this object has no such slot
     */
    @SuppressWarnings("unchecked") // put() is the only way in, and a key stands for one slot within an object
    public <V> Optional<V> optional(Slot<V> slot) {
        Optional<V> value = Optional.ofNullable((V) values.get(slot.key()));
        if (value.isEmpty() && plain.slot(slot.key()).isEmpty()) {
            throw new IllegalStateException(plain.name() + " does not list " + slot.key());
        }
        return value;
    }

    public OptionalDouble maybe(Slot<Double> slot) {
        return optional(slot).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    public boolean has(Slot<?> slot) {
        return optional(slot).isPresent();
    }
}
