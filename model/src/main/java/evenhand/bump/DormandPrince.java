package evenhand.bump;

import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/**
 * The Butcher table of the method of order 5 with an error estimate of order 4, taken from the library's integrator and
 * laid out flat for a loop that allocates nothing.
 *
 * <p>Source: Dormand &amp; Prince, A family of embedded Runge-Kutta formulae, 1980, the pair RK5(4)7M.
 */
final class DormandPrince {
    /** Evaluations of a step; the last is the first of the next. */
    static final int STAGES = 7;

    /** Times of the stages, as parts of a step; the first is 0. */
    static final double[] TIMES = new double[STAGES];

    /** Row s, column j at {@code s·STAGES + j}: how much of stage j is in the place of stage s. */
    static final double[] PLACES = new double[STAGES * STAGES];

    /** The step itself. */
    static final double[] WEIGHTS;

    /** Step of order 5 less step of order 4. */
    static final double[] ERROR = new double[STAGES];

    private static final double[] FOURTH_ORDER = {
        5179.0 / 57600, 0, 7571.0 / 16695, 393.0 / 640, -92097.0 / 339200, 187.0 / 2100, 1.0 / 40
    };

    static {
        DormandPrince54Integrator library = new DormandPrince54Integrator(1, 1, 1, 1); // asked for its table only
        double[] times = library.getC();
        double[][] places = library.getA();
        WEIGHTS = library.getB();
        for (int s = 1; s < STAGES; s++) {
            TIMES[s] = times[s - 1];
            System.arraycopy(places[s - 1], 0, PLACES, s * STAGES, s);
        }
        for (int s = 0; s < STAGES; s++) {
            ERROR[s] = WEIGHTS[s] - FOURTH_ORDER[s];
        }
    }

    private DormandPrince() {}
}
