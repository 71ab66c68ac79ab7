package evenhand.turn;

import evenhand.car.End;
import java.util.Optional;

/**
 * The fold, where no more lateral acceleration can be had.
 *
 * @param row the car there; it has no understeer gradient
 * @param firstAxle the axle whose slip runs away faster there
 * @param spinningWheel the driven wheel that has spent its grip on drive, where that is the cause
 */
public record Limit(TurnRow row, End firstAxle, Optional<Wheel> spinningWheel) {
    public double lateralAcceleration() {
        return row.lateralAcceleration();
    }

    /** Positive = the front has less grip in hand; zero = neutral at the limit. */
    public double limitBalance() {
        return row.gripBalance();
    }
}
