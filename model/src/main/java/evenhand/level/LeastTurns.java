package evenhand.level;

import evenhand.linear.LinearSolve;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The least turns that do: of all that keep to some bounds, those with the least sum of squares, or those that come nearest to what
 * cannot be had.
 *
 * <p>There are four perches at most, so every choice of bounds that may hold at once is tried, the fewest first: with these as
 * equations the minimum follows from linear equations, and it is the answer where it keeps to all other bounds and no bound pulls
 * (Kuhn and Tucker's conditions, which are enough for a sum of squares under linear bounds).
 */
final class LeastTurns {
    /** A bound is kept where it is passed by no more, as a part of its own scale. */
    private static final double CLOSE = 1e-9;

    /** How little the turns count where something else is to come near first. */
    private static final double HARDLY = 1e-9;

    /**
     * A bound on the turns: {@code slopes·turns ≤ most}, or just as much.
     *
     * @param hold what is in the way where it is stood at; nothing of what is wanted
     * @param scale of its value, so that it is known what is next to nothing
     */
    record Bound(Optional<Levelling.Hold> hold, double[] slopes, double most, double scale) {
        double excess(double[] turns) {
            return dot(slopes, turns) - most;
        }
    }

    /**
     * What was found.
     *
     * @param heldBy what it stands at
     */
    record Found(double[] turns, List<Levelling.Hold> heldBy) {}

    private final int perches;
    private final List<Bound> bounds;

    LeastTurns(int perches, List<Bound> bounds) {
        this.perches = perches;
        this.bounds = bounds;
    }

    /** The least turns within all bounds that meet all of these exactly; none where there are none. */
    Optional<Found> meeting(List<Bound> exactly) {
        double[] square = new double[perches * perches];
        for (int i = 0; i < perches; i++) {
            square[i * perches + i] = 1;
        }
        return least(square, new double[perches], exactly);
    }

    /** Within all bounds those that come nearest to these, in sum of squares over their scales; of several the least turns. */
    Optional<Found> nearest(List<Bound> wanted) {
        double[] square = new double[perches * perches];
        double[] pull = new double[perches];
        double largest = 0;
        for (Bound each : wanted) {
            double over = 1 / (each.scale() * each.scale());
            for (int i = 0; i < perches; i++) {
                pull[i] += over * each.slopes()[i] * each.most();
                for (int j = 0; j < perches; j++) {
                    square[i * perches + j] += over * each.slopes()[i] * each.slopes()[j];
                }
                largest = Math.max(largest, square[i * perches + i]);
            }
        }
        for (int i = 0; i < perches; i++) {
            square[i * perches + i] += HARDLY * Math.max(largest, Double.MIN_NORMAL);
        }
        return least(square, pull, List.of());
    }

    /** The least of ½·nᵀ·H·n − f·n. */
    private Optional<Found> least(double[] square, double[] pull, List<Bound> exactly) {
        for (int count = 0; count <= perches; count++) {
            Optional<Found> found = choose(square, pull, new ArrayList<>(exactly), exactly.size(), 0, count);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Found> choose(
            double[] square, double[] pull, List<Bound> held, int exact, int from, int stillToChoose) {
        if (stillToChoose == 0) {
            return at(square, pull, held, exact);
        }
        for (int i = from; i < bounds.size(); i++) {
            held.add(bounds.get(i));
            Optional<Found> found = choose(square, pull, held, exact, i + 1, stillToChoose - 1);
            if (found.isPresent()) {
                return found;
            }
            held.remove(held.size() - 1);
        }
        return Optional.empty();
    }

    private Optional<Found> at(double[] square, double[] pull, List<Bound> held, int exact) {
        int size = perches + held.size();
        LinearSolve equations = new LinearSolve(size);
        double[] right = new double[size];
        for (int i = 0; i < perches; i++) {
            right[i] = pull[i];
            System.arraycopy(square, i * perches, equations.matrix, i * size, perches);
        }
        for (int k = 0; k < held.size(); k++) {
            Bound bound = held.get(k);
            right[perches + k] = bound.most();
            for (int i = 0; i < perches; i++) {
                equations.matrix[(perches + k) * size + i] = bound.slopes()[i];
                equations.matrix[i * size + perches + k] = bound.slopes()[i];
            }
        }
        if (equations.factor() == 0) {
            return Optional.empty();
        }
        equations.solve(right);
        double[] turns = new double[perches];
        System.arraycopy(right, 0, turns, 0, perches);
        for (int k = 0; k < held.size(); k++) {
            boolean pulls = k >= exact && right[perches + k] < 0;
            if (pulls
                    || !(Math.abs(held.get(k).excess(turns))
                            <= CLOSE * held.get(k).scale())) {
                return Optional.empty();
            }
        }
        for (Bound bound : bounds) {
            if (!(bound.excess(turns) <= CLOSE * bound.scale())) {
                return Optional.empty();
            }
        }
        return Optional.of(new Found(
                turns,
                held.subList(exact, held.size()).stream()
                        .flatMap(bound -> bound.hold().stream())
                        .toList()));
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
