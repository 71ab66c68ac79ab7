package evenhand.turn;

import static evenhand.turn.Equilibrium.ACCELERATION;
import static evenhand.turn.Equilibrium.BALANCES;
import static evenhand.turn.Equilibrium.COLUMNS;

import evenhand.linear.LinearSolve;
import java.util.Arrays;

/**
 * Newton's method on the balances and one more row, which holds either the lateral acceleration or a place along the
 * branch. Works in its own arrays and allocates nothing. One per thread.
 */
final class Newton {
    private static final int MAX_ITERATIONS = 14;
    /** Balances over the car's weight: rounding of sums of some 1e4 N leaves about 1e-15. */
    static final double TOLERANCE = 2e-13;
    /** Good enough for a state that is only passed by. */
    static final double PASSING = 1e-9;
    /** Good enough where rounding lets it fall no further; a tenth of what the balances are held to. */
    private static final double ACCEPTABLE = 1e-10;

    /** The state that is worked on: unknowns, and the lateral acceleration behind them. */
    final double[] state = new double[COLUMNS];

    /** The last row of the system. */
    final double[] border = new double[COLUMNS];

    /** What may be left over in any balance. */
    double tolerance = TOLERANCE;

    private final Equilibrium equilibrium;
    private final LinearSolve solve = new LinearSolve(COLUMNS);
    private final double[] step = new double[COLUMNS];

    Newton(Equilibrium equilibrium) {
        this.equilibrium = equilibrium;
    }

    /** How a search for a balance ended. */
    enum Outcome {
        FOUND,
        BEYOND_FRICTION,
        NO_PROGRESS
    }

    /** From now on the last row holds the lateral acceleration. */
    void holdAcceleration() {
        Arrays.fill(border, 0);
        border[ACCELERATION] = 1;
    }

    /** From now on the last row is the plane across a tangent, which stands at {@code at} in an array. */
    void holdAcross(double[] tangents, int at, double[] weights) {
        for (int i = 0; i < COLUMNS; i++) {
            border[i] = tangents[at + i] * weights[i];
        }
    }

    /** Factors slopes and border at the last evaluation; gives the sign of the determinant, zero where singular. */
    int factor() {
        equilibrium.slopesInto(solve.matrix);
        System.arraycopy(border, 0, solve.matrix, BALANCES * COLUMNS, COLUMNS);
        return solve.factor();
    }

    /** After {@link #factor}: the direction that keeps all balances and moves the border row by so much. */
    void along(double much, double[] into) {
        Arrays.fill(step, 0);
        step[BALANCES] = much;
        solve.solve(step);
        System.arraycopy(step, 0, into, 0, COLUMNS);
    }

    /**
     * After {@link #factor}: what the state has to move to stay in balance when the curvature of the path grows at constant
     * lateral acceleration, per 1/m, with the border row held.
     */
    void alongCurvature(double[] into) {
        for (int i = 0; i < BALANCES; i++) {
            step[i] = -equilibrium.byCurvature(i);
        }
        step[BALANCES] = 0;
        solve.solve(step);
        System.arraycopy(step, 0, into, 0, COLUMNS);
    }

    /**
     * Newton's method from {@link #state} with the border row held at its target. A step that does no good is halved a
     * few times: beyond a corner of a stop or at the edge of friction the slopes of one side mislead.
     */
    Outcome correct(double target) {
        if (!equilibrium.at(state)) {
            return Outcome.BEYOND_FRICTION;
        }
        double worst = Math.max(equilibrium.worst(), Math.abs(excess(target)));
        for (int iteration = 1; iteration <= MAX_ITERATIONS; iteration++) {
            if (worst < tolerance) {
                return Outcome.FOUND;
            }
            if (factor() == 0) {
                return Outcome.NO_PROGRESS;
            }
            for (int i = 0; i < BALANCES; i++) {
                step[i] = -equilibrium.left[i];
            }
            step[BALANCES] = -excess(target);
            solve.solve(step);
            double part = 1;
            for (int i = 0; i < COLUMNS; i++) {
                state[i] += step[i];
            }
            double next = worstHere(target);
            while (!(next < worst) && part > 0.2) {
                part /= 2;
                for (int i = 0; i < COLUMNS; i++) {
                    state[i] -= part * step[i];
                }
                next = worstHere(target);
            }
            if (!(next < worst) && worst < ACCEPTABLE) {
                for (int i = 0; i < COLUMNS; i++) {
                    state[i] -= part * step[i]; // back to the best
                }
                return equilibrium.at(state) ? Outcome.FOUND : Outcome.BEYOND_FRICTION;
            }
            if (next == Double.POSITIVE_INFINITY) {
                return Outcome.BEYOND_FRICTION;
            }
            worst = next;
        }
        return worst < ACCEPTABLE ? Outcome.FOUND : Outcome.NO_PROGRESS;
    }

    private double worstHere(double target) {
        return equilibrium.at(state)
                ? Math.max(equilibrium.worst(), Math.abs(excess(target)))
                : Double.POSITIVE_INFINITY;
    }

    private double excess(double target) {
        double sum = -target;
        for (int i = 0; i < COLUMNS; i++) {
            sum += border[i] * state[i];
        }
        return sum;
    }
}
