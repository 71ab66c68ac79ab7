package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.Arm;
import evenhand.car.links.CarriedOn;
import evenhand.car.links.LinkedWheels;
import evenhand.car.links.Strut;
import evenhand.car.links.TieRod;
import evenhand.car.links.WheelLinks;
import evenhand.linear.LinearSolve;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The pose of one upright under its links, its wheel centre held at a given height and the rack at a given travel.
 *
 * <p>Six unknowns of a rigid body; the height and five constraints: an arm is two rods, a strut's line, fixed to the
 * upright, passes through its top (two). Newton's method from the neighbouring pose, by the rules of {@link LiveAxlePose}.
 * Nothing is allocated per pose. One per thread.
 */
final class WheelPose {
    /** Rise of the wheel centre by one, the rack held; travel of the rack to the left by one, the wheel held. */
    static final int TRAVEL = 0;

    static final int RACK = 1;

    private static final int SIZE = 6;
    private static final double SHORTEST_STEP = LiveAxlePose.STEP / 32;

    final Side side;
    final Part upright;
    final Part lowerArm;
    final Optional<Part> upperArm;
    private final WheelPlace wheel;
    private final double down;

    private final ArmTurn lowerTurn;
    private final Optional<ArmTurn> upperTurn;
    private final int rodCount;
    private final Place[] bodyEnds;
    private final Place[] uprightEnds;
    private final double[] lengths;

    // the tie rod is the last of the rods
    private final TieRod tieRod;
    private final int tie;
    private final Place inner;
    private final double swingX; // from the swing's pivot to the inner end, m
    private final double swingY;
    private double innerX;
    private double innerY;
    private double innerXByRack;
    private double innerYByRack;
    private double madeLonger;

    // strut
    private final boolean strut;
    private final Place top;
    private final Place bottom;
    private final Place squareOne;
    private final Place squareTwo;

    // kingpin: lower ball joint, and the upper one on the upright or the strut's top on the body
    private final Place lowerBall;
    private final Place upperBall;

    private double height; // rise over what was measured, m
    private double rack;
    private double restHeight;
    private int signAtRest;

    private final LinearSolve elimination = new LinearSolve(SIZE);
    private final double[] slopes = new double[SIZE * SIZE];
    private final double[] errors = new double[SIZE];
    private final double[] step = new double[SIZE];
    private final double[] tangents = new double[2 * SIZE];
    private final double[] kept = new double[Part.POSE + 3];
    private final double[] origin = new double[Part.POSE + 3];
    private final double[] keptAtRest = new double[Part.POSE + 3];

    WheelPose(LinkedWheels given, Side side) {
        this.side = side;
        wheel = WheelPlace.of(given.stance(), side);
        down = given.stance().cameDown();
        upright =
                new Part(wheel.centre().x(), wheel.centre().y(), wheel.centre().z());
        WheelLinks links = given.links();
        Arm lower = links.lowerArm().of(side);
        tieRod = links.tieRod().of(side);
        lowerTurn = new ArmTurn(lower, side);
        lowerArm = lowerTurn.arm;
        lowerBall = Place.of(lower.outer(), side);
        Optional<Arm> upper = links instanceof WheelLinks.DoubleWishbone wishbone
                ? Optional.of(wishbone.upperArm().of(side))
                : Optional.empty();
        Optional<Strut> strutGiven = strutOf(given, side);
        strut = strutGiven.isPresent();
        upperTurn = upper.map(arm -> new ArmTurn(arm, side));
        upperArm = upperTurn.map(turn -> turn.arm);
        rodCount = upper.isPresent() ? 5 : 3;
        tie = rodCount - 1;
        bodyEnds = new Place[rodCount];
        uprightEnds = new Place[rodCount];
        bodyEnds[0] = Place.of(lower.front(), side);
        bodyEnds[1] = Place.of(lower.rear(), side);
        uprightEnds[0] = lowerBall;
        uprightEnds[1] = lowerBall;
        if (upper.isPresent()) {
            Arm arm = upper.get();
            bodyEnds[2] = Place.of(arm.front(), side);
            bodyEnds[3] = Place.of(arm.rear(), side);
            uprightEnds[2] = Place.of(arm.outer(), side);
            uprightEnds[3] = uprightEnds[2];
        }
        inner = Place.of(tieRod.inner(), side);
        bodyEnds[tie] = inner;
        uprightEnds[tie] = Place.of(tieRod.outer(), side);
        lengths = new double[rodCount];
        for (int r = 0; r < rodCount; r++) {
            lengths[r] = bodyEnds[r].distanceTo(uprightEnds[r]);
        }
        swingX = tieRod.swing().map(s -> inner.x() - s.ahead()).orElse(0.0);
        swingY = tieRod.swing().map(s -> inner.y() - side.sign() * s.out()).orElse(0.0);
        if (strutGiven.isPresent()) {
            top = Place.of(strutGiven.get().top(), side);
            bottom = Place.of(strutGiven.get().bottom(), side);
            Place line = top.minus(bottom).unit();
            squareOne = line.cross(new Place(1, 0, 0)).unit();
            squareTwo = line.cross(squareOne);
            upperBall = top;
        } else {
            top = lowerBall;
            bottom = lowerBall;
            squareOne = lowerBall;
            squareTwo = lowerBall;
            upperBall = uprightEnds[2];
        }
    }

