package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** The weights by the filters of ISO 2631-1:1997 annex A themselves, in complex numbers. */
class WeightingTest {
    private static final Complex ONE = Complex.ONE;

    /** 1 + p/(Q·ω) + (p/ω)², written as frequencies. */
    private static Complex second(Complex p, double f, double q) {
        Complex over = p.divide(f);
        return ONE.add(over.divide(q)).add(over.multiply(over));
    }

    private static Complex bands(Complex p) {
        double half = 1 / Math.sqrt(2);
        Complex high = p.divide(0.4).multiply(p.divide(0.4)).divide(second(p, 0.4, half));
        Complex low = ONE.divide(second(p, 100, half));
        return high.multiply(low);
    }

    private static Complex transition(Complex p, double f3, double f4, double q4) {
        return ONE.add(p.divide(f3)).divide(second(p, f4, q4));
    }

    private static Complex upwardStep(Complex p, double f5, double q5, double f6, double q6) {
        return second(p, f5, q5).divide(second(p, f6, q6)).multiply(f5 * f5 / (f6 * f6));
    }

    @Test
    void weightsAreTheSizesOfTheStandardsFilters() {
        for (double f = 0.02; f < 500; f *= 1.07) {
            Complex p = new Complex(0, f);
            Complex wk =
                    bands(p).multiply(transition(p, 12.5, 12.5, 0.63)).multiply(upwardStep(p, 2.37, 0.91, 3.35, 0.91));
            Complex wd = bands(p).multiply(transition(p, 2.0, 2.0, 0.63));
            assertThat(Weighting.WK.at(f)).as("%s Hz", f).isCloseTo(wk.abs(), within(1e-12 * wk.abs()));
            assertThat(Weighting.WD.at(f)).as("%s Hz", f).isCloseTo(wd.abs(), within(1e-12 * wd.abs()));
            assertThat(Weighting.WK.squared(f)).isCloseTo(wk.abs() * wk.abs(), within(1e-12 * wk.abs() * wk.abs()));
        }
    }
}
