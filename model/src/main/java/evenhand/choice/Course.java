package evenhand.choice;

import evenhand.answers.Criterion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * The course of a figure over the range of one change: known at some values, closed in on where it begins and ends to have a
 * value, and its hills and valleys climbed.
 */
final class Course {
    private static final int MOST_EVALUATIONS = 60;
    /** Less than this part of what is noticeable is neither hill nor valley. */
    private static final double RIPPLE = 1e-3;
    /** Halvings that close in on the end of what has an answer. */
    static final int HALVINGS = 30;

    private final Span span;
    private final double ripple;
    private final DoubleFunction<OptionalDouble> figure;
    private final TreeMap<Double, Double> points = new TreeMap<>();
    private final TreeSet<Double> without = new TreeSet<>();

    /** @param figure at a value of the change, none where it has none */
    Course(Span span, Criterion criterion, DoubleFunction<OptionalDouble> figure) {
        this.span = span;
        this.ripple = ripple(criterion);
        this.figure = figure;
    }

    /** Less than this is neither hill, valley nor bend, SI. */
    static double ripple(Criterion criterion) {
        return RIPPLE * criterion.noticeable();
    }

    /** Learns the figure at a value. */
    void put(double value, OptionalDouble known) {
        if (known.isPresent()) {
            points.put(value, known.getAsDouble());
        } else {
            without.add(value);
        }
    }

    boolean isEmpty() {
        return points.isEmpty();
    }

    /** The values at which it is known to have one, rising. */
    List<Double> values() {
        return List.copyOf(points.keySet());
    }

    /** Between a value with the figure and a neighbour without it, the last that has it; all of those. */
    List<Double> ends() {
        TreeSet<Double> all = new TreeSet<>(points.keySet());
        all.addAll(without);
        List<Double> values = List.copyOf(all);
        List<Double> ends = new ArrayList<>();
        for (int i = 1; i < values.size(); i++) {
            boolean before = points.containsKey(values.get(i - 1));
            if (before != points.containsKey(values.get(i))) {
                double with = before ? values.get(i - 1) : values.get(i);
                double beyond = before ? values.get(i) : values.get(i - 1);
                ends.add(Edge.between(
                                with, beyond, HALVINGS, at -> figure.apply(at).isPresent())
                        .inside());
            }
        }
        return ends;
    }

    /** Asks for the figure at a value, and learns it. */
    OptionalDouble ask(double value) {
        OptionalDouble there = figure.apply(value);
        put(value, there);
        return there;
    }

    /**
     * Climbs every hill and valley that is seen between the known values.
     *
     * @param exactness part of the range that a top is found to
     * @param asked the figure at a value, learnt by this course
     */
    void climbHills(double exactness, DoubleFunction<OptionalDouble> asked) {
        List<Map.Entry<Double, Double>> known = List.copyOf(new TreeMap<>(points).entrySet());
        for (int i = 1; i + 1 < known.size(); i++) {
            double here = known.get(i).getValue();
            double left = here - known.get(i - 1).getValue();
            double right = here - known.get(i + 1).getValue();
            if (left * right >= 0 && Math.abs(left) + Math.abs(right) > ripple) {
                SearchInterval about = new SearchInterval(
                        known.get(i - 1).getKey(),
                        known.get(i + 1).getKey(),
                        known.get(i).getKey());
                climb(about, left + right > 0, exactness, asked);
            }
        }
    }

    private void climb(SearchInterval about, boolean up, double exactness, DoubleFunction<OptionalDouble> asked) {
        UnivariateFunction height =
                value -> asked.apply(value).orElse(up ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY);
        try {
            new BrentOptimizer(exactness, exactness * span.width())
                    .optimize(
                            new UnivariateObjectiveFunction(height),
                            up ? GoalType.MAXIMIZE : GoalType.MINIMIZE,
                            about,
                            new MaxEval(MOST_EVALUATIONS));
        } catch (TooManyEvaluationsException e) {
            // What was climbed so far stands in the course.
        }
    }

    Finding.Reach reach() {
        return new Finding.Reach(
                points.values().stream().mapToDouble(v -> v).min().orElseThrow(),
                points.values().stream().mapToDouble(v -> v).max().orElseThrow());
    }

    List<Finding.Point> curve() {
        return points.entrySet().stream()
                .map(point -> new Finding.Point(point.getKey(), point.getValue()))
                .toList();
    }
}
