package evenhand.terminal.travel;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.links.LinkedAxle;
import evenhand.linkage.Ranges;
import evenhand.linkage.Travel;
import evenhand.linkage.TravelAnswer;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ProgressLine;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SetupOption;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.words.travel.AxleTravel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand travel}. */
@Command(
        name = "travel",
        sortOptions = false,
        description = {
            "What the links of an axle do through the travel, from the points that were measured on them.",
            "",
            "Where the roll centre is and goes, how the axle or its wheels steer and lean, how far it goes sideways,"
                    + " pinion and shaft joints, leverage of springs and dampers, and what ends the travel: in heave,"
                    + " in roll, with one wheel, and steered. In the file an axle has \"links\" for that.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand travel scenarios/sluice-tourer.json",
            "  app/evenhand travel scenarios/sluice-tourer.json --axle rear --bump \"60 mm\" \\",
            "      --step \"20 mm\"",
            "  app/evenhand travel scenarios/sluice-tourer.json --csv > travel.csv",
            "",
            "Ends with 0 when done, and with 2 when the command line or the file is wrong, or no",
            "axle has its links by points."
        })
public final class TravelCommand implements AskedInForms {
    private static final double LONGEST = 0.5;
    private static final double SHORTEST_STEP = 1e-4;
    private static final double GREATEST_ROLL = Math.toRadians(20);
    private static final double GREATEST_STEER = Math.toRadians(60);

    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Mixin
    private final SetupOption setups = new SetupOption();

    @Option(
            names = "--axle",
            paramLabel = "front|rear",
            description = "Only this axle. Otherwise each that has its links by points.")
    private Optional<String> axle = Optional.empty();

    @Option(
            names = "--bump",
            paramLabel = "LENGTH",
            description = "How far up. Otherwise until metal meets, or the bump stop's curve ends, or 80 mm.")
    private Optional<String> bump = Optional.empty();

    @Option(
            names = "--droop",
            paramLabel = "LENGTH",
            description = "How far down. Otherwise until droop ends, or 70 mm.")
    private Optional<String> droop = Optional.empty();

    @Option(
            names = "--roll",
            paramLabel = "ANGLE",
            defaultValue = "4 deg",
            description = "How far to either side. Otherwise ${DEFAULT-VALUE}.")
    private String roll = "4 deg";

    @Option(
            names = "--steer",
            paramLabel = "ANGLE",
            defaultValue = "30 deg",
            description = "How far to either side, mean of both wheels. Otherwise ${DEFAULT-VALUE}.")
    private String steer = "30 deg";

    @Option(
            names = "--step",
            paramLabel = "LENGTH",
            defaultValue = "10 mm",
            description = "From row to row of heave and of one wheel. Otherwise ${DEFAULT-VALUE}.")
    private String step = "10 mm";

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
        List<End> ends = ends();
        Wanted wanted = wanted();
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        List<Setup> asked = setups.of(scenario);
        List<TravelReply.SetupTravel> answers;
        try (ProgressLine progress = new ProgressLine(console, "following the links")) {
            answers = progress.each(
                    asked, setup -> new TravelReply.SetupTravel(setup, follow(setup.car(), ends, wanted)));
        }
        if (answers.stream().allMatch(answer -> answer.axles().isEmpty())) {
            throw new Mistake("no " + (ends.size() == 1 ? ends.get(0).key() + " " : "")
                    + "axle has its links by points; give \"links\" in car.front or car.rear, as in"
                    + " scenarios/sluice-tourer.json");
        }
        return new TravelReply(scenario, answers);
    }

    /** How far and in which steps; what is absent follows from the car. */
    private record Wanted(Optional<Double> bump, Optional<Double> droop, double roll, double steer, double step) {
        Ranges of(Axle settled) {
            Ranges its = Ranges.of(settled.stops());
            return new Ranges(bump.orElse(its.bump()), droop.orElse(its.droop()), roll, steer, step);
        }
    }

    private Wanted wanted() throws Mistake {
        return new Wanted(
                way("--bump", bump),
                way("--droop", droop),
                OptionText.size("--roll", roll, Dimension.ANGLE, 0, GREATEST_ROLL, "\"4 deg\""),
                OptionText.size("--steer", steer, Dimension.ANGLE, 0, GREATEST_STEER, "\"30 deg\""),
                OptionText.size("--step", step, Dimension.LENGTH, SHORTEST_STEP, LONGEST, "\"10 mm\" or \"0.5 in\""));
    }

    private static Optional<Double> way(String option, Optional<String> text) throws Mistake {
        return text.isPresent()
                ? Optional.of(
                        OptionText.size(option, text.get(), Dimension.LENGTH, 0, LONGEST, "\"60 mm\" or \"2.5 in\""))
                : Optional.empty();
    }

    private List<End> ends() throws Mistake {
        if (axle.isEmpty()) {
            return List.of(End.values());
        }
        return switch (axle.get().strip().toLowerCase(Locale.ROOT)) {
            case "front" -> List.of(End.FRONT);
            case "rear" -> List.of(End.REAR);
            default -> throw new Mistake("--axle \"" + axle.get() + "\": write front or rear");
        };
    }

    private static List<AxleTravel> follow(Car car, List<End> ends, Wanted wanted) {
        List<AxleTravel> axles = new ArrayList<>();
        Car settled = car.settled();
        for (End end : ends) {
            Optional<LinkedAxle> linked = Braking.shared(car, car.settled()).linked(end);
            if (linked.isPresent()) {
                TravelAnswer answer = Travel.of(linked.get(), wanted.of(settled.axle(end)));
                if (!(answer instanceof TravelAnswer.Followed followed)) {
                    throw new IllegalStateException("an axle that was built stands no longer: " + answer);
                }
                axles.add(new AxleTravel(end, linked.get(), followed));
            }
        }
        return axles;
    }
}
