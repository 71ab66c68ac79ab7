package evenhand.ride;

/**
 * How much a frequency of vibration counts for a seated person's comfort: {@code Wk} up and down, {@code Wd} fore and aft
 * or sideways. Sizes of the transfer functions; phase does not move an r.m.s. value.
 *
 * <pre>  W = Hh·Hl·Ht·Hs  </pre>
 * band limits of second order at 0.4 and 100 Hz, transition from acceleration to velocity f3, f4, Q4, upward step f5, Q5,
 * f6, Q6.
 *
 * <p>Source: ISO 2631-1:1997 annex A, parameters from memory; they give the standard's table 3 to 1.2 %.
 */
public enum Weighting {
    WK(12.5, 12.5, 0.63, 2.37, 0.91, 3.35, 0.91),
    WD(2.0, 2.0, 0.63, 0, 0, 0, 0);

    private static final double LOWER_LIMIT = 0.4; // Hz
    private static final double UPPER_LIMIT = 100; // Hz
    private static final double LOWER_FOURTH = fourth(LOWER_LIMIT);
    private static final double UPPER_FOURTH = fourth(UPPER_LIMIT);

    private final double f3;
    private final double f4;
    private final double q4;
    private final double f5;
    private final double q5;
    private final double f6;
    private final double q6;

    Weighting(double f3, double f4, double q4, double f5, double q5, double f6, double q6) {
        this.f3 = f3;
        this.f4 = f4;
        this.q4 = q4;
        this.f5 = f5;
        this.q5 = q5;
        this.f6 = f6;
        this.q6 = q6;
    }

    /** The weight at a frequency, Hz. */
    public double at(double frequency) {
        return Math.sqrt(squared(frequency));
    }

    /** The weight squared, for spectra. */
    public double squared(double frequency) {
        double f2 = frequency * frequency;
        double fourth = f2 * f2;
        double bands = fourth / (fourth + LOWER_FOURTH) * UPPER_FOURTH / (fourth + UPPER_FOURTH);
        double transition = (f2 + f3 * f3) / (f3 * f3) * fourth(f4) * q4 * q4 / resonance(f2, f4, q4);
        double step = f6 == 0 ? 1 : q6 * q6 / (q5 * q5) * resonance(f2, f5, q5) / resonance(f2, f6, q6);
        return bands * transition * step;
    }

    private static double resonance(double f2, double f0, double q) {
        return f2 * f2 * q * q + f2 * f0 * f0 * (1 - 2 * q * q) + fourth(f0) * q * q;
    }

    private static double fourth(double f) {
        return f * f * f * f;
    }
}
