package evenhand.road;

import static evenhand.quantity.InvalidValue.require;

import java.util.ArrayList;
import java.util.List;

/**
 * International Roughness Index of a measured profile: how far the suspension of the {@link ReferenceCar} moves per
 * length of road, as a ratio (1e-3 = 1 m/km).
 *
 * <p>The profile is smoothed over 250 mm, as a tyre does, by its slope between points that far apart; points 250 mm
 * apart or farther are taken as they are. The car begins with the mean slope of the first 11 m. Between points the slope
 * is even, and the step from one to the next is exact.
 *
 * <p>Source: Sayers, On the Calculation of International Roughness Index from Longitudinal Road Profile, TRR 1501,
 * 1995; ASTM E1926.
 *
 * @param whole over all of the profile
 * @param segments full segments, in order; what is left behind the last counts in the whole only
 */
public record RoughnessIndex(double whole, List<Segment> segments) {
    /** Length of a segment, m. */
    public static final double SEGMENT = 100;

    /** A shorter profile says nothing: the car takes its start from so much of it, m. */
    public static final double LEAST_LENGTH = 11;

    /** Points farther apart than this miss waves that the index feels, m. Source: ASTM E1926 (from memory). */
    public static final double WIDEST_SPACING = 0.3;

    /** With points farther apart hardly anything is left of what the index feels, m. */
    private static final double GREATEST_SPACING = 1;

    private static final double SMOOTHING = 0.25;

    /** A stretch of road, by the distances of the file, m, and its index. */
    public record Segment(double from, double to, double index) {}

    public RoughnessIndex {
        segments = List.copyOf(segments);
    }

    /** The index of a profile. */
    public static RoughnessIndex of(MeasuredProfile profile) {
        require(profile.length() >= LEAST_LENGTH, "length", "must be 11 m or more for an index");
        require(profile.spacing() <= GREATEST_SPACING, "spacing", "must be 1 m or less for an index");
        double spacing = profile.spacing();
        List<Double> heights = profile.heights();
        int span = Math.max(1, (int) Math.round(SMOOTHING / spacing));
        int run = Math.min(heights.size() - 1, (int) Math.round(LEAST_LENGTH / spacing));
        double start = (heights.get(run) - heights.get(0)) / (run * spacing);
        double[][] transition = ReferenceCar.transition(spacing);
        double[] state = {start, 0, start, 0};
        double[] next = new double[ReferenceCar.STATES];
        int steps = heights.size() - span;
        List<Segment> segments = new ArrayList<>();
        double sum = 0;
        double sumBefore = 0;
        int stepsBefore = 0;
        for (int i = 0; i < steps; i++) {
            double slope = (heights.get(i + span) - heights.get(i)) / (span * spacing);
            advance(transition, state, slope, next);
            double[] kept = state;
            state = next;
            next = kept;
            sum += Math.abs(state[0] - state[2]);
            double edge = (segments.size() + 1) * SEGMENT;
            boolean lastOfSegment = (i + 1.5) * spacing > edge || i == steps - 1;
            if (lastOfSegment && edge <= profile.length() * (1 + 1e-12)) {
                segments.add(new Segment(
                        profile.start() + edge - SEGMENT,
                        profile.start() + edge,
                        (sum - sumBefore) / (i + 1 - stepsBefore)));
                sumBefore = sum;
                stepsBefore = i + 1;
            }
        }
        return new RoughnessIndex(sum / steps, segments);
    }

    private static void advance(double[][] transition, double[] state, double slope, double[] next) {
        for (int i = 0; i < next.length; i++) {
            double[] row = transition[i];
            next[i] = row[0] * state[0] + row[1] * state[1] + row[2] * state[2] + row[3] * state[3] + row[4] * slope;
        }
    }

    /**
     * The index to be expected of a road whose height has the density Gd(n0)·(n/n0)^−2, n0 = 0.1 cycle/m, without end
     * in wave number.
     *
     * <pre>  √(2/π)·σ,  σ² = k1·S/(4·c·V),  S = (2π·n0)²·Gd(n0) </pre>
     * σ standard deviation of the slope difference, √(2/π)·σ the mean size of a normal one; S density of the road's
     * slope. White slope drives the tyre with the power k1·S/(4·V), all of which the damper takes: c·σ². Meets the
     * 2.21·√C of Kropáč &amp; Múčka (from memory) to 0.4 %.
     *
     * @param roughness Gd(n0), m³
     */
    public static double expected(double roughness) {
        double number = 2 * Math.PI * RandomRoad.REFERENCE;
        double slopes = number * number * roughness;
        double variance = ReferenceCar.TYRE * slopes / (4 * ReferenceCar.DAMPER * ReferenceCar.SPEED);
        return Math.sqrt(2 / Math.PI * variance);
    }
}
