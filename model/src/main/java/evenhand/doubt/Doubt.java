package evenhand.doubt;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Deviation;
import evenhand.catalogue.Entries;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What measuring errors and guesses leave of the answers.
 *
 * <p>Every number of the car that may be off is drawn from a normal law, its half-width two standard deviations, cut at what is
 * physically possible; all of them at once, thousands of times, evenly spread ({@link NormalPoints}). An estimate is made from the
 * drawn values and is off by its own spread besides. All set-ups are asked with the same errors of the same numbers: it is one
 * car, measured once. So the differences between set-ups come out narrower than the answers themselves. Both ways round are
 * asked of the same sampled cars, and an aim is met by those that meet it in every bend.
 *
 * <p>Of cars that a road test has corrected ({@link Learnt}) it draws what that has left, errors that go together included. The
 * shares of the numbers in a figure's variance then overlap, and may add up to more than all of it.
 *
 * <p>The same seed gives the same numbers on any machine with any number of threads.
 */
public final class Doubt {
    /** Samples that one thread takes at once. */
    private static final int CHUNK = 16;

    private static final double LOW = 0.025;
    private static final double HIGH = 0.975;
    /** Smaller shares are not told. */
    private static final double LEAST_SHARE = 0.005;
    /** A share of less than so many of its standard errors is chance. */
    private static final double ERRORS = 2;
    /** A figure that varies by less than this part of what is noticeable stands still: the solver's rounding. */
    private static final double ROUNDING = 1e-6;
    /** How much of the work is done when; about. */
    private static final double INFLUENCE_KNOWN = 0.1;

    private static final double SAMPLED = 0.9;
    /** So many measurements are proposed. */
    private static final int MEASUREMENTS = 3;
    /** A better measurement is at least this much better. */
    private static final double BETTER = 0.5;

    /**
     * How a doubt is taken.
     *
     * @param along figures besides those of the trial, such as one at a row of paces: of them the spread alone is answered
     */
    public record Question(
            Trial trial,
            int samples,
            long seed,
            Tolerance.Unsaid unsaid,
            Optional<Aim> aim,
            List<Judged> along,
            Progress progress) {
        public Question {
            along = List.copyOf(along);
        }

        /** With no figure besides those of the trial. */
        public Question(
                Trial trial, int samples, long seed, Tolerance.Unsaid unsaid, Optional<Aim> aim, Progress progress) {
            this(trial, samples, seed, unsaid, aim, List.of(), progress);
        }

        /**
         * One bend, by which it is told how much a number counts: the same whichever way is asked, so that the same cars are
         * sampled.
         */
        private Trial whatCounts() {
            return trial.turning(Trial.USUAL_DIRECTION).onCircle(trial.radius());
        }

        /** The figure of the aim, where there is one. */
        private List<Judged> aimed() {
            return aim.map(Aim::judged).stream().toList();
        }

        /** The trial, at every pace that is needed. */
        private Trial everyPace() {
            Trial every = trial;
            for (Judged one : along) {
                every = every.with(one);
            }
            return every;
        }
    }

    /**
     * What is left of one car's figures, or of their differences from the first car's.
     *
     * @param spreads in the order of what is judged; the figure of an aim first
     * @param noAnswerShare part of the samples that do not turn at all
     * @param chance that the aim is met; samples without an answer do not meet it
     * @param frontFirst chance that the front goes first in every bend; samples without an answer do not; none of a difference
     * @param along of the figures besides, in their order, as far as samples have them; whose fault it is, is not asked
     */
    public record Left(
            List<Spread> spreads,
            double noAnswerShare,
            OptionalDouble chance,
            OptionalDouble frontFirst,
            List<Spread> along) {
        public Left {
            spreads = List.copyOf(spreads);
            along = List.copyOf(along);
        }
    }