    static Optional<Strut> strutOf(LinkedWheels given, Side side) {
        return given.links() instanceof WheelLinks.StrutAndArm strutAndArm
                ? Optional.of(strutAndArm.strut().of(side))
                : Optional.empty();
    }

    WheelPlace wheel() {
        return wheel;
    }

    /** An arm as a part that turns about the line through its pivots, led by its outer ball joint. */
    private static final class ArmTurn {
        final Part arm;
        private final Place axis;
        private final Place pivot;
        private final Place radius; // from the axis to the ball joint, as measured
        private final Place ahead; // square to axis and radius
        private final Place outer;

        ArmTurn(Arm given, Side side) {
            pivot = Place.of(given.front(), side);
            axis = Place.of(given.rear(), side).minus(pivot).unit();
            outer = Place.of(given.outer(), side);
            Place from = outer.minus(pivot);
            radius = from.plus(-from.dot(axis), axis);
            ahead = axis.cross(radius);
            arm = new Part(pivot.x(), pivot.y(), pivot.z());
        }

        /** Follows the ball joint: turn θ = atan2(ρ·(e × ρ0), ρ·ρ0); angular velocity e·((e × ρ)·w)/ρ². */
        void follow(Part upright) {
            double x = upright.placeX(outer.x(), outer.y(), outer.z());
            double y = upright.placeY(outer.x(), outer.y(), outer.z());
            double z = upright.placeZ(outer.x(), outer.y(), outer.z());
            double dx = x - pivot.x();
            double dy = y - pivot.y();
            double dz = z - pivot.z();
            double along = dx * radius.x() + dy * radius.y() + dz * radius.z();
            double across = dx * ahead.x() + dy * ahead.y() + dz * ahead.z();
            arm.turnTo(Math.atan2(across, along), axis.x(), axis.y(), axis.z());
            double ax = axis.y() * dz - axis.z() * dy; // e × ρ
            double ay = axis.z() * dx - axis.x() * dz;
            double az = axis.x() * dy - axis.y() * dx;
            double square = ax * ax + ay * ay + az * az;
            for (int motion = 0; motion < Part.MOTIONS; motion++) {
                double rate = (ax * upright.speedX(motion, x, y, z)
                                + ay * upright.speedY(motion, x, y, z)
                                + az * upright.speedZ(motion, x, y, z))
                        / square;
                arm.twist(motion, 0, 0, 0, rate * axis.x(), rate * axis.y(), rate * axis.z());
            }
        }
    }

    /**
     * Place of the tie rod's inner end: left with the rack, or round its swing's pivot by the angle ψ = rack/ρ_x, ρ from the
     * pivot to the inner end as measured.
     */
    private void rackTo(double travel) {
        rack = travel;
        if (tieRod.swing().isEmpty()) {
            innerX = inner.x();
            innerY = inner.y() + travel;
            innerXByRack = 0;
            innerYByRack = 1;
            return;
        }
        double angle = travel / swingX;
        double cosine = Math.cos(angle);
        double sine = Math.sin(angle);
        double x = cosine * swingX - sine * swingY;
        double y = sine * swingX + cosine * swingY;
        innerX = inner.x() - swingX + x;
        innerY = inner.y() - swingY + y;
        innerXByRack = -y / swingX;
        innerYByRack = x / swingX;
    }

    private double system() {
        Arrays.fill(slopes, 0);
        slopes[2] = 1; // the wheel centre is the reference point
        errors[0] = upright.z - wheel.centre().z() - height;
        for (int r = 0; r < rodCount; r++) {
            rod(r);
        }
        if (strut) {
            slide(rodCount + 1, squareOne);
            slide(rodCount + 2, squareTwo);
        }
        System.arraycopy(slopes, 0, elimination.matrix, 0, slopes.length);
        double worst = 0;
        for (int row = 0; row < SIZE; row++) {
            step[row] = -errors[row];
            worst = Math.max(worst, Math.abs(errors[row]));
        }
        return worst;
    }

