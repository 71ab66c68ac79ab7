package evenhand.bump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.road.Piece;
import evenhand.road.Profile;
import evenhand.suspension.DamperLines;
import evenhand.suspension.ForceLines;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What a half car keeps on its way over a road, and how it is seen. */
class HalfCarOnItsWayTest {
    private static final double SPEED = 14;

    private static WheelStation undamped(WheelStation station) {
        return new WheelStation(
                station.bodyMass(),
                station.wheelMass(),
                station.suspension(),
                DamperLines.atWheel(ForceLines.none()),
                station.tyreRate(),
                station.tyreHeld(),
                station.travel(),
                0,
                station.touches(),
                station.metal(),
                station.droopEnd(),
                station.grip());
    }

    private static Car apart(Car car) {
        Car.Sprung sprung = car.sprung();
        double inertia = sprung.mass() * sprung.behindFront() * (car.wheelbase() - sprung.behindFront());
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
                OptionalDouble.of(inertia),
                car.seat());
    }

    @Test
    void withoutDampersNothingIsLostBehindTheEvent() {
        int lifted = 0;
        for (long seed = 0; seed < 6; seed++) {
            Car car = RoadCars.damped(seed).settled();
            WheelStation front = undamped(Stations.random(seed, End.FRONT));
            WheelStation rear = undamped(Stations.random(seed, End.REAR));
            List<BodyEnd[]> cars = List.of(
                    new BodyEnd[] {new OnWheels(front), new OnWheels(rear)},
                    new BodyEnd[] {new OnRideRate(36e3, 0), new OnRideRate(41e3, 0)});
            for (BodyEnd[] ends : cars) {
                HalfCarInTime half = new HalfCarInTime(car, ends[0], ends[1], () -> {});
                Profile road = Profile.ramp(0.06, 1); // high enough for a wheel to leave the ground
                assertThat(half.over(road, road, SPEED)).isTrue();
                double energy = half.energy();
                double least = energy;
                double most = energy;
                for (int i = 1; i <= 40; i++) {
                    assertThat(half.onTo(half.time() + 0.023)).isTrue();
                    least = Math.min(least, half.energy());
                    most = Math.max(most, half.energy());
                }
                assertThat(energy).as("seed %d", seed).isGreaterThan(5);
                assertThat(most - least).as("seed %d", seed).isLessThan(2e-5 * energy);
            }
            Crossing alone = new Crossing(front, 1e-9, 1e-3);
            alone.drive(Profile.ramp(0.06, 1), SPEED);
            lifted += alone.witness.offGround > 0 ? 1 : 0;
        }
        assertThat(lifted).as("wheels that left the ground").isPositive();
    }

    @Test
    void endsThatMoveByThemselvesHaveTheEnergyOfTheirFourWheels() {
        for (long seed = 0; seed < 6; seed++) {
            Car car = apart(RoadCars.damped(seed).settled());
            WheelStation front = Stations.random(seed, End.FRONT);
            WheelStation rear = Stations.random(seed, End.REAR);
            double end = 4.5; // m that the front wheels have gone
            Profile underFront = ramp(end);
            Profile underRear = ramp(end - car.wheelbase());
            HalfCarInTime half = new HalfCarInTime(car, new OnWheels(front), new OnWheels(rear), () -> {});
            assertThat(half.over(underFront, underRear, SPEED)).isTrue();
            Crossing atFront = new Crossing(front, 1e-11, 1);
            Crossing atRear = new Crossing(rear, 1e-11, 1);
            assertThat(atFront.overEvent(underFront, SPEED)).isTrue();
            assertThat(atRear.overEvent(underRear, SPEED)).isTrue();
            // on the level behind it, which is the road that rest is counted from
            double expected = 2 * (atFront.step.energyAboveRest() + atRear.step.energyAboveRest());
            assertThat(half.energy()).as("seed %d", seed).isCloseTo(expected, within(1e-4 * expected));
        }
    }

    /** A ramp of 5 cm over half a metre and the level behind it up to a place. */
    private static Profile ramp(double end) {
        return new Profile(List.of(new Piece.Line(0, 0.5, 0, 0.1), new Piece.Line(0.5, end, 0.05, 0)), 0.05);
    }

    @Test
    void whoeverWaitsIsAskedAgainAndAgain() {
        Car car = RoadCars.damped(2).settled();
        AtomicInteger asked = new AtomicInteger();
        HalfCarInTime half = new HalfCarInTime(
                car,
                new OnWheels(Stations.random(2, End.FRONT)),
                new OnWheels(Stations.random(2, End.REAR)),
                asked::incrementAndGet);
        Profile road = Profile.ripples(0.004, 1.2, 60);
        assertThat(half.over(road, road, SPEED)).isTrue();
        assertThat(asked.get()).isBetween(3, 1000);

        AtomicInteger alone = new AtomicInteger();
        Crossing crossing = new Crossing(Stations.random(2, End.FRONT), 1e-12, 1, alone::incrementAndGet);
        assertThat(crossing.overEvent(road, SPEED)).isTrue();
        assertThat(crossing.steps()).isGreaterThan(5000);
        assertThat(alone.get()).isEqualTo((crossing.steps() + 4095) / 4096);

        Runnable enough = () -> {
            throw new CancellationException("enough");
        };
        assertThatThrownBy(() -> DriveOver.straight(car, radius -> road, SPEED, enough))
                .hasMessage("enough");
    }

    @Test
    void aCarWithoutDampersIsWaitedForTenSecondsAndLeftMoving() {
        Car car = RoadCars.any(4).settled();
        double length = 2;
        BumpAnswer.Straight answer =
                (BumpAnswer.Straight) DriveOver.straight(car, radius -> Profile.hump(0.01, length), SPEED);
        List<Double> times = answer.seat().series().time();
        double over = (length + car.wheelbase()) / SPEED;
        assertThat(answer.seat().settled()).isFalse();
        assertThat(times.get(times.size() - 1)).isBetween(over + 10.48, over + 10.62);
        Series wheel = answer.axles().get(End.FRONT).series();
        assertThat(answer.axles().get(End.FRONT).settled()).isFalse();
        assertThat(wheel.time().get(wheel.time().size() - 1)).isBetween(length / SPEED + 10.49, length / SPEED + 10.54);
    }

    @Test
    void aHumpAsLongAsTheWheelbaseIsDrivenOverWhateverItsRounding() {
        Car car = RoadCars.damped(3).settled();
        double length = car.wheelbase();
        double exact = overHump(car, length);
        for (double rounding : new double[] {-1e-11, -1e-15, 1e-15, 1e-11}) {
            assertThat(overHump(car, length * (1 + rounding))).isCloseTo(exact, within(1e-7 * exact));
        }
    }

    private static double overHump(Car car, double length) {
        BumpAnswer answer = DriveOver.straight(car, radius -> Profile.hump(0.04, length), SPEED);
        return ((BumpAnswer.Straight) answer).seat().peakAcceleration();
    }

    @Test
    void aStepIsSeenAtEveryMultipleOfTheTimeAskedFor() {
        double every = 4e-3;
        List<Double> times = new ArrayList<>();
        HalfCarInTime half = new HalfCarInTime(
                RoadCars.damped(3).settled(), new OnRideRate(36e3, 3e3), new OnRideRate(41e3, 3e3), () -> {});
        half.watch(
                new HalfCarInTime.Watch() {
                    @Override
                    public void begin() {
                        // Steps are not told apart here.
                    }

                    @Override
                    public void see(double time, double front, double rear, double frontPull, double rearPull) {
                        times.add(time);
                    }
                },
                every);
        Profile road = Profile.hump(0.03, 3);
        assertThat(half.over(road, road, SPEED)).isTrue();
        assertThat(times.get(0)).isZero();
        assertThat(times.get(times.size() - 1)).isCloseTo(half.time(), within(1e-9));
        for (int i = 1; i < times.size(); i++) {
            assertThat(times.get(i) - times.get(i - 1)).isBetween(0.0, 1.051 * every);
        }
        int multiples = (int) Math.floor(half.time() / every);
        for (int i = 0; i <= multiples; i++) {
            double multiple = i * every;
            double nearest = times.stream()
                    .mapToDouble(time -> Math.abs(time - multiple))
                    .min()
                    .orElseThrow();
            assertThat(nearest).as("row %d", i).isLessThan(0.051 * every);
        }
    }
}
