package evenhand.terminal;

import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.choice.Comparison;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.TurnAnswer;
import evenhand.words.Units;
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
            "Each difference is shared out to the single changes so that the shares add up to it: a"
                    + " change's share is what it does on average over all orders in which the changes can be made.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand compare scenarios/harbour-saloon.json",
            "  app/evenhand compare scenarios/harbour-saloon.json --base Lowered \\",
            "      --setup \"Pivot high\"",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer, and with 2 when the",
            "command line or the file is wrong."
        })
final class CompareCommand implements Asked {
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
    private final FormOptions forms = new FormOptions();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    @Override
    public Status run(Console console) throws Mistake {
        FormOptions.Form form = forms.form();
        Trial asWeighed = road.on(turn.trial());
        Units shown = usual.units();
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Status.WRONG;
        }
        Scenario scenario = read.get();
        Trial trial = asWeighed.with(load.of(scenario));
        Setup first = SoundScenario.one(scenario, base);
        List<Setup> others = new ArrayList<>(SoundScenario.choose(scenario, setups));
        if (setups.isEmpty()) {
            others.remove(first);
        }
        if (others.isEmpty()) {
            throw new Mistake("the file has only one set-up, \"" + first.name() + "\"; add another under \"setups\"");
        }
        CompareReply compared;
        try (ProgressLine progress = new ProgressLine(console, "comparing set-ups")) {
            compared = compared(scenario, first, others, trial, progress);
        }
        compared.give(form, console, shown);
        return compared.complete() ? Status.DONE : Status.NO_ANSWER;
    }

    private static CompareReply compared(
            Scenario scenario, Setup base, List<Setup> others, Trial trial, Progress progress) {
        Optional<TurnAnswer.NoTurn> noBase = trial.ask(base.car()).noTurn();
        List<CompareReply.Against> answers = new ArrayList<>();
        for (Setup other : others) {
            double each = 1.0 / others.size();
            Progress own = progress.part(answers.size() * each, (answers.size() + 1) * each);
            Optional<TurnAnswer.NoTurn> noOther = trial.ask(other.car()).noTurn();
            if (noBase.isPresent()) {
                answers.add(new SetupAnswer.None(
                        other,
                        noBase.get().reason(),
                        "the base, \"" + base.name() + "\", has no answer: "
                                + noBase.get().text()));
            } else if (noOther.isPresent()) {
                answers.add(new SetupAnswer.None(other, noOther.get()));
            } else {
                answers.add(
                        new CompareReply.Answered(other, Comparison.of(base.entries(), other.entries(), trial, own)));
            }
        }
        return new CompareReply(scenario, base, trial, answers);
    }
}
