package evenhand.roadtest;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.apache.commons.math3.util.Pair;

/**
 * How a pressed corner swings out after it was let go, from its height or its acceleration over time:
 * <pre>  y = c + e^(−λ·t)·(a·cos ω·t + b·sin ω·t)   frequency ω/2π; next swing e^(−2π·λ/ω)  </pre>
 * by least squares from its first way back to rest, begun at the highest peak of the spectrum. Height and acceleration of a
 * damped sine swing and die out alike, so either tells the same.
 *
 * <p>Source: logarithmic decrement and damped sine, Thomson, Theory of Vibration with Applications, ch. 2; Levenberg-Marquardt and fast
 * Fourier transform of Commons Math.
 *
 * @param frequency with its half-width, Hz
 * @param nextSwing with its half-width
 */
public record Decay(Measured frequency, Measured nextSwing) {
    /** Fewer moments tell no swing. */
    private static final int FEWEST = 20;

    /** Rest is what the last part of the record shows, as a share of it. */
    private static final double REST = 0.25;

    /** What is left of the farthest place when it is surely on its way. */
    private static final double ON_ITS_WAY = 0.7;

    /** Places of the spectrum, many more than the record has swings, so that its peak is found closely. */
    private static final int SPECTRUM = 4096;

    /** A body on its springs swings between these, Hz. */
    private static final double SLOWEST = 0.4;

    private static final double FASTEST = 6;

    /** Where the fit begins over the peak of the spectrum: of a swing that dies out at once the peak stands too low. */
    private static final double[] STARTS = {1, 2, 3};

    private static final int MOST_STEPS = 500;

    private static final double PRECISION = 1e-8;

    /** Part of the scatter that the sine may leave unexplained. */
    private static final double UNEXPLAINED = 0.5;

    /** What a sine leaves out, dampers that are not linear above all; joined to the fit's own. Common practice, no source. */
    private static final double FREQUENCY_FLOOR = 0.01;

    private static final double SWING_FLOOR = 0.02;

    /** Above it nothing swings (damping above a half). */
    private static final double LEAST_SWING = 0.02;

    /**
     * Fits a record.
     *
     * @param times s, rising
     * @param values heights or accelerations, any unit
     * @return none where it does not swing, or swings so little that a damped sine does not tell it
     */
    public static Optional<Decay> of(List<Double> times, List<Double> values) {
        double[] t = times.stream().mapToDouble(Double::doubleValue).toArray();
        double[] y = values.stream().mapToDouble(Double::doubleValue).toArray();
        if (t.length < FEWEST) {
            return Optional.empty();
        }
        double rest = StatUtils.mean(Arrays.copyOfRange(y, (int) ((1 - REST) * y.length), y.length));
        int start = letGo(y, rest);
        double[] from =
                Arrays.stream(t, start, t.length).map(time -> time - t[start]).toArray();
        double[] swung = Arrays.copyOfRange(y, start, y.length);
        if (from.length < FEWEST) {
            return Optional.empty();
        }
        double peak = 2 * Math.PI * peak(from, swung, rest);
        return Arrays.stream(STARTS)
                .mapToObj(factor -> factor * peak)
                .flatMap(omega ->
                        fitted(from, swung, new double[] {rest, swung[0] - rest, 0, omega / 4, omega}).stream())
                .min(Comparator.comparingDouble(LeastSquaresOptimizer.Optimum::getCost))
                .flatMap(best -> told(best, swung));
    }

    /** Where it surely swings by itself: on its first way to rest, past what noise does to a corner that is still held down. */
    private static int letGo(double[] y, double rest) {
        double[] out = Arrays.stream(y).map(one -> Math.abs(one - rest)).toArray();
        int farthest = IntStream.range(0, out.length)
                .reduce((one, other) -> out[other] > out[one] ? other : one)
                .orElse(0);
        int passes = IntStream.range(farthest, y.length)
                .filter(i -> (y[i] - rest) * (y[farthest] - rest) <= 0)
                .findFirst()
                .orElse(y.length - 1);
        return IntStream.rangeClosed(farthest, passes)
                .filter(i -> out[i] >= ON_ITS_WAY * out[farthest])
                .reduce(farthest, (one, other) -> other);
    }

