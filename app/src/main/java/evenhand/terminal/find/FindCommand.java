package evenhand.terminal.find;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.choice.Finding;
import evenhand.choice.Obstacle;
import evenhand.choice.OneChange;
import evenhand.choice.SeveralChanges;
import evenhand.choice.Span;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.scenario.AimReading;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.CircleOptions;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ProgressLine;
import evenhand.terminal.asked.RoadOptions;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.Status;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.turn.PacesAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.words.GridText;
import evenhand.words.LinkAimWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code evenhand find}. */
@Command(
        name = "find",
        sortOptions = false,
        description = {
            "The range that a change can reach, and the value that meets an aim.",
            "",
            "With several changes: the smallest that meet the aim and keep what is to be kept, each measured by its"
                    + " range. An aim is a figure, a bound or none, a value, and the pace where it has one: understeer,"
                    + " roll gradient, sideslip, grip balance, front share, inside rear load or inside front load at a"
                    + " pace; limit, limit balance or understeer near the limit without; front first, which stands"
                    + " alone; and of the ride seat comfort, and front or rear damping, frequency, comfort (above that"
                    + " axle) and tyre load variation."
                    + " \"neutral at 0.5 g\" is \"understeer 0 deg/g at 0.5 g\", \"neutral near the limit\" likewise.",
            "",
            "Of links by points, at rest or with \"in bump\" or \"in droop\" behind its name where the travel ends: rear or"
                    + " front roll centre, roll steer, anti-squat, anti-dive, anti-lift, pinion slope, joint angle (the"
                    + " greatest), left-over joint angle, axle sideways (to the left), drop link lean (top forwards), eye"
                    + " difference (upper less lower of the left damper), bump steer (toeing in per metre up) and caster"
                    + " (both the mean of both wheels). Of the axle that has it, the rear before the front, bump steer and"
                    + " caster the front before the rear; \"front\" or \"rear\" before its name asks for that axle. These"
                    + " are the same whichever way it turns.",
            "",
            "Straight ahead: brake balance, dive and pedal force at a deceleration, first lock (on its own tyres), rear locks"
                    + " above (the deceleration beyond which the rear goes first; 1.5 g where it does not up to there), squat"
                    + " at an acceleration, launch.",
            "",
            "An aim holds both ways round and on every --radius: a bound by the worse, an exact value by the mean of"
                    + " all, none of them further off than 0.3 deg/g or 1 %%. Where the front does not go first"
                    + " both ways, that is said first.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand find scenarios/harbour-saloon.json \\",
            "      --change rear.lateralLocator.height --from \"200 mm\" --to \"340 mm\" \\",
            "      --grid \"5 mm\" --aim \"understeer at most 4 deg/g at 0.5 g\"",
            "  app/evenhand find scenarios/harbour-saloon.json \\",
            "      --change rear.spring.rate --from \"20 N/mm\" --to \"40 N/mm\" \\",
            "      --change front.spring.rate --from \"30 N/mm\" --to \"80 N/mm\" \\",
            "      --aim \"limit balance at most 10 %%\" \\",
            "      --keep \"roll gradient at most 6 deg/g at 0.5 g\"",
            "  app/evenhand find scenarios/harbour-saloon.json \\",
            "      --change rear.lateralLocator.height --from \"200 mm\" --to \"340 mm\" \\",
            "      --aim \"understeer near the limit at most 17 deg/g\" --keep \"front first\"",
            "  app/evenhand find scenarios/bakery-front-drive.json \\",
            "      --change rear.bar.rollStiffness --from \"0 N*m/deg\" --to \"200 N*m/deg\" \\",
            "      --grid \"10 N*m/deg\" --aim \"understeer near the limit at most 18 deg/g\"",
            "",
            "  app/evenhand find scenarios/sluice-tourer.json \\",
            "      --change rear.links.torqueArm.longer --from \"-10 mm\" --to \"10 mm\" \\",
            "      --aim \"pinion slope 0.5 deg\"",
            "  app/evenhand find scenarios/sluice-tourer.json \\",
            "      --change rear.damper.bottom.shim --from \"-10 mm\" --to \"20 mm\" \\",
            "      --aim \"eye difference in bump 1 deg\"",
            "",
            "Ends with 0 when the aim is met, with 1 when nothing in the range meets it (the",
            "nearest is told) or the set-up has no answer, and with 2 when the command line",
            "or the file is wrong."
        })
