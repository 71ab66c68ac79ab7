package evenhand.terminal.effects;

import evenhand.advice.Advice;
import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.choice.Effect;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.FullOption;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.RoadOptions;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.TrialOptions;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.words.effects.Complaint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand effects}. */
@Command(
        name = "effects",
        sortOptions = false,
        description = {
            "What one usual step of each adjustment does to every figure, one at a time, largest first.",
            "",
            "On one screen the strongest steps for each figure that matters; with --full every step and figure.",
            "",
            "Largest is measured by what a driver notices: 0.05 deg/g of understeer, 0.1 deg/g of roll, 0.01 g"
                    + " of limit, 1 %% of balance or share, 50 N of load.",
            "",
            "With a complaint: the single changes that help against it, best first, each with what else it moves;"
                    + " only what a shop can turn, swap or fit: also a bar where there is none, in usual sizes, and the"
                    + " dampers' next setting or all their forces by 15 %%. Where the sums do not show what is complained"
                    + " of, that is said, and what to look at instead.",
            "",
            "Best first is by worth = gain x work x way back / (1 + harm/2). Gain and harm, the largest thing that gets"
                    + " worse, are counted in what a driver notices; work is 1 for a setting or a part that bolts on,"
                    + " 1/2 for rebuilding; way back is 1 for what is turned back, 0.8 for an old part that goes in"
                    + " again, 0.6 for what cannot be undone.",
            "",
            "Said with a step: that a driver would not feel it by itself (less than a tenth of what there is, or than"
                    + " 0.3 deg/g of understeer: common practice), that a bump stop comes to be touched earlier, and that"
                    + " the car could no longer stand as low as `lower` says it can now.",
            "",
            "A step is judged by the worse way round. None is advised that makes the car slide, or slide more, either"
                    + " way round or at another pace, that goes past what is usual, that takes what `lower` says a road"
                    + " car needs, that works by a stop alone, or that mends only the number: softer springs against"
                    + " wallowing, too little damping against a hard ride. The largest of those are named with the"
                    + " reason.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand effects scenarios/harbour-saloon.json --setup Lowered",
            "  app/evenhand effects scenarios/slipper-coupe.json --turn left --full",
            "  app/evenhand effects scenarios/harbour-saloon.json \\",
            "      --complaint \"pushes at the limit\"",
            "  app/evenhand effects scenarios/tinkers-lane-roadster.json --complaint wallows",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer one way round or no",
            "single step helps, and with 2 when the command line or the file is wrong."
        })
public final class EffectsCommand implements AskedInForms {
    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Option(
            names = "--setup",
            paramLabel = "NAME",
            description = "This set-up; may be given more than once. Otherwise the first of the file.")
    private List<String> setups = new ArrayList<>();

    @Option(names = "--complaint", paramLabel = "WORDS", description = "What is to be mended: " + Complaint.KNOWN + ".")
    private Optional<String> complaint = Optional.empty();

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
        Trial asWeighed = road.on(turn.trial());
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        Trial trial =
                asWeighed.with(load.of(scenario)).through(scenario.hardUse()).judgingMounts();
        List<Setup> chosen =
                setups.isEmpty() ? List.of(scenario.setups().get(0)) : SoundScenario.choose(scenario, setups);
        List<EachWay.Circle<EffectsReply.Found>> circles = new ArrayList<>();
        for (double radius : trial.radii()) {
            List<EachWay<EffectsReply.Found>> answers = new ArrayList<>();
            for (Setup setup : chosen) {
                answers.add(answer(setup, trial.onCircle(radius)));
            }
            circles.add(new EachWay.Circle<>(radius, answers));
        }
        return new EffectsReply(scenario, trial, circles, full.full());
    }

    private EachWay<EffectsReply.Found> answer(Setup setup, Trial circle) throws Mistake {
        Answers before = circle.ask(setup.car());
        boolean alike = circle.asksAlike(setup.car());
        List<EachWay.Way<EffectsReply.Found>> ways = complaint.isPresent()
                ? helping(setup, circle, before, wish(complaint.get(), setup, before, circle), alike)
                : each(setup, circle, before);
        return EachWay.of(setup, ways, alike, EachWay.Caution.of(setup, before));
    }

    private static List<EachWay.Way<EffectsReply.Found>> each(Setup setup, Trial circle, Answers before) {
        List<List<Effect>> effects = before.bends().stream().allMatch(bend -> bend.turn() instanceof TurnAnswer.NoTurn)
                ? List.of()
                : Effect.inEachBend(setup.entries(), circle, before);
        List<EachWay.Way<EffectsReply.Found>> ways = new ArrayList<>();
        for (int i = 0; i < before.bends().size(); i++) {
            Answers.Bend bend = before.bends().get(i);
            ways.add(
                    bend.turn() instanceof TurnAnswer.NoTurn none
                            ? EachWay.Way.none(bend.direction(), SetupAnswer.NoAnswer.of(none))
                            : EachWay.Way.of(
                                    bend.direction(), new EffectsReply.Found(Optional.empty(), effects.get(i))));
        }
        return ways;
    }

    /** What helps, told of each way round that has the figure. */
    private static List<EachWay.Way<EffectsReply.Found>> helping(
            Setup setup, Trial circle, Answers before, Complaint wish, boolean alike) {
        Advice advice = wish.shown() ? Advice.against(setup.entries(), circle, before, wish.wish()) : Advice.NONE;
        EffectsReply.Against against =
                new EffectsReply.Against(wish, setup.car(), before, advice, circle.ways(), alike);
        List<EachWay.Way<EffectsReply.Found>> ways = new ArrayList<>();
        for (int i = 0; i < before.bends().size(); i++) {
            int way = i;
            Answers.Bend bend = before.bends().get(i);
            if (bend.turn() instanceof TurnAnswer.NoTurn none) {
                ways.add(EachWay.Way.none(bend.direction(), SetupAnswer.NoAnswer.of(none)));
            } else if (wish.judged().si(before.in(i)).isEmpty()) {
                String why = wish.judged().criterion().ofRide()
                        ? "the file has no damper curves to judge its ride by"
                        : "the pace of the complaint is beyond its limit";
                ways.add(EachWay.Way.none(
                        bend.direction(), new SetupAnswer.NoAnswer(TurnAnswer.Reason.NO_EQUILIBRIUM, why)));
            } else {
                List<Effect> effects = advice.remedies().stream()
                        .map(remedy -> remedy.effects().get(way))
                        .toList();
                ways.add(EachWay.Way.of(bend.direction(), new EffectsReply.Found(Optional.of(against), effects)));
            }
        }
        return ways;
    }

    private static Complaint wish(String words, Setup setup, Answers before, Trial trial) throws Mistake {
        return Complaint.of(words, setup.car(), before, trial)
                .orElseThrow(() -> new Mistake("--complaint \"" + words + "\": write " + Complaint.KNOWN));
    }
}
