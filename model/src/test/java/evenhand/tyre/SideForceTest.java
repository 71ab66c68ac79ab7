package evenhand.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SideForceTest {
    private static final MagicFormula FORMULA =
            new MagicFormula(3500, 65_000, 0.95, 0.1, 1.9, 1.35, -0.6, 0.05, 2.9, Math.toRadians(2), 0.03);

    /** Pacejka 2012 appendix 3, table A3.1 (205/60R15), lateral part; as read in public transcriptions that agree. */
    private static PacejkaCoefficients tableA31() {
        EnumMap<PacejkaCoefficients.Name, Double> values = new EnumMap<>(PacejkaCoefficients.Name.class);
        String text =
                "Fz0 4000 R0 0.313 pCy1 1.193 pDy1 -0.99 pDy2 0.145 pDy3 -11.23 pEy1 -1.003 pEy2 -0.537 pEy3 -0.083"
                        + " pEy4 -4.787 pKy1 -14.95 pKy2 2.13 pKy3 -0.028 pKy4 2 pKy5 0 pKy6 -0.92 pKy7 -0.24 pHy1 0.003"
                        + " pHy2 -0.001 pVy1 0.045 pVy2 -0.024 pVy3 -0.532 pVy4 0.039 qDz1 0.1 qDz2 -0.001 qCz1 1.18 qBz1 8.964";
        String[] words = text.split(" ", -1);
        for (int i = 0; i < words.length; i += 2) {
            values.put(PacejkaCoefficients.Name.valueOf(words[i]), Double.valueOf(words[i + 1]));
        }
        return new PacejkaCoefficients(values);
    }

    @Test
    void thePublishedSetGivesThePublishedForces() {
        // Pacejka 2012 eqs. 4.E19 to 4.E30 at 4000 N and ISO slip angles of -8, -2, 0, 4 deg (derived from the table).
        SideForce force = SideForce.of(tableA31());
        double[][] expected = {{8, 3931.258348}, {2, 1608.394526}, {0, 41.99718329}, {-4, -2695.929126}};
        for (double[] each : expected) {
            force.at(Math.toRadians(each[0]), 0, 4000);
            assertThat(force.force).isCloseTo(each[1], within(0.01));
        }
        assertThat(tableA31().corneringStiffness(4000)).isCloseTo(46009.13869, within(1e-3));
        assertThat(tableA31().pneumaticTrail(6000)).isCloseTo(0.04671525, within(1e-9));
    }

    @Test
    void slopesAgreeWithDifferencesAndForceMirrorsWithSlipAndLean() {
        SplittableRandom random = new SplittableRandom(7);
        SideForce force = SideForce.of(FORMULA);
        SideForce other = SideForce.of(FORMULA);
        double step = 1e-6;
        for (int i = 0; i < 2_000; i++) {
            double slip = 0.5 * (random.nextDouble() - 0.5);
            double lean = 0.2 * (random.nextDouble() - 0.5);
            double load = 8000 * random.nextDouble() + 50;
            force.at(slip, lean, load);
            other.at(-slip, -lean, load);
            assertThat(other.force).isEqualTo(-force.force);
            assertThat(Math.abs(force.force)).isLessThanOrEqualTo(force.peak * (1 + 1e-12));
            if (Math.abs(force.enteredSlip) < 1e-4) {
                continue;
            }
            other.at(slip + step, lean, load);
            double up = other.force;
            double trailUp = other.trail;
            other.at(slip - step, lean, load);
            double scale = 1e-5 * (1 + FORMULA.corneringStiffness());
            assertThat(force.forceBySlip).isCloseTo((up - other.force) / (2 * step), within(scale));
            assertThat(force.trailBySlip).isCloseTo((trailUp - other.trail) / (2 * step), within(1e-4));
            other.at(slip, lean + step, load);
            up = other.force;
            other.at(slip, lean - step, load);
            assertThat(force.forceByLean).isCloseTo((up - other.force) / (2 * step), within(scale));
            other.at(slip, lean, load + 0.01);
            up = other.force;
            other.at(slip, lean, load - 0.01);
            assertThat(force.forceByLoad).isCloseTo((up - other.force) / 0.02, within(1e-5));
        }
    }

    @Test
    void aTyreWithoutLoadMakesNoForce() {
        SideForce force = SideForce.of(FORMULA);
        force.at(0.1, 0.02, 0);
        assertThat(force.force).isZero();
        assertThat(force.peak).isZero();
        assertThat(force.trail).isZero();
    }
}