public final class FindCommand implements AskedInForms {
    private static final String CHANGE = "--change";
    private static final String GRID = "--grid";

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Option(
            names = "--setup",
            paramLabel = "NAME",
            description = "The set-up to start from. Otherwise the first of the file.")
    private Optional<String> setupName = Optional.empty();

    @Option(
            names = CHANGE,
            paramLabel = "PATH",
            required = true,
            description =
                    "What may change, for example rear.lateralLocator.height; each has its --from and --to. A bar that"
                            + " is not fitted is front.bar.rollStiffness or rear.bar.rollStiffness, from zero.")
    private List<String> paths = new ArrayList<>();

    @Option(names = "--from", paramLabel = "Q", required = true, description = "Where its range begins.")
    private List<String> froms = new ArrayList<>();

    @Option(names = "--to", paramLabel = "Q", required = true, description = "Where its range ends.")
    private List<String> tos = new ArrayList<>();

    @Option(
            names = "--aim",
            paramLabel = "AIM",
            required = true,
            description = "What is to be achieved, for example \"understeer 0.8 deg/g at 0.5 g\".")
    @SuppressWarnings("NullAway.Init")
    private String aimText;

    @Option(
            names = "--keep",
            paramLabel = "AIM",
            description = "What is to be kept meanwhile, for example \"roll gradient at most 5.5 deg/g at 0.5 g\";"
                    + " may be given more than once.")
    private List<String> keepTexts = new ArrayList<>();

    @Option(
            names = GRID,
            paramLabel = "Q",
            description =
                    "Only whole multiples of this step can be built, for example \"5 mm\". Between a --change and the"
                            + " next it is that change's own; behind the last, or before the first, it holds for all of its"
                            + " dimension that have none of their own.")
    private List<String> grids = new ArrayList<>();

    @Option(
            names = "--save-as",
            paramLabel = "NAME",
            description = "Adds what was found as a set-up to the file as it stands by then.")
    private Optional<String> saveAs = Optional.empty();

    @Mixin
    private final CircleOptions circle = new CircleOptions();

    @Mixin
    private final RoadOptions road = new RoadOptions();

