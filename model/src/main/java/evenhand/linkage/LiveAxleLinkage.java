package evenhand.linkage;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.Clearance;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.SideView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A live axle on its links. Motions of its figures: heave, both wheels up by one; roll, the left one up by one and the right
 * one down by one. Reading figures allocates nothing but in {@link #state}.
 */
public final class LiveAxleLinkage extends AxleLinkage {
    private static final int HEAVE = LiveAxlePose.HEAVE;
    private static final int ROLL = LiveAxlePose.ROLL;

    /** Below this turn per travel there is no swing centre, rad/m. */
    static final double NO_TURN = 1e-9;

    private final LinkedLiveAxle given;
    private final LiveAxlePose pose;
    private final Part axle;
    private final WheelOn left;
    private final WheelOn right;
    private final WheelMounts leftMounts;
    private final WheelMounts rightMounts;
    private final Optional<ShaftLine> shaft;
    private final double restAhead;
    private final List<JointedLink> links = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();

    // of the roll centre
    private double rollCentreUp; // z in the body
    private double forceLine;

    /** Of a pose that stands at rest. */
    LiveAxleLinkage(LiveAxlePose pose) {
        this.pose = pose;
        given = pose.given;
        axle = pose.axle;
        left = new WheelOn(axle, WheelPlace.of(given.stance(), Side.LEFT), given.stance());
        right = new WheelOn(axle, WheelPlace.of(given.stance(), Side.RIGHT), given.stance());
        leftMounts = new WheelMounts(given.mounts(), Side.LEFT, on -> axle, Optional.empty());
        rightMounts = new WheelMounts(given.mounts(), Side.RIGHT, on -> axle, Optional.empty());
        shaft = given.propShaft().map(s -> new ShaftLine(s, axle));
        for (int r = 0; r < pose.rods.size(); r++) {
            int rod = r;
            AxleRod link = pose.rods.get(r);
            links.add(new JointedLink(
                    link.name(),
                    link.view(),
                    link.rod(),
                    JointedLink.Bolts.LEVEL,
                    (body, moving) -> {
                        pose.bodyEnd(rod, body);
                        pose.axleEnd(rod, moving);
                    },
                    axle));
        }
        for (Clearance clearance : given.mounts().clearances()) {
            gaps.add(new Gap(
                    clearance, part(clearance.from().on()), part(clearance.to().on())));
        }
        read();
        restAhead = middle(left.centreX, right.centreX);
    }

    private Optional<Part> part(Clearance.Part on) {
        return on == Clearance.Part.BODY ? Optional.empty() : Optional.of(axle);
    }

    @Override
    public LinkedLiveAxle given() {
        return given;
    }

    @Override
    public void rest() {
        pose.rest();
        read();
    }

    @Override
    public boolean moveTo(double leftTravel, double rightTravel) {
        if (!pose.moveTo(leftTravel, rightTravel)) {
            return false;
        }
        read();
        return true;
    }

    private void read() {
        left.read();
        right.read();
        leftMounts.read();
        rightMounts.read();
        rollCentre();
    }

    private static double middle(double left, double right) {
        return (left + right) / 2;
    }

    /**
     * The one line in the transverse plane through the mean of both contact points along which a force does no work in heave
     * nor in roll. Velocities of the axle's points there are linear in their height z, and their z-part does not depend on it:
     * <pre>  w^h_y(z)·w^r_z = w^r_y(z)·w^h_z,   slope = −w^h_y/w^h_z </pre>
     *
     * <p>Source: SAE J670, the point where a side force makes no roll.
     */
    private void rollCentre() {
        double x = middle(left.contactX, right.contactX);
        double heaveSide = axle.speedY(HEAVE, x, 0, 0);
        double rollSide = axle.speedY(ROLL, x, 0, 0);
        double heaveUp = axle.speedZ(HEAVE, x, 0, 0);
        double rollUp = axle.speedZ(ROLL, x, 0, 0);
        double heaveTurn = axle.spinX(HEAVE); // the y-part falls by so much per height
        double rollTurn = axle.spinX(ROLL);
        rollCentreUp = (heaveSide * rollUp - rollSide * heaveUp) / (heaveTurn * rollUp - rollTurn * heaveUp);
        forceLine = -(heaveSide - heaveTurn * rollCentreUp) / heaveUp;
    }

    /** Distance of a point in rear view from the line through both contact points, up positive, m. */
    static double aboveGround(WheelOn left, WheelOn right, double y, double z) {
        double dy = left.contactY - right.contactY;
        double dz = left.contactZ - right.contactZ;
        return ((z - right.contactZ) * dy - (y - right.contactY) * dz) / Math.sqrt(dy * dy + dz * dz);
    }

    @Override
    public AxleLines lines() {
        List<AxleLines.Line> lines = new ArrayList<>();
        Place leftCentre = left.drawn().centre();
        Place rightCentre = right.drawn().centre();
        lines.add(new AxleLines.Line(AxleLines.Kind.TUBE, "axle", leftCentre, rightCentre, false));
        double[] body = new double[3];
        double[] moving = new double[3];
        for (int r = 0; r < pose.rods.size(); r++) {
            AxleRod rod = pose.rods.get(r);
            pose.bodyEnd(r, body);
            pose.axleEnd(r, moving);
            Place from = new Place(body[0], body[1], body[2]);
            Place to = new Place(moving[0], moving[1], moving[2]);
            lines.add(
                    new AxleLines.Line(AxleLines.Kind.ROD, rod.name(), from, to, rod.crank() != AxleRod.Crank.ON_BODY));
            if (rod.crank() != AxleRod.Crank.NONE) {
                Place pin = rod.crank() == AxleRod.Crank.ON_BODY ? from : to;
                lines.add(new AxleLines.Line(
                        AxleLines.Kind.CRANK, "crank", pose.crankPivot(), pin, rod.crank() == AxleRod.Crank.ON_BODY));
            }
            if (rod.name().equals("dropLink")) {
                lines.add(new AxleLines.Line(
                        AxleLines.Kind.TORQUE_ARM, "torqueArm", footOf(to, leftCentre, rightCentre), to, false));
            } else if (rod.crank() != AxleRod.Crank.ON_AXLE) {
                lines.add(bracket(to, leftCentre, rightCentre));
            }
        }
        if (pose.hasCrank() && pose.crankOnAxle()) {
            lines.add(bracket(pose.crankPivot(), leftCentre, rightCentre));
        }
        if (pose.hasLeaves()) {
            leaves(lines);
        }
        leftMounts.draw(Side.LEFT, lines);
        rightMounts.draw(Side.RIGHT, lines);
        shaft.ifPresent(line -> line.draw(lines));
        Place rollCentre = new Place(middle(left.contactX, right.contactX), 0, rollCentreUp);
        return new AxleLines(
                lines,
                List.of(left.drawn(), right.drawn()),
                List.of(new AxleLines.ForceLine(rollCentre, forceLine)),
                Optional.of(rollCentre));
    }

    @Override
    public AxleJoints joints() {
        List<AxleJoints.RodAt> rods = new ArrayList<>();
        for (int r = 0; r < pose.rods.size(); r++) {
            rods.add(pose.rodAt(r));
        }
        List<AxleJoints.LeafAt> leaves = new ArrayList<>();
        for (Side side : pose.hasLeaves() ? Side.values() : new Side[0]) {
            int front = 2 * side.index();
            leaves.add(new AxleJoints.LeafAt(
                    side, pose.leafEye(front), pose.leafEye(front + 1), pose.shacklePivot(front + 1)));
        }
        AxleJoints.Frame frame = new AxleJoints.Frame(axle);
        Optional<AxleJoints.CrankAt> crank = pose.hasCrank()
                ? Optional.of(new AxleJoints.CrankAt(
                        pose.crankPivot(),
                        pose.crankOnAxle() ? frame.direction(new Place(1, 0, 0)) : new Place(1, 0, 0),
                        pose.crank(),
                        pose.crankOnAxle()))
                : Optional.empty();
        return new AxleJoints(rods, crank, leaves, joints(Side.LEFT, frame), joints(Side.RIGHT, frame));
    }

    private AxleJoints.SideAt joints(Side side, AxleJoints.Frame frame) {
        AxleLines.Wheel wheel = (side == Side.LEFT ? left : right).drawn();
        WheelMounts mounts = mounts(side);
        return new AxleJoints.SideAt(
                side,
                frame,
                wheel.centre(),
                wheel.contact(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                mounts.springAt(),
                mounts.damperAt(),
                mounts.barLinkAt(side, ROLL));
    }

    /** Nearest place of the tube's line. */
    private static Place footOf(Place place, Place leftCentre, Place rightCentre) {
        Place along = rightCentre.minus(leftCentre).unit();
        return leftCentre.plus(place.minus(leftCentre).dot(along), along);
    }

    private static AxleLines.Line bracket(Place joint, Place leftCentre, Place rightCentre) {
        return new AxleLines.Line(
                AxleLines.Kind.BRACKET, "bracket", footOf(joint, leftCentre, rightCentre), joint, false);
    }

    private void leaves(List<AxleLines.Line> lines) {
        for (Side side : Side.values()) {
            int front = 2 * side.index();
            int rear = front + 1;
            Place rearEye = pose.leafEye(rear);
            lines.add(new AxleLines.Line(
                    AxleLines.Kind.LEAF,
                    AxleLines.on(side, "leafFront"),
                    pose.leafEye(front),
                    pose.leafHinge(front),
                    true));
            lines.add(new AxleLines.Line(
                    AxleLines.Kind.SEAT,
                    AxleLines.on(side, "leaf"),
                    pose.leafHinge(front),
                    pose.leafHinge(rear),
                    false));
            lines.add(new AxleLines.Line(
                    AxleLines.Kind.LEAF, AxleLines.on(side, "leafRear"), rearEye, pose.leafHinge(rear), false));
            lines.add(new AxleLines.Line(
                    AxleLines.Kind.SHACKLE, AxleLines.on(side, "shackle"), pose.shacklePivot(rear), rearEye, true));
        }
    }

    /** Height of the roll centre over the line through both contact points, m. */
    public double heightOfRollCentre() {
        return aboveGround(left, right, 0, rollCentreUp);
    }

    @Override
    public OptionalDouble rollCentreHeight() {
        return OptionalDouble.of(heightOfRollCentre());
    }

    /** dz/dy of the line along which a side force does no work. */
    public double forceLineSlope() {
        return forceLine;
    }

    /** Left positive: atan2(−d_x, d_y), d from the right wheel centre to the left one. */
    public double axleSteer() {
        return Math.atan2(right.centreX - left.centreX, left.centreY - right.centreY);
    }

    /** Of the wheel centres' middle from the car's, left positive, m. */
    public double sideShift() {
        return middle(left.centreY, right.centreY);
    }

    /** Of the same from rest, forwards, m. */
    public double foreAft() {
        return middle(left.centreX, right.centreX) - restAhead;
    }

    /** Of the direction that was the x axis, against the body's level plane, front end up. */
    public double axlePitch() {
        return Angles.rise(axle.turn[0], axle.turn[3], axle.turn[6]);
    }

    /** Distance of both contact points in rear view, m. */
    public double track() {
        return trackOf(left, right);
    }

    static double trackOf(WheelOn left, WheelOn right) {
        return Math.hypot(left.contactY - right.contactY, left.contactZ - right.contactZ);
    }

    /** d(axle steer)/dφ, understeer positive: at the rear as it is, at the front with the other sign. */
    public double rollSteer() {
        double byRoll = WheelOn.turnInPlan(
                axle, ROLL, left.centreX - right.centreX, left.centreY - right.centreY, left.centreZ - right.centreZ);
        double steer = -given.stance().track() / 2 * byRoll;
        return given.stance().end() == End.REAR ? steer : -steer;
    }

    /** 1 + mean over both wheels of d(lean to the right against the body)/dφ. */
    public double rollCamber() {
        double half = -given.stance().track() / 2;
        return 1 + half * (-left.camberBy(ROLL) + right.camberBy(ROLL)) / 2;
    }

    /** −w_x/w_z in heave at the middle of both contact points. */
    public double contactSideSlope() {
        return sideSlope(
                middle(left.contactX, right.contactX),
                middle(left.contactY, right.contactY),
                middle(left.contactZ, right.contactZ));
    }

    /** The same at the middle of both wheel centres. */
    public double wheelSideSlope() {
        return sideSlope(
                middle(left.centreX, right.centreX),
                middle(left.centreY, right.centreY),
                middle(left.centreZ, right.centreZ));
    }

    private double sideSlope(double x, double y, double z) {
        return -axle.speedX(HEAVE, x, y, z) / axle.speedZ(HEAVE, x, y, z);
    }

    /** How far the middle of both contact points goes forwards in roll: left wheel up by one, right one down by one. */
    public double contactTurn() {
        return axle.speedX(
                ROLL,
                middle(left.contactX, right.contactX),
                middle(left.contactY, right.contactY),
                middle(left.contactZ, right.contactZ));
    }

    /** The same of the middle of both wheel centres. */
    public double wheelTurn() {
        return axle.speedX(
                ROLL,
                middle(left.centreX, right.centreX),
                middle(left.centreY, right.centreY),
                middle(left.centreZ, right.centreZ));
    }

    @Override
    WheelMounts mounts(Side side) {
        return side == Side.LEFT ? leftMounts : rightMounts;
    }

    /** −d(length of the coil), this wheel up by one and the other down by one; only where the springs have points. */
    public double springRollRatio(Side side) {
        return side.sign() * mounts(side).springRatio(ROLL);
    }

    @Override
    public OptionalDouble crank() {
        return pose.hasCrank() ? OptionalDouble.of(pose.crank()) : OptionalDouble.empty();
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
        return pose.worstError();
    }

    /** Whether more links hold the axle than a rigid one could move on, so that their rates count. */
    public boolean overConstrained() {
        return pose.overConstrained();
    }

    /** Energy that the rods hold in the present pose, J. */
    public double bindEnergy() {
        return pose.bindEnergy();
    }

    /** Slope of that energy over heave, N. */
    public double bindForce() {
        return pose.bindByHeave();
    }

    /** Slope of that energy, left wheel up by one and right one down by one, N. */
    public double bindByRoll() {
        return pose.bindByRoll();
    }

    /** d²E/du², N/m. */
    public double bindHeaveRate() {
        return pose.bindHeaveRate();
    }

    /** d²E/dφ², N·m/rad: φ lowers the left wheel and lifts the right one by t/2. */
    public double bindRollStiffness() {
        double half = given.stance().track() / 2;
        return half * half * pose.bindRollRate();
    }

    /** Pose below the figures, for those who look at rods. */
    LiveAxlePose pose() {
        return pose;
    }

    @Override
    public AxleState state() {
        double atContact = contactSideSlope();
        double atWheel = wheelSideSlope();
        End end = given.stance().end();
        SideView car = given.sideView();
        return new AxleState(
                pose.leftTravel(),
                pose.rightTravel(),
                Optional.empty(),
                track(),
                OptionalDouble.of(heightOfRollCentre()),
                OptionalDouble.of(0),
                rollSteer(),
                rollCamber(),
                SideForces.antiDive(end, car, atContact, atWheel),
                SideForces.antiLift(end, car, atContact, atWheel, atContact),
                SideForces.antiSquat(end, car, atContact),
                figures(left, leftMounts),
                figures(right, rightMounts),
                Optional.of(live(atContact, atWheel)));
    }

    private AxleState.LiveFigures live(double atContact, double atWheel) {
        double turn = axle.spinY(HEAVE);
        double x = middle(left.centreX, right.centreX);
        double y = middle(left.centreY, right.centreY);
        double z = middle(left.centreZ, right.centreZ);
        boolean swings = Math.abs(turn) >= NO_TURN;
        double towardsMiddle = given.stance().end() == End.REAR ? 1 : -1;
        return new AxleState.LiveFigures(
                forceLine,
                axleSteer(),
                sideShift(),
                foreAft(),
                axlePitch(),
                atContact,
                atWheel,
                swings ? OptionalDouble.of(towardsMiddle * axle.speedZ(HEAVE, x, y, z) / turn) : OptionalDouble.empty(),
                swings
                        ? OptionalDouble.of(
                                z - axle.speedX(HEAVE, x, y, z) / turn - middle(left.contactZ, right.contactZ))
                        : OptionalDouble.empty(),
                crank(),
                shaft.map(ShaftLine::figures));
    }

    private static AxleState.WheelFigures figures(WheelOn wheel, WheelMounts mounts) {
        double own = wheel.sigma; // roll lifts the left wheel
        return new AxleState.WheelFigures(
                wheel.toe(),
                wheel.camber(),
                given(mounts.hasSpring(), () -> mounts.springLength()),
                given(mounts.hasSpring(), () -> mounts.springRatio(HEAVE)),
                given(mounts.hasSpring(), () -> own * mounts.springRatio(ROLL)),
                given(mounts.hasDamper(), () -> mounts.damperLength()),
                given(mounts.hasDamper(), () -> mounts.damperRatio(HEAVE)),
                given(mounts.hasDamper(), () -> own * mounts.damperRatio(ROLL)),
                given(mounts.hasBar(), () -> mounts.barRatio(HEAVE)),
                given(mounts.hasBar(), () -> mounts.barRatio(ROLL)),
                given(mounts.hasBar(), () -> mounts.barTurn()),
                given(mounts.hasEyes(), () -> mounts.upperEye()),
                given(mounts.hasEyes(), () -> mounts.lowerEye()),
                Optional.empty());
    }

    static OptionalDouble given(boolean there, java.util.function.DoubleSupplier value) {
        return there ? OptionalDouble.of(value.getAsDouble()) : OptionalDouble.empty();
    }
}
