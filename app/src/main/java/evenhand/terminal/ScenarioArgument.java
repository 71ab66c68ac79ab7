package evenhand.terminal;

import evenhand.scenario.Scenario;
import java.util.Optional;
import picocli.CommandLine.Parameters;

/** The file that a command is about. */
final class ScenarioArgument {
    @Parameters(paramLabel = "FILE", description = "The scenario file.")
    @SuppressWarnings("NullAway.Init")
    private String file;

    /** The scenario, or nothing after its problems were told. */
    Optional<Scenario> read(Console console) throws Mistake {
        return SoundScenario.read(OptionText.file(file), console);
    }
}
