package evenhand.answers;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Car;
import evenhand.car.RoadCars;
import evenhand.turn.Direction;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A trial of several bends answers in each what it answers alone. */
class BendsTest {
    private static final Trial TRIAL = new Trial(Trial.USUAL_PACES, List.of(40.0, 15.0), Ways.BOTH);

    @Test
    void eachBendOfARandomCarIsWhatItAnswersThereAlone() {
        int unlike = 0;
        for (long seed = 0; seed < 40; seed++) {
            Car car = RoadCars.any(seed);
            Answers all = TRIAL.ask(car);
            assertThat(all.bends()).hasSize(TRIAL.bends());
            for (int i = 0; i < TRIAL.bends(); i++) {
                Answers.Bend bend = all.bends().get(i);
                assertThat(all.in(i).bends()).containsExactly(bend);
                assertThat(all.in(i).ride()).isEqualTo(all.ride());
                if (bend.direction() == Direction.LEFT || !TRIAL.asksAlike(car)) {
                    Trial alone = TRIAL.turning(bend.direction()).onCircle(bend.radius());
                    assertThat(alone.ask(car).turn()).as("seed " + seed).isEqualTo(bend.turn());
                }
            }
            unlike += TRIAL.asksAlike(car) ? 0 : 1;
        }
        assertThat(unlike).isBetween(10, 39);
    }

    /** On the smallest circle this car has a balance one way only. */
    @Test
    void oneWayMayHaveNoAnswer() {
        Answers answers = TRIAL.onCircle(4).ask(RoadCars.any(182));
        assertThat(answers.in(0).noTurn()).isPresent();
        assertThat(answers.in(1).noTurn()).isEmpty();
        assertThat(answers.noTurnSomewhere()).isPresent();
    }
}
