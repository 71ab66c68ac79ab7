package evenhand.scenario;

import evenhand.car.LoadCase;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Nearest;
import evenhand.roadtest.Channel;
import evenhand.roadtest.Observation;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What road tests name must be in the file. */
final class RoadTestChecks {
    private final Problems problems;
    private final Json.Obj top;

    RoadTestChecks(Problems problems, Json.Obj top) {
        this.problems = problems;
        this.top = top;
    }

    void of(FileCatalogue.Opened file, List<Setup> setups) {
        Set<String> names = new HashSet<>();
        List<String> known = setups.stream().map(Setup::name).toList();
        List<String> loads = file.loadCases().stream().map(LoadCase::name).toList();
        for (int i = 0; i < file.roadTests().size(); i++) {
            TestGiven test = file.roadTests().get(i);
            String where = "roadTests[" + i + "].";
            if (!names.add(test.name())) {
                problem(where + "name", "is the name of an earlier road test; choose another");
            }
            Optional<Setup> driven = setups.stream()
                    .filter(setup -> setup.name().equals(test.setup()))
                    .findFirst();
            if (driven.isEmpty() && !named(file, test.setup())) {
                problem(where + "setup", unknown("set-up", test.setup(), known));
            }
            test.load()
                    .filter(load -> !loads.contains(load))
                    .ifPresent(load -> problem(where + "load", unknown("load case", load, loads)));
            if (driven.isPresent()) {
                ratio(driven.get(), i, test);
            }
        }
    }

    /** Whether a set-up of the name stands there, with problems of its own that have their lines. */
    private static boolean named(FileCatalogue.Opened file, String name) {
        return file.setups().stream().anyMatch(setup -> setup.name().equals(name));
    }

    private void ratio(Setup setup, int i, TestGiven test) {
        boolean reads = test.observations().stream()
                .anyMatch(one ->
                        one instanceof Observation.Reading reading && reading.channel() == Channel.STEERING_WHEEL);
        if (reads && Catalogue.entry(setup.entries(), "steering.ratio").isEmpty()) {
            int at = first(i);
            problem(
                    "roadTests[" + i + "].readings[" + at + "].steeringWheel",
                    "says nothing of the car without car.steering.ratio; give it in the file: turn the wheel from lock to"
                            + " lock and measure how far the front wheels turn");
        }
    }

    /** Which reading is the first with a steering wheel. */
    private int first(int test) {
        if (top.members().get("roadTests") instanceof Json.Arr tests
                && tests.items().get(test) instanceof Json.Obj one
                && one.members().get("readings") instanceof Json.Arr readings) {
            for (int i = 0; i < readings.items().size(); i++) {
                if (readings.items().get(i) instanceof Json.Obj reading
                        && reading.members().containsKey(Channel.STEERING_WHEEL.key())) {
                    return i;
                }
            }
        }
        return 0;
    }

    private static String unknown(String kind, String name, List<String> known) {
        String nearest = known.isEmpty() ? "" : Nearest.to(name, known);
        return "is no " + kind + " of this file"
                + (known.isEmpty()
                        ? ", which has none"
                        : "; it has "
                                + known.stream()
                                        .map(one -> '"' + JsonReader.shown(one) + '"')
                                        .collect(Collectors.joining(", "))
                                + (Nearest.isSlip(name, nearest) ? "; did you mean \"" + nearest + "\"?" : ""));
    }

    private void problem(String where, String what) {
        problems.at(Locator.place(top, where), what);
    }
}
