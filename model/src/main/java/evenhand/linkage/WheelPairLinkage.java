package evenhand.linkage;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.Clearance;
import evenhand.car.links.LinkedWheels;
import evenhand.car.links.Rod;
import evenhand.car.links.SideView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Both wheels of an independent axle on their links; at the front the rack steers them. */
public final class WheelPairLinkage extends AxleLinkage {
    /** Slopes of force lines that differ by less do not cross. */
    private static final double PARALLEL = 1e-9;

    private final LinkedWheels given;
    private final WheelLinkage left;
    private final WheelLinkage right;
    private final List<JointedLink> links = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final double steerPerRack;
    private double referenceSteer;

    /** Of poses that stand at rest. */
    WheelPairLinkage(LinkedWheels given, WheelPose leftPose, WheelPose rightPose) {
        this.given = given;
        left = new WheelLinkage(given, leftPose);
        right = new WheelLinkage(given, rightPose);
        for (Side side : Side.values()) {
            WheelPose pose = wheel(side).pose();
            Rod rod = pose.tieRod().rod();
            links.add(new JointedLink(
                    side == Side.LEFT ? "tieRodLeft" : "tieRodRight",
                    Optional.of(side),
                    rod,
                    JointedLink.Bolts.UPRIGHT,
                    pose::tieRodEnds,
                    pose.upright));
        }
        for (Clearance clearance : given.mounts().clearances()) {
            gaps.add(new Gap(
                    clearance, part(clearance.from().on()), part(clearance.to().on())));
        }
        steerPerRack = (left.steerByRack() + right.steerByRack()) / 2;
    }

    private Optional<Part> part(Clearance.Part on) {
        return switch (on) {
            case LEFT_WHEEL -> Optional.of(left.pose().upright);
            case RIGHT_WHEEL -> Optional.of(right.pose().upright);
            case BODY, AXLE -> Optional.empty();
        };
    }

    @Override
    public LinkedWheels given() {
        return given;
    }

    @Override
    public AxleJoints joints() {
        return new AxleJoints(List.of(), Optional.empty(), List.of(), left.joints(), right.joints());
    }

