package evenhand.catalogue;

/**
 * A size that is either fixed or a part of the value it belongs to: a usual step, a tolerance.
 *
 * @param fixed in SI
 * @param part of the value's magnitude
 */
public record Amount(double fixed, double part) {
    public static final Amount NONE = new Amount(0, 0);

    public static Amount of(double si) {
        return new Amount(si, 0);
    }

    public static Amount percent(double percent) {
        return new Amount(0, percent / 100);
    }

    /** The size beside this value, SI. */
    public double at(double value) {
        return fixed + part * Math.abs(value);
    }
}
