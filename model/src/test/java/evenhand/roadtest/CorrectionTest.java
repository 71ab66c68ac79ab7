package evenhand.roadtest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

class CorrectionTest {
    /** Predictions that are straight in the unknowns. */
    private record Straight(double[][] slopes, double[] read, double[] sigmas) implements Misses {
        static Straight random(int readings, int unknowns, long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            double[][] slopes = new double[readings][unknowns];
            for (double[] row : slopes) {
                Arrays.setAll(row, k -> random.nextGaussian());
            }
            double[] read = new double[readings];
            Arrays.setAll(read, i -> 4 * random.nextGaussian());
            double[] sigmas = new double[readings];
            Arrays.setAll(sigmas, i -> 0.2 + random.nextDouble());
            return new Straight(slopes, read, sigmas);
        }

        @Override
        public int unknowns() {
            return slopes[0].length;
        }

        @Override
        public Optional<At> at(double[] z) {
            double[] misses = new double[read.length];
            Arrays.setAll(misses, i -> {
                double expected = 0;
                for (int k = 0; k < z.length; k++) {
                    expected += slopes[i][k] * z[k];
                }
                return read[i] - expected;
            });
            return Optional.of(new At(misses, sigmas));
        }

        @Override
        public double[][] slopes(double[] z, At here) {
            return slopes;
        }
    }

    /** z = (I + AᵀS⁻¹A)⁻¹AᵀS⁻¹y, by a plain inverse: another way than the correction's own. */
    @Test
    void ofAStraightCarItIsWeightedLeastSquaresWithAPrior() {
        for (int readings : new int[] {3, 24, 60}) {
            Straight straight = Straight.random(readings, 20, readings);
            RealMatrix a = MatrixUtils.createRealMatrix(straight.slopes());
            double[] weights =
                    Arrays.stream(straight.sigmas()).map(s -> 1 / (s * s)).toArray();
            RealMatrix w = MatrixUtils.createRealDiagonalMatrix(weights);
            RealMatrix inverse = new LUDecomposition(MatrixUtils.createRealIdentityMatrix(20)
                            .add(a.transpose().multiply(w).multiply(a)))
                    .getSolver()
                    .getInverse();
            RealVector z =
                    inverse.multiply(a.transpose()).multiply(w).operate(MatrixUtils.createRealVector(straight.read()));
            Correction correction = Correction.of(straight).orElseThrow();
            assertThat(correction.converged()).isTrue();
            for (int k = 0; k < 20; k++) {
                assertThat(correction.moved()[k]).isCloseTo(z.getEntry(k), within(1e-9));
                for (int j = 0; j < 20; j++) {
                    assertThat(correction.covariance()[k][j]).isCloseTo(inverse.getEntry(k, j), within(1e-9));
                }
            }
        }
    }

    @Test
    void aReadingThatSaysNothingChangesNothing() {
        Straight some = Straight.random(6, 9, 3);
        double[][] slopes = Arrays.copyOf(some.slopes(), 7);
        slopes[6] = slopes[2];
        double[] read = Arrays.copyOf(some.read(), 7);
        read[6] = 50;
        double[] sigmas = Arrays.copyOf(some.sigmas(), 7);
        sigmas[6] = 1e9;
        Correction without = Correction.of(some).orElseThrow();
        Correction with = Correction.of(new Straight(slopes, read, sigmas)).orElseThrow();
        for (int k = 0; k < 9; k++) {
            assertThat(with.moved()[k]).isCloseTo(without.moved()[k], within(1e-9));
            assertThat(with.covariance()[k][k]).isCloseTo(without.covariance()[k][k], within(1e-9));
        }
    }

    /** A bend so sharp that a whole step would overshoot: y = atan-like in one unknown. */
    @Test
    void stepsAreHalvedWhereTheyWouldMakeItWorse() {
        Misses bent = new Misses() {
            @Override
            public int unknowns() {
                return 1;
            }

            @Override
            public Optional<At> at(double[] z) {
                return Optional.of(new At(new double[] {1.5 - Math.atan(8 * (z[0] - 0.7))}, new double[] {0.05}));
            }

            @Override
            public double[][] slopes(double[] z, At here) {
                double x = 8 * (z[0] - 0.7);
                return new double[][] {{8 / (1 + x * x)}};
            }
        };
        Correction found = Correction.of(bent).orElseThrow();
        double z = found.moved()[0];
        double miss = bent.at(new double[] {z}).orElseThrow().misses()[0] / 0.05;
        assertThat(found.converged()).isTrue();
        assertThat(z).isCloseTo(found.slopes()[0][0] * miss, within(1e-6));
        assertThat(z).isGreaterThan(0.7);
    }

    @Test
    void oneReadingMoreTakesAwayWhatTheFormulaSays() {
        Straight some = Straight.random(6, 9, 5);
        double[][] weighted = new double[6][];
        Arrays.setAll(
                weighted,
                i -> Arrays.stream(some.slopes()[i])
                        .map(s -> s / some.sigmas()[i])
                        .toArray());
        double[][] five = Correction.covariance(Arrays.copyOf(weighted, 5), 9);
        double[][] six = Correction.covariance(weighted, 9);
        double[][] oneMore = NextReadings.with(five, weighted[5]);
        for (int k = 0; k < 9; k++) {
            assertThat(oneMore[k]).containsExactly(six[k], within(1e-12));
        }
    }
}
