package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Entries;
import evenhand.turn.TurnAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * The search for an aim by one change, on the real car.
 *
 * <p>The car is asked at evenly spread values of the change; every hill and valley between them is climbed, and every end of the
 * values that have an answer is closed in on, so that what the change can reach is known. Where the figure passes the aim between
 * two neighbours, Brent's method finds the place; a jump past the aim is told from a solution by the figure there. The things to
 * be kept are treated alike, so the edges of what they allow are places too. Of all places that do, the nearest to the present
 * value is taken.
 *
 * <p>It can miss two solutions closer together than a twenty-fourth of the range with neither hill nor valley seen between them.
 *
 * <p>Source: Brent, Algorithms for Minimization without Derivatives, 1973, as Apache Commons Math has it.
 */
public final class OneChange {
    /** How much of the work is done when; about. */
    private static final double SAMPLED = 0.3;

    private static final double ENDS_KNOWN = 0.4;
    private static final double HILLS_CLIMBED = 0.6;
    private static final double SOLVED = 0.9;

    private static final int INTERVALS = 24;
    private static final int MOST_EVALUATIONS = 60;
    /** To this part of the range a place is found. */
    private static final double EXACT = 1e-12;
    /** Hills are climbed to this part of the range: their tops are flat. */
    private static final double HILL = 1e-6;
    /** Less than this part of what is noticeable is neither hill nor valley. */
    private static final double RIPPLE = 1e-3;
    /** Halvings that close in on the end of what has an answer. */
    private static final int HALVINGS = 30;
    /** Nearer to an end of the range than this part of it is the end. */
    private static final double AT_END = 0.01;
    /** More steps than these are not tried one by one. */
    private static final int MOST_STEPS = 400;

    private final Variation variation;
    private final Span span;
    private final Aim aim;
    private final List<Aim> keeps;
    private final Map<Double, Optional<Answers>> asked = new HashMap<>();
    private final TreeMap<Double, Double> curve = new TreeMap<>();
    private final List<Double> jumps = new ArrayList<>();
    /** Where the figure begins and ends to have a value. */
    private final List<Double> ends = new ArrayList<>();

    private OneChange(Variation variation, Aim aim, List<Aim> keeps) {
        this.variation = variation;
        this.span = variation.spans().get(0);
        this.aim = aim;
        this.keeps = keeps;
    }

    /**
     * Searches.
     *
     * @param step that can be built, SI: only whole multiples of it are found; none for any value
     * @throws CancellationException if it is no longer wanted
     */
    public static Finding find(
            Entries car, Span span, Aim aim, List<Aim> keeps, OptionalDouble step, Trial trial, Progress progress) {
        return new OneChange(new Variation(car, List.of(span), trial, progress), aim, keeps).find(step);
    }

    private Finding find(OptionalDouble step) {
        sample();
        if (curve.isEmpty()) {
            return new Finding.NoValue(
                    aim,
                    TurnAnswer.Reason.NO_EQUILIBRIUM,
                    "the car has no such figure anywhere in the range; is its pace beyond the limit?");
        }
        closeInOnEnds();
        variation.progress().at(ENDS_KNOWN);
        climbHills();
        variation.progress().at(HILLS_CLIMBED);
        List<Double> solutions = solutions();
        double exact = nearest(solutions);
        variation.progress().at(SOLVED);
        boolean met = solutions.contains(exact);
        double value = exact;
        if (step.isPresent()) {
            Built built = built(solutions, exact, step.getAsDouble());
            exact = built.exact();
            value = built.value();
            met = aim.sense() == Aim.Sense.EXACTLY ? met : isMet(value);
            met &= keepsAll(value);
        }
        double achieved = figure(aim, value).orElseThrow();
        Finding.Reach reach = reach();
        return new Finding.One(
                span,
                aim,
                met,
                value,
                achieved,
                step.isPresent() && value != exact ? OptionalDouble.of(exact) : OptionalDouble.empty(),
                solutions,
                jumps,
                reach,
                slope(value),
                curve.entrySet().stream()
                        .map(point -> new Finding.Point(point.getKey(), point.getValue()))
                        .toList(),
                variation.kept(keeps, value),
                notes(value, reach));
    }

    private Optional<Answers> ask(double value) {
        return asked.computeIfAbsent(value, variation::at);
    }

    /** The figure that decides whether an aim is met: of both ways round and all circles. */
    private OptionalDouble figure(Aim asks, double value) {
        OptionalDouble figure = ask(value).map(asks::figure).orElseGet(OptionalDouble::empty);
        if (asks.judged().equals(aim.judged()) && asks.sense() == aim.sense() && figure.isPresent()) {
            curve.put(value, figure.getAsDouble());
        }
        return figure;
    }

    private boolean isMet(double value) {
        OptionalDouble figure = figure(aim, value);
        return figure.isPresent() && aim.met(figure.getAsDouble());
    }

