package evenhand.terminal.level;

import evenhand.answers.Trial;
import evenhand.car.Weights;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.scenario.Problem;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.CircleOptions;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.HeightOption;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.turn.Wheel;
import evenhand.words.level.Wanted;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand level}. */
@Command(
        name = "level",
        sortOptions = false,
        description = {
            "How far to turn which perch, for the cross weight and the ride heights that are wanted.",
            "",
            "From the corners as they were weighed (car.cornerWeights) and the heights as they were measured (--height,"
                    + " or the book) to a cross weight (half on each diagonal, unless told otherwise) and to the"
                    + " rideHeights of the file, each from the wheel's centre to the arch and within its tolerance: the"
                    + " least turns that do, in sum of squares. Heights that nobody asks for stay within 3 mm of what they"
                    + " are. Springs, tyres, stops and the twist of the chassis are the car's; the thread is"
                    + " car.front.spring.perch and car.rear.spring.perch: {\"pitch\": \"2 mm\", \"raises\": \"20 mm\","
                    + " \"lowers\": \"25 mm\"}. Where the thread ends, the coils would bind or the heights do not allow"
                    + " it, the nearest that can be had is told, and what stands in the way.",
            "",
            "Bars are unhooked meanwhile, as the trade does it, and hooked up again without preload. What the limit is"
                    + " then, turning left and turning right, stands beside what it was.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand level scenarios/quarry-special.json",
            "  app/evenhand level scenarios/quarry-special.json --to \"Scales set for the shaft\"",
            "  app/evenhand level scenarios/quarry-special.json --cross \"50 %%\" --bars hooked \\",
            "      --load \"Driver aboard\"",
            "",
            "Ends with 0 when done, with 1 when what is wanted cannot be had (the nearest is",
            "told) or the set-up has no answer, and with 2 when the command line or the file",
            "is wrong."
        })
public final class LevelCommand implements AskedInForms {
    private static final String CROSS = "--cross";
    private static final double LEAST_CROSS = 0.3;
    private static final double MOST_CROSS = 0.7;

    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Option(
            names = "--setup",
            paramLabel = "NAME",
            description = "The set-up that stands in the shop. Otherwise the first of the file.")
    private Optional<String> setupName = Optional.empty();

    @Option(
            names = CROSS,
            paramLabel = "PER CENT",
            description =
                    "The cross weight that is wanted: left front and right rear over the whole. Otherwise \"50 %%\".")
    private Optional<String> cross = Optional.empty();

    @Option(
            names = "--to",
            paramLabel = "NAME",
            description = "The set-up whose cross weight is wanted, instead of --cross.")
    private Optional<String> to = Optional.empty();

    @Mixin
    private final HeightOption heights = new HeightOption();

    @Option(
            names = "--bars",
            paramLabel = "unhooked|hooked",
            defaultValue = "unhooked",
            description = "Whether the bars are hooked up while the perches are turned. Otherwise ${DEFAULT-VALUE}.")
    private String bars = "unhooked";

    @Mixin
    private final CircleOptions circle = new CircleOptions();

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
        Trial asWeighed = circle.trial(Trial.USUAL_PACES);
        Map<Wheel, Quantity> given = heights.heights();
        boolean hooked = hooked();
        OptionalDouble wantedCross = cross.isPresent()
                ? OptionalDouble.of(
                        OptionText.size(CROSS, cross.get(), Dimension.RATIO, LEAST_CROSS, MOST_CROSS, "\"50 %\""))
                : OptionalDouble.empty();
        if (cross.isPresent() && to.isPresent()) {
            throw new Mistake("--cross and --to both say which cross weight is wanted; leave out one");
        }
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        Trial trial = asWeighed.with(load.of(scenario)).through(scenario.hardUse());
        Setup setup = SoundScenario.one(scenario, setupName);
        if (to.isPresent()) {
            wantedCross = OptionalDouble.of(crossWeight(SoundScenario.one(scenario, to)));
        }
        Wanted wanted = Wanted.of(scenario, setup, wantedCross, given, hooked);
        Optional<Problem> missing = wanted.missing(scenario, setup);
        if (missing.isPresent()) {
            console.complain(missing.get().toString());
            return Answer.NONE;
        }
        return new LevelReply(scenario, trial.load(), SetupLevel.of(setup, wanted, trial));
    }

    private boolean hooked() throws Mistake {
        return switch (bars.strip().toLowerCase(Locale.ROOT)) {
            case "hooked" -> true;
            case "unhooked" -> false;
            default -> throw new Mistake("--bars \"" + bars + "\": write unhooked or hooked");
        };
    }

    private double crossWeight(Setup other) throws Mistake {
        if (!(other.car().weights() instanceof Weights.Corners corners)) {
            throw new Mistake("--to \"" + other.name() + "\": its corners were not weighed; give the set-up"
                    + " cornerWeights, or say the cross weight by --cross");
        }
        return (corners.frontLeft() + corners.rearRight()) / corners.mass();
    }
}
