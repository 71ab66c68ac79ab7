package evenhand.choice;

import static evenhand.answers.Trials.aim;
import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.car.Car;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.handsums.HandSums;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OneChangeTest {
    private static final String PIVOT = "rear.lateralLocator.height";
    private static final String BAR = "front.bar.rollStiffness";
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Judged UNDERSTEER = judged(Criterion.UNDERSTEER, 0.5);
    private static final Judged ROLL = judged(Criterion.ROLL_GRADIENT, 0.5);
    private static final double BAR_UNIT = 180 / Math.PI; // N·m/rad of one N·m/deg

    private static Entries car() {
        return withBar(100);
    }

    private static Entries withBar(double stiffness) {
        try {
            Quantity quantity = Quantity.parse(stiffness + " N*m/deg", Dimension.ROLL_STIFFNESS);
            Entry bar = new Entries(Optional.empty(), Map.of("rollStiffness", new Entry.Measured(quantity)));
            return Catalogue.with(
                    CatalogueTest.car(), new Catalogue.Difference("front.bar", Optional.empty(), Optional.of(bar)));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static Finding.One find(Span span, Aim aim, List<Aim> keeps, OptionalDouble step) {
        return (Finding.One) OneChange.find(car(), span, aim, keeps, step, TRIAL, Progress.NONE);
    }

    private static Finding.One find(Span span, Aim aim) {
        return find(span, aim, List.of(), OptionalDouble.empty());
    }

    private static Span pivot() {
        return Span.of(car(), PIVOT, 0.18, 0.36);
    }

    private static Span bar() {
        return Span.of(car(), BAR, 0, 400 * BAR_UNIT);
    }

    private static double figure(Judged judged, Span span, double value) {
        return new Variation(car(), List.of(span), TRIAL, Progress.NONE)
                .figure(new Aim(judged, Aim.Sense.EXACTLY, 0), value)
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 130, 333})
    void aBarForAWantedRollGradientIsThatOfTheHandSums(double stiffness) {
        double little = 1e-3 * Trials.G;
        Car wanted = Catalogue.build(withBar(stiffness)).value().orElseThrow().settled();
        double roll = ((HandSums.Found) HandSums.of(wanted, little)).sums().rollAngle() / little;
        Judged judged = judged(Criterion.ROLL_GRADIENT, 1e-3);
        Finding.One found = (Finding.One) OneChange.find(
                car(),
                bar(),
                new Aim(judged, Aim.Sense.EXACTLY, roll),
                List.of(),
                OptionalDouble.empty(),
                Trials.on(1e5, 1e-3),
                Progress.NONE);
        assertThat(found.met()).isTrue();
        assertThat(found.value() / BAR_UNIT).isCloseTo(stiffness, within(0.002 * (stiffness + 100)));
        assertThat(found.solutions()).hasSize(1);
        assertThat(found.slope()).isNegative();
    }

    @Test
    void whatAChangeCanReachAndEverySolutionAreThoseOfADenseGrid() {
        for (Judged judged : List.of(UNDERSTEER, ROLL, judged(Criterion.LIMIT), judged(Criterion.LIMIT_BALANCE))) {
            Span span = pivot();
            int n = 300;
            double[] grid = new double[n + 1];
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0; i <= n; i++) {
                grid[i] = figure(judged, span, span.from() + span.width() * i / n);
                low = Math.min(low, grid[i]);
                high = Math.max(high, grid[i]);
            }
            double level = low + 0.3 * (high - low);
            Finding.One found = find(span, new Aim(judged, Aim.Sense.EXACTLY, level));
            double little = 1e-3 * judged.criterion().noticeable();
            assertThat(found.reach().lowest()).isBetween(low - little, low + 1e-9);
            assertThat(found.reach().highest()).isBetween(high - 1e-9, high + little);
            List<Double> crossings = new ArrayList<>();
            for (int i = 1; i <= n; i++) {
                if ((grid[i - 1] - level) * (grid[i] - level) < 0) {
                    crossings.add(span.from() + span.width() * (i - 0.5) / n);
                }
            }
            assertThat(found.solutions()).hasSameSizeAs(crossings);
            for (int i = 0; i < crossings.size(); i++) {
                assertThat(found.solutions().get(i)).isCloseTo(crossings.get(i), within(span.width() / n));
                assertThat(figure(judged, span, found.solutions().get(i)))
                        .isCloseTo(level, within(1e-6 * judged.criterion().noticeable()));
            }
        }
    }

    @Test
    void theFoundValueGivesTheAimAndIsTheSolutionNearestToThePresentOne() {
        double wanted = figure(UNDERSTEER, pivot(), 0.3);
        Finding.One found = find(pivot(), new Aim(UNDERSTEER, Aim.Sense.EXACTLY, wanted));
        assertThat(found.met()).isTrue();
        assertThat(found.achieved()).isCloseTo(wanted, within(1e-9));
        for (double solution : found.solutions()) {
            assertThat(Math.abs(found.value() - 0.255)).isLessThanOrEqualTo(Math.abs(solution - 0.255));
        }
        double h = 1e-4;
        double slope = (figure(UNDERSTEER, pivot(), found.value() + h) - figure(UNDERSTEER, pivot(), found.value() - h))
                / (2 * h);
        assertThat(found.slope()).isCloseTo(slope, within(0.02 * Math.abs(slope)));
    }

    /** Slopes of a change that is counted in ten thousands and of one in hundred thousands, by a difference of this test's own. */
    @Test
    void theSlopeOverTheRangeOfABarOrAPressureIsThatOfTheFigureThere() {
        slopeIsThatOf(bar(), ROLL, 140 * BAR_UNIT, 0.5 * BAR_UNIT);
        Span pressure = Span.of(car(), "front.tyre.pressure", 150_000, 250_000);
        slopeIsThatOf(pressure, UNDERSTEER, 230_000, 1_000);
    }

    private static void slopeIsThatOf(Span span, Judged judged, double place, double h) {
        Finding.One found = find(span, new Aim(judged, Aim.Sense.EXACTLY, figure(judged, span, place)));
        double slope = (figure(judged, span, place + h) - figure(judged, span, place - h)) / (2 * h);
        assertThat(found.value()).isCloseTo(place, within(1e-6 * place));
        assertThat(found.slope()).isCloseTo(slope, within(1e-3 * Math.abs(slope)));
    }

    @Test
    void aBoundThatThePresentCarMeetsNeedsNoChange() {
        double now = figure(ROLL, bar(), 100 * BAR_UNIT);
        Finding.One found = find(bar(), new Aim(ROLL, Aim.Sense.AT_MOST, now * 1.01));
        assertThat(found.met()).isTrue();
        assertThat(found.value()).isEqualTo(100 * BAR_UNIT, within(1e-9));
    }

    @Test
    void aBoundIsMetJustWhereItBeginsToBe() {
        double now = figure(ROLL, bar(), 100 * BAR_UNIT);
        Finding.One found = find(bar(), new Aim(ROLL, Aim.Sense.AT_MOST, 0.9 * now));
        assertThat(found.met()).isTrue();
        assertThat(found.achieved()).isCloseTo(0.9 * now, within(1e-8));
        assertThat(found.value()).isGreaterThan(100 * BAR_UNIT);
        assertThat(found.notes()).isEmpty();
        Finding.One softer = find(bar(), new Aim(ROLL, Aim.Sense.AT_LEAST, 1.02 * now));
        assertThat(softer.value()).isLessThan(100 * BAR_UNIT);
        assertThat(softer.achieved()).isCloseTo(1.02 * now, within(1e-8));
    }

    @Test
    void anAimOutOfReachIsToldWithTheNearestPlace() {
        Finding.One found = find(bar(), aim(ROLL, Aim.Sense.EXACTLY, 0.1));
        assertThat(found.met()).isFalse();
        assertThat(found.solutions()).isEmpty();
        assertThat(found.value()).isEqualTo(400 * BAR_UNIT, within(1e-9));
        assertThat(found.achieved()).isEqualTo(found.reach().lowest());
        assertThat(found.notes()).contains(Finding.Note.END_OF_RANGE);
    }

    @Test
    void whatIsToBeKeptTakesAwaySolutionsAndTheNearestThatKeepsIsAtItsEdge() {
        double now = figure(ROLL, bar(), 100 * BAR_UNIT);
        Aim flatter = new Aim(ROLL, Aim.Sense.EXACTLY, 0.9 * now);
        double understeer = figure(UNDERSTEER, bar(), 140 * BAR_UNIT);
        boolean grows = understeer > figure(UNDERSTEER, bar(), 100 * BAR_UNIT);
        Aim keep = new Aim(UNDERSTEER, grows ? Aim.Sense.AT_MOST : Aim.Sense.AT_LEAST, understeer);
        Finding.One free = find(bar(), flatter);
        assertThat(free.value()).isGreaterThan(150 * BAR_UNIT);
        Finding.One held = find(bar(), flatter, List.of(keep), OptionalDouble.empty());
        assertThat(held.met()).isFalse();
        assertThat(held.value()).isCloseTo(140 * BAR_UNIT, within(1e-3));
        assertThat(held.kept()).allMatch(Finding.Kept::ok);
        Finding.One bound =
                find(bar(), new Aim(ROLL, Aim.Sense.AT_MOST, 0.99 * now), List.of(keep), OptionalDouble.empty());
        assertThat(bound.met()).isTrue();
        assertThat(bound.achieved()).isCloseTo(0.99 * now, within(1e-8));
    }

    @Test
    void stepsThatCanBeBuiltAreWholeMultiplesNextToTheSolution() {
        double wanted = figure(UNDERSTEER, pivot(), 0.2987);
        Aim aim = new Aim(UNDERSTEER, Aim.Sense.EXACTLY, wanted);
        Finding.One found = find(pivot(), aim, List.of(), OptionalDouble.of(0.005));
        assertThat(found.value()).isCloseTo(0.3, within(1e-12));
        assertThat(found.unrounded().orElseThrow()).isCloseTo(0.2987, within(1e-9));
        assertThat(found.achieved()).isEqualTo(figure(UNDERSTEER, pivot(), found.value()));
        double now = figure(ROLL, bar(), 100 * BAR_UNIT);
        Finding.One bound =
                find(bar(), new Aim(ROLL, Aim.Sense.AT_MOST, 0.9 * now), List.of(), OptionalDouble.of(25 * BAR_UNIT));
        assertThat(bound.met()).isTrue();
        assertThat(bound.value() / (25 * BAR_UNIT)).isCloseTo(Math.rint(bound.value() / (25 * BAR_UNIT)), within(1e-9));
        assertThat(bound.achieved()).isLessThanOrEqualTo(0.9 * now);
        assertThat(figure(ROLL, bar(), bound.value() - 25 * BAR_UNIT)).isGreaterThan(0.9 * now);
    }

    @Test
    void aStepThatDoesNotKeepIsNotMet() {
        double wanted = figure(UNDERSTEER, pivot(), 0.2987);
        Aim aim = new Aim(UNDERSTEER, Aim.Sense.EXACTLY, wanted);
        double little = 0.1 * Math.abs(figure(UNDERSTEER, pivot(), 0.3) - wanted);
        List<Aim> keeps = List.of(
                new Aim(UNDERSTEER, Aim.Sense.AT_LEAST, wanted - little),
                new Aim(UNDERSTEER, Aim.Sense.AT_MOST, wanted + little));
        assertThat(find(pivot(), aim, keeps, OptionalDouble.empty()).met()).isTrue();
        Finding.One stepped = find(pivot(), aim, keeps, OptionalDouble.of(0.005));
        assertThat(stepped.value()).isCloseTo(0.3, within(1e-12));
        assertThat(stepped.met()).isFalse();
    }

    /** A range of 800 steps, of which half at most are looked at: those about the solution, wherever it lies. */
    @Test
    void ofManyStepsThoseAboutTheSolutionAreLookedAtUpToBothEnds() {
        double step = 0.5 * BAR_UNIT;
        Span span = Span.of(car(), BAR, 0, 400.3 * BAR_UNIT);
        for (double units : new double[] {0.2, 3.3, 200.2, 397.7, 399.4, 400.28}) {
            Aim aim = new Aim(ROLL, Aim.Sense.EXACTLY, figure(ROLL, span, units * BAR_UNIT));
            double built = Math.min(800, Math.rint(2 * units));
            assertThat(find(span, aim, List.of(), OptionalDouble.of(step)).value() / step)
                    .isCloseTo(built, within(1e-9));
        }
    }

    @Test
    void aStepBeyondTheRangeIsNoneThoughItBeNearer() {
        Span up = Span.of(car(), PIVOT, 0.2, 0.2149);
        Aim high = new Aim(ROLL, Aim.Sense.EXACTLY, figure(ROLL, up, 0.2148));
        assertThat(find(up, high, List.of(), OptionalDouble.of(0.005)).value()).isCloseTo(0.21, within(1e-12));
        Span down = Span.of(car(), PIVOT, 0.2012, 0.206);
        Aim low = new Aim(ROLL, Aim.Sense.EXACTLY, figure(ROLL, down, 0.2013));
        assertThat(find(down, low, List.of(), OptionalDouble.of(0.005)).value()).isCloseTo(0.205, within(1e-12));
    }

    /** A hundredth of the range is the end of it. */
    @Test
    void whatIsFoundNearAnEndOfTheRangeSaysSo() {
        Span span = Span.of(car(), BAR, 50 * BAR_UNIT, 450 * BAR_UNIT);
        for (double units : new double[] {52, 58, 442, 448}) {
            Aim aim = new Aim(ROLL, Aim.Sense.EXACTLY, figure(ROLL, span, units * BAR_UNIT));
            Finding.One found = find(span, aim);
            assertThat(found.value() / BAR_UNIT).isCloseTo(units, within(1e-4));
            assertThat(found.notes().contains(Finding.Note.END_OF_RANGE)).isEqualTo(units < 54 || units > 446);
        }
    }

    @Test
    void whereNothingKeepsThePresentValueStands() {
        Aim anything = aim(ROLL, Aim.Sense.AT_MOST, 1e3);
        Aim never = aim(UNDERSTEER, Aim.Sense.AT_LEAST, 1e3);
        Finding.One found = find(bar(), anything, List.of(never), OptionalDouble.empty());
        assertThat(found.met()).isFalse();
        assertThat(found.value()).isCloseTo(100 * BAR_UNIT, within(1e-9));
    }

    @Test
    void theEndsOfARangeAreStepsAlthoughTheirUnitRounds() {
        Span span = Span.of(car(), PIVOT, 0.2, 0.34);
        assertThat(span.firstStep(0.005)).isEqualTo(40);
        assertThat(span.lastStep(0.005)).isEqualTo(68);
        assertThat(Span.of(car(), PIVOT, 0.201, 0.204).holds(0.005)).isFalse();
        assertThat(Span.of(car(), PIVOT, 0.2, 0.204).holds(0.005)).isTrue();
    }

    @Test
    void aPaceBeyondTheLimitHasNoValue() {
        Trial fast = Trials.at(1.5);
        Aim aim = aim(judged(Criterion.UNDERSTEER, 1.5), Aim.Sense.EXACTLY, 1);
        assertThat(OneChange.find(car(), pivot(), aim, List.of(), OptionalDouble.empty(), fast, Progress.NONE))
                .isInstanceOf(Finding.NoValue.class);
    }

    @Test
    void whereAFigureBeginsIsClosedInOnAndABoundMetThereIsFound() {
        // The front bar moves the limit: the present car does not reach the pace, others in the range do.
        Judged limit = judged(Criterion.LIMIT);
        double now = figure(limit, bar(), 100 * BAR_UNIT);
        Finding.Reach reach =
                find(bar(), new Aim(limit, Aim.Sense.AT_LEAST, now)).reach();
        double pace = (now + reach.highest()) / 2;
        assertThat(pace).isGreaterThan(now + 1e-3);
        Judged judged = judged(Criterion.ROLL_GRADIENT, pace / Trials.G);
        Trial trial = Trials.at(pace / Trials.G);
        Aim anything = aim(judged, Aim.Sense.AT_MOST, 1e3);
        Finding.One found = (Finding.One)
                OneChange.find(car(), bar(), anything, List.of(), OptionalDouble.empty(), trial, Progress.NONE);
        assertThat(found.met()).isTrue();
        assertThat(figure(limit, bar(), found.value())).isCloseTo(pace, within(1e-6));
        Finding.One reaching = find(bar(), new Aim(limit, Aim.Sense.AT_LEAST, pace));
        assertThat(found.value()).isCloseTo(reaching.value(), within(1e-4 * bar().width()));
    }

    @Test
    void aChangeThatMovesNothingIsFlat() {
        Span pressure = Span.of(car(), "front.tyre.bestLeanIn", 0, 0.05);
        Finding.One found = find(pressure, new Aim(ROLL, Aim.Sense.AT_LEAST, 0));
        assertThat(found.notes()).contains(Finding.Note.FLAT);
    }

    @Test
    void aRangeThatIsNoneIsRefused() {
        assertThatThrownBy(() -> Span.of(car(), PIVOT, 0.3, 0.2)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> Span.of(car(), PIVOT, -1, 0.2)).hasMessageContaining("cannot be -1000 mm on any car");
        assertThatThrownBy(() -> Span.of(car(), "rear.bar.rollStiffness", 1, 2))
                .hasMessageContaining("is not on this car");
        assertThatThrownBy(() -> Span.of(car(), "rear.lateralLocator.hieght", 1, 2))
                .hasMessageContaining("the nearest known key is height");
    }

    @Test
    void theSameSearchFindsTheSame() {
        Aim aim = new Aim(UNDERSTEER, Aim.Sense.EXACTLY, figure(UNDERSTEER, pivot(), 0.3));
        assertThat(find(pivot(), aim)).isEqualTo(find(pivot(), aim));
    }

    @Test
    void whereNoStepBesideTheNearestSolutionKeepsThoseBesideAnotherDo() {
        // The limit rises and falls over the spring rate, so it is at a level twice.
        Judged limit = judged(Criterion.LIMIT);
        Span spring = Span.of(car(), "front.spring.rate", 3_000, 130_000);
        double end = figure(limit, spring, spring.to());
        double level = end + 0.7 * (find(spring, limitAtLeast(0)).reach().highest() - end);
        Aim aim = new Aim(limit, Aim.Sense.EXACTLY, level);
        List<Double> solutions = find(spring, aim).solutions();
        assertThat(solutions).hasSize(2);
        double present = spring.adjustable().si();
        boolean firstIsNearer = Math.abs(solutions.get(0) - present) < Math.abs(solutions.get(1) - present);
        double nearest = solutions.get(firstIsNearer ? 0 : 1);
        double other = solutions.get(firstIsNearer ? 1 : 0);
        int seen = 0;
        for (double step = 1_000; step < 3_000; step += 25) {
            double besideNearest = miss(limit, spring, nearest, step, level);
            double besideOther = miss(limit, spring, other, step, level);
            if (besideOther < 0.8 * besideNearest) {
                double near = 0.9 * besideNearest;
                List<Aim> keeps = List.of(
                        new Aim(limit, Aim.Sense.AT_LEAST, level - near),
                        new Aim(limit, Aim.Sense.AT_MOST, level + near));
                Finding.One found = find(spring, aim, keeps, OptionalDouble.of(step));
                assertThat(found.met()).isTrue();
                assertThat(found.kept()).allMatch(Finding.Kept::ok);
                assertThat(found.value()).isCloseTo(other, within(step));
                assertThat(found.unrounded().orElseThrow()).isCloseTo(other, within(1e-6 * other));
                seen++;
            }
        }
        assertThat(seen).isPositive();
    }

    /** The same two places for whoever starts: a soft spring is stiffened to the nearer one, a stiff one softened. */
    @Test
    void ofTwoSolutionsTheOneNearerToThePresentCarIsBuilt() {
        Judged limit = judged(Criterion.LIMIT);
        Span spring = Span.of(car(), "front.spring.rate", 3_000, 130_000);
        double end = figure(limit, spring, spring.to());
        double level = end + 0.7 * (find(spring, limitAtLeast(0)).reach().highest() - end);
        Aim aim = new Aim(limit, Aim.Sense.EXACTLY, level);
        List<Double> solutions = find(spring, aim).solutions();
        for (double solution : solutions) {
            Entries present = Catalogue.with(car(), spring.path(), solution - 700);
            Finding.One found = (Finding.One) OneChange.find(
                    present,
                    Span.of(present, spring.path(), 3_000, 130_000),
                    aim,
                    List.of(),
                    OptionalDouble.of(500),
                    TRIAL,
                    Progress.NONE);
            assertThat(found.value()).isCloseTo(solution, within(500.0));
            assertThat(found.unrounded().orElseThrow()).isCloseTo(solution, within(1e-6 * solution));
        }
        assertThat(solutions).hasSize(2);
    }

    private static Aim limitAtLeast(double value) {
        return new Aim(judged(Criterion.LIMIT), Aim.Sense.AT_LEAST, value);
    }

    /** By how much the better of the steps beside a place misses a level. */
    private static double miss(Judged judged, Span span, double place, double step, double level) {
        double below = step * Math.floor(place / step);
        return Math.min(
                Math.abs(figure(judged, span, below) - level), Math.abs(figure(judged, span, below + step) - level));
    }
}