    /** A rod of length l between B on the body and A on the upright: |A − B| − l = 0, slopes n and r × n. */
    private void rod(int r) {
        Place body = bodyEnds[r];
        Place end = uprightEnds[r];
        double bx = r == tie ? innerX : body.x();
        double by = r == tie ? innerY : body.y();
        double rx = armX(end);
        double ry = armY(end);
        double rz = armZ(end);
        double dx = upright.x + rx - bx;
        double dy = upright.y + ry - by;
        double dz = upright.z + rz - body.z();
        double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
        double nx = dx / length;
        double ny = dy / length;
        double nz = dz / length;
        int at = (r + 1) * SIZE;
        slopes[at] = nx;
        slopes[at + 1] = ny;
        slopes[at + 2] = nz;
        slopes[at + 3] = ry * nz - rz * ny;
        slopes[at + 4] = rz * nx - rx * nz;
        slopes[at + 5] = rx * ny - ry * nx;
        errors[r + 1] = length - lengths[r] - (r == tie ? madeLonger : 0);
    }

    /** The strut's top stays on the line fixed to the upright: N·(T − B) = 0, N square to the line and turned with it. */
    private void slide(int row, Place square) {
        double nx = upright.turnedX(square.x(), square.y(), square.z());
        double ny = upright.turnedY(square.x(), square.y(), square.z());
        double nz = upright.turnedZ(square.x(), square.y(), square.z());
        double tx = top.x() - upright.x;
        double ty = top.y() - upright.y;
        double tz = top.z() - upright.z;
        int at = row * SIZE;
        slopes[at] = -nx;
        slopes[at + 1] = -ny;
        slopes[at + 2] = -nz;
        slopes[at + 3] = ny * tz - nz * ty;
        slopes[at + 4] = nz * tx - nx * tz;
        slopes[at + 5] = nx * ty - ny * tx;
        errors[row] = nx * (tx - armX(bottom)) + ny * (ty - armY(bottom)) + nz * (tz - armZ(bottom));
    }

    private double armX(Place point) {
        return upright.turnedX(
                point.x() - upright.measuredX, point.y() - upright.measuredY, point.z() - upright.measuredZ);
    }

    private double armY(Place point) {
        return upright.turnedY(
                point.x() - upright.measuredX, point.y() - upright.measuredY, point.z() - upright.measuredZ);
    }

    private double armZ(Place point) {
        return upright.turnedZ(
                point.x() - upright.measuredX, point.y() - upright.measuredY, point.z() - upright.measuredZ);
    }

    private boolean settle() {
        for (int i = 0; i < LiveAxlePose.MOST_STEPS; i++) {
            double worst = system();
            if (!(worst < 1)) {
                return false;
            }
            int sign = elimination.factor();
            if (sign == 0) {
                return false;
            }
            if (worst < LiveAxlePose.TOLERANCE) {
                if (sign != signAtRest) {
                    return false;
                }
                tangents();
                return true;
            }
            elimination.solve(step);
            if (!(turnOf(step, 0) <= LiveAxlePose.LARGEST_TURN)) {
                return false;
            }
            upright.move(step[0], step[1], step[2], step[3], step[4], step[5]);
        }
        return false;
    }

    private static double turnOf(double[] move, int at) {
        return Math.sqrt(move[at + 3] * move[at + 3] + move[at + 4] * move[at + 4] + move[at + 5] * move[at + 5]);
    }

    /** Twists of travel and of the rack, by the matrix at the solution, and the arms that follow. */
    private void tangents() {
        int at = (tie + 1) * SIZE;
        double byRack = slopes[at] * innerXByRack + slopes[at + 1] * innerYByRack;
        for (int motion = 0; motion < 2; motion++) {
            Arrays.fill(step, 0);
            step[motion == TRAVEL ? 0 : tie + 1] = motion == TRAVEL ? 1 : byRack;
            elimination.solve(step);
            System.arraycopy(step, 0, tangents, motion * SIZE, SIZE);
            upright.twist(motion, step[0], step[1], step[2], step[3], step[4], step[5]);
        }
        lowerTurn.follow(upright);
        if (upperTurn.isPresent()) {
            upperTurn.get().follow(upright);
        }
    }

    /** Solves the pose as measured, whose determinant's sign is kept; false where it is singular. */
    boolean measured() {
        rackTo(0);
        system();
        signAtRest = elimination.factor();
        if (signAtRest != 0) {
            tangents();
        }
        return signAtRest != 0 && Double.isFinite(tangents[0]);
    }

