package evenhand.turn;

import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.SideView.BrakesAt;
import evenhand.geometry.Linear;
import evenhand.suspension.AxleSuspension;
import evenhand.suspension.LinesOfAction;
import java.util.Optional;

/**
 * One axle of the turn: what its two wheels, its springs and its stops do at given unknowns, and the slopes of all that
 * over what the axle feels. {@link #at} sets the fields and allocates nothing.
 *
 * <p>Left turn, axes ISO 8855. Slopes are arrays over {@link #STEER} to {@link #CURVATURE}: the axle's eight unknowns,
 * and the curvature of the path, which is given but whose slope tells whether the car holds its bend ({@link Branch}).
 */
final class AxleInTurn {
    static final int STEER = 0;
    static final int SIDESLIP = 1;
    static final int DRIVE = 2;
    static final int HEAVE = 3;
    static final int ROLL = 4;
    static final int LEFT_RISE = 5;
    static final int RIGHT_RISE = 6;
    static final int COMPLIANCE = 7;
    static final int CURVATURE = 8;
    static final int UNKNOWNS = 9;

    final WheelInTurn left;
    final WheelInTurn right;

    /** Sums over both wheels along the car's axes, N and N·m, and their slopes. */
    double forwardForce;

    double sideForce;
    double yawMoment;
    double aligningMoment;
    final double[] forwardForceBy = new double[UNKNOWNS];
    final double[] sideForceBy = new double[UNKNOWNS];
    final double[] yawMomentBy = new double[UNKNOWNS];
    final double[] aligningMomentBy = new double[UNKNOWNS];
    final double[] sideForceDifferenceBy = new double[UNKNOWNS]; // left less right
    double forwardForceDifference;
    final double[] forwardForceDifferenceBy = new double[UNKNOWNS];
    /** What of the forward forces acts at the contact points: the torque that the axle itself reacts. Sum, and left less right. */
    double reacted;

    final double[] reactedBy = new double[UNKNOWNS];
    double reactedDifference;
    final double[] reactedDifferenceBy = new double[UNKNOWNS];

    /** Upward push of springs, stops and jacking on the body, N; moment of springs, stops and bar, N·m. */
    double bodyForce;

    double bodyMoment;
    final double[] bodyForceBy = new double[UNKNOWNS];
    final double[] bodyMomentBy = new double[UNKNOWNS];

    /** Tyre loads, N: their sum, and right less left from rest. */
    double loads;

    double loadDifference;
    final double[] loadsBy = new double[UNKNOWNS];
    final double[] loadDifferenceBy = new double[UNKNOWNS];

    /** Roll centre above the ground, m; suspension roll and tyre tilt, rad; mean travel, m. */
    double rollCentre;

    double suspensionRoll;
    double tyreTilt;
    double travel;
    private double rise; // of the wheels, mean, m
    final double[] rollCentreBy = new double[UNKNOWNS];

    /** What the links alone steer, rad, understeer positive; of wheels by points it is in the wheels' own steer. */
    double linkSteer;

    final double[] linkSteerBy = new double[UNKNOWNS];
    final double[] suspensionRollBy = new double[UNKNOWNS];
    final double[] tyreTiltBy = new double[UNKNOWNS];

    /** Which pieces of springs, stops, contact and differential hold: it changes where a slope jumps. */
    long pieces;

    final Alignment alignment;
    /** Where forces reach the body. */
    final LinesOfAction linesOfAction;
    /** The rest of it where links are known by points: where each wheel's force line runs, and lift. */
    final Optional<LinesByPoints> lines;
    /** Whether forces along the car lift the body: the side view of its links is known. */
    final boolean hasSideView;
    /** Whether the axle reacts the torque of drive, and of its brakes; else the body does, by shafts. */
    final boolean reactsDrive;

    final boolean reactsBrakes;
    /** The brakes where they are on. */
    final Optional<BrakesInTurn> brakes;

    private final Linear geometry;
    final double camberThrustRatio;
    final double halfTrack;
    /** Mass on its springs and below them, kg; height of the latter, m. */
    final double sprungMass;

    final double unsprungMass;
    final double unsprungHeight;
    final AxleSuspension suspension;

    private final boolean live;
    private final double track;
    private final double restDifference; // right less left at rest, N
    private final Differential differential;