    /**
     * The answer in one bend.
     *
     * @param cars in their order
     * @param differences of the cars after the first, from the first
     * @param measureNext what narrows {@link #narrowed} most
     * @param narrowed the first figure that the first car has; with an aim and several bends the value that decides it
     * @param mirrored of each car, whether each of its samples turns as the mirror image of itself in the first bend
     */
    public record Answer(
            List<Left> cars,
            List<Left> differences,
            List<Measurement> measureNext,
            Optional<Spread> narrowed,
            List<Boolean> mirrored) {
        public Answer {
            cars = List.copyOf(cars);
            differences = List.copyOf(differences);
            measureNext = List.copyOf(measureNext);
            mirrored = List.copyOf(mirrored);
        }
    }

    private final List<Entries> cars;
    private final Question question;
    private final Trial trial;
    private final List<Optional<Answers>> nominal;
    private final List<Judged> judged; // what is answered in full, then what is asked along
    private final int inFull;
    private final List<Tolerance> tolerances;
    private final Optional<Learnt> learnt; // what a road test has taught
    private final Draw draw;
    private final List<FirstOrder> inputs;
    private final double[][][][] figures; // by bend, car, figure, sample
    private final boolean[][][][] has; // whether there is such a figure
    private final boolean[][][] turns; // by bend, car, sample
    private final boolean[][] frontFirst; // by car, sample: whether it does in every bend
    private final int aimed; // so many bends have to meet the aim
    private final boolean[][] meets; // by car, sample: whether it meets the aim
    private final double[] decides; // by sample: the first car's value that decides the aim
    private final boolean[] decided; // whether there is such a value

    private Doubt(List<Entries> cars, Question question, int aimed) {
        this.cars = cars;
        this.aimed = aimed;
        this.question = question;
        trial = question.everyPace();
        nominal = cars.stream()
                .map(car -> Catalogue.build(car).value().map(built -> trial.askAlso(built, question.aimed())))
                .toList();
        List<Judged> full = inOrder(question, nominal);
        inFull = full.size();
        judged = Stream.concat(full.stream(), question.along().stream()).toList();
        tolerances = byInfluence();
        int n = question.samples();
        learnt = cars.get(0).off() instanceof Learnt known ? Optional.of(known) : Optional.empty();
        draw = new Draw(tolerances, n, question.seed(), question.unsaid(), learnt);
        figures = new double[trial.bends()][cars.size()][judged.size()][n];
        has = new boolean[trial.bends()][cars.size()][judged.size()][n];
        turns = new boolean[trial.bends()][cars.size()][n];
        frontFirst = new boolean[cars.size()][n];
        meets = new boolean[cars.size()][n];
        decides = new double[n];
        decided = new boolean[n];
        sample();
        inputs = IntStream.range(0, tolerances.size())
                .parallel()
                .mapToObj(k -> new FirstOrder(draw.errors(k)))
                .toList();
    }

