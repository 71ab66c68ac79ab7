package evenhand.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import evenhand.straight.BrakedCars;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.LongFunction;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.api.Test;

/** The solver's parts against other routes to the same numbers. */
class SolverTest {
    private static final double G = Weights.GRAVITY;
    private static final double RADIUS = 40;

    private static Branch followed(Equilibrium equilibrium) {
        Branch branch = new Branch(equilibrium);
        branch.follow(Branch.Until.FOLD);
        return branch;
    }

    @Test
    void slopesOfTheBalancesAgreeWithCentralDifferences() {
        slopesAgree(1_000, seed -> Optional.of(RoadCars.any(seed).settled()));
    }

    @Test
    void slopesAgreeWhereLinksAreKnownByPoints() {
        slopesAgree(60, LinkedCars::any);
    }

    @Test
    void slopesAgreeWhileTheEngineSlowsOrDrives() {
        slopesAgree(200, seed -> Optional.of(BrakedCars.any(seed)), new Along(-0.15 * G, Along.By.ENGINE));
        slopesAgree(30, BrakedCars::onLinks, new Along(0.1 * G, Along.By.ENGINE));
    }

    @Test
    void slopesAgreeWhileTheBrakesSlow() {
        Along along = new Along(-0.3 * G, Along.By.BRAKES);
        slopesAgree(200, seed -> Optional.of(BrakedCars.any(seed)), along);
        slopesAgree(40, BrakedCars::onLinks, along);
        slopesAgree(20, seed -> Optional.of(RoadCars.any(seed).settled()), along);
    }

    private static void slopesAgree(int cars, LongFunction<Optional<Car>> cast) {
        slopesAgree(cars, cast, Along.NONE);
    }

    private static void slopesAgree(int cars, LongFunction<Optional<Car>> cast, Along along) {
        boolean someDigitDiffers = false;
        int compared = 0;
        for (long seed = 0; seed < cars; seed++) {
            Optional<Car> drawn = cast.apply(seed);
            if (drawn.isEmpty()) {
                continue;
            }
            Car car = drawn.get();
            Equilibrium equilibrium = new Equilibrium(car, RADIUS, along);
            Branch branch = followed(equilibrium);
            if ((car.rear().motion().isPresent() || !along.isSteady()) && branch.count() == 0) {
                continue; // it falls over or has no turn
            }
            compared++;
            assertThat(branch.atAcceleration(Math.min(0.37 * G, branch.end())))
                    .as("seed %d", seed)
                    .isTrue();
            double[] state = branch.state.clone();
            SplittableRandom random = new SplittableRandom(seed);
            for (int i = 0; i < Equilibrium.ACCELERATION; i++) {
                state[i] *= 1 + 0.01 * (random.nextDouble() - 0.5);
            }
            if (!equilibrium.at(state)) {
                continue;
            }
            double[] slopes = equilibrium.slopes.clone();
            long pieces = equilibrium.pieces();
            for (int column = 0; column < Equilibrium.COLUMNS; column++) {
                double step = column == Equilibrium.DRIVE ? 1e-2 : column == Equilibrium.ACCELERATION ? 1e-5 : 1e-7;
                double kept = state[column];
                state[column] = kept + step;
                equilibrium.at(state);
                boolean samePiece = equilibrium.pieces() == pieces;
                double[] up = equilibrium.left.clone();
                state[column] = kept - step;
                equilibrium.at(state);
                samePiece &= equilibrium.pieces() == pieces;
                state[column] = kept;
                if (!samePiece) {
                    continue; // a corner lies between the two
                }
                for (int row = 0; row < Equilibrium.BALANCES; row++) {
                    double difference = (up[row] - equilibrium.left[row]) / (2 * step);
                    double slope = slopes[row * Equilibrium.ROW + column];
                    someDigitDiffers |= difference != slope;
                    assertThat(slope)
                            .as("seed %d, row %d, column %d", seed, row, column)
                            .isCloseTo(difference, within(2e-6 * (1 + Math.abs(slope))));
                }
            }
        }
        assertThat(someDigitDiffers).as("the two routes are not one").isTrue();
        assertThat(compared).isGreaterThan(cars / 2);
    }

