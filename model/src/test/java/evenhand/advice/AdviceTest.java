package evenhand.advice;

import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.answers.Ways;
import evenhand.car.Car;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Slot;
import evenhand.choice.Effect;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * No advice breaks what it promises, on cars with near and far rubbers, with and without bars, whose ways round differ. Each promise is
 * asked for here by itself, one way round at a time.
 */
class AdviceTest {
    private static final int CARS = 7;
    private static final Trial TRIAL = new Trial(List.of(0.2 * Trials.G, 0.5 * Trials.G), List.of(40.0), Ways.BOTH);
    private static final Judged NEAR = judged(Criterion.NEAR_UNDERSTEER);
    private static final List<Judged> BALANCE =
            List.of(judged(Criterion.UNDERSTEER, 0.2), judged(Criterion.UNDERSTEER, 0.5), NEAR);
    private static final List<Wish> WISHES = List.of(
            new Wish(NEAR, false),
            new Wish(NEAR, true),
            new Wish(judged(Criterion.UNDERSTEER, 0.5), false),
            new Wish(judged(Criterion.LEAN, 0.5), false),
            new Wish(judged(Criterion.INSIDE_REAR_LOAD, 0.5), true),
            new Wish(judged(Criterion.REAR_COMFORT), false),
            new Wish(judged(Criterion.REAR_DAMPING), true));

    private static Entry measure(double si, String unit) {
        return new Entry.Measured(Quantity.of(si, Unit.of(unit)));
    }

    private static Entry group(Object... keysAndEntries) {
        Map<String, Entry> given = new LinkedHashMap<>();
        for (int i = 0; i < keysAndEntries.length; i += 2) {
            given.put((String) keysAndEntries[i], (Entry) keysAndEntries[i + 1]);
        }
        return new Entries(Optional.empty(), given);
    }

    private static Entry curve(String unit, double... points) {
        List<Entry.Drawn.Point> drawn = new ArrayList<>();
        for (int i = 0; i < points.length; i += 2) {
            drawn.add(new Entry.Drawn.Point(
                    Quantity.of(points[i], Unit.of(unit)), Quantity.of(points[i + 1], Unit.of("N"))));
        }
        return new Entry.Drawn(drawn);
    }

    private static Entries with(Entries car, String path, Entry entry) {
        return Catalogue.with(car, new Catalogue.Difference(path, Optional.empty(), Optional.of(entry)));
    }

    /** Each seed is another car; the lower seeds stand nearer to their rubbers. */
    private static Entries car(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Entries car = with(
                CatalogueTest.car(),
                "drive",
                group(
                        "axle",
                        new Entry.Word("rear"),
                        "finalDrive",
                        new Entry.Measured(Quantity.of(random.nextDouble(3.4, 4.6), Dimension.RATIO.metric()))));
        for (String end : List.of("front", "rear")) {
            double gap = random.nextDouble(0.004, 0.06);
            car = with(
                    car,
                    end + ".bumpStop",
                    group(
                            "gap",
                            measure(gap, "m"),
                            "curve",
                            curve("m", 0, 0, 0.01, 500, 0.03, random.nextDouble(3000, 9000))));
            double slow = random.nextDouble(1000, 4500);
            car = with(
                    car,
                    end + ".damper",
                    group(
                            "bump",
                            curve("m/s", 0, 0, 0.1, 0.07 * slow, 0.5, 0.2 * slow),
                            "rebound",
                            curve("m/s", 0, 0, 0.1, 0.13 * slow, 0.5, 0.4 * slow)));
            if (random.nextBoolean()) {
                car = with(
                        car,
                        end + ".bar",
                        group(
                                "rollStiffness",
                                measure(Unit.of("N*m/deg").toSi(random.nextDouble(40, 250)), "N*m/deg")));
            }
        }
        car = Catalogue.with(car, "front.spring.rate", random.nextDouble(16_000, 40_000));
        car = Catalogue.with(car, "rear.spring.rate", random.nextDouble(18_000, 45_000));
        car = Catalogue.with(car, "frontWeightFraction", random.nextDouble(0.44, 0.56));
        return Catalogue.with(car, "rear.lateralLocator.height", random.nextDouble(0.18, 0.36));
    }

    private static Car built(Entries car) {
        return Catalogue.build(car).value().orElseThrow();
    }

    /** The steps of the cars, whichever test wishes something of them. */
    private static final Map<Long, Steps> STEPS = new HashMap<>();

    private static Advice advice(long seed, Wish wish) {
        return Advice.against(
                STEPS.computeIfAbsent(seed, one -> new Steps(car(one), TRIAL, TRIAL.ask(built(car(one))))), wish);
    }

    private static Car after(Entries car, Effect.Step step) {
        return Effect.after(car, step).orElseThrow();
    }

