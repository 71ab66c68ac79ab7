package evenhand.geometry;

import java.util.OptionalDouble;

/**
 * With which leverage an axle or a wheel works a spring or a damper.
 *
 * @param ratio MR, travel along its own line over travel of the wheel, of a live axle in heave; of one that leans cos(lean)
 * @param arm how far from the middle it works in roll
 * @param lean inwards going up, rad; zero where it is worked through a ratio
 * @param length of it at rest, m, where known: a short one that leans turns much
 */
public record Lever(double ratio, RollArm arm, double lean, OptionalDouble length) {
    /** What stands upright or is worked through a motion ratio, this far from the middle, m. */
    public static Lever upright(double ratio, double halfBase) {
        return new Lever(ratio, RollArm.upright(halfBase), 0, OptionalDouble.empty());
    }

    /** What stands on a live axle and leans inwards going up. */
    public static Lever leaning(double halfBase, double lowerMountHeight, double lean, OptionalDouble length) {
        return new Lever(Math.cos(lean), RollArm.leaning(halfBase, lowerMountHeight, lean), lean, length);
    }
}
