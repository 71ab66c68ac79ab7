package evenhand.turn;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Car;
import evenhand.car.Weights;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The turn of cars whose links are known by points, on random cars; a failing case names its seed. */
class LinkedTurnTest {
    private static final double G = Weights.GRAVITY;
    private static final double RADIUS = 40;
    private static final int CARS = 40;

    private static TurnAnswer answer(Car car, Direction direction) {
        return SteadyTurn.answer(car, List.of(0.1 * G, 0.3 * G), RADIUS, direction);
    }

    /** The kinematics are kept as polynomials there and solved anew here; springs, lines and lifts are put together again. */
    @Test
    void everyRowIsInBalanceWithTheMechanismSolvedThere() {
        int turns = 0;
        int rows = 0;
        for (long seed = 0; seed < CARS; seed++) {
            Optional<Car> car = LinkedCars.any(seed);
            if (car.isEmpty() || !(answer(car.get(), Direction.LEFT) instanceof TurnAnswer.Turns answer)) {
                continue;
            }
            turns++;
            for (TurnRow row : answer.rows()) {
                if (!followed(car.get(), row)) {
                    continue;
                }
                rows++;
                assertThat(Balances.worst(car.get(), row, RADIUS))
                        .as("seed %d at %s g", seed, row.lateralAcceleration() / G)
                        .isLessThan(1e-7);
            }
        }
        assertThat(turns).isGreaterThan(CARS / 2);
        assertThat(rows).isGreaterThan(turns * 10);
    }

    private static boolean followed(Car car, TurnRow row) {
        boolean all = true;
        for (Wheel wheel : Wheel.values()) {
            double travel = row.wheel(wheel).travel();
            var motion = car.axle(wheel.end()).motion().orElseThrow();
            all &= motion.isFollowed(travel, 0) && motion.isFollowed(-0.04, row.steer());
        }
        return all;
    }

    @Test
    void aRightTurnIsTheMirroredCarsLeftTurn() {
        for (long seed = 0; seed < CARS / 2; seed++) {
            Optional<Car> car = LinkedCars.any(seed);
            if (car.isEmpty() || !(answer(car.get(), Direction.RIGHT) instanceof TurnAnswer.Turns right)) {
                continue;
            }
            TurnAnswer.Turns left = (TurnAnswer.Turns) answer(car.get().mirrored(), Direction.LEFT);
            assertThat(left.limit().lateralAcceleration())
                    .as("seed %d", seed)
                    .isEqualTo(right.limit().lateralAcceleration());
        }
    }
}
