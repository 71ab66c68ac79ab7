package evenhand.roadtest;

/**
 * What was read, SI.
 *
 * @param tolerance half-width that holds nineteen times in twenty: two standard deviations
 */
public record Measured(double value, double tolerance) {
    public double standardDeviation() {
        return tolerance / 2;
    }

    /** The same value, its error joined in quadrature with another, a half-width too. */
    public Measured joined(double other) {
        return new Measured(value, Math.hypot(tolerance, other));
    }
}
