package evenhand.doubt;

import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.answers.Impatient;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Deviation;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Slot;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SlopeDoubtTest {
    private static final Trial TRIAL = Trials.at(0.2, 0.5);
    private static final Judged ROLL = judged(Criterion.ROLL_GRADIENT, 0.5);
    private static final Judged GENTLY = judged(Criterion.UNDERSTEER, 0.2);
    private static final Judged UNDERSTEER = judged(Criterion.UNDERSTEER, 0.5);
    private static final Judged LIMIT = judged(Criterion.LIMIT);
    private static final List<Judged> FIGURES = List.of(GENTLY, UNDERSTEER, ROLL, LIMIT);
    private static final Entries CAR = CatalogueTest.car();
    private static final Entries STIFFER = Catalogue.with(CAR, "front.spring.rate", 70_000);

    private static Entries with(Entries car, String path, String quantity) {
        try {
            return Catalogue.with(
                    car,
                    path,
                    Quantity.parse(
                            quantity,
                            Catalogue.build(car).at(path).orElseThrow().dimension()));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(quantity, e);
        }
    }

    private static SlopeDoubt doubt(List<Entries> cars, Tolerance.Unsaid unsaid) {
        return SlopeDoubt.of(cars, TRIAL, FIGURES, unsaid, Progress.NONE);
    }

    private static SlopeSpread of(Entries car, Judged judged, Tolerance.Unsaid unsaid) {
        return doubt(List.of(car), unsaid).of(0, judged).orElseThrow();
    }

    private static double figure(Entries car, Judged judged, Deviation deviation) {
        return judged.si(TRIAL.ask(Catalogue.build(car.off(deviation)).value().orElseThrow()))
                .orElseThrow();
    }

    /** What a figure moves by one standard deviation of each number, by this test's own central differences. */
    private static Map<String, Double> moves(Entries car, Judged judged) {
        Map<String, Double> moves = new HashMap<>();
        for (Adjustable number : Catalogue.adjustments(car)) {
            double sigma = Tolerance.of(number, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES) / 2;
            if (sigma > 0) {
                double up = figure(car, judged, n -> n.si() + (n.path().equals(number.path()) ? sigma : 0));
                double down = figure(car, judged, n -> n.si() - (n.path().equals(number.path()) ? sigma : 0));
                moves.put(number.path(), (up - down) / 2);
            }
        }
        return moves;
    }

    private static double root(Map<String, Double> moves) {
        return Math.sqrt(
                moves.values().stream().mapToDouble(move -> move * move).sum());
    }

    @Test
    void theHalfWidthIsTwiceTheRootOfTheSumOfSquaresOfAllMoves() {
        for (Judged judged : List.of(UNDERSTEER, ROLL)) {
            Map<String, Double> moves = moves(CAR, judged);
            SlopeSpread spread = of(CAR, judged, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES);
            assertThat(spread.nominal()).isEqualTo(figure(CAR, judged, Adjustable::si));
            assertThat(spread.halfWidth()).isCloseTo(2 * root(moves), within(0.005 * 2 * root(moves)));
            assertThat(spread.untold()).isEmpty();
            assertThat(spread.causes()).hasSizeGreaterThan(3);
            double before = 1;
            double told = 0;
            for (SlopeSpread.Cause cause : spread.causes()) {
                double move = moves.get(cause.path());
                assertThat(cause.move()).as(cause.path()).isCloseTo(move, within(0.05 * Math.abs(move)));
                assertThat(cause.share()).isLessThanOrEqualTo(before);
                before = cause.share();
                told += cause.share();
            }
            assertThat(told).isBetween(0.95, 1.0);
        }
    }

    /** One car, measured once: what is off in one set-up is off in the other, and their difference hardly moves. */
    @Test
    void aNumberThatTwoSetUpsShareMovesBoth() {
        SlopeDoubt doubt = doubt(List.of(CAR, STIFFER), Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES);
        Map<String, Double> moves = moves(STIFFER, UNDERSTEER);
        moves(CAR, UNDERSTEER).forEach((path, move) -> moves.merge(path, -move, Double::sum));
        SlopeSpread difference = doubt.difference(1, UNDERSTEER).orElseThrow();
        assertThat(difference.halfWidth()).isCloseTo(2 * root(moves), within(0.01 * 2 * root(moves)));
        assertThat(difference.halfWidth())
                .isLessThan(0.3 * doubt.of(0, UNDERSTEER).orElseThrow().halfWidth());
        assertThat(difference.nominal())
                .isEqualTo(figure(STIFFER, UNDERSTEER, Adjustable::si) - figure(CAR, UNDERSTEER, Adjustable::si));
    }

    @Test
    void aSetUpDoesNotDifferFromItself() {
        SlopeDoubt doubt = doubt(List.of(CAR, CAR), Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES);
        for (Judged judged : FIGURES) {
            SlopeSpread difference = doubt.difference(1, judged).orElseThrow();
            assertThat(difference.nominal()).isZero();
            assertThat(difference.halfWidth()).isZero();
            assertThat(difference.rest()).hasValue(0);
            assertThat(difference.causes()).isEmpty();
            assertThat(difference.isFair()).isTrue();
            assertThat(doubt.of(1, judged)).isEqualTo(doubt.of(0, judged));
        }
    }

    /** Of what the height of the centre of gravity adds to the variance, half the tolerance leaves a quarter. */
    @Test
    void halfTheToleranceLeavesAQuarterOfTheVariance() {
        double without = variance("500 mm");
        double much = variance("500 mm ± 60 mm") - without;
        double little = variance("500 mm ± 30 mm") - without;
        assertThat(little).isGreaterThan(without);
        assertThat(much / little).isCloseTo(4, within(0.1));
    }

    private static double variance(String cgHeight) {
        double halfWidth = of(with(CAR, "cgHeight", cgHeight), ROLL, Tolerance.Unsaid.EXACT)
                .halfWidth();
        return halfWidth * halfWidth;
    }

    /** Understeer goes with one over the stiffness: known loads keep the doubt of that so small that its slope does not bend. */
    @Test
    void whereFiguresAreSmoothSamplesAgree() {
        List<Entries> cars = Stream.of(CAR, STIFFER)
                .map(car -> with(car, "front.tyre.referenceLoad", "3300 N"))
                .map(car -> with(car, "rear.tyre.referenceLoad", "3300 N"))
                .toList();
        Tolerance.Unsaid unsaid = Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES;
        SlopeDoubt slopes = doubt(cars, unsaid);
        Doubt.Answer samples =
                Doubt.of(cars, new Doubt.Question(TRIAL, 1000, 1, unsaid, Optional.empty(), Progress.NONE));
        for (Judged judged : List.of(GENTLY, UNDERSTEER, ROLL)) {
            agree(slopes.of(0, judged).orElseThrow(), samples.cars().get(0));
            agree(slopes.of(1, judged).orElseThrow(), samples.cars().get(1));
            agree(
                    slopes.difference(1, judged).orElseThrow(),
                    samples.differences().get(0));
        }
    }

    private static void agree(SlopeSpread slopes, Doubt.Left samples) {
        Spread spread = samples.spreads().stream()
                .filter(one -> one.judged().equals(slopes.judged()))
                .findFirst()
                .orElseThrow();
        assertThat(slopes.isFair()).isTrue();
        assertThat(slopes.halfWidth() / 2)
                .isCloseTo(spread.standardDeviation(), within(0.1 * spread.standardDeviation()));
    }

    /** Of half a bell the standard deviation is √(1 − 2/π) of the whole one's. */
    @Test
    void nearABoundTheStandardDeviationIsThatOfWhatIsDrawn() {
        Slot<Double> slot = Slot.measure("bar", Dimension.STIFFNESS).within(0, 1e7);
        for (double si : new double[] {0, 300, 1000, 1e6}) {
            Adjustable number = new Adjustable("bar", slot, si, 1000, Adjustable.Origin.GIVEN, "", Unit.of("N/m"));
            Draw draw = new Draw(List.of(new Tolerance(number, 1000)), 20_000, 1, Tolerance.Unsaid.EXACT);
            double[] drawn = new double[20_000];
            Arrays.setAll(
                    drawn, sample -> draw.deviation(sample, Deviation.NONE).of(number));
            double sampled = Samples.of(drawn).standardDeviation();
            assertThat(Draw.standardDeviation(number, 1000)).isCloseTo(sampled, within(0.01 * sampled));
        }
        Adjustable atBound = new Adjustable("bar", slot, 0, 1000, Adjustable.Origin.GIVEN, "", Unit.of("N/m"));
        assertThat(Draw.standardDeviation(atBound, 1000)).isCloseTo(500 * Math.sqrt(1 - 2 / Math.PI), within(1e-6));
    }

    /** A bar that is disconnected and may have some stiffness all the same: below nothing there is no bar. */
    @Test
    void atABoundTheOtherSideIsTaken() throws QuantityException {
        String path = "front.bar.rollStiffness";
        Quantity stiffness = Quantity.parse("0 N*m/deg ± 20 N*m/deg", Dimension.ROLL_STIFFNESS);
        Entry bar = new Entries(Optional.empty(), Map.of("rollStiffness", new Entry.Measured(stiffness)));
        Entries loose = Catalogue.with(CAR, new Catalogue.Difference("front.bar", Optional.empty(), Optional.of(bar)));
        double sigma = Unit.of("N*m/deg").toSi(10) * Math.sqrt(1 - 2 / Math.PI);
        double move =
                figure(loose, ROLL, n -> n.path().equals(path) ? sigma : n.si()) - figure(loose, ROLL, Adjustable::si);
        SlopeSpread.Cause cause = of(loose, ROLL, Tolerance.Unsaid.EXACT).causes().stream()
                .filter(one -> one.path().equals(path))
                .findFirst()
                .orElseThrow();
        assertThat(move).isNegative();
        assertThat(cause.move()).isCloseTo(move, within(1e-6 * Math.abs(move)));
    }

    @Test
    void whatIsNotTheCarsIsNotDoubted() {
        Entries capsizes = Catalogue.with(CAR, "cgHeight", 2.5);
        assertThat(doubt(List.of(capsizes), Tolerance.Unsaid.EXACT).of(0, ROLL)).isEmpty();
        SlopeDoubt both = doubt(List.of(CAR, capsizes), Tolerance.Unsaid.EXACT);
        assertThat(both.of(0, ROLL)).isPresent();
        assertThat(both.difference(1, ROLL)).isEmpty();
        assertThat(both.of(0, judged(Criterion.LIMIT_BALANCE))).isEmpty();
    }

    @Test
    void aDoubtThatIsNoLongerWantedStops() throws InterruptedException {
        Impatient.mayStop(progress -> SlopeDoubt.of(
                        List.of(CAR), TRIAL, FIGURES, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, progress)
                .of(0, ROLL));
    }

    /** The car with nothing in doubt but what is given with a tolerance. */
    private static Entries sure(Entries car) {
        Entries sure = car;
        for (Adjustable number : Catalogue.adjustments(car)) {
            if (number.origin() == Adjustable.Origin.ESTIMATED) {
                sure = Catalogue.with(sure, number.path(), number.si());
            }
        }
        return sure;
    }

    /**
     * One number alone, so far off that the figure bends: what a straight line misses of it, as the mean over the bell says,
     * here by a sum over even chances. Eight cars know it to about a quarter.
     */
    @Test
    void theRestIsWhatTheStraightLineMissesOverTheBell() {
        Entries car = with(sure(CAR), "cgHeight", "500 mm ± 200 mm");
        SlopeSpread spread = of(car, ROLL, Tolerance.Unsaid.EXACT);
        double sigma = 0.1;
        double here = figure(car, ROLL, Adjustable::si);
        double slope = (raised(car, sigma) - raised(car, -sigma)) / 2;
        double squares = 0;
        int parts = 60;
        for (int i = 0; i < parts; i++) {
            double deviate = NormalPoints.deviate((i + 0.5) / parts);
            squares += Math.pow(raised(car, sigma * deviate) - here - slope * deviate, 2);
        }
        double rest = 2 * Math.sqrt(squares / parts);
        assertThat(spread.halfWidth()).isCloseTo(2 * Math.abs(slope), within(1e-4 * 2 * Math.abs(slope)));
        assertThat(spread.rest().orElseThrow()).isBetween(0.5 * rest, 2 * rest);
        assertThat(rest).as("it bends, and slopes more than that").isBetween(1e-3 * here, 0.9 * spread.halfWidth());
    }

    private static double raised(Entries car, double more) {
        return figure(car, ROLL, n -> n.si() + (n.path().equals("cgHeight") ? more : 0));
    }

    private static final Slot<Double> BETWEEN =
            Slot.measure("bar", Dimension.STIFFNESS).within(1e4, 2e4);

    private static Adjustable bar(double si, double tolerance) {
        return new Adjustable("bar", BETWEEN, si, tolerance, Adjustable.Origin.GIVEN, "", Unit.of("N/m"));
    }

    /** A bell far wider than what bounds leave of it is even between them: their distance over √12. */
    @Test
    void betweenTwoNearBoundsTheStandardDeviationIsThatOfAnEvenChance() {
        for (double si : new double[] {15_000, 12_000, 19_000}) {
            double even = 1e4 / Math.sqrt(12);
            assertThat(Draw.standardDeviation(bar(si, 2e6), 2e6)).isCloseTo(even, within(1e-4 * even));
            double[] drawn = drawn(bar(si, 2e6));
            assertThat(Samples.of(drawn).standardDeviation()).isCloseTo(even, within(0.01 * even));
            assertThat(Samples.of(drawn).mean()).isCloseTo(15_000.0, within(50.0));
        }
    }

    @Test
    void theUpperBoundCutsAsTheLowerOneDoes() {
        for (double off : new double[] {0, 300, 1000, 4000}) {
            Adjustable low = bar(1e4 + off, 1000);
            Adjustable high = bar(2e4 - off, 1000);
            double deviation = Draw.standardDeviation(low, 1000);
            assertThat(Draw.standardDeviation(high, 1000)).isCloseTo(deviation, within(1e-6 * deviation));
            double[] drawn = drawn(high);
            assertThat(Arrays.stream(drawn).max().orElseThrow()).isLessThanOrEqualTo(2e4);
            assertThat(Samples.of(drawn).standardDeviation()).isCloseTo(deviation, within(0.02 * deviation));
        }
    }

    private static double[] drawn(Adjustable number) {
        Draw draw = new Draw(List.of(new Tolerance(number, number.tolerance())), 4000, 1, Tolerance.Unsaid.EXACT);
        double[] drawn = new double[4000];
        Arrays.setAll(drawn, sample -> draw.deviation(sample, Deviation.NONE).of(number));
        return drawn;
    }

    @Test
    void aNumberIsOffTheWayThatItsErrorSays() {
        Adjustable number = bar(15_000, 100);
        Draw draw = new Draw(List.of(new Tolerance(number, 100)), 64, 1, Tolerance.Unsaid.EXACT);
        for (int sample = 0; sample < 64; sample++) {
            assertThat(draw.deviation(sample, Deviation.NONE).of(number))
                    .isCloseTo(15_000 + 50 * draw.errors(0)[sample], within(1e-9));
        }
        Adjustable nearBound = bar(10_200, 100);
        Draw cut = new Draw(List.of(new Tolerance(nearBound, 100)), 64, 1, Tolerance.Unsaid.EXACT);
        for (int sample = 0; sample < 64; sample++) {
            double error = cut.errors(0)[sample];
            if (Math.abs(error) > 0.1) {
                assertThat(Math.signum(cut.deviation(sample, Deviation.NONE).of(nearBound) - 10_200))
                        .isEqualTo(Math.signum(error));
            }
        }
    }

    @Test
    void aPictureIsFairWhereHalfOfTheHalfWidthIsNotMissed() {
        for (double halfWidth : new double[] {0.2, 3}) {
            assertThat(missing(halfWidth, 0.49 * halfWidth).isFair()).isTrue();
            assertThat(missing(halfWidth, 0.51 * halfWidth).isFair()).isFalse();
        }
        assertThat(new Spread(ROLL, OptionalDouble.empty(), 2, 5, 3, 1, 0, List.of()).width())
                .isEqualTo(3);
    }

    private static SlopeSpread missing(double halfWidth, double rest) {
        return new SlopeSpread(ROLL, 1, halfWidth, OptionalDouble.of(rest), List.of(), List.of());
    }
}
