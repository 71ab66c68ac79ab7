package evenhand.roadtest;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Built;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.doubt.Doubt;
import evenhand.doubt.Learnt;
import evenhand.doubt.NormalPoints;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * Asks some road tests of one car what they say of its file: {@link Correction} of all {@link Unknowns} by all readings, whether
 * both agree, what is to be measured again, what is left of doubt in every set-up, and what to read next.
 *
 * <p>Intervals afterwards are those of {@link Doubt}, which draws cars from N(z, C). That law is straight where the true one bends; so
 * draws from it are weighted by their true density, the product of the prior and of every reading's,
 * <pre>  ln w = −½·(Σ z² + Σ ((yᵢ − hᵢ)/σᵢ)²) − Σ ln σᵢ + ½·uᵀu   z = ẑ + L·u, C = L·Lᵀ  </pre>
 * and {@code (Σw)²/(n·Σw²)} is the effective part of them.
 *
 * <p>Source: importance sampling's effective sample size, Kong 1992, from memory.
 */
public final class Study {
    /** An unknown that has moved by so many of its own standard deviations is to be measured again. */
    private static final double SUSPECT = 2.5;
    /** A reading that misses by more does not fit. */
    private static final double MISFIT = 3.5;
    /** Unknowns that go together so closely cannot be told apart. */
    private static final double TOGETHER = 0.9;
    /** What is known but for this part was hardly touched. */
    private static final double UNTOUCHED = 1e-9;

    private static final double CORRECTED = 0.1;
    private static final double BEFORE_KNOWN = 0.45;
    private static final double AFTER_KNOWN = 0.8;

    /**
     * What is asked.
     *
     * @param names of the set-ups
     * @param cars their entries, as the file has them
     * @param tests of which each has a reading
     * @param aim what next readings are to narrow; the understeer near the limit where nothing is asked for
     */
    public record Question(
            List<String> names,
            List<Entries> cars,
            List<RoadTest> tests,
            Optional<Aim> aim,
            int samples,
            long seed,
            Tolerance.Unsaid unsaid,
            Progress progress) {
        public Question {
            names = List.copyOf(names);
            cars = List.copyOf(cars);
            tests = List.copyOf(tests);
        }
    }

    private final Question question;
    private final Unknowns unknowns;
    private final OnTheRoad road;
    private final Correction correction;
    private final Learnt learnt;

    private Study(Question question, Unknowns unknowns, OnTheRoad road, Correction correction) {
        this.question = question;
        this.unknowns = unknowns;
        this.road = road;
        this.correction = correction;
        learnt = unknowns.learnt(correction.moved(), correction.covariance());
    }

    private static Optional<Study> corrected(Question question) {
        Unknowns unknowns = new Unknowns(question.cars(), question.tests(), question.unsaid());
        OnTheRoad road = new OnTheRoad(question.tests(), unknowns);
        return Correction.of(road).map(correction -> new Study(question, unknowns, road, correction));
    }

    /** What is learnt and whether it agrees, without all else; none where a tested car neither stands nor turns. */
    public static Optional<Lesson> lesson(Question question) {
        return corrected(question).map(study -> new Lesson(study.learnt, study.agreement()));
    }

    /** What every other question can be asked with. */
    public record Lesson(Learnt learnt, Findings.Agreement agreement) {}

    /** Each reading beside the file and beside the corrected car, without what comes of it; none where a tested car does not turn. */
    public static Optional<Check> check(Question question) {
        return corrected(question).map(study -> new Check(study.tests(), study.agreement()));
    }

    /** Whether readings fit each other and the file. */
    public record Check(List<Findings.OfTest> tests, Findings.Agreement agreement) {
        public Check {
            tests = List.copyOf(tests);
        }
    }

    /**
     * All of it; none where a tested car neither stands nor turns.
     *
     * @throws CancellationException if it is no longer wanted
     */
    public static Optional<Findings> of(Question question) {
        return corrected(question).map(Study::findings);
    }

