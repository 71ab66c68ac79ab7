package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Entries;
import evenhand.turn.PacesAnswer;
import evenhand.turn.TurnAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * The search for an aim by one change, on the real car.
 *
 * <p>The car is asked at evenly spread values of the change, and every hill and valley between them is climbed. Every end of the
 * values that have an answer is closed in on, and so is every place where the other end comes to go first. So what the change
 * can reach is known.
 *
 * <p>Where the figure passes the aim between two neighbours, Brent's method finds the place; a jump past the aim is told from a
 * solution by the figure there. The things to be kept are treated alike, so the edges of what they allow are places too. Of all
 * places that do, the nearest to the present value is taken.
 *
 * <p>Asked both ways round or on several circles, the figure is the one that decides there: the worst for a bound, the mean for an
 * exact value. What each bend can reach by itself is told beside it.
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
    /** An edge that a size has at zero is found to this part of the range: it is steep there. */
    private static final double EDGE = 1e-9;
    /** So far within its edge, in parts of the range, a yes is taken: it stays one when it is written down. */
    private static final double CLEAR = 5e-4;
    /** Nearer to an end of the range than this part of it is the end. */
    private static final double AT_END = 0.01;
    /** More steps than these are not tried one by one. */
    private static final int MOST_STEPS = 400;

    private final Variation variation;
    private final Span span;
    private final Aim aim;
    private final List<Aim> keeps;
    private final Map<Double, Optional<Answers>> asked = new HashMap<>();
    private final Course course;
    private final List<Finding.Jump> jumps = new ArrayList<>();
    /** Where the figure begins and ends to have a value. */
    private List<Double> ends = List.of();

    private OneChange(Variation variation, Aim aim, List<Aim> keeps) {
        this.variation = variation;
        this.span = variation.spans().get(0);
        this.aim = aim;
        this.keeps = keeps;
        this.course = new Course(span, aim.judged().criterion(), value -> variation.figure(aim, value));
    }

    /**
     * Searches.
     *
     * @param step that can be built, SI: only whole multiples of it are found; none for any value
     * @throws CancellationException if it is no longer wanted
     */
    public static Finding find(
            Entries car, Span span, Aim aim, List<Aim> keeps, OptionalDouble step, Trial trial, Progress progress) {
        return new OneChange(Variation.of(car, List.of(span), aim, keeps, trial, progress), aim, keeps).find(step);
    }

    private Finding find(OptionalDouble step) {
        sample();
        if (course.isEmpty()) {
            return new Finding.NoValue(
                    aim,
                    aim.judged().criterion().ofLinks()
                            ? TurnAnswer.Reason.CANNOT_REACH
                            : TurnAnswer.Reason.NO_EQUILIBRIUM,
                    Variation.noSuchFigure(aim, "the range"),
                    bends().known());
        }
        ends = course.ends();
        ends.forEach(end -> figure(aim, end));
        if (aim.judged().criterion().atLimit() && !aim.isYesOrNo()) {
            bends().flips().forEach(flip -> figure(aim, flip));
        }
        variation.progress().at(ENDS_KNOWN);
        if (!aim.isYesOrNo()) {
            course.climbHills(aim.isOfNothing() ? EDGE : HILL, value -> figure(aim, value));
        }
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
            met = aim.sense() == Aim.Sense.EXACTLY
                    ? met && aim.off(there(value)).isEmpty()
                    : isMet(value);
            met &= keepsAll(value);
        }
        Answers there = variation.turnsNothing() ? variation.inFullAt(value).orElseThrow() : there(value);
        BendsOfOne bends = bends();
        Finding.Reach reach = course.reach();
        return new Finding.One(
                span,
                aim,
                met,
                value,
                aim.figure(there).orElseThrow(),
                step.isPresent() && value != exact ? OptionalDouble.of(exact) : OptionalDouble.empty(),
                solutions,
                jumps,
                reach,
                bends.slope(value),
                course.curve(),
                Variation.kept(keeps, there),
                notes(value, reach, bends),
                bends.allRound(value, there, step, keeps));
    }

    private BendsOfOne bends() {
        return new BendsOfOne(variation, aim, asked, course);
    }

    private Optional<Answers> ask(double value) {
        return asked.computeIfAbsent(value, variation::at);
    }

    /** The figure that decides whether an aim is met: of both ways round and all circles. */
    private OptionalDouble figure(Aim asks, double value) {
        OptionalDouble figure = ask(value).map(asks::figure).orElseGet(OptionalDouble::empty);
        if (asks.judged().equals(aim.judged()) && asks.sense() == aim.sense()) {
            course.put(value, figure);
        }
        return figure;
    }

    /** What the car answers at a value that makes one. */
    private Answers there(double value) {
        return ask(value).orElseThrow();
    }

    private boolean isMet(double value) {
        return ask(value).filter(aim::holds).isPresent();
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

    /** Every place in the range that does: where the figure passes the aim, or for a bound the edges of what is allowed. */
    private List<Double> solutions() {
        TreeSet<Double> places = new TreeSet<>(passes(aim, true));
        if (aim.isOfNothing()) {
            course.values().stream()
                    .min(Comparator.comparingDouble(value -> figure(aim, value).orElse(Double.POSITIVE_INFINITY)))
                    .ifPresent(places::add);
        }
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
            double here = figure(asks, values.get(i)).orElseThrow() - asks.level();
            if (here == 0) {
                places.add(values.get(i));
            } else if (i > 0) {
                double before = figure(asks, values.get(i - 1)).orElseThrow() - asks.level();
                boolean passes = before != 0 && before < 0 != here < 0;
                if (passes && asks.isYesOrNo()) {
                    places.add(clearYes(asks, values.get(before < 0 ? i : i - 1), values.get(before < 0 ? i - 1 : i)));
                } else if (passes) {
                    Pass pass = pass(asks, values.get(i - 1), values.get(i), before < 0);
                    if (pass.place().isPresent()) {
                        places.add(pass.place().getAsDouble());
                    } else {
                        places.addAll(List.of(pass.left(), pass.right()));
                        if (tellJumps) {
                            jumps.add(new Finding.Jump(pass.right(), otherLimit(pass.left(), pass.right())));
                        }
                    }
                }
            }
        }
        return places;
    }

    /** Whether in some bend the turn is ended by another cause, or another end goes first, at another value. */
    private boolean otherLimit(double here, double there) {
        Optional<Answers> one = ask(here);
        Optional<Answers> other = ask(there);
        int bends = Math.min(
                one.map(answers -> answers.bends().size()).orElse(0),
                other.map(answers -> answers.bends().size()).orElse(0));
        return IntStream.range(0, bends)
                .anyMatch(bend -> one.orElseThrow().bends().get(bend).turn() instanceof PacesAnswer.Paces before
                        && other.orElseThrow().bends().get(bend).turn() instanceof PacesAnswer.Paces after
                        && (before.limit().cause() != after.limit().cause()
                                || !before.limit()
                                        .firstAxle()
                                        .equals(after.limit().firstAxle())));
    }

    /** The yes that is nearest to a no, and as far from it as makes it safe. */
    private double clearYes(Aim asks, double yes, double no) {
        Edge edge = Edge.between(
                yes, no, Course.HALVINGS, value -> figure(asks, value).orElse(0) > asks.level());
        double clear = edge.inside() + Math.copySign(CLEAR * span.width(), yes - no);
        boolean still = span.cut(clear) == clear && figure(asks, clear).orElse(0) > asks.level();
        return still ? clear : edge.inside();
    }

    /** A place where a figure is at a level, or the two sides of a jump or hole between which it passes it. */
    private record Pass(OptionalDouble place, double left, double right) {}

    /** Closes in on the pass between two values, of which the first has less or more than the level. */
    private Pass pass(Aim level, double from, double to, boolean rises) {
        UnivariateFunction above = value -> {
            OptionalDouble figure = figure(level, value);
            return figure.isPresent() ? figure.getAsDouble() - level.level() : rises ? -1 : 1;
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
        Edge edge = Edge.between(from, to, Course.HALVINGS, value -> above.value(value) < 0 == rises);
        return new Pass(OptionalDouble.empty(), edge.inside(), edge.outside());
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
        return course.values().stream()
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

    private List<Finding.Note> notes(double value, Finding.Reach reach, BendsOfOne bends) {
        List<Finding.Note> notes = new ArrayList<>();
        if (!aim.isYesOrNo() && bends.isKink(value)) {
            notes.add(Finding.Note.KINK);
        }
        if (Math.min(value - span.from(), span.to() - value) < AT_END * span.width()) {
            notes.add(Finding.Note.END_OF_RANGE);
        }
        if (reach.highest() - reach.lowest() < aim.judged().criterion().noticeable()) {
            notes.add(Finding.Note.FLAT);
        }
        if (span.isUnusual(value)) {
            notes.add(Finding.Note.UNUSUAL);
        }
        return notes;
    }
}
