package evenhand.terminal.asked;

import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** The set-ups that a command answers for. */
public final class SetupOption {
    @Option(
            names = "--setup",
            paramLabel = "NAME",
            description = "Only this set-up; may be given more than once. Otherwise all of the file.")
    private List<String> names = new ArrayList<>();

    /** Those that were named, in the order of the names; all of the file where none was. */
    public List<Setup> of(Scenario scenario) throws Mistake {
        return SoundScenario.choose(scenario, names);
    }
}