    private Findings findings() {
        question.progress().at(CORRECTED);
        question.progress().goOn();
        List<Findings.OfTest> tests = tests();
        Judged narrowing = narrowing();
        Doubt.Answer asGiven = doubt(question.cars(), CORRECTED, BEFORE_KNOWN);
        Doubt.Answer corrected =
                doubt(question.cars().stream().map(car -> car.off(learnt)).toList(), BEFORE_KNOWN, AFTER_KNOWN);
        double share = effectiveShare();
        Optional<Spread> narrowed = corrected.cars().get(0).spreads().stream()
                .filter(spread -> spread.judged().equals(narrowing))
                .findFirst();
        return new Findings(
                tests,
                agreement(),
                inputs(),
                together(),
                setups(asGiven, corrected),
                share,
                narrowed,
                new NextReadings(
                                question.cars().get(0),
                                question.tests().get(0),
                                unknowns.numbers(),
                                correction,
                                learnt,
                                narrowing,
                                question.unsaid())
                        .three(),
                Repeats.of(seen(tests)),
                learnt);
    }

    private List<Findings.OfTest> tests() {
        List<Predicted> before = road.predicted(new double[unknowns.count()]).orElseThrow();
        List<Predicted> after = road.predicted(correction.moved()).orElseThrow();
        List<Findings.OfTest> tests = new ArrayList<>();
        int first = 0;
        for (int test = 0; test < question.tests().size(); test++) {
            int end = first + question.tests().get(test).observations().size();
            tests.add(ofTest(test, first, before.subList(first, end), after.subList(first, end)));
            first = end;
        }
        return tests;
    }