    private boolean keepsAll(double value) {
        return ask(value).filter(answers -> Variation.keeps(answers, keeps)).isPresent();
    }

    private void sample() {
        TreeSet<Double> values = new TreeSet<>();
        for (int i = 0; i <= INTERVALS; i++) {
            values.add(i == INTERVALS ? span.to() : span.from() + span.width() * i / INTERVALS);
        }
        values.add(span.start());
        List<Double> all = List.copyOf(values);
        List<Optional<Answers>> answers = variation.progress().part(0, SAMPLED).each(all, variation::at);
        for (int i = 0; i < all.size(); i++) {
            asked.put(all.get(i), answers.get(i));
            figure(aim, all.get(i));
        }
    }

    /** Between a value with the figure and a neighbour without it, the last that has it. */
    private void closeInOnEnds() {
        List<Double> values = asked.keySet().stream().sorted().toList();
        for (int i = 1; i < values.size(); i++) {
            boolean before = curve.containsKey(values.get(i - 1));
            if (before != curve.containsKey(values.get(i))) {
                double with = before ? values.get(i - 1) : values.get(i);
                double without = before ? values.get(i) : values.get(i - 1);
                for (int k = 0; k < HALVINGS; k++) {
                    double middle = (with + without) / 2;
                    if (variation.figure(aim, middle).isPresent()) {
                        with = middle;
                    } else {
                        without = middle;
                    }
                }
                figure(aim, with);
                ends.add(with);
            }
        }
    }

    private void climbHills() {
        List<Map.Entry<Double, Double>> points = List.copyOf(new TreeMap<>(curve).entrySet());
        double ripple = RIPPLE * aim.judged().criterion().noticeable();
        for (int i = 1; i + 1 < points.size(); i++) {
            double here = points.get(i).getValue();
            double left = here - points.get(i - 1).getValue();
            double right = here - points.get(i + 1).getValue();
            if (left * right >= 0 && Math.abs(left) + Math.abs(right) > ripple) {
                climb(
                        points.get(i - 1).getKey(),
                        points.get(i).getKey(),
                        points.get(i + 1).getKey(),
                        left + right > 0);
            }
        }
    }

    private void climb(double from, double middle, double to, boolean up) {
        UnivariateFunction height =
                value -> figure(aim, value).orElse(up ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY);
        try {
            new BrentOptimizer(HILL, HILL * span.width())
                    .optimize(
                            new UnivariateObjectiveFunction(height),
                            up ? GoalType.MAXIMIZE : GoalType.MINIMIZE,
                            new SearchInterval(from, to, middle),
                            new MaxEval(MOST_EVALUATIONS));
        } catch (TooManyEvaluationsException e) {
            // What was climbed so far stands in the curve.
        }
    }

    private Finding.Reach reach() {
        return new Finding.Reach(
                curve.values().stream().mapToDouble(v -> v).min().orElseThrow(),
                curve.values().stream().mapToDouble(v -> v).max().orElseThrow());
    }

    /** Every place in the range that does: where the figure passes the aim, or for a bound the edges of what is allowed. */
    private List<Double> solutions() {
        TreeSet<Double> places = new TreeSet<>(passes(aim, true));
        if (aim.sense() != Aim.Sense.EXACTLY) {
            for (Aim keep : keeps) {
                places.addAll(passes(keep, false));
            }
            places.addAll(ends);
            places.add(span.start());
            places.add(span.from());
            places.add(span.to());
        }
        places.removeIf(place -> !isMet(place) || !keepsAll(place));
        if (aim.sense() != Aim.Sense.EXACTLY && places.contains(span.start())) {
            return List.of(span.start());
        }
        return List.copyOf(places);
    }

    /** Where a figure passes what is asked of it; of a bound that it jumps past, the side of the jump that does. */
    private List<Double> passes(Aim asks, boolean tellJumps) {
        List<Double> places = new ArrayList<>();
        List<Double> values = asked.keySet().stream()
                .filter(value -> figure(asks, value).isPresent())
                .sorted()
                .toList();
        for (int i = 0; i < values.size(); i++) {
            double here = figure(asks, values.get(i)).orElseThrow() - asks.value();
            if (here == 0) {
                places.add(values.get(i));
            } else if (i > 0) {
                double before = figure(asks, values.get(i - 1)).orElseThrow() - asks.value();
                if (before * here < 0) {
                    Pass pass = pass(asks, values.get(i - 1), values.get(i), before < 0);
                    if (pass.place().isPresent()) {
                        places.add(pass.place().getAsDouble());
                    } else {
                        places.addAll(List.of(pass.left(), pass.right()));
                        if (tellJumps) {
                            jumps.add(pass.right());
                        }
                    }
                }
            }
        }
        return places;
    }

    /** A place where a figure is at a level, or the two sides of a jump or hole between which it passes it. */
    private record Pass(OptionalDouble place, double left, double right) {}

