package evenhand.road;

import static evenhand.quantity.InvalidValue.require;

import java.util.ArrayList;
import java.util.List;

/**
 * Heights measured along a road at even steps, straight lines between them. SI.
 *
 * @param start place of the first point as its maker counts it, m
 * @param spacing between points, m
 * @param heights m
 */
public record MeasuredProfile(double start, double spacing, List<Double> heights) {
    public MeasuredProfile {
        heights = List.copyOf(heights);
        require(Double.isFinite(start), "start", "must be a finite length");
        require(spacing > 0, "spacing", "must be above zero");
        require(heights.size() >= 2, "heights", "must be two or more: one point is no road");
        require(heights.stream().allMatch(Double::isFinite), "heights", "must be finite lengths");
    }

    /** Distance from the first to the last point, m. */
    public double length() {
        return (heights.size() - 1) * spacing;
    }

    /** As a road to drive over: the level road before it has the height of its first point. */
    public Profile profile() {
        List<Piece> pieces = new ArrayList<>(heights.size() - 1);
        double first = heights.get(0);
        double from = 0;
        for (int i = 1; i < heights.size(); i++) {
            double to = i * spacing;
            double height = heights.get(i - 1) - first;
            pieces.add(new Piece.Line(from, to, height, (heights.get(i) - first - height) / (to - from)));
            from = to;
        }
        return new Profile(pieces, heights.get(heights.size() - 1) - first);
    }
}
