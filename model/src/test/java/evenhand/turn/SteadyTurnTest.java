package evenhand.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.LateralLocator;
import evenhand.car.RoadCars;
import evenhand.car.Seat;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Invariants of the turn on random cars; a failing case names its seed. */
class SteadyTurnTest {
    private static final double G = Weights.GRAVITY;
    private static final double RADIUS = 40;

    private static TurnAnswer ask(Car car, Direction direction) {
        return SteadyTurn.answer(car, List.of(0.2 * G, 0.5 * G), RADIUS, direction);
    }

    @Test
    void everyRowOfEveryRandomCarHoldsItsSevenBalances() {
        TreeMap<String, Integer> outcomes = new TreeMap<>();
        int cars = 1_500;
        for (long seed = 0; seed < cars; seed++) {
            Car car = RoadCars.any(seed).settled();
            TurnAnswer answer = ask(car, Direction.LEFT);
            if (answer instanceof TurnAnswer.NoTurn none) {
                outcomes.merge(none.reason().key(), 1, Integer::sum);
                continue;
            }
            outcomes.merge("answered", 1, Integer::sum);
            TurnAnswer.Turns turns = (TurnAnswer.Turns) answer;
            assertThat(turns.rows()).as("rows, seed %d", seed).hasSizeGreaterThanOrEqualTo(40);
            for (TurnRow row : turns.rows()) {
                assertThat(Balances.worst(car, row, RADIUS))
                        .as("balances, seed %d at %.4f g", seed, row.lateralAcceleration() / G)
                        .isLessThan(1e-9);
            }
        }
        // Cars without an answer are counted: every plausible car has one.
        assertThat(outcomes).containsOnlyKeys("answered");
    }

    @Test
    void aMirroredCarTurnsRightAsTheCarTurnsLeftDigitForDigit() {
        for (long seed = 0; seed < 300; seed++) {
            Car car = RoadCars.any(seed).settled();
            TurnAnswer.Turns left = (TurnAnswer.Turns) ask(car, Direction.LEFT);
            TurnAnswer.Turns right = (TurnAnswer.Turns) ask(car.mirrored(), Direction.RIGHT);
            assertThat(right.rows()).hasSameSizeAs(left.rows());
            for (int i = 0; i < left.rows().size(); i++) {
                TurnRow there = left.rows().get(i);
                TurnRow here = right.rows().get(i);
                assertThat(here.steer()).as("seed %d", seed).isEqualTo(-there.steer());
                assertThat(here.roll()).isEqualTo(-there.roll());
                assertThat(here.frontLoadTransfer()).isEqualTo(there.frontLoadTransfer());
                for (Wheel wheel : Wheel.values()) {
                    assertThat(here.wheel(wheel).load())
                            .isEqualTo(there.wheel(wheel.mirrored()).load());
                    assertThat(here.wheel(wheel).slip())
                            .isEqualTo(-there.wheel(wheel.mirrored()).slip());
                }
            }
            assertThat(right.limit().lateralAcceleration())
                    .isEqualTo(left.limit().lateralAcceleration());
        }
    }

    @Test
    void pacesAndLimitAloneAreThoseOfTheWholeTurn() {
        for (long seed = 0; seed < 200; seed++) {
            Car car = RoadCars.any(seed).settled();
            List<Double> paces = List.of(0.1, 2.0, 5.0, 12.0);
            for (Direction direction : Direction.values()) {
                TurnAnswer whole = SteadyTurn.answer(car, paces, 40, direction);
                PacesAnswer alone = SteadyTurn.atPaces(car, paces, 40, direction);
                TurnAnswer toLimit = SteadyTurn.toLimit(car, paces, 40, direction);
                if (whole instanceof TurnAnswer.Turns turns) {
                    assertThat(alone).as("seed %d", seed).isEqualTo(turns.toTheLimit());
                    TurnAnswer.Turns ends = (TurnAnswer.Turns) toLimit;
                    assertThat(ends.toTheLimit()).as("seed %d", seed).isEqualTo(alone);
                    assertThat(ends.events()).as("seed %d", seed).isEqualTo(turns.eventsToLimit());
                    assertThat(ends.rows())
                            .as("seed %d", seed)
                            .containsExactly(turns.rows().get(0), turns.limit().row());
                } else {
                    assertThat(alone).as("seed %d", seed).isEqualTo(whole);
                    assertThat(toLimit).isEqualTo(whole);
                }
            }
        }
    }

