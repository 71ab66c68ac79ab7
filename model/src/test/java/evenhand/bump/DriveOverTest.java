package evenhand.bump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import evenhand.road.Profile;
import evenhand.road.RoadEvent;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A car over an event, straight ahead and in mid-corner. */
class DriveOverTest {
    private static final double SPEED = 50 / 3.6;
    private static final RoadEvent RIPPLES = radius -> Profile.ripples(0.006, 1.2, 8);

    private static BumpAnswer.InCorner inCorner(Car car, double pace, Direction direction) {
        return (BumpAnswer.InCorner) DriveOver.inCorner(car, RIPPLES, SPEED, pace * Weights.GRAVITY, direction);
    }

    @Test
    void aMirroredCarInTheOtherTurnDoesTheSameOnTheOtherSide() {
        int answered = 0;
        for (long seed = 0; seed < 40; seed++) {
            Car car = RoadCars.damped(seed).settled();
            BumpAnswer left = DriveOver.inCorner(car, RIPPLES, SPEED, 0.4 * Weights.GRAVITY, Direction.LEFT);
            BumpAnswer right =
                    DriveOver.inCorner(car.mirrored(), RIPPLES, SPEED, 0.4 * Weights.GRAVITY, Direction.RIGHT);
            assertThat(right.getClass()).isEqualTo(left.getClass());
            if (!(left instanceof BumpAnswer.InCorner one) || !(right instanceof BumpAnswer.InCorner other)) {
                continue;
            }
            answered++;
            for (Wheel wheel : Wheel.values()) {
                Bump here = one.wheels().get(wheel);
                Bump there = other.wheels().get(wheel.mirrored());
                assertThat(there.peakBodyAcceleration())
                        .as("seed %d, %s", seed, wheel)
                        .isCloseTo(here.peakBodyAcceleration(), within(1e-7 * here.peakBodyAcceleration()));
                assertThat(there.peakBumpTravel()).isCloseTo(here.peakBumpTravel(), within(1e-9));
                assertThat(there.peakDroopTravel()).isCloseTo(here.peakDroopTravel(), within(1e-9));
                assertThat(there.timeOffGround()).isCloseTo(here.timeOffGround(), within(1e-7));
                assertThat(there.gripLost().orElseThrow())
                        .isCloseTo(here.gripLost().orElseThrow(), within(1e-7));
            }
        }
        assertThat(answered).isGreaterThan(30);
    }

    @Test
    void aWheelBeginsWithTheLoadAndTravelThatTheTurnGivesIt() {
        int seen = 0;
        for (long seed = 0; seed < 200; seed++) {
            Car car = RoadCars.damped(seed).settled();
            TurnAnswer answer = SteadyTurn.answer(
                    car, List.of(0.5 * Weights.GRAVITY), 40, seed % 2 == 0 ? Direction.LEFT : Direction.RIGHT);
            if (!(answer instanceof TurnAnswer.Turns turn)
                    || !(turn.paces().get(0) instanceof PaceAnswer.InBalance balance)) {
                continue;
            }
            TurnRow row = balance.row();
            for (Wheel wheel : Wheel.values()) {
                seen++;
                WheelStation station = WheelStation.inTurn(car, wheel, row).orElseThrow();
                assertThat(Math.max(0, station.tyreHeld()))
                        .as("seed %d, %s", seed, wheel)
                        .isCloseTo(row.wheel(wheel).load(), within(1e-5));
                assertThat(station.travel() + station.wheelMore())
                        .isCloseTo(row.wheel(wheel).travel(), within(1e-12));
            }
        }
        assertThat(seen).isGreaterThan(600);
    }

