package evenhand.terminal.asked;

import evenhand.doubt.Tolerance;
import evenhand.scenario.Scenario;
import evenhand.terminal.page.Console;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The file that a command is about. */
public final class ScenarioArgument {
    /** One by the time that it is read: each of several is asked by itself. */
    @Parameters(paramLabel = "FILE", arity = "1..*", description = EachFile.SCENARIOS)
    private List<String> files = new ArrayList<>();

    @Mixin
    private final TestedOptions tested = new TestedOptions();

    /** The scenario, its car as it was asked for, or nothing after its problems were told. */
    public Optional<Scenario> read(Console console) throws Mistake {
        return read(Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, console);
    }

    /** The same, with measured values without a tolerance taken so. */
    public Optional<Scenario> read(Tolerance.Unsaid unsaid, Console console) throws Mistake {
        Optional<Scenario> sound = SoundScenario.read(OptionText.file(files.get(0)), console);
        return sound.isPresent() ? tested.of(sound.get(), unsaid, console) : sound;
    }
}