    /** What the cars of a test have answered: each promise asks again, and the answer is the same. */
    private final Map<Car, Map<Direction, Answers>> turned = new HashMap<>();

    private final Map<Car, Stance> stances = new HashMap<>();

    private Answers turned(Car car, Direction direction) {
        return turned.computeIfAbsent(car, one -> new EnumMap<>(Direction.class))
                .computeIfAbsent(direction, way -> TRIAL.turning(way).ask(car));
    }

    private double worst(Car car, Wish wish) {
        double left = wish.judged().si(turned(car, Direction.LEFT)).orElseThrow();
        double right = wish.judged().si(turned(car, Direction.RIGHT)).orElseThrow();
        return wish.up() ? Math.min(left, right) : Math.max(left, right);
    }

    private Stance stance(Car car) {
        return stances.computeIfAbsent(car, one -> Stance.of(one, 0, OptionalDouble.empty(), TRIAL));
    }

    private static Entries withoutStops(Entries car) {
        return with(
                with(car, "front", ((Entries) car.given().get("front")).with("bumpStop", Optional.empty())),
                "rear",
                ((Entries) car.given().get("rear")).with("bumpStop", Optional.empty()));
    }

    /** The step as a bar's largest size too. */
    private static List<Effect.Step> steps(Remedy remedy) {
        return remedy.upTo()
                .map(largest -> List.of(remedy.step(), largest.step()))
                .orElseGet(() -> List.of(remedy.step()));
    }

    @Test
    void noAdviceBreaksWhatItPromises() {
        int remedies = 0;
        int bars = 0;
        Map<Refused.Reason, Integer> refused = new EnumMap<>(Refused.Reason.class);
        for (long seed = 1; seed <= CARS; seed++) {
            Entries car = car(seed);
            Stance before = stance(built(car));
            for (Wish wish : WISHES) {
                Advice advice = advice(seed, wish);
                for (Remedy remedy : advice.remedies()) {
                    for (Effect.Step step : steps(remedy)) {
                        String what = seed + ": " + wish + " " + step.path();
                        Car changed = after(car, step);
                        double gain = (worst(changed, wish) - worst(built(car), wish)) * (wish.up() ? 1 : -1);
                        assertThat(gain)
                                .as(what)
                                .isGreaterThanOrEqualTo(
                                        0.5 * wish.judged().criterion().noticeable());
                        assertSlidesNoMore(car, changed, what);
                        assertNeedsKept(before, stance(changed), what);
                        assertOwesNothingToStops(car, changed, step, wish, gain, what);
                        assertThat(step.work()).as(what).isNotEqualTo(Slot.Work.ANOTHER_CAR);
                    }
                    remedies++;
                    bars += remedy.step() instanceof Effect.ByBar ? 1 : 0;
                }
                assertThat(advice.remedies())
                        .isSortedAccordingTo((one, other) -> Double.compare(other.worth(), one.worth()));
                assertThat(advice.refused())
                        .noneMatch(one -> advice.remedies().stream()
                                .anyMatch(remedy -> remedy.step().equals(one.step())));
                advice.refused().forEach(one -> refused.merge(one.reason(), 1, Integer::sum));
            }
        }
        assertThat(remedies).isGreaterThan(140);
        assertThat(bars).isGreaterThan(5);
        assertThat(refused)
                .containsKeys(Refused.Reason.SLIDES, Refused.Reason.NEED, Refused.Reason.STOP, Refused.Reason.SOFTER);
    }

    private void assertSlidesNoMore(Entries car, Car changed, String what) {
        Judged frontFirst = new Judged(Criterion.FRONT_FIRST, OptionalDouble.empty());
        for (Direction direction : Direction.values()) {
            OptionalDouble before = frontFirst.si(turned(built(car), direction));
            OptionalDouble after = frontFirst.si(turned(changed, direction));
            if (before.orElse(0) == 1) {
                assertThat(after).as(what + " " + direction + " goes first").hasValue(1);
            }
            for (Judged balance : BALANCE) {
                OptionalDouble was = balance.si(turned(built(car), direction));
                OptionalDouble is = balance.si(turned(changed, direction));
                if (was.isPresent() && is.isPresent() && is.getAsDouble() < 0) {
                    assertThat(is.getAsDouble())
                            .as(what + " " + direction + " " + balance)
                            .isGreaterThan(was.getAsDouble()
                                    - 0.1001 * balance.criterion().noticeable());
                }
            }
        }
    }

    private static void assertNeedsKept(Stance before, Stance after, String what) {
        for (Need need : Need.ALL) {
            if (need.metBy(before)) {
                assertThat(need.metBy(after)).as(what + " " + need.key()).isTrue();
            } else if (need.isNumber() && need.value(after).isPresent()) {
                double worse =
                        need.value(before).orElseThrow() - need.value(after).orElseThrow();
                assertThat(need.atLeast() ? worse : -worse)
                        .as(what + " " + need.key())
                        .isLessThan(0.0201 * Math.abs(need.bound()));
            }
        }
    }

