package evenhand.terminal;

import evenhand.answers.Balance;
import evenhand.handsums.HandSums;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import java.util.List;

/** A set-up and what it answers to the questions of {@code balance}. */
sealed interface SetupAnswer permits SetupAnswer.Turned, SetupAnswer.Unanswered {
    Setup setup();

    /** It turns. */
    record Turned(Setup setup, HandSums sums, TurnAnswer.Turns turn) implements SetupAnswer {}

    /** It has no answer. */
    record Unanswered(Setup setup, TurnAnswer.Reason reason, String text) implements SetupAnswer {}

    /** Asks a set-up. */
    static SetupAnswer of(Setup setup, List<Double> paces, double radius, Direction direction) {
        return of(setup, Balance.of(setup.car(), paces, radius, direction));
    }

    static SetupAnswer of(Setup setup, Balance balance) {
        if (balance.turn() instanceof TurnAnswer.NoTurn none) {
            return new Unanswered(setup, none.reason(), none.text());
        }
        if (balance.handSums() instanceof HandSums.FallsOver falls) {
            return new Unanswered(setup, TurnAnswer.Reason.FALLS_OVER, falls.text());
        }
        return new Turned(setup, ((HandSums.Found) balance.handSums()).sums(), (TurnAnswer.Turns) balance.turn());
    }
}