    AxleInTurn(Car car, End end, double radius, Along along) {
        Axle axle = car.axle(end);
        double offset = car.cgLeftOfMiddle();
        suspension = AxleSuspension.of(car, end);
        left = new WheelInTurn(car, end, Side.LEFT, suspension, offset, radius);
        right = new WheelInTurn(car, end, Side.RIGHT, suspension, offset, radius);
        live = axle instanceof Axle.Live;
        track = axle.track();
        halfTrack = track / 2;
        alignment = axle.alignment();
        camberThrustRatio = axle.tyre().lateral().camberThrustRatio();
        geometry = axle.geometry();
        linesOfAction = LinesOfAction.of(axle, end, suspension);
        hasSideView = axle.motion().isPresent() || axle.reaction().swingArm().isPresent();
        lines = axle.motion().map(motion -> LinesByPoints.of(motion, this));
        reactsDrive = live;
        reactsBrakes = live || axle.reaction().brakesAt() == BrakesAt.WHEELS;
        brakes = along.byBrakes() ? Optional.of(new BrakesInTurn(car, end)) : Optional.empty();
        restDifference = right.restLoad - left.restLoad;
        sprungMass = car.sprung().mass() * car.sprung().share(end);
        unsprungMass = axle.unsprung().mass();
        unsprungHeight = axle.unsprung().height();
        differential = new Differential(car, end, left, right);
        suspensionRollBy[ROLL] = 1;
        suspensionRollBy[LEFT_RISE] = -1 / track;
        suspensionRollBy[RIGHT_RISE] = 1 / track;
        tyreTiltBy[LEFT_RISE] = 1 / track;
        tyreTiltBy[RIGHT_RISE] = -1 / track;
        if (lines.isEmpty()) {
            double perBump = geometry.rollCentreByTravel();
            rollCentreBy[HEAVE] = -perBump;
            rollCentreBy[LEFT_RISE] = (perBump + 1) / 2;
            rollCentreBy[RIGHT_RISE] = (perBump + 1) / 2;
            for (int i = HEAVE; i <= RIGHT_RISE; i++) {
                linkSteerBy[i] = geometry.rollSteer() * suspensionRollBy[i];
            }
        }
    }

    /**
     * Sets all fields.
     *
     * @return false where a wheel is asked for more drive or drag than its friction, or the links do not reach: there is no
     *     such state
     */
    boolean at(
            double steer,
            double sideslip,
            double drive,
            double heave,
            double roll,
            double leftRise,
            double rightRise,
            double compliance) {
        kinematics(heave, roll, leftRise, rightRise);
        if (lines.isPresent() && lines.get().beyondReach(steer) > 0) {
            return false;
        }
        tyreLoads(leftRise, rightRise);
        double cos = Math.cos(sideslip);
        double sin = Math.sin(sideslip);
        left.roll(travel, suspensionRoll, roll, tyreTilt, steer, compliance, cos, sin);
        right.roll(travel, suspensionRoll, roll, tyreTilt, steer, compliance, cos, sin);
        if (lines.isPresent()) {
            lines.get().read(rise);
        }
        if (brakes.isPresent() && drive < 0) {
            return false; // nothing but brakes is asked, and they do not push
        }
        boolean isBraked = brakes.isPresent();
        if (!differential.share(isBraked ? 0 : drive, sin)) {
            return false;
        }
        int shared = isBraked ? brake(drive) : differential.piece;
        clear();
        if (!left.pull(differential.leftShare, differential.leftShareBy, this)
                || !right.pull(differential.rightShare, differential.rightShareBy, this)) {
            return false;
        }
        suspension.at(travel, suspensionRoll, rollCentre);
        pieces = (left.load > 0 ? 1L : 0) + (right.load > 0 ? 2 : 0) + shared + 16 * suspension.pieces;
        forcesOnTheBody();
        if (lines.isPresent()) {
            lines.get().liftTheBody();
        } else if (hasSideView) {
            liftInSideView();
        }
        return true;
    }

    /** Lets the brakes work instead of the drive; which piece of theirs holds. */
    private int brake(double effort) {
        differential.leftShareBy[DRIVE] = 0;
        differential.rightShareBy[DRIVE] = 0;
        brakes.orElseThrow().at(effort, travel);
        return brakes.orElseThrow().piece;
    }

    /**
     * Mean travel u = w − ζ, tyre tilt ψ = (w_L − w_R)/t, suspension roll φs = φ − ψ, and the roll centre's height
     * z = height + perBump·u + w; ζ and φ heave and roll of the body, w rise of the wheels (m, rad).
     */
    private void kinematics(double heave, double roll, double leftRise, double rightRise) {
        rise = (leftRise + rightRise) / 2;
        travel = rise - heave;
        tyreTilt = (leftRise - rightRise) / track;
        suspensionRoll = roll - tyreTilt;
        if (lines.isEmpty()) {
            rollCentre = geometry.rollCentreHeight(travel) + rise;
            linkSteer = geometry.steer(suspensionRoll);
        }
    }

