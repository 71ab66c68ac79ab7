package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.complex.ComplexField;
import org.apache.commons.math3.linear.Array2DRowFieldMatrix;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayFieldVector;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.FieldLUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** What a road does where the driver sits. */
class SeatRideTest {
    /** Numbers of a half car as a book would write them: heave and pitch of the centre of gravity, nose up. */
    private record Book(HalfCar car) {
        private static final int FRONT = 2;
        private static final int REAR = 3;

        /** M·x'' + C·x' + K·x = B·r, in this order of unknowns; wheels of an axle together. */
        double[][] mass() {
            return new double[][] {
                {car.mass(), 0, 0, 0},
                {0, car.inertia(), 0, 0},
                {0, 0, 2 * car.front().unsprungMass(), 0},
                {0, 0, 0, 2 * car.rear().unsprungMass()}
            };
        }

        double[][] springs() {
            double[][] k = between(2 * car.front().wheelRate(), 2 * car.rear().wheelRate());
            k[FRONT][FRONT] += 2 * car.front().tyreRate();
            k[REAR][REAR] += 2 * car.rear().tyreRate();
            return k;
        }

        double[][] dampers() {
            return between(2 * car.front().dampingRate(), 2 * car.rear().dampingRate());
        }

        /** A spring or damper between each axle and the body above it: the body there is z + a·θ in front, z − b·θ behind. */
        private double[][] between(double front, double rear) {
            double a = car.toFront();
            double b = car.toRear();
            return new double[][] {
                {front + rear, front * a - rear * b, -front, -rear},
                {front * a - rear * b, front * a * a + rear * b * b, -front * a, rear * b},
                {-front, -front * a, front, 0},
                {-rear, rear * b, 0, rear}
            };
        }

        /** Height of a seat so far behind the front axle, from heave and pitch. */
        double seat(double heave, double pitch, double behindFront) {
            return heave + (car.toFront() - behindFront) * pitch;
        }
    }

    static HalfCar any(SplittableRandom random) {
        double as = between(random, 0.8, 1.8);
        double bs = between(random, 0.8, 1.8);
        double mass = between(random, 600, 1600);
        return new HalfCar(
                mass,
                mass * as * bs * between(random, 0.6, 1.3),
                as,
                bs,
                quarter(random, mass * bs / (as + bs) / 2),
                quarter(random, mass * as / (as + bs) / 2));
    }

    private static QuarterCar quarter(SplittableRandom random, double mass) {
        double rate = mass * Math.pow(2 * Math.PI * between(random, 0.9, 2.2), 2);
        return new QuarterCar(
                mass,
                between(random, 25, 70),
                rate,
                between(random, 140e3, 300e3),
                2 * between(random, 0.1, 0.6) * Math.sqrt(rate * mass));
    }

