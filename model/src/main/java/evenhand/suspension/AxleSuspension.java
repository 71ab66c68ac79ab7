package evenhand.suspension;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.End;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.Weights;
import java.util.OptionalDouble;

/**
 * Vertical force and roll moment between the body and one axle, by mean travel, suspension roll and roll-centre height.
 *
 * <p>An independent axle's springs and stops act at the wheels, half the track from the middle. A live axle's springs
 * act where their line stands at the height of the roll centre, its stops at their own base. Forces count from the rest
 * load: springs at rest carry just what stands on them, whichever way the cross weight lies. {@link #at} sets the fields
 * and allocates nothing. One per thread.
 *
 * <p>Source: Milliken &amp; Milliken 1995 ch. 16 (rates, leaning springs); Gillespie 1992 ch. 6 (roll stiffness of a
 * solid axle by its spring base).
 */
public final class AxleSuspension {
    /** Rate of metal on metal, N/m: not hard, but as bodies and brackets give. Common practice, no source. */
    public static final double METAL_RATE = 5e6;

    /** Sum of both sides, N, upwards on the body, and its slopes. */
    public double force;

    public double forceByTravel;
    public double forceByRoll;
    public double forceByRollCentre;

    /** Moment against the roll, N·m, from rest, and its slopes. */
    public double moment;

    public double momentByTravel;
    public double momentByRoll;
    public double momentByRollCentre;

    /** Which straight piece each spring and stop works on; it changes where a slope jumps. */
    public int pieces;

    private final double heaveRate; // of one spring, N/m
    private final double rollRate; // of one spring in roll, at its arm, N/m
    private final double armAtGround; // half the base where the springs' line meets z = 0, m
    private final double armByHeight; // its change per height, −tan(lean)
    private final double leftRest; // load of the left spring at rest, N
    private final double rightRest;
    private final double standsOnStop; // load of one bump stop at rest, N
    private final double bar; // N·m/rad
    private final double bumpArm; // half the base of the bump stops, m
    private final double bumpGap;
    private final double[] bumpDeflections;
    private final double[] bumpForces;
    private final double droopArm;
    private final double droopTravel;
    private final double droopRate;

    private final double metalArm;
    private final double metalGap;

    private double springForce;
    private double springRate;
    private double stopForce;
    private double stopRate;

    private AxleSuspension(Car car, End end) {
        Axle axle = car.axle(end);
        double hung = axle.unsprung().mass() * Weights.GRAVITY / 2;
        double left = car.staticLoad(end, true) - hung;
        double right = car.staticLoad(end, false) - hung;
        bar = axle.barRollStiffness();

        double springArm = halfBase(axle);
        Stops stops = axle.stops();
        bumpArm = arm(axle, stops.bump().map(Stops.Bump::base).orElse(OptionalDouble.empty()));
        bumpGap = stops.bump().map(Stops.Bump::gap).orElse(Double.POSITIVE_INFINITY);
        Curve curve = stops.bump().map(Stops.Bump::curve).orElse(Curve.NO_FORCE);
        bumpDeflections = curve.points().stream().mapToDouble(Curve.Point::at).toArray();
        bumpForces = curve.points().stream().mapToDouble(Curve.Point::force).toArray();
        droopArm = arm(axle, stops.droop().map(Stops.Droop::base).orElse(OptionalDouble.empty()));
        droopTravel = stops.droop().map(Stops.Droop::travel).orElse(Double.POSITIVE_INFINITY);
        droopRate = stops.droop().map(Stops.Droop::rate).orElse(0.0);
        metalArm = arm(axle, stops.metal().map(Stops.Metal::base).orElse(OptionalDouble.empty()));
        metalGap = stops.metal().map(Stops.Metal::gap).orElse(Double.POSITIVE_INFINITY);

        stopForce = 0;
        bump(-bumpGap);
        standsOnStop = stopForce;
        droop(0);
        double hangsOnStop = stopForce; // below zero: it holds the body down, and the springs carry more
        leftRest = left - standsOnStop - hangsOnStop;
        rightRest = right - standsOnStop - hangsOnStop;

        Spring spring = axle.spring();
        if (spring instanceof Spring.AtWheel wheel) {
            heaveRate = wheel.rate() * wheel.motionRatio() * wheel.motionRatio();
            rollRate = heaveRate;
            armAtGround = springArm;
            armByHeight = 0;
        } else if (spring instanceof Spring.Upright upright) {
            heaveRate = upright.rate() * upright.motionRatio() * upright.motionRatio();
            rollRate = heaveRate;
            armAtGround = springArm;
            armByHeight = 0;
        } else {
            Spring.Leaning leaning = (Spring.Leaning) spring;
            double cos = Math.cos(leaning.lean());
            double sin = Math.sin(leaning.lean());
            double tan = Math.tan(leaning.lean());
            rollRate = leaning.rate() * cos * cos;
            double falling = leaning.lengths().installed().isPresent()
                    ? (leftRest + rightRest)
                            / 2
                            / cos
                            * sin
                            * sin
                            / leaning.lengths().installed().getAsDouble()
                    : 0;
            heaveRate = rollRate - falling;
            armAtGround = springArm + leaning.lowerMountHeight() * tan;
            armByHeight = -tan;
        }
    }

