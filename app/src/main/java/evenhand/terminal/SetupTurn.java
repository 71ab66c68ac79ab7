package evenhand.terminal;

import evenhand.answers.Balance;
import evenhand.answers.Trial;
import evenhand.car.LoadCase;
import evenhand.handsums.HandSums;
import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.words.BalanceWords;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A set-up and what it answers to the questions of {@code balance}. */
sealed interface SetupTurn extends SetupAnswer permits SetupTurn.Turned, SetupAnswer.None {

    /**
     * It turns.
     *
     * @param load what was asked for
     * @param rest how it stands with it
     * @param other its answer in the other direction, without paces
     */
    record Turned(
            Setup setup,
            Optional<LoadCase> load,
            Laden.AtRest rest,
            HandSums sums,
            TurnAnswer.Turns turn,
            TurnAnswer other)
            implements SetupTurn {
        /** All of it in sentences. */
        List<String> words(Units units) {
            List<String> sentences = new ArrayList<>(sits(units).stream().toList());
            sentences.addAll(BalanceWords.of(sums, turn, other, units));
            return sentences;
        }

        /** How its load sits. */
        Optional<String> sits(Units units) {
            return load.map(aboard -> LoadWords.sits(aboard, rest, units));
        }
    }

    /** Asks a set-up. */
    static SetupTurn of(Setup setup, Trial trial) {
        Laden laden = Laden.of(setup.car(), trial.load());
        if (!(laden instanceof Laden.AtRest rest)) {
            return new SetupAnswer.None(setup, TurnAnswer.Reason.NO_EQUILIBRIUM, ((Laden.NoRest) laden).text());
        }
        Balance balance = Balance.of(rest.car(), trial.paces(), trial.radius(), trial.direction());
        if (balance.turn() instanceof TurnAnswer.NoTurn none) {
            return new SetupAnswer.None(setup, none);
        }
        if (balance.handSums() instanceof HandSums.FallsOver falls) {
            return new SetupAnswer.None(setup, TurnAnswer.Reason.FALLS_OVER, falls.text());
        }
        Direction back = trial.direction() == Direction.LEFT ? Direction.RIGHT : Direction.LEFT;
        TurnAnswer other =
                Balance.of(rest.car(), List.of(), trial.radius(), back).turn();
        return new Turned(
                setup,
                trial.load(),
                rest,
                ((HandSums.Found) balance.handSums()).sums(),
                (TurnAnswer.Turns) balance.turn(),
                other);
    }
}
