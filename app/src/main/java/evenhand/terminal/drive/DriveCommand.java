package evenhand.terminal.drive;

import evenhand.car.LoadCase;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ProgressLine;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SetupOption;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand drive}. */
@Command(
        name = "drive",
        sortOptions = false,
        description = {
            "Which wheel spins first off the line, and what gears, tyres and axle ratio give.",
            "",
            "Straight ahead: what engine and grip allow in first gear, what the propeller shaft takes off one wheel of a"
                    + " live axle, what another differential would change, squat, and how far leaf springs wind up; each"
                    + " gear at the engine's best torque; and what the speedometer shows on other tyres. Without"
                    + " car.drive.engine and gears the launch is by grip alone. First stands the launch.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand drive scenarios/harbour-saloon.json",
            "  app/evenhand drive scenarios/quarry-special.json --setup \"Welded up\" \\",
            "      --speed \"120 km/h\"",
            "",
            "Try a launch on a closed course only.",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer, and with 2 when the",
            "command line or the file is wrong."
        })
public final class DriveCommand implements AskedInForms {
    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Mixin
    private final SetupOption setups = new SetupOption();

    @Mixin
    private final LoadOption load = new LoadOption();

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "100 km/h",
            description = "At which the engine's speed in each gear is told. Otherwise ${DEFAULT-VALUE}.")
    private String speed = "100 km/h";

    @Mixin
    private final FormOptions forms = new FormOptions();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    @Override
    public FormOptions forms() {
        return forms;
    }

    @Override
    public UsualOptions usual() {
        return usual;
    }

    @Override
    public Answer answer(Console console) throws Mistake {
        double metresPerSecond = OptionText.speed(speed);
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        Optional<LoadCase> aboard = load.of(scenario);
        List<Setup> chosen = setups.of(scenario);
        List<SetupDrive> answers = new ArrayList<>();
        try (ProgressLine progress = new ProgressLine(console, "pulling away")) {
            for (Setup setup : chosen) {
                answers.add(SetupDrive.of(setup, aboard, metresPerSecond, chosen.get(0)));
                progress.at((double) answers.size() / chosen.size());
            }
        }
        return new DriveReply(scenario, aboard, metresPerSecond, answers);
    }
}
