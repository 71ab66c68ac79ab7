package evenhand.suspension;

/** Forces along one straight line, for tests of what has a closed form. */
public final class StraightForce {
    private StraightForce() {}

    /** {@code atZero + slope·v}. */
    public static ForceLines of(double atZero, double slope) {
        return ForceLines.of(v -> atZero + slope * v);
    }
}
