package evenhand.straight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Brakes;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a car answers when it brakes, against textbooks and against other routes; a failing case names its seed. */
class BrakingTest {
    private static final double G = Weights.GRAVITY;
    private static final Braking.Asked ASKED =
            new Braking.Asked(List.of(0.6 * G), List.of(0.3, 0.5, 0.8), List.of(100.0, 250.0, 900.0), 80 / 3.6, true);

    /** A car whose halves weigh alike, so that both wheels of an axle lock together. */
    private static Car sharing(long seed, double share) {
        return RoadCars.plain(seed).braked(new Brakes(OptionalDouble.of(share)));
    }

    /** The parabola of ideal forces: F_r = ½·[(W/h)·√(b² + 4hL·F_f/W) − (W·b/h + 2F_f)]; Wong 2008 ch. 3, Limpert, from memory. */
    @Test
    void idealForcesLieOnTheTextbookParabola() {
        for (long seed = 0; seed < 100; seed++) {
            Car car = BrakedCars.any(seed);
            double weight = car.weights().mass() * G;
            double h = car.cgHeight();
            double b = car.wheelbase() - car.cgBehindFront();
            for (Braking.Row row : new Braking(car).answer(ASKED).rows()) {
                double front = row.front().idealForce();
                double rear = 0.5
                        * (weight / h * Math.sqrt(b * b + 4 * h * car.wheelbase() * front / weight)
                                - (weight * b / h + 2 * front));
                assertThat(row.rear().idealForce())
                        .as("seed %d at %s g", seed, row.deceleration() / G)
                        .isCloseTo(rear, within(1e-9 * weight));
            }
        }
    }

    /** Gillespie 1992 ch. 3; Wong 2008 ch. 3, from memory: front lock μb/(βL − μh), rear lock μa/((1 − β)L + μh). */
    @Test
    void aGivenShareLocksAndChangesPlacesWhereTheTextbookSays() {
        int frontFirst = 0;
        for (long seed = 0; seed < 120; seed++) {
            double share = 0.5 + 0.35 * (seed % 12) / 11;
            Car car = sharing(seed, share);
            double length = car.wheelbase();
            double h = car.cgHeight();
            double a = car.cgBehindFront();
            double b = length - a;
            Braking.Answer answer = new Braking(car).answer(ASKED);
            double equal = (share * length - b) / h;
            if (equal > 0.01 && equal < 1.49) {
                assertThat(answer.crossings()).as("seed %d", seed).hasSize(1);
                assertThat(answer.crossings().get(0).deceleration() / G).isCloseTo(equal, within(1e-9));
                assertThat(answer.rearLocksAbove().orElseThrow() / G).isCloseTo(equal, within(1e-9));
                assertThat(answer.crossings().get(0).rearAfter()).isTrue();
            }
            for (Braking.Lock lock : answer.locks()) {
                if (lock.friction().isEmpty() || lock.locks().isEmpty()) {
                    continue;
                }
                double mu = lock.friction().getAsDouble();
                double front = mu * b / (share * length - mu * h);
                double rear = mu * a / ((1 - share) * length + mu * h);
                boolean first = front > 0 && front < rear;
                frontFirst += first ? 1 : 0;
                assertThat(lock.locks().get().axle())
                        .as("seed %d at %s", seed, mu)
                        .isEqualTo(first ? End.FRONT : End.REAR);
                assertThat(lock.locks().get().deceleration() / G).isCloseTo(first ? front : rear, within(1e-9));
                assertThat(lock.efficiency().orElseThrow()).isCloseTo((first ? front : rear) / mu, within(1e-9));
            }
        }
        assertThat(frontFirst).isBetween(60, 300);
    }

    @Test
    void aCrookedCarLocksItsLightWheelFirst() {
        int crooked = 0;
        for (long seed = 0; seed < 200; seed++) {
            Car car = BrakedCars.any(seed);
            if (!(car.weights() instanceof Weights.Corners)) {
                continue;
            }
            Braking.Lock lock = new Braking(car).firstLock(OptionalDouble.of(0.3));
            StraightAhead ahead = new StraightAhead(car);
            assertThat(ahead.brakeAt(lock.locks().orElseThrow().deceleration())).isTrue();
            int side = lock.locks().get().wheel().side().index();
            AxleAlong axle = ahead.axle(lock.locks().get().axle());
            assertThat(axle.load[side]).as("seed %d", seed).isLessThanOrEqualTo(axle.load[1 - side]);
            crooked++;
        }
        assertThat(crooked).isGreaterThan(40);
    }

