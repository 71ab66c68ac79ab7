package evenhand.ride;

import java.util.List;

/**
 * A road by the spectrum of a measured profile. Slopes between neighbouring points are taken, whose spectrum is nearly flat,
 * so that little leaks from the long waves into the short ones; half-overlapping stretches under a Hann window are
 * transformed and their powers averaged (Welch's method); dividing by the square of what a difference does to a wave,
 * (2·sin(π·n·Δ)/Δ)², gives heights. Between its lines the slope's density is drawn straight.
 *
 * <p>Waves longer than a stretch and shorter than two steps are left out: stretches are the longest power of two that leaves
 * about seven of them.
 *
 * <p>Source: Welch 1967, IEEE Transactions on Audio and Electroacoustics 15.
 */
public final class MeasuredRoad implements Road {
    /** Fewer points are too few for a spectrum. */
    public static final int LEAST_POINTS = 129;

    private final double spacing;
    private final double step; // between lines, cycle/m
    private final double[] slopes; // one-sided density of the slope, m, by line
    private final double[] corners;

    private MeasuredRoad(double spacing, double step, double[] slopes) {
        this.spacing = spacing;
        this.step = step;
        this.slopes = slopes;
        corners = new double[slopes.length - 3];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = (i + 2) * step;
        }
    }

    /**
     * The road of a profile.
     *
     * @param spacing between points, m
     * @param heights m, {@link #LEAST_POINTS} of them or more
     */
    public static MeasuredRoad of(double spacing, List<Double> heights) {
        if (heights.size() < LEAST_POINTS) {
            throw new IllegalArgumentException("needs at least " + LEAST_POINTS + " points");
        }
        int count = heights.size() - 1;
        int length = Integer.highestOneBit(count / 4);
        int half = length / 2;
        double[] power = new double[half + 1];
        double[] real = new double[length];
        double[] imaginary = new double[length];
        double windowPower = 0;
        int stretches = 0;
        for (int from = 0; from + length <= count; from += half) {
            double mean = (heights.get(from + length) - heights.get(from)) / (length * spacing);
            windowPower = 0;
            for (int i = 0; i < length; i++) {
                double slope = (heights.get(from + i + 1) - heights.get(from + i)) / spacing - mean;
                double window = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / length);
                windowPower += window * window;
                real[i] = window * slope;
                imaginary[i] = 0;
            }
            transform(real, imaginary);
            for (int k = 0; k <= half; k++) {
                power[k] += real[k] * real[k] + imaginary[k] * imaginary[k];
            }
            stretches++;
        }
        for (int k = 0; k <= half; k++) {
            power[k] *= (k == half ? 1 : 2) * spacing / (windowPower * stretches);
        }
        return new MeasuredRoad(spacing, 1 / (length * spacing), power);
    }

    /** Fast Fourier transform in place, radix two (Cooley and Tukey 1965); powers are the same whichever way it turns. */
    private static void transform(double[] real, double[] imaginary) {
        int length = real.length;
        for (int i = 1, j = 0; i < length; i++) {
            int bit = length >> 1;
            for (; (j & bit) != 0; bit >>= 1) {
                j ^= bit;
            }
            j ^= bit;
            if (i < j) {
                swap(real, i, j);
                swap(imaginary, i, j);
            }
        }
        for (int span = 2; span <= length; span <<= 1) {
            int half = span / 2;
            for (int k = 0; k < half; k++) {
                double cos = Math.cos(2 * Math.PI * k / span);
                double sin = Math.sin(2 * Math.PI * k / span);
                for (int i = k; i < length; i += span) {
                    int other = i + half;
                    double turnedReal = real[other] * cos - imaginary[other] * sin;
                    double turnedImaginary = real[other] * sin + imaginary[other] * cos;
                    real[other] = real[i] - turnedReal;
                    imaginary[other] = imaginary[i] - turnedImaginary;
                    real[i] += turnedReal;
                    imaginary[i] += turnedImaginary;
                }
            }
        }
    }

    private static void swap(double[] values, int i, int j) {
        double value = values[i];
        values[i] = values[j];
        values[j] = value;
    }

    @Override
    public double lowest() {
        return step;
    }

    @Override
    public double highest() {
        return (slopes.length - 1) * step;
    }

    @Override
    public double density(double spatialFrequency) {
        double at = spatialFrequency / step;
        int line = Math.max(0, Math.min(slopes.length - 2, (int) at));
        double slope = slopes[line] + (at - line) * (slopes[line + 1] - slopes[line]);
        double difference = 2 * Math.sin(Math.PI * spatialFrequency * spacing) / spacing;
        return slope / (difference * difference);
    }

    @Override
    public double[] corners() {
        return corners.clone();
    }

    /**
     * The class of roads that this one is most like: whose slopes between 0.05 and 0.5 cycle/m have the nearest mean density, as a ratio;
     * the waves that move a body at speed.
     */
    public RoadClass nearestClass() {
        double sum = 0;
        int lines = 0;
        for (int k = 1; k < slopes.length - 1; k++) {
            double n = k * step;
            if (n >= 0.05 && n <= 0.5) {
                double wave = 2 * Math.PI * n;
                sum += density(n) * wave * wave;
                lines++;
            }
        }
        double ofClass = 2 * Math.PI * RoadClass.REFERENCE;
        double roughness = lines == 0 ? 0 : sum / lines / (ofClass * ofClass);
        RoadClass nearest = RoadClass.A;
        for (RoadClass road : RoadClass.values()) {
            if (roughness > road.roughness() / 2) {
                nearest = road;
            }
        }
        return nearest;
    }
}
