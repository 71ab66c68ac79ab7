package evenhand.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What came of building: the thing itself unless something was wrong, every fault, and every number with its origin.
 *
 * @param values all numbers of the object in the order of the catalogue, given, default or estimated
 */
public record Built<T>(Optional<T> value, List<Fault> faults, List<Adjustable> values) {
    /** Something wrong, and how to mend it; {@code path} relative to the object that was built. */
    public record Fault(String path, String what) {}

    public Built {
        faults = List.copyOf(faults);
        values = List.copyOf(values);
    }

    /** The same without what stands at some paths. */
    Built<T> without(Set<String> paths) {
        return new Built<>(
                value,
                faults,
                values.stream().filter(one -> !paths.contains(one.path())).toList());
    }

    /** The values that were estimated. */
    public List<Adjustable> estimated() {
        return values.stream()
                .filter(value -> value.origin() == Adjustable.Origin.ESTIMATED)
                .toList();
    }

    /** The number at a path. */
    public Optional<Adjustable> at(String path) {
        return values.stream().filter(value -> value.path().equals(path)).findFirst();
    }
}
