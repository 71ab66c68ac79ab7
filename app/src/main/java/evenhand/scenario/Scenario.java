package evenhand.scenario;

import evenhand.car.LoadCase;
import evenhand.car.mounts.HardUse;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Deviation;
import evenhand.catalogue.Entries;
import java.util.List;
import java.util.Optional;

/**
 * A file as it was read: one car, its set-ups, load cases and road tests.
 *
 * @param file as it was named
 * @param text of the whole file, from which it is edited without losing anything
 * @param asked what was asked for, each with what judges it
 * @param given all that stands in it, by keys
 * @param car the car before any set-up's changes
 * @param hardUse what the car is put through, the car at rest among it; the usual cases where the file lists none
 * @param estimatedUse numbers of these cases that the file does not give
 * @param roadTests as they stand there, their logs not yet read
 * @param record what the shop wrote down beside the car
 * @param tested what has corrected the car; nothing where it is as it stands in the file
 */
public record Scenario(
        String file,
        String text,
        String title,
        Optional<String> story,
        List<Asked> asked,
        Optional<Shop> shop,
        Entries given,
        Entries car,
        List<Setup> setups,
        List<LoadCase> loadCases,
        List<HardUse> hardUse,
        List<Adjustable> estimatedUse,
        List<TestGiven> roadTests,
        ShopRecord record,
        List<Warning> warnings,
        Optional<Tested> tested) {
    /**
     * That the car is not as it stands in the file, but as road tests have corrected it.
     *
     * @param tests their names
     * @param agrees whether the file and the road agree
     */
    public record Tested(List<String> tests, boolean agrees) {
        public Tested {
            tests = List.copyOf(tests);
        }
    }

    /** The workshop, for the report. */
    public record Shop(Optional<String> name, Optional<String> picture) {}

    public Scenario {
        asked = List.copyOf(asked);
        setups = List.copyOf(setups);
        loadCases = List.copyOf(loadCases);
        hardUse = List.copyOf(hardUse);
        estimatedUse = List.copyOf(estimatedUse);
        roadTests = List.copyOf(roadTests);
        warnings = List.copyOf(warnings);
    }

    public Optional<Setup> setup(String name) {
        return setups.stream().filter(setup -> setup.name().equals(name)).findFirst();
    }

    /** Whether the file lists what the car is put through. */
    public boolean listsHardUse() {
        return given.given().containsKey(FileCatalogue.HARD_USE.key());
    }

    /**
     * The same job on a car whose numbers are off from what stands in the file: all set-ups are of that car. None where one of them
     * is no car then.
     *
     * @param off what its numbers are
     * @param by what has taught it
     */
    public Optional<Scenario> off(Deviation off, Tested by) {
        List<Setup> asTheyAre =
                setups.stream().flatMap(setup -> setup.off(off).stream()).toList();
        return asTheyAre.size() < setups.size()
                ? Optional.empty()
                : Optional.of(new Scenario(
                        file,
                        text,
                        title,
                        story,
                        asked,
                        shop,
                        given,
                        car.off(off),
                        asTheyAre,
                        loadCases,
                        hardUse,
                        estimatedUse,
                        roadTests,
                        record,
                        warnings,
                        Optional.of(by)));
    }

    /**
     * What is wrong with a value, where that shows only when it is used.
     *
     * @param where path from the file's top, such as {@code shop.picture}
     */
    public Problem problem(String where, String what) {
        Problems problems = new Problems(file);
        JsonReader.read(new Source(text), problems).ifPresent(root -> problems.at(Locator.place(root, where), what));
        return problems.inOrder().get(0);
    }

    public Optional<LoadCase> loadCase(String name) {
        return loadCases.stream()
                .filter(loadCase -> loadCase.name().equals(name))
                .findFirst();
    }
}
