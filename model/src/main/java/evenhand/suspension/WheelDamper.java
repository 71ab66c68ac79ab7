package evenhand.suspension;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.Spring;
import java.util.Optional;

/**
 * The damper of one side of an axle as the wheel feels it: of an independent wheel, or of half a live axle in heave.
 *
 * <pre>  F(u') = MR·D(MR·u')  </pre>
 * u' bump speed of the wheel against the body, m/s, wheel towards body positive; D the bump curve for u' &gt; 0 and,
 * taken negative, the rebound curve for u' &lt; 0, straight lines through their points, the last slope going on; MR
 * damper travel over wheel travel. The force counts as that of a spring does, upwards on the body.
 *
 * <p>MR of an independent wheel and of a live axle is the file's {@code motionRatio}; of a live axle's damper that leans
 * it is cos(lean); 1 where neither is given. In roll a live axle's dampers work with the same ratio at their own arm,
 * see {@link #rollArm}. {@link #at} sets the fields and allocates nothing. One per thread.
 *
 * <p>Source: Dixon, The Shock Absorber Handbook, 2007, ch. 3 (motion ratio squared).
 */
public final class WheelDamper {
    /** Force upwards on the body, N. */
    public double force;

    /** Its slope over the wheel's speed, N·s/m. */
    public double rate;

    /** Which straight piece it works on: 1, 2 ... outwards from rest in bump, −1, −2 ... in rebound. */
    public int piece;

    private final double motionRatio;
    private final double armAtGround; // half the base where the dampers' line meets z = 0, m
    private final double armByHeight; // its change per height, −tan(lean)
    private final double[] bumpSpeeds;
    private final double[] bumpForces;
    private final double[] reboundSpeeds;
    private final double[] reboundForces;

    private WheelDamper(Axle axle, Damper damper, Damper.Forces forces) {
        bumpSpeeds = speeds(forces.bump());
        bumpForces = forces(forces.bump());
        reboundSpeeds = speeds(forces.rebound());
        reboundForces = forces(forces.rebound());
        double lean = damper.lean().orElse(0);
        motionRatio = damper.motionRatio().orElse(Math.cos(lean));
        double halfBase =
                axle instanceof Axle.Live live ? damper.base().orElseGet(() -> springBase(live)) / 2 : axle.track() / 2;
        armAtGround = halfBase + lowerMountHeight(axle) * Math.tan(lean);
        armByHeight = -Math.tan(lean);
    }

    /** The damper at one end of a car as it is set; none where the car has no curves of it. */
    public static Optional<WheelDamper> of(Car car, End end) {
        Axle axle = car.axle(end);
        return axle.damper().flatMap(damper -> damper.forces().map(forces -> new WheelDamper(axle, damper, forces)));
    }

    /** The damper of an axle with other curves, for instance those of one of its settings. */
    public static WheelDamper of(Axle axle, Damper damper, Damper.Forces forces) {
        return new WheelDamper(axle, damper, forces);
    }

    private static double springBase(Axle.Live axle) {
        return axle.spring() instanceof Spring.Leaning leaning
                ? leaning.base()
                : axle.spring() instanceof Spring.Upright upright ? upright.base() : axle.track();
    }

    /** Lower mounts stand with those of leaning springs, otherwise at the height of the axle: nothing else is known. */
    private static double lowerMountHeight(Axle axle) {
        return axle.spring() instanceof Spring.Leaning leaning
                ? leaning.lowerMountHeight()
                : axle.unsprung().height();
    }

    private static double[] speeds(Curve curve) {
        return curve.points().stream().mapToDouble(Curve.Point::at).toArray();
    }

    private static double[] forces(Curve curve) {
        return curve.points().stream().mapToDouble(Curve.Point::force).toArray();
    }

    /**
     * Sets force, rate and piece.
     *
     * @param speed of the wheel towards the body, m/s
     */
    public void at(double speed) {
        double atDamper = Math.abs(speed) * motionRatio;
        boolean inBump = speed >= 0;
        double[] speeds = inBump ? bumpSpeeds : reboundSpeeds;
        double[] forces = inBump ? bumpForces : reboundForces;
        int i = piece(speeds, atDamper);
        double slope = slope(speeds, forces, i);
        double size = motionRatio * (forces[i - 1] + slope * (atDamper - speeds[i - 1]));
        force = inBump ? size : -size;
        rate = motionRatio * motionRatio * slope;
        piece = inBump ? i : -i;
    }

    /** Force over the wheel's speed, as straight lines. */
    public ForceLines lines() {
        double[] corners = new double[bumpSpeeds.length + reboundSpeeds.length];
        for (int i = 0; i < corners.length; i++) {
            boolean inBump = i < bumpSpeeds.length;
            corners[i] = (inBump ? bumpSpeeds[i] : -reboundSpeeds[i - bumpSpeeds.length]) / motionRatio;
        }
        // The last point of a curve is no corner: its slope goes on. It does no harm as one.
        return ForceLines.of(
                speed -> {
                    at(speed);
                    return force;
                },
                corners);
    }

    private static int piece(double[] speeds, double speed) {
        int i = 1;
        while (i < speeds.length - 1 && speed > speeds[i]) {
            i++;
        }
        return i;
    }

    private static double slope(double[] speeds, double[] forces, int i) {
        return (forces[i] - forces[i - 1]) / (speeds[i] - speeds[i - 1]);
    }

    private static double force(double[] speeds, double[] forces, double speed) {
        int i = piece(speeds, speed);
        return forces[i - 1] + slope(speeds, forces, i) * (speed - speeds[i - 1]);
    }

    /** Damper travel over wheel travel, in heave. */
    public double motionRatio() {
        return motionRatio;
    }

    /**
     * How far from the middle the damper works in roll, m: half the track of an independent axle; half the base of a
     * live axle's upright dampers; of leaning ones where their line stands at the height of the roll centre, as with
     * springs: base/2 − (z − lower mount)·tan(lean). The roll damping of an axle is 2·rate·arm², N·m·s/rad.
     */
    public double rollArm(double rollCentreHeight) {
        return armAtGround + armByHeight * rollCentreHeight;
    }

    /** Force in bump over speed, both at the damper, times MR²: rate at the wheel, N·s/m, at a damper speed in m/s. */
    public double bumpRate(double damperSpeed) {
        return motionRatio * motionRatio * force(bumpSpeeds, bumpForces, damperSpeed) / damperSpeed;
    }

    /** The same in rebound. */
    public double reboundRate(double damperSpeed) {
        return motionRatio * motionRatio * force(reboundSpeeds, reboundForces, damperSpeed) / damperSpeed;
    }

    /** Equivalent linear rate at the wheel, N·s/m: mean of bump and rebound at a damper speed in m/s. */
    public double linearRate(double damperSpeed) {
        return (bumpRate(damperSpeed) + reboundRate(damperSpeed)) / 2;
    }
}
