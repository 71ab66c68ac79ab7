package evenhand.terminal.brakes;

import evenhand.car.LoadCase;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
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

/** {@code evenhand brakes}. */
@Command(
        name = "brakes",
        sortOptions = false,
        description = {
            "Which end locks first, how hard the foot presses, and how far the car dives.",
            "",
            "Straight ahead, from a deceleration to the pedal and back: pressures, brake forces against the ideal"
                    + " ones, the road that each end uses, what the links carry of dive and lift, the wheel that locks"
                    + " first on given roads and on the car's own tyres, the decelerations at which the ends change"
                    + " places, rules for passenger cars as a yardstick, and stops at a held pedal. A car that gives"
                    + " car.brakes.frontShare alone answers all but pressures, pedal and stops. First stands the verdict.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand brakes scenarios/harbour-saloon.json",
            "  app/evenhand brakes scenarios/harbour-saloon.json --at \"0.5 g\" \\",
            "      --friction 0.2 --pedal \"250 N\" --speed \"50 km/h\" --no-booster",
            "",
            "Test stops on closed ground only, from low speed first; brakes are work for",
            "qualified people.",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer, and with 2 when the",
            "command line or the file is wrong."
        })
public final class BrakesCommand implements AskedInForms {
    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Mixin
    private final SetupOption setups = new SetupOption();

    @Mixin
    private final LoadOption load = new LoadOption();

    @Option(
            names = "--at",
            paramLabel = "DECELERATION",
            description =
                    "A deceleration that is told in full; may be given more than once. Otherwise 0.3, 0.6 and 0.9 g.")
    private List<String> at = new ArrayList<>();

    @Option(
            names = "--friction",
            paramLabel = "RATIO",
            description =
                    "Friction of a road, for the first lock beside that on the car's own tyres; may be given more than"
                            + " once. Otherwise 0.3, 0.5 and 0.8.")
    private List<String> frictions = new ArrayList<>();

    @Option(
            names = "--pedal",
            paramLabel = "FORCE",
            description =
                    "Force of the foot that is held for a stop; may be given more than once. Otherwise 100 to 500 N by"
                            + " 100 N.")
    private List<String> pedals = new ArrayList<>();

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "80 km/h",
            description = "From which it stops. Otherwise ${DEFAULT-VALUE}.")
    private String speed = "80 km/h";

    @Option(names = "--no-booster", description = "The booster does not help, as with the engine off.")
    private boolean noBooster;

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
        Braking.Asked asked = new Braking.Asked(
                OptionText.sizes(
                        "--at",
                        at.isEmpty() ? List.of("0.3 g", "0.6 g", "0.9 g") : at,
                        Dimension.ACCELERATION,
                        Braking.Asked.LEAST_DECELERATION,
                        Braking.Asked.MOST_DECELERATION,
                        "\"0.6 g\""),
                OptionText.sizes(
                        "--friction",
                        frictions.isEmpty() ? List.of("0.3", "0.5", "0.8") : frictions,
                        Dimension.RATIO,
                        Braking.Asked.LEAST_FRICTION,
                        Braking.Asked.MOST_FRICTION,
                        "\"0.8\""),
                OptionText.sizes(
                        "--pedal",
                        pedals.isEmpty() ? List.of("100 N", "200 N", "300 N", "400 N", "500 N") : pedals,
                        Dimension.FORCE,
                        Braking.Asked.LEAST_PEDAL,
                        Braking.Asked.MOST_PEDAL,
                        "\"200 N\""),
                OptionText.speed(speed),
                !noBooster);
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        Optional<LoadCase> aboard = load.of(scenario);
        List<Setup> chosen = setups.of(scenario);
        List<SetupBrakes> answers = new ArrayList<>();
        try (ProgressLine progress = new ProgressLine(console, "braking")) {
            for (Setup setup : chosen) {
                answers.add(SetupBrakes.of(setup, aboard, asked));
                progress.at((double) answers.size() / chosen.size());
            }
        }
        return new BrakesReply(scenario, aboard, asked, answers);
    }
}
