package evenhand.terminal.lower;

import evenhand.answers.Trial;
import evenhand.lowering.LoweringStudy;
import evenhand.quantity.InvalidValue;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.FullOption;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ProgressLine;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.TrialOptions;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand lower}. */
@Command(
        name = "lower",
        sortOptions = false,
        description = {
            "What lowering does to travel, stops, roll, balance and ride, and how low it can go.",
            "",
            "The body is let down on the same links and springs, both ends alike, on top of what the set-up"
                    + " has lowered already. Each height answers as balance and ride would, the ride on a class C"
                    + " road at 80 km/h. First stands the lowest that works, both ways round and on every circle, and"
                    + " what stops it; --full prints all figures, and why.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand lower scenarios/harbour-saloon.json",
            "  app/evenhand lower scenarios/orchard-estate.json --setup After \\",
            "      --from \"-20 mm\" --to \"40 mm\" --step \"5 mm\"",
            "  app/evenhand lower scenarios/slipper-coupe.json --keep-reserve \"1.0 g\" --full",
            "  app/evenhand lower scenarios/harbour-saloon.json \\",
            "      --radius \"15 m\" --radius \"60 m\"",
            "",
            "Ends with 0 when done, with 1 when the set-up has no answer at any height, or one",
            "way round or on one circle none, and with 2 when the command line or the file is",
            "wrong."
        })
public final class LowerCommand implements AskedInForms {
    private static final int MOST_ROWS = 1000;

    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Option(
            names = "--setup",
            paramLabel = "NAME",
            description = "The set-up to be lowered. Otherwise the first of the file.")
    private Optional<String> setup = Optional.empty();

    @Option(
            names = "--from",
            paramLabel = "LENGTH",
            defaultValue = "0 mm",
            description = "The first height, let down by so much; below zero it is raised. Otherwise ${DEFAULT-VALUE}.")
    private String from = "0 mm";

    @Option(
            names = "--to",
            paramLabel = "LENGTH",
            defaultValue = "80 mm",
            description = "The last height. Otherwise ${DEFAULT-VALUE}.")
    private String to = "80 mm";

    @Option(
            names = "--step",
            paramLabel = "LENGTH",
            defaultValue = "10 mm",
            description = "Between the heights that are shown. Otherwise ${DEFAULT-VALUE}.")
    private String step = "10 mm";

    @Option(
            names = "--keep-reserve",
            paramLabel = "RESERVE",
            description = "Stiffens the springs, where they are not stiff enough, so that this much more load, for"
                    + " example \"1.0 g\", just reaches the bump stops in the travel that is left. Otherwise the"
                    + " springs stay.")
    private Optional<String> reserve = Optional.empty();

    @Mixin
    private final TrialOptions turn = new TrialOptions();

    @Mixin
    private final LoadOption load = new LoadOption();

    @Mixin
    private final FullOption full = new FullOption();

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
        Trial asWeighed = turn.trial();
        double first = OptionText.lowering("--from", from);
        double last = OptionText.lowering("--to", to);
        double between = steps(first, last);
        OptionalDouble kept =
                reserve.isPresent() ? OptionalDouble.of(OptionText.reserve(reserve.get())) : OptionalDouble.empty();
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        Trial trial = asWeighed.with(load.of(scenario));
        Setup chosen = SoundScenario.one(scenario, setup);
        canGo(chosen, "--from \"" + from + "\"", first);
        canGo(chosen, "--to \"" + to + "\"", last);
        LoweringStudy study;
        try (ProgressLine progress = new ProgressLine(console, "letting it down")) {
            study = LoweringStudy.of(chosen.car(), first, last, between, kept, trial, progress);
        }
        return new LowerReply(scenario, chosen, trial, kept, study, full.full());
    }

    private double steps(double first, double last) throws Mistake {
        double between = OptionText.lowering("--step", step);
        if (between <= 0) {
            throw new Mistake("--step \"" + step + "\": must be above zero, for example \"10 mm\"");
        }
        if (first > last) {
            throw new Mistake("--from \"" + from + "\" --to \"" + to + "\": goes upwards; write the higher stance, the"
                    + " smaller number, after --from");
        }
        if ((last - first) / between > MOST_ROWS) {
            throw new Mistake("--step \"" + step + "\": makes more than " + MOST_ROWS + " steps from \"" + from
                    + "\" to \"" + to + "\"; write a longer one");
        }
        return between;
    }

    private static void canGo(Setup setup, String option, double by) throws Mistake {
        try {
            setup.car().letDown(by);
        } catch (InvalidValue e) {
            throw new Mistake(option + ": the body of \"" + setup.name() + "\" cannot go there: " + e.component() + " "
                    + e.getMessage());
        }
    }
}
