package evenhand.terminal.balance;

import evenhand.answers.Trial;
import evenhand.scenario.Scenario;
import evenhand.terminal.asked.AlongOptions;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.FullOption;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SetupOption;
import evenhand.terminal.asked.TrialOptions;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.turn.Along;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code evenhand balance}. */
@Command(
        name = "balance",
        sortOptions = false,
        description = {
            "How each set-up is balanced in a steady turn, to the left and to the right: at each pace,"
                    + " and at the limit that a driver meets.",
            "",
            "The verdict keeps to one screen: pushes or slides at the paces asked for and near the limit"
                    + " (at nine tenths of it); the limit and the end that goes first, each way round; where a"
                    + " bump stop is met; why the last set-up differs from the first, what would move it most,"
                    + " and how sure that is. With --full also hand sums, roll, load transfer and all other"
                    + " figures of the first way round, what the understeer is made of, and what touches, lifts"
                    + " or comes loose on the way. CSV has the rows of the first way round on the first circle.",
            "",
            "With --along the speed changes at that moment: the driver lifts off, presses on or, with --brakes,"
                    + " brakes in the bend. The answer tells whether the car tightens its line or runs wide, by"
                    + " the steer that this needs against the steady turn, and what becomes of its limit.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand balance scenarios/harbour-saloon.json",
            "  app/evenhand balance scenarios/harbour-saloon.json --setup \"As bought\" \\",
            "      --setup \"Pivot high\"",
            "  app/evenhand balance scenarios/slipper-coupe.json --pace \"0.7 g\" \\",
            "      --radius \"60 m\" --radius \"15 m\" --turn right",
            "  app/evenhand balance scenarios/orchard-estate.json --load \"Four up\"",
            "  app/evenhand balance scenarios/harbour-saloon.json --pace \"0.4 g\" \\",
            "      --along \"-0.2 g\"",
            "  app/evenhand balance scenarios/slipper-coupe.json --json > answer.json",
            "  app/evenhand balance scenarios/*.json --json > answers.ndjson",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer one way round or both,",
            "and with 2 when the command line or the file is wrong."
        })
public final class BalanceCommand implements AskedInForms {
    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Mixin
    private final SetupOption setups = new SetupOption();

    @Mixin
    private final TrialOptions turn = new TrialOptions();

    @Mixin
    private final AlongOptions along = new AlongOptions();

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
        Optional<Along> changing = along.along();
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        Trial trial = asWeighed.with(load.of(scenario));
        return BalanceReply.of(scenario, setups.of(scenario), trial, changing, full.full());
    }
}
