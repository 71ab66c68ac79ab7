package evenhand.doubt;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Deviation;
import evenhand.catalogue.Range;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The errors of every number that may be off, drawn all at once for each of many samples, evenly spread. */
final class Draw {
    private final Tolerance.Unsaid unsaid;
    private final Map<String, Integer> places = new HashMap<>();
    private final double[][] deviates; // by tolerance, then sample
    private final double[][] chances; // the same as chances
    private final Optional<Learnt> learnt;

    /** @param tolerances those first that move the figures most */
    Draw(List<Tolerance> tolerances, int samples, long seed, Tolerance.Unsaid unsaid) {
        this(tolerances, samples, seed, unsaid, Optional.empty());
    }

    /** @param learnt what is known of the numbers besides */
    Draw(List<Tolerance> tolerances, int samples, long seed, Tolerance.Unsaid unsaid, Optional<Learnt> learnt) {
        this.learnt = learnt;
        this.unsaid = unsaid;
        for (int k = 0; k < tolerances.size(); k++) {
            places.put(tolerances.get(k).path(), k);
        }
        chances = NormalPoints.chances(tolerances.size(), samples, seed);
        double[][] apart = Arrays.stream(chances)
                .parallel()
                .map(row -> Arrays.stream(row).map(NormalPoints::deviate).toArray())
                .toArray(double[][]::new);
        deviates = learnt.map(known -> together(apart, known.factor(paths(tolerances))))
                .orElse(apart);
    }

    private static List<String> paths(List<Tolerance> tolerances) {
        return tolerances.stream().map(Tolerance::path).toList();
    }

    /** Deviates that go together, of those that do not. */
    private static double[][] together(double[][] apart, double[][] factor) {
        return Arrays.stream(factor)
                .parallel()
                .map(row -> {
                    double[] sum = new double[apart.length == 0 ? 0 : apart[0].length];
                    for (int j = 0; j < row.length; j++) {
                        if (row[j] != 0) {
                            for (int i = 0; i < sum.length; i++) {
                                sum[i] += row[j] * apart[j][i];
                            }
                        }
                    }
                    return sum;
                })
                .toArray(double[][]::new);
    }

    /** The errors of one number, in its standard deviations, a sample each. */
    double[] errors(int tolerance) {
        return deviates[tolerance];
    }

    /**
     * The car of a sample, as far as it is off.
     *
     * @param car what its numbers are where nobody errs
     */
    Deviation deviation(int sample, Deviation car) {
        return learnt.<Deviation>map(known -> number -> known.off(number, error(number, sample)))
                .orElse(number -> deviated(number, car.of(number), sample));
    }

    private double error(Adjustable number, int sample) {
        Integer k = places.get(number.path());
        return k == null ? 0 : deviates[k][sample];
    }

    /** A number as it is in a sample: normal about what it is in the car, within its bounds. */
    private double deviated(Adjustable number, double si, int sample) {
        Integer k = places.get(number.path());
        double halfWidth = k == null ? 0 : Tolerance.of(number, unsaid);
        if (k == null || halfWidth == 0) {
            return si;
        }
        double sigma = halfWidth / 2;
        double value = si + sigma * deviates[k][sample];
        Range bounds = number.slot().bounds();
        if (bounds.holds(si) && !far(bounds, si, sigma)) {
            double below = NormalPoints.chance((bounds.low() - si) / sigma);
            double above = NormalPoints.chance((bounds.high() - si) / sigma);
            double chance = below + chances[k][sample] * (above - below);
            value = si + sigma * NormalPoints.deviate(NormalPoints.inside(chance));
        }
        return bounds.cut(value);
    }

    /**
     * Standard deviation of what is drawn about a number, SI: that of the normal law, or less where bounds cut it.
     * <pre>  s² = σ²·(1 + (a·φ(a) − b·φ(b))/Z − ((φ(a) − φ(b))/Z)²),  Z = Φ(b) − Φ(a)  </pre>
     * a, b bounds in standard deviations from the number; φ, Φ density and chance of the standard normal law.
     *
     * <p>Source: Johnson, Kotz &amp; Balakrishnan, Continuous Univariate Distributions 1, 1994, ch. 13, from memory.
     */
    static double standardDeviation(Adjustable number, double halfWidth) {
        double sigma = halfWidth / 2;
        Range bounds = number.slot().bounds();
        if (!bounds.holds(number.si()) || far(bounds, number.si(), sigma)) {
            return sigma;
        }
        double a = (bounds.low() - number.si()) / sigma;
        double b = (bounds.high() - number.si()) / sigma;
        double inside = NormalPoints.chance(b) - NormalPoints.chance(a);
        double mean = (NormalPoints.density(a) - NormalPoints.density(b)) / inside;
        double square = 1 + (times(a) - times(b)) / inside - mean * mean;
        return sigma * Math.sqrt(square);
    }

    /** A deviate times its density; nothing at infinity. */
    private static double times(double deviate) {
        return Double.isInfinite(deviate) ? 0 : deviate * NormalPoints.density(deviate);
    }

    /** Whether the bounds are so far off that cutting there changes nothing. */
    private static boolean far(Range bounds, double si, double sigma) {
        double nearest = Math.min(si - bounds.low(), bounds.high() - si);
        return nearest > 9 * sigma;
    }
}
