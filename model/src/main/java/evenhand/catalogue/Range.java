package evenhand.catalogue;

/** From low to high, both included, SI. */
public record Range(double low, double high) {
    private static final double ROUNDING = 1e-9;

    public boolean holds(double value) {
        return value >= low && value <= high;
    }

    /** The same; a bound written in another unit may differ in its last digits. */
    public boolean nearlyHolds(double value) {
        double slack = ROUNDING * Math.max(Math.abs(low), Math.abs(high));
        return value >= low - slack && value <= high + slack;
    }

    /** The nearest value within. */
    public double cut(double value) {
        return Math.max(low, Math.min(high, value));
    }
}
