package evenhand.lowering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Balance;
import evenhand.answers.Impatient;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import evenhand.load.Laden;
import evenhand.quantity.InvalidValue;
import evenhand.ride.Ride;
import evenhand.ride.Standing;
import evenhand.suspension.AxleSuspension;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LoweringStudyTest {
    private static final double G = Weights.GRAVITY;
    private static final Trial TRIAL = new Trial(List.of(0.2 * G, 0.5 * G), 40, Direction.LEFT);
    private static final OptionalDouble AS_THEY_ARE = OptionalDouble.empty();
    private static final LoadCase LOAD =
            new LoadCase("two behind", List.of(new LoadCase.Added("two behind", 140, 1.8, 0.6)));

    private static Stance.Stands stands(Car car, double lowered, OptionalDouble reserve, Trial trial) {
        Stance stance = Stance.of(car, lowered, reserve, trial);
        assertThat(stance).isInstanceOf(Stance.Stands.class);
        return (Stance.Stands) stance;
    }

    private static LoweringStudy study(Car car, double from, double to, double step) {
        return LoweringStudy.of(car, from, to, step, AS_THEY_ARE, TRIAL, Progress.NONE);
    }

    private static final double EIGHTY = 0.08;

    /** Random cars eighty millimetres down, first and last row alone, by their seeds: several tests look at the same. */
    private static final Map<Long, LoweringStudy> EIGHTY_DOWN = new HashMap<>();

    private static LoweringStudy eightyDown(long seed) {
        return EIGHTY_DOWN.computeIfAbsent(seed, one -> study(RoadCars.damped(one), 0, EIGHTY, EIGHTY));
    }

    /** A random car whose body can go all the way. */
    private static Optional<Car> car(long seed, double deepest) {
        Car car = RoadCars.damped(seed);
        try {
            car.letDown(deepest);
            return Optional.of(car);
        } catch (InvalidValue e) {
            return Optional.empty();
        }
    }

    @Test
    void atZeroEveryAnswerIsThatOfBalanceAndRide() {
        for (long seed = 0; seed < 100; seed++) {
            Car car = RoadCars.damped(seed);
            Stance.Stands row = stands(car, 0, AS_THEY_ARE, TRIAL);
            Balance balance = Balance.of(car, TRIAL.paces(), TRIAL.radius(), TRIAL.direction());
            assertThat(row.turn()).as("seed %d", seed).isEqualTo(balance.turn());
            assertThat(row.sums()).isEqualTo(balance.handSums());
            Car settled = car.settled();
            assertThat(row.car()).isEqualTo(settled);
            if (row.ride() instanceof Ride ride) {
                Ride expected = (Ride) Ride.of(settled, Stance.ROAD, Stance.SPEED);
                assertThat(ride.front()).isEqualTo(expected.front());
                assertThat(ride.rear()).isEqualTo(expected.rear());
            }
        }
    }

    /** Let down twice, by the file and by the study, is let down by the sum. */
    @Test
    void aRowIsTheCarWithSoMuchMoreLowered() {
        int asked = 0;
        for (long seed = 0; seed < 120; seed++) {
            Optional<Car> car = car(seed, 0.06);
            if (car.isPresent()) {
                asked++;
                Stance.Stands row = stands(car.get(), 0.03, AS_THEY_ARE, TRIAL);
                Stance.Stands same = stands(car.get().letDown(0.03), 0, AS_THEY_ARE, TRIAL);
                assertThat(row.turn()).as("seed %d", seed).isEqualTo(same.turn());
                assertThat(row.car()).isEqualTo(same.car());
                assertThat(row.car().sprung().height())
                        .isCloseTo(car.get().settled().sprung().height() - 0.03, within(1e-12));
            }
        }
        assertThat(asked).isGreaterThan(80);
    }

    @Test
    void travelFallsByWhatTheBodyIsLetDown() {
        for (long seed = 0; seed < 80; seed++) {
            Optional<Car> car = car(seed, 0.06);
            if (car.isPresent()) {
                Stance.Stands high = stands(car.get(), 0, AS_THEY_ARE, TRIAL);
                Stance.Stands low = stands(car.get(), 0.06, AS_THEY_ARE, TRIAL);
                for (End end : End.values()) {
                    OptionalDouble before = high.standing(end).bumpTravelToStop();
                    OptionalDouble after = low.standing(end).bumpTravelToStop();
                    assertThat(after.isPresent()).isEqualTo(before.isPresent());
                    if (before.isPresent()) {
                        assertThat(after.getAsDouble()).isCloseTo(before.getAsDouble() - 0.06, within(1e-12));
                    }
                }
            }
        }
    }

    /** Wheel rate from the spring's own line, gap and load by hand. */
    @Test
    void springsKeepTheReserveJustSo() {
        int stiffened = 0;
        for (long seed = 0; seed < 200; seed++) {
            Car car = RoadCars.damped(seed);
            Stance stance = Stance.of(car, 0, OptionalDouble.of(0.8), TRIAL);
            if (stance instanceof Stance.Stands row && row.springs().isPresent()) {
                for (End end : End.values()) {
                    OptionalDouble gap = row.standing(end).bumpTravelToStop();
                    double load = row.car().axleLoad(end) / 2
                            - row.car().axle(end).unsprung().mass() * G / 2;
                    double rate = AxleSuspension.of(row.car(), end).heaveRate();
                    if (gap.isPresent() && row.springs().get().stiffened(car.axle(end), end)) {
                        stiffened++;
                        assertThat(rate)
                                .as("seed %d", seed)
                                .isCloseTo(0.8 * load / gap.getAsDouble(), within(1e-6 * rate));
                        assertThat(row.frequencyOnSprings(end).orElseThrow())
                                .isCloseTo(row.springs().get().needs(end).orElseThrow(), within(1e-6));
                    } else if (gap.isPresent()) {
                        assertThat(rate * gap.getAsDouble()).isGreaterThanOrEqualTo(0.8 * load * (1 - 1e-9));
                    } else {
                        assertThat(row.springs().get().rate(end))
                                .isEqualTo(car.axle(end).spring().rate());
                    }
                }
            }
        }
        assertThat(stiffened).isGreaterThan(25);
    }

    /** With a load the travel is what is left under it, and the reserve is of all that stands there. */
    @Test
    void theReserveIsThatOfTheLoadedCar() {
        int stiffened = 0;
        for (long seed = 0; seed < 120; seed++) {
            Car car = RoadCars.damped(seed);
            Stance stance = Stance.of(car, 0, OptionalDouble.of(0.6), TRIAL.with(Optional.of(LOAD)));
            if (stance instanceof Stance.Stands row && row.springs().isPresent()) {
                ReserveSprings springs = row.springs().get();
                if (springs.stiffened(car.rear(), End.REAR)) {
                    stiffened++;
                    Laden laden = Laden.of(springs.fitted(car), Optional.of(LOAD));
                    Car loaded = ((Laden.AtRest) laden).car();
                    double load = loaded.axleLoad(End.REAR) / 2
                            - loaded.rear().unsprung().mass() * G / 2;
                    double travel =
                            Standing.of(loaded, End.REAR).bumpTravelToStop().orElseThrow();
                    assertThat(AxleSuspension.of(loaded, End.REAR).heaveRate() * travel)
                            .as("seed %d", seed)
                            .isCloseTo(0.6 * load, within(1e-6 * load));
                }
            }
        }
        assertThat(stiffened).isGreaterThan(6);
    }

    @Test
    void theLowestDoesNotDependOnTheStepsThatAreShown() {
        int stopped = 0;
        for (long seed = 0; seed < 20; seed++) {
            Optional<Car> car = car(seed, EIGHTY);
            if (car.isPresent()) {
                LoweringStudy coarse = eightyDown(seed);
                LoweringStudy fine = study(car.get(), 0, EIGHTY, 0.007);
                assertThat(fine.ends()).as("seed %d", seed).isEqualTo(coarse.ends());
                assertThat(fine.lowest()).isEqualTo(coarse.lowest());
                assertThat(LoweringStudy.lowest(car.get(), 0, EIGHTY, TRIAL)).isEqualTo(coarse.lowest());
                assertThat(fine.rows()).hasSize(13);
                assertThat(coarse.rows()).hasSize(2);
                stopped += coarse.stop().isPresent() ? 1 : 0;
            }
        }
        assertThat(stopped).isGreaterThan(5);
    }

    /** At the lowest every need is met; two micrometres below, the one that stops it is not. */
    @Test
    void belowTheLowestTheOneThatStopsItFails() {
        int checked = 0;
        for (long seed = 0; seed < 40; seed++) {
            Optional<Car> car = car(seed, 0.081);
            if (car.isPresent()) {
                LoweringStudy study = eightyDown(seed);
                if (study.lowest().isPresent() && study.stop().isPresent()) {
                    checked++;
                    Stance lowest = study.works().orElseThrow();
                    assertThat(Need.ALL).as("seed %d", seed).allMatch(need -> need.metBy(lowest));
                    double below = study.lowest().getAsDouble() + 2e-6;
                    assertThat(study.stop().get().need().metBy(Stance.of(car.get(), below, AS_THEY_ARE, TRIAL)))
                            .isFalse();
                }
            }
        }
        assertThat(checked).isGreaterThan(3);
    }

    /** A travel need ends by subtraction: an independent way to the number. */
    @Test
    void aTravelEndsWhereSubtractionSays() {
        int checked = 0;
        for (long seed = 0; seed < 40; seed++) {
            Optional<Car> car = car(seed, EIGHTY);
            if (car.isPresent()) {
                LoweringStudy study = eightyDown(seed);
                double gap = Standing.of(car.get().settled(), End.FRONT)
                        .bumpTravelToStop()
                        .orElse(1);
                double until = gap - Need.TO_STOP;
                LoweringStudy.Ending end = study.ends().stream()
                        .filter(one -> one.need().key().equals("frontBumpTravelToStop"))
                        .findFirst()
                        .orElseThrow();
                if (until > 0 && until < EIGHTY) {
                    checked++;
                    assertThat(end.lowered().orElseThrow()).as("seed %d", seed).isCloseTo(until, within(1.1e-6));
                } else {
                    assertThat(end.lowered()).isEmpty();
                    assertThat(end.atOnce()).isEqualTo(until < 0);
                }
            }
        }
        assertThat(checked).isGreaterThan(5);
    }

    @Test
    void whereTheFirstHeightFailsTheNextOneUpThatWorksIsFound() {
        int found = 0;
        for (long seed = 0; seed < 120 && found < 5; seed++) {
            Optional<Car> car = car(seed, 0.09);
            if (car.isPresent()) {
                LoweringStudy low = study(car.get(), 0.06, 0.07, 0.01);
                if (low.stop().isPresent()
                        && low.stop().get().atOnce()
                        && low.works().isPresent()) {
                    found++;
                    assertThat(low.lowest()).isEmpty();
                    Stance works = low.works().get();
                    assertThat(Need.ALL).allMatch(need -> need.metBy(works));
                    assertThat(low.higher().orElseThrow()).isCloseTo(0.06 - works.lowered(), within(1e-12));
                    Stance below = Stance.of(car.get(), works.lowered() + 2e-6, AS_THEY_ARE, TRIAL);
                    assertThat(Need.ALL).anyMatch(need -> !need.metBy(below));
                }
            }
        }
        assertThat(found).isGreaterThan(0);
    }

    /** A gap of a hair is touched almost at once, whichever side of the turn's first row it lies on. */
    @Test
    void aStopTouchedBeforeTheFirstRowIsFoundWithoutAJump() {
        int checked = 0;
        for (long seed = 0; seed < 60; seed++) {
            Optional<Car> car = car(seed, 0.12);
            if (car.isPresent() && car.get().front().stops().bump().isPresent()) {
                double gap = Standing.of(car.get().settled(), End.FRONT)
                        .bumpTravelToStop()
                        .orElse(0);
                double rear = Standing.of(car.get().settled(), End.REAR)
                        .bumpTravelToStop()
                        .orElse(1);
                if (gap > 0 && gap < 0.11 && rear > gap) {
                    checked++;
                    double before = 0.2;
                    for (double left : new double[] {0.003, 0.001, 0.0005, 0.0002, 0.0001}) {
                        double at = stands(car.get(), gap - left, AS_THEY_ARE, TRIAL)
                                        .firstStop()
                                        .orElse(0)
                                / G;
                        assertThat(at)
                                .as("seed %d, %s m left", seed, left)
                                .isPositive()
                                .isLessThan(before);
                        before = at;
                    }
                    assertThat(before).isLessThan(0.01);
                    assertThat(stands(car.get(), gap, AS_THEY_ARE, TRIAL)
                                    .firstStop()
                                    .orElse(1))
                            .isZero();
                }
            }
        }
        assertThat(checked).isGreaterThan(3);
    }

    /** Whatever way round and on whatever circle: a need ends where it first does so in one of those by itself. */
    @Test
    void whatMustHoldMustHoldInEveryBend() {
        Trial everywhere = new Trial(TRIAL.paces(), List.of(40.0, 20.0), Ways.BOTH);
        int otherwise = 0;
        for (long seed = 0; seed < 6; seed++) {
            Car car = RoadCars.damped(seed);
            LoweringStudy all = study(car, everywhere);
            assertThat(all.otherTurn().isPresent()).as("seed %d", seed).isNotEqualTo(all.alike());
            assertThat(all.atRadius()).hasSize(1);
            List<LoweringStudy> each = everywhere.radii().stream()
                    .flatMap(radius ->
                            Stream.of(Direction.values()).map(way -> study(car, new Trial(TRIAL.paces(), radius, way))))
                    .toList();
            for (Need need : Need.ALL) {
                double first =
                        each.stream().mapToDouble(one -> end(one, need)).min().orElseThrow();
                double last =
                        each.stream().mapToDouble(one -> end(one, need)).max().orElseThrow();
                assertThat(end(all, need)).as("seed %d, %s", seed, need.key()).isEqualTo(first);
                otherwise += last > first ? 1 : 0;
            }
        }
        assertThat(otherwise).isPositive();
    }

    private static LoweringStudy study(Car car, Trial trial) {
        return LoweringStudy.of(car, 0, 0.012, 0.012, AS_THEY_ARE, trial, Progress.NONE);
    }

    /** How far down a need is met, m: below zero where it is not even met at first. */
    private static double end(LoweringStudy study, Need need) {
        LoweringStudy.Ending end = study.ends().get(Need.ALL.indexOf(need));
        return end.atOnce() ? -1 : end.lowered().orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void theOtherWayRoundIsTheStudyOfThatWay() {
        Trial both = new Trial(TRIAL.paces(), List.of(40.0), Ways.BOTH);
        int turned = 0;
        for (long seed = 0; seed < 6; seed++) {
            Car car = RoadCars.damped(seed);
            LoweringStudy study = study(car, both);
            assertThat(study.inFirstBend()).isEqualTo(study(car, TRIAL).rows());
            if (study.otherTurn().isPresent()) {
                turned++;
                assertThat(study.otherTurn().get())
                        .as("seed %d", seed)
                        .isEqualTo(study(car, both.turning(Direction.RIGHT)));
            }
        }
        assertThat(turned).isBetween(1, 5);
    }

    /** The end that goes first is said by the limit, not by which end uses more of its grip there. */
    @Test
    void whichEndGoesFirstIsNotReadFromTheLimitBalance() {
        int against = 0;
        for (long seed = 0; seed < 60; seed++) {
            Stance stance = Stance.of(RoadCars.damped(seed), 0, AS_THEY_ARE, TRIAL);
            if (stance instanceof Stance.Stands stands && stands.turns().isPresent()) {
                Limit limit = stands.turns().get().limit();
                assertThat(Need.FRONT_FIRST.metBy(stance)).as("seed %d", seed).isEqualTo(limit.frontFirst());
                against += limit.frontFirst() == limit.limitBalance() > 0 ? 0 : 1;
            }
        }
        assertThat(against).isPositive();
    }

    @Test
    void aBodyGoesNoFurtherThanItCan() {
        Car car = RoadCars.damped(1);
        assertThatThrownBy(() -> study(car, 0, 0.6, 0.1)).isInstanceOf(InvalidValue.class);
    }

    @Test
    void whoWaitsMayStopIt() throws InterruptedException {
        Car car = car(1, 0.06).orElseThrow();
        Impatient.mayStop(progress -> LoweringStudy.of(car, 0, 0.06, 0.02, AS_THEY_ARE, TRIAL, progress));
    }
}