    private void assertOwesNothingToStops(
            Entries car, Car changed, Effect.Step step, Wish wish, double gain, String what) {
        OptionalDouble was = Need.FIRST_STOP_TOUCHED.value(stance(built(car)));
        OptionalDouble is = Need.FIRST_STOP_TOUCHED.value(stance(changed));
        boolean later = was.isPresent() && (is.isEmpty() || is.getAsDouble() > was.getAsDouble());
        if (step.path().endsWith(".gap")) {
            assertThat(later).as(what).isTrue();
            assertThat(((Effect.ByNumber) step).size()).as(what).isPositive();
        } else if (!wish.judged().criterion().ofRide() && !later && is.isPresent()) {
            double alone = worst(after(withoutStops(car), step), wish) - worst(built(withoutStops(car)), wish);
            boolean touched = is.getAsDouble() <= wish.judged().pace().orElse(Double.POSITIVE_INFINITY);
            if (touched) {
                assertThat(wish.up() ? alone : -alone).as(what).isGreaterThan(0.499 * gain);
            }
        }
    }

    /** The snap of a tail on its rubbers was advised as a cure for push: its effect is large, and none is wanted. */
    @Test
    void theRubberIsNeverBroughtNearer() {
        long wouldHelp = 0;
        for (long seed = 1; seed <= CARS; seed++) {
            Advice advice = advice(seed, new Wish(NEAR, false));
            wouldHelp += advice.refused().stream()
                    .filter(one -> one.step().path().endsWith("rear.bumpStop.gap"))
                    .count();
            assertThat(advice.remedies())
                    .filteredOn(one -> one.step().movesStop())
                    .allMatch(one -> one.step() instanceof Effect.ByNumber number && number.size() > 0);
        }
        assertThat(wouldHelp).isPositive();
    }

    @Test
    void noSofterSpringIsAdvisedAgainstWallowing() {
        for (long seed = 1; seed <= CARS; seed++) {
            Advice advice = advice(seed, new Wish(judged(Criterion.REAR_DAMPING), true));
            assertThat(advice.remedies()).isNotEmpty();
            assertThat(advice.remedies()).noneMatch(one -> one.step().path().contains("spring"));
            assertThat(advice.remedies().get(0).step()).isEqualTo(new Effect.ByForces("rear.damper", 1.15));
            assertThat(advice.refused())
                    .anyMatch(one -> one.reason() == Refused.Reason.SOFTER
                            && one.step().path().equals("rear.spring.rate"));
        }
    }

    /** All forces by 15 % are damping by 15 %, as far as the damping ratio is linear in the damper. */
    @Test
    void forcesOfADamperAreScaledInBumpAndRebound() {
        Entries car = car(1);
        Car firmer = after(car, new Effect.ByForces("rear.damper", 1.15));
        var was = built(car).rear().damper().orElseThrow().forces().orElseThrow();
        var is = firmer.rear().damper().orElseThrow().forces().orElseThrow();
        for (int i = 0; i < 3; i++) {
            assertThat(is.bump().points().get(i).force())
                    .isCloseTo(1.15 * was.bump().points().get(i).force(), within(1e-9));
            assertThat(is.rebound().points().get(i).force())
                    .isCloseTo(1.15 * was.rebound().points().get(i).force(), within(1e-9));
        }
        assertThat(firmer.front()).isEqualTo(built(car).front());
    }

    @Test
    void worthFallsWithHarmWorkAndWhatCannotBeUndone() {
        Effect.Step set = new Effect.ToSetting("rear.damper.setting", "a", "b");
        Effect.Step part = new Effect.ByForces("rear.damper", 1.15);
        Effect.Step bar = new Effect.ByBar("rear.bar.rollStiffness", 3000);
        assertThat(worth(set, 4, 0)).isEqualTo(4);
        assertThat(worth(set, 4, 2)).isEqualTo(2);
        assertThat(worth(part, 4, 0)).isEqualTo(3.2);
        assertThat(worth(bar, 4, 0)).isEqualTo(1.6);
    }

    private static double worth(Effect.Step step, double felt, double harm) {
        return new Remedy(
                        step,
                        List.of(new Effect(step, List.of())),
                        felt,
                        0,
                        felt,
                        harm,
                        false,
                        Price.NONE,
                        Optional.empty())
                .worth();
    }

    @Test
    void aCarWithoutTheFigureGetsNoAdvice() {
        Entries capsizes = Catalogue.with(car(1), "cgHeight", 2.5);
        assertThat(Advice.against(
                        capsizes,
                        TRIAL,
                        TRIAL.ask(built(capsizes)),
                        new Wish(judged(Criterion.UNDERSTEER, 0.5), false)))
                .isEqualTo(Advice.NONE);
    }
}