    private static double between(SplittableRandom random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static double response(HalfCar car, double seat, double frequency, double speed) {
        SeatTransfer transfer = new SeatTransfer(car, seat);
        double w = 2 * Math.PI * frequency;
        double angle = w * car.wheelbase() / speed;
        transfer.at(w, Math.cos(angle), Math.sin(angle));
        return Math.sqrt(transfer.accelerationSquared);
    }

    private static HalfCar withInertia(HalfCar car, double inertia) {
        return new HalfCar(car.mass(), inertia, car.toFront(), car.toRear(), car.front(), car.rear());
    }

    @Test
    void theResponseIsThatOfHeaveAndPitchSolvedAsAMatrix() {
        SplittableRandom random = new SplittableRandom(41);
        for (int i = 0; i < 400; i++) {
            HalfCar car = any(random);
            double seat = between(random, -0.2, 1.2) * car.wheelbase();
            double frequency = Math.pow(10, between(random, -0.7, 1.6));
            double speed = between(random, 3, 60);
            double w = 2 * Math.PI * frequency;
            Book book = new Book(car);
            Complex[][] left = new Complex[4][4];
            for (int r = 0; r < 4; r++) {
                for (int c = 0; c < 4; c++) {
                    left[r][c] =
                            new Complex(book.springs()[r][c] - w * w * book.mass()[r][c], w * book.dampers()[r][c]);
                }
            }
            Complex later = new Complex(0, -w * car.wheelbase() / speed).exp();
            Complex[] right = {
                Complex.ZERO,
                Complex.ZERO,
                new Complex(2 * car.front().tyreRate()),
                later.multiply(2 * car.rear().tyreRate())
            };
            Complex[] moved = new FieldLUDecomposition<>(new Array2DRowFieldMatrix<>(ComplexField.getInstance(), left))
                    .getSolver()
                    .solve(new ArrayFieldVector<>(right))
                    .toArray();
            double expected =
                    moved[0].add(moved[1].multiply(car.toFront() - seat)).abs() * w * w;
            assertThat(response(car, seat, frequency, speed))
                    .as("car %d", i)
                    .isCloseTo(expected, within(1e-9 * expected));
        }
    }

    @Test
    void theResponseIsTheAmplitudeOfTheMotionInTime() {
        SplittableRandom random = new SplittableRandom(42);
        for (int i = 0; i < 12; i++) {
            HalfCar car = any(random);
            double seat = between(random, 0, 1) * car.wheelbase();
            double frequency = between(random, 0.7, 12);
            double speed = between(random, 8, 40);
            double w = 2 * Math.PI * frequency;
            double lag = car.wheelbase() / speed;
            Book book = new Book(car);
            double[][] m = book.mass();
            double[][] c = book.dampers();
            double[][] k = book.springs();
            OrdinaryDifferentialEquation motion = new OrdinaryDifferentialEquation() {
                @Override
                public int getDimension() {
                    return 8;
                }

                @Override
                public double[] computeDerivatives(double t, double[] y) {
                    double[] slope = new double[8];
                    double[] road = {
                        0,
                        0,
                        2 * car.front().tyreRate() * Math.sin(w * t),
                        2 * car.rear().tyreRate() * Math.sin(w * (t - lag))
                    };
                    for (int r = 0; r < 4; r++) {
                        double force = road[r];
                        for (int j = 0; j < 4; j++) {
                            force -= k[r][j] * y[j] + c[r][j] * y[4 + j];
                        }
                        slope[r] = y[4 + r];
                        slope[4 + r] = force / m[r][r];
                    }
                    return slope;
                }
            };
            DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, 0.1, 1e-11, 1e-11);
            double settled = 20; // s, until nothing is left of the beginning
            double[] then = integrator
                    .integrate(motion, new ODEState(0, new double[8]), settled)
                    .getPrimaryState();
            double[] later = integrator
                    .integrate(motion, new ODEState(settled, then), settled + 0.25 / frequency)
                    .getPrimaryState();
            // A sine a quarter of its wave apart: the amplitude is the root of the sum of both squares.
            double amplitude = Math.hypot(book.seat(then[0], then[1], seat), book.seat(later[0], later[1], seat));
            double expected = amplitude * w * w;
            assertThat(response(car, seat, frequency, speed))
                    .as("car %d", i)
                    .isCloseTo(expected, within(1e-5 * expected));
        }
    }

    @Test
    void aBodyWhoseEndsMoveByThemselvesIsTwoQuarterCars() {
        SplittableRandom random = new SplittableRandom(43);
        for (int i = 0; i < 50; i++) {
            HalfCar car = any(random);
            HalfCar apart = withInertia(car, car.mass() * car.toFront() * car.toRear());
            assertThat(apart.massBetween()).isCloseTo(0, within(1e-9));
            assertThat(apart.massOver(End.FRONT)).isCloseTo(car.front().sprungMass(), within(1e-9));
            assertThat(apart.massOver(End.REAR)).isCloseTo(car.rear().sprungMass(), within(1e-9));
            double speed = between(random, 5, 50);
            double front = RoadResponse.of(apart.front(), RoadClass.B, speed).weightedAcceleration();
            double rear = RoadResponse.of(apart.rear(), RoadClass.B, speed).weightedAcceleration();
            assertThat(SeatRide.of(apart, 0, RoadClass.B, speed).weightedAcceleration())
                    .as("car %d", i)
                    .isCloseTo(front, within(1e-6 * front));
            assertThat(SeatRide.of(apart, apart.wheelbase(), RoadClass.B, speed).weightedAcceleration())
                    .isCloseTo(rear, within(1e-6 * rear));
        }
    }