    /** The suspension at one end of a car, as it stands at rest. */
    public static AxleSuspension of(Car car, End end) {
        return new AxleSuspension(car, end);
    }

    private static double halfBase(Axle axle) {
        if (axle.spring() instanceof Spring.Upright upright) {
            return upright.base() / 2;
        }
        if (axle.spring() instanceof Spring.Leaning leaning) {
            return leaning.base() / 2;
        }
        return axle.track() / 2;
    }

    private static double arm(Axle axle, OptionalDouble base) {
        boolean live = axle instanceof Axle.Live;
        return live && base.isPresent() ? base.getAsDouble() / 2 : halfBase(axle);
    }

    /** Half the springs' base at this roll-centre height, m: half the track of an independent axle. */
    public double springArm(double rollCentreHeight) {
        return armAtGround + armByHeight * rollCentreHeight;
    }

    /** Wheel rate in heave, of one side, N/m. */
    public double heaveRate() {
        return heaveRate;
    }

    /** Load on the springs of one side at rest, N; below zero where a stop would carry more than there is. */
    public double springLoadAtRest(boolean left) {
        return left ? leftRest : rightRest;
    }

    /** Load on the bump stop of one side at rest, N: zero while there is a gap. */
    public double stopLoadAtRest() {
        return standsOnStop;
    }

    /**
     * Sets force and moment.
     *
     * @param travel mean bump travel of both sides, m
     * @param roll suspension roll, rad, right side down positive
     * @param rollCentreHeight above the ground, m
     */
    public void at(double travel, double roll, double rollCentreHeight) {
        pieces = 0;
        double arm = springArm(rollCentreHeight);
        double rightWay = rollRate * arm * roll; // what roll adds to the right spring
        spring(leftRest + heaveRate * travel - rightWay);
        double left = springForce;
        double leftRate = springRate;
        spring(rightRest + heaveRate * travel + rightWay);
        double right = springForce;
        double rightRate = springRate;
        double difference = right - left - (rightRest - leftRest);
        double rates = leftRate + rightRate;
        double skew = rightRate - leftRate;

        force = left + right;
        forceByTravel = heaveRate * rates;
        forceByRoll = rollRate * arm * skew;
        forceByRollCentre = rollRate * roll * armByHeight * skew;
        moment = arm * difference + bar * roll;
        momentByTravel = arm * heaveRate * skew;
        momentByRoll = arm * arm * rollRate * rates + bar;
        momentByRollCentre = armByHeight * (difference + arm * rollRate * roll * rates);
        stops(travel, roll, bumpArm, true);
        stops(travel, roll, droopArm, false);
    }

    private void stops(double travel, double roll, double arm, boolean inBump) {
        stop(travel - arm * roll, inBump);
        double left = stopForce;
        double leftRate = stopRate;
        stop(travel + arm * roll, inBump);
        force += left + stopForce;
        forceByTravel += leftRate + stopRate;
        forceByRoll += arm * (stopRate - leftRate);
        moment += arm * (stopForce - left);
        momentByTravel += arm * (stopRate - leftRate);
        momentByRoll += arm * arm * (leftRate + stopRate);
    }

