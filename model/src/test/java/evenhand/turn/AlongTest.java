package evenhand.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Air;
import evenhand.car.BrakeForces;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import evenhand.straight.BrakedCars;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The moment at which a turning car's speed begins to change: its rows are put together again from what the wheels do. */
class AlongTest {
    private static final double G = Weights.GRAVITY;
    private static final double RADIUS = 40;
    private static final List<Double> PACES = List.of(0.2 * G, 0.4 * G);

    private record Asked(Car car, Along along, TurnRow row, String which) {}

    /** Rows of random cars, with swing arms and brakes of every kind, some on links by points. */
    private static List<Asked> rows() {
        List<Asked> rows = new ArrayList<>();
        for (long seed = 0; seed < 160; seed++) {
            Optional<Car> car = seed % 4 == 3 ? BrakedCars.onLinks(seed) : Optional.of(BrakedCars.any(seed));
            if (car.isEmpty()) {
                continue;
            }
            Along along = switch ((int) (seed / 4 % 3)) {
                case 0 -> new Along(-0.2 * G, Along.By.ENGINE);
                case 1 -> new Along(0.12 * G, Along.By.ENGINE);
                default -> new Along(-0.35 * G, Along.By.BRAKES);
            };
            if (SteadyTurn.answer(car.get(), PACES, RADIUS, Direction.LEFT, along) instanceof TurnAnswer.Turns turns) {
                for (PaceAnswer pace : turns.paces()) {
                    if (pace instanceof PaceAnswer.InBalance there) {
                        rows.add(new Asked(car.get(), along, there.row(), "seed " + seed + ", " + along));
                    }
                }
            }
        }
        assertThat(rows).hasSizeGreaterThan(150);
        return rows;
    }

    private static final List<Asked> ROWS = rows();

    @Test
    void forcesAlongAndAcrossGiveBothAccelerations() {
        for (Asked asked : ROWS) {
            TurnRow row = asked.row();
            double mass = asked.car().weights().mass();
            double forward = 0;
            double sideways = 0;
            for (WheelState wheel : row.wheels()) {
                forward += wheel.longitudinalForce();
                sideways += wheel.lateralForce();
            }
            double cos = Math.cos(row.sideslip());
            double sin = Math.sin(row.sideslip());
            double along = asked.along().acceleration();
            double ax = along * cos - row.lateralAcceleration() * sin;
            double ay = row.lateralAcceleration() * cos + along * sin;
            assertThat(forward - row.airDrag() * cos).as(asked.which()).isCloseTo(mass * ax, within(1e-6 * mass * G));
            assertThat(sideways - row.airDrag() * sin).as(asked.which()).isCloseTo(mass * ay, within(1e-6 * mass * G));
        }
    }

    @Test
    void axleLoadsAreThoseOfMomentsAboutTheGround() {
        for (Asked asked : ROWS) {
            Car car = asked.car();
            TurnRow row = asked.row();
            double cos = Math.cos(row.sideslip());
            double ax = asked.along().acceleration() * cos - row.lateralAcceleration() * Math.sin(row.sideslip());
            double transfer = (car.weights().mass() * ax * car.cgHeight()
                            + row.airDrag() * cos * car.air().dragHeight().orElse(car.cgHeight()))
                    / car.wheelbase();
            double pressure = Air.DENSITY / 2 * row.speed() * row.speed();
            double front = row.wheels().get(0).load() + row.wheels().get(1).load();
            assertThat(front)
                    .as(asked.which())
                    .isCloseTo(
                            car.axleLoad(End.FRONT)
                                    - transfer
                                    - pressure * car.air().frontLiftArea(),
                            within(1e-6 * car.weights().mass() * G));
        }
    }

    @Test
    void brakesShareTheirForceAsThePartsDoAtTheRearAxlesTravel() {
        int held = 0;
        int asked = 0;
        for (Asked row : ROWS) {
            assertThat(braking(row.row()) > 0)
                    .as(row.which())
                    .isEqualTo(row.along().by() == Along.By.BRAKES);
            if (row.along().by() != Along.By.BRAKES) {
                continue;
            }
            asked++;
            Car car = row.car();
            BrakeForces forces = BrakeForces.of(car);
            double travel = (row.row().wheel(Wheel.REAR_LEFT).travel()
                            + row.row().wheel(Wheel.REAR_RIGHT).travel())
                    / 2;
            forces.reach(braking(row.row()), travel);
            held += forces.isHeld() ? 1 : 0;
            // Along its own plane a front wheel that nothing drives has its half of the brakes and its rolling
            // resistance.
            if (car.drive().axle() == End.REAR) {
                WheelState wheel = row.row().wheel(Wheel.FRONT_LEFT);
                double steer = wheel.steer();
                double along = wheel.longitudinalForce() * Math.cos(steer) + wheel.lateralForce() * Math.sin(steer);
                assertThat(along)
                        .as(row.which())
                        .isCloseTo(-forces.front / 2 - car.rollingResistance() * wheel.load(), within(1e-4));
            }
        }
        assertThat(asked).isGreaterThan(20);
        assertThat(held).isGreaterThan(2);
    }

