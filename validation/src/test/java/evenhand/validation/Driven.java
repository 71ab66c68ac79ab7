package evenhand.validation;

import evenhand.car.Car;
import evenhand.handsums.HandSums;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import java.util.Arrays;
import java.util.List;

/** A car driven through a turn, or summed up by hand. */
final class Driven {
    /** A lateral acceleration at which angles are small and yet far from rounding, m/s². */
    static final double GENTLE = 0.4;

    /** A circle so wide that the car goes straight, m. */
    static final double NEARLY_STRAIGHT = 1e5;

    /** A ratio by which a tyre gives whatever drive is asked without losing side force. */
    static final double ALL_THE_DRIVE = 1e6;

    private Driven() {}

    static HandSums handSums(Car car, double ay) {
        return ((HandSums.Found) HandSums.of(car, ay)).sums();
    }

    static TurnAnswer.Turns turns(Car car, double radius, double... paces) {
        TurnAnswer answer = SteadyTurn.answer(car, Arrays.stream(paces).boxed().toList(), radius, Direction.LEFT);
        if (answer instanceof TurnAnswer.NoTurn none) {
            throw new IllegalStateException("no turn: " + none.text());
        }
        return (TurnAnswer.Turns) answer;
    }

    static TurnRow row(Car car, double radius, double pace) {
        PaceAnswer answer = turns(car, radius, pace).paces().get(0);
        return answer instanceof PaceAnswer.BeyondLimit beyond
                ? beyond.steered().orElseThrow().row()
                : ((PaceAnswer.InBalance) answer).row();
    }

    /** The end of the curve: past the limit, a state that only a driver who steers against it could hold. */
    static TurnRow fold(Car car, double radius) {
        List<TurnRow> rows = turns(car, radius).rows();
        return rows.get(rows.size() - 1);
    }

    /** A turn at this speed on a circle that makes it gentle. */
    static TurnRow gentle(Car car, double speed) {
        return row(car, speed * speed / GENTLE, GENTLE);
    }

    /** Tyres that need next to no slip, and so next to no drive, to hold the circle. */
    static PlainCar onHardTyres(PlainCar plain) {
        plain.rear.frictionRatio = ALL_THE_DRIVE;
        return plain.onStiffness(1e7, 1e7);
    }
}
