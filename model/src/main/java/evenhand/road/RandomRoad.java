package evenhand.road;

import static evenhand.quantity.InvalidValue.require;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A made-up road whose roughness follows a power law, the same for the same seed.
 *
 * <pre>  Gd(n) = Gd(n0)·(n/n0)^−2,  n0 = 0.1 cycle/m,  0.011 ≤ n ≤ 2.83 cycle/m  </pre>
 * Gd one-sided power spectral density of the height, m³; n wave number, cycle/m. The height is a sum of sines, one in
 * each of {@value #SINES} bands of equal ratio; a sine has the power of its band, a wave number drawn within it and a
 * phase drawn at random. The sum is taken at knots {@value #SPACING} m apart with its own slope there, and joined by
 * cubics, which keep the shortest wave to 0.2 %.
 *
 * <p>Source: ISO 8608 for spectrum and range; sum of sines with random phases: Shinozuka &amp; Deodatis 1991.
 */
public final class RandomRoad {
    /** Wave number at which roughness is stated, cycle/m. */
    public static final double REFERENCE = 0.1;

    /** Longest and shortest waves, cycle/m. */
    public static final double LOWEST = 0.011;

    public static final double HIGHEST = 2.83;

    static final int SINES = 240;

    /** Between knots, m. */
    static final double SPACING = 0.05;

    private static final double LONGEST = 20_000;

    /** From knot to knot a sine is turned by its step; after so many it is taken anew, before rounding adds up. */
    private static final int TURNS = 64;

    private RandomRoad() {}

    /**
     * A stretch of random road that begins at the height of the level road before it.
     *
     * @param roughness Gd(n0), m³
     * @param seed a whole number that stands for one road
     * @param length m
     */
    public static Profile of(double roughness, long seed, double length) {
        require(roughness > 0, "roughness", "must be above zero");
        require(length >= SPACING && length <= LONGEST, "length", "must lie between 0.05 m and 20 km");
        SplittableRandom random = new SplittableRandom(seed);
        int knots = (int) Math.ceil(length / SPACING) + 1;
        double spacing = length / (knots - 1);
        double[] heights = new double[knots];
        double[] slopes = new double[knots];
        double ratio = Math.pow(HIGHEST / LOWEST, 1.0 / SINES);
        for (int i = 0; i < SINES; i++) {
            double low = LOWEST * Math.pow(ratio, i);
            double power = roughness * REFERENCE * REFERENCE * (1 / low - 1 / (low * ratio));
            double number = 2 * Math.PI * low * Math.pow(ratio, random.nextDouble());
            add(heights, slopes, spacing, Math.sqrt(2 * power), number, 2 * Math.PI * random.nextDouble());
        }
        double start = heights[0];
        List<Piece> pieces = new ArrayList<>(knots - 1);
        double from = 0;
        for (int i = 1; i < knots; i++) {
            double to = i == knots - 1 ? length : i * spacing;
            pieces.add(Piece.Cubic.through(
                    from, to, heights[i - 1] - start, slopes[i - 1], heights[i] - start, slopes[i]));
            from = to;
        }
        return new Profile(pieces, heights[knots - 1] - start);
    }

    private static void add(
            double[] heights, double[] slopes, double spacing, double amplitude, double number, double phase) {
        double sinStep = Math.sin(number * spacing);
        double cosStep = Math.cos(number * spacing);
        for (int start = 0; start < heights.length; start += TURNS) {
            double angle = number * spacing * start + phase;
            double sin = Math.sin(angle);
            double cos = Math.cos(angle);
            for (int k = start; k < Math.min(start + TURNS, heights.length); k++) {
                heights[k] += amplitude * sin;
                slopes[k] += amplitude * number * cos;
                double turned = sin * cosStep + cos * sinStep;
                cos = cos * cosStep - sin * sinStep;
                sin = turned;
            }
        }
    }
}
