package evenhand.choice;

import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.answers.Ways;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Searches hold both ways round and on every circle: each way is asked by itself, so that nothing is told by the search alone. */
class BothWaysTest {
    private static final String PIVOT = "rear.lateralLocator.height";
    private static final String SPRING = "front.spring.rate";
    private static final double PACE = 0.5;
    private static final Unit DEG_PER_G = Unit.of("deg/g");

    /** A live axle whose shaft turns it: left and right differ. Each seed is another car. */
    private static Entries car(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Entry finalDrive = new Entry.Measured(Quantity.of(random.nextDouble(3.4, 4.6), Dimension.RATIO.metric()));
        Entries drive = new Entries(Optional.empty(), Map.of("axle", new Entry.Word("rear"), "finalDrive", finalDrive));
        Entries car = Catalogue.with(
                CatalogueTest.car(), new Catalogue.Difference("drive", Optional.empty(), Optional.of(drive)));
        car = Catalogue.with(car, "front.spring.rate", random.nextDouble(30_000, 70_000));
        car = Catalogue.with(car, "rear.spring.rate", random.nextDouble(20_000, 45_000));
        car = Catalogue.with(car, "frontWeightFraction", random.nextDouble(0.48, 0.56));
        return Catalogue.with(car, PIVOT, random.nextDouble(0.21, 0.33));
    }

    private static Span pivot(Entries car) {
        return Span.of(car, PIVOT, 0.2, 0.34);
    }

    private static Trial trial(Ways ways, double... radii) {
        List<Double> circles = radii.length == 0
                ? List.of(40.0)
                : java.util.Arrays.stream(radii).boxed().toList();
        return new Trial(List.of(PACE * Trials.G), circles, ways);
    }

    private static Finding.One find(Entries car, Aim aim, List<Aim> keeps, Trial trial) {
        return (Finding.One) OneChange.find(car, pivot(car), aim, keeps, OptionalDouble.empty(), trial, Progress.NONE);
    }

    private static Finding.One find(Entries car, Aim aim) {
        return find(car, aim, List.of(), trial(Ways.BOTH));
    }

    /** One way round by itself. */
    private static Answers turned(Entries car, double pivot, Direction direction, double radius) {
        return turned(car, PIVOT, pivot, direction, radius);
    }

    private static Answers turned(Entries car, String path, double value, Direction direction, double radius) {
        return trial(Ways.of(direction), radius)
                .ask(Catalogue.build(Catalogue.with(car, path, value)).value().orElseThrow());
    }

    private static double figure(Judged judged, Entries car, double pivot, Direction direction) {
        return judged.si(turned(car, pivot, direction, 40)).orElseThrow();
    }

