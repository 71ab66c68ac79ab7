package evenhand.words.lowering;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.handsums.HandSums;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Stance;
import evenhand.ride.RideAnswer;
import evenhand.ride.Standing;
import evenhand.scenario.Demo;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.words.Turned;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** That the front goes first one way round and the rear the other is said before all else, and of no car that is otherwise. */
class LoweringWarningsTest {
    private static final Car CAR =
            Demo.read("harbour-saloon").setup("As bought").orElseThrow().car().settled();
    private static final Standing FREE = Standing.of(CAR, End.FRONT);
    private static final TurnAnswer NO_TURN = new TurnAnswer.NoTurn(TurnAnswer.Reason.FALLS_OVER, "it falls over");

    private static TurnAnswer turn(Direction direction, End first) {
        Turned turned = direction == Direction.RIGHT ? new Turned().toTheRight() : new Turned();
        return turned.limit(0.8, first, 0.99, 0.98).turn();
    }

    private static Stance.Bend bend(double radius, Direction direction, End first) {
        return new Stance.Bend(radius, direction, turn(direction, first));
    }

    private static Stance stands(double mm, Stance.Bend... bends) {
        return new Stance.Stands(
                mm / 1000,
                CAR,
                Optional.empty(),
                FREE,
                FREE,
                Optional.empty(),
                Optional.empty(),
                new HandSums.Found(Turned.sums()),
                List.of(bends),
                new RideAnswer.NoRide("none"));
    }

    private static Stance stands(double mm, End left, End right) {
        return stands(mm, bend(40, Direction.LEFT, left), bend(40, Direction.RIGHT, right));
    }

    private static List<String> warnings(Stance... rows) {
        return warnings(Units.METRIC, rows);
    }

    private static List<String> warnings(Units units, Stance... rows) {
        return LoweringWarnings.of(
                new LoweringStudy(List.of(rows), List.of(), Optional.empty(), false, Optional.empty(), List.of()),
                units);
    }

    @Test
    void onlyWhereOneEndGoesFirstOneWayAndTheOtherTheOtherWay() {
        assertThat(warnings(stands(0, End.FRONT, End.REAR)))
                .containsExactly(
                        "As it stands, turning left the front goes first, turning right the rear goes first, at"
                                + " 0.800 g.");
        assertThat(warnings(stands(20, End.REAR, End.FRONT)))
                .containsExactly(
                        "At 20 mm down, turning right the front goes first, turning left the rear goes first, at"
                                + " 0.800 g.");
        assertThat(warnings(stands(0, End.FRONT, End.FRONT), stands(20, End.REAR, End.REAR)))
                .isEmpty();
    }

    @Test
    void heightsWithItAreCountedAndTheFirstIsTold() {
        Stance both = stands(0, End.FRONT, End.FRONT);
        Stance twenty = stands(20, End.FRONT, End.REAR);
        Stance thirty = stands(30, End.FRONT, End.REAR);
        Stance forty = stands(40, End.REAR, End.FRONT);
        String told =
                "At 20 mm down, turning left the front goes first, turning right the rear goes first, at 0.800 g.";
        assertThat(warnings(both, twenty, both)).containsExactly(told);
        assertThat(warnings(both, twenty, both, thirty))
                .containsExactly(told + " So it is at one more of these heights.");
        assertThat(warnings(both, twenty, thirty, forty))
                .containsExactly(told + " So it is at 2 more of these heights.");
    }

    @Test
    void aWayThatHasNoAnswerIsNotComparedAndNeitherIsAHeightThatHasNone() {
        Stance.Bend left = bend(40, Direction.LEFT, End.FRONT);
        assertThat(warnings(stands(0, left, new Stance.Bend(40, Direction.RIGHT, NO_TURN))))
                .isEmpty();
        assertThat(warnings(
                        stands(0, new Stance.Bend(40, Direction.LEFT, NO_TURN), bend(40, Direction.RIGHT, End.REAR))))
                .isEmpty();
        assertThat(warnings(stands(0, left))).isEmpty();
        assertThat(warnings(new Stance.NoStance(0, "its springs are gone"), stands(20, End.FRONT, End.REAR)))
                .hasSize(1);
    }

    @Test
    void eachCircleIsJudgedByItselfAndNamedWhereThereAreMore() {
        Stance onSmall = stands(
                10,
                bend(15, Direction.LEFT, End.FRONT),
                bend(15, Direction.RIGHT, End.REAR),
                bend(60, Direction.LEFT, End.FRONT),
                bend(60, Direction.RIGHT, End.FRONT));
        assertThat(warnings(onSmall))
                .containsExactly("At 10 mm down on 15 m, turning left the front goes first, turning right the rear goes"
                        + " first, at 0.800 g.");
        assertThat(warnings(Units.IMPERIAL, onSmall).get(0)).startsWith("At 0.39 in down on 49.2 ft, turning left");
        Stance onBoth = stands(
                0,
                bend(15, Direction.LEFT, End.FRONT),
                bend(15, Direction.RIGHT, End.REAR),
                bend(60, Direction.LEFT, End.REAR),
                bend(60, Direction.RIGHT, End.FRONT));
        assertThat(warnings(onBoth, onSmall))
                .containsExactly(
                        "As it stands on 15 m, turning left the front goes first, turning right the rear goes first, at"
                                + " 0.800 g. So it is at one more of these heights.",
                        "As it stands on 60 m, turning right the front goes first, turning left the rear goes first, at"
                                + " 0.800 g.");
        // The tail on the wide circle and the nose on the narrow one are no such car: each circle has one answer.
        assertThat(warnings(stands(
                        0,
                        bend(15, Direction.LEFT, End.FRONT),
                        bend(15, Direction.RIGHT, End.FRONT),
                        bend(60, Direction.LEFT, End.REAR),
                        bend(60, Direction.RIGHT, End.REAR))))
                .isEmpty();
    }
}
