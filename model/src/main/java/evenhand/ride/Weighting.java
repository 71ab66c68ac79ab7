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
@SuppressWarnings("ImmutableEnumChecker") // a resonance is three final numbers
public enum Weighting {
    WK(12.5, 12.5, 0.63, 2.37, 0.91, 3.35, 0.91),
    WD(2.0, 2.0, 0.63, 0, 0, 0, 0);

    private static final double LOWER_LIMIT = 0.4; // Hz
    private static final double UPPER_LIMIT = 100; // Hz
    private static final double LOWER_FOURTH = fourth(LOWER_LIMIT);
    private static final double UPPER_FOURTH = fourth(UPPER_LIMIT);

    private final double transition; // f3²
    private final double scale; // what does not depend on the frequency
    private final Resonance atF4;
    private final Resonance atF5;
    private final Resonance atF6;

    Weighting(double f3, double f4, double q4, double f5, double q5, double f6, double q6) {
        transition = f3 * f3;
        atF4 = new Resonance(f4, q4);
        atF5 = new Resonance(f5, q5);
        atF6 = new Resonance(f6, q6);
        double step = f6 == 0 ? 1 : q6 * q6 / (q5 * q5);
        scale = fourth(f4) * q4 * q4 / (f3 * f3) * step;
    }

    /** The weight at a frequency, Hz. */
    public double at(double frequency) {
        return Math.sqrt(squared(frequency));
    }

    /** The weight squared, for spectra. */
    public double squared(double frequency) {
        double f2 = frequency * frequency;
        double fourth = f2 * f2;
        return scale
                * UPPER_FOURTH
                * fourth
                * (f2 + transition)
                * atF5.at(f2, fourth)
                / ((fourth + LOWER_FOURTH) * (fourth + UPPER_FOURTH) * atF4.at(f2, fourth) * atF6.at(f2, fourth));
    }

    /** f⁴·Q² + f²·f0²·(1 − 2·Q²) + f0⁴·Q²; one where there is no f0. Its parts are kept, for it is asked very often. */
    private static final class Resonance {
        private final double atFourth;
        private final double atSquare;
        private final double constant;

        Resonance(double f0, double q) {
            atFourth = f0 == 0 ? 0 : q * q;
            atSquare = f0 * f0 * (1 - 2 * q * q);
            constant = f0 == 0 ? 1 : fourth(f0) * q * q;
        }

        double at(double f2, double fourth) {
            return fourth * atFourth + f2 * atSquare + constant;
        }
    }

    private static double fourth(double f) {
        return f * f * f * f;
    }
}