    private static List<Judged> figures() {
        return List.of(
                judged(Criterion.UNDERSTEER, PACE),
                judged(Criterion.NEAR_UNDERSTEER),
                judged(Criterion.LIMIT),
                judged(Criterion.LIMIT_BALANCE));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aBoundHoldsBothWaysAndNoFurtherThanItMust(long seed) {
        Entries car = car(seed);
        for (Judged judged : figures()) {
            double left = figure(judged, car, 0.27, Direction.LEFT);
            double right = figure(judged, car, 0.27, Direction.RIGHT);
            assertThat(Math.abs(left - right))
                    .isGreaterThan(1e-6 * judged.criterion().noticeable());
            for (Aim.Sense sense : List.of(Aim.Sense.AT_MOST, Aim.Sense.AT_LEAST)) {
                boolean most = sense == Aim.Sense.AT_MOST;
                Aim aim = new Aim(judged, sense, most ? Math.max(left, right) : Math.min(left, right));
                Finding.One found = find(car, aim);
                assertThat(found.met()).isTrue();
                double[] both = {
                    figure(judged, car, found.value(), Direction.LEFT),
                    figure(judged, car, found.value(), Direction.RIGHT)
                };
                double worse = most ? Math.max(both[0], both[1]) : Math.min(both[0], both[1]);
                assertThat(aim.met(worse)).isTrue();
                assertThat(found.achieved())
                        .isCloseTo(worse, within(1e-6 * judged.criterion().noticeable()));
                if (found.value() != found.change().start()) {
                    assertThat(aim.touches(worse)).isTrue();
                }
            }
        }
    }

    @Test
    void anExactValueIsTheMeanOfBothAndMetOnlyWhereNeitherIsFurtherOffThanADriverLetsPass() {
        int met = 0;
        int nearest = 0;
        for (long seed = 1; seed <= 8; seed++) {
            Entries car = car(seed);
            for (Judged judged : List.of(judged(Criterion.UNDERSTEER, PACE), judged(Criterion.NEAR_UNDERSTEER))) {
                double wanted =
                        (figure(judged, car, 0.26, Direction.LEFT) + figure(judged, car, 0.26, Direction.RIGHT)) / 2;
                Finding.One found = find(car, new Aim(judged, Aim.Sense.EXACTLY, wanted));
                double left = figure(judged, car, found.value(), Direction.LEFT);
                double right = figure(judged, car, found.value(), Direction.RIGHT);
                assertThat((left + right) / 2)
                        .isCloseTo(wanted, within(2e-6 * judged.criterion().noticeable()));
                double off = DEG_PER_G.fromSi(Math.max(Math.abs(left - wanted), Math.abs(right - wanted)));
                assertThat(found.met()).as("off by " + off).isEqualTo(off <= 0.3);
                met += found.met() ? 1 : 0;
                nearest += found.met() ? 0 : 1;
            }
        }
        assertThat(met).isPositive();
        assertThat(nearest).isPositive();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatEachWayCanReachIsWhatASearchOfThatWayAloneSays(long seed) {
        Entries car = car(seed);
        for (Judged judged : figures()) {
            Aim aim = new Aim(judged, Aim.Sense.AT_LEAST, figure(judged, car, 0.3, Direction.LEFT));
            Finding.One both = find(car, aim);
            assertThat(both.allRound().alike()).isFalse();
            assertThat(both.allRound().bends())
                    .extracting(Finding.InBend::direction)
                    .containsExactly(Direction.LEFT, Direction.RIGHT);
            double little = 2e-3 * judged.criterion().noticeable();
            for (Finding.InBend bend : both.allRound().bends()) {
                Finding.One alone = find(car, aim, List.of(), trial(Ways.of(bend.direction())));
                Finding.Reach reach = bend.reach().orElseThrow();
                assertThat(reach.lowest()).isCloseTo(alone.reach().lowest(), within(little));
                assertThat(reach.highest()).isCloseTo(alone.reach().highest(), within(little));
                Finding.Point point = bend.curve().get(7);
                assertThat(point.figure()).isCloseTo(figure(judged, car, point.at(), bend.direction()), within(little));
            }
        }
    }

    @Test
    void whatIsToBeKeptIsKeptBothWays() {
        Entries car = car(2);
        Judged near = judged(Criterion.NEAR_UNDERSTEER);
        Judged limit = judged(Criterion.LIMIT);
        double kept = Math.min(figure(near, car, 0.28, Direction.LEFT), figure(near, car, 0.28, Direction.RIGHT));
        Aim keep = new Aim(near, Aim.Sense.AT_LEAST, kept);
        Aim fast = new Aim(limit, Aim.Sense.AT_LEAST, 2 * Trials.G);
        Finding.One found = find(car, fast, List.of(keep), trial(Ways.BOTH));
        assertThat(found.kept()).allMatch(Finding.Kept::ok);
        assertThat(Math.min(
                        figure(near, car, found.value(), Direction.LEFT),
                        figure(near, car, found.value(), Direction.RIGHT)))
                .isGreaterThanOrEqualTo(kept - 1e-6 * near.criterion().noticeable());
    }

    @Test
    void aBoundHoldsOnEveryCircle() {
        Entries car = car(3);
        Judged near = judged(Criterion.NEAR_UNDERSTEER);
        double[] circles = {60, 25};
        double level = Double.NEGATIVE_INFINITY;
        for (double radius : circles) {
            for (Direction direction : Direction.values()) {
                level = Math.max(
                        level, near.si(turned(car, 0.3, direction, radius)).orElseThrow());
            }
        }
        Finding.One found = find(car, new Aim(near, Aim.Sense.AT_MOST, level), List.of(), trial(Ways.BOTH, circles));
        assertThat(found.met()).isTrue();
        assertThat(found.allRound().bends()).extracting(Finding.InBend::radius).containsExactly(60.0, 60.0, 25.0, 25.0);
        for (double radius : circles) {
            for (Direction direction : Direction.values()) {
                assertThat(near.si(turned(car, found.value(), direction, radius))
                                .orElseThrow())
                        .isLessThanOrEqualTo(level + 1e-6 * near.criterion().noticeable());
            }
        }
    }

    @Test
    void aCarThatIsAlikeBothWaysSaysSoAndBothWaysFindWhatOneDoes() {
        Entries car = CatalogueTest.car();
        Judged understeer = judged(Criterion.UNDERSTEER, PACE);
        Aim aim = new Aim(understeer, Aim.Sense.EXACTLY, figure(understeer, car, 0.3, Direction.LEFT));
        Finding.One both = find(car, aim);
        Finding.One one = find(car, aim, List.of(), trial(Ways.LEFT));
        assertThat(both.allRound().alike()).isTrue();
        assertThat(one.allRound().alike()).isFalse();
        assertThat(both.value()).isEqualTo(one.value());
        assertThat(both.met()).isTrue();
        assertThat(both.curve()).isEqualTo(one.curve());
        assertThat(both.allRound().bends().get(1).curve()).isEqualTo(one.curve());
    }

    /** The pivot goes up until the tail comes round one way: the edge is found, and the value stands on its good side. */
    @Test
    void theFrontGoesFirstBothWaysUpToAnEdgeThatIsFound() {
        int seen = 0;
        for (long seed = 1; seed <= 40; seed++) {
            Entries car = Catalogue.with(car(seed), PIVOT, 0.34);
            if (isFrontFirst(car, 0.2) && !isFrontFirst(car, 0.34)) {
                Finding.One found = find(car, Aim.frontFirst());
                assertThat(found.met()).isTrue();
                assertThat(found.reach()).isEqualTo(new Finding.Reach(0, 1));
                assertThat(found.notes()).doesNotContain(Finding.Note.KINK, Finding.Note.FLAT);
                assertThat(isFrontFirst(car, found.value())).isTrue();
                assertThat(isFrontFirst(
                                car, found.value() + 1e-3 * found.change().width()))
                        .isFalse();
                Judged near = judged(Criterion.NEAR_UNDERSTEER);
                double there = figure(near, car, 0.34, Direction.LEFT);
                Finding.One tail = find(car, new Aim(near, Aim.Sense.AT_MOST, there));
                assertThat(tail.value()).isEqualTo(0.34);
                double last =
                        tail.allRound().frontFirst().orElseThrow().values().get(0);
                double width = found.change().width();
                // The value is taken half a thousandth of the range within the edge, so that it may be rounded.
                assertThat(last).isCloseTo(found.value() + 5e-4 * width, within(1e-5 * width));
                assertThat(isFrontFirst(car, last)).isTrue();
                seen++;
            }
        }
        assertThat(seen).isPositive();
    }

    private static boolean isFrontFirst(Entries car, double pivot) {
        return isFrontFirst(car, PIVOT, pivot);
    }

    private static boolean isFrontFirst(Entries car, String path, double value) {
        return turned(car, path, value, Direction.LEFT, 40).frontFirst()
                && turned(car, path, value, Direction.RIGHT, 40).frontFirst();
    }

    /** The same edge from below: what stiffens the front in roll makes it go first from there on up. */
    @Test
    void fromAnEdgeUpwardTheFrontGoesFirstAndTheValueStandsAboveIt() {
        int seen = 0;
        for (long seed = 1; seed <= 40 && seen < 2; seed++) {
            Entries car = Catalogue.with(car(seed), SPRING, 20_000);
            if (!isFrontFirst(car, SPRING, 20_000) && isFrontFirst(car, SPRING, 120_000)) {
                Finding.One found = (Finding.One) OneChange.find(
                        car,
                        Span.of(car, SPRING, 20_000, 120_000),
                        Aim.frontFirst(),
                        List.of(),
                        OptionalDouble.empty(),
                        trial(Ways.BOTH),
                        Progress.NONE);
                assertThat(found.met()).isTrue();
                assertThat(isFrontFirst(car, SPRING, found.value())).isTrue();
                assertThat(isFrontFirst(car, SPRING, found.value() - 100)).isFalse();
                seen++;
            }
        }
        assertThat(seen).isPositive();
    }

    /** To the right a car slips the other way: its reach is told with the sign of the first way, at the ends of it as well. */
    @Test
    void sideslipHasTheSignOfTheFirstWayRoundInEveryBend() {
        Entries car = car(1);
        Judged limit = judged(Criterion.LIMIT);
        Finding.Reach reach = find(car, new Aim(limit, Aim.Sense.AT_LEAST, 0)).reach();
        double pace = (reach.lowest() + reach.highest()) / 2;
        Judged sideslip = judged(Criterion.SIDESLIP, pace / Trials.G);
        Trial fast = new Trial(List.of(pace), List.of(40.0), Ways.BOTH);
        Finding.One found = find(car, new Aim(sideslip, Aim.Sense.AT_MOST, 1), List.of(), fast);
        Finding.InBend right = found.allRound().bends().get(1);
        assertThat(right.direction()).isEqualTo(Direction.RIGHT);
        for (Finding.Point point : right.curve()) {
            Answers alone = new Trial(List.of(pace), List.of(40.0), Ways.RIGHT)
                    .ask(Catalogue.build(Catalogue.with(car, PIVOT, point.at()))
                            .value()
                            .orElseThrow());
            assertThat(point.figure()).isCloseTo(-sideslip.si(alone).orElseThrow(), within(1e-9));
        }
        assertThat(right.curve().get(0).at()).isGreaterThan(0.2);
    }
}
