package evenhand.terminal;

import evenhand.answers.Aim;
import evenhand.answers.Trial;
import evenhand.doubt.Doubt;
import evenhand.doubt.Tolerance;
import evenhand.quantity.InvalidValue;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.TurnAnswer;
import evenhand.words.AimText;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand doubt}. */
@Command(
        name = "doubt",
        sortOptions = false,
        description = {
            "What measuring errors and guesses leave of the answers, and what to measure better.",
            "",
            "Every number of the file is taken to be off by its tolerance, or by what a workshop's usual measurement"
                    + " leaves; estimated tyre values by their own spread. All are sampled at once. The set-ups are"
                    + " the same car with the same errors, so their differences are surer than their answers.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand doubt scenarios/harbour-saloon.json --setup \"As bought\"",
            "  app/evenhand doubt scenarios/slipper-coupe.json --samples 500 \\",
            "      --aim \"understeer at least 0.5 deg/g at 0.5 g\"",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer or most of its",
            "samples have none, and with 2 when the command line or the file is wrong."
        })
final class DoubtCommand implements Asked {
    private static final int FEWEST = 10;
    private static final int MOST = 100_000;
    /** Where more of the samples have no answer, the rest tells little. */
    private static final double TOO_MANY_SILENT = 0.5;

    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Mixin
    private final SetupOption setups = new SetupOption();

    @Option(
            names = "--samples",
            paramLabel = "N",
            defaultValue = "2048",
            description = "How many cars are sampled. Otherwise ${DEFAULT-VALUE}.")
    private String samples = "2048";

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Another whole number samples other cars; the same one always the same. Otherwise"
                    + " ${DEFAULT-VALUE}.")
    private String seed = "1";

    @Option(names = "--aim", paramLabel = "AIM", description = "Tells the chance that this is met.")
    private Optional<String> aimText = Optional.empty();

    @Option(
            names = "--exact",
            description = "Takes measured values without a tolerance as exact; estimates keep their spread.")
    private boolean exact;

    @Mixin
    private final TrialOptions turn = new TrialOptions();

    @Mixin
    private final RoadOptions road = new RoadOptions();

    @Mixin
    private final LoadOption load = new LoadOption();

    @Mixin
    private final FormOptions forms = new FormOptions();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    @Override
    public Status run(Console console) throws Mistake {
        FormOptions.Form form = forms.form();
        long count = whole("--samples", samples, FEWEST, MOST);
        long seeded = whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE);
        Optional<Aim> aim = aim();
        Trial asked = road.on(turn.trial());
        Trial asWeighed = aim.isPresent() && aim.get().judged().pace().isPresent()
                ? asked.at(aim.get().judged().pace().getAsDouble())
                : asked;
        Units shown = usual.units();
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Status.WRONG;
        }
        Scenario scenario = read.get();
        Trial trial = asWeighed.with(load.of(scenario));
        Doubted doubted = doubted(scenario, setups.of(scenario), trial, aim, (int) count, seeded, console);
        for (Doubted.Silent none : doubted.silent()) {
            if (form != FormOptions.Form.JSON) {
                console.complain("evenhand doubt: no answer for \""
                        + none.setup().name() + "\": " + none.why().text());
            }
        }
        if (form == FormOptions.Form.JSON) {
            console.answer(DoubtJson.write(doubted));
        } else if (form == FormOptions.Form.CSV) {
            console.answer(DoubtCsv.write(doubted, shown));
        } else {
            console.answer(new DoubtTables(console, shown).write(doubted));
        }
        return isSound(doubted, console) ? Status.DONE : Status.NO_ANSWER;
    }

    private Doubted doubted(
            Scenario scenario,
            List<Setup> chosen,
            Trial trial,
            Optional<Aim> aim,
            int count,
            long seeded,
            Console console) {
        List<Setup> answered = new ArrayList<>();
        List<Doubted.Silent> silent = new ArrayList<>();
        for (Setup setup : chosen) {
            Optional<TurnAnswer.NoTurn> none = trial.ask(setup.car()).noTurn();
            if (none.isPresent()) {
                silent.add(new Doubted.Silent(setup, none.get()));
            } else {
                answered.add(setup);
            }
        }
        Optional<Doubt.Answer> answer = Optional.empty();
        if (!answered.isEmpty()) {
            try (ProgressLine progress = new ProgressLine(console, "asking " + count + " cars")) {
                answer = Optional.of(Doubt.of(
                        answered.stream().map(Setup::entries).toList(),
                        new Doubt.Question(
                                trial,
                                count,
                                seeded,
                                exact ? Tolerance.Unsaid.EXACT : Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                                aim,
                                progress)));
            }
        }
        return new Doubted(scenario, trial, aim, count, seeded, answered, silent, answer);
    }

    private static boolean isSound(Doubted doubted, Console console) {
        boolean sound = doubted.silent().isEmpty();
        if (doubted.answer().isPresent()) {
            for (int i = 0; i < doubted.answered().size(); i++) {
                double silent = doubted.answer().get().cars().get(i).noAnswerShare();
                if (silent > TOO_MANY_SILENT) {
                    console.complain(
                            "evenhand doubt: \"" + doubted.answered().get(i).name() + "\": "
                                    + Numbers.percent(silent, 0)
                                    + " of the sampled cars do not turn; the tolerances are wider than such a car can have,"
                                    + " give narrower ones");
                    sound = false;
                }
            }
        }
        return sound;
    }

    private Optional<Aim> aim() throws Mistake {
        if (aimText.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(AimText.read(aimText.get()));
        } catch (InvalidValue e) {
            throw new Mistake("--aim \"" + aimText.get() + "\": " + e.getMessage());
        }
    }

    private static long whole(String option, String text, long least, long most) throws Mistake {
        long number;
        try {
            number = Long.parseLong(text.strip());
        } catch (NumberFormatException e) {
            throw new Mistake(option + " \"" + text + "\": write a whole number, for example 2048");
        }
        if (number < least || number > most) {
            throw new Mistake(option + " " + text + ": must lie between " + least + " and " + most);
        }
        return number;
    }
}
