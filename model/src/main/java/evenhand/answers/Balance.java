package evenhand.answers;

import evenhand.car.Car;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.turn.Along;
import evenhand.turn.Direction;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import java.util.List;

/** How a car is balanced: the hand sums per g, and the turn from straight ahead to the limit. */
public record Balance(HandSums.Outcome handSums, TurnAnswer turn) {
    /**
     * Asks a car.
     *
     * @param car as read from a file; {@code lowered} is carried out here
     * @param paces lateral accelerations, m/s²
     * @param radius of the circle, m
     */
    public static Balance of(Car car, List<Double> paces, double radius, Direction direction) {
        return of(car, paces, radius, direction, Along.NONE);
    }

    /** The same of a speed that changes at that moment; the hand sums know nothing of it. */
    public static Balance of(Car car, List<Double> paces, double radius, Direction direction, Along along) {
        Car settled = car.settled();
        return new Balance(
                HandSums.of(settled, Weights.GRAVITY), SteadyTurn.answer(settled, paces, radius, direction, along));
    }
}
