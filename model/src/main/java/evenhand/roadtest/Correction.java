package evenhand.roadtest;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The unknowns as readings correct them: the z with
 * <pre>  z = Σ ∂hᵢ/∂z·(yᵢ − hᵢ)/σᵢ²  </pre>
 * that is the most likely one where z was standard normal before and each reading is normal about its prediction. Gauss-Newton steps
 * on
 * <pre>  Σ z² + Σ ((yᵢ − hᵢ(z))/σᵢ)²  </pre>
 * each the least squares of the straight problem, halved while it would make the sum greater, and σᵢ renewed after each. Around it z is
 * normal with
 * <pre>  C = (I + JᵀJ)⁻¹  </pre>
 * J the slopes of the weighted predictions.
 *
 * <p>Source: nonlinear least squares with a prior, Tarantola, Inverse Problem Theory (2005), ch. 3, from memory.
 *
 * @param moved z
 * @param slopesBefore J where nothing is off, by the standard deviations there
 * @param slopes J, a row for each reading
 * @param covariance C
 * @param chiSquare the sum at z
 * @param converged whether the steps came to rest
 */
record Correction(
        double[] moved,
        double[][] slopesBefore,
        double[][] slopes,
        double[][] covariance,
        double chiSquare,
        boolean converged) {
    /** A step of less than this in every unknown is the last. */
    private static final double SMALLEST_STEP = 1e-7;

    /** So is one that would make the sum less by no more than what the limit's rounding leaves of it. */
    private static final double SMALLEST_GAIN = 1e-11;

    private static final int MOST_STEPS = 60;
    private static final int MOST_HALVINGS = 12;

    /** After so many steps that had to be halved the sum goes back and forth over a corner and will not come to rest. */
    private static final int MOST_HALVED_STEPS = 12;

    /** Corrects from where nothing is off; none where that car neither stands nor turns. */
    static Optional<Correction> of(Misses misses) {
        int n = misses.unknowns();
        double[] z = new double[n];
        Optional<Misses.At> start = misses.at(z);
        if (start.isEmpty()) {
            return Optional.empty();
        }
        Misses.At here = start.get();
        double[][] slopes = weighted(misses.slopes(z, here), here);
        double[][] slopesBefore = slopes;
        boolean ended = false;
        int halvedSteps = 0;
        for (int step = 0; step < MOST_STEPS && halvedSteps < MOST_HALVED_STEPS && !ended; step++) {
            double[] way = straight(slopes, residuals(here), z);
            double length = 1;
            double[] sigmas = here.sigmas();
            double before = sum(z, here, sigmas);
            double[][] straight = slopes;
            Optional<Misses.At> next = Optional.empty();
            double[] there = z;
            for (int halving = 0; halving < MOST_HALVINGS && next.isEmpty(); halving++) {
                there = along(z, way, length);
                double[] tried = there;
                next = misses.at(tried)
                        .filter(at -> sum(tried, at, sigmas) <= before * (1 + 1e-9) + 1e-12
                                || gain(straight, way) < SMALLEST_GAIN);
                length /= 2;
            }
            if (next.isEmpty()) {
                ended = true; // a corner of a stop, to both sides of which it is worse
                break;
            }
            halvedSteps += length < 0.5 ? 1 : 0; // halved once more after the step that was taken
            double moved = 0;
            for (int k = 0; k < n; k++) {
                moved = Math.max(moved, Math.abs(there[k] - z[k]));
            }
            z = there;
            here = next.get();
            ended = moved < SMALLEST_STEP || gain(slopes, way) < SMALLEST_GAIN;
            if (!ended) {
                slopes = weighted(misses.slopes(z, here), here);
            }
        }
        return Optional.of(
                new Correction(z, slopesBefore, slopes, covariance(slopes, n), sum(z, here, here.sigmas()), ended));
    }

    /** The step that a straight problem would need: least squares of the slopes with the prior below. */
    private static double[] straight(double[][] slopes, double[] residuals, double[] z) {
        int m = slopes.length;
        int n = z.length;
        double[][] rows = Arrays.copyOf(slopes, m + n);
        double[] wanted = Arrays.copyOf(residuals, m + n);
        for (int k = 0; k < n; k++) {
            rows[m + k] = new double[n];
            rows[m + k][k] = 1;
            wanted[m + k] = -z[k];
        }
        return new QRDecomposition(new Array2DRowRealMatrix(rows, false))
                .getSolver()
                .solve(new ArrayRealVector(wanted, false))
                .toArray();
    }

    /** C, by what the readings tell together: C = I − Jᵀ(I + JJᵀ)⁻¹J, of fewer readings than unknowns the smaller system. */
    static double[][] covariance(double[][] slopes, int n) {
        RealMatrix identity = MatrixUtils.createRealIdentityMatrix(n);
        if (slopes.length == 0) {
            return identity.getData();
        }
        RealMatrix j = new Array2DRowRealMatrix(slopes, false);
        RealMatrix told = j.multiply(j.transpose()).add(MatrixUtils.createRealIdentityMatrix(slopes.length));
        RealMatrix less = j.transpose()
                .multiply(new CholeskyDecomposition(told, 1e-9, 0).getSolver().solve(j));
        RealMatrix left = identity.subtract(less);
        return left.add(left.transpose()).scalarMultiply(0.5).getData();
    }

    private static double[] along(double[] z, double[] way, double length) {
        return IntStream.range(0, z.length)
                .mapToDouble(k -> z[k] + length * way[k])
                .toArray();
    }

    /** By how much less the sum would be after a whole step, were the problem straight: its length by I + JᵀJ. */
    private static double gain(double[][] slopes, double[] way) {
        double gain = Arrays.stream(way).map(one -> one * one).sum();
        for (double[] row : slopes) {
            double along = 0;
            for (int k = 0; k < way.length; k++) {
                along += row[k] * way[k];
            }
            gain += along * along;
        }
        return gain;
    }

    private static double[] residuals(Misses.At here) {
        return IntStream.range(0, here.misses().length)
                .mapToDouble(i -> here.misses()[i] / here.sigmas()[i])
                .toArray();
    }

    private static double[][] weighted(double[][] slopes, Misses.At here) {
        return IntStream.range(0, slopes.length)
                .mapToObj(i -> Arrays.stream(slopes[i])
                        .map(slope -> slope / here.sigmas()[i])
                        .toArray())
                .toArray(double[][]::new);
    }

    static double sum(double[] z, Misses.At here, double[] sigmas) {
        double sum = 0;
        for (double one : z) {
            sum += one * one;
        }
        for (int i = 0; i < sigmas.length; i++) {
            double one = here.misses()[i] / sigmas[i];
            sum += one * one;
        }
        return sum;
    }

    /** Of a row over the unknowns, how far what it tells is known: j·C·jᵀ. */
    double spread(double[] row) {
        return spread(row, covariance);
    }

    static double spread(double[] row, double[][] covariance) {
        double sum = 0;
        for (int k = 0; k < row.length; k++) {
            if (row[k] != 0) {
                for (int j = 0; j < row.length; j++) {
                    sum += row[k] * covariance[k][j] * row[j];
                }
            }
        }
        return Math.max(0, sum);
    }
}
