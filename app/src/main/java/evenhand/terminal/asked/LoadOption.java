package evenhand.terminal.asked;

import evenhand.car.LoadCase;
import evenhand.scenario.Scenario;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The load that is aboard. */
public final class LoadOption {
    @Option(
            names = "--load",
            paramLabel = "NAME",
            description = "A load case of the file, which is aboard: the car settles on springs, stops and tyres first."
                    + " Otherwise what was aboard when it was weighed.")
    private Optional<String> load = Optional.empty();

    public boolean isGiven() {
        return load.isPresent();
    }

    /** The load case of this name, where one is given. */
    public Optional<LoadCase> of(Scenario scenario) throws Mistake {
        if (load.isEmpty()) {
            return Optional.empty();
        }
        String name = load.get();
        List<String> known = scenario.loadCases().stream().map(LoadCase::name).toList();
        if (known.isEmpty()) {
            throw new Mistake("--load \"" + name + "\": the file has no load cases; write beside \"car\" for example"
                    + " \"loadCases\": [{\"name\": \"Four up\", \"added\": [{\"what\": \"two behind\","
                    + " \"mass\": \"150 kg\", \"behindFrontAxle\": \"1750 mm\", \"height\": \"620 mm\"}]}]");
        }
        return Optional.of(scenario.loadCase(name).orElseThrow(() -> SoundScenario.unknown("load case", name, known)));
    }
}
