package evenhand.geometry;

/**
 * How far from the middle of the car a spring, stop or damper works in roll. One that leans works where its line stands at
 * the height of the roll centre:
 *
 * <pre>  e(z) = base/2 − (z − lower mount)·tan(lean)  </pre>
 * z roll centre above the ground, m; lean inwards going up, rad.
 *
 * <p>Source: Milliken &amp; Milliken 1995 ch. 16 (leaning springs); Gillespie 1992 ch. 6 (spring base of a solid axle).
 *
 * @param atGround where the line meets z = 0, m
 * @param byHeight its change per height, −tan(lean)
 */
public record RollArm(double atGround, double byHeight) {
    /** The arm of what stands upright, or is worked at a wheel: the same at every height. */
    public static RollArm upright(double halfBase) {
        return new RollArm(halfBase, 0);
    }

    /**
     * The arm of what leans.
     *
     * @param halfBase of the lower mounts, m
     * @param lowerMountHeight above the ground, m
     * @param lean inwards going up, rad
     */
    public static RollArm leaning(double halfBase, double lowerMountHeight, double lean) {
        double tan = Math.tan(lean);
        return new RollArm(halfBase + lowerMountHeight * tan, -tan);
    }

    /** e, m. */
    public double at(double rollCentreHeight) {
        return atGround + byHeight * rollCentreHeight;
    }
}