    private Judged narrowing() {
        return question.aim()
                .map(Aim::judged)
                .filter(one -> !one.criterion().equals(Criterion.FRONT_FIRST))
                .orElseGet(() -> new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty()));
    }

    private Findings.Agreement agreement() {
        int degrees = road.count();
        double chance = new ChiSquaredDistribution(null, degrees).cumulativeProbability(correction.chiSquare());
        return new Findings.Agreement(correction.chiSquare(), degrees, 1 - chance, correction.converged());
    }

    private Findings.OfTest ofTest(int test, int first, List<Predicted> before, List<Predicted> after) {
        RoadTest asked = question.tests().get(test);
        List<Findings.Seen> seen = new ArrayList<>();
        for (int i = 0; i < after.size(); i++) {
            double[] row = correction.slopes()[first + i];
            double[] rowBefore = correction.slopesBefore()[first + i];
            double residual = after.get(i).weighted();
            double leverage = Math.min(1 - UNTOUCHED, correction.spread(row));
            double spread = Math.sqrt(Arrays.stream(rowBefore).map(s -> s * s).sum());
            seen.add(new Findings.Seen(
                    asked.observations().get(i),
                    before.get(i),
                    2 * spread * before.get(i).sigma(),
                    after.get(i),
                    residual,
                    Math.abs(residual) / Math.sqrt(1 - leverage) <= MISFIT));
        }
        Optional<Car> car = Catalogue.build(asked.car()).value();
        double ratio = car.map(built -> built.steering().ratio()).orElse(1.0);
        return new Findings.OfTest(asked, seen, Gradient.of(asked, ratio, before, after), own(test), tooDamped(asked));
    }

    /** Ends whose next swing was read, and which are damped so much that there is hardly one. */
    private List<End> tooDamped(RoadTest asked) {
        Optional<Car> car = Catalogue.build(asked.car().off(learnt)).value();
        return Arrays.stream(End.values())
                .filter(end -> asked.observations().stream()
                        .anyMatch(one -> one instanceof Observation.Bounce bounce
                                && bounce.axle() == end
                                && bounce.swing() == Observation.Swing.NEXT_SWING))
                .filter(end ->
                        car.isPresent() && Prediction.isTooDamped(car.get().settled(), end))
                .toList();
    }

    private List<Findings.Own> own(int test) {
        List<Findings.Own> own = new ArrayList<>();
        for (Unknowns.OfTest what : Unknowns.OfTest.values()) {
            OptionalInt place = unknowns.place(test, what);
            if (place.isPresent()) {
                int k = place.getAsInt();
                Measured said = unknowns.said(test, what);
                own.add(new Findings.Own(
                        what,
                        said.value(),
                        said.tolerance(),
                        unknowns.own(test, what, correction.moved()),
                        said.tolerance() * left(k),
                        correction.moved()[k],
                        suspect(k)));
            }
        }
        return own;
    }

    private double left(int k) {
        return Math.sqrt(Math.max(0, correction.covariance()[k][k]));
    }

    private boolean suspect(int k) {
        double told = 1 - correction.covariance()[k][k];
        return told > UNTOUCHED && Math.abs(correction.moved()[k]) / Math.sqrt(told) > SUSPECT;
    }

    private List<Findings.Input> inputs() {
        List<Built<Car>> built = question.cars().stream()
                .map(car -> Catalogue.build(car.off(learnt)))
                .toList();
        List<Findings.Input> all = new ArrayList<>();
        for (int k = 0; k < unknowns.numbers().size(); k++) {
            Tolerance tolerance = unknowns.numbers().get(k);
            Adjustable now = built.stream()
                    .flatMap(car -> car.at(tolerance.path()).stream())
                    .findFirst()
                    .orElse(tolerance.number());
            double halfWidth = Tolerance.of(now, question.unsaid());
            all.add(new Findings.Input(
                    tolerance.number(),
                    tolerance.halfWidth(),
                    learnt.of(now),
                    halfWidth * left(k),
                    correction.moved()[k],
                    suspect(k)));
        }
        all.sort(Comparator.comparingDouble(one -> -Math.abs(one.moved())));
        return all;
    }

    private List<Findings.Together> together() {
        List<Findings.Together> all = new ArrayList<>();
        double[][] c = correction.covariance();
        for (int k = 0; k < c.length; k++) {
            for (int j = 0; j < k; j++) {
                double correlation = c[k][j] / Math.sqrt(c[k][k] * c[j][j]);
                if (Math.abs(correlation) > TOGETHER) {
                    all.add(new Findings.Together(unknowns.name(j), unknowns.name(k), correlation));
                }
            }
        }
        all.sort(Comparator.comparingDouble(one -> -Math.abs(one.correlation())));
        return all;
    }

    private Doubt.Answer doubt(List<Entries> cars, double from, double to) {
        Trial usual = Trial.usual();
        Trial trial = question.aim().map(Aim::judged).map(usual::with).orElse(usual);
        return Doubt.of(
                cars,
                new Doubt.Question(
                        trial,
                        question.samples(),
                        question.seed(),
                        question.unsaid(),
                        question.aim(),
                        question.progress().part(from, to)));
    }

    private List<Findings.OfSetup> setups(Doubt.Answer before, Doubt.Answer after) {
        List<Findings.OfSetup> all = new ArrayList<>();
        for (int setup = 0; setup < question.names().size(); setup++) {
            List<Findings.Figure> figures = new ArrayList<>();
            for (Spread now : after.cars().get(setup).spreads()) {
                before.cars().get(setup).spreads().stream()
                        .filter(was -> was.judged().equals(now.judged()))
                        .findFirst()
                        .ifPresent(was -> figures.add(new Findings.Figure(was, now)));
            }
            all.add(new Findings.OfSetup(question.names().get(setup), figures));
        }
        return all;
    }

    private List<Repeats.Seen> seen(List<Findings.OfTest> tests) {
        return tests.stream()
                .flatMap(test -> test.gradients().stream()
                        .filter(gradient -> gradient.turn().isEmpty())
                        .map(gradient ->
                                new Repeats.Seen(test.test().name(), test.test().setup(), gradient)))
                .toList();
    }

    /** The effective part of draws from N(z, C) where each is weighted by its true density. */
    private double effectiveShare() {
        int n = unknowns.count();
        double[][] factor = Learnt.factor(correction.covariance());
        double[][] deviates = NormalPoints.deviates(n, question.samples(), question.seed());
        List<Integer> draws = IntStream.range(0, question.samples()).boxed().toList();
        List<Double> logs =
                question.progress().part(AFTER_KNOWN, 1).each(draws, draw -> logWeight(factor, deviates, draw));
        double greatest = logs.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double sum = 0;
        double squares = 0;
        for (double one : logs) {
            double weight = Math.exp(one - greatest);
            sum += weight;
            squares += weight * weight;
        }
        return sum > 0 ? sum * sum / (logs.size() * squares) : 0;
    }

    private double logWeight(double[][] factor, double[][] deviates, int draw) {
        int n = factor.length;
        double[] z = correction.moved().clone();
        double drawn = 0;
        for (int k = 0; k < n; k++) {
            for (int j = 0; j <= k; j++) {
                z[k] += factor[k][j] * deviates[j][draw];
            }
            drawn += deviates[k][draw] * deviates[k][draw];
        }
        double own = drawn;
        return road.at(z)
                .map(here -> {
                    double logSigmas =
                            Arrays.stream(here.sigmas()).map(Math::log).sum();
                    return -Correction.sum(z, here, here.sigmas()) / 2 - logSigmas + own / 2;
                })
                .orElse(Double.NEGATIVE_INFINITY);
    }
}