    @Test
    void aLibrarysLeastSquaresSolverFindsTheSameBalance() {
        for (long seed = 0; seed < 60; seed++) {
            Car car = RoadCars.any(seed).settled();
            Equilibrium equilibrium = new Equilibrium(car, RADIUS);
            Branch branch = followed(equilibrium);
            double acceleration = 0.3 * G;
            assertThat(branch.atAcceleration(acceleration)).isTrue();
            double[] ours = branch.state.clone();
            double[] start = Arrays.copyOf(ours, Equilibrium.BALANCES);
            for (int i = 0; i < start.length; i++) {
                start[i] *= 1.02;
            }
            Equilibrium fresh = new Equilibrium(car, RADIUS);
            var problem = new LeastSquaresBuilder()
                    .start(start)
                    .target(new double[Equilibrium.BALANCES])
                    .model(point -> {
                        double[] state = Arrays.copyOf(point.toArray(), Equilibrium.COLUMNS);
                        state[Equilibrium.ACCELERATION] = acceleration;
                        assertThat(fresh.at(state)).isTrue();
                        double[][] jacobian = new double[Equilibrium.BALANCES][];
                        for (int row = 0; row < Equilibrium.BALANCES; row++) {
                            int at = row * Equilibrium.ROW;
                            jacobian[row] = Arrays.copyOfRange(fresh.slopes, at, at + Equilibrium.BALANCES);
                        }
                        return Pair.create(new ArrayRealVector(fresh.left), new Array2DRowRealMatrix(jacobian, false));
                    })
                    .maxEvaluations(500)
                    .maxIterations(500)
                    .build();
            double[] theirs = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-15)
                    .withParameterRelativeTolerance(1e-15)
                    .withOrthoTolerance(1e-15)
                    .optimize(problem)
                    .getPoint()
                    .toArray();
            assertThat(theirs[Equilibrium.STEER]).as("seed %d", seed).isCloseTo(ours[Equilibrium.STEER], within(1e-7));
            assertThat(theirs[Equilibrium.FRONT_ROLL])
                    .as("seed %d", seed)
                    .isCloseTo(ours[Equilibrium.FRONT_ROLL], within(1e-7));
        }
    }

    @Test
    void theFoldIsWhereNaiveStepsInAccelerationCeaseToFindABalance() {
        for (long seed = 0; seed < 60; seed++) {
            Car car = RoadCars.plain(seed);
            Equilibrium equilibrium = new Equilibrium(car, RADIUS);
            Branch branch = followed(equilibrium);
            double limit = branch.end();
            assertThat(branch.atAcceleration(0.5 * limit)).isTrue();
            double[] state = branch.state.clone();
            double solvable = 0.5 * limit;
            double step = 0.05 * G;
            Equilibrium fresh = new Equilibrium(car, RADIUS);
            while (step > 1e-6 * G) {
                double[] next = state.clone();
                if (newton(fresh, next, solvable + step) && near(state, next)) {
                    state = next;
                    solvable += step;
                } else {
                    step /= 2;
                }
            }
            assertThat(solvable).as("seed %d", seed).isCloseTo(limit, within(2e-5 * G));
        }
    }

    /** A balance far away is of another branch: behind a fold there may be one. */
    private static boolean near(double[] one, double[] other) {
        for (int i = 0; i < Equilibrium.BALANCES; i++) {
            if (Math.abs(one[i] - other[i]) > (i == Equilibrium.DRIVE ? 800 : 0.03)) {
                return false;
            }
        }
        return true;
    }

    /** Plain Newton steps by a library's decomposition; a step that runs away has no balance. */
    private static boolean newton(Equilibrium equilibrium, double[] state, double acceleration) {
        state[Equilibrium.ACCELERATION] = acceleration;
        for (int i = 0; i < 40; i++) {
            if (!equilibrium.at(state)) {
                return false;
            }
            if (equilibrium.worst() < 1e-11) {
                return true;
            }
            double[][] jacobian = new double[Equilibrium.BALANCES][];
            double[] right = new double[Equilibrium.BALANCES];
            for (int row = 0; row < Equilibrium.BALANCES; row++) {
                int at = row * Equilibrium.ROW;
                jacobian[row] = Arrays.copyOfRange(equilibrium.slopes, at, at + Equilibrium.BALANCES);
                right[row] = -equilibrium.left[row];
            }
            double[] move = new LUDecomposition(new Array2DRowRealMatrix(jacobian, false), 1e-300)
                    .getSolver()
                    .solve(new ArrayRealVector(right))
                    .toArray();
            for (int j = 0; j < move.length; j++) {
                if (Math.abs(move[j]) > (j == Equilibrium.DRIVE ? 3_000 : 0.1)) {
                    return false;
                }
                state[j] += move[j];
            }
        }
        return false;
    }

    @Test
    void nothingIsAllocatedInsideTheSolver() {
        Car car = RoadCars.any(5).settled();
        Branch branch = new Branch(new Equilibrium(car, RADIUS));
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        for (int i = 0; i < 200; i++) {
            branch.follow(Branch.Until.FOLD);
            branch.atAcceleration(0.3 * G);
        }
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < 100; i++) {
            branch.follow(Branch.Until.FOLD);
            branch.atAcceleration(0.3 * G);
            branch.atAcceleration(0.31 * G);
        }
        long allocated = threads.getCurrentThreadAllocatedBytes() - before;
        assertThat(allocated).isZero();
    }
}
