package evenhand.words.balance;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Balance;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sentence of the verdict against the limits that it is of. */
class VerdictWordsTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void itSaysOfBothWaysWhatEndGoesAndWhatIsLeftThere(long seed) {
        Car car = RoadCars.any(seed);
        TurnAnswer left = Balance.of(car, List.of(), Trial.USUAL_RADIUS, Direction.LEFT).turn();
        TurnAnswer right = Balance.of(car, List.of(), Trial.USUAL_RADIUS, Direction.RIGHT).turn();
        if (!(left instanceof TurnAnswer.Turns turn && right instanceof TurnAnswer.Turns back)) {
            return;
        }
        String said = VerdictWords.sentence(turn, back);
        assertThat(said).endsWith(".").doesNotContain("NaN", "null");
        for (Limit limit : List.of(turn.limit(), back.limit())) {
            VerdictWords.other(limit).ifPresent(end -> {
                assertThat(said)
                        .contains("the " + (end == End.FRONT ? "front" : "rear") + " still has")
                        .contains((end == End.FRONT ? "rear" : "front"));
                if (OtherWay.differs(turn.limit(), back.limit()) || limit == turn.limit()) {
                    assertThat(said).contains(VerdictWords.inHand(limit, end));
                }
            });
        }
    }
}
