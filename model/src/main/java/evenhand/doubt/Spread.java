package evenhand.doubt;

import evenhand.answers.Judged;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What doubt leaves of one figure, SI.
 *
 * @param nominal of the car as given; none where it has no value
 * @param low below it lie 2.5 % of the samples
 * @param high above it lie 2.5 % of the samples
 * @param median half of the samples lie on either side
 * @param standardDeviation of the samples
 * @param noAnswerShare part of the samples that have no value
 * @param causes whose fault it is, largest first; those that cannot be told from chance are left out
 */
public record Spread(
        Judged judged,
        OptionalDouble nominal,
        double low,
        double high,
        double median,
        double standardDeviation,
        double noAnswerShare,
        List<Cause> causes) {
    /** The part of the variance that goes with one input alone, and the standard error of that part. */
    public record Cause(Tolerance tolerance, double share, double standardError) {
        public String path() {
            return tolerance.path();
        }
    }

    public Spread {
        causes = List.copyOf(causes);
    }

    /** Width of the interval. */
    public double width() {
        return high - low;
    }
}
