package evenhand.terminal;

import evenhand.answers.Balance;
import evenhand.answers.Trial;
import evenhand.handsums.HandSums;
import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import java.util.List;

/** A set-up and what it answers to the questions of {@code balance}. */
sealed interface SetupAnswer permits SetupAnswer.Turned, SetupAnswer.Unanswered {
    Setup setup();

    /**
     * It turns.
     *
     * @param rest how it stands, with the load that was asked for
     * @param other its answer in the other direction, without paces
     */
    record Turned(Setup setup, Laden.AtRest rest, HandSums sums, TurnAnswer.Turns turn, TurnAnswer other)
            implements SetupAnswer {}

    /** It has no answer. */
    record Unanswered(Setup setup, TurnAnswer.Reason reason, String text) implements SetupAnswer {}

    /** Asks a set-up. */
    static SetupAnswer of(Setup setup, Trial trial) {
        Laden laden = Laden.of(setup.car(), trial.load());
        if (!(laden instanceof Laden.AtRest rest)) {
            return new Unanswered(setup, TurnAnswer.Reason.NO_EQUILIBRIUM, ((Laden.NoRest) laden).text());
        }
        Balance balance = Balance.of(rest.car(), trial.paces(), trial.radius(), trial.direction());
        if (balance.turn() instanceof TurnAnswer.NoTurn none) {
            return new Unanswered(setup, none.reason(), none.text());
        }
        if (balance.handSums() instanceof HandSums.FallsOver falls) {
            return new Unanswered(setup, TurnAnswer.Reason.FALLS_OVER, falls.text());
        }
        Direction back = trial.direction().other();
        TurnAnswer other =
                Balance.of(rest.car(), List.of(), trial.radius(), back).turn();
        return new Turned(
                setup, rest, ((HandSums.Found) balance.handSums()).sums(), (TurnAnswer.Turns) balance.turn(), other);
    }
}