    /** Hz. The spectrum of evenly spaced moments, filled up with rest. */
    private static double peak(double[] t, double[] y, double rest) {
        double step = t[t.length - 1] / Math.max(1, Math.min(SPECTRUM / 4, t.length) - 1);
        PolynomialSplineFunction line = new LinearInterpolator().interpolate(t, y);
        double[] even = new double[SPECTRUM];
        for (int i = 0; i * step <= t[t.length - 1]; i++) {
            even[i] = line.value(Math.min(i * step, t[t.length - 1])) - rest;
        }
        Complex[] spectrum =
                new FastFourierTransformer(DftNormalization.STANDARD).transform(even, TransformType.FORWARD);
        double each = 1 / (SPECTRUM * step);
        int first = (int) Math.ceil(SLOWEST / each);
        int last = Math.min(SPECTRUM / 2, (int) (FASTEST / each));
        return IntStream.rangeClosed(first, Math.max(first, last))
                        .boxed()
                        .max((one, other) -> Double.compare(spectrum[one].abs(), spectrum[other].abs()))
                        .orElse(first)
                * each;
    }

    private static Optional<LeastSquaresOptimizer.Optimum> fitted(double[] t, double[] y, double[] guess) {
        try {
            return Optional.of(new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(PRECISION)
                    .withParameterRelativeTolerance(PRECISION)
                    .optimize(new LeastSquaresBuilder()
                            .start(guess)
                            .target(y)
                            .model(point -> model(t, point))
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build()));
        } catch (MathIllegalStateException doesNotComeToRest) {
            return Optional.empty();
        }
    }

    private static Optional<Decay> told(LeastSquaresOptimizer.Optimum best, double[] y) {
        double[] p = best.getPoint().toArray();
        double lambda = p[3];
        double omega = Math.abs(p[4]);
        double hertz = omega / (2 * Math.PI);
        double swing = Math.exp(-2 * Math.PI * lambda / omega);
        double left = best.getCost() * best.getCost() / (y.length * StatUtils.populationVariance(y));
        if (!(lambda > 0) || !(hertz > SLOWEST) || !(hertz < FASTEST) || swing < LEAST_SWING || left > UNEXPLAINED) {
            return Optional.empty();
        }
        double scatter = best.getCost() / Math.sqrt(y.length - p.length);
        RealMatrix c;
        try {
            c = best.getCovariances(1e-12).scalarMultiply(scatter * scatter);
        } catch (SingularMatrixException tellsNothing) {
            return Optional.empty();
        }
        double ofOmega = Math.sqrt(c.getEntry(4, 4));
        // d ln(swing) = −2π/ω·dλ + 2π·λ/ω²·dω
        RealVector slope = new ArrayRealVector(
                new double[] {0, 0, 0, -2 * Math.PI / omega, 2 * Math.PI * lambda / (omega * omega)});
        double ofSwing = swing * Math.sqrt(slope.dotProduct(c.operate(slope)));
        return Optional.of(new Decay(
                new Measured(hertz, Math.hypot(2 * ofOmega / (2 * Math.PI), FREQUENCY_FLOOR * hertz)),
                new Measured(swing, Math.hypot(2 * ofSwing, SWING_FLOOR))));
    }

    /** The damped sine and its slopes over c, a, b, λ and ω. */
    private static Pair<RealVector, RealMatrix> model(double[] t, RealVector point) {
        double a = point.getEntry(1);
        double b = point.getEntry(2);
        double lambda = point.getEntry(3);
        double omega = point.getEntry(4);
        double[] values = new double[t.length];
        double[][] slopes = new double[t.length][];
        for (int i = 0; i < t.length; i++) {
            double decay = Math.exp(-lambda * t[i]);
            double cos = decay * Math.cos(omega * t[i]);
            double sin = decay * Math.sin(omega * t[i]);
            values[i] = point.getEntry(0) + a * cos + b * sin;
            slopes[i] = new double[] {1, cos, sin, -t[i] * (a * cos + b * sin), t[i] * (b * cos - a * sin)};
        }
        return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
    }
}
