package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.LinkedAxle;
import java.util.List;
import java.util.OptionalDouble;

/**
 * An axle on its links, in one pose at a time. Whoever wants another moves it there from the one it has; it goes in small
 * steps, so that it never jumps. One per thread.
 */
public abstract sealed class AxleLinkage permits LiveAxleLinkage, WheelPairLinkage {
    AxleLinkage() {}

    public abstract LinkedAxle given();

    /** Back to rest, straight ahead. */
    public abstract void rest();

    /**
     * Moves the wheels to these travels from rest, m, straight ahead.
     *
     * @return false, and the pose as it was, where the links do not reach so far
     */
    public abstract boolean moveTo(double leftTravel, double rightTravel);

    /** All figures of the present pose. */
    public abstract AxleState state();

    /** The present pose as lines between points. */
    public abstract AxleLines lines();

    /** Where the joints stand in the present pose. */
    public abstract AxleJoints joints();

    /** Height of the roll centre over the line through both contact points, m; absent where force lines do not cross. */
    public abstract OptionalDouble rollCentreHeight();

    /** Springs, dampers and bar ends of a side. */
    abstract WheelMounts mounts(Side side);

    /** Whether the springs have points. */
    public final boolean hasSprings() {
        return mounts(Side.LEFT).hasSpring();
    }

    /** Length of the coil of a side, m; only where the springs have points. */
    public final double springLength(Side side) {
        return mounts(side).springLength();
    }

    /** −d(length of the coil) per own travel of a wheel, or heave of a live axle; only where the springs have points. */
    public final double springRatio(Side side) {
        return mounts(side).springRatio(0);
    }

    /** Whether the dampers have points. */
    public final boolean hasDampers() {
        return mounts(Side.LEFT).hasDamper();
    }

    /** Length of the damper of a side, m; only where the dampers have points. */
    public final double damperLength(Side side) {
        return mounts(side).damperLength();
    }

    /** −d(length of the damper) per own travel of a wheel, or heave of a live axle; only where the dampers have points. */
    public final double damperRatio(Side side) {
        return mounts(side).damperRatio(0);
    }

    /** Whether the bar has points, and its drop link follows to the present pose. */
    public final boolean hasBar() {
        return mounts(Side.LEFT).hasBar();
    }

    /** Travel of the bar's arm end along its arc per own travel of a wheel, or heave of a live axle, unsigned; only where the bar has points. */
    public final double barRatio(Side side) {
        return mounts(side).barRatio(0);
    }

    /** Turn of a Watt's crank from where it was measured, rad. */
    public abstract OptionalDouble crank();

    /** Links with joints of their own. */
    abstract List<JointedLink> links();

    /** Gaps that are watched. */
    abstract List<Gap> gaps();

    /** Largest error of a rigid constraint in the present pose, m. */
    public abstract double worstError();
}
