package evenhand.answers;

import evenhand.turn.PacesAnswer;
import evenhand.turn.TurnAnswer;
import java.util.Optional;

/**
 * What one car answers in a trial.
 *
 * @param turn its paces and its limit
 */
public record Answers(PacesAnswer turn) {
    /** Why there is nothing to be judged; empty for a car that turns. */
    public Optional<TurnAnswer.NoTurn> noTurn() {
        return turn instanceof TurnAnswer.NoTurn none ? Optional.of(none) : Optional.empty();
    }
}
