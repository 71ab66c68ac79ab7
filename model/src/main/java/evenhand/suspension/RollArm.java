package evenhand.suspension;

import evenhand.car.Axle;
import evenhand.car.Spring;
import java.util.OptionalDouble;

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
record RollArm(double atGround, double byHeight) {
    static RollArm upright(double halfBase) {
        return new RollArm(halfBase, 0);
    }

    static RollArm leaning(double halfBase, double lowerMountHeight, double lean) {
        double tan = Math.tan(lean);
        return new RollArm(halfBase + lowerMountHeight * tan, -tan);
    }

    /** The arm of an axle's springs. */
    static RollArm ofSprings(Axle axle) {
        return axle.spring() instanceof Spring.Leaning leaning
                ? leaning(halfSpringBase(axle), leaning.lowerMountHeight(), leaning.lean())
                : upright(halfSpringBase(axle));
    }

    /** e, m. */
    double at(double rollCentreHeight) {
        return atGround + byHeight * rollCentreHeight;
    }

    /** Half the distance between an axle's springs at their lower mounts, m: half the track of an independent axle. */
    static double halfSpringBase(Axle axle) {
        if (axle.spring() instanceof Spring.Upright upright) {
            return upright.base() / 2;
        }
        if (axle.spring() instanceof Spring.Leaning leaning) {
            return leaning.base() / 2;
        }
        return axle.track() / 2;
    }

    /** Half the base of a live axle's stops or dampers, m: that of the springs where they have none of their own. */
    static double halfBase(Axle axle, OptionalDouble ofTheirOwn) {
        boolean live = axle instanceof Axle.Live;
        return live && ofTheirOwn.isPresent() ? ofTheirOwn.getAsDouble() / 2 : halfSpringBase(axle);
    }
}