    private void stop(double travel, boolean inBump) {
        if (inBump) {
            bump(travel - bumpGap);
        } else {
            droop(travel);
        }
    }

    /** A spring only pushes; one factor tells whether it does. */
    private void spring(double load) {
        pieces = 2 * pieces + (load > 0 ? 1 : 0);
        springRate = load > 0 ? 1 : 0;
        springForce = load > 0 ? load : 0;
    }

    private void bump(double deflection) {
        pieces *= 16;
        if (!(deflection > 0)) {
            stopForce = 0;
            stopRate = 0;
            return;
        }
        int i = 1;
        while (i < bumpDeflections.length - 1 && deflection > bumpDeflections[i]) {
            i++;
        }
        pieces += i;
        stopRate = (bumpForces[i] - bumpForces[i - 1]) / (bumpDeflections[i] - bumpDeflections[i - 1]);
        stopForce = bumpForces[i - 1] + stopRate * (deflection - bumpDeflections[i - 1]);
    }

    private void droop(double travel) {
        boolean reached = travel < -droopTravel;
        pieces = 2 * pieces + (reached ? 1 : 0);
        stopRate = reached ? droopRate : 0;
        stopForce = reached ? droopRate * (travel + droopTravel) : 0;
    }

    /**
     * Force of the spring and stops of one side, upwards on the body, over mean travel, the roll held. Here metal counts
     * too, where the file says how far away it is: in a bump it is met for a moment, in a steady turn never.
     *
     * @param roll suspension roll, rad
     * @param rollCentreHeight above the ground, m
     */
    public ForceLines side(boolean left, double roll, double rollCentreHeight) {
        double sign = left ? -1 : 1;
        double rest = (left ? leftRest : rightRest) + sign * rollRate * springArm(rollCentreHeight) * roll;
        return lines(rest, sign * bumpArm * roll, sign * droopArm * roll, sign * metalArm * roll);
    }

    /** The same of half the axle in heave, at the mean load of both sides. */
    public ForceLines half() {
        return lines((leftRest + rightRest) / 2, 0, 0, 0);
    }

    /** Arguments: load of the spring at no travel, and how much more than the mean the stops of this side travel. */
    private ForceLines lines(double rest, double bumpMore, double droopMore, double metalMore) {
        double[] corners = new double[bumpDeflections.length + 3];
        for (int i = 0; i < bumpDeflections.length; i++) {
            corners[i] = bumpGap + bumpDeflections[i] - bumpMore;
        }
        corners[bumpDeflections.length] = -rest / heaveRate;
        corners[bumpDeflections.length + 1] = -droopTravel - droopMore;
        corners[bumpDeflections.length + 2] = metalGap - metalMore;
        return ForceLines.of(
                travel -> {
                    spring(rest + heaveRate * travel);
                    bump(travel + bumpMore - bumpGap);
                    double force = springForce + stopForce;
                    droop(travel + droopMore);
                    return force + stopForce + METAL_RATE * Math.max(0, travel + metalMore - metalGap);
                },
                corners);
    }

    /** How far metal of one side is beyond its gap, m; below zero before, −∞ where the file does not say. */
    public double metalDeflection(double travel, double roll, boolean left) {
        return travel + (left ? -1 : 1) * metalArm * roll - metalGap;
    }

    /** Deflection of the bump stop of one side, m; below zero while there is a gap, −∞ without one. */
    public double bumpDeflection(double travel, double roll, boolean left) {
        return travel + (left ? -1 : 1) * bumpArm * roll - bumpGap;
    }

    /** How far one side is beyond its droop travel, m; below zero before, −∞ without a limit. */
    public double droopExcess(double travel, double roll, boolean left) {
        return -droopTravel - (travel + (left ? -1 : 1) * droopArm * roll);
    }

    /** Load that the spring of one side would have, could it pull, N; it is loose below zero. */
    public double springLoad(double travel, double roll, double rollCentreHeight, boolean left) {
        double rightWay = rollRate * springArm(rollCentreHeight) * roll;
        return (left ? leftRest - rightWay : rightRest + rightWay) + heaveRate * travel;
    }
}
