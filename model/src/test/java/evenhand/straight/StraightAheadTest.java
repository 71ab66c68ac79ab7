package evenhand.straight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Brakes;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Side;
import evenhand.car.SwingArm;
import evenhand.car.Weights;
import evenhand.geometry.LinkMotion;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.api.Test;

/** The car straight ahead, on random cars; a failing case names its seed. */
class StraightAheadTest {
    private static final double G = Weights.GRAVITY;
    private static final int N = AxleAlong.UNKNOWNS;
    private static final int CARS = 400;

    @Test
    void slopesOfTheBalancesAgreeWithCentralDifferences() {
        slopesAgree(CARS, seed -> Optional.of(BrakedCars.any(seed)), ahead -> ahead.brakeAt(0.5 * G));
        slopesAgree(CARS, seed -> Optional.of(BrakedCars.any(seed)), ahead -> ahead.press(2500));
        slopesAgree(CARS, seed -> Optional.of(BrakedCars.any(seed)), ahead -> ahead.drive(0.25 * G));
        slopesAgree(40, BrakedCars::onLinks, ahead -> ahead.brakeAt(0.4 * G));
        slopesAgree(40, BrakedCars::onLinks, ahead -> ahead.drive(0.25 * G));
    }

    private static void slopesAgree(int cars, LongFunction<Optional<Car>> cast, Predicate<StraightAhead> act) {
        boolean someDigitDiffers = false;
        int corners = 0;
        int asked = 0;
        double[] left = new double[N];
        double[] up = new double[N];
        double[] down = new double[N];
        double[] slopes = new double[N * N];
        double[] unused = new double[N * N];
        for (long seed = 0; seed < cars; seed++) {
            Optional<Car> car = cast.apply(seed);
            if (car.isEmpty()) {
                continue;
            }
            StraightAhead ahead = new StraightAhead(car.get());
            if (!act.test(ahead)) {
                continue;
            }
            double[] state = new double[N];
            ahead.copyState(state);
            SplittableRandom random = new SplittableRandom(seed);
            for (int i = 0; i < N; i++) {
                state[i] += 1e-3 * (random.nextDouble() - 0.5);
            }
            ahead.evaluate(state, left, slopes);
            for (int column = 0; column < N; column++) {
                double[] moved = state.clone();
                double step = 1e-7;
                moved[column] = state[column] + step;
                ahead.evaluate(moved, up, unused);
                moved[column] = state[column] - step;
                ahead.evaluate(moved, down, unused);
                for (int row = 0; row < N; row++) {
                    asked++;
                    double slope = slopes[row * N + column];
                    double forwards = (up[row] - left[row]) / step;
                    double backwards = (left[row] - down[row]) / step;
                    if (Math.abs(forwards - backwards) > 1e-4 * (1 + Math.abs(slope))) {
                        corners++;
                        continue;
                    }
                    double difference = (up[row] - down[row]) / (2 * step);
                    someDigitDiffers |= difference != slope;
                    assertThat(slope)
                            .as("seed %d, row %d, column %d", seed, row, column)
                            .isCloseTo(difference, within(2e-6 * (1 + Math.abs(slope))));
                }
            }
        }
        assertThat(someDigitDiffers).as("the two routes are not one").isTrue();
        assertThat(corners).as("of %d", asked).isLessThan(asked / 500 + 1);
    }

