package evenhand.doubt;

import static evenhand.answers.Trials.aim;
import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
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
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class DoubtTest {
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Judged ROLL = judged(Criterion.ROLL_GRADIENT, 0.5);
    private static final Judged UNDERSTEER = judged(Criterion.UNDERSTEER, 0.5);
    private static final Entries CAR = CatalogueTest.car();

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

    private static Doubt.Question question(Trial trial, int samples, long seed, Tolerance.Unsaid unsaid) {
        return new Doubt.Question(trial, samples, seed, unsaid, Optional.empty(), Progress.NONE);
    }

    private static Doubt.Answer doubt(Entries car, int samples, Tolerance.Unsaid unsaid) {
        return Doubt.of(List.of(car), question(TRIAL, samples, 1, unsaid));
    }

    private static Spread of(Doubt.Left left, Judged judged) {
        return left.spreads().stream()
                .filter(spread -> spread.judged().equals(judged))
                .findFirst()
                .orElseThrow();
    }

    private static double figure(Entries car, Judged judged, Trial trial, Deviation deviation) {
        return judged.si(trial.ask(Catalogue.build(car.off(deviation)).value().orElseThrow()))
                .orElseThrow();
    }

    /** Small tolerances go through straight: the variance is the sum of (slope · σ)², by slopes of this test's own. */
    @Test
    void ofSmallTolerancesVarianceAndSharesAreThoseOfTheSlopes() {
        Trial gentle = Trials.on(1e4, 0.01);
        Judged roll = judged(Criterion.ROLL_GRADIENT, 0.01);
        Entries car = with(CAR, "cgHeight", "500 mm ± 4 mm");
        car = with(car, "front.spring.rate", "60 N/mm ± 1 %");
        car = with(car, "mass", "1100 kg ± 8 kg");
        car = with(car, "front.tyre.verticalRate", "200 N/mm");
        car = with(car, "rear.tyre.verticalRate", "200 N/mm");
        double variance = 0;
        Map<String, Double> parts = new HashMap<>();
        for (Adjustable number : Catalogue.adjustments(car)) {
            double sigma = Tolerance.of(number, Tolerance.Unsaid.EXACT) / 2;
            if (sigma > 0) {
                double up = figure(car, roll, gentle, n -> n.si() + (n.path().equals(number.path()) ? sigma : 0));
                double down = figure(car, roll, gentle, n -> n.si() - (n.path().equals(number.path()) ? sigma : 0));
                double part = Math.pow((up - down) / 2, 2);
                parts.put(number.path(), part);
                variance += part;
            }
        }
        Doubt.Answer answer = Doubt.of(List.of(car), question(gentle, 4096, 3, Tolerance.Unsaid.EXACT));
        Spread spread = of(answer.cars().get(0), roll);
        double sd = Math.sqrt(variance);
        assertThat(spread.standardDeviation()).isCloseTo(sd, within(0.02 * sd));
        assertThat(spread.median()).isCloseTo(spread.nominal().orElseThrow(), within(0.05 * sd));
        assertThat(spread.width() / sd).isCloseTo(2 * 1.96, within(0.12));
        double told = 0;
        for (Spread.Cause cause : spread.causes()) {
            assertThat(cause.share()).isCloseTo(parts.get(cause.path()) / variance, within(0.03));
            told += cause.share();
        }
        assertThat(told).isBetween(0.95, 1.03);
        for (int i = 1; i < spread.causes().size(); i++) {
            assertThat(spread.causes().get(i).share())
                    .isLessThanOrEqualTo(spread.causes().get(i - 1).share());
        }
    }

    @Test
    void theSameSeedGivesTheSameAnswerWithAnyNumberOfThreads() throws InterruptedException, ExecutionException {
        Entries stiffer = Catalogue.with(CAR, "front.spring.rate", 70_000);
        Doubt.Question question = new Doubt.Question(
                TRIAL,
                200,
                7,
                Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                Optional.of(new Aim(UNDERSTEER, Aim.Sense.AT_LEAST, 0)),
                Progress.NONE);
        Doubt.Answer alone = in(1, question, stiffer);
        assertThat(in(4, question, stiffer)).isEqualTo(alone);
        assertThat(Doubt.of(List.of(CAR, stiffer), question)).isEqualTo(alone);
        Doubt.Answer otherSeed =
                Doubt.of(List.of(CAR), question(TRIAL, 200, 8, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES));
        Spread one = of(alone.cars().get(0), ROLL);
        Spread other = of(otherSeed.cars().get(0), ROLL);
        assertThat(other.low()).isNotEqualTo(one.low());
        assertThat(other.standardDeviation())
                .isCloseTo(one.standardDeviation(), within(0.25 * one.standardDeviation()));
    }

    private static Doubt.Answer in(int threads, Doubt.Question question, Entries other)
            throws InterruptedException, ExecutionException {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> Doubt.of(List.of(CAR, other), question)).get();
        } finally {
            pool.shutdown();
        }
    }

    /** Cars whose true values are known, each measured once: about 19 of 20 intervals hold the true figure. */
    @Test
    void theIntervalHoldsTheTruthAsOftenAsItSays() {
        SplittableRandom random = new SplittableRandom(21);
        Entries car = with(CAR, "cgHeight", "500 mm ± 30 mm");
        car = with(car, "rear.spring.rate", "28 N/mm ± 6 %");
        int held = 0;
        int cars = 60;
        for (int i = 0; i < cars; i++) {
            Entries given = car;
            Map<String, Double> errors = new HashMap<>();
            for (Adjustable number : Catalogue.adjustments(car)) {
                double sigma = Tolerance.of(number, Tolerance.Unsaid.EXACT) / 2;
                double error = sigma * NormalPoints.deviate(NormalPoints.inside(random.nextDouble()));
                if (number.origin() == Adjustable.Origin.GIVEN && sigma > 0) {
                    given = Catalogue.with(given, number.path(), number.si() + error);
                } else if (sigma > 0) {
                    errors.put(number.path(), error);
                }
            }
            // The true car has the true heights and rates, and tyres that are off from what is estimated.
            double truth =
                    figure(car, ROLL, TRIAL, n -> n.slot().bounds().cut(n.si() + errors.getOrDefault(n.path(), 0.0)));
            Spread spread = of(doubt(given, 128, Tolerance.Unsaid.EXACT).cars().get(0), ROLL);
            held += truth >= spread.low() && truth <= spread.high() ? 1 : 0;
        }
        assertThat(held).isBetween(51, 60);
    }

    @Test
    void differencesBetweenSetUpsAreFarSurerThanTheirAnswers() {
        Entries other = Catalogue.with(CAR, "rear.lateralLocator.height", 0.275);
        Doubt.Answer answer =
                Doubt.of(List.of(CAR, other), question(TRIAL, 512, 1, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES));
        for (Judged judged : List.of(UNDERSTEER, ROLL, judged(Criterion.LIMIT_BALANCE))) {
            Spread paired = of(answer.differences().get(0), judged);
            double unpaired = Math.hypot(
                    of(answer.cars().get(0), judged).width(),
                    of(answer.cars().get(1), judged).width());
            assertThat(paired.width()).as(judged.criterion().name()).isLessThan(0.5 * unpaired);
            assertThat(paired.nominal().orElseThrow())
                    .isCloseTo(
                            of(answer.cars().get(1), judged).nominal().orElseThrow()
                                    - of(answer.cars().get(0), judged).nominal().orElseThrow(),
                            within(1e-12));
        }
        Doubt.Answer same = Doubt.of(List.of(CAR, CAR), question(TRIAL, 64, 1, Tolerance.Unsaid.EXACT));
        for (Spread spread : same.differences().get(0).spreads()) {
            assertThat(spread.width()).isZero();
            assertThat(spread.causes()).isEmpty();
        }
    }

    @Test
    void samplesAreCutAtWhatIsPossible() {
        Entries wide = with(CAR, "front.rollCentre.height", "50 mm ± 30 mm");
        wide = with(wide, "rear.spring.base", "1000 mm ± 3000 mm");
        Adjustable base = Catalogue.build(wide).at("rear.spring.base").orElseThrow();
        assertThat(base.slot().bounds().holds(base.si() - base.tolerance())).isFalse();
        Doubt.Answer answer = doubt(wide, 128, Tolerance.Unsaid.EXACT);
        // None of the cars is refused for a value out of bounds; those with a narrow base fall over and are counted.
        Doubt.Left left = answer.cars().get(0);
        assertThat(left.noAnswerShare()).isLessThan(0.5);
        for (Spread spread : left.spreads()) {
            assertThat(spread.noAnswerShare()).isGreaterThanOrEqualTo(left.noAnswerShare());
        }
    }

    @Test
    void carsWithoutAnAnswerAreCountedAndDoNotMeetTheAim() {
        Entries soft = with(with(CAR, "front.spring.rate", "3 N/mm ± 90 %"), "rear.spring.rate", "3 N/mm ± 90 %");
        Doubt.Answer answer = Doubt.of(
                List.of(soft),
                new Doubt.Question(
                        TRIAL,
                        200,
                        1,
                        Tolerance.Unsaid.EXACT,
                        Optional.of(aim(judged(Criterion.LIMIT), Aim.Sense.AT_LEAST, 0)),
                        Progress.NONE));
        Doubt.Left left = answer.cars().get(0);
        Spread limit = of(left, judged(Criterion.LIMIT));
        assertThat(left.noAnswerShare()).isBetween(0.02, 0.98);
        assertThat(limit.noAnswerShare()).isEqualTo(left.noAnswerShare());
        assertThat(left.chance().orElseThrow()).isCloseTo(1 - left.noAnswerShare(), within(1e-12));
        assertThat(left.spreads().get(0)).isEqualTo(limit);
    }

    /** A driven live axle with a propeller shaft goes front first one way more often than the other. */
    @Test
    void theChanceThatTheFrontGoesFirstIsOfBothWaysAndToldWithoutAnAim() {
        Entries car = with(Catalogue.with(CAR, "drive.finalDrive", 3.9), "rear.spring.rate", "45 N/mm");
        List<Entries> cars = List.of(car);
        Doubt.Question plain = question(TRIAL, 128, 1, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES);
        Doubt.Question both = question(TRIAL.bothWays(), 128, 1, plain.unsaid());
        double left = Doubt.of(cars, plain).cars().get(0).frontFirst().orElseThrow();
        double right = Doubt.of(cars, question(TRIAL.turning(Direction.RIGHT), 128, 1, plain.unsaid()))
                .cars()
                .get(0)
                .frontFirst()
                .orElseThrow();
        double bothWays = Doubt.of(cars, both).cars().get(0).frontFirst().orElseThrow();
        assertThat(bothWays).isBetween(0.05, Math.min(left, right));
        assertThat(left).isNotEqualTo(right);
        assertThat(Math.max(left, right)).isLessThan(1).isGreaterThan(bothWays);
        Doubt.Question aimed =
                new Doubt.Question(both.trial(), 128, 1, plain.unsaid(), Optional.of(Aim.frontFirst()), Progress.NONE);
        for (Doubt.Answer answer : Doubt.inEachBend(cars, aimed)) {
            assertThat(answer.cars().get(0).frontFirst()).hasValue(bothWays);
            assertThat(answer.cars().get(0).chance()).hasValue(bothWays);
        }
        assertThat(Doubt.of(cars, both).cars().get(0).spreads())
                .isEqualTo(Doubt.of(cars, plain).cars().get(0).spreads());
    }

    @Test
    void workshopTolerancesWidenAndCanBeSwitchedOff() {
        Spread exact = of(doubt(CAR, 256, Tolerance.Unsaid.EXACT).cars().get(0), ROLL);
        Spread usual = of(
                doubt(CAR, 256, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES).cars().get(0), ROLL);
        assertThat(usual.width()).isGreaterThan(1.2 * exact.width());
        assertThat(exact.causes())
                .isNotEmpty()
                .allMatch(cause -> cause.tolerance().number().origin() == Adjustable.Origin.ESTIMATED);
    }

    @Test
    void aCarWithNothingInDoubtHasNoSpread() {
        Entries car = CAR;
        for (Adjustable number : Catalogue.adjustments(CAR)) {
            if (number.origin() == Adjustable.Origin.ESTIMATED) {
                car = Catalogue.with(car, number.path(), number.si());
            }
        }
        Doubt.Answer answer = doubt(car, 16, Tolerance.Unsaid.EXACT);
        assertThat(answer.measureNext()).isEmpty();
        for (Spread spread : answer.cars().get(0).spreads()) {
            assertThat(spread.width()).isZero();
            assertThat(spread.low()).isEqualTo(spread.nominal().orElseThrow());
            assertThat(spread.causes()).isEmpty();
        }
    }

    @Test
    void anEstimateFollowsTheInputsItIsMadeFromAndHasItsOwnSpread() {
        Map<String, Double> before = new HashMap<>();
        Map<String, Double> after = new HashMap<>();
        assertThat(Catalogue.build(CAR.off(n -> note(before, n, 0))).value()).isPresent();
        assertThat(Catalogue.build(CAR.off(n -> note(after, n, 20_000))).value())
                .isPresent();
        assertThat(after.get("front.tyre.verticalRate")).isGreaterThan(before.get("front.tyre.verticalRate"));
        double firmer = Math.pow(2.2 / 2.0, 0.585);
        assertThat(after.get("front.tyre.corneringStiffness") / before.get("front.tyre.corneringStiffness"))
                .isCloseTo(firmer, within(1e-9));
        assertThat(after.get("front.tyre.friction")).isEqualTo(before.get("front.tyre.friction"));
        Adjustable rate = Catalogue.build(CAR).at("front.tyre.verticalRate").orElseThrow();
        assertThat(Tolerance.of(rate, Tolerance.Unsaid.EXACT)).isCloseTo(0.2 * rate.si(), within(1e-6));
    }

    /** Writes down a number as it comes, and takes the pressure for so much higher. */
    private static double note(Map<String, Double> numbers, Adjustable number, double more) {
        numbers.put(number.path(), number.si());
        return number.path().equals("front.tyre.pressure") ? number.si() + more : number.si();
    }

    @Test
    void aBetterMeasurementNarrowsTheFirstFigureAsMeasuringItDoes() {
        Entries car = with(CAR, "cgHeight", "500 mm ± 80 mm");
        Doubt.Question question = new Doubt.Question(
                TRIAL,
                2048,
                1,
                Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                Optional.of(new Aim(ROLL, Aim.Sense.AT_MOST, 0.1)),
                Progress.NONE);
        Doubt.Answer answer = Doubt.of(List.of(car), question);
        Measurement first = answer.measureNext().get(0);
        assertThat(first.tolerance().path()).isEqualTo("cgHeight");
        assertThat(answer.measureNext()).hasSizeLessThanOrEqualTo(3);
        String half = first.halfWidth() * 1000 + " mm";
        Doubt.Answer measured = Doubt.of(List.of(with(CAR, "cgHeight", "500 mm ± " + half)), question);
        Spread now = of(answer.cars().get(0), ROLL);
        Spread then = of(measured.cars().get(0), ROLL);
        assertThat(first.high() - first.low()).isCloseTo(then.width(), within(0.1 * now.width()));
        assertThat(then.width()).isLessThan(0.7 * now.width());
    }

    @Test
    void everySampleIsTakenWhateverTheirNumber() {
        for (int samples : new int[] {15, 16, 17, 33}) {
            Doubt.Left left = doubt(CAR, samples, Tolerance.Unsaid.EXACT).cars().get(0);
            assertThat(left.noAnswerShare()).isZero();
            assertThat(of(left, ROLL).noAnswerShare()).isZero();
        }
    }

    /** The usual measurement of a centre of gravity leaves 40 mm: of 120 mm that is better than half, of 60 mm half is. */
    @Test
    void aBetterMeasurementIsTheUsualOneOrTwiceAsGood() {
        Map<String, Double> better = Map.of("500 mm ± 120 mm", 0.04, "500 mm ± 60 mm", 0.03);
        better.forEach((given, halfWidth) -> {
            Aim aim = new Aim(ROLL, Aim.Sense.AT_MOST, 0.1);
            Doubt.Answer answer = Doubt.of(
                    List.of(with(CAR, "cgHeight", given)),
                    new Doubt.Question(TRIAL, 256, 1, Tolerance.Unsaid.EXACT, Optional.of(aim), Progress.NONE));
            Measurement height = answer.measureNext().stream()
                    .filter(one -> one.tolerance().path().equals("cgHeight"))
                    .findFirst()
                    .orElseThrow();
            assertThat(height.halfWidth()).isCloseTo(halfWidth, within(1e-12));
        });
    }

    @Test
    void measurementsNarrowTheIntervalAndTheBestComesFirst() {
        Entries car = with(CAR, "cgHeight", "500 mm ± 60 mm");
        car = with(car, "rear.spring.rate", "28 N/mm ± 25 %");
        car = with(car, "front.spring.rate", "60 N/mm ± 35 %");
        car = with(car, "rear.lateralLocator.height", "255 mm ± 60 mm");
        for (Judged judged : List.of(ROLL, UNDERSTEER)) {
            Aim aim = new Aim(judged, Aim.Sense.AT_MOST, 0.1);
            Doubt.Answer answer = Doubt.of(
                    List.of(car),
                    new Doubt.Question(TRIAL, 512, 1, Tolerance.Unsaid.EXACT, Optional.of(aim), Progress.NONE));
            double before = of(answer.cars().get(0), judged).width();
            assertThat(answer.measureNext()).hasSizeGreaterThan(1);
            List<Double> widths = answer.measureNext().stream()
                    .map(one -> one.high() - one.low())
                    .toList();
            assertThat(widths).isSorted().allMatch(width -> width > 0 && width < before);
        }
    }

    /** A car that is the same left and right turns right as it turns left, its sideslip the other way; one that leans to a side does not. */
    @Test
    void samplesOfACarAlikeOnBothSidesAreMirrorImages() {
        Trial both = TRIAL.bothWays();
        List<Doubt.Answer> alike = Doubt.inEachBend(List.of(CAR), question(both, 32, 1, Tolerance.Unsaid.EXACT));
        assertThat(alike).extracting(Doubt.Answer::mirrored).containsExactly(List.of(false), List.of(true));
        Judged sideslip = judged(Criterion.SIDESLIP, 0.5);
        Spread left = of(alike.get(0).cars().get(0), sideslip);
        Spread right = of(alike.get(1).cars().get(0), sideslip);
        assertThat(right.median()).isCloseTo(-left.median(), within(1e-12));
        assertThat(right.low()).isCloseTo(-left.high(), within(1e-12));
    }

    @Test
    void whoWaitsSeesItComeAndMayStopIt() throws InterruptedException {
        Impatient.mayStop(progress -> Doubt.of(
                List.of(CAR), new Doubt.Question(TRIAL, 300, 1, Tolerance.Unsaid.EXACT, Optional.empty(), progress)));
    }

    @Test
    void aFigureAlongARowOfPacesIsOfTheSameCarsAsTheFiguresOfTheTrial() {
        List<Judged> row = DoubleStream.of(0.1, 0.3, 0.5, 0.7)
                .mapToObj(pace -> judged(Criterion.UNDERSTEER, pace))
                .toList();
        Entries lower = with(CAR, "rear.lateralLocator.height", "200 mm");
        Doubt.Question plain = question(TRIAL, 256, 5, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES);
        Doubt.Question along = new Doubt.Question(TRIAL, 256, 5, plain.unsaid(), Optional.empty(), row, Progress.NONE);
        Doubt.Answer without = Doubt.of(List.of(CAR, lower), plain);
        Doubt.Answer with = Doubt.of(List.of(CAR, lower), along);
        for (int car = 0; car < 2; car++) {
            Doubt.Left left = with.cars().get(car);
            assertThat(left.along()).extracting(Spread::judged).isEqualTo(row);
            assertThat(left.along()).allSatisfy(spread -> {
                assertThat(spread.causes()).isEmpty();
                assertThat(spread.median()).isBetween(spread.low(), spread.high());
            });
            same(left.along().get(2), of(left, UNDERSTEER));
            same(of(without.cars().get(car), UNDERSTEER), of(left, UNDERSTEER));
        }
        same(with.differences().get(0).along().get(2), of(with.differences().get(0), UNDERSTEER));
        assertThat(without.cars().get(0).along()).isEmpty();
    }

    /** The same interval, but for the solver's rounding. */
    private static void same(Spread one, Spread other) {
        double rounding = 1e-6 * other.judged().criterion().noticeable();
        assertThat(one.nominal().orElseThrow()).isCloseTo(other.nominal().orElseThrow(), within(rounding));
        assertThat(one.low()).isCloseTo(other.low(), within(rounding));
        assertThat(one.high()).isCloseTo(other.high(), within(rounding));
    }

    /**
     * What moves the figures most is drawn first, where the points are even together: the samples by an order of this test's own,
     * each asked by itself.
     */
    @Test
    void whatMovesTheFiguresMostIsDrawnFirst() {
        Entries car = with(CAR, "rear.lateralLocator.height", "255 mm ± 60 mm");
        car = with(car, "rear.spring.rate", "28 N/mm ± 30 %");
        int samples = 3;
        long seed = 5;
        Doubt.Left left = Doubt.of(List.of(car), question(TRIAL, samples, seed, Tolerance.Unsaid.EXACT))
                .cars()
                .get(0);
        List<Judged> figures = left.spreads().stream().map(Spread::judged).toList();
        Map<String, Double> moves = new HashMap<>();
        List<Tolerance> order = new ArrayList<>(Tolerance.withRide(List.of(car), Tolerance.Unsaid.EXACT, List.of()));
        assertThat(order).hasSizeGreaterThan(NormalPoints.TOGETHER);
        Answers given = TRIAL.ask(Catalogue.build(car).value().orElseThrow());
        for (Tolerance one : order) {
            Answers off = TRIAL.ask(Catalogue.build(
                            car.off(n -> n.si() + (n.path().equals(one.path()) ? one.halfWidth() / 2 : 0)))
                    .value()
                    .orElseThrow());
            double most = 0;
            for (Judged judged : figures) {
                double move = judged.si(off).orElseThrow() - judged.si(given).orElseThrow();
                most = Math.max(most, Math.abs(move) / judged.criterion().noticeable());
            }
            moves.put(one.path(), most);
        }
        order.sort(
                Comparator.comparing((Tolerance one) -> moves.get(one.path())).reversed());
        Draw draw = new Draw(order, samples, seed, Tolerance.Unsaid.EXACT);
        for (Judged judged : figures) {
            double[] drawn = new double[samples];
            for (int i = 0; i < samples; i++) {
                drawn[i] = figure(car, judged, TRIAL, draw.deviation(i, Deviation.NONE));
            }
            Arrays.sort(drawn);
            assertThat(of(left, judged).median())
                    .as(judged.criterion().name())
                    .isCloseTo(drawn[1], within(1e-6 * judged.criterion().noticeable()));
        }
    }
}