    @Test
    void equalEndsOverTheSameHeightAtOnceHeaveAndDoNotPitch() {
        QuarterCar end = new QuarterCar(300, 40, 20e3, 200e3, 1500);
        HalfCar car = new HalfCar(1200, 1500, 1.3, 1.3, end, end);
        Transfer quarter = new Transfer(end);
        for (double frequency = 0.3; frequency < 30; frequency *= 1.3) {
            quarter.at(frequency);
            for (double seat = -0.5; seat < 3; seat += 0.5) {
                SeatTransfer transfer = new SeatTransfer(car, seat);
                transfer.at(2 * Math.PI * frequency, 1, 0);
                assertThat(Math.sqrt(transfer.accelerationSquared))
                        .isCloseTo(quarter.bodyAcceleration(), within(1e-9 * quarter.bodyAcceleration()));
            }
            // Half a wave later they only pitch, and the middle stands still.
            SeatTransfer middle = new SeatTransfer(car, 1.3);
            middle.at(2 * Math.PI * frequency, -1, 0);
            assertThat(Math.sqrt(middle.accelerationSquared)).isLessThan(1e-9 * quarter.bodyAcceleration());
        }
    }

    @Test
    void theSpectrumIsMetByAFarFinerGridOnAnyCarAndSpeed() {
        SplittableRandom random = new SplittableRandom(44);
        for (int i = 0; i < 40; i++) {
            HalfCar car = any(random);
            if (i % 2 == 0) { // hardly damped
                double part = Math.pow(10, -3 * random.nextDouble());
                car = new HalfCar(
                        car.mass(),
                        car.inertia(),
                        car.toFront(),
                        car.toRear(),
                        car.front().damped(part * car.front().dampingRate()),
                        car.rear().damped(part * car.rear().dampingRate()));
            }
            double seat = between(random, -0.2, 1.2) * car.wheelbase();
            double speed = between(random, 3, 60);
            SeatTransfer transfer = new SeatTransfer(car, seat);
            double lag = car.wheelbase() / speed;
            int parts = 200_000;
            double low = Math.log(RoadClass.C.lowest() * speed);
            double step = (Math.log(RoadClass.C.highest() * speed) - low) / parts;
            double sum = 0;
            for (int k = 0; k < parts; k++) {
                double f = Math.exp(low + (k + 0.5) * step);
                double w = 2 * Math.PI * f;
                transfer.at(w, Math.cos(w * lag), Math.sin(w * lag));
                sum += step
                        * f
                        * RoadClass.C.density(f / speed)
                        / speed
                        * transfer.accelerationSquared
                        * Weighting.WK.squared(f);
            }
            double expected = Math.sqrt(sum);
            assertThat(SeatRide.of(car, seat, RoadClass.C, speed).weightedAcceleration())
                    .as("car %d", i)
                    .isCloseTo(expected, within(1e-6 * expected));
        }
    }

