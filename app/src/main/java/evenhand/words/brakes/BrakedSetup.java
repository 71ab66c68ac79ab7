package evenhand.words.brakes;

import evenhand.car.LoadCase;
import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a set-up brakes with what is aboard, or why nobody can say. */
public sealed interface BrakedSetup {
    /**
     * It brakes.
     *
     * @param load what was asked for
     * @param rest how it stands with it
     */
    record Braked(Setup setup, Optional<LoadCase> load, Laden.AtRest rest, Braking.Asked asked, Braking.Answer answer)
            implements BrakedSetup {
        /** Name of the set-up. */
        public String name() {
            return setup.name();
        }

        /** All that is said of it, the verdict first. */
        public List<String> words(Units units) {
            List<String> sentences = new ArrayList<>(BrakeWords.of(setup.car(), rest.car(), asked, answer, units));
            load.ifPresent(aboard -> sentences.add(LoadWords.sits(aboard, rest, units)));
            return sentences;
        }
    }

    /** It has no answer. */
    record NoAnswer(TurnAnswer.Reason reason, String text) implements BrakedSetup {}

    static BrakedSetup of(Setup setup, Optional<LoadCase> load, Braking.Asked asked) {
        Laden laden = Laden.of(setup.car(), load);
        if (!(laden instanceof Laden.AtRest rest)) {
            return new NoAnswer(TurnAnswer.Reason.NO_EQUILIBRIUM, ((Laden.NoRest) laden).text());
        }
        Optional<String> falls = SteadyTurn.fallsOver(rest.car());
        if (falls.isPresent()) {
            return new NoAnswer(TurnAnswer.Reason.FALLS_OVER, falls.get());
        }
        Braking.Answer answer = new Braking(rest.car()).answer(asked);
        return answer.rows().isEmpty()
                ? new NoAnswer(
                        TurnAnswer.Reason.NO_EQUILIBRIUM,
                        "no balance is found even at a gentle stop: springs or links do not carry it")
                : new Braked(setup, load, rest, asked, answer);
    }
}