    /** What is judged, the figure of the aim first; which end goes first is no number: for it stands the understeer near the limit. */
    private static List<Judged> inOrder(Question question, List<Optional<Answers>> nominal) {
        boolean damped =
                nominal.stream().anyMatch(car -> car.isPresent() && car.get().isDamped());
        List<Judged> all = new ArrayList<>(question.trial().judged());
        all.removeIf(one -> one.criterion().ofRide() && !damped);
        nominal.stream()
                .flatMap(Optional::stream)
                .flatMap(car -> car.ahead().judged().stream())
                .filter(one -> !all.contains(one))
                .forEach(all::add);
        question.aim().ifPresent(aim -> {
            Judged first = aim.judged().criterion().equals(Criterion.FRONT_FIRST)
                    ? new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty())
                    : aim.judged();
            all.remove(first);
            all.add(0, first);
        });
        return List.copyOf(all);
    }

    /**
     * Takes the doubt of some set-ups of one car in the first bend of the trial; of the others it is told only whether the
     * front goes first in all.
     *
     * @throws CancellationException if it is no longer wanted
     */
    public static Answer of(List<Entries> cars, Question question) {
        return new Doubt(List.copyOf(cars), question, 1).answer(0);
    }

    /**
     * Takes it in each bend of the trial, in its order, from the same samples. An aim is met where it is met in all of them.
     *
     * @throws CancellationException if it is no longer wanted
     */
    public static List<Answer> inEachBend(List<Entries> cars, Question question) {
        Doubt doubt = new Doubt(List.copyOf(cars), question, question.trial().bends());
        return IntStream.range(0, doubt.trial.bends()).mapToObj(doubt::answer).toList();
    }

    /** Every number that may be off, those first whose standard deviation moves the first car's figures most. */
    private List<Tolerance> byInfluence() {
        List<Tolerance> all = Tolerance.withRide(cars, question.unsaid(), judged);
        Entries car = cars.get(0);
        Map<Tolerance, Double> influence = new HashMap<>();
        Optional<Answers> asGiven =
                Catalogue.build(car).value().map(built -> question.whatCounts().askAlso(built, question.aimed()));
        List<Double> sizes = question.progress()
                .part(0, INFLUENCE_KNOWN)
                .each(
                        all,
                        one -> asGiven.map(answers -> influence(car, one, answers))
                                .orElse(0.0));
        for (int k = 0; k < sizes.size(); k++) {
            influence.put(all.get(k), sizes.get(k));
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(one -> -influence.getOrDefault(one, 0.0)))
                .toList();
    }

    /** What one standard deviation of a number moves, in what is noticeable. */
    private double influence(Entries car, Tolerance one, Answers asGiven) {
        Deviation deviation = number -> {
            double asItIs = car.off().of(number);
            return number.path().equals(one.path()) ? number.slot().bounds().cut(asItIs + one.halfWidth() / 2) : asItIs;
        };
        Optional<Answers> off = ask(car, question.whatCounts(), deviation);
        double largest = 0;
        for (Judged figure : judged.subList(0, inFull)) {
            OptionalDouble now = figure.si(asGiven);
            OptionalDouble then = off.map(figure::si).orElseGet(OptionalDouble::empty);
            if (now.isPresent() && then.isPresent()) {
                double move = Math.abs(then.getAsDouble() - now.getAsDouble())
                        / figure.criterion().noticeable();
                largest = Math.max(largest, move);
            }
        }
        return largest;
    }

    private void sample() {
        int n = question.samples();
        List<Integer> firsts = IntStream.iterate(0, first -> first < n, first -> first + CHUNK)
                .boxed()
                .toList();
        question.progress().part(INFLUENCE_KNOWN, SAMPLED).each(firsts, first -> {
            int end = Math.min(n, first + CHUNK);
            for (int sample = first; sample < end; sample++) {
                question.progress().goOn();
                take(sample);
            }
            return first;
        });
    }

    private void take(int sample) {
        for (int car = 0; car < cars.size(); car++) {
            Deviation deviation = draw.deviation(sample, cars.get(car).off());
            Optional<Answers> answers = ask(cars.get(car), trial, deviation);
            for (int bend = 0; bend < trial.bends(); bend++) {
                Optional<Answers> here = in(bend, answers);
                turns[bend][car][sample] =
                        here.isPresent() && here.get().noTurn().isEmpty();
                for (int figure = 0; figure < judged.size(); figure++) {
                    OptionalDouble value = here.map(judged.get(figure)::si).orElseGet(OptionalDouble::empty);
                    figures[bend][car][figure][sample] = value.orElse(0);
                    has[bend][car][figure][sample] = value.isPresent();
                }
            }
            frontFirst[car][sample] = answers.isPresent() && answers.get().frontFirst();
            if (question.aim().isPresent() && answers.isPresent()) {
                aim(
                        question.aim().get(),
                        car,
                        sample,
                        aimed == 1 ? answers.get().in(0) : answers.get());
            }
        }
    }

    /** What a car answers that is off, also in what its ride estimates. */
    private Optional<Answers> ask(Entries car, Trial asked, Deviation deviation) {
        List<Judged> all = asked.judgedAlso(
                judged.stream().filter(one -> one.criterion().needsNoTurn()).toList());
        return Catalogue.build(car.off(deviation))
                .value()
                .map(built -> asked.ask(built, all, standing -> Catalogue.ridingOff(standing, deviation)));
    }

    private static Optional<Answers> in(int bend, Optional<Answers> answers) {
        return answers.map(all -> all.in(bend));
    }

    private void aim(Aim aim, int car, int sample, Answers answers) {
        OptionalDouble value = aim.figure(answers);
        meets[car][sample] = value.isPresent()
                && aim.nearlyMet(value.getAsDouble())
                && aim.off(answers).isEmpty();
        if (car == 0) {
            decides[sample] = value.orElse(0);
            decided[sample] = value.isPresent();
        }
    }

    private Answer answer(int bend) {
        List<List<Samples>> samples = new ArrayList<>();
        for (int car = 0; car < cars.size(); car++) {
            List<Samples> ofCar = new ArrayList<>();
            for (int figure = 0; figure < judged.size(); figure++) {
                ofCar.add(Samples.of(figures[bend][car][figure], has[bend][car][figure]));
            }
            samples.add(ofCar);
        }
        List<Left> left = new ArrayList<>();
        List<Left> differences = new ArrayList<>();
        for (int car = 0; car < cars.size(); car++) {
            List<OptionalDouble> own = values(in(bend, nominal.get(car)));
            left.add(left(samples.get(car), own, silent(bend, car, car), chance(car), chance(frontFirst[car])));
            if (car > 0) {
                List<OptionalDouble> base = values(in(bend, nominal.get(0)));
                List<Samples> apart = new ArrayList<>();
                List<OptionalDouble> nominalApart = new ArrayList<>();
                for (int k = 0; k < judged.size(); k++) {
                    apart.add(samples.get(car).get(k).less(samples.get(0).get(k)));
                    nominalApart.add(
                            own.get(k).isPresent() && base.get(k).isPresent()
                                    ? OptionalDouble.of(own.get(k).getAsDouble()
                                            - base.get(k).getAsDouble())
                                    : OptionalDouble.empty());
                }
                differences.add(left(
                        apart, nominalApart, silent(bend, 0, car), OptionalDouble.empty(), OptionalDouble.empty()));
            }
        }
        Optional<Spread> narrowed = narrowed(left.get(0));
        return new Answer(
                left,
                differences,
                narrowed.map(first -> measureNext(narrowed(first, samples.get(0))))
                        .orElse(List.of()),
                narrowed,
                IntStream.range(0, cars.size())
                        .mapToObj(car -> isMirrored(bend, car))
                        .toList());
    }

    /** What a better measurement is to narrow: the first figure, or what decides an aim of several bends. */
    private Optional<Spread> narrowed(Left first) {
        if (!decidesTogether()) {
            return first.spreads().stream().findFirst();
        }
        Samples all = Samples.of(decides, decided);
        Aim aim = question.aim().orElseThrow();
        OptionalDouble asGiven = nominal.get(0).map(aim::figure).orElseGet(OptionalDouble::empty);
        return all.count() > 1 ? Optional.of(spread(aim.judged(), asGiven, all, List.of())) : Optional.empty();
    }

    private Samples narrowed(Spread spread, List<Samples> ofFirstCar) {
        return decidesTogether() ? Samples.of(decides, decided) : ofFirstCar.get(judged.indexOf(spread.judged()));
    }

    private boolean decidesTogether() {
        return aimed > 1
                && question.aim()
                        .filter(aim -> !aim.judged().criterion().equals(Criterion.FRONT_FIRST))
                        .isPresent();
    }

    private boolean isMirrored(int bend, int car) {
        boolean mirrored = bend > 0;
        for (int figure = 0; figure < judged.size() && mirrored; figure++) {
            double sign = judged.get(figure).criterion().mirrors() ? -1 : 1;
            for (int i = 0; i < question.samples() && mirrored; i++) {
                mirrored = has[bend][car][figure][i] == has[0][car][figure][i]
                        && figures[bend][car][figure][i] == sign * figures[0][car][figure][i];
            }
        }
        return mirrored;
    }

    private List<OptionalDouble> values(Optional<Answers> answers) {
        return judged.stream()
                .map(one -> answers.map(one::si).orElseGet(OptionalDouble::empty))
                .toList();
    }

    /** Part of the samples in which one of two cars does not turn. */
    private double silent(int bend, int one, int other) {
        long silent = IntStream.range(0, question.samples())
                .filter(i -> !(turns[bend][one][i] && turns[bend][other][i]))
                .count();
        return (double) silent / question.samples();
    }

    private OptionalDouble chance(int car) {
        return question.aim().isEmpty() ? OptionalDouble.empty() : chance(meets[car]);
    }

    private static OptionalDouble chance(boolean[] happens) {
        long often = IntStream.range(0, happens.length).filter(i -> happens[i]).count();
        return OptionalDouble.of((double) often / happens.length);
    }

    private Left left(
            List<Samples> figures,
            List<OptionalDouble> nominal,
            double silent,
            OptionalDouble chance,
            OptionalDouble goesFrontFirst) {
        List<Integer> present = IntStream.range(0, judged.size())
                .filter(k -> figures.get(k).count() > 1)
                .boxed()
                .toList();
        List<Integer> full = present.stream().filter(k -> k < inFull).toList();
        List<Integer> besides = present.stream().filter(k -> k >= inFull).toList();
        return new Left(
                question.progress()
                        .part(SAMPLED, 1)
                        .each(full, k -> spread(judged.get(k), nominal.get(k), figures.get(k), causes(k, figures))),
                silent,
                chance,
                goesFrontFirst,
                besides.stream()
                        .map(k -> spread(judged.get(k), nominal.get(k), figures.get(k), List.of()))
                        .toList());
    }

    /** Whose fault it is that a figure varies. */
    private List<Spread.Cause> causes(int figure, List<Samples> figures) {
        Samples samples = figures.get(figure);
        List<Spread.Cause> causes = new ArrayList<>();
        double ripple = ROUNDING * judged.get(figure).criterion().noticeable();
        boolean varies = samples.standardDeviation() > ripple;
        for (int k = 0; k < inputs.size() && varies; k++) {
            FirstOrder.Share share = inputs.get(k).share(samples);
            if (share.share() >= LEAST_SHARE && share.share() >= ERRORS * share.standardError()) {
                causes.add(new Spread.Cause(left(tolerances.get(k)), share.share(), share.standardError()));
            }
        }
        causes.sort(Comparator.comparingDouble(cause -> -cause.share()));
        return causes;
    }

    private static Spread spread(Judged one, OptionalDouble nominal, Samples figure, List<Spread.Cause> causes) {
        double[] parts = figure.quantiles(LOW, 0.5, HIGH);
        double none = 1 - (double) figure.count() / figure.size();
        return new Spread(one, nominal, parts[0], parts[2], parts[1], figure.standardDeviation(), none, causes);
    }

    /** What a better measurement of one input leaves of a figure: its own line through the samples drawn in. */
    private List<Measurement> measureNext(Samples first) {
        double now = width(first.quantiles(LOW, HIGH));
        List<Measurement> all = new ArrayList<>();
        for (int k = 0; k < inputs.size(); k++) {
            Tolerance tolerance = left(tolerances.get(k));
            FirstOrder.Share share = inputs.get(k).share(first);
            if (!tolerance.number().slot().how().isEmpty() && share.share() > ERRORS * share.standardError()) {
                double usual = tolerance.number().usualTolerance();
                double better = Math.min(usual > 0 ? usual : tolerance.halfWidth(), BETTER * tolerance.halfWidth());
                double less = better / tolerance.halfWidth() - 1;
                double[] line = inputs.get(k).line(first);
                for (int i = 0; i < line.length; i++) {
                    line[i] *= less;
                }
                double[] after = first.plus(line).quantiles(LOW, HIGH);
                if (width(after) < now) {
                    all.add(new Measurement(tolerance, better, after[0], after[1]));
                }
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(one -> one.high() - one.low()))
                .limit(MEASUREMENTS)
                .toList();
    }

    /** A number's tolerance, narrower where something was learnt of it. */
    private Tolerance left(Tolerance one) {
        return learnt.map(known -> new Tolerance(one.number(), one.halfWidth() * known.left(one.path())))
                .orElse(one);
    }

    private static double width(double[] ends) {
        return ends[1] - ends[0];
    }
}