    @Test
    void aGentleTurnOnALargeCircleTendsToTheHandSums() {
        for (long seed = 0; seed < 1_000; seed++) {
            Car car = RoadCars.plain(seed);
            HandSums sums = ((HandSums.Found) HandSums.of(car, G)).sums();
            TurnAnswer.Turns turns =
                    (TurnAnswer.Turns) SteadyTurn.answer(car, List.of(0.001 * G, 0.002 * G), 1e6, Direction.LEFT);
            TurnRow one = ((PaceAnswer.InBalance) turns.paces().get(0)).row();
            TurnRow two = ((PaceAnswer.InBalance) turns.paces().get(1)).row();
            var budget = sums.budget();
            double scale = Math.abs(budget.tyres())
                    + Math.abs(budget.aligningTorque())
                    + Math.abs(budget.camber())
                    + Math.abs(budget.rollSteer())
                    + Math.abs(budget.lateralForceSteer())
                    + Math.abs(budget.aligningTorqueSteer())
                    + 0.2 / (180 / Math.PI * G);
            double gradient = 2 * one.understeerGradient().getAsDouble()
                    - two.understeerGradient().getAsDouble();
            assertThat(gradient).as("K, seed %d", seed).isCloseTo(budget.gradient(), within(5e-5 * scale));
            double roll =
                    2 * one.rollGradient().getAsDouble() - two.rollGradient().getAsDouble();
            assertThat(roll * G)
                    .as("roll gradient, seed %d", seed)
                    .isCloseTo(sums.rollAngle(), within(2e-5 * sums.rollAngle()));
        }
    }

    @Test
    void limitAndEventsDoNotDependOnTheStepsOfTheCurve() {
        int compared = 0;
        for (long seed = 0; seed < 1_500; seed++) {
            Car car = RoadCars.any(seed).settled();
            Branch large = new Branch(new Equilibrium(car, RADIUS));
            Branch small = new Branch(new Equilibrium(car, RADIUS), 0.06);
            large.follow(Branch.Until.FOLD);
            small.follow(Branch.Until.FOLD);
            assertThat(large.limit()).as("limit, seed %d", seed).isCloseTo(small.limit(), within(2e-6 * G));
            assertThat(large.end()).as("fold, seed %d", seed).isCloseTo(small.end(), within(2e-6 * G));
            if (seed % 10 == 0) {
                compared += compareEvents(car, seed);
            }
        }
        assertThat(compared).as("events compared").isGreaterThan(100);
    }

    private static int compareEvents(Car car, long seed) {
        List<TurnEvent> few = events(car, Branch.LARGEST_STEP);
        List<TurnEvent> many = events(car, 0.06);
        assertThat(few.stream().map(TurnEvent::kind).toList())
                .as("events, seed %d", seed)
                .isEqualTo(many.stream().map(TurnEvent::kind).toList());
        for (int i = 0; i < few.size(); i++) {
            assertThat(few.get(i).lateralAcceleration())
                    .as("event, seed %d", seed)
                    .isCloseTo(many.get(i).lateralAcceleration(), within(1e-5 * G));
        }
        return few.size();
    }

    private static List<TurnEvent> events(Car car, double step) {
        Equilibrium equilibrium = new Equilibrium(car, RADIUS);
        Branch branch = new Branch(equilibrium, step);
        branch.follow(Branch.Until.FOLD);
        return new TurnEvents(equilibrium, branch)
                .find().stream()
                        .sorted(java.util.Comparator.comparingDouble(TurnEvent::lateralAcceleration))
                        .toList();
    }

