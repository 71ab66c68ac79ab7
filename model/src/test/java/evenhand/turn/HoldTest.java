package evenhand.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Whether a car holds its bend by itself, by other routes; and the limit that comes of it. */
class HoldTest {
    private static final double G = Weights.GRAVITY;
    private static final double RADIUS = 40;

    private static TurnAnswer.Turns turn(Car car, List<Double> paces, double radius) {
        return (TurnAnswer.Turns) SteadyTurn.answer(car, paces, radius, Direction.LEFT);
    }

    private static TurnRow row(PaceAnswer answer) {
        return answer instanceof PaceAnswer.InBalance here
                ? here.row()
                : ((PaceAnswer.BeyondLimit) answer).steered().orElseThrow().row();
    }

    /** The whole turn is asked only where the pace lies beyond the limit. */
    private static double steer(Car car, double pace, double radius) {
        PacesAnswer.Paces quick = (PacesAnswer.Paces) SteadyTurn.atPaces(car, List.of(pace), radius, Direction.LEFT);
        PaceAnswer answer = quick.paces().get(0);
        return row(answer instanceof PaceAnswer.InBalance
                        ? answer
                        : turn(car, List.of(pace), radius).paces().get(0))
                .steer();
    }

    @Test
    void slopesOverTheCurvatureAgreeWithTheSameCarOnNeighbouringCircles() {
        for (long seed = 0; seed < 300; seed++) {
            Car car = RoadCars.any(seed).settled();
            Equilibrium here = new Equilibrium(car, RADIUS);
            Branch branch = new Branch(here);
            branch.follow(Branch.Until.FOLD);
            assertThat(branch.atAcceleration(0.37 * G)).as("seed %d", seed).isTrue();
            double[] state = branch.state.clone();
            here.at(state);
            double step = 1e-7;
            Equilibrium more = new Equilibrium(car, 1 / (1 / RADIUS + step));
            Equilibrium less = new Equilibrium(car, 1 / (1 / RADIUS - step));
            if (!more.at(state) || !less.at(state) || more.pieces() != less.pieces()) {
                continue;
            }
            for (int row = 0; row < Equilibrium.BALANCES; row++) {
                assertThat(here.byCurvature(row))
                        .as("seed %d, row %d", seed, row)
                        .isCloseTo(
                                (more.left[row] - less.left[row]) / (2 * step),
                                within(2e-6 * (1 + Math.abs(here.byCurvature(row)))));
            }
        }
    }

