package evenhand.chart;

import evenhand.answers.Balance;
import evenhand.car.Car;
import evenhand.handsums.HandSums;
import evenhand.look.SetupStyle;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import java.util.Optional;

/**
 * A set-up as charts show it.
 *
 * @param car settled
 * @param turn what it answers
 * @param sums its hand sums at the acceleration that they were asked at; none where it falls over
 */
public record Shown(String name, SetupStyle style, Car car, TurnAnswer turn, Optional<HandSums> sums) {
    /**
     * A set-up by its look.
     *
     * @param look its colour, line and marker
     * @param car as read from a file
     */
    public static Shown of(String name, int look, Car car, Balance balance) {
        return new Shown(
                name,
                new SetupStyle(look),
                car.settled(),
                balance.turn(),
                balance.handSums() instanceof HandSums.Found found ? Optional.of(found.sums()) : Optional.empty());
    }

    /** Its turn, if it has one. */
    Optional<TurnAnswer.Turns> turns() {
        return turn instanceof TurnAnswer.Turns turns ? Optional.of(turns) : Optional.empty();
    }

    /** What angles are multiplied by, so that those into the turn are positive whichever way it goes. */
    static int inwards(TurnAnswer.Turns turn) {
        return turn.direction() == Direction.LEFT ? 1 : -1;
    }
}
