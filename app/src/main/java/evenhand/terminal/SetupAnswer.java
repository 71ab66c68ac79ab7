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

    /**
     * It turns.
     *
     * @param other its answer in the other direction, without paces
     */
    record Turned(Setup setup, HandSums sums, TurnAnswer.Turns turn, TurnAnswer other) implements SetupAnswer {}

    /** It has no answer. */
    record Unanswered(Setup setup, TurnAnswer.Reason reason, String text) implements SetupAnswer {}

    /** Asks a set-up. */
    static SetupAnswer of(Setup setup, List<Double> paces, double radius, Direction direction) {
        Direction back = direction == Direction.LEFT ? Direction.RIGHT : Direction.LEFT;
        Balance balance = Balance.of(setup.car(), paces, radius, direction);
        if (balance.turn() instanceof TurnAnswer.NoTurn none) {
            return new Unanswered(setup, none.reason(), none.text());
        }
        if (balance.handSums() instanceof HandSums.FallsOver falls) {
            return new Unanswered(setup, TurnAnswer.Reason.FALLS_OVER, falls.text());
        }
        TurnAnswer other = Balance.of(setup.car(), List.of(), radius, back).turn();
        return new Turned(
                setup, ((HandSums.Found) balance.handSums()).sums(), (TurnAnswer.Turns) balance.turn(), other);
    }
}
