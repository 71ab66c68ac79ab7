package evenhand.terminal.compare;

import evenhand.answers.Answers;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.choice.AskedOnce;
import evenhand.choice.Comparison;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.FullOption;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.ProgressLine;
import evenhand.terminal.asked.RoadOptions;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.TrialOptions;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.turn.Direction;
import evenhand.turn.PacesAnswer;
import evenhand.turn.TurnAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand compare}. */
@Command(
        name = "compare",
        sortOptions = false,
        description = {
            "What differs between set-ups in a steady turn, and which change did how much of it.",
            "",
            "First what a driver would notice, both ways round, on one screen; with --full all differences and shares.",
            "",
            "Each difference is shared out to the single changes so that the shares add up to it: a"
                    + " change's share is what it does on average over all orders in which the changes can be made.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand compare scenarios/harbour-saloon.json",
            "  app/evenhand compare scenarios/harbour-saloon.json --base Lowered \\",
            "      --setup \"Pivot high\" --full",
            "  app/evenhand compare scenarios/slipper-coupe.json --turn left \\",
            "      --radius \"40 m\" --radius \"100 m\"",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer one way round, and with 2 when the",
            "command line or the file is wrong."
        })
public final class CompareCommand implements AskedInForms {
    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Option(
            names = "--base",
            paramLabel = "NAME",
            description = "The set-up that the others are compared with. Otherwise the first of the file.")
    private Optional<String> base = Optional.empty();

    @Option(
            names = "--setup",
            paramLabel = "NAME",
            description = "Only this set-up; may be given more than once. Otherwise all others of the file.")
    private List<String> setups = new ArrayList<>();

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
        Setup first = SoundScenario.one(scenario, base);
        List<Setup> others = new ArrayList<>(SoundScenario.choose(scenario, setups));
        if (setups.isEmpty()) {
            others.remove(first);
        }
        if (others.isEmpty()) {
            throw new Mistake("the file has only one set-up, \"" + first.name() + "\"; add another under \"setups\"");
        }
        try (ProgressLine progress = new ProgressLine(console, "comparing set-ups")) {
            return compared(scenario, first, others, trial, progress);
        }
    }

    private CompareReply compared(Scenario scenario, Setup base, List<Setup> others, Trial trial, Progress progress) {
        List<EachWay.Circle<CompareReply.Answered>> circles = new ArrayList<>();
        double each = 1.0 / (others.size() * trial.radii().size());
        int done = 0;
        for (double radius : trial.radii()) {
            Trial circle = trial.onCircle(radius);
            AskedOnce asked = new AskedOnce(circle);
            List<EachWay<CompareReply.Answered>> setups = new ArrayList<>();
            for (Setup other : others) {
                Progress own = progress.part(done * each, (done + 1) * each);
                setups.add(against(base, other, circle, asked, own));
                done++;
            }
            circles.add(new EachWay.Circle<>(radius, setups));
        }
        return new CompareReply(scenario, base, trial, circles, full.full());
    }

    /** One set-up against the base on one circle. */
    private static EachWay<CompareReply.Answered> against(
            Setup base, Setup other, Trial circle, AskedOnce asked, Progress progress) {
        Answers baseAnswers = asked.of(base.entries()).orElseThrow();
        Answers answers = asked.of(other.entries()).orElseThrow();
        List<Direction> directions = circle.ways().directions();
        List<EachWay.Way<CompareReply.Answered>> ways = new ArrayList<>();
        List<Comparison> comparisons = List.of();
        for (int i = 0; i < directions.size(); i++) {
            Answers there = baseAnswers.in(i);
            Answers here = answers.in(i);
            if (there.turn() instanceof TurnAnswer.NoTurn none) {
                String why = "the base, \"" + base.name() + "\", has no answer: " + none.text();
                ways.add(EachWay.Way.none(directions.get(i), new SetupAnswer.NoAnswer(none.reason(), why)));
            } else if (here.turn() instanceof TurnAnswer.NoTurn none) {
                ways.add(EachWay.Way.none(directions.get(i), SetupAnswer.NoAnswer.of(none)));
            } else {
                comparisons = comparisons.isEmpty()
                        ? Comparison.each(base.entries(), other.entries(), asked, progress)
                        : comparisons;
                ways.add(EachWay.Way.of(
                        directions.get(i),
                        new CompareReply.Answered(
                                comparisons.get(i), (PacesAnswer.Paces) there.turn(), (PacesAnswer.Paces)
                                        here.turn())));
            }
        }
        List<EachWay.Caution> cautions = new ArrayList<>(EachWay.Caution.of(other, answers));
        cautions.addAll(EachWay.Caution.of(base, baseAnswers));
        boolean alike = circle.asksAlike(base.car()) && circle.asksAlike(other.car());
        return EachWay.of(other, ways, alike, cautions.stream().distinct().toList());
    }
}
