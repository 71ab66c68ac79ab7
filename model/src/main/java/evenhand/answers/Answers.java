package evenhand.answers;

import evenhand.ride.Ride;
import evenhand.turn.PacesAnswer;
import evenhand.turn.TurnAnswer;
import java.util.Optional;

/**
 * What one car answers in a trial.
 *
 * @param turn its paces and its limit
 * @param ride on the road; none where its springs give way by themselves
 */
public record Answers(PacesAnswer turn, Optional<Ride> ride) {
    /** Why there is no turn to be judged; empty for a car that turns. */
    public Optional<TurnAnswer.NoTurn> noTurn() {
        return turn instanceof TurnAnswer.NoTurn none ? Optional.of(none) : Optional.empty();
    }

    /** Whether the ride is worth judging: it is where there are dampers. */
    public boolean isDamped() {
        return ride.isPresent()
                && (ride.get().front().damped().isPresent()
                        || ride.get().rear().damped().isPresent());
    }
}