    /** Deceleration to pedal by the sum, pedal to deceleration by the rod: with valves whose knee follows the axle. */
    @Test
    void thePedalOfADecelerationGivesThatDecelerationAgain() {
        for (long seed = 0; seed < 300; seed++) {
            Car car = BrakedCars.any(seed);
            StraightAhead ahead = new StraightAhead(car);
            for (double g : new double[] {0.05, 0.35, 0.8}) {
                if (!ahead.brakeAt(g * G)) {
                    continue;
                }
                double rod = ahead.brakes.rod;
                double heave = ahead.heave(End.REAR);
                ahead.rest();
                assertThat(ahead.press(rod)).as("seed %d", seed).isTrue();
                assertThat(-ahead.acceleration() / G).as("seed %d", seed).isCloseTo(g, within(1e-9));
                assertThat(ahead.heave(End.REAR)).isCloseTo(heave, within(1e-9));
            }
        }
    }

    /** The distance against an integration of v' = −a(t) in a thousand steps. */
    @Test
    void aStopIsAsLongAsItsMotionIntegrated() {
        for (double speed : new double[] {0.3, 5, 80 / 3.6, 40}) {
            for (double a : new double[] {1, 5.8, 11}) {
                double step = 1e-5;
                double v = speed;
                double way = 0;
                double t = 0;
                while (v > 0) {
                    double slower = a * Math.min(1, (t + step / 2) / 0.2);
                    way += step * (v - slower * step / 2);
                    v -= slower * step;
                    t += step;
                }
                assertThat(Braking.distance(speed, a)).isCloseTo(way, within(2e-5 * (1 + way)));
            }
        }
    }

    @Test
    void nobodyStopsShorterByLocking() {
        Car car = BrakedCars.any(1);
        Braking.Answer answer = new Braking(car).answer(ASKED);
        double lock = answer.own().locks().orElseThrow().deceleration();
        Braking.Stop hard = answer.stops().get(2);
        assertThat(hard.locks()).isTrue();
        assertThat(hard.deceleration()).isEqualTo(lock);
        assertThat(answer.stops().get(0).locks()).isFalse();
        assertThat(answer.stops().get(0).deceleration()).isLessThan(lock);
        assertThat(answer.stops().get(0).distance().orElseThrow())
                .isGreaterThan(hard.distance().orElseThrow());
    }

    /** Adhesion by hand at three places: k_f − k_r, z + 0.05 − k_r, z − 0.1 − slope·(k − 0.2). */
    @Test
    void theRulesReadTheirMarginsOffTheCurve() {
        List<BrakeRule> rules = BrakeRule.all(List.of(
                new BrakeRule.Used(0.14, 0.1, 0.2),
                new BrakeRule.Used(0.30, 0.30, 0.33),
                new BrakeRule.Used(0.45, 0.44, 0.47),
                new BrakeRule.Used(0.60, 0.70, 0.55),
                new BrakeRule.Used(0.80, 0.79, 0.78)));
        BrakeRule older = rules.get(0);
        assertThat(older.order().orElseThrow().margin()).isCloseTo(0.01, within(1e-12));
        assertThat(older.order().orElseThrow().at()).isEqualTo(0.8);
        assertThat(older.inversionMargin().orElseThrow()).isCloseTo(0.02, within(1e-12));
        assertThat(older.use().orElseThrow().margin()).isCloseTo(0.14 - 0.1 - 0.0, within(1e-12));
        assertThat(older.use().orElseThrow().axle()).isEqualTo(End.REAR);
        assertThat(older.met()).isTrue();
        BrakeRule newer = rules.get(1);
        assertThat(newer.order().orElseThrow().margin()).isCloseTo(-0.03, within(1e-12));
        assertThat(newer.inversionMargin()).isEmpty();
        assertThat(newer.met()).isFalse();
        assertThat(BrakeRule.all(List.of(new BrakeRule.Used(0.5, 0.7, 0.1)))
                        .get(0)
                        .use()
                        .orElseThrow()
                        .margin())
                .isCloseTo(0.5 - 0.1 - 0.85 * 0.5, within(1e-12));
    }

    @Test
    void brakesByTheirShareAloneAnswerAllButPedalAndPressures() {
        Braking.Answer answer = new Braking(sharing(4, 0.7)).answer(ASKED);
        assertThat(answer.stops()).isEmpty();
        Braking.Row row = answer.at(0.6 * G).orElseThrow();
        assertThat(row.pedalForce()).isEmpty();
        assertThat(row.front().pressure()).isEmpty();
        assertThat(row.front().force() / (row.front().force() + row.rear().force()))
                .isCloseTo(0.7, within(1e-12));
        assertThat(answer.rows()).hasSize(24); // 0.6 g is one of every 0.05 g
        assertThat(answer.rules()).hasSize(2);
    }