    @Test
    void theHoldIsHowTheSteerGoesWithTheBendAtTheSameSpeed() {
        int compared = 0;
        for (long seed = 0; seed < 400; seed++) {
            Car car = RoadCars.any(seed).settled();
            List<Double> paces = List.of(0.3 * G, 0.6 * G);
            TurnAnswer.Turns here = turn(car, paces, RADIUS);
            for (int i = 0; i < paces.size(); i++) {
                double pace = paces.get(i);
                if (pace > here.rows().get(here.rows().size() - 1).lateralAcceleration() - 0.05 * G
                        || here.events().stream()
                                .anyMatch(event -> Math.abs(event.lateralAcceleration() - pace) < 0.01 * G)) {
                    continue;
                }
                double square = pace * RADIUS; // V²
                double step = 1e-6;
                double more = 1 / RADIUS + step;
                double less = 1 / RADIUS - step;
                double steerMore = steer(car, square * more, 1 / more);
                double steerLess = steer(car, square * less, 1 / less);
                double hold = row(here.paces().get(i)).hold().orElseThrow();
                assertThat(hold * car.wheelbase())
                        .as("seed %d at %.1f m/s²", seed, pace)
                        .isCloseTo((steerMore - steerLess) / (2 * step), within(2e-4 * (1 + Math.abs(hold))));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(400);
    }

    /** A linear car: δ = L/R + K·V²/R, so D = L + K·V², zero at the critical speed √(−L/K). */
    @Test
    void aGentleBendOnAWideCircleHoldsAsTheLinearTheorySays() {
        double radius = 20_000;
        int oversteering = 0;
        for (long seed = 0; seed < 200; seed++) {
            Car car = RoadCars.plain(seed);
            HandSums sums = ((HandSums.Found) HandSums.of(car, G)).sums();
            double gradient = sums.budget().gradient();
            double speed = 30;
            double pace = speed * speed / radius; // 0.0046 g
            PacesAnswer.Paces answer =
                    (PacesAnswer.Paces) SteadyTurn.atPaces(car, List.of(pace), radius, Direction.LEFT);
            if (answer.paces().get(0) instanceof PaceAnswer.InBalance here) {
                double hold = here.row().hold().orElseThrow();
                assertThat(hold)
                        .as("seed %d", seed)
                        .isCloseTo(1 + gradient * speed * speed / car.wheelbase(), within(8e-3 * (1 + Math.abs(hold))));
            }
            if (gradient < 0) {
                double critical = Math.sqrt(-car.wheelbase() / gradient);
                if (critical > 65 && critical < 75) { // 0.02 g is met at 63 m/s
                    oversteering++;
                    assertThat(answer.limit().cause()).as("seed %d", seed).isEqualTo(Limit.Cause.CRITICAL_SPEED);
                    TurnRow there =
                            answer.limit().row(); // the gradient has already moved a little from that at no pace
                    double ofItsGradient = Math.sqrt(
                            -car.wheelbase() / there.understeerGradient().orElseThrow());
                    assertThat(there.speed()).isCloseTo(ofItsGradient, within(0.01 * ofItsGradient));
                    assertThat(there.speed()).isCloseTo(critical, within(0.1 * critical));
                }
            }
        }
        assertThat(oversteering).isPositive();
    }

    @Test
    void theLimitIsTheFirstPlaceThatNoLongerHolds() {
        for (long seed = 0; seed < 400; seed++) {
            TurnAnswer.Turns turns = turn(RoadCars.any(seed).settled(), List.of(), RADIUS);
            double limit = turns.limit().lateralAcceleration();
            for (TurnRow row : turns.rows()) {
                if (row.lateralAcceleration() < limit) {
                    assertThat(row.hold().orElseThrow()).as("seed %d", seed).isPositive();
                }
            }
            if (turns.limit().fold().isPresent()) {
                assertThat(turns.limit().fold().getAsDouble()).isGreaterThanOrEqualTo(limit);
                TurnRow next = turns.rows().stream()
                        .filter(row -> row.lateralAcceleration() > limit)
                        .findFirst()
                        .orElseThrow();
                boolean lost = next.hold().isEmpty() || next.hold().getAsDouble() < 0;
                boolean comesBack = turns.rows().stream()
                        .anyMatch(row -> row.lateralAcceleration() > limit
                                && row.hold().isPresent()
                                && row.hold().getAsDouble() > 0);
                assertThat(lost || comesBack).as("seed %d", seed).isTrue();
            }
        }
    }

    @Test
    void everyBendHasAnAnswerAndEveryBalanceHolds() {
        Map<Limit.Cause, Integer> causes = new EnumMap<>(Limit.Cause.class);
        for (double radius : new double[] {7, 10, 15, 150, 500}) {
            for (long seed = 0; seed < 300; seed++) {
                Car car = RoadCars.any(seed).settled();
                TurnAnswer.Turns turns = turn(car, List.of(), radius);
                causes.merge(turns.limit().cause(), 1, Integer::sum);
                assertThat(turns.limit().nearUndersteer())
                        .as("seed %d on %.0f m", seed, radius)
                        .isPresent();
                for (TurnRow row : turns.rows()) {
                    assertThat(Balances.worst(car, row, radius))
                            .as("seed %d on %.0f m", seed, radius)
                            .isLessThan(1e-9);
                }
                boolean neither = turns.limit().cause() == Limit.Cause.CRITICAL_SPEED;
                assertThat(turns.limit().firstAxle().isEmpty()).isEqualTo(neither);
                if (turns.limit().cause() == Limit.Cause.SPIN) {
                    assertThat(turns.limit().firstAxle()).contains(End.REAR);
                    assertThat(turns.limit().row().rearGripUsed()).isGreaterThanOrEqualTo(0.9);
                }
            }
        }
        assertThat(causes).doesNotContainKey(Limit.Cause.GAVE_UP);
        assertThat(causes.keySet())
                .contains(Limit.Cause.SIDESLIP, Limit.Cause.SPIN, Limit.Cause.WHEELSPIN, Limit.Cause.CRITICAL_SPEED);
    }
}
