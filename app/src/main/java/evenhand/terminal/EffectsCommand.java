package evenhand.terminal;

import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.choice.Effect;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.TurnAnswer;
import evenhand.words.Complaint;
import evenhand.words.Units;
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
            "Largest is measured by what a driver notices: 0.05 deg/g of understeer, 0.1 deg/g of roll, 0.01 g"
                    + " of limit, 1 %% of balance or share, 50 N of load. With a complaint: the single changes that"
                    + " help against it, best first, each with what else it moves; only what a shop can turn, cut or"
                    + " swap.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand effects scenarios/harbour-saloon.json --setup Lowered",
            "  app/evenhand effects scenarios/harbour-saloon.json \\",
            "      --complaint \"pushes at the limit\"",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer or no single step",
            "helps, and with 2 when the command line or the file is wrong."
        })
final class EffectsCommand implements Asked {
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
        List<Setup> chosen =
                setups.isEmpty() ? List.of(scenario.setups().get(0)) : SoundScenario.choose(scenario, setups);
        List<EffectsReply.Answer> answers = new ArrayList<>();
        for (Setup setup : chosen) {
            answers.add(answer(setup, trial));
        }
        EffectsReply reply = new EffectsReply(scenario, trial, answers);
        reply.give(form, console, shown);
        return reply.complete() ? Status.DONE : Status.NO_ANSWER;
    }

    private EffectsReply.Answer answer(Setup setup, Trial trial) throws Mistake {
        Answers before = trial.ask(setup.car());
        Optional<Complaint> wish = Optional.empty();
        if (complaint.isPresent()) {
            wish = Optional.of(wish(complaint.get(), setup, before, trial));
        }
        if (before.noTurn().isPresent()) {
            return new SetupAnswer.None(setup, before.noTurn().get());
        }
        if (wish.isPresent() && wish.get().judged().si(before).isEmpty()) {
            String why = wish.get().judged().criterion().ofRide()
                    ? "the file has no damper curves to judge its ride by"
                    : "the pace of the complaint is beyond its limit";
            return new SetupAnswer.None(setup, TurnAnswer.Reason.NO_EQUILIBRIUM, why);
        }
        List<Effect> effects = wish.isPresent()
                ? Effect.helping(
                        setup.entries(),
                        trial,
                        before,
                        wish.get().judged(),
                        wish.get().up())
                : Effect.each(setup.entries(), trial, before);
        return new EffectsReply.Found(setup, wish, effects);
    }

    private static Complaint wish(String words, Setup setup, Answers before, Trial trial) throws Mistake {
        double gentle =
                trial.paces().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double brisk =
                trial.paces().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return Complaint.of(words, setup.car(), before, gentle, brisk)
                .orElseThrow(() -> new Mistake("--complaint \"" + words + "\": write " + Complaint.KNOWN));
    }
}