    @Test
    void aLibrarysLeastSquaresSolverFindsTheSameBalance() {
        for (long seed = 0; seed < 80; seed++) {
            Car car = BrakedCars.any(seed);
            StraightAhead ahead = new StraightAhead(car);
            boolean braking = seed % 2 == 0;
            assertThat(braking ? ahead.brakeAt(0.55 * G) : ahead.drive(0.3 * G)).isTrue();
            double[] ours = new double[N];
            ahead.copyState(ours);
            double[] left = new double[N];
            double[] slopes = new double[N * N];
            var problem = new LeastSquaresBuilder()
                    .start(new double[N])
                    .target(new double[N])
                    .model(point -> {
                        ahead.evaluate(point.toArray(), left, slopes);
                        double[][] jacobian = new double[N][];
                        for (int row = 0; row < N; row++) {
                            jacobian[row] = Arrays.copyOfRange(slopes, row * N, row * N + N);
                        }
                        return new Pair<>(new ArrayRealVector(left.clone()), new Array2DRowRealMatrix(jacobian));
                    })
                    .maxEvaluations(500)
                    .maxIterations(500)
                    .build();
            double[] library = new LevenbergMarquardtOptimizer(100, 1e-15, 1e-15, 1e-15, 1e-300)
                    .optimize(problem)
                    .getPoint()
                    .toArray();
            assertThat(ours).as("seed %d", seed).containsExactly(library, within(1e-8));
        }
    }

    /** Whatever springs, stops, links and slopes do: moments about the ground alone decide. */
    @Test
    void axleLoadsAreThoseOfMomentsAboutTheGround() {
        int asked = 0;
        for (long seed = 0; seed < CARS; seed++) {
            asked += loads(seed, BrakedCars.any(seed));
        }
        for (long seed = 0; seed < 40; seed++) {
            asked += BrakedCars.onLinks(seed).map(car -> loads(-1, car)).orElse(0);
        }
        assertThat(asked).isGreaterThan(2 * CARS);
    }

    private static int loads(long seed, Car car) {
        StraightAhead ahead = new StraightAhead(car);
        double mass = car.weights().mass();
        int asked = 0;
        for (double g : new double[] {-0.8, -0.3, 0.2}) {
            if (!(g < 0 ? ahead.brakeAt(-g * G) : ahead.drive(g * G))) {
                continue;
            }
            asked++;
            double transfer = mass * g * G * car.cgHeight() / car.wheelbase();
            assertThat(ahead.front.loads())
                    .as("seed %d at %s g", seed, g)
                    .isCloseTo(car.axleLoad(End.FRONT) - transfer, within(1e-6));
            assertThat(ahead.rear.loads()).isCloseTo(car.axleLoad(End.REAR) + transfer, within(1e-6));
            double along = 0;
            for (End end : End.values()) {
                for (Side side : Side.values()) {
                    along += ahead.axle(end).forward(side);
                }
            }
            assertThat(along).as("seed %d at %s g", seed, g).isCloseTo(mass * g * G, within(1e-6));
        }
        return asked;
    }

    @Test
    void fullAntiMovesNoSpring() {
        for (long seed = 0; seed < 100; seed++) {
            Car car = RoadCars.plain(seed);
            double share = car.frontBrakeShare();
            double lever = car.cgHeight() / car.wheelbase();
            double radius = car.front().tyre().loadedRadius();
            Car full = BrakedCars.swinging(
                    car,
                    Optional.of(new SwingArm(1, lever / share, radius)),
                    Optional.of(new SwingArm(1, lever / (1 - share), radius)));
            Braking.Row row = new Braking(full).row(0.6 * G, true).orElseThrow();
            assertThat(row.antiDive()).as("seed %d", seed).isCloseTo(1, within(1e-12));
            assertThat(row.antiLift()).isCloseTo(1, within(1e-12));
            StraightAhead ahead = new StraightAhead(full);
            assertThat(ahead.brakeAt(0.6 * G)).isTrue();
            assertThat(ahead.front.travel).as("seed %d", seed).isCloseTo(0, within(1e-12));
            assertThat(ahead.rear.travel).isCloseTo(0, within(1e-12));
            // Links that lean the other way make it dive more than springs alone let it.
            Car turned =
                    BrakedCars.swinging(car, Optional.of(new SwingArm(-1, lever / share, radius)), Optional.empty());
            assertThat(new Braking(turned).row(0.6 * G, true).orElseThrow().frontHeave())
                    .isLessThan(
                            new Braking(car).row(0.6 * G, true).orElseThrow().frontHeave());
        }
    }

