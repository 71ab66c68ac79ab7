package evenhand.doubt;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points that fill a cube of chances evenly: the Sobol' sequence, shifted by a seed and wrapped round. Any point can be had by its
 * number, so the same seed gives the same points in whatever order and on however many threads.
 *
 * <p>Sources: Joe &amp; Kuo 2008 (direction numbers, as Apache Commons Math has them); Cranley &amp; Patterson 1976 (shift).
 */
final class NormalPoints {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    /** The sequence is known up to so many dimensions; further ones are plain random. */
    private static final int MOST_DIMENSIONS = 1000;

    private final int dimensions;
    private final long seed;
    private final double[] shift;

    NormalPoints(int dimensions, long seed) {
        this.dimensions = dimensions;
        this.seed = seed;
        SplittableRandom random = new SplittableRandom(seed);
        shift = random.doubles(dimensions).toArray();
    }

    /** Chances in (0, 1) of some points in a row, a row each. */
    double[][] chances(int first, int count) {
        int even = Math.min(dimensions, MOST_DIMENSIONS);
        double[][] points = new double[count][dimensions];
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(Math.max(1, even));
        for (int i = 0; i < count; i++) {
            double[] even1 = i == 0 ? sobol.skipTo(first) : sobol.nextVector();
            SplittableRandom random = new SplittableRandom(seed * 31 + first + i);
            for (int k = 0; k < dimensions; k++) {
                double chance = k < even ? (even1[k] + shift[k]) % 1 : random.nextDouble();
                points[i][k] = Math.max(Double.MIN_NORMAL, Math.min(1 - 0x1p-53, chance));
            }
        }
        return points;
    }

    /** The standard normal deviate that is exceeded with one less this chance. */
    static double deviate(double chance) {
        return NORMAL.inverseCumulativeProbability(chance);
    }

    /** The chance that a standard normal deviate stays below. */
    static double chance(double deviate) {
        return NORMAL.cumulativeProbability(deviate);
    }
}