    @Test
    void aGentleCornerTendsToTheAnswerStraightAhead() {
        RoadEvent slight = radius -> Profile.ripples(0.001, 1.2, 8); // touches nothing
        for (long seed = 0; seed < 30; seed++) {
            Car car = RoadCars.damped(seed).settled();
            if (car.weights() instanceof Weights.Corners) {
                continue; // its sides differ even straight ahead
            }
            BumpAnswer.Straight straight = (BumpAnswer.Straight) DriveOver.straight(car, slight, SPEED);
            BumpAnswer answer = DriveOver.inCorner(car, slight, SPEED, 0.002 * Weights.GRAVITY, Direction.LEFT);
            if (!(answer instanceof BumpAnswer.InCorner corner)) {
                continue;
            }
            for (End end : End.values()) {
                double mean = 0;
                for (Wheel wheel : Wheel.values()) {
                    if (wheel.end() == end) {
                        mean += corner.wheels().get(wheel).peakBodyAcceleration() / 2;
                    }
                }
                double expected = straight.axles().get(end).peakBodyAcceleration();
                assertThat(mean).as("seed %d, %s", seed, end).isCloseTo(expected, within(0.03 * expected));
            }
        }
    }

    @Test
    void changesOfLoadTakeGripFromATyreThatFeelsItsLoad() {
        for (long seed = 0; seed < 30; seed++) {
            Car car = RoadCars.damped(seed).settled();
            BumpAnswer answer = DriveOver.inCorner(car, RIPPLES, SPEED, 0.4 * Weights.GRAVITY, Direction.LEFT);
            if (answer instanceof BumpAnswer.InCorner corner) {
                for (Wheel wheel : Wheel.values()) {
                    OptionalDouble lost = corner.wheels().get(wheel).gripLost();
                    assertThat(lost.orElse(0)).as("seed %d, %s", seed, wheel).isBetween(-1e-6, 1.0);
                }
            }
        }
        BumpAnswer.InCorner smooth = (BumpAnswer.InCorner) DriveOver.inCorner(
                RoadCars.damped(2).settled(),
                radius -> Profile.ripples(0.001, 1.2, 8),
                SPEED,
                0.4 * Weights.GRAVITY,
                Direction.LEFT);
        BumpAnswer.InCorner rough = inCorner(RoadCars.damped(2).settled(), 0.4, Direction.LEFT);
        for (Wheel wheel : Wheel.values()) {
            assertThat(rough.wheels().get(wheel).gripLost().orElseThrow())
                    .isGreaterThan(smooth.wheels().get(wheel).gripLost().orElseThrow());
        }
    }

    @Test
    void gripLostCanBeWorkedOutAgainFromTheSeries() {
        Car car = RoadCars.damped(2).settled();
        BumpAnswer.InCorner corner = inCorner(car, 0.4, Direction.LEFT);
        assertThat(corner.row().speed()).isCloseTo(SPEED, within(1e-9));
        assertThat(corner.row().lateralAcceleration()).isCloseTo(0.4 * Weights.GRAVITY, within(1e-9));
        Wheel wheel = Wheel.FRONT_RIGHT;
        Bump bump = corner.wheels().get(wheel);
        SideGrip grip = SideGrip.atSlip(
                car.front().tyre().lateral(),
                corner.row().wheel(wheel).slip(),
                corner.row().wheel(wheel).lean());
        double loads = 0;
        double forces = 0;
        int rows = 0;
        for (int i = 0; bump.series().time().get(i) <= bump.gripTime(); i++) {
            double load = bump.series().tyreLoad().get(i);
            loads += load;
            forces += grip.at(load);
            rows++;
        }
        double again = 1 - forces / rows / grip.at(loads / rows);
        assertThat(again).isCloseTo(bump.gripLost().orElseThrow(), within(2e-4));
    }

    @Test
    void aPaceBeyondTheLimitIsSaidToBeSo() {
        Car car = RoadCars.damped(2).settled();
        assertThat(DriveOver.inCorner(car, RIPPLES, SPEED, 2 * Weights.GRAVITY, Direction.LEFT))
                .isEqualTo(new BumpAnswer.BeyondLimit(2 * Weights.GRAVITY));
    }

