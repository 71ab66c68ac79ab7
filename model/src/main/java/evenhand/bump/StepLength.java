package evenhand.bump;

/**
 * How long a step is tried. No answer hangs on it: a step is kept where its error allows it, however long it is; these are
 * the usual rules by which few are tried in vain.
 *
 * <p>Source: Hairer, Nørsett &amp; Wanner, Solving Ordinary Differential Equations I, II.4.
 */
final class StepLength {
    private static final double FIRST_STEP = 1e-4; // s
    private static final double SAFETY = 0.9;
    private static final double MOST_GROWTH = 5;
    private static final double LEAST_GROWTH = 0.2;
    private static final double ONE_OVER_ORDER = 0.2;

    /** What would be left behind a step is rounding, as a part of it. */
    private static final double ROUNDING = 1e-9;

    private double proposed = FIRST_STEP;

    /** Whether the next step reaches the end of the time that is left, s. */
    boolean reaches(double left) {
        return proposed >= left * (1 - ROUNDING);
    }

    /** Of the next step, s. */
    double next() {
        return proposed;
    }

    /** A step's error, over what is allowed, was above 1. */
    void refused(double length, double error) {
        proposed = Math.max(LEAST_GROWTH * length, wished(length, error));
    }

    /** A step was kept; one that an end cut short says nothing against longer ones. */
    void kept(double length, double error, boolean cutShort) {
        double wished = wished(length, error);
        if (!cutShort || wished > proposed) {
            proposed = Math.min(wished, MOST_GROWTH * length);
        }
    }

    private static double wished(double length, double error) {
        return length * SAFETY * Math.pow(error, -ONE_OVER_ORDER);
    }
}