    @Test
    void theSpectrumOfAMeasuredRoadIsMetBetweenItsLines() {
        SplittableRandom random = new SplittableRandom(47);
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < 257; i++) {
            heights.add(0.004 * random.nextDouble());
        }
        MeasuredRoad road =
                MeasuredRoad.of(0.4, heights); // lines of 1/25.6 m, between which the slopes' density is straight
        for (int i = 0; i < 10; i++) {
            HalfCar car = any(random);
            double seat = between(random, -0.2, 1.2) * car.wheelbase();
            double speed = between(random, 5, 50);
            SeatTransfer transfer = new SeatTransfer(car, seat);
            double lag = car.wheelbase() / speed;
            int lines = road.corners().length + 1;
            int parts = 1000;
            double step = speed / 25.6 / parts;
            double sum = 0;
            for (int k = 0; k < lines * parts; k++) {
                double f = speed / 25.6 + (k + 0.5) * step;
                double w = 2 * Math.PI * f;
                transfer.at(w, Math.cos(w * lag), Math.sin(w * lag));
                sum += step * road.density(f / speed) / speed * transfer.accelerationSquared * Weighting.WK.squared(f);
            }
            double expected = Math.sqrt(sum);
            assertThat(SeatRide.of(car, seat, road, speed).weightedAcceleration())
                    .as("car %d", i)
                    .isCloseTo(expected, within(2e-6 * expected));
        }
    }

    @Test
    void thePolesAreEigenvaluesOfTheCarInTime() {
        SplittableRandom random = new SplittableRandom(45);
        int swinging = 0;
        for (int i = 0; i < 200; i++) {
            HalfCar car = any(random);
            Book book = new Book(car);
            RealMatrix motion = new Array2DRowRealMatrix(8, 8);
            for (int r = 0; r < 4; r++) {
                motion.setEntry(r, 4 + r, 1);
                for (int c = 0; c < 4; c++) {
                    motion.setEntry(4 + r, c, -book.springs()[r][c] / book.mass()[r][r]);
                    motion.setEntry(4 + r, 4 + c, -book.dampers()[r][c] / book.mass()[r][r]);
                }
            }
            EigenDecomposition found = new EigenDecomposition(motion);
            HalfCarPoles poles =
                    new HalfCarPoles(car, car.front().modes(), car.rear().modes());
            swinging += poles.count;
            for (int k = 0; k < poles.count; k++) {
                double w = 2 * Math.PI * poles.frequency[k];
                double decay = 2 * Math.PI * poles.away[k];
                double nearest = IntStream.range(0, 8)
                        .mapToDouble(
                                j -> Math.hypot(found.getRealEigenvalue(j) + decay, found.getImagEigenvalue(j) - w))
                        .min()
                        .orElseThrow();
                assertThat(nearest).as("car %d, pole %d", i, k).isLessThan(0.15 * decay);
            }
        }
        assertThat(swinging).isGreaterThan(700); // of 800: some creep back
    }

    @Test
    void aCarsSeatIsJudgedOnItsOwnHalfCar() {
        int judged = 0;
        for (long seed = 0; seed < 300; seed++) {
            Car car = RoadCars.damped(seed).settled();
            if (!(Ride.of(car, RoadClass.B, 20) instanceof Ride ride)
                    || ride.seat().isEmpty()) {
                continue;
            }
            SeatRide seat = ride.seat().get();
            assertThat(seat.behindFrontAxle())
                    .isEqualTo(car.seat().behindFrontAxle().orElse(0.55 * car.wheelbase()));
            assertThat(seat.car().wheelbase()).isCloseTo(car.wheelbase(), within(1e-12));
            assertThat(seat.car().toFront()).isEqualTo(car.sprung().behindFront());
            assertThat(seat.car().inertia()).isEqualTo(ride.pitchBounce().pitchInertia());
            assertThat(2 * (seat.car().front().sprungMass() + seat.car().rear().sprungMass()))
                    .isCloseTo(seat.car().mass(), within(1e-9 * seat.car().mass()));
            // Between its axles it is not worse off than above the worse one, but for the body's turning about both.
            assertThat(ride.seatComfort().orElseThrow()).isBetween(0.05, 3.0);
            assertThat(seat.on(RoadClass.A, 20)).isCloseTo(seat.weightedAcceleration() / 2, within(1e-12));
            assertThat(seat.on(RoadClass.C, 20)).isCloseTo(seat.weightedAcceleration() * 2, within(1e-12));
            judged++;
        }
        assertThat(judged).isGreaterThan(250);
    }

    @Test
    void aCarWithoutDamperOrSpeedIsRefused() {
        QuarterCar end = new QuarterCar(300, 40, 20e3, 200e3, 1500);
        HalfCar car = new HalfCar(1200, 1500, 1.3, 1.3, end, end.undamped());
        assertThatThrownBy(() -> SeatRide.of(car, 1, RoadClass.B, 22)).isInstanceOf(IllegalArgumentException.class);
        HalfCar damped = new HalfCar(1200, 1500, 1.3, 1.3, end, end);
        assertThatThrownBy(() -> SeatRide.of(damped, 1, RoadClass.B, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theResponseAllocatesNothing() {
        HalfCar car = any(new SplittableRandom(46));
        SeatTransfer transfer = new SeatTransfer(car, 1.2);
        double sum = 0;
        for (int i = 0; i < 20_000; i++) {
            transfer.at(1 + i * 1e-3, 0.6, 0.8);
            sum += transfer.accelerationSquared;
            sum += i % 20 == 0 ? SeatRide.of(car, 1.2, RoadClass.B, 20).weightedAcceleration() : 0;
        }
        com.sun.management.ThreadMXBean threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < 20_000; i++) {
            transfer.at(1 + i * 1e-3, 0.6, 0.8);
            sum += transfer.accelerationSquared;
        }
        long bytes = threads.getCurrentThreadAllocatedBytes() - before;
        assertThat(sum).isPositive();
        assertThat(bytes).isLessThan(20_000); // less than a byte per frequency; none but the counting's own
        before = threads.getCurrentThreadAllocatedBytes();
        sum += SeatRide.of(car, 1.2, RoadClass.B, 20).weightedAcceleration();
        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(2_000); // poles and response once
    }
}