    @Test
    void rearLeavesWindUpNoseDownUnderBraking() {
        for (long seed = 0; seed < 40; seed++) {
            Car car = BrakedCars.any(seed);
            new Braking(car)
                    .row(0.5 * G, true)
                    .orElseThrow()
                    .windUp()
                    .ifPresent(windUp -> assertThat(windUp).isNegative());
        }
    }

    /** Halves open; by what the tyres hold locked; and never more than the bias ratio between. */
    @Test
    void differentialsShareByGripUpToTheirBias() {
        int light = 0;
        for (long seed = 0; seed < 150; seed++) {
            Car car = BrakedCars.any(seed).driven(BrakedCars.any(seed).drive().byGripAlone());
            End driven = car.drive().axle();
            double bias = 1.02;
            double open = grip(car, new Drive.Differential.Open());
            double locked = grip(car, new Drive.Differential.Locked());
            double biased = grip(car, new Drive.Differential.TorqueBiasing(bias));
            assertThat(biased).as("seed %d", seed).isBetween(open - 1e-9, locked + 1e-9);
            assertThat(grip(car, new Drive.Differential.TorqueBiasing(1))).isCloseTo(open, within(1e-9));
            assertThat(grip(car, new Drive.Differential.TorqueBiasing(1e6))).isCloseTo(locked, within(1e-9));
            Driving.Launch launch = new Driving(car).launch().orElseThrow();
            double left = force(launch, driven, 0) + car.rollingResistance() * load(launch, driven, 0);
            double right = force(launch, driven, 1) + car.rollingResistance() * load(launch, driven, 1);
            assertThat(left + right).isCloseTo(launch.state().driveForce(), within(1e-6));
            if (car.drive().differential() instanceof Drive.Differential.Open) {
                assertThat(left).as("seed %d", seed).isCloseTo(right, within(1e-6));
            }
            if (Math.abs(load(launch, driven, 0) - load(launch, driven, 1)) > 30) {
                light++;
                assertThat(load(
                                launch,
                                driven,
                                launch.firstWheel().orElseThrow().side().index()))
                        .as("seed %d", seed)
                        .isLessThan(load(
                                launch,
                                driven,
                                1 - launch.firstWheel().orElseThrow().side().index()));
            }
        }
        assertThat(light).isGreaterThan(50);
    }

    private static double grip(Car car, Drive.Differential differential) {
        return new Driving(car.driven(car.drive().through(differential)))
                .gripLimit()
                .orElseThrow();
    }

    private static double force(Driving.Launch launch, End end, int side) {
        return launch.state().wheels().get(2 * end.ordinal() + side).force();
    }

    private static double load(Driving.Launch launch, End end, int side) {
        return launch.state().wheels().get(2 * end.ordinal() + side).load();
    }

    /**
     * What may pass over steps of a search, held against going through all of them: what is left falls by less than twice the
     * weight per g, the end that uses more is foreseen, and what is found first is found.
     */
    @Test
    void nothingIsPassedOverOnTheWayToTheFirstLockAndToWhereTheEndsChangePlaces() {
        int locked = 0;
        int changed = 0;
        for (long seed = 0; seed < 60; seed++) {
            Optional<Car> any =
                    seed % 3 == 0 ? BrakedCars.onLinks(seed).map(Car::settled) : Optional.of(BrakedCars.any(seed));
            if (any.isEmpty()) {
                continue;
            }
            Car car = any.get();
            String of = "seed " + seed;
            double friction = seed % 2 == 0 ? Double.NaN : 0.3 + seed / 60.0;
            double weight = car.weights().mass() * G;
            StraightAhead ahead = new StraightAhead(car);
            OptionalDouble locks = OptionalDouble.empty();
            OptionalDouble rearAfter = OptionalDouble.empty();
            double[] lastLeft = {Double.NaN, Double.NaN};
            double lastLead = 1;
            for (int i = 0; i <= 400 && ahead.brakeAt(i * G / 200); i++) {
                for (End end : End.values()) {
                    assertThat(ahead.axle(end).loads())
                            .as(of)
                            .isCloseTo(ahead.loads(end, i * G / 200), within(1e-10 * weight));
                    double left = ahead.leastLeft(end, friction);
                    double last = lastLeft[end.ordinal()];
                    assertThat(locks.isPresent() || Double.isNaN(last) || last - left < 2 * weight / 200)
                            .as("%s, %s loses %s of the weight per g", of, end, (last - left) * 200 / weight)
                            .isTrue();
                    lastLeft[end.ordinal()] = left;
                    if (left <= 0 && locks.isEmpty()) {
                        locks = OptionalDouble.of(i / 200.0);
                    }
                }
                double lead = ahead.brakes.front * ahead.rear.loads() - ahead.brakes.rear * ahead.front.loads();
                if (i > 0 && i <= 300 && lastLead > 0 && lead < 0 && rearAfter.isEmpty()) {
                    rearAfter = OptionalDouble.of(i / 200.0);
                }
                lastLead = lead;
            }
            Braking braking = new Braking(car);
            Optional<Braking.Locks> found = braking.firstLock(
                            Double.isNaN(friction) ? OptionalDouble.empty() : OptionalDouble.of(friction))
                    .locks();
            assertThat(found.isPresent()).as(of).isEqualTo(locks.isPresent());
            if (found.isPresent()) {
                assertThat(locks.getAsDouble() - found.get().deceleration() / G)
                        .as(of)
                        .isBetween(0.0, 0.005);
                locked++;
            }
            OptionalDouble above = braking.rearLocksAbove();
            if (!braking.rearFirst()) {
                assertThat(above.isPresent()).as(of).isEqualTo(rearAfter.isPresent());
                if (above.isPresent()) {
                    assertThat(rearAfter.getAsDouble() - above.getAsDouble() / G)
                            .as(of)
                            .isBetween(0.0, 0.005);
                    changed++;
                }
            }
        }
        assertThat(locked).isGreaterThan(40);
        assertThat(changed).isGreaterThan(8);
    }