    /** Straight springs and tyres: heave of each end is what it carries more over its rates in series. */
    @Test
    void aGentleStopDivesByTheRatesInSeries() {
        for (long seed = 0; seed < 100; seed++) {
            Car car = RoadCars.plain(seed);
            double transfer = car.weights().mass() * 0.1 * G * car.cgHeight() / car.wheelbase();
            Braking.Row row = new Braking(car).row(0.1 * G, true).orElseThrow();
            double front =
                    2 * evenhand.suspension.AxleSuspension.of(car, End.FRONT).heaveRate();
            double tyres = 2 * car.front().tyre().verticalRate();
            assertThat(row.frontHeave())
                    .as("seed %d", seed)
                    .isCloseTo(-transfer * (1 / front + 1 / tyres), within(1e-9));
            assertThat(row.pitch())
                    .isCloseTo((row.rearHeave() - row.frontHeave()) / car.wheelbase(), within(1e-15))
                    .isPositive();
        }
    }

    @Test
    void aMirroredCarAnswersTheMirrorImage() {
        for (long seed = 0; seed < CARS / 2; seed++) {
            Car car = BrakedCars.any(seed);
            StraightAhead one = new StraightAhead(car);
            StraightAhead other = new StraightAhead(car.mirrored());
            assertThat(one.drive(0.3 * G)).isEqualTo(other.drive(0.3 * G));
            for (End end : End.values()) {
                assertThat(one.axle(end).load[0]).as("seed %d", seed).isCloseTo(other.axle(end).load[1], within(1e-5));
                assertThat(one.roll(end)).isCloseTo(-other.roll(end), within(1e-9));
                assertThat(one.heave(end)).isCloseTo(other.heave(end), within(1e-9));
            }
        }
    }

    /** Gillespie 1992 ch. 2: of stiff tyres, what of T the front's roll stiffness does not give back stays on the axle. */
    @Test
    void theShaftsShiftOnStiffTyresIsThePublishedOne() {
        int live = 0;
        for (long seed = 0; seed < CARS && live < 40; seed++) {
            Car car = RoadCars.plain(seed);
            if (!(car.rear() instanceof Axle.Live) || car.drive().axle() != End.REAR) {
                continue;
            }
            live++;
            car = car.driven(new Drive(
                    End.REAR, new Drive.Differential.Open(), OptionalDouble.of(3.9), Drive.ShaftTurns.ANTICLOCKWISE));
            car = BrakedCars.with(car, onStiffTyres(car.front()), onStiffTyres(car.rear()));
            StraightAhead ahead = new StraightAhead(car);
            double ax = 1e-3 * G;
            assertThat(ahead.drive(ax)).isTrue();
            double torque = car.weights().mass() * ax * car.rear().tyre().loadedRadius() / 3.9;
            double front = stiffness(car, End.FRONT) - leaning(car, End.FRONT);
            double rear = stiffness(car, End.REAR) - leaning(car, End.REAR);
            double roll = torque / (front + rear);
            double shift =
                    (torque - stiffness(car, End.REAR) * roll) / car.rear().track();
            double moved = (ahead.rear.load[0] - ahead.rear.load[1]) / 2;
            assertThat(moved)
                    .as("seed %d", seed)
                    .isCloseTo(shift, within(1e-3 * shift))
                    .isPositive();
            assertThat(ahead.roll(End.FRONT)).isCloseTo(roll, within(1e-3 * roll));
        }
        assertThat(live).isEqualTo(40);
    }

    private static double stiffness(Car car, End end) {
        var suspension = evenhand.suspension.AxleSuspension.of(car, end);
        suspension.at(0, 0, car.axle(end).geometry().rollCentreHeight());
        return suspension.momentByRoll;
    }

    private static double leaning(Car car, End end) {
        Car.Sprung sprung = car.sprung();
        return sprung.mass()
                * sprung.share(end)
                * G
                * (sprung.height() - car.axle(end).geometry().rollCentreHeight());
    }

