package evenhand.answers;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Car;
import evenhand.car.RoadCars;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.OptionalDouble;
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

    @Test
    void oneWayMayHaveNoAnswer() {
        Answers all = TRIAL.ask(RoadCars.any(3));
        Answers.Bend left = all.bends().get(0);
        Answers.Bend silent = new Answers.Bend(
                left.radius(),
                Direction.RIGHT,
                new TurnAnswer.NoTurn(TurnAnswer.Reason.NO_EQUILIBRIUM, "there is no balance of forces"));
        Answers answers = new Answers(List.of(left, silent), all.ride(), LinkAnswers.NONE);
        assertThat(answers.in(0).noTurn()).isEmpty();
        assertThat(answers.in(1).noTurn()).isPresent();
        assertThat(answers.frontFirst()).isFalse();
        Judged limit = new Judged(Criterion.LIMIT, OptionalDouble.empty());
        assertThat(limit.si(answers)).isPresent();
        assertThat(limit.everywhere(answers)).isEmpty();
        assertThat(new Aim(limit, Aim.Sense.AT_LEAST, 0).figure(answers)).isEmpty();
    }
}