    /** Closes in on the pass between two values, of which the first has less or more than the level. */
    private Pass pass(Aim level, double from, double to, boolean rises) {
        UnivariateFunction above = value -> {
            OptionalDouble figure = figure(level, value);
            return figure.isPresent() ? figure.getAsDouble() - level.value() : rises ? -1 : 1;
        };
        try {
            double place = new BrentSolver(EXACT, EXACT * span.width(), 0).solve(2 * MOST_EVALUATIONS, above, from, to);
            OptionalDouble there = figure(level, place);
            if (there.isPresent() && level.touches(there.getAsDouble())) {
                return new Pass(OptionalDouble.of(place), place, place);
            }
        } catch (TooManyEvaluationsException e) {
            // A jump in an awkward place; halving is sure to close in on it.
        }
        double left = from;
        double right = to;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (left + right) / 2;
            if (above.value(middle) < 0 == rises) {
                left = middle;
            } else {
                right = middle;
            }
        }
        return new Pass(OptionalDouble.empty(), left, right);
    }

    /** The solution nearest to the present value; where there is none, the place that comes nearest to the aim. */
    private double nearest(List<Double> solutions) {
        double present = span.adjustable().si();
        Optional<Double> solution =
                solutions.stream().min(Comparator.comparingDouble(value -> Math.abs(value - present)));
        if (solution.isPresent()) {
            return solution.get();
        }
        for (Aim keep : keeps) {
            passes(keep, false).forEach(edge -> figure(aim, edge));
        }
        Comparator<Double> keeping = Comparator.comparing(value -> !keepsAll(value));
        return List.copyOf(curve.keySet()).stream()
                .min(keeping.thenComparingDouble(value ->
                                Math.abs(aim.shortfall(figure(aim, value).orElseThrow())))
                        .thenComparingDouble(value -> Math.abs(value - present)))
                .orElseThrow();
    }

    /** A solution, and the step to build for it. */
    private record Built(double exact, double value) {}

    /** The step to build: beside the nearest solution that has one which does and keeps what is to be kept. */
    private Built built(List<Double> solutions, double exact, double step) {
        List<Double> nearestFirst = solutions.stream()
                .sorted(Comparator.comparingDouble(
                        value -> Math.abs(value - span.adjustable().si())))
                .toList();
        for (double solution : nearestFirst) {
            double value = rounded(solution, step);
            if (keepsAll(value) && (aim.sense() == Aim.Sense.EXACTLY || isMet(value))) {
                return new Built(solution, value);
            }
        }
        return new Built(exact, rounded(exact, step));
    }

    /** The step next to an exact solution that comes nearer; of a bound the nearest that does. */
    private double rounded(double exact, double step) {
        double first = span.firstStep(step);
        double last = span.lastStep(step);
        int steps = (int) Math.min(MOST_STEPS, last - first + 1);
        double start = Math.max(first, Math.floor(Math.min(last - steps + 1, Math.rint(exact / step) - steps / 2.0)));
        List<Double> all = IntStream.range(0, steps)
                .mapToObj(i -> (start + i) * step)
                .sorted(Comparator.comparingDouble(value -> Math.abs(value - exact)))
                .toList();
        boolean bound = aim.sense() != Aim.Sense.EXACTLY;
        List<Double> near = bound ? all : all.subList(0, Math.min(2, all.size()));
        if (bound) {
            for (double value : near) {
                if (isMet(value) && keepsAll(value)) {
                    return value;
                }
            }
        }
        Comparator<Double> keeping = Comparator.comparing(value -> !keepsAll(value));
        return near.stream()
                .filter(value -> figure(aim, value).isPresent())
                .min(keeping.thenComparingDouble(
                        value -> Math.abs(aim.shortfall(figure(aim, value).orElseThrow()))))
                .orElse(exact);
    }

    /** Slope of the figure here, from both sides where both have it. */
    private double slope(double value) {
        double reach = Kink.STEP * span.width();
        double left = Math.max(span.from(), value - reach);
        double right = Math.min(span.to(), value + reach);
        OptionalDouble before = variation.figure(aim, left);
        OptionalDouble after = variation.figure(aim, right);
        double here = figure(aim, value).orElseThrow();
        double low = before.isPresent() ? left : value;
        double high = after.isPresent() ? right : value;
        return high > low ? (after.orElse(here) - before.orElse(here)) / (high - low) : 0;
    }

    private List<Finding.Note> notes(double value, Finding.Reach reach) {
        List<Finding.Note> notes = new ArrayList<>();
        double ripple = RIPPLE * aim.judged().criterion().noticeable();
        if (Kink.isAt(value, span.from(), span.to(), ripple, at -> variation.figure(aim, at))) {
            notes.add(Finding.Note.KINK);
        }
        if (Math.min(value - span.from(), span.to() - value) < AT_END * span.width()) {
            notes.add(Finding.Note.END_OF_RANGE);
        }
        if (reach.highest() - reach.lowest() < aim.judged().criterion().noticeable()) {
            notes.add(Finding.Note.FLAT);
        }
        return notes;
    }
}
