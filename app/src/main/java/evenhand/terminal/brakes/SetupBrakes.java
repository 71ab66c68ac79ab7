package evenhand.terminal.brakes;

import evenhand.car.LoadCase;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.brakes.BrakeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A set-up and how it brakes, or why nobody can say. */
record SetupBrakes(Setup setup, Optional<Braked> braked, Optional<SetupAnswer.NoAnswer> noAnswer)
        implements SetupAnswer {
    /**
     * It brakes.
     *
     * @param load what was asked for
     * @param rest how it stands with it
     */
    record Braked(Setup setup, Optional<LoadCase> load, Laden.AtRest rest, Braking.Asked asked, Braking.Answer answer) {
        List<String> words(Units units) {
            List<String> sentences = new ArrayList<>(BrakeWords.of(setup.car(), rest.car(), asked, answer, units));
            load.ifPresent(aboard -> sentences.add(LoadWords.sits(aboard, rest, units)));
            return sentences;
        }
    }

    static SetupBrakes of(Setup setup, Optional<LoadCase> load, Braking.Asked asked) {
        Laden laden = Laden.of(setup.car(), load);
        if (!(laden instanceof Laden.AtRest rest)) {
            return none(setup, TurnAnswer.Reason.NO_EQUILIBRIUM, ((Laden.NoRest) laden).text());
        }
        Optional<String> falls = SteadyTurn.fallsOver(rest.car());
        if (falls.isPresent()) {
            return none(setup, TurnAnswer.Reason.FALLS_OVER, falls.get());
        }
        Braking.Answer answer = new Braking(rest.car()).answer(asked);
        return answer.rows().isEmpty()
                ? none(
                        setup,
                        TurnAnswer.Reason.NO_EQUILIBRIUM,
                        "no balance is found even at a gentle stop: springs or links do not carry it")
                : new SetupBrakes(setup, Optional.of(new Braked(setup, load, rest, asked, answer)), Optional.empty());
    }

    private static SetupBrakes none(Setup setup, TurnAnswer.Reason reason, String why) {
        return new SetupBrakes(setup, Optional.empty(), Optional.of(new SetupAnswer.NoAnswer(reason, why)));
    }

    @Override
    public SharedParts.Remarks remarks() {
        List<Adjustable> estimated = new ArrayList<>(setup.estimated());
        estimated.addAll(Catalogue.estimatedForBrakes(setup.entries(), setup.car()));
        return SharedParts.Remarks.of(setup, estimated, List.of());
    }
}
