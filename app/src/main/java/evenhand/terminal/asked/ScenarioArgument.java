package evenhand.terminal.asked;

import evenhand.scenario.Scenario;
import evenhand.terminal.page.Console;
import java.util.Optional;
import picocli.CommandLine.Parameters;

/** The file that a command is about. */
public final class ScenarioArgument {
    @Parameters(paramLabel = "FILE", description = "The scenario file.")
    @SuppressWarnings("NullAway.Init")
    private String file;

    /** The scenario, or nothing after its problems were told. */
    public Optional<Scenario> read(Console console) throws Mistake {
        return SoundScenario.read(OptionText.file(file), console);
    }
}
