package evenhand.doubt;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.OneNumber;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/**
 * What measuring errors and guesses leave of a few figures, to first order: quick enough to stand beside every answer. {@link
 * Doubt} draws thousands of cars instead, and is right where this is not.
 *
 * <pre>  halfWidth = 2·√(Σ sᵢ²)  </pre>
 * sᵢ what the figure moves where number i alone is off by one standard deviation. Numbers, tolerances and bounds are those that
 * {@link Doubt} draws by, and errors are shared alike: a number has one error in all set-ups that have it, each by its own
 * tolerance, so sᵢ of a difference is the difference of both cars' sᵢ. What is estimated from a number moves with it.
 *
 * <p>Slopes are central differences, {@code sᵢ = (f(+σ) − f(−σ))/2}. The step is a whole standard deviation: the slope then is that
 * of the range in question, a corner of a stop in it is met by its mean, and rounding of the solver is far below. Where a bound
 * or a car without an answer leaves one side alone, it is the difference to the car as given; and so it is for the many numbers
 * that all together make next to nothing of the variance.
 *
 * <p>A few cars more are off in all numbers at once, drawn by chance. What their figures have more or less than the straight sum of
 * the moves tells whether first order is fair ({@link SlopeSpread#isFair}): it is not where a stop is near, nor for small
 * differences of two cars near the limit, where errors multiply.
 *
 * <p>Of cars that a road test has corrected ({@link Learnt}) errors go together, and the half-width is 2·√(Σ sᵢ·Cᵢⱼ·sⱼ).
 *
 * <p>Source: propagation of uncertainty, JCGM 100:2008 (GUM), 5.1.2 and for what is shared 5.2. The check is ours.
 */
public final class SlopeDoubt {
    /** What moves a figure by less than this part of what is noticeable is the solver's rounding. */
    private static final double ROUNDING = 1e-6;

    /** Cars with all numbers off at once; their rest is known to about a quarter of itself. */
    private static final int CHECKS = 8;

    private static final long SEED = 1;

    /** Numbers whose parts of the variance add up to less than this have their slope by one side alone. */
    private static final double ONE_SIDE_DOES = 0.01;

    private final List<Entries> cars;
    private final List<OneNumber> alone;
    private final Trial trial;
    private final List<Judged> figures;
    private final List<Tolerance> tolerances;
    private final double[][] sigma; // by car, number; 0 where a car has no such number
    private final Optional<double[][]> together; // what is left of two numbers, where a road test has taught something
    private final double[][] deviates; // by check, number
    private final List<OptionalDouble[]> asGiven; // by car, then figure
    private final List<OptionalDouble[]> checks; // by car and check, then figure
    private final List<OptionalDouble[]> above; // by car and number, then figure
    private List<OptionalDouble[]> below; // the same; none where it does not count

    private SlopeDoubt(
            List<Entries> cars, Trial trial, List<Judged> figures, Tolerance.Unsaid unsaid, Progress progress) {
        this.cars = List.copyOf(cars);
        this.figures = List.copyOf(figures);
        this.trial = everyPace(trial, figures);
        alone = cars.stream().map(OneNumber::new).toList();
        tolerances = Tolerance.all(cars, unsaid, figures);
        int n = tolerances.size();
        sigma = alone.stream().map(car -> standardDeviations(car, unsaid)).toArray(double[][]::new);
        List<String> paths = tolerances.stream().map(Tolerance::path).toList();
        Optional<Learnt> learnt = cars.get(0).off() instanceof Learnt known ? Optional.of(known) : Optional.empty();
        together = learnt.map(known -> known.together(paths));
        deviates = deviates(n, learnt.map(known -> known.factor(paths)));
        asGiven = alone.stream().map(car -> values(car.asGiven())).toList();
        checks = progress.part(0, 0.1).each(places(CHECKS), place -> check(place / CHECKS, place % CHECKS));
        above = progress.part(0.1, 0.8).each(places(n), place -> off(place / n, place % n, 1));
        below = above.stream().map(one -> none()).toList();
        boolean[] counts = counting();
        below = progress.part(0.8, 1)
                .each(places(n), place -> counts[place % n] ? off(place / n, place % n, -1) : none());
    }

    private List<Integer> places(int ofEachCar) {
        return IntStream.range(0, cars.size() * ofEachCar).boxed().toList();
    }

