package evenhand.bump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.InertiaEstimate;
import evenhand.car.RoadCars;
import evenhand.car.Seat;
import evenhand.ride.HalfCar;
import evenhand.ride.QuarterCar;
import evenhand.ride.SeatTransfer;
import evenhand.road.Profile;
import evenhand.road.RandomRoad;
import evenhand.road.RoadEvent;
import evenhand.suspension.DamperLines;
import evenhand.suspension.StraightForce;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The half car over a road in time, against its parts, its spectrum and the exponential of a matrix. */
class HalfCarInTimeTest {
    private static final List<RoadEvent> EVENTS = List.of(
            radius -> Profile.hump(0.05, 3.7),
            radius -> Profile.kerb(0.04, radius),
            radius -> Profile.step(0.02),
            radius -> Profile.pothole(0.04, 0.5, radius),
            radius -> Profile.ripples(0.006, 1.2, 8),
            radius -> RandomRoad.of(256e-6, 3, 20));

    private static Car with(Car car, OptionalDouble pitchInertia, double seat) {
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                car.rollingResistance(),
                car.front(),
                car.rear(),
                car.drive(),
                pitchInertia,
                new Seat(OptionalDouble.of(seat)));
    }

    /** Ends that move by themselves: I = ms·as·bs. */
    private static Car apart(Car car, double seat) {
        Car.Sprung sprung = car.sprung();
        double inertia = sprung.mass() * sprung.behindFront() * (car.wheelbase() - sprung.behindFront());
        return with(car, OptionalDouble.of(inertia), seat);
    }

    @Test
    void aSeatAboveAnAxleWhoseEndMovesByItselfDoesWhatThatAxlesWheelSays() {
        int followed = 0;
        for (long seed = 0; seed < 18; seed++) {
            RoadEvent event = EVENTS.get((int) seed % EVENTS.size());
            Car car = RoadCars.damped(seed).settled();
            int lag = (int) (300 - 10 * seed); // rows of the record that the rear comes later
            double speed = car.wheelbase() / (lag * Series.FINEST);
            for (End end : End.values()) {
                double place = end == End.FRONT ? 0 : car.wheelbase();
                BumpAnswer answer = DriveOver.straight(apart(car, place), event, speed);
                if (!(answer instanceof BumpAnswer.Straight straight)) {
                    continue;
                }
                followed++;
                Bump wheel = straight.axles().get(end);
                double peak = wheel.peakBodyAcceleration();
                assertThat(straight.seat().peakAcceleration())
                        .as("seed %d, %s", seed, end)
                        .isCloseTo(peak, within(2e-3 * peak));
                // The same in time, the rear one later by L/V.
                int later = end == End.FRONT ? 0 : lag;
                List<Double> seat = straight.seat().series().acceleration();
                List<Double> body = wheel.series().bodyAcceleration();
                double off = 0;
                for (int i = 0; i < Math.min(400, body.size()); i++) {
                    off = Math.max(off, Math.abs(seat.get(i + later) - body.get(i)));
                }
                assertThat(off).as("seed %d, %s, in time", seed, end).isLessThan(5e-3 * peak);
            }
        }
        assertThat(followed).isGreaterThan(30);
    }

    private static WheelStation linear(QuarterCar wheel) {
        double load = (wheel.sprungMass() + wheel.unsprungMass()) * 9.80665;
        double carried = wheel.sprungMass() * 9.80665;
        return new WheelStation(
                wheel.sprungMass(),
                wheel.unsprungMass(),
                StraightForce.of(carried, wheel.wheelRate()),
                DamperLines.atWheel(StraightForce.of(0, wheel.dampingRate())),
                wheel.tyreRate(),
                load,
                0,
                0,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY,
                SideGrip.greatest(RoadCars.any(1).front().tyre().lateral()));
    }

    /** A sine of the road, long enough that nothing is left of its beginning: the two ways of solving the same car. */
    @Test
    void smallRipplesMoveTheSeatAsTheSpectrumSays() {
        SplittableRandom random = new SplittableRandom(7);
        for (long seed = 0; seed < 10; seed++) {
            Car plain = RoadCars.damped(seed).settled();
            Car car = with(
                    plain,
                    OptionalDouble.of(InertiaEstimate.pitch(plain) * (0.7 + 0.6 * random.nextDouble())),
                    plain.wheelbase() * random.nextDouble());
            Car.Sprung sprung = car.sprung();
            QuarterCar front = quarter(random, sprung.mass() * sprung.frontShare() / 2);
            QuarterCar rear = quarter(random, sprung.mass() * sprung.rearShare() / 2);
            HalfCar half = new HalfCar(
                    sprung.mass(),
                    car.pitchInertia().orElseThrow(),
                    sprung.behindFront(),
                    car.wheelbase() - sprung.behindFront(),
                    front,
                    rear);
            double speed = 10 + 20 * random.nextDouble();
            double wavelength = speed / (1 + 9 * random.nextDouble());
            double amplitude = 1e-3;
            Profile road = Profile.ripples(amplitude, wavelength, (int) Math.ceil(8 * speed / wavelength));
            HalfCarInTime inTime =
                    new HalfCarInTime(car, new OnWheels(linear(front)), new OnWheels(linear(rear)), () -> {});
            double from = 6;
            Crest crest = new Crest();
            inTime.watch(
                    new HalfCarInTime.Watch() {
                        @Override
                        public void begin() {
                            crest.begin();
                        }

                        @Override
                        public void see(double time, double f, double r, double frontPull, double rearPull) {
                            if (time > from && time < 7.9) {
                                double part = car.seatBehindFront() / car.wheelbase();
                                crest.see(time, frontPull * (1 - part) + rearPull * part);
                            }
                        }
                    },
                    1e-3);
            assertThat(inTime.over(road, road, speed)).isTrue();
            SeatTransfer transfer = new SeatTransfer(half, car.seatBehindFront());
            double w = 2 * Math.PI * speed / wavelength;
            double lag = car.wheelbase() / speed;
            transfer.at(w, Math.cos(w * lag), Math.sin(w * lag));
            double expected = amplitude * Math.sqrt(transfer.accelerationSquared);
            assertThat(crest.greatest()).as("seed %d", seed).isCloseTo(expected, within(1e-3 * expected));
        }
    }

    private static QuarterCar quarter(SplittableRandom random, double mass) {
        double rate = mass * Math.pow(2 * Math.PI * (1 + random.nextDouble()), 2);
        double damping = 2 * (0.25 + 0.3 * random.nextDouble()) * Math.sqrt(rate * mass);
        return new QuarterCar(mass, 30 + 30 * random.nextDouble(), rate, 180e3 + 80e3 * random.nextDouble(), damping);
    }

    /**
     * The body on its ride rates over a hump is linear, and a hump is a piece of a sine: with the sine's two states it is one
     * linear system on each stretch, solved by the exponential of its matrix. Heave and pitch of the centre of gravity, nose
     * up.
     */
    @Test
    void theBodyOverAHumpIsTheExponentialOfItsMatrix() {
        double height = 0.02;
        double length = 1;
        for (long seed = 0; seed < 12; seed++) {
            Car car = RoadCars.damped(seed).settled();
            SplittableRandom random = new SplittableRandom(seed);
            double share = car.sprung().mass() / 4;
            BodyOverHump.Carried front = new BodyOverHump.Carried(
                    share * Math.pow(2 * Math.PI * (1 + random.nextDouble()), 2),
                    share * (2 + 6 * random.nextDouble()));
            BodyOverHump.Carried rear = new BodyOverHump.Carried(
                    share * Math.pow(2 * Math.PI * (1 + random.nextDouble()), 2),
                    share * (2 + 6 * random.nextDouble()));
            double speed = 6 + 30 * random.nextDouble();
            BodyOverHump.Passage found = BodyOverHump.over(car, front, rear, height, length, List.of(speed))
                    .get(0);

            double as = car.sprung().behindFront();
            double bs = car.wheelbase() - as;
            double mass = car.sprung().mass();
            double inertia = InertiaEstimate.pitch(car);
            double kf = 2 * front.rideRate();
            double kr = 2 * rear.rideRate();
            double cf = 2 * front.damping();
            double cr = 2 * rear.damping();
            double w = Math.PI * speed / length;
            double lag = car.wheelbase() / speed;
            double over = length / speed;
            List<Double> ends = new ArrayList<>(List.of(Math.min(over, lag), Math.max(over, lag), lag + over));
            double after = lag + over;
            ends.add(after + 2.5);
            double[] state =
                    new double[8]; // z, θ, z', θ', then sin and cos under the front, sin and cos under the rear
            double noseUp = Double.NEGATIVE_INFINITY;
            double noseDown = Double.POSITIVE_INFINITY;
            double top = Double.NEGATIVE_INFINITY;
            double bottom = Double.POSITIVE_INFINITY;
            double pitchOver = 0;
            double peak = 0;
            double time = 0;
            for (double end : ends) {
                double middle = (time + end) / 2;
                boolean onFront = middle < over;
                boolean onRear = middle > lag && middle < after;
                state[4] = onFront ? Math.sin(w * time) : 0;
                state[5] = onFront ? Math.cos(w * time) : 0;
                state[6] = onRear ? Math.sin(w * (time - lag)) : 0;
                state[7] = onRear ? Math.cos(w * (time - lag)) : 0;
                double[][] a = new double[8][8];
                a[0][2] = 1;
                a[1][3] = 1;
                double[][] forces = {
                    {-kf, -kf * as, -cf, -cf * as, kf * height, cf * height * w, 0, 0},
                    {-kr, kr * bs, -cr, cr * bs, 0, 0, kr * height, cr * height * w}
                };
                for (int j = 0; j < 8; j++) {
                    a[2][j] = (forces[0][j] + forces[1][j]) / mass;
                    a[3][j] = (as * forces[0][j] - bs * forces[1][j]) / inertia;
                }
                a[4][5] = w;
                a[5][4] = -w;
                a[6][7] = w;
                a[7][6] = -w;
                int steps = (int) Math.ceil((end - time) / 2e-4);
                if (steps == 0) {
                    continue;
                }
                RealMatrix matrix = MatrixUtils.createRealMatrix(a);
                RealMatrix step = MatrixUtils.matrixExponential(matrix.scalarMultiply((end - time) / steps));
                for (int i = 0; i <= steps; i++) {
                    peak = Math.max(peak, Math.abs(matrix.operate(state)[2]));
                    if (middle < after) {
                        pitchOver = Math.max(pitchOver, Math.abs(state[1]));
                    } else {
                        noseUp = Math.max(noseUp, state[1]);
                        noseDown = Math.min(noseDown, state[1]);
                        top = Math.max(top, state[0]);
                        bottom = Math.min(bottom, state[0]);
                    }
                    if (i < steps) {
                        state = step.operate(state);
                    }
                }
                time = end;
            }
            String which = "seed " + seed;
            assertThat(found.peakAcceleration()).as(which).isCloseTo(peak, within(1e-4 * peak));
            assertThat(found.pitchOver()).as(which).isCloseTo(pitchOver, within(2e-4 * pitchOver));
            assertThat(found.pitchAfter()).as(which).isCloseTo(noseUp - noseDown, within(5e-4 * (noseUp - noseDown)));
            assertThat(found.bounceAfter()).as(which).isCloseTo(top - bottom, within(5e-4 * (top - bottom)));
            assertThat(found.pitchOverBounce())
                    .isCloseTo(found.pitchAfter() * car.wheelbase() / 2 / found.bounceAfter(), within(1e-12));
        }
    }

    @Test
    void twiceTheHumpIsTwiceEverything() {
        Car car = RoadCars.damped(5).settled();
        BodyOverHump.Carried front = new BodyOverHump.Carried(20e3, 1400);
        BodyOverHump.Carried rear = new BodyOverHump.Carried(22e3, 1300);
        List<Double> speeds = List.of(5.0, 10.0, 20.0, 30.0);
        List<BodyOverHump.Passage> once = BodyOverHump.over(car, front, rear, 0.05, 0.5, speeds);
        List<BodyOverHump.Passage> twice = BodyOverHump.over(car, front, rear, 0.1, 0.5, speeds);
        assertThat(once).hasSize(4);
        for (int i = 0; i < speeds.size(); i++) {
            assertThat(twice.get(i).pitchAfter())
                    .isCloseTo(
                            2 * once.get(i).pitchAfter(),
                            within(1e-3 * once.get(i).pitchAfter()));
            assertThat(once.get(i).peakAcceleration()).isPositive();
        }
    }
}
