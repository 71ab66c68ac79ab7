package evenhand.terminal.doubt;

import evenhand.answers.Aim;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.doubt.Doubt;
import evenhand.doubt.Tolerance;
import evenhand.quantity.InvalidValue;
import evenhand.scenario.AimReading;
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
import evenhand.terminal.asked.RoadOptions;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SetupOption;
import evenhand.terminal.asked.Status;
import evenhand.terminal.asked.TrialOptions;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.EachWay;
import evenhand.words.LinkAimWords;
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
            "The figures that matter on one screen; with --full all of them and what each doubt comes from.",
            "",
            "Every number of the file is taken to be off by its tolerance, or by what a workshop's usual measurement"
                    + " leaves; what is estimated (tyres, place of the seat, inertia in pitch) by its own spread. All are"
                    + " sampled at once. The set-ups are the same car with the same errors, so their differences are"
                    + " surer than their answers. The chance that the front goes first at the limit is always told,"
                    + " both ways round unless --turn names one.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand doubt scenarios/harbour-saloon.json --setup \"As bought\"",
            "  app/evenhand doubt scenarios/harbour-saloon.json --samples 500 --full",
            "  app/evenhand doubt scenarios/slipper-coupe.json --samples 500 \\",
            "      --aim \"understeer at least 0.5 deg/g at 0.5 g\"",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer one way round or most",
            "of its samples have none, and with 2 when the command line or the file is wrong."
        })
public final class DoubtCommand implements AskedInForms {
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

    @Option(
            names = "--aim",
            paramLabel = "AIM",
            description = "Tells the chance that this is met, both ways round where both are asked. Aims as for find,"
                    + " those of links too.")
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
        long count = OptionText.whole("--samples", samples, FEWEST, MOST);
        long seeded = OptionText.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE);
        Optional<Aim> aim = aim();
        Trial asked = road.on(turn.trial());
        Trial asWeighed = aim.map(Aim::judged).map(asked::with).orElse(asked);
        Optional<Scenario> read = file.read(unsaid(), console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        Trial trial = asWeighed.with(load.of(scenario)).through(scenario.hardUse());
        List<Setup> chosen = setups.of(scenario);
        for (Setup setup : chosen) {
            Optional<String> missing =
                    aim.flatMap(one -> LinkAimWords.missing(one.judged().criterion(), setup.car()));
            if (missing.isPresent()) {
                throw new Mistake(
                        "--aim \"" + aimText.orElse("") + "\" for \"" + setup.name() + "\": " + missing.get());
            }
        }
        List<DoubtReply.Circle> circles = new ArrayList<>();
        try (ProgressLine progress = new ProgressLine(console, "asking " + count + " cars")) {
            double each = 1.0 / trial.radii().size();
            for (double radius : trial.radii()) {
                Progress own = progress.part(circles.size() * each, (circles.size() + 1) * each);
                Trial circle = trial.onCircle(radius);
                circles.add(DoubtOnCircle.of(chosen, question(circle, aim, (int) count, seeded, own)));
            }
        }
        DoubtReply doubted = new DoubtReply(scenario, trial, aim, (int) count, seeded, circles, full.full());
        return (form, into, shown) -> {
            if (form == FormOptions.Form.PEOPLE) {
                doubted.silent(shown).forEach(into::complain);
            }
            doubted.give(form, into, shown);
            return isSound(doubted, into, shown) ? Status.DONE : Status.NO_ANSWER;
        };
    }

    private Doubt.Question question(Trial circle, Optional<Aim> aim, int count, long seeded, Progress progress) {
        return new Doubt.Question(circle, count, seeded, unsaid(), aim, progress);
    }

    private Tolerance.Unsaid unsaid() {
        return exact ? Tolerance.Unsaid.EXACT : Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES;
    }

    private static boolean isSound(DoubtReply doubted, Console console, Units units) {
        boolean sound = doubted.complete();
        for (EachWay.Circle<DoubtReply.Doubted> circle : doubted.eachWay()) {
            String on = doubted.circles().size() > 1 ? " on a circle of " + units.radius(circle.radius()) : "";
            for (EachWay<DoubtReply.Doubted> one : circle.setups()) {
                double silent = one.ways().stream()
                        .flatMap(way -> way.found().stream())
                        .mapToDouble(found -> found.left().noAnswerShare())
                        .max()
                        .orElse(0);
                if (silent > TOO_MANY_SILENT) {
                    console.complain("evenhand doubt: \"" + one.setup().name() + "\"" + on + ": "
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
            return Optional.of(AimReading.read(aimText.get()));
        } catch (InvalidValue e) {
            throw new Mistake("--aim \"" + aimText.get() + "\": " + e.getMessage());
        }
    }
}
