package evenhand.scenario;

import evenhand.car.Car;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Assumed;
import evenhand.catalogue.Built;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Deviation;
import evenhand.catalogue.Entries;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One way in which the car is set up, its base's changes and its own applied.
 *
 * @param basedOn name of the set-up it builds on
 * @param entries what the person gave, changed
 * @param car as built, its {@code lowered} not yet settled
 * @param values every number with its origin
 * @param sheet free words for the set-up sheet
 * @param look which colour, line and marker it is drawn with wherever it is shown, from 0; no other set-up has the same
 * @param warnings those of this set-up's values
 */
public record Setup(
        String name,
        Optional<String> note,
        Optional<String> basedOn,
        Entries entries,
        Car car,
        List<Adjustable> values,
        Map<String, String> sheet,
        int look,
        List<Warning> warnings) {
    /** So many looks can be given in a file. */
    static final int MOST_LOOKS = 36;

    /** The name of the only set-up in a file that has none. */
    public static final String AS_GIVEN = "As given";

    public Setup {
        values = List.copyOf(values);
        sheet = Collections.unmodifiableMap(new LinkedHashMap<>(sheet));
        warnings = List.copyOf(warnings);
    }

    /** The values that were estimated or follow from others, each with its rule. */
    public List<Adjustable> estimated() {
        return Stream.concat(
                        values.stream().filter(value -> value.origin() == Adjustable.Origin.ESTIMATED),
                        Catalogue.workedOut(car).stream())
                .toList();
    }

    /**
     * This set-up on a car whose numbers are off from what stands in the file; none where there is no such car.
     *
     * @param off what its numbers are
     */
    public Optional<Setup> off(Deviation off) {
        Entries asItIs = entries.off(off);
        Built<Car> built = Catalogue.build(asItIs);
        return built.value()
                .map(whole -> new Setup(name, note, basedOn, asItIs, whole, built.values(), sheet, look, warnings));
    }

    /** What was not given and taken as none. */
    public List<Assumed> assumed() {
        return Assumed.of(car, values);
    }

    /** The same with what only the ride estimates, of the car as it has settled. */
    public List<Adjustable> estimatedForRide(Car settled) {
        return Stream.concat(estimated().stream(), Catalogue.estimatedForRide(settled).stream())
                .toList();
    }
}