    /**
     * Takes the doubt of some figures of some set-ups of one car.
     *
     * @throws CancellationException if it is no longer wanted
     */
    public static SlopeDoubt of(
            List<Entries> cars, Trial trial, List<Judged> figures, Tolerance.Unsaid unsaid, Progress progress) {
        return new SlopeDoubt(cars, trial, figures, unsaid, progress);
    }

    private static Trial everyPace(Trial trial, List<Judged> figures) {
        Trial every = trial;
        for (Judged one : figures) {
            every = every.with(one);
        }
        return every;
    }

    private double[] standardDeviations(OneNumber car, Tolerance.Unsaid unsaid) {
        Map<String, Double> deviations = new HashMap<>();
        boolean loads =
                figures.stream().anyMatch(figure -> figure.criterion().loads().isPresent());
        for (Adjustable number : car.numbers()) {
            double halfWidth = Tolerance.of(number, unsaid);
            if (halfWidth > 0 && (loads || !number.isOfMount())) {
                deviations.put(number.path(), Draw.standardDeviation(number, halfWidth));
            }
        }
        return tolerances.stream()
                .mapToDouble(one -> deviations.getOrDefault(one.path(), 0.0))
                .toArray();
    }

    /** How far each number is off in each check, in its standard deviations: alike for all cars. */
    private static double[][] deviates(int numbers, Optional<double[][]> factor) {
        SplittableRandom random = new SplittableRandom(SEED);
        double[][] deviates = new double[CHECKS][numbers];
        for (double[] check : deviates) {
            for (int number = 0; number < numbers; number++) {
                check[number] = random.nextGaussian();
            }
            factor.ifPresent(rows -> {
                double[] apart = check.clone();
                Arrays.setAll(check, number -> product(rows[number], apart));
            });
        }
        return deviates;
    }

    private static double product(double[] one, double[] other) {
        return IntStream.range(0, one.length)
                .mapToDouble(i -> one[i] * other[i])
                .sum();
    }

    /** The figures of a car that is off in one number. */
    private OptionalDouble[] off(int car, int number, int side) {
        double error = side * sigma[car][number];
        return error == 0
                ? none()
                : values(alone.get(car).with(tolerances.get(number).path(), si -> si + error));
    }

    /** The figures of a car that is off in all numbers. */
    private OptionalDouble[] check(int car, int check) {
        Map<String, Double> errors = new HashMap<>();
        for (int number = 0; number < tolerances.size(); number++) {
            errors.put(tolerances.get(number).path(), deviates[check][number] * sigma[car][number]);
        }
        Entries asItIs = cars.get(car);
        return values(Catalogue.build(asItIs.off(number ->
                        number.slot().bounds().cut(asItIs.off().of(number) + errors.getOrDefault(number.path(), 0.0))))
                .value());
    }

    private OptionalDouble[] values(Optional<Car> car) {
        if (car.isEmpty()) {
            return none();
        }
        Answers answers = trial.ask(car.get(), figures);
        return figures.stream().map(one -> one.si(answers)).toArray(OptionalDouble[]::new);
    }

    private OptionalDouble[] none() {
        return figures.stream().map(one -> OptionalDouble.empty()).toArray(OptionalDouble[]::new);
    }

    /** Of each number, whether its part of any variance counts, as far as one side tells, or that side tells nothing. */
    private boolean[] counting() {
        boolean[] counts = new boolean[tolerances.size()];
        for (int figure = 0; figure < figures.size(); figure++) {
            Optional<Moves> first = moves(0, figure);
            for (int car = 0; car < cars.size(); car++) {
                Optional<Moves> moves = moves(car, figure);
                moves.ifPresent(own -> own.counting(counts));
                if (car > 0 && first.isPresent()) {
                    moves.ifPresent(own -> own.less(first.get()).counting(counts));
                }
            }
        }
        return counts;
    }

    /** What is left of a figure of a car; none where it has no such figure. */
    public Optional<SlopeSpread> of(int car, Judged judged) {
        int figure = figures.indexOf(judged);
        return moves(car, figure).map(moves -> moves.spread(judged, tolerances));
    }

    /** What is left of the difference of a car's figure from the first car's; none where one of them has none. */
    public Optional<SlopeSpread> difference(int car, Judged judged) {
        int figure = figures.indexOf(judged);
        Optional<Moves> base = moves(0, figure);
        return base.isPresent()
                ? moves(car, figure).map(moves -> moves.less(base.get()).spread(judged, tolerances))
                : Optional.empty();
    }

