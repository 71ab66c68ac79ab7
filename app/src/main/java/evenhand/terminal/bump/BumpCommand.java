package evenhand.terminal.bump;

import evenhand.bump.BumpAnswer;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.load.Laden;
import evenhand.quantity.InvalidValue;
import evenhand.road.RoadEvent;
import evenhand.scenario.EventReading;
import evenhand.scenario.EventText;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SetupOption;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand bump}. */
@Command(
        name = "bump",
        sortOptions = false,
        description = {
            "How each set-up takes one event of the road, in time.",
            "",
            "How hard the body is jolted, how much of the travel is used, whether a stop is touched,"
                    + " how long a tyre is off the ground, and how much grip the changes of its load take:"
                    + " straight ahead for each axle, or with --pace in mid-corner for each wheel.",
            "",
            "Events: step H, ramp H over L, kerb H, hump H by L, pothole D by L, ripples A by L"
                    + " times N, road A to H (200 m of made-up road of that class, always the same),"
                    + " or the name of a measured profile: a CSV file with the header"
                    + " distance_m,height_m and even steps. The wheel meets the event at time 0."
                    + " A kerb and a pothole have square edges, over which the wheel rolls.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand bump scenarios/slipper-coupe.json \\",
            "      --over \"hump 80 mm by 3.7 m\" --speed \"30 km/h\"",
            "  app/evenhand bump scenarios/slipper-coupe.json --pace \"0.5 g\" \\",
            "      --over \"ripples 10 mm by 1.2 m times 8\"",
            "  app/evenhand bump scenarios/slipper-coupe.json --json \\",
            "      --over validation/data/road-profile-quarter-metre.csv > answer.json",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer, and with 2 when the",
            "command line or a file is wrong."
        })
public final class BumpCommand implements AskedInForms {
    /** On smaller circles no car turns. m */
    private static final double LEAST_RADIUS = 4;

    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Mixin
    private final SetupOption setups = new SetupOption();

    @Option(
            names = "--over",
            paramLabel = "PROFILE",
            required = true,
            description = "The event, for example \"kerb 60 mm\".")
    @SuppressWarnings("NullAway.Init")
    private String over;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "50 km/h",
            description = "How fast it is driven over. Otherwise ${DEFAULT-VALUE}.")
    private String speed = "50 km/h";

    @Option(
            names = "--pace",
            paramLabel = "PACE",
            description = "In mid-corner at this lateral acceleration, for example \"0.5 g\", on the circle that it"
                    + " makes with the speed. Otherwise straight ahead.")
    private Optional<String> pace = Optional.empty();

    @Option(
            names = "--turn",
            paramLabel = "left|right",
            defaultValue = "left",
            description = "Which way it turns, with a pace. Otherwise ${DEFAULT-VALUE}.")
    private String turn = "left";

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
        double drivenAt = OptionText.speed(speed);
        Direction direction = OptionText.direction(turn);
        OptionalDouble lateral = pace.isPresent()
                ? OptionalDouble.of(OptionText.paces(List.of(pace.get())).get(0))
                : OptionalDouble.empty();
        if (lateral.isPresent() && drivenAt * drivenAt / lateral.getAsDouble() < LEAST_RADIUS) {
            throw new Mistake("--pace \"" + pace.get() + "\" at \"" + speed
                    + "\" is a circle of less than 4 m, which no car drives; ask for a higher speed or a gentler pace");
        }
        Optional<RoadEvent> event = event(console);
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty() || event.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        BumpReply.Question question = new BumpReply.Question(over.strip(), event.get(), drivenAt, lateral, direction);
        Optional<LoadCase> aboard = load.of(scenario);
        List<SetupAnswer> answers = new ArrayList<>();
        for (Setup setup : setups.of(scenario)) {
            answers.add(answer(setup, aboard, question));
        }
        return new BumpReply(scenario, aboard, question, answers);
    }

    /** The event; nothing after the problems of a road's file were told. */
    private Optional<RoadEvent> event(Console console) throws Mistake {
        EventReading reading = EventText.read(over, Path.of(""));
        if (reading instanceof EventReading.Unclear unclear) {
            throw new Mistake("--over \"" + over + "\": " + unclear.what());
        }
        if (reading instanceof EventReading.Unread unread) {
            unread.problems().forEach(problem -> console.complain(problem.toString()));
        }
        return reading instanceof EventReading.Found found ? Optional.of(found.event()) : Optional.empty();
    }

    private static SetupAnswer answer(Setup setup, Optional<LoadCase> aboard, BumpReply.Question question)
            throws Mistake {
        Laden laden = Laden.of(setup.car(), aboard);
        if (!(laden instanceof Laden.AtRest rest)) {
            return new SetupAnswer.None(setup, TurnAnswer.Reason.NO_EQUILIBRIUM, ((Laden.NoRest) laden).text());
        }
        passable(rest.car(), question);
        BumpAnswer bump = question.ask(rest.car());
        return bump instanceof BumpAnswer.None none
                ? new SetupAnswer.None(setup, none.reason(), none.text())
                : new BumpReply.Answer(setup, rest.car(), question, bump);
    }

    /** A wheel of each axle must be able to get over it. */
    private static void passable(Car car, BumpReply.Question question) throws Mistake {
        for (End end : End.values()) {
            try {
                question.event().under(car.axle(end).tyre().loadedRadius());
            } catch (InvalidValue e) {
                throw new Mistake("--over \"" + question.over() + "\": " + e.component() + " " + e.getMessage());
            }
        }
    }
}
