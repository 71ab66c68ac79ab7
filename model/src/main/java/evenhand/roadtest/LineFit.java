package evenhand.roadtest;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A straight line through weighted points, or several of one slope, each through a group of its own.
 * <pre>
 *   b = Σ w·(x − x̄)·(y − ȳ) / Σ w·(x − x̄)²     w = 1/σ²; x̄, ȳ weighted means of the point's group
 *   s_b = 1/√(Σ w·(x − x̄)²) · max(1, √(χ²/ν))   ν points less groups less one
 * </pre>
 * Where points scatter by more than they are said to be off, the scatter counts.
 *
 * <p>Source: weighted linear least squares, Bevington &amp; Robinson, Data Reduction and Error Analysis, ch. 6, from memory.
 *
 * @param slope b
 * @param intercepts of the groups, in their order
 * @param standardError of the slope
 * @param chiSquare Σ w·(y − line)²
 * @param points how many there were
 */
public record LineFit(double slope, List<Double> intercepts, double standardError, double chiSquare, int points) {
    /** Too few points tell no slope. */
    private static final int FEWEST = 3;
    /** Points whose x differ by less than this part of it stand on one place. */
    private static final double SAME_PLACE = 1e-9;

    /** A point with its standard deviation. */
    public record Point(double x, double y, double sigma) {
        double weight() {
            return 1 / (sigma * sigma);
        }

        /** The same place with another y. */
        public Point at(double other) {
            return new Point(x, other, sigma);
        }
    }

    public LineFit {
        intercepts = List.copyOf(intercepts);
    }

    /** Through groups of points; none of fewer than three points, or where no group has two places. */
    public static Optional<LineFit> through(List<List<Point>> groups) {
        int count = groups.stream().mapToInt(List::size).sum();
        double xx = 0;
        double xy = 0;
        double largest = 0;
        double[][] means = new double[groups.size()][];
        for (int g = 0; g < means.length; g++) {
            if (groups.get(g).isEmpty()) {
                return Optional.empty();
            }
            means[g] = means(groups.get(g));
            for (Point point : groups.get(g)) {
                double x = point.x() - means[g][0];
                xx += point.weight() * x * x;
                xy += point.weight() * x * (point.y() - means[g][1]);
                largest = Math.max(largest, Math.abs(x) / Math.max(Math.abs(point.x()), Double.MIN_NORMAL));
            }
        }
        if (count < FEWEST || largest < SAME_PLACE) {
            return Optional.empty();
        }
        double slope = xy / xx;
        double square = 0;
        for (int g = 0; g < means.length; g++) {
            for (Point point : groups.get(g)) {
                double miss = point.y() - means[g][1] - slope * (point.x() - means[g][0]);
                square += point.weight() * miss * miss;
            }
        }
        int free = count - means.length - 1;
        double scatter = free >= 1 ? Math.max(1, Math.sqrt(square / free)) : 1;
        return Optional.of(new LineFit(
                slope,
                Arrays.stream(means).map(mean -> mean[1] - slope * mean[0]).toList(),
                scatter / Math.sqrt(xx),
                square,
                count));
    }

    private static double[] means(List<Point> points) {
        double weight = 0;
        double x = 0;
        double y = 0;
        for (Point point : points) {
            weight += point.weight();
            x += point.weight() * point.x();
            y += point.weight() * point.y();
        }
        return new double[] {x / weight, y / weight};
    }
}