    /** Tyre loads, their sum and the difference that the turn makes: twice the lateral load transfer, N. */
    private void tyreLoads(double leftRise, double rightRise) {
        left.stand(leftRise);
        right.stand(rightRise);
        loads = left.load + right.load;
        loadDifference = right.load - left.load - restDifference;
        loadsBy[LEFT_RISE] = left.loadByRise;
        loadsBy[RIGHT_RISE] = right.loadByRise;
        loadDifferenceBy[LEFT_RISE] = -left.loadByRise;
        loadDifferenceBy[RIGHT_RISE] = right.loadByRise;
    }

    private void clear() {
        forwardForce = 0;
        sideForce = 0;
        yawMoment = 0;
        aligningMoment = 0;
        forwardForceDifference = 0;
        reacted = 0;
        reactedDifference = 0;
        for (int i = 0; i < UNKNOWNS; i++) {
            forwardForceDifferenceBy[i] = 0;
            reactedBy[i] = 0;
            reactedDifferenceBy[i] = 0;
            forwardForceBy[i] = 0;
            sideForceBy[i] = 0;
            yawMomentBy[i] = 0;
            aligningMomentBy[i] = 0;
            sideForceDifferenceBy[i] = 0;
        }
    }

    /**
     * What springs, stops and bar do to the body, and the jacking of an independent axle's force lines:
     * Σ V_j = −(2z/t)·(Fy_L − Fy_R), N. A live axle's side force acts at its roll centre and does not jack.
     */
    private void forcesOnTheBody() {
        bodyForce = suspension.force;
        bodyMoment = suspension.moment;
        double difference = sideForceDifference();
        double lift = live ? 0 : -2 / track;
        bodyForce += lift * rollCentre * difference;
        for (int i = 0; i < UNKNOWNS; i++) {
            double travelI = i == HEAVE ? -1 : (i == LEFT_RISE || i == RIGHT_RISE) ? 0.5 : 0;
            double rollI = suspensionRollBy[i];
            double centreI = rollCentreBy[i];
            bodyForceBy[i] = suspension.forceByTravel * travelI
                    + suspension.forceByRoll * rollI
                    + suspension.forceByRollCentre * centreI
                    + lift * (centreI * difference + rollCentre * sideForceDifferenceBy[i]);
            bodyMomentBy[i] = suspension.momentByTravel * travelI
                    + suspension.momentByRoll * rollI
                    + suspension.momentByRollCentre * centreI;
        }
    }

    /**
     * What forces along the car lift and turn by the swing arm that is known of the axle: what it reacts at the contact points,
     * the rest at the wheel centres; a live axle in its middle, wheels of their own each at half the track.
     *
     * <pre>
     *   lift    s_w·(ΣFx − ΣA) + s_c·ΣA
     *   moment  −(t/2)·[s_w·(Fx_L − Fx_R) + (s_c − s_w)·(A_L − A_R)]  against the roll, wheels of their own alone
     * </pre>
     * A what is {@link #reacted}, N.
     */
    private void liftInSideView() {
        double atWheel = linesOfAction.wheel.value;
        double more = linesOfAction.contact.value - atWheel;
        double turning = live ? 0 : -halfTrack;
        bodyForce += atWheel * forwardForce + more * reacted;
        bodyMoment += turning * (atWheel * forwardForceDifference + more * reactedDifference);
        for (int i = 0; i < UNKNOWNS; i++) {
            bodyForceBy[i] += atWheel * forwardForceBy[i] + more * reactedBy[i];
            bodyMomentBy[i] += turning * (atWheel * forwardForceDifferenceBy[i] + more * reactedDifferenceBy[i]);
        }
    }

    /** Left less right, N. */
    double sideForceDifference() {
        return left.sideForce - right.sideForce;
    }

    /** What wheels known by points steer with their travel, understeer positive, along a direction of the unknowns, rad. */
    double bumpSteerAlong(End end, double[] way) {
        if (lines.isEmpty()) {
            return 0;
        }
        double[] by = new double[UNKNOWNS];
        for (int i = HEAVE; i <= RIGHT_RISE; i++) {
            by[i] = lines.get().bumpSteerBy(i);
        }
        return Equilibrium.along(by, end, way);
    }

    /** How many states {@link #pieces} can tell apart. */
    long pieceCount() {
        return 16 * suspension.pieceCount();
    }

    WheelInTurn wheel(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Lateral load transfer: what the outer wheel has gained over rest and the inner one lost, (outer − inner)/2, N. */
    double lateralLoadTransfer() {
        return loadDifference / 2;
    }

    /** Force that links and locator carry between axle and body: Y = ΣFy − mu·ay, N; ay across the car, m/s². */
    double linkForce(double acrossTheCar) {
        return sideForce - unsprungMass * acrossTheCar;
    }

    /** Grip used: side force over what loads, lean and drive allow, |ΣY|/Σ(D·e). */
    double gripUsed() {
        return Math.abs(left.lateralForce + right.lateralForce) / (left.available + right.available);
    }
}
