package evenhand.doubt;

import evenhand.answers.Judged;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What doubt leaves of one figure to first order, SI.
 *
 * @param nominal of the car as given, or the difference of two
 * @param halfWidth that holds nineteen times in twenty: twice the root of the sum of squares of all moves
 * @param rest what straight lines miss, as a half-width too: twice the root mean square of what cars with all numbers off at once
 *     have more or less than the sum of the moves; none where one of those cars has no such figure
 * @param causes whose fault it is, largest first; those with less than {@link #LEAST_SHARE} of the variance are left out
 * @param untold paths of the numbers whose errors leave no such figure either way: of them nothing is known
 */
public record SlopeSpread(
        Judged judged, double nominal, double halfWidth, OptionalDouble rest, List<Cause> causes, List<String> untold) {
    /** A rest of more than this part of the half-width, and the sum of the moves is no fair picture of the spread. */
    private static final double FAIR = 0.5;

    /** Smaller shares are not told. */
    static final double LEAST_SHARE = 0.005;

    /**
     * One number's part.
     *
     * @param move of the figure where the number is off by one standard deviation upwards, SI
     * @param share of the variance
     */
    public record Cause(Tolerance tolerance, double move, double share) {
        public String path() {
            return tolerance.path();
        }
    }

    public SlopeSpread {
        causes = List.copyOf(causes);
        untold = List.copyOf(untold);
    }

    /** Whether first order is a fair picture; where it is not, at a stop or near the limit, samples alone tell the spread. */
    public boolean isFair() {
        return untold.isEmpty() && rest.isPresent() && rest.getAsDouble() <= FAIR * halfWidth;
    }
}