    public WheelLinkage wheel(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Whether the rack steers these wheels. */
    public boolean steered() {
        return given.stance().end() == End.FRONT;
    }

    /** c: mean over both wheels of d(steer)/d(rack) at rest, rad/m; negative for a rack behind the axle's line. */
    public double steerPerRack() {
        return steerPerRack;
    }

    @Override
    public void rest() {
        left.rest();
        right.rest();
        referenceSteer = 0;
    }

    @Override
    public boolean moveTo(double leftTravel, double rightTravel) {
        return moveTo(leftTravel, rightTravel, 0);
    }

    /** Moves both wheels, with the rack at the travel that belongs to a reference steer, rad, left positive. */
    public boolean moveTo(double leftTravel, double rightTravel, double steer) {
        double rack = steer == 0 ? 0 : steer / steerPerRack;
        double leftBefore = left.travel();
        double rackBefore = left.rack();
        if (!left.moveTo(leftTravel, rack)) {
            return false;
        }
        if (!right.moveTo(rightTravel, rack)) {
            left.moveTo(leftBefore, rackBefore);
            return false;
        }
        referenceSteer = steer;
        return true;
    }

    /** Whether both force lines cross. */
    private double slopeDifference() {
        return -left.forceLineSlope() - right.forceLineSlope();
    }

    /** y where both force lines cross, z_L + m_L·(y − y_L) = z_R + m_R·(y − y_R), m = −σ·slope. */
    private double crossingY() {
        WheelOn l = left.wheel();
        WheelOn r = right.wheel();
        double ml = -left.forceLineSlope();
        double mr = right.forceLineSlope();
        return (r.contactZ - l.contactZ + ml * l.contactY - mr * r.contactY) / (ml - mr);
    }

    private boolean crosses() {
        return Math.abs(slopeDifference()) >= PARALLEL;
    }

    private double crossingZ(double y) {
        WheelOn l = left.wheel();
        return l.contactZ - left.forceLineSlope() * (y - l.contactY);
    }

    @Override
    public OptionalDouble rollCentreHeight() {
        if (!crosses()) {
            return OptionalDouble.empty();
        }
        double y = crossingY();
        return OptionalDouble.of(LiveAxleLinkage.aboveGround(left.wheel(), right.wheel(), y, crossingZ(y)));
    }

    @Override
    public AxleLines lines() {
        List<AxleLines.Line> lines = new ArrayList<>();
        List<AxleLines.Wheel> wheels = new ArrayList<>();
        List<AxleLines.ForceLine> forceLines = new ArrayList<>();
        for (Side side : Side.values()) {
            WheelLinkage wheel = wheel(side);
            wheel.pose().draw(lines);
            wheel.mounts().draw(side, lines);
            wheels.add(wheel.wheel().drawn());
            forceLines.add(
                    new AxleLines.ForceLine(wheel.wheel().drawn().contact(), -side.sign() * wheel.forceLineSlope()));
        }
        if (steered() && given.links().tieRod().left().swing().isEmpty()) {
            lines.add(new AxleLines.Line(AxleLines.Kind.RACK, "rack", innerEnd(left), innerEnd(right), false));
        }
        double y = crosses() ? crossingY() : 0;
        double x = (left.wheel().contactX + right.wheel().contactX) / 2;
        return new AxleLines(
                lines, wheels, forceLines, crosses() ? Optional.of(new Place(x, y, crossingZ(y))) : Optional.empty());
    }

    private static Place innerEnd(WheelLinkage wheel) {
        double[] inner = new double[3];
        wheel.pose().tieRodEnds(inner, new double[3]);
        return new Place(inner[0], inner[1], inner[2]);
    }

    /** Mean over both wheels of d(steer)/dφ, understeer positive; dφ lowers the left wheel and lifts the right by t/2. */
    public double rollSteer() {
        double steer = given.stance().track() / 4 * (right.steerByTravel() - left.steerByTravel());
        return given.stance().end() == End.REAR ? steer : -steer;
    }

    /** 1 + mean over both wheels of d(lean to the right against the body)/dφ. */
    public double rollCamber() {
        return 1 + given.stance().track() / 4 * (left.camberByTravel() + right.camberByTravel());
    }

    @Override
    WheelMounts mounts(Side side) {
        return wheel(side).mounts();
    }

    @Override
    public OptionalDouble crank() {
        return OptionalDouble.empty();
    }

    @Override
    List<JointedLink> links() {
        return links;
    }

    @Override
    List<Gap> gaps() {
        return gaps;
    }

    @Override
    public double worstError() {
        return Math.max(left.pose().worstError(), right.pose().worstError());
    }

    @Override
    public AxleState state() {
        double atContact = (left.contactSideSlope() + right.contactSideSlope()) / 2;
        double atWheel = (left.wheelSideSlope() + right.wheelSideSlope()) / 2;
        End end = given.stance().end();
        SideView car = given.sideView();
        return new AxleState(
                left.travel(),
                right.travel(),
                steered()
                        ? Optional.of(new AxleState.Steering(referenceSteer, left.rack(), ackermannShare()))
                        : Optional.empty(),
                LiveAxleLinkage.trackOf(left.wheel(), right.wheel()),
                rollCentreHeight(),
                crosses() ? OptionalDouble.of(crossingY()) : OptionalDouble.empty(),
                rollSteer(),
                rollCamber(),
                SideForces.antiDive(end, car, atContact, atWheel),
                SideForces.antiLift(end, car, atContact, atWheel, atWheel),
                SideForces.antiSquat(end, car, atWheel),
                left.figures(),
                right.figures(),
                Optional.empty());
    }

    /**
     * Difference of both steer angles, static toe in it, over that of wheels whose axles meet on the rear axle's line.
     *
     * <pre>  (δ_L − δ_R)/(ack_L − ack_R),  tan ack_j = tan δ/(1 − σ·(t/2L)·tan δ) </pre>
     */
    private OptionalDouble ackermannShare() {
        if (referenceSteer == 0) {
            return OptionalDouble.empty();
        }
        double ideal = ackermann(Side.LEFT) - ackermann(Side.RIGHT);
        return OptionalDouble.of((left.steer() - right.steer()) / ideal);
    }

    private double ackermann(Side side) {
        double tangent = Math.tan(referenceSteer);
        double halfTrack = given.stance().track() / (2 * given.sideView().wheelbase());
        return Math.atan(tangent / (1 - side.sign() * halfTrack * tangent));
    }
}