    /**
     * What a figure moves by each number's error.
     *
     * @param asGiven the figure without errors
     * @param moves by each number's standard deviation upwards
     * @param known of each number, whether there is a figure on one side at least
     * @param missed what each check has more than the moves add up to
     * @param together what is left of two numbers, where they do not err each by itself
     */
    private record Moves(
            double asGiven, double[] moves, boolean[] known, OptionalDouble[] missed, Optional<double[][]> together) {
        Moves less(Moves other) {
            double[] apart = new double[moves.length];
            boolean[] both = new boolean[moves.length];
            for (int number = 0; number < moves.length; number++) {
                apart[number] = moves[number] - other.moves[number];
                both[number] = known[number] && other.known[number];
            }
            OptionalDouble[] rests = new OptionalDouble[missed.length];
            for (int check = 0; check < missed.length; check++) {
                rests[check] = missed[check].isPresent() && other.missed[check].isPresent()
                        ? OptionalDouble.of(missed[check].getAsDouble() - other.missed[check].getAsDouble())
                        : OptionalDouble.empty();
            }
            return new Moves(asGiven - other.asGiven, apart, both, rests, together);
        }

        private double variance() {
            return IntStream.range(0, moves.length).mapToDouble(this::part).sum();
        }

        /** A number's part of the variance; below zero where others make up for it. */
        private double part(int number) {
            return moves[number] * (together.isPresent() ? product(together.get()[number], moves) : moves[number]);
        }

        /** Marks what is left when the smallest parts are taken away, and what is not known. */
        void counting(boolean[] counts) {
            double room = ONE_SIDE_DOES * variance();
            List<Integer> smallestFirst = IntStream.range(0, moves.length)
                    .boxed()
                    .sorted(Comparator.comparingDouble(number -> Math.abs(moves[number])))
                    .toList();
            for (int number : smallestFirst) {
                room -= moves[number] * moves[number];
                counts[number] |= room < 0 || !known[number];
            }
        }

        SlopeSpread spread(Judged judged, List<Tolerance> tolerances) {
            double variance = variance();
            List<String> untold = new ArrayList<>();
            for (int number = 0; number < moves.length; number++) {
                if (!known[number]) {
                    untold.add(tolerances.get(number).path());
                }
            }
            List<SlopeSpread.Cause> causes = new ArrayList<>();
            for (int number = 0; number < moves.length; number++) {
                double square = part(number);
                if (square > SlopeSpread.LEAST_SHARE * variance) {
                    causes.add(new SlopeSpread.Cause(tolerances.get(number), moves[number], square / variance));
                }
            }
            causes.sort(Comparator.comparingDouble(cause -> -cause.share()));
            return new SlopeSpread(judged, asGiven, 2 * Math.sqrt(variance), rest(), causes, untold);
        }

        private OptionalDouble rest() {
            double squares = 0;
            for (OptionalDouble one : missed) {
                if (one.isEmpty()) {
                    return one;
                }
                squares += one.getAsDouble() * one.getAsDouble();
            }
            return OptionalDouble.of(2 * Math.sqrt(squares / missed.length));
        }
    }

    private Optional<Moves> moves(int car, int figure) {
        if (figure < 0 || asGiven.get(car)[figure].isEmpty()) {
            return Optional.empty();
        }
        int n = tolerances.size();
        double here = asGiven.get(car)[figure].getAsDouble();
        double ripple = ROUNDING * figures.get(figure).criterion().noticeable();
        double[] moves = new double[n];
        boolean[] known = new boolean[n];
        for (int number = 0; number < n; number++) {
            OptionalDouble down = below.get(car * n + number)[figure];
            OptionalDouble up = above.get(car * n + number)[figure];
            known[number] = sigma[car][number] == 0 || down.isPresent() || up.isPresent();
            double sides = down.isPresent() && up.isPresent() ? 2 : 1;
            double move = (up.orElse(here) - down.orElse(here)) / sides;
            moves[number] = Math.abs(move) > ripple ? move : 0;
        }
        OptionalDouble[] missed = new OptionalDouble[CHECKS];
        for (int check = 0; check < CHECKS; check++) {
            double straight = here;
            for (int number = 0; number < n; number++) {
                straight += deviates[check][number] * moves[number];
            }
            OptionalDouble found = checks.get(car * CHECKS + check)[figure];
            missed[check] = found.isPresent() ? OptionalDouble.of(found.getAsDouble() - straight) : found;
        }
        return Optional.of(new Moves(here, moves, known, missed, together));
    }
}
