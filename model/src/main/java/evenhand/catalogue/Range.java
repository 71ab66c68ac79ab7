package evenhand.catalogue;

/** From low to high, both included, SI. */
public record Range(double low, double high) {
    public boolean holds(double value) {
        return value >= low && value <= high;
    }

    /** The nearest value within. */
    public double cut(double value) {
        return Math.max(low, Math.min(high, value));
    }
}
