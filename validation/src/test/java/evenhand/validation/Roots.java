package evenhand.validation;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Where something is just so, by asking the model again and again. */
final class Roots {
    private static final int MOST_QUESTIONS = 300;

    private Roots() {}

    static double between(double low, double high, DoubleUnaryOperator function) {
        return new BrentSolver(1e-13, 1e-15, 1e-15).solve(MOST_QUESTIONS, function::applyAsDouble, low, high);
    }
}
