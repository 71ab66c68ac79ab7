package evenhand.suspension;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.geometry.Lever;
import evenhand.geometry.RollArm;
import java.util.Optional;
import java.util.function.Function;

/**
 * The damper of one side of an axle as the wheel feels it: of an independent wheel, or of half a live axle in heave.
 *
 * <pre>  F(u') = MR·D(MR·u')  </pre>
 * u' bump speed of the wheel against the body, m/s, wheel towards body positive; D the bump curve for u' &gt; 0 and,
 * taken negative, the rebound curve for u' &lt; 0, straight lines through their points, the last slope going on; MR
 * damper travel over wheel travel. The force counts as that of a spring does, upwards on the body.
 *
 * <p>MR is that of the axle's geometry. In roll a live axle's dampers work with the same ratio at their own arm, see
 * {@link #rollArm}. {@link #at} sets the fields and allocates nothing. One per thread.
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
    private final RollArm rollArm;
    private final PointLines bump;
    private final PointLines rebound;

    private WheelDamper(Lever lever, Damper.Forces forces) {
        bump = new PointLines(forces.bump());
        rebound = new PointLines(forces.rebound());
        motionRatio = lever.ratio();
        rollArm = lever.arm();
    }

    /** The damper at one end of a car as it is set; none where the car has no curves of it. */
    public static Optional<WheelDamper> of(Car car, End end) {
        Axle axle = car.axle(end);
        return axle.damper()
                .flatMap(Damper::forces)
                .flatMap(forces -> axle.geometry().dampers().map(lever -> new WheelDamper(lever, forces)));
    }

    /** The damper of an axle with other curves, for instance those of one of its settings. */
    public static WheelDamper of(Axle axle, Damper damper, Damper.Forces forces) {
        return new WheelDamper(damper.lever(axle), forces);
    }

    /**
     * Sets force, rate and piece.
     *
     * @param speed of the wheel towards the body, m/s
     */
    public void at(double speed) {
        double atDamper = Math.abs(speed) * motionRatio;
        boolean inBump = speed >= 0;
        PointLines curve = inBump ? bump : rebound;
        int i = curve.pieceAt(atDamper);
        double size = motionRatio * curve.force(i, atDamper);
        force = inBump ? size : -size;
        rate = wheelRate(curve.slope(i));
        piece = inBump ? i : -i;
    }

    /**
     * Damper rate as the wheel feels it, N·s/m: the motion ratio counts twice, once for speed and once for force.
     *
     * <pre>  c = MR²·c_damper  </pre>
     *
     * @param damperRate force over speed, both at the damper, N·s/m
     */
    private double wheelRate(double damperRate) {
        return motionRatio * motionRatio * damperRate;
    }

    /** The damper of one side over the wheel's speed and mean travel, the roll held, rad; nothing where the car has no curves. */
    public static DamperLines side(Car car, End end, Side side, double roll) {
        return lines(car, end, axle -> DamperLeverage.side(axle, side, roll));
    }

    /** The same of half the axle in heave. */
    public static DamperLines half(Car car, End end) {
        return lines(car, end, DamperLeverage::half);
    }

    private static DamperLines lines(Car car, End end, Function<Axle, Optional<DamperLines.Ratio>> leverage) {
        Optional<WheelDamper> damper = of(car, end);
        if (damper.isEmpty()) {
            return DamperLines.atWheel(ForceLines.none());
        }
        return leverage.apply(car.axle(end))
                .map(ratio -> DamperLines.atDamper(damper.get().lines(1), ratio))
                .orElseGet(() -> DamperLines.atWheel(damper.get().lines()));
    }

    /** Force at the wheel over its speed, as straight lines, the leverage that of rest. */
    public ForceLines lines() {
        return lines(motionRatio);
    }

    /** Force over speed, both as felt through a leverage. */
    private ForceLines lines(double ratio) {
        double[] corners = new double[bump.count() + 1 + rebound.count() + 1];
        int corner = 0;
        for (int i = 0; i <= bump.count(); i++) {
            corners[corner++] = bump.end(i) / ratio;
        }
        for (int i = 0; i <= rebound.count(); i++) {
            corners[corner++] = -rebound.end(i) / ratio;
        }
        // The last point of a curve is no corner: its slope goes on. It does no harm as one.
        return ForceLines.of(speed -> force(speed, ratio), corners);
    }

    private double force(double speed, double ratio) {
        double size = ratio * (speed >= 0 ? bump : rebound).force(Math.abs(speed) * ratio);
        return speed >= 0 ? size : -size;
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
        return rollArm.at(rollCentreHeight);
    }

    /** Force in bump over speed, both at the damper, times MR²: rate at the wheel, N·s/m, at a damper speed in m/s. */
    public double bumpRate(double damperSpeed) {
        return wheelRate(bump.force(damperSpeed)) / damperSpeed;
    }

    /** The same in rebound. */
    public double reboundRate(double damperSpeed) {
        return wheelRate(rebound.force(damperSpeed)) / damperSpeed;
    }

    /** Equivalent linear rate at the wheel, N·s/m: mean of bump and rebound at a damper speed in m/s. */
    public double linearRate(double damperSpeed) {
        return (bumpRate(damperSpeed) + reboundRate(damperSpeed)) / 2;
    }
}