    /** Slopes of the constraints over the unknowns at the present pose. */
    double[][] constraintSlopes() {
        system();
        double[][] rows = new double[SIZE][];
        for (int row = 0; row < SIZE; row++) {
            rows[row] = Arrays.copyOfRange(slopes, row * SIZE, (row + 1) * SIZE);
        }
        return rows;
    }

    /** Goes to rest: the tie rod made longer with the wheel held, then the body let down, both in steps. */
    Reach toRest() {
        double longer = tieRod.rod().longer();
        double done = 0;
        double stride = longer == 0 ? 1 : Math.min(1, LiveAxlePose.STEP / Math.abs(longer));
        while (longer != 0 && done < 1) {
            keep(kept);
            double next = 1 - done <= stride * (1 + 1e-9) ? 1 : done + stride;
            madeLonger = next * longer;
            if (settle()) {
                done = next;
            } else {
                restore(kept);
                settle();
                stride /= 2;
                if (stride * Math.abs(longer) < 1e-7) {
                    return new Reach(Reach.Stage.LONGER, done);
                }
            }
        }
        done = 0;
        stride = 1;
        while (down != 0 && done < 1) {
            double next = Math.min(1, done + stride);
            if (moveToHeight(next * down, 0)) {
                done = next;
            } else {
                stride /= 2;
                if (stride * Math.abs(down) < 1e-7) {
                    return new Reach(Reach.Stage.DOWN, done * down);
                }
            }
        }
        restHeight = down;
        keep(keptAtRest);
        return new Reach(Reach.Stage.REST, 0);
    }

    /** Back to rest, straight ahead. */
    void rest() {
        restore(keptAtRest);
        settle();
    }

    /** Moves to a travel from rest and a rack travel, m; false, and the pose as it was, where the links do not reach. */
    boolean moveTo(double travel, double rackTravel) {
        return moveToHeight(restHeight + travel, rackTravel);
    }

    private boolean moveToHeight(double heightTo, double rackToTravel) {
        double heightFrom = height;
        double rackFrom = rack;
        double way = Math.max(Math.abs(heightTo - heightFrom), Math.abs(rackToTravel - rackFrom));
        if (way == 0) {
            return true;
        }
        double longest = Math.min(1, LiveAxlePose.STEP / way);
        double shortest = Math.min(longest, SHORTEST_STEP / way);
        keep(origin);
        double done = 0;
        double stride = longest;
        while (done < 1) {
            double next = 1 - done <= stride * (1 + 1e-9) ? 1 : done + stride;
            keep(kept);
            double fromHeight = height;
            double fromRack = rack;
            height = next == 1 ? heightTo : heightFrom + next * (heightTo - heightFrom);
            rackTo(next == 1 ? rackToTravel : rackFrom + next * (rackToTravel - rackFrom));
            alongTangent(height - fromHeight, rack - fromRack);
            if (settle()) {
                done = next;
                stride = Math.min(longest, 2 * stride);
            } else {
                restore(kept);
                settle();
                if (stride <= shortest) {
                    restore(origin);
                    settle();
                    return false;
                }
                stride = Math.max(shortest, stride / 2);
            }
        }
        return true;
    }

    private void alongTangent(double byTravel, double byRack) {
        for (int u = 0; u < SIZE; u++) {
            step[u] = byTravel * tangents[u] + byRack * tangents[SIZE + u];
        }
        if (turnOf(step, 0) <= LiveAxlePose.LARGEST_TURN) {
            upright.move(step[0], step[1], step[2], step[3], step[4], step[5]);
        }
    }

    private void keep(double[] pose) {
        upright.keep(pose, 0);
        pose[Part.POSE] = height;
        pose[Part.POSE + 1] = rack;
        pose[Part.POSE + 2] = madeLonger;
    }

    private void restore(double[] pose) {
        upright.restore(pose, 0);
        height = pose[Part.POSE];
        rackTo(pose[Part.POSE + 1]);
        madeLonger = pose[Part.POSE + 2];
    }

    double travel() {
        return height - restHeight;
    }

    double rack() {
        return rack;
    }

    /** Largest error of a constraint at the present pose, m. */
    double worstError() {
        return system();
    }

    /** Direction of the kingpin from the lower ball joint up, not a unit vector, and the lower ball joint. */
    void kingpin(double[] axis) {
        Place low = lowerBall;
        axis[3] = upright.placeX(low.x(), low.y(), low.z());
        axis[4] = upright.placeY(low.x(), low.y(), low.z());
        axis[5] = upright.placeZ(low.x(), low.y(), low.z());
        Place up = upperBall;
        axis[0] = (strut ? up.x() : upright.placeX(up.x(), up.y(), up.z())) - axis[3];
        axis[1] = (strut ? up.y() : upright.placeY(up.x(), up.y(), up.z())) - axis[4];
        axis[2] = (strut ? up.z() : upright.placeZ(up.x(), up.y(), up.z())) - axis[5];
    }

