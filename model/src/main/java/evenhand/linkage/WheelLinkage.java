package evenhand.linkage;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.LinkedWheels;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One wheel on links of its own. Motions of its figures: its own travel with the rack held, the rack with the wheel held.
 * Reading figures allocates nothing but in the records.
 */
public final class WheelLinkage {
    private static final int TRAVEL = WheelPose.TRAVEL;
    private static final int RACK = WheelPose.RACK;

    private final WheelPose pose;
    private final Part upright;
    private final WheelOn wheel;
    private final WheelMounts mounts;
    private final End end;
    private final double[] kingpin = new double[6];

    WheelLinkage(LinkedWheels given, WheelPose pose) {
        this.pose = pose;
        end = given.stance().end();
        upright = pose.upright;
        wheel = new WheelOn(upright, pose.wheel(), given.stance());
        mounts = new WheelMounts(
                given.mounts(),
                pose.side,
                on -> switch (on) {
                    case LOWER_ARM -> pose.lowerArm;
                    case UPPER_ARM -> pose.upperArm.orElseThrow();
                    case UPRIGHT, AXLE -> upright;
                },
                WheelPose.strutOf(given, pose.side));
        read();
    }

    void rest() {
        pose.rest();
        read();
    }

    /**
     * Moves to a travel from rest and a rack travel to the left, m.
     *
     * @return false, and the pose as it was, where the links do not reach so far
     */
    public boolean moveTo(double travel, double rack) {
        if (!pose.moveTo(travel, rack)) {
            return false;
        }
        read();
        return true;
    }

    private void read() {
        wheel.read();
        pose.kingpin(kingpin);
        mounts.read();
    }

    public Side side() {
        return pose.side;
    }

    public double travel() {
        return pose.travel();
    }

    public double rack() {
        return pose.rack();
    }

    /** Left positive. */
    public double steer() {
        return wheel.steer();
    }

    /** Against the body, top outwards positive. */
    public double camber() {
        return wheel.camber();
    }

    /** d(steer)/d(travel), rad/m. */
    public double steerByTravel() {
        return wheel.steerBy(TRAVEL);
    }

    /** d(steer)/d(rack), rad/m. */
    public double steerByRack() {
        return wheel.steerBy(RACK);
    }

    /** d(camber)/d(travel), rad/m. */
    public double camberByTravel() {
        return wheel.camberBy(TRAVEL);
    }

    /**
     * Rise per metre, going inwards, of the line through the contact point at right angles in rear view to the velocity there
     * of the upright: σ·w_y/w_z. By it each newton of side force lifts the body.
     *
     * <p>Source: Dixon 2009; Milliken &amp; Milliken 1995 ch. 17.
     */
    public double forceLineSlope() {
        double x = wheel.contactX;
        double y = wheel.contactY;
        double z = wheel.contactZ;
        return wheel.sigma * upright.speedY(TRAVEL, x, y, z) / upright.speedZ(TRAVEL, x, y, z);
    }

    /** −w_x/w_z at the contact point: brakes reacted by the upright. */
    public double contactSideSlope() {
        return sideSlope(wheel.contactX, wheel.contactY, wheel.contactZ);
    }

    /** The same at the wheel centre: brakes on the body, drive shafts, free rolling. */
    public double wheelSideSlope() {
        return sideSlope(wheel.centreX, wheel.centreY, wheel.centreZ);
    }

    private double sideSlope(double x, double y, double z) {
        return -upright.speedX(TRAVEL, x, y, z) / upright.speedZ(TRAVEL, x, y, z);
    }

    /** Top rearwards positive: atan2(−k_x, k_z). */
    public double caster() {
        return Math.atan2(-kingpin[0], kingpin[2]);
    }

    /** Top inwards positive: atan2(−σ·k_y, k_z). */
    public double kingpin() {
        return Math.atan2(-wheel.sigma * kingpin[1], kingpin[2]);
    }

    /** From the contact to where the kingpin's axis meets the level plane through it, along the heading; contact behind positive. */
    public double trail() {
        return Math.cos(steer()) * axisAhead() + Math.sin(steer()) * axisLeft();
    }

    /** The same across the heading; contact outside the axis positive. */
    public double scrub() {
        return -wheel.sigma * (Math.cos(steer()) * axisLeft() - Math.sin(steer()) * axisAhead());
    }

    private double axisAhead() {
        return kingpin[3] + kingpin[0] * (wheel.contactZ - kingpin[5]) / kingpin[2] - wheel.contactX;
    }

    private double axisLeft() {
        return kingpin[4] + kingpin[1] * (wheel.contactZ - kingpin[5]) / kingpin[2] - wheel.contactY;
    }

    AxleJoints.SideAt joints() {
        AxleLines.Wheel drawn = wheel.drawn();
        return new AxleJoints.SideAt(
                pose.side,
                new AxleJoints.Frame(upright),
                drawn.centre(),
                drawn.contact(),
                pose.armsAt(),
                pose.strutAt(),
                Optional.of(pose.tieRodAt()),
                mounts.springAt(),
                mounts.damperAt(),
                mounts.barLinkAt(pose.side, TRAVEL));
    }

    WheelMounts mounts() {
        return mounts;
    }

    WheelOn wheel() {
        return wheel;
    }

    WheelPose pose() {
        return pose;
    }

    AxleState.WheelFigures figures() {
        double turn = upright.spinY(TRAVEL);
        boolean swings = Math.abs(turn) >= LiveAxleLinkage.NO_TURN;
        double towardsMiddle = end == End.REAR ? 1 : -1;
        double x = wheel.centreX;
        double y = wheel.centreY;
        double z = wheel.centreZ;
        return new AxleState.WheelFigures(
                wheel.toe(),
                wheel.camber(),
                LiveAxleLinkage.given(mounts.hasSpring(), mounts::springLength),
                LiveAxleLinkage.given(mounts.hasSpring(), () -> mounts.springRatio(TRAVEL)),
                OptionalDouble.empty(),
                LiveAxleLinkage.given(mounts.hasDamper(), mounts::damperLength),
                LiveAxleLinkage.given(mounts.hasDamper(), () -> mounts.damperRatio(TRAVEL)),
                OptionalDouble.empty(),
                LiveAxleLinkage.given(mounts.hasBar(), () -> mounts.barRatio(TRAVEL)),
                OptionalDouble.empty(),
                LiveAxleLinkage.given(mounts.hasBar(), mounts::barTurn),
                LiveAxleLinkage.given(mounts.hasEyes(), mounts::upperEye),
                LiveAxleLinkage.given(mounts.hasEyes(), mounts::lowerEye),
                Optional.of(new AxleState.OwnLinks(
                        steer(),
                        caster(),
                        kingpin(),
                        trail(),
                        scrub(),
                        forceLineSlope(),
                        contactSideSlope(),
                        wheelSideSlope(),
                        swings
                                ? OptionalDouble.of(towardsMiddle * upright.speedZ(TRAVEL, x, y, z) / turn)
                                : OptionalDouble.empty(),
                        swings
                                ? OptionalDouble.of(z - upright.speedX(TRAVEL, x, y, z) / turn - wheel.contactZ)
                                : OptionalDouble.empty())));
    }
}
