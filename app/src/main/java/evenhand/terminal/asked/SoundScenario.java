package evenhand.terminal.asked;

import evenhand.catalogue.Nearest;
import evenhand.scenario.Problem;
import evenhand.scenario.Reading;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.page.Console;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A scenario file as a computing command needs it: sound, or its problems told on standard error. */
public final class SoundScenario {
    private SoundScenario() {}

    /** The scenario, or nothing after its problems were told. */
    public static Optional<Scenario> read(Path file, Console console) {
        Reading reading = InputFile.scenario(file, console);
        for (Problem problem : reading.problems()) {
            console.complain(problem.toString());
        }
        return reading.problems().isEmpty() ? reading.scenario() : Optional.empty();
    }

    /** The set-ups of these names, in the order of the names; all where no name is given. */
    public static List<Setup> choose(Scenario scenario, List<String> names) throws Mistake {
        if (names.isEmpty()) {
            return scenario.setups();
        }
        List<Setup> chosen = new ArrayList<>();
        for (String name : names) {
            Setup setup = find(scenario, name);
            if (!chosen.contains(setup)) {
                chosen.add(setup);
            }
        }
        return chosen;
    }

    /** The set-up of this name; the first of the file where no name is given. */
    public static Setup one(Scenario scenario, Optional<String> name) throws Mistake {
        return name.isPresent() ? find(scenario, name.get()) : scenario.setups().get(0);
    }

    private static Setup find(Scenario scenario, String name) throws Mistake {
        List<String> known = scenario.setups().stream().map(Setup::name).toList();
        return scenario.setup(name).orElseThrow(() -> unknown("set-up", name, known));
    }

    /** That a file has none of this name. */
    public static Mistake unknown(String kind, String name, List<String> known) {
        String nearest = Nearest.to(name, known);
        return new Mistake("there is no " + kind + " \"" + name + "\" in the file, only "
                + known.stream().map(one -> '"' + one + '"').collect(Collectors.joining(", "))
                + (Nearest.isSlip(name, nearest) ? "; did you mean \"" + nearest + "\"?" : ""));
    }
}