    @Mixin
    private final LoadOption load = new LoadOption();

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
        Aim aim = aim("--aim", aimText);
        List<Aim> keeps = new ArrayList<>();
        for (String text : keepTexts) {
            keeps.add(aim("--keep", text));
        }
        contradictions(aim, keeps);
        Trial asWeighed = trial(aim, keeps);
        if (froms.size() != paths.size() || tos.size() != paths.size()) {
            throw new Mistake("each --change needs its --from and its --to: there are " + paths.size() + " changes, "
                    + froms.size() + " --from and " + tos.size() + " --to");
        }
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        Trial trial = asWeighed.with(load.of(scenario)).through(scenario.hardUse());
        Setup setup = SoundScenario.one(scenario, setupName);
        Optional<SaveAs> saving = saveAs.map(name -> new SaveAs(scenario, setup, name));
        if (saving.isPresent()) {
            saving.get().check(); // before the search, which may be long
        }
        hasFigure("--aim", aimText, aim, setup);
        for (int i = 0; i < keeps.size(); i++) {
            hasFigure("--keep", keepTexts.get(i), keeps.get(i), setup);
        }
        Entries car = fitting(setup);
        List<Span> spans = spans(car);
        List<OptionalDouble> steps = steps(spans);
        Finding finding;
        List<Obstacle> obstacles;
        try (ProgressLine progress = new ProgressLine(console, "looking for it")) {
            finding = search(car, spans, aim, keeps, steps, trial, progress);
        }
        try (ProgressLine progress = new ProgressLine(console, "looking for what blocks it")) {
            obstacles = Obstacle.of(finding, keeps, others -> search(car, spans, aim, others, steps, trial, progress));
        }
        List<Optional<SetupAnswer.NoAnswer>> silent = List.of();
        if (finding instanceof Finding.NoValue none) {
            silent = aim.judged().criterion().ofLinks()
                    ? Collections.nCopies(none.bends().size(), Optional.of(outOfReach(aim, setup, spans)))
                    : silent(setup, none, trial);
            finding = together(none, silent);
        }
        FindReply reply = new FindReply(scenario, trial, setup, finding, obstacles, silent);
        return (form, into, shown) -> {
            reply.give(form, into, shown);
            // Last: what was found is not lost where it cannot be saved.
            boolean saved = saving.isEmpty() || saving.get().save(car, reply.finding(), form, into);
            return !saved ? Status.WRONG : met(reply.finding()) ? Status.DONE : Status.NO_ANSWER;
        };
    }

    private static Finding search(
            Entries car,
            List<Span> spans,
            Aim aim,
            List<Aim> keeps,
            List<OptionalDouble> steps,
            Trial trial,
            Progress progress) {
        return spans.size() == 1
                ? OneChange.find(car, spans.get(0), aim, keeps, steps.get(0), trial, progress)
                : SeveralChanges.find(car, spans, aim, keeps, steps, trial, progress);
    }

    private static boolean met(Finding finding) {
        return finding instanceof Finding.Found found && found.met();
    }

    private static Aim aim(String option, String text) throws Mistake {
        try {
            return AimReading.read(text);
        } catch (InvalidValue e) {
            throw new Mistake(option + " \"" + text + "\": " + e.getMessage());
        }
    }

    private void contradictions(Aim aim, List<Aim> keeps) throws Mistake {
        for (int i = 0; i < keeps.size(); i++) {
            if (keeps.get(i).contradicts(aim)) {
                throw new Mistake("--keep \"" + keepTexts.get(i) + "\": contradicts the aim \"" + aimText
                        + "\"; no car can meet both");
            }
            for (int k = 0; k < i; k++) {
                if (keeps.get(i).contradicts(keeps.get(k))) {
                    throw new Mistake("--keep \"" + keepTexts.get(i) + "\": contradicts --keep \"" + keepTexts.get(k)
                            + "\"; no car can keep both");
                }
            }
        }
    }

    private Trial trial(Aim aim, List<Aim> keeps) throws Mistake {
        List<Double> paces = Stream.concat(Stream.of(aim), keeps.stream())
                .flatMap(one -> one.judged().turnPace().stream().boxed())
                .distinct()
                .toList();
        return road.on(circle.trial(paces));
    }

    private static String path(String written) {
        return written.strip().replaceFirst("^car\\.", "");
    }

    /** The car with room for what may change: a bar that is not fitted has no stiffness. */
    private Entries fitting(Setup setup) throws Mistake {
        Entries car = setup.entries();
        for (String written : paths) {
            try {
                car = Span.fitting(car, path(written));
            } catch (InvalidValue e) {
                throw new Mistake("--change " + written + ": " + e.component() + " " + e.getMessage());
            }
        }
        return car;
    }

    private List<Span> spans(Entries car) throws Mistake {
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            String path = path(paths.get(i));
            try {
                Dimension dimension = Catalogue.slot(car, path).content() instanceof Content.Measure m
                        ? m.dimension()
                        : Dimension.RATIO;
                double from = OptionText.end("--from", froms.get(i), dimension);
                double to = OptionText.end("--to", tos.get(i), dimension);
                if (from >= to) {
                    throw new Mistake("--from \"" + froms.get(i) + "\" --to \"" + tos.get(i) + "\": the range of "
                            + path + " ends before it begins; put the lower value first");
                }
                spans.add(Span.of(car, path, from, to));
            } catch (InvalidValue e) {
                throw new Mistake("--change " + paths.get(i) + ": " + e.component() + " " + e.getMessage());
            }
            for (int k = 0; k < i; k++) {
                if (spans.get(k).path().equals(path)) {
                    throw new Mistake("--change " + paths.get(i) + ": is named twice; leave out one");
                }
            }
        }
        return spans;
    }

    /** The steps, those that stand between a change and the next one as that change's own. */
    private List<GridText.Written> written() {
        List<GridText.Written> written = new ArrayList<>();
        int change = 0;
        for (OptionSpec option : spec.commandLine().getParseResult().matchedOptions()) {
            if (option.longestName().equals(CHANGE)) {
                change++;
            } else if (option.longestName().equals(GRID)) {
                boolean own = change > 0 && change < paths.size();
                written.add(new GridText.Written(
                        grids.get(written.size()), own ? OptionalInt.of(change - 1) : OptionalInt.empty()));
            }
        }
        return written;
    }

    private List<OptionalDouble> steps(List<Span> spans) throws Mistake {
        try {
            return GridText.read(written(), spans);
        } catch (InvalidValue e) {
            throw new Mistake("--grid \"" + e.component() + "\": " + e.getMessage());
        }
    }

    /** Of each bend where the figure has no value, why: what the car as it stands says. */
    private static List<Optional<SetupAnswer.NoAnswer>> silent(Setup setup, Finding.NoValue none, Trial trial) {
        List<Answers.Bend> now = trial.ask(setup.car()).bends();
        List<Optional<SetupAnswer.NoAnswer>> silent = new ArrayList<>();
        for (int bend = 0; bend < none.bends().size(); bend++) {
            PacesAnswer turn = now.get(bend).turn();
            silent.add(
                    none.bends().get(bend).reach().isPresent()
                            ? Optional.empty()
                            : Optional.of(
                                    turn instanceof TurnAnswer.NoTurn noTurn
                                            ? new SetupAnswer.NoAnswer(noTurn.reason(), noTurn.text())
                                            : new SetupAnswer.NoAnswer(
                                                    TurnAnswer.Reason.NO_EQUILIBRIUM, nowhere(none.aim()))));
        }
        return silent;
    }

    private static void hasFigure(String option, String text, Aim aim, Setup setup) throws Mistake {
        Optional<String> missing = LinkAimWords.missing(aim.judged().criterion(), setup.car());
        if (missing.isPresent()) {
            throw new Mistake(option + " \"" + text + "\": " + missing.get());
        }
    }

    private static SetupAnswer.NoAnswer outOfReach(Aim aim, Setup setup, List<Span> spans) {
        return new SetupAnswer.NoAnswer(
                TurnAnswer.Reason.CANNOT_REACH,
                LinkAimWords.outOfReach(
                        aim.judged().criterion(), setup.car(), spans.size() == 1 ? "the range" : "the ranges"));
    }

    private static String nowhere(Aim aim) {
        return aim.judged().pace().isPresent()
                ? Units.pace(aim.judged().pace().getAsDouble())
                        + " is beyond the limit of this car, wherever in the range"
                : "the car has no such figure anywhere in the range";
    }

    /** Why there is no value that all bends share. */
    private static Finding.NoValue together(Finding.NoValue none, List<Optional<SetupAnswer.NoAnswer>> silent) {
        for (int bend = 0; bend < silent.size(); bend++) {
            if (silent.get(bend).isPresent()) {
                SetupAnswer.NoAnswer why = silent.get(bend).get();
                boolean all = silent.stream().allMatch(Optional::isPresent);
                String text = all
                        ? why.text()
                        : "turning " + none.bends().get(bend).direction().key() + ", " + why.text();
                return new Finding.NoValue(none.aim(), why.reason(), text, none.bends());
            }
        }
        return new Finding.NoValue(
                none.aim(),
                none.reason(),
                "nowhere in the range has the car such a figure in every bend at once",
                none.bends());
    }
}
