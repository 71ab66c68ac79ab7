package evenhand.roadtest;

import static evenhand.roadtest.RoadTestCars.EXACT;
import static evenhand.roadtest.RoadTestCars.G;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.PacesAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ExpectationTest {
    private static final Entries CAR = RoadTestCars.car();
    private static final Measured CIRCLE = new Measured(30, 0.3);

    private static List<Expectation> expected(Entries car, double... paces) {
        List<Double> asked = new ArrayList<>();
        for (double pace : paces) {
            asked.add(pace * G);
        }
        return Expectation.of(car, Optional.empty(), CIRCLE, asked, EXACT).orElseThrow();
    }

    @Test
    void itIsTheTurnOfTheCarBothWaysRound() {
        List<Expectation> all = expected(CAR, 0.2, 0.3);
        assertThat(all)
                .extracting(Expectation::turn)
                .containsExactly(Direction.LEFT, Direction.RIGHT, Direction.LEFT, Direction.RIGHT);
        PacesAnswer.Paces turn = (PacesAnswer.Paces) SteadyTurn.atPaces(
                Catalogue.build(CAR).value().orElseThrow().settled(), List.of(0.3 * G), 30, Direction.LEFT);
        TurnRow row = ((PaceAnswer.InBalance) turn.paces().get(0)).row();
        for (Expectation one : all.subList(2, 4)) {
            assertThat(one.steeringWheel().orElseThrow().value()).isCloseTo(17 * row.steer(), within(1e-7));
            assertThat(one.roll().value()).isCloseTo(row.roll(), within(1e-7)).isPositive();
        }
    }

    /** Each unknown moved by itself, far and to both sides. */
    @Test
    void itsHalfWidthIsThatOfAllThatMayBeOff() {
        List<Observation> asked = List.of(
                new Observation.Reading(
                        Direction.RIGHT, RoadTestCars.pace(0.3), Channel.STEERING_WHEEL, RoadTestCars.degrees(0, 2)),
                new Observation.Reading(
                        Direction.RIGHT, RoadTestCars.pace(0.3), Channel.ROLL, RoadTestCars.degrees(0, 1)));
        RoadTest test = RoadTestCars.test("t", CAR, asked);
        Unknowns unknowns = new Unknowns(List.of(CAR), List.of(test), EXACT);
        OnTheRoad road = new OnTheRoad(List.of(test), unknowns);
        double[] squares = new double[2];
        for (int k = 0; k < unknowns.count(); k++) {
            double[] z = new double[unknowns.count()];
            z[k] = 0.1;
            List<Predicted> above = road.predicted(z).orElseThrow();
            z[k] = -0.1;
            List<Predicted> below = road.predicted(z).orElseThrow();
            for (int i = 0; i < squares.length; i++) {
                squares[i] += Math.pow((above.get(i).expected() - below.get(i).expected()) / 0.2, 2);
            }
        }
        Expectation one = expected(CAR, 0.3).get(1);
        double wheel = one.steeringWheel().orElseThrow().halfWidth();
        assertThat(wheel)
                .isCloseTo(2 * Math.sqrt(squares[0]), within(0.01 * wheel))
                .isGreaterThan(Math.toRadians(3));
        assertThat(one.roll().halfWidth())
                .isCloseTo(2 * Math.sqrt(squares[1]), within(0.01 * one.roll().halfWidth()))
                .isPositive();
        assertThat(one.roll().high() - one.roll().low())
                .isCloseTo(2 * one.roll().halfWidth(), within(1e-12));
    }

    @Test
    void aPaceBeyondTheLimitIsLeftOutAndAWheelWithoutRatioToo() {
        assertThat(expected(CAR, 0.2, 1.4)).hasSize(2).allMatch(one -> one.pace() == 0.2 * G);
        assertThat(expected(CAR, 1.4)).isEmpty();
        assertThat(expected(CAR.with("steering", Optional.empty()), 0.2))
                .allMatch(one -> one.steeringWheel().isEmpty());
    }
}
