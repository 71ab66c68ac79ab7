package evenhand.window.desk;

import evenhand.answers.Balance;
import evenhand.car.Car;
import evenhand.handsums.HandSums;
import evenhand.scenario.Setup;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import java.util.Optional;

/**
 * A set-up and what it answers on the circle.
 *
 * @param standing the car at rest: let down, and with the load that is aboard
 */
public record TurnedSetup(Setup setup, Car standing, Balance balance) {
    private static final double SAME_PACE = 1e-9;

    public Optional<TurnAnswer.Turns> turn() {
        return balance.turn() instanceof TurnAnswer.Turns turns ? Optional.of(turns) : Optional.empty();
    }

    public Optional<HandSums> sums() {
        return balance.handSums() instanceof HandSums.Found found ? Optional.of(found.sums()) : Optional.empty();
    }

    /** Why there is no answer, in words. */
    public Optional<String> silence() {
        return balance.turn() instanceof TurnAnswer.NoTurn none ? Optional.of(none.text()) : Optional.empty();
    }

    /** Whether it is in balance at a pace, m/s². */
    public boolean reaches(double pace) {
        return turn().map(turns -> pace < turns.limit().lateralAcceleration()).orElse(false);
    }

    /** The car at a pace, m/s²; at its limit where it does not get there. */
    public Optional<TurnRow> row(double pace) {
        return turn().map(turns -> turns.paces().stream()
                .filter(answer -> Math.abs(answer.lateralAcceleration() - pace) <= SAME_PACE * pace)
                .filter(PaceAnswer.InBalance.class::isInstance)
                .map(answer -> ((PaceAnswer.InBalance) answer).row())
                .findFirst()
                .orElse(turns.limit().row()));
    }
}
