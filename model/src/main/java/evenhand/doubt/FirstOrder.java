package evenhand.doubt;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * How much of a figure's variance goes with one input alone: Var(E[Y|X]) / Var(Y), the first-order share, from samples in which
 * all inputs vary at once. The figure's mean over the input is drawn through the samples in pieces, a straight line in each,
 * and the share is what the line explains, less what it would explain by chance:
 * <pre>  S = 1 − (Σ(y − line)²/(N − p)) / (Σ(y − mean)²/(N − 1))  </pre>
 * N samples, p = 2 for each piece. Its standard error is about √(4·S·(1−S)²/N + 2·p·(1−S)²/N²) for plain random samples, and less
 * for evenly spread ones.
 *
 * <p>Sources: McKay 1995 (correlation ratio); Saltelli et al., Global Sensitivity Analysis, 2008, ch. 4; adjusted coefficient of
 * determination and its error after Cohen et al., Applied Multiple Regression, 2003, from memory.
 */
public final class FirstOrder {
    private static final int MOST_PIECES = 10;
    /** A piece holds at least so many samples. */
    private static final int SAMPLES_IN_PIECE = 50;

    private final double[] input;
    private final int[] order;
    private final int pieces;

    /** A share and its standard error. */
    public record Share(double share, double standardError) {}

    /** @param input its values, a sample each */
    public FirstOrder(double[] input) {
        this.input = input;
        order = IntStream.range(0, input.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> input[i]))
                .mapToInt(i -> i)
                .toArray();
        pieces = Math.max(1, Math.min(MOST_PIECES, input.length / SAMPLES_IN_PIECE));
    }

    /**
     * The line through a figure.
     *
     * @param figure of the same samples
     * @return for each sample the figure's mean over all else at this input, less its mean over everything
     */
    double[] line(Samples figure) {
        double[] line = new double[input.length];
        double mean = figure.mean();
        for (int piece = 0; piece < pieces; piece++) {
            int from = (int) ((long) order.length * piece / pieces);
            int to = (int) ((long) order.length * (piece + 1) / pieces);
            double n = 0;
            double sumX = 0;
            double sumY = 0;
            for (int i = from; i < to; i++) {
                if (figure.has(order[i])) {
                    n++;
                    sumX += input[order[i]];
                    sumY += figure.value(order[i]);
                }
            }
            double meanX = n > 0 ? sumX / n : 0;
            double meanY = n > 0 ? sumY / n : mean;
            double xx = 0;
            double xy = 0;
            for (int i = from; i < to; i++) {
                if (figure.has(order[i])) {
                    double x = input[order[i]] - meanX;
                    xx += x * x;
                    xy += product(x, figure.value(order[i]), meanY);
                }
            }
            double slope = xx > 0 ? xy / xx : 0;
            for (int i = from; i < to; i++) {
                line[order[i]] = meanY - mean + slope * (input[order[i]] - meanX);
            }
        }
        return line;
    }

    /** A part of Σx·(y − mean), where the x add up to nothing: the mean falls out but for rounding, which is why it is taken away. */
    private static double product(double x, double y, double mean) {
        return x * (y - mean);
    }

    /** The share of the input in a figure's variance; zero of a figure that does not vary. */
    public Share share(Samples figure) {
        double[] line = line(figure);
        double mean = figure.mean();
        double n = 0;
        double all = 0;
        double left = 0;
        for (int i = 0; i < input.length; i++) {
            if (figure.has(i)) {
                double y = figure.value(i) - mean;
                n++;
                all += y * y;
                double missed = y - line[i];
                left += missed * missed;
            }
        }
        double parameters = 2 * pieces;
        if (n <= parameters + 1 || all == 0) {
            return new Share(0, 0);
        }
        double share = Math.max(0, 1 - left / (n - parameters) / (all / (n - 1)));
        double rest = (1 - share) * (1 - share);
        double error = Math.sqrt(4 * share * rest / n + 2 * parameters * rest / (n * n));
        return new Share(share, error);
    }
}