    @Test
    void theUndersteerGradientIsTheSlopeOfTheSteerAngle() {
        for (long seed = 0; seed < 300; seed++) {
            Car car = RoadCars.any(seed).settled();
            double pace = 0.2 * G;
            double step = 1e-4 * G;
            TurnAnswer.Turns turns = (TurnAnswer.Turns)
                    SteadyTurn.answer(car, List.of(pace - step, pace, pace + step), RADIUS, Direction.LEFT);
            if (!turns.events().isEmpty() && Math.abs(turns.events().get(0).lateralAcceleration() - pace) < 0.01 * G) {
                continue;
            }
            double before = ((PaceAnswer.InBalance) turns.paces().get(0)).row().steer();
            double after = ((PaceAnswer.InBalance) turns.paces().get(2)).row().steer();
            var here = (PaceAnswer.InBalance) turns.paces().get(1);
            double gradient = here.row().understeerGradient().getAsDouble();
            assertThat((after - before) / (2 * step)).as("seed %d", seed).isCloseTo(gradient, within(1e-6));
            var budget = here.budget();
            assertThat(budget.tyres()
                            + budget.camber()
                            + budget.rollSteer()
                            + budget.lateralForceSteer()
                            + budget.aligningTorqueSteer()
                            + budget.rest())
                    .isCloseTo(gradient, within(1e-12));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aHigherRearRollCentreOrAStifferRearBarLowersTheFrontShare(boolean byRollCentre) {
        int seen = 0;
        for (long seed = 0; seed < 1_000; seed++) {
            Car car = RoadCars.plain(seed);
            if (!(car.rear() instanceof Axle.Live live)) {
                continue;
            }
            seen++;
            Car changed = byRollCentre ? withRear(car, raised(live)) : withRear(car, barred(live));
            assertThat(share(changed)).as("seed %d", seed).isLessThan(share(car));
        }
        assertThat(seen).isGreaterThan(400);
    }

    private static double share(Car car) {
        PacesAnswer.Paces turns = (PacesAnswer.Paces) SteadyTurn.atPaces(car, List.of(0.4 * G), RADIUS, Direction.LEFT);
        return ((PaceAnswer.InBalance) turns.paces().get(0)).row().frontLoadTransferShare();
    }

    private static Axle.Live raised(Axle.Live live) {
        return new Axle.Live(
                live.track(),
                live.unsprung(),
                new LateralLocator.WattsLinkage(
                        live.geometry().rollCentreHeight() + 0.025,
                        live.lateralLocator().perBump() == -1
                                ? LateralLocator.CarriedBy.BODY
                                : LateralLocator.CarriedBy.AXLE),
                live.spring(),
                live.bar(),
                live.stops(),
                live.damper(),
                0,
                live.alignment(),
                live.tyre(),
                OptionalDouble.empty());
    }

    private static Axle.Live barred(Axle.Live live) {
        return new Axle.Live(
                live.track(),
                live.unsprung(),
                live.lateralLocator(),
                live.spring(),
                Optional.of(new Bar.Measured(live.barRollStiffness() + 3000)),
                live.stops(),
                live.damper(),
                0,
                live.alignment(),
                live.tyre(),
                OptionalDouble.empty());
    }

    private static Car withRear(Car car, Axle rear) {
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                car.rollingResistance(),
                car.front(),
                rear,
                car.drive(),
                car.pitchInertia(),
                car.seat());
    }

    @Test
    void theAxleThatGivesOutFirstIsTheOneWithLessGripInHandWhereNoWheelSpins() {
        int agree = 0;
        int all = 0;
        for (long seed = 0; seed < 500; seed++) {
            TurnAnswer.Turns turns = (TurnAnswer.Turns) ask(RoadCars.any(seed).settled(), Direction.LEFT);
            if (turns.limit().cause() != Limit.Cause.SIDESLIP) {
                continue;
            }
            all++;
            agree += turns.limit().frontFirst() == (turns.limit().limitBalance() > 0) ? 1 : 0;
        }
        assertThat(agree).isGreaterThan((int) (0.95 * all));
    }

    @Test
    void aCarThatFallsOverOnItsSpringsIsToldSoInWords() {
        Car car = RoadCars.plain(3);
        Car tall = new Car(
                car.weights(),
                car.wheelbase(),
                6.0,
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                0,
                car.front(),
                car.rear(),
                car.drive(),
                OptionalDouble.empty(),
                Seat.USUAL);
        assertThat(ask(tall, Direction.LEFT)).isInstanceOfSatisfying(TurnAnswer.NoTurn.class, none -> {
            assertThat(none.reason()).isEqualTo(TurnAnswer.Reason.FALLS_OVER);
            assertThat(none.text()).contains("falls over");
        });
    }
}
