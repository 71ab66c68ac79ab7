package evenhand.choice;

import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;

/**
 * The way down into a valley of several unknowns within bounds, without slopes.
 *
 * <p>Source: Powell, The BOBYQA algorithm for bound constrained optimization, 2009, as Apache Commons Math has it.
 */
final class Valley {
    private static final int MOST_EVALUATIONS = 400;
    private static final double FIRST_STEP = 0.1;
    private static final double LAST_STEP = 1e-6;

    private Valley() {}

    /**
     * The lowest place on the way down.
     *
     * @param start within the bounds; two unknowns or more
     */
    static double[] lowest(double[] start, double[] from, double[] to, ToDoubleFunction<double[]> height) {
        Lowest lowest = new Lowest(start.clone(), height.applyAsDouble(start));
        try {
            new BOBYQAOptimizer(2 * start.length + 1, FIRST_STEP, LAST_STEP)
                    .optimize(
                            new MaxEval(MOST_EVALUATIONS),
                            new ObjectiveFunction(place -> lowest.at(place, height.applyAsDouble(place))),
                            GoalType.MINIMIZE,
                            new InitialGuess(start),
                            new SimpleBounds(from, to));
        } catch (MathIllegalStateException e) {
            // Evaluations used up, or no way down to be found: the lowest so far stands.
        }
        return lowest.place;
    }

    private static final class Lowest {
        private double[] place;
        private double height;

        Lowest(double[] place, double height) {
            this.place = place;
            this.height = height;
        }

        double at(double[] here, double high) {
            if (high < height) {
                place = here.clone();
                height = high;
            }
            return high;
        }
    }
}