    private static double braking(TurnRow row) {
        return row.changing().orElseThrow().brakeForce();
    }

    @Test
    void withoutAChangeOfSpeedItIsTheSteadyTurn() {
        for (long seed = 0; seed < 40; seed++) {
            Car car = seed % 2 == 0 ? RoadCars.any(seed).settled() : BrakedCars.any(seed);
            assertThat(SteadyTurn.answer(car, PACES, RADIUS, Direction.LEFT, new Along(0, Along.By.ENGINE)))
                    .isEqualTo(SteadyTurn.answer(car, PACES, RADIUS, Direction.LEFT));
        }
    }

    @Test
    void aMirroredCarDoesTheSameTheOtherWayRound() {
        Along braking = new Along(-0.3 * G, Along.By.BRAKES);
        for (long seed = 0; seed < 30; seed++) {
            Car car = BrakedCars.any(seed);
            TurnAnswer left = SteadyTurn.answer(car, PACES, RADIUS, Direction.LEFT, braking);
            TurnAnswer right = SteadyTurn.answer(car.mirrored(), PACES, RADIUS, Direction.RIGHT, braking);
            assertThat(right).as("seed %d", seed).isEqualTo(left.mirrored());
        }
    }

    /** A level car that lifts off: the load goes forwards, so that the front has more grip and needs less steer than it had. */
    @Test
    void frontUsesLessOfItsGripAsTheLoadGoesForwards() {
        int fell = 0;
        int asked = 0;
        for (long seed = 0; seed < 80; seed++) {
            Car car = RoadCars.plain(seed);
            if (car.drive().axle() == End.FRONT) {
                continue;
            }
            Optional<TurnRow> steady = row(SteadyTurn.answer(car, PACES, RADIUS, Direction.LEFT));
            Optional<TurnRow> lifted =
                    row(SteadyTurn.answer(car, PACES, RADIUS, Direction.LEFT, new Along(-0.15 * G, Along.By.ENGINE)));
            if (steady.isPresent() && lifted.isPresent()) {
                asked++;
                fell += lifted.get().gripBalance() < steady.get().gripBalance() ? 1 : 0;
            }
        }
        assertThat(asked).isGreaterThan(20);
        assertThat(fell).isEqualTo(asked);
    }

    @Test
    void theSteadyTurnStandsBeside() {
        Car car = RoadCars.plain(3);
        Along lifting = new Along(-0.1 * G, Along.By.ENGINE);
        TurnAnswer.Turns turns = (TurnAnswer.Turns) SteadyTurn.answer(car, PACES, RADIUS, Direction.RIGHT, lifting);
        TurnAnswer.Turns steady = (TurnAnswer.Turns) SteadyTurn.answer(car, PACES, RADIUS, Direction.RIGHT);
        assertThat(turns.steadyLimit().orElseThrow().lateralAcceleration())
                .isEqualTo(steady.limit().lateralAcceleration());
        for (int i = 0; i < 2; i++) {
            TurnRow beside =
                    ((PaceAnswer.InBalance) turns.paces().get(i)).steady().orElseThrow();
            assertThat(beside.steer())
                    .isCloseTo(
                            ((PaceAnswer.InBalance) steady.paces().get(i)).row().steer(), within(1e-10));
            assertThat(beside.changing()).isEmpty();
        }
        assertThat(steady.steadyLimit()).isEmpty();
    }

    @Test
    void whereCoastingSlowsMoreThereIsNothingToBrake() {
        Car car = BrakedCars.any(2);
        TurnAnswer none = SteadyTurn.answer(car, PACES, RADIUS, Direction.LEFT, new Along(-0.01 * G, Along.By.BRAKES));
        assertThat(none).isInstanceOf(TurnAnswer.NoTurn.class);
        assertThat(((TurnAnswer.NoTurn) none).text()).matches("coasting alone slows it by 0\\.0[1-3] g");
    }

    private static Optional<TurnRow> row(TurnAnswer answer) {
        return answer instanceof TurnAnswer.Turns turns && turns.paces().get(1) instanceof PaceAnswer.InBalance there
                ? Optional.of(there.row())
                : Optional.empty();
    }
}