    /** Arms, upright, strut and tie rod as lines. */
    void draw(List<AxleLines.Line> lines) {
        Place low = upright.placeOf(lowerBall);
        arm(lines, "lowerArm", bodyEnds[0], bodyEnds[1], low);
        Place centre = new Place(upright.x, upright.y, upright.z);
        lines.add(upright(low, centre));
        if (strut) {
            Place foot = upright.placeOf(bottom);
            lines.add(upright(low, foot));
            lines.add(new AxleLines.Line(AxleLines.Kind.STRUT, AxleLines.on(side, "strut"), top, foot, true));
        } else {
            Place high = upright.placeOf(upperBall);
            arm(lines, "upperArm", bodyEnds[2], bodyEnds[3], high);
            lines.add(upright(centre, high));
        }
        double[] body = new double[3];
        double[] end = new double[3];
        tieRodEnds(body, end);
        Place from = new Place(body[0], body[1], body[2]);
        Place to = new Place(end[0], end[1], end[2]);
        lines.add(new AxleLines.Line(AxleLines.Kind.ROD, AxleLines.on(side, "tieRod"), from, to, true));
        lines.add(upright(centre, to));
        tieRod.swing().ifPresent(swing -> {
            Place swings = new Place(swing.ahead(), side.sign() * swing.out(), from.z());
            lines.add(new AxleLines.Line(AxleLines.Kind.RACK, AxleLines.on(side, "swing"), swings, from, true));
        });
    }

    private void arm(List<AxleLines.Line> lines, String name, Place front, Place rear, Place outer) {
        lines.add(new AxleLines.Line(AxleLines.Kind.ARM, AxleLines.on(side, name), front, outer, true));
        lines.add(new AxleLines.Line(AxleLines.Kind.ARM, AxleLines.on(side, name), rear, outer, true));
    }

    private AxleLines.Line upright(Place from, Place to) {
        return new AxleLines.Line(AxleLines.Kind.UPRIGHT, AxleLines.on(side, "upright"), from, to, false);
    }

    List<AxleJoints.ArmAt> armsAt() {
        AxleJoints.ArmAt lower = new AxleJoints.ArmAt(
                CarriedOn.LOWER_ARM,
                new AxleJoints.Frame(lowerArm),
                bodyEnds[0],
                bodyEnds[1],
                upright.placeOf(lowerBall));
        return strut
                ? List.of(lower)
                : List.of(
                        lower,
                        new AxleJoints.ArmAt(
                                CarriedOn.UPPER_ARM,
                                new AxleJoints.Frame(upperArm.orElseThrow()),
                                bodyEnds[2],
                                bodyEnds[3],
                                upright.placeOf(upperBall)));
    }

    Optional<AxleJoints.StrutAt> strutAt() {
        if (!strut) {
            return Optional.empty();
        }
        Place foot = upright.placeOf(bottom);
        Place along = foot.minus(top).unit();
        double slope = along.x() * upright.speedX(TRAVEL, foot.x(), foot.y(), foot.z())
                + along.y() * upright.speedY(TRAVEL, foot.x(), foot.y(), foot.z())
                + along.z() * upright.speedZ(TRAVEL, foot.x(), foot.y(), foot.z());
        return Optional.of(new AxleJoints.StrutAt(top, along, foot.distanceTo(top), -slope));
    }

    AxleJoints.RodAt tieRodAt() {
        return new AxleJoints.RodAt(
                AxleLines.on(side, "tieRod"),
                new Place(innerX, innerY, inner.z()),
                upright.placeOf(uprightEnds[tie]),
                tieRod.rod().rate(),
                0,
                AxleJoints.Pin.NONE);
    }

    TieRod tieRod() {
        return tieRod;
    }

    /** End of the tie rod on the body, and on the upright, now. */
    void tieRodEnds(double[] body, double[] wheelEnd) {
        body[0] = innerX;
        body[1] = innerY;
        body[2] = inner.z();
        Place end = uprightEnds[tie];
        wheelEnd[0] = upright.placeX(end.x(), end.y(), end.z());
        wheelEnd[1] = upright.placeY(end.x(), end.y(), end.z());
        wheelEnd[2] = upright.placeZ(end.x(), end.y(), end.z());
    }
}
