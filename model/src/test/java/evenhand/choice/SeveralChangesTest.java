package evenhand.choice;

import static evenhand.answers.Trials.aim;
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
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SeveralChangesTest {
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Judged UNDERSTEER = judged(Criterion.UNDERSTEER, 0.5);
    private static final Judged ROLL = judged(Criterion.ROLL_GRADIENT, 0.5);
    private static final Entries CAR = CatalogueTest.car();
    private static final List<Span> SPANS = List.of(
            Span.of(CAR, "rear.lateralLocator.height", 0.2, 0.34),
            Span.of(CAR, "front.spring.rate", 40_000, 90_000),
            Span.of(CAR, "rear.spring.rate", 20_000, 40_000));
    private static final List<OptionalDouble> FREE =
            List.of(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    private static final Aim LESS_UNDERSTEER = new Aim(
            UNDERSTEER,
            Aim.Sense.EXACTLY,
            now(UNDERSTEER) - UNDERSTEER.criterion().noticeable() * 2);
    /** Several tests look at what this one search finds. */
    private static final Finding.Several FREELY = find(LESS_UNDERSTEER, List.of(), FREE);

    private static Finding.Several find(Aim aim, List<Aim> keeps, List<OptionalDouble> steps) {
        return (Finding.Several) SeveralChanges.find(CAR, SPANS, aim, keeps, steps, TRIAL, Progress.NONE);
    }

    private static double now(Judged judged) {
        return new Variation(CAR, List.of(), TRIAL, List.of(), Progress.NONE)
                .figure(new Aim(judged, Aim.Sense.EXACTLY, 0))
                .orElseThrow();
    }

    private static double size(List<Span> spans, double... values) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            double move =
                    (values[i] - spans.get(i).adjustable().si()) / spans.get(i).width();
            sum += move * move;
        }
        return sum;
    }

    private static double size(Finding.Several found) {
        return size(
                found.changes(),
                found.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Every place of a grid over two changes, the last change solved on a fine line for an exact aim. */
    private static double leastOfGrid(Aim aim, List<Aim> keeps, int n) {
        Variation variation = new Variation(CAR, SPANS, TRIAL, List.of(), Progress.NONE);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= n; i++) {
            for (int k = 0; k <= n; k++) {
                double[] values = {place(0, i, n), place(1, k, n), SPANS.get(2).from()};
                List<double[]> passes = new ArrayList<>();
                double before = 0;
                for (int m = 0; m <= n; m++) {
                    values[2] = place(2, m, n);
                    Optional<Answers> answers = variation.at(values);
                    double lack =
                            aim.value() - aim.judged().si(answers.orElseThrow()).orElseThrow();
                    if (m > 0 && lack * before <= 0) {
                        double part = before / (before - lack);
                        passes.add(new double[] {
                            values[0],
                            values[1],
                            place(2, m - 1, n) + part * SPANS.get(2).width() / n
                        });
                    }
                    before = lack;
                }
                for (double[] pass : passes) {
                    if (Variation.keeps(variation.at(pass).orElseThrow(), keeps)) {
                        least = Math.min(least, size(SPANS, pass));
                    }
                }
            }
        }
        return least;
    }

    private static double place(int span, int i, int n) {
        return SPANS.get(span).from() + SPANS.get(span).width() * i / n;
    }

    @Test
    void aGridFindsNoSmallerChangesThatMeetTheAim() {
        Aim aim = LESS_UNDERSTEER;
        Finding.Several found = FREELY;
        assertThat(found.met()).isTrue();
        assertThat(found.achieved())
                .isCloseTo(aim.value(), within(1e-6 * UNDERSTEER.criterion().noticeable()));
        assertThat(found.notes()).isEmpty();
        assertThat(size(found)).isLessThanOrEqualTo(leastOfGrid(aim, List.of(), 12) * (1 + 1e-3) + 1e-9);
    }

    @Test
    void aGridFindsNoSmallerChangesThatKeepToo() {
        Aim aim = LESS_UNDERSTEER;
        Aim keep = new Aim(ROLL, Aim.Sense.AT_MOST, now(ROLL));
        Finding.Several found = find(aim, List.of(keep), FREE);
        assertThat(found.met()).isTrue();
        assertThat(found.kept()).hasSize(1).allMatch(Finding.Kept::ok);
        assertThat(size(found)).isLessThanOrEqualTo(leastOfGrid(aim, List.of(keep), 12) * (1 + 1e-3) + 1e-9);
        assertThat(size(found)).isGreaterThanOrEqualTo(size(FREELY) - 1e-9);
    }

    @Test
    void aBoundThatThePresentCarMeetsNeedsNoChange() {
        Finding.Several found = find(new Aim(ROLL, Aim.Sense.AT_MOST, now(ROLL) * 1.01), List.of(), FREE);
        assertThat(found.met()).isTrue();
        assertThat(size(found)).isZero();
    }

    @Test
    void everyValueLiesInItsRangeWhereThePresentOneDoesNot() {
        List<Span> above = List.of(
                Span.of(CAR, "rear.lateralLocator.height", 0.28, 0.34),
                Span.of(CAR, "front.spring.rate", 60_000, 90_000));
        Aim aim = new Aim(ROLL, Aim.Sense.AT_MOST, now(ROLL) * 0.93);
        Finding.Several found = (Finding.Several) SeveralChanges.find(
                CAR,
                above,
                aim,
                List.of(),
                List.of(OptionalDouble.empty(), OptionalDouble.empty()),
                TRIAL,
                Progress.NONE);
        assertThat(found.met()).isTrue();
        for (int i = 0; i < above.size(); i++) {
            assertThat(found.values().get(i))
                    .isBetween(above.get(i).from(), above.get(i).to());
        }
    }

    @Test
    void whatCannotBeMetIsToldWithTheNearestThatKeeps() {
        Aim aim = aim(ROLL, Aim.Sense.EXACTLY, 0.5);
        Aim keep = new Aim(UNDERSTEER, Aim.Sense.AT_LEAST, now(UNDERSTEER));
        Finding.Several found = find(aim, List.of(keep), FREE);
        assertThat(found.met()).isFalse();
        assertThat(found.kept()).allMatch(Finding.Kept::ok);
        assertThat(found.achieved()).isGreaterThanOrEqualTo(found.reach().lowest() - 1e-9);
        Variation variation = new Variation(CAR, SPANS, TRIAL, List.of(), Progress.NONE);
        int n = 8;
        int places = n + 1;
        for (int i = 0; i < places * places * places; i++) {
            double[] values = {
                place(0, i % places, n), place(1, i / places % places, n), place(2, i / (places * places), n)
            };
            Answers answers = variation.at(values).orElseThrow();
            if (keep.met(UNDERSTEER.si(answers).orElseThrow())) {
                assertThat(found.achieved())
                        .isLessThanOrEqualTo(ROLL.si(answers).orElseThrow()
                                + 0.02 * ROLL.criterion().noticeable());
            }
        }
    }

    @Test
    void stepsThatCanBeBuiltAreWholeMultiplesAndTheRestIsSolvedAgain() {
        Aim aim = LESS_UNDERSTEER;
        List<OptionalDouble> steps = List.of(OptionalDouble.of(0.01), OptionalDouble.empty(), OptionalDouble.of(1000));
        Finding.Several found = find(aim, List.of(), steps);
        assertThat(found.met()).isTrue();
        assertThat(found.values().get(0) / 0.01)
                .isCloseTo(Math.rint(found.values().get(0) / 0.01), within(1e-9));
        assertThat(found.values().get(2) / 1000)
                .isCloseTo(Math.rint(found.values().get(2) / 1000), within(1e-9));
        assertThat(found.achieved())
                .isCloseTo(aim.value(), within(1e-6 * UNDERSTEER.criterion().noticeable()));
        assertThat(found.unrounded()).isPresent();
        assertThat(size(found)).isLessThan(size(FREELY) + 0.05);
    }

    @Test
    void reachHoldsWhatAnyPlaceOfTheRangesGives() {
        Finding.Several found = find(new Aim(ROLL, Aim.Sense.AT_MOST, now(ROLL)), List.of(), FREE);
        Variation variation = new Variation(CAR, SPANS, TRIAL, List.of(), Progress.NONE);
        for (int corner = 0; corner < 8; corner++) {
            double figure = variation
                    .figure(
                            new Aim(ROLL, Aim.Sense.EXACTLY, 0),
                            place(0, corner & 1, 1),
                            place(1, corner >> 1 & 1, 1),
                            place(2, corner >> 2, 1))
                    .orElseThrow();
            assertThat(figure)
                    .isBetween(found.reach().lowest() - 1e-9, found.reach().highest() + 1e-9);
        }
    }

    @Test
    void aFigureThatPartOfTheRangesLacksStillHasItsReach() {
        Judged limit = judged(Criterion.LIMIT);
        Finding.Several limits = find(new Aim(limit, Aim.Sense.AT_LEAST, 0), List.of(), FREE);
        double pace = (limits.reach().lowest() + limits.reach().highest()) / 2 / Trials.G;
        Judged rare = judged(Criterion.ROLL_GRADIENT, pace);
        Finding found = SeveralChanges.find(
                CAR, SPANS, aim(rare, Aim.Sense.AT_MOST, 1e3), List.of(), FREE, Trials.at(pace), Progress.NONE);
        assertThat(((Finding.Several) found).met()).isTrue();
        assertThat(SeveralChanges.find(
                        CAR,
                        SPANS,
                        aim(judged(Criterion.UNDERSTEER, 1.5), Aim.Sense.EXACTLY, 1),
                        List.of(),
                        FREE,
                        Trials.at(1.5),
                        Progress.NONE))
                .isInstanceOf(Finding.NoValue.class);
    }

    @Test
    void theSameSearchFindsTheSame() {
        assertThat(find(LESS_UNDERSTEER, List.of(), FREE)).isEqualTo(FREELY);
    }

    private static Finding.Several find(List<Span> spans, Aim aim, List<OptionalDouble> steps, Trial trial) {
        return (Finding.Several) SeveralChanges.find(CAR, spans, aim, List.of(), steps, trial, Progress.NONE);
    }

    private static Finding.Several find(List<Span> spans, Aim aim, Trial trial) {
        return find(
                spans, aim, spans.stream().map(span -> OptionalDouble.empty()).toList(), trial);
    }

    private static Answers at(List<Span> spans, Trial trial, double... values) {
        return new Variation(CAR, spans, trial, List.of(), Progress.NONE)
                .at(values)
                .orElseThrow();
    }

    /** Wide tracks and a low centre of gravity reach the highest limit: a pace just below it is reached at that corner alone. */
    @Test
    void aPaceThatIsReachedAtACornerOfTheRangesAloneIsReached() {
        List<Span> spans = List.of(
                Span.of(CAR, "front.track", 1.3, 1.5),
                Span.of(CAR, "cgHeight", 0.45, 0.55),
                Span.of(CAR, "rear.track", 1.3, 1.5));
        Judged limit = judged(Criterion.LIMIT);
        double corner = limit.si(at(spans, TRIAL, 1.5, 0.45, 1.5)).orElseThrow();
        double beside = Math.max(
                limit.si(at(spans, TRIAL, 1.499, 0.45, 1.5)).orElseThrow(),
                limit.si(at(spans, TRIAL, 1.5, 0.45, 1.499)).orElseThrow());
        double pace = (corner + beside) / 2 / Trials.G;
        Judged rare = judged(Criterion.ROLL_GRADIENT, pace);
        Finding.Several found = find(spans, aim(rare, Aim.Sense.AT_MOST, 1e3), Trials.at(pace));
        assertThat(found.met()).isTrue();
        assertThat(found.values().get(0)).isBetween(1.499, 1.5);
        assertThat(found.values().get(1)).isBetween(0.45, 0.451);
        assertThat(found.values().get(2)).isBetween(1.499, 1.5);
        assertThat(found.notes()).contains(Finding.Note.END_OF_RANGE);
    }

    /** Grip moves the limit and hardly the lean: where a wet car does not get there, its lean is no better than any seen. */
    @Test
    void aFigureThatHardlyMovesAndThatPartOfTheRangesLacksIsFlat() {
        List<Span> grip =
                List.of(Span.of(CAR, "front.tyre.friction", 0.9, 0.92), Span.of(CAR, "rear.tyre.friction", 0.9, 0.92));
        Judged lean = judged(Criterion.LEAN, 0.778);
        Trial trial = Trials.at(0.778);
        double here = lean.si(at(grip, trial, 0.92, 0.92)).orElseThrow();
        Finding.Several found = find(grip, new Aim(lean, Aim.Sense.AT_MOST, 2 * here), trial);
        assertThat(found.met()).isTrue();
        double noticeable = lean.criterion().noticeable();
        assertThat(found.reach().lowest()).isBetween(here - 0.1 * noticeable, here);
        assertThat(found.reach().highest()).isBetween(here, here + 0.1 * noticeable);
        assertThat(found.notes()).containsExactly(Finding.Note.FLAT);
    }

    /** A tall car whose inner front spring goes loose at some 89.5 N/mm: from there on it steers otherwise. */
    @Test
    void rightBesideWhereASpringGoesLooseTheUndersteerHasAKink() {
        Entries tall = Catalogue.with(CAR, "cgHeight", 0.7);
        tall = Catalogue.with(tall, "front.spring.rate", 50_000);
        tall = Catalogue.with(tall, "rear.spring.rate", 50_000);
        List<Span> spans =
                List.of(Span.of(tall, "front.spring.rate", 40_000, 160_000), Span.of(tall, "rear.track", 1.39, 1.41));
        Trial trial = Trials.at(0.7);
        Judged understeer = judged(Criterion.UNDERSTEER, 0.7);
        Variation variation = new Variation(tall, spans, trial, List.of(), Progress.NONE);
        double there = understeer.si(variation.at(89_000, 1.4).orElseThrow()).orElseThrow();
        Finding.Several found = (Finding.Several) SeveralChanges.find(
                tall,
                spans,
                new Aim(understeer, Aim.Sense.EXACTLY, there),
                List.of(),
                FREE.subList(0, 2),
                trial,
                Progress.NONE);
        assertThat(found.met()).isTrue();
        assertThat(found.values().get(0)).isCloseTo(89_000, within(50.0));
        assertThat(found.notes()).containsExactly(Finding.Note.KINK);
    }

    /** Of five stepped changes each goes to one of the two steps next to its place: here the present car, which does already. */
    @Test
    void ofManySteppedChangesEachGoesToAStepNextToItsPlace() {
        List<Span> spans = List.of(
                Span.of(CAR, "rear.lateralLocator.height", 0.2, 0.34),
                Span.of(CAR, "front.spring.rate", 40_000, 90_000),
                Span.of(CAR, "rear.spring.rate", 20_000, 40_000),
                Span.of(CAR, "front.tyre.pressure", 180_000, 240_000),
                Span.of(CAR, "rear.tyre.pressure", 180_000, 240_000));
        List<Double> present = List.of(0.255, 60_000.0, 28_000.0, 200_000.0, 200_000.0);
        // Each present value lies three tenths of a step above a whole one.
        List<OptionalDouble> steps = new ArrayList<>();
        List<Integer> counts = List.of(20, 24, 18, 30, 40);
        for (int k = 0; k < spans.size(); k++) {
            steps.add(OptionalDouble.of(present.get(k) / (counts.get(k) + 0.3)));
        }
        Finding.Several found = find(spans, new Aim(ROLL, Aim.Sense.AT_MOST, 1.02 * now(ROLL)), steps, TRIAL);
        assertThat(found.met()).isTrue();
        for (int k = 0; k < spans.size(); k++) {
            double step = steps.get(k).getAsDouble();
            assertThat(found.unrounded().orElseThrow().get(k)).isCloseTo(present.get(k), within(1e-9 * present.get(k)));
            assertThat(found.values().get(k) / step).as(spans.get(k).path()).isCloseTo(counts.get(k), within(1e-6));
        }
    }

    /** Raised and sprung stiffly behind, the tail goes first. The range of the pivot begins above where it is. */
    private static final List<Span> TO_THE_TAIL = List.of(
            Span.of(CAR, "rear.lateralLocator.height", 0.28, 0.4), Span.of(CAR, "rear.spring.rate", 20_000, 80_000));

    private static final double[] PRESENT = {0.28, 28_000};

    private static boolean isFrontFirst(double... values) {
        return at(TO_THE_TAIL, TRIAL, values).frontFirst();
    }

    private static Finding.Several tailFirst(OptionalDouble... steps) {
        Judged near = judged(Criterion.NEAR_UNDERSTEER);
        Aim tail = new Aim(near, Aim.Sense.AT_MOST, 40 * near.criterion().noticeable());
        return find(TO_THE_TAIL, tail, List.of(steps), TRIAL);
    }

    @Test
    void theLastCarOfWhichTheFrontGoesFirstLiesOnTheStraightWayFromThePresentOne() {
        Finding.Several found = tailFirst(OptionalDouble.empty(), OptionalDouble.empty());
        assertThat(isFrontFirst(PRESENT)).isTrue();
        assertThat(isFrontFirst(found.values().get(0), found.values().get(1))).isFalse();
        List<Double> last = found.allRound().frontFirst().orElseThrow().values();
        double[] parts = new double[2];
        double[] further = new double[2];
        for (int k = 0; k < 2; k++) {
            double way = found.values().get(k) - PRESENT[k];
            assertThat(way).isPositive();
            parts[k] = (last.get(k) - PRESENT[k]) / way;
            further[k] = last.get(k) + 1e-6 * way;
        }
        assertThat(parts[0]).isBetween(0.05, 0.95);
        assertThat(parts[1]).isCloseTo(parts[0], within(1e-9));
        assertThat(isFrontFirst(last.get(0), last.get(1))).isTrue();
        assertThat(isFrontFirst(further)).isFalse();
        assertThat(found.allRound().frontFirst().get().answers().frontFirst()).isTrue();
    }

    @Test
    void inStepsThatCarIsAtTheLastWholeOnesBeforeIt() {
        List<Double> steps = List.of(0.004, 1_500.0);
        Finding.Several found = tailFirst(OptionalDouble.of(0.004), OptionalDouble.of(1_500));
        List<Double> last = found.allRound().frontFirst().orElseThrow().values();
        // The place on the straight way, halved here.
        double inside = 0;
        double outside = 1;
        for (int i = 0; i < 30; i++) {
            double middle = (inside + outside) / 2;
            if (isFrontFirst(on(found, middle, 0), on(found, middle, 1))) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        for (int k = 0; k < 2; k++) {
            double step = steps.get(k);
            assertThat(last.get(k)).isCloseTo(step * Math.floor(on(found, inside, k) / step), within(1e-9 * step));
        }
    }

    private static double on(Finding.Several found, double part, int k) {
        return PRESENT[k] + part * (found.values().get(k) - PRESENT[k]);
    }
}