    private static Axle onStiffTyres(Axle axle) {
        evenhand.tyre.Tyre tyre = new evenhand.tyre.Tyre(
                axle.tyre().loadedRadius(),
                1e9,
                axle.tyre().lateral(),
                axle.tyre().longitudinalFrictionRatio(),
                axle.tyre().longitudinalStiffness());
        return axle instanceof Axle.Independent wheels
                ? new Axle.Independent(
                        wheels.track(),
                        wheels.unsprung(),
                        wheels.rollCentre(),
                        wheels.spring(),
                        wheels.bar(),
                        wheels.stops(),
                        wheels.damper(),
                        0,
                        wheels.rollCamber(),
                        wheels.alignment(),
                        tyre,
                        wheels.rollInertia())
                : new Axle.Live(
                        axle.track(),
                        axle.unsprung(),
                        ((Axle.Live) axle).lateralLocator(),
                        axle.spring(),
                        axle.bar(),
                        axle.stops(),
                        axle.damper(),
                        0,
                        axle.alignment(),
                        tyre,
                        axle.rollInertia());
    }

    /** The body down by d over both axles: its centre is lower, less load moves forwards, and the rear's ideal force grows. */
    @Test
    void loweringNeverLocksTheRearEarlierUnlessAValveFeelsIt() {
        for (long seed = 0; seed < 60; seed++) {
            Car car = RoadCars.plain(seed).braked(new Brakes(OptionalDouble.of(0.62)));
            Car low = car.letDown(0.03).settled();
            assertThat(idealRearShare(low)).as("seed %d", seed).isGreaterThan(idealRearShare(car));
            assertThat(new Braking(low).rearLocksAbove().orElse(9 * G))
                    .isGreaterThanOrEqualTo(new Braking(car).rearLocksAbove().orElse(9 * G) - 1e-9);
        }
    }

    private static double idealRearShare(Car car) {
        Braking.Row row = new Braking(car).row(0.6 * G, true).orElseThrow();
        return row.rear().idealForce() / (row.front().idealForce() + row.rear().idealForce());
    }

    @Test
    void linksThatDoNotReachGiveNoState() {
        int ended = 0;
        for (long seed = 0; seed < 60; seed++) {
            Optional<Car> car = BrakedCars.onLinks(seed);
            if (car.isEmpty()) {
                continue;
            }
            StraightAhead ahead = new StraightAhead(car.get());
            double reached = 0;
            for (double g = 0.05; g < 6 && ahead.brakeAt(g * G); g += 0.05) {
                reached = g;
                LinkMotion.Reach reach =
                        car.get().front().motion().orElseThrow().reach();
                assertThat(ahead.front.travel).isBetween(reach.droop(), reach.bump());
            }
            ended += reached < 5.9 ? 1 : 0;
            assertThat(ahead.heave(End.FRONT)).as("seed %d", seed).isFinite();
        }
        assertThat(ended).isPositive();
    }

    @Test
    void aStateAllocatesNothing() {
        com.sun.management.ThreadMXBean threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        StraightAhead braking = new StraightAhead(BrakedCars.any(3));
        StraightAhead linked = new StraightAhead(BrakedCars.onLinks(1).orElseThrow());
        for (int i = 0; i < 3_000; i++) {
            ask(braking, i);
            ask(linked, i);
        }
        long least = Long.MAX_VALUE;
        for (int round = 0; round < 5; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int i = 0; i < 200; i++) {
                ask(braking, i);
                ask(linked, i);
            }
            least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
        }
        assertThat(least).isZero();
    }

    private static void ask(StraightAhead ahead, int i) {
        ahead.brakeAt((0.1 + 0.001 * (i % 300)) * G);
        ahead.press(500 + i % 1000);
        ahead.drive(0.001 * (i % 200) * G);
        ahead.leastLeft(End.REAR, Double.NaN);
    }
}
