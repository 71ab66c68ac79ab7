package evenhand.doubt;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points that fill a cube of chances evenly. The first dimensions, which should be those that matter, have the Sobol' sequence,
 * shifted by the seed and wrapped round: it is even in all of them together. In many dimensions and with few points it is not, and
 * makes inputs look alike that are none; so each further dimension is cut in as many slices as there are points, and the slices
 * are dealt out at random: even in each alone, and by chance in all together.
 *
 * <p>Sources: Sobol' 1967 with direction numbers of Joe &amp; Kuo 2008, as Apache Commons Math has them; Cranley &amp; Patterson
 * 1976 (shift); McKay, Beckman &amp; Conover 1979 (slices: Latin hypercube).
 */
public final class NormalPoints {
    /** In more dimensions a few hundred points of the sequence are no longer even two by two. */
    static final int TOGETHER = 12;

    /** A chance that a sample of ours never meets, some eight standard deviations out. */
    private static final double LEAST = 0x1p-52;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private NormalPoints() {}

    /** Chances in (0, 1), a row for each dimension and a column for each point; the same for the same seed. */
    static double[][] chances(int dimensions, int points, long seed) {
        double[][] chances = new double[dimensions][points];
        SplittableRandom random = new SplittableRandom(seed);
        int together = Math.min(dimensions, TOGETHER);
        if (together > 0) {
            double[] shift = random.doubles(together).toArray();
            SobolSequenceGenerator sobol = new SobolSequenceGenerator(together);
            for (int i = 0; i < points; i++) {
                double[] point = sobol.nextVector();
                for (int k = 0; k < together; k++) {
                    chances[k][i] = inside((point[k] + shift[k]) % 1);
                }
            }
        }
        for (int k = together; k < dimensions; k++) {
            int[] slices = IntStream.range(0, points).toArray();
            for (int i = points - 1; i >= 0; i--) {
                int other = random.nextInt(i + 1);
                int slice = slices[other];
                slices[other] = slices[i];
                chances[k][i] = inside((slice + random.nextDouble()) / points);
            }
        }
        return chances;
    }

    /** Standard normal deviates, evenly spread, a row for each dimension and a column for each point; the same for the same seed. */
    public static double[][] deviates(int dimensions, int points, long seed) {
        double[][] rows = chances(dimensions, points, seed);
        for (double[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                row[i] = deviate(row[i]);
            }
        }
        return rows;
    }

    /** No chance is 0 or 1, or too near to tell from them, whose deviates are infinite. */
    static double inside(double chance) {
        return Math.max(LEAST, Math.min(1 - LEAST, chance));
    }

    /** The standard normal deviate below which another stays with this chance. */
    static double deviate(double chance) {
        return NORMAL.inverseCumulativeProbability(chance);
    }

    /** The chance that a standard normal deviate stays below. */
    static double chance(double deviate) {
        return NORMAL.cumulativeProbability(deviate);
    }

    /** How densely standard normal deviates lie here. */
    static double density(double deviate) {
        return NORMAL.density(deviate);
    }
}
