package evenhand.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.Variance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NormalPointsTest {
    private static double[][] deviates(int dimensions, int points, long seed) {
        return Arrays.stream(NormalPoints.chances(dimensions, points, seed))
                .map(row -> Arrays.stream(row).map(NormalPoints::deviate).toArray())
                .toArray(double[][]::new);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, -77, Long.MAX_VALUE})
    void everyInputIsStandardNormalAndNoTwoLookAlike(long seed) {
        double[][] deviates = deviates(70, 2048, seed);
        for (int k = 0; k < deviates.length; k++) {
            assertThat(new Mean().evaluate(deviates[k])).isCloseTo(0, within(0.01));
            assertThat(new Variance().evaluate(deviates[k])).isCloseTo(1, within(0.02));
            for (int other = 0; other < k; other++) {
                // Of random points, one pair in 80 would exceed the first, and none of these the second.
                double chance = (k < NormalPoints.TOGETHER ? 2.5 : 4.5) / Math.sqrt(2048);
                assertThat(new PearsonsCorrelation().correlation(deviates[k], deviates[other]))
                        .as("inputs " + k + " and " + other)
                        .isCloseTo(0, within(chance));
            }
        }
    }

    @Test
    void theFirstInputsAreFarMoreEvenThanChance() {
        double[][] chances = NormalPoints.chances(NormalPoints.TOGETHER, 1024, 5);
        double worst = 0;
        for (double[] row : chances) {
            double[] sorted = row.clone();
            Arrays.sort(sorted);
            for (int i = 0; i < sorted.length; i++) {
                worst = Math.max(worst, Math.abs(sorted[i] - (i + 0.5) / sorted.length));
            }
        }
        assertThat(worst).isLessThan(2.0 / 1024); // of random points it would be about 0.04
    }

    @Test
    void theSameSeedGivesTheSamePointsAndAnotherOneOthers() {
        assertThat(NormalPoints.chances(20, 100, 4)).isDeepEqualTo(NormalPoints.chances(20, 100, 4));
        assertThat(NormalPoints.chances(20, 100, 4)[0]).isNotEqualTo(NormalPoints.chances(20, 100, 5)[0]);
        assertThat(NormalPoints.chances(0, 100, 4)).isEmpty();
    }

    @Test
    void noChanceHasAnInfiniteDeviate() {
        for (double chance : new double[] {0, Double.MIN_VALUE, 1e-20, 1, 1 - 1e-17}) {
            assertThat(NormalPoints.deviate(NormalPoints.inside(chance))).isFinite();
        }
        assertThat(NormalPoints.deviate(0.975)).isCloseTo(1.959964, within(1e-6));
        assertThat(NormalPoints.chance(1.959964)).isCloseTo(0.975, within(1e-7));
    }
}
