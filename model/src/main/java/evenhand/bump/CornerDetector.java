package evenhand.bump;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** Ends an integrator's step where a law bends or a tyre leaves the road or lands, and goes on by the other piece. */
final class CornerDetector implements ODEEventDetector {
    /** A corner that is passed to and fro within this time may be missed, s: a tenth of the stiffest contact's swing. */
    private static final double NEAR = 2e-3;

    /** Nor is one looked for less often, s. */
    private static final double FAR = 2e-2;

    private static final double FOUND_TO = 1e-10; // s
    private static final int ORDER = 5;
    private static final int MOST_LOOKS = 100;

    /** What is zero at a corner. */
    @FunctionalInterface
    interface Side {
        double at(double time, double[] state);
    }

    /** Goes on behind the corner, where the side is above zero or below. */
    @FunctionalInterface
    interface Turn {
        void to(boolean above);
    }

    private final double fastest;
    private final Side side;
    private final Turn turn;
    private final BracketedUnivariateSolver<UnivariateFunction> solver =
            new BracketingNthOrderBrentSolver(0, FOUND_TO, 0, ORDER);

    /** @param fastest how fast the side changes at most, per s */
    CornerDetector(double fastest, Side side, Turn turn) {
        this.fastest = fastest;
        this.side = side;
        this.turn = turn;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return (state, forward) -> Math.min(FAR, Math.max(NEAR, Math.abs(g(state)) / fastest));
    }

    @Override
    public int getMaxIterationCount() {
        return MOST_LOOKS;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
        return solver;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        return side.at(state.getTime(), state.getPrimaryState());
    }

    @Override
    public ODEEventHandler getHandler() {
        return (state, detector, increasing) -> {
            turn.to(increasing);
            return Action.RESET_DERIVATIVES;
        };
    }
}