    /** Two routes to the limit of grip of an open differential on a live axle of no rolling resistance. */
    @Test
    void atTheLimitOfGripTheNamedWheelHasNothingLeft() {
        for (long seed = 0; seed < 150; seed++) {
            Car car = BrakedCars.any(seed).driven(BrakedCars.any(seed).drive().byGripAlone());
            Driving.Launch launch = new Driving(car).launch().orElseThrow();
            assertThat(launch.limitedBy()).isEqualTo(Driving.LimitedBy.GRIP);
            End driven = car.drive().axle();
            int side = launch.firstWheel().orElseThrow().side().index();
            double load = load(launch, driven, side);
            evenhand.tyre.SideForce tyre =
                    evenhand.tyre.SideForce.of(car.axle(driven).tyre().lateral());
            tyre.at(0, 0, load);
            double holds = tyre.peak * car.axle(driven).tyre().longitudinalFrictionRatio();
            assertThat(Math.abs(force(launch, driven, side)))
                    .as("seed %d", seed)
                    .isCloseTo(holds, within(1e-6 * holds));
        }
    }

    /** Gears by hand: speeds, forces, the grade from equilibrium on the slope. */
    @Test
    void gearsGiveWhatTheirNumbersSay() {
        for (long seed = 0; seed < 60; seed++) {
            Car car = BrakedCars.any(seed);
            Driving.Answer answer = new Driving(car).answer(100 / 3.6);
            double radius = car.axle(car.drive().axle()).tyre().loadedRadius();
            double torque = car.drive().engine().orElseThrow().torque().best().torque();
            double grip = answer.launch().orElseThrow().grip().orElse(9 * G) / G;
            for (Driving.Gear gear : answer.gears()) {
                double ratio = car.drive().gears().get(gear.gear() - 1)
                        * car.drive().finalDrive().orElseThrow();
                Driving.Pulls pulls = gear.pull().orElseThrow();
                assertThat(gear.overallRatio()).isEqualTo(ratio);
                assertThat(pulls.force()).isCloseTo(torque * ratio * car.drive().efficiency() / radius, within(1e-9));
                assertThat(gear.speedPer1000rpm())
                        .isCloseTo(
                                1000
                                        / 60.0
                                        * 2
                                        * Math.PI
                                        / ratio
                                        * car.axle(car.drive().axle()).tyre().rollingRadius(),
                                within(1e-12));
                double grade = pulls.grade().orElseThrow();
                assertThat(grade).as("seed %d", seed).isLessThanOrEqualTo(grip + 1e-12);
                if (grade < grip - 1e-9) {
                    double slope = Math.atan(grade);
                    double weight = car.weights().mass() * G;
                    double held = weight * (Math.sin(slope) + car.rollingResistance() * Math.cos(slope));
                    double drag = pulls.force()
                            - car.weights().mass() * pulls.acceleration()
                            - car.rollingResistance() * weight;
                    assertThat(held + drag).as("seed %d", seed).isCloseTo(pulls.force(), within(1e-6));
                }
            }
        }
    }
}