    @Test
    void aCarOnItsBumpStopAtRestStandsStillAndHasItTouched() {
        Car car = RoadCars.damped(1);
        for (long seed = 1; car.rear().stops().bump().isEmpty(); seed++) {
            car = RoadCars.damped(seed);
        }
        Car low = lowered(car, car.rear().stops().bump().orElseThrow().gap() + 0.005);
        WheelStation station = WheelStation.atRest(low, End.REAR).orElseThrow();
        assertThat(station.travel()).isCloseTo(0, within(1e-9));
        assertThat(station.suspension().force(station.travel()))
                .isCloseTo(station.bodyMass() * Weights.GRAVITY, within(1e-6));
        Bump bump = ((BumpAnswer.Straight) DriveOver.straight(low, radius -> Profile.step(0.002), SPEED))
                .axles()
                .get(End.REAR);
        assertThat(bump.stopTouched()).isTrue();
        assertThat(bump.room().toStop().orElseThrow()).isCloseTo(-0.005, within(1e-12));
    }

    private static Car lowered(Car car, double rear) {
        Axle axle = car.rear();
        Axle lowered;
        if (axle instanceof Axle.Live live) {
            lowered = new Axle.Live(
                    live.track(),
                    live.unsprung(),
                    live.lateralLocator(),
                    live.spring(),
                    live.bar(),
                    live.stops(),
                    live.damper(),
                    rear,
                    live.alignment(),
                    live.tyre(),
                    live.rollInertia());
        } else {
            Axle.Independent wheels = (Axle.Independent) axle;
            lowered = new Axle.Independent(
                    wheels.track(),
                    wheels.unsprung(),
                    wheels.rollCentre(),
                    wheels.spring(),
                    wheels.bar(),
                    wheels.stops(),
                    wheels.damper(),
                    rear,
                    wheels.rollCamber(),
                    wheels.alignment(),
                    wheels.tyre(),
                    wheels.rollInertia());
        }
        return new Car(
                        car.weights(),
                        car.wheelbase(),
                        car.cgHeight(),
                        car.chassisTorsionalStiffness(),
                        car.steering(),
                        car.air(),
                        car.rollingResistance(),
                        car.front(),
                        lowered,
                        car.drive(),
                        car.pitchInertia(),
                        car.seat())
                .settled();
    }

    /** Wheel and travel are recorded apart; that the body between them moves as its acceleration says holds them together. */
    @Test
    void theBodyMovesAsItsAccelerationSays() {
        for (long seed = 0; seed < 40; seed++) {
            Car car = RoadCars.damped(seed).settled();
            BumpAnswer answer = DriveOver.straight(car, radius -> Profile.hump(0.03, 2), SPEED);
            Series series = ((BumpAnswer.Straight) answer).axles().get(End.REAR).series();
            double step = series.time().get(1);
            double moved = 0;
            double speed = 0;
            for (int i = 1; i < 600; i++) {
                // the area below straight lines between the rows, twice
                double before = series.bodyAcceleration().get(i - 1);
                double now = series.bodyAcceleration().get(i);
                moved += speed * step + step * step * (2 * before + now) / 6;
                speed += step * (before + now) / 2;
                double body = series.wheel().get(i)
                        - (series.travel().get(i) - series.travel().get(0));
                assertThat(body).as("car %d, row %d", seed, i).isCloseTo(moved, within(2e-4));
            }
            assertThat(series.wheel().stream()
                            .mapToDouble(height -> height)
                            .max()
                            .orElseThrow())
                    .isBetween(0.01, 0.09);
        }
    }

    @Test
    void anAxleLosesWhatLiesBetweenTheLossesOfItsWheels() {
        int met = 0;
        for (long seed = 0; seed < 40; seed++) {
            if (DriveOver.inCorner(
                            RoadCars.damped(seed).settled(), RIPPLES, SPEED, 0.4 * Weights.GRAVITY, Direction.LEFT)
                    instanceof BumpAnswer.InCorner corner) {
                double left = corner.wheels().get(Wheel.FRONT_LEFT).gripLost().orElseThrow();
                double right = corner.wheels().get(Wheel.FRONT_RIGHT).gripLost().orElseThrow();
                double axle = corner.gripLost(End.FRONT).orElseThrow();
                assertThat(axle).isBetween(Math.min(left, right), Math.max(left, right));
                // the outer wheel carries more of the side force, and so has more to say
                assertThat(Math.abs(axle - right)).isLessThanOrEqualTo(Math.abs(axle - left) + 1e-12);
                met++;
            }
        }
        assertThat(met).isGreaterThan(30);
    }
}
