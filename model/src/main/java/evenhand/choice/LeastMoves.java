package evenhand.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.apache.commons.math3.util.MathArrays;

/**
 * The walk from a start to the least moves that do what is asked.
 *
 * <p>First the size of the moves and what is missing are made small together, then comes a last walk with the demands that are
 * active there: of all moves that satisfy them, taken as straight, the least, again and again until it stands still. That leaves
 * no more than rounding.
 *
 * <p>Source: penalty method and active sets after Nocedal &amp; Wright, Numerical Optimization, ch. 16 to 18, from memory.
 */
final class LeastMoves {
    /** Step of the central differences, in widths of the range. */
    private static final double STEP = 1e-4;
    /** A demand that lacks less than this, in what is noticeable, is taken as active. */
    private static final double ACTIVE = 1e-3;

    /** What is missing weighs more and more against the size of the moves. */
    private static final double[] WEIGHTS = {0.1, 10};

    private static final int LAST_STEPS = 12;
    private static final double STILL = 1e-12;
    /** Singular values below this part of the greatest are none: demands that say the same. */
    private static final double SINGULAR = 1e-9;

    private final Moves moves;
    private final boolean[] fixed;

    LeastMoves(Moves moves) {
        this(moves, new boolean[moves.count()]);
    }

    /** With some moves fixed to their start. */
    LeastMoves(Moves moves, boolean[] fixed) {
        this.moves = moves;
        this.fixed = fixed;
    }

    /** Where the walk ends; the start where it gets nowhere. */
    double[] from(double[] start) {
        int[] free = free();
        if (free.length == 0) {
            return start;
        }
        double[] best = start;
        double[] end = start;
        for (double weight : WEIGHTS) {
            end = weighed(end, free, weight);
            for (double[] one : List.of(end, last(end, free))) {
                best = better(one, best) ? one : best;
            }
        }
        return best;
    }

    private boolean better(double[] one, double[] other) {
        boolean does = moves.does(one);
        if (does != moves.does(other)) {
            return does;
        }
        return does ? moves.size(one) < moves.size(other) : moves.missing(one) < moves.missing(other);
    }

    private double[] with(double[] whole, int[] free, double[] part) {
        double[] move = whole.clone();
        for (int i = 0; i < free.length; i++) {
            move[free[i]] = part[i];
        }
        moves.cut(move);
        return move;
    }

    private static double[] part(double[] whole, int[] free) {
        return Arrays.stream(free).mapToDouble(k -> whole[k]).toArray();
    }

    /** Slopes of what is lacking over the free moves, a row for each demand. */
    private double[][] slopes(double[] move, int[] free) {
        double[][] slopes = new double[moves.asked().size()][free.length];
        for (int i = 0; i < free.length; i++) {
            double[] up = move.clone();
            double[] down = move.clone();
            up[free[i]] = Math.min(moves.highest(free[i]), move[free[i]] + STEP);
            down[free[i]] = Math.max(moves.lowest(free[i]), move[free[i]] - STEP);
            double[] above = moves.lacking(up);
            double[] below = moves.lacking(down);
            for (int row = 0; row < slopes.length; row++) {
                slopes[row][i] = (above[row] - below[row]) / (up[free[i]] - down[free[i]]);
            }
        }
        return slopes;
    }

    /** The least of size and what is missing together, without slopes. */
    private double[] weighed(double[] start, int[] free, double weight) {
        double[] lowest = Arrays.stream(free).mapToDouble(moves::lowest).toArray();
        double[] highest = Arrays.stream(free).mapToDouble(moves::highest).toArray();
        if (free.length == 1) {
            return start; // the last walk alone finds it
        }
        return with(
                start,
                free,
                Valley.lowest(
                        part(start, free),
                        lowest,
                        highest,
                        part -> moves.size(with(start, free, part)) + weight * moves.missing(with(start, free, part))));
    }

    /** The last walk alone, for a start that is near already. */
    double[] near(double[] start) {
        double[] end = last(start, free());
        return better(end, start) ? end : start;
    }

    private int[] free() {
        return IntStream.range(0, fixed.length).filter(k -> !fixed[k]).toArray();
    }

    /** The last walk: least moves by the active demands, taken as straight. */
    private double[] last(double[] start, int[] free) {
        double[] move = start;
        for (int step = 0; step < LAST_STEPS; step++) {
            double[] lacking = moves.lacking(move);
            List<Integer> active = active(lacking);
            if (active.isEmpty() || free.length == 0) {
                return move;
            }
            double[] next = leastWithin(move, free, active, lacking);
            double way = MathArrays.distanceInf(next, move);
            move = next;
            if (way < STILL) {
                break;
            }
        }
        return move;
    }

    /** The demands that hold a place where it is. */
    private List<Integer> active(double[] lacking) {
        List<Integer> active = new ArrayList<>();
        for (int row = 0; row < lacking.length; row++) {
            boolean holds = switch (moves.asked().get(row).sense()) {
                case EXACTLY -> true;
                case AT_MOST -> lacking[row] < ACTIVE;
                case AT_LEAST -> lacking[row] > -ACTIVE;
            };
            if (holds) {
                active.add(row);
            }
        }
        return active;
    }

    /** The least moves that satisfy the active demands, taken as straight; those that would leave their range end there. */
    private double[] leastWithin(double[] move, int[] free, List<Integer> active, double[] lacking) {
        double[][] slopes = slopes(move, free);
        double[] next = move.clone();
        boolean[] atEnd = new boolean[free.length];
        int[] loose = IntStream.range(0, free.length).toArray();
        while (loose.length > 0) {
            double[][] rows = new double[active.size()][loose.length];
            double[] wanted = new double[active.size()];
            for (int i = 0; i < wanted.length; i++) {
                double[] slope = slopes[active.get(i)];
                wanted[i] = -lacking[active.get(i)];
                for (int k = 0; k < free.length; k++) {
                    wanted[i] += slope[k] * (atEnd[k] ? move[free[k]] - next[free[k]] : move[free[k]]);
                }
                for (int k = 0; k < loose.length; k++) {
                    rows[i][k] = slope[loose[k]];
                }
            }
            double[] least = solve(new Array2DRowRealMatrix(rows, false), wanted);
            int before = loose.length;
            for (int k = 0; k < least.length; k++) {
                int change = free[loose[k]];
                next[change] = Math.max(moves.lowest(change), Math.min(moves.highest(change), least[k]));
                atEnd[loose[k]] = next[change] != least[k];
            }
            loose = Arrays.stream(loose).filter(k -> !atEnd[k]).toArray();
            if (loose.length == before) {
                break;
            }
        }
        return next;
    }

    /** The least solution of a system with fewer rows than unknowns, or the one that misses least. */
    private static double[] solve(RealMatrix rows, double[] wanted) {
        SingularValueDecomposition parts = new SingularValueDecomposition(rows);
        double[] sizes = parts.getSingularValues();
        ArrayRealVector turned = new ArrayRealVector(parts.getUT().operate(wanted), false);
        for (int i = 0; i < sizes.length; i++) {
            boolean counts = sizes[i] > SINGULAR * sizes[0];
            turned.setEntry(i, counts ? turned.getEntry(i) / sizes[i] : 0);
        }
        return parts.getV().operate(turned).toArray();
    }
}
