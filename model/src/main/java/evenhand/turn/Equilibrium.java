package evenhand.turn;

import evenhand.car.Air;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import java.util.Arrays;
import java.util.Optional;

/**
 * The balances of the steady turn and their slopes at given unknowns: a left turn on a circle of constant radius.
 *
 * <p>Unknowns stand in one array, {@link #STEER} to {@link #REAR_COMPLIANCE}, with the lateral acceleration behind them.
 * Each balance has its method below, which gives what is left over in it and its slopes in one pass, so they cannot drift
 * apart; rows are made free of units by the car's weight, so that one tolerance serves all. {@link #at} allocates nothing.
 * One per thread.
 *
 * <p>Components of the acceleration of the centre of gravity in car axes: ay = ac·cos β + al·sin β, ax = al·cos β − ac·sin β,
 * ac towards the middle, al along the path (zero in a steady turn), β the sideslip. With al the yaw acceleration is still taken as
 * zero: the car is asked for the moment at which its speed begins to change. The sprung mass stands as two parts above the axles, joined by the chassis. Small-angle kinematics for the
 * body, exact angles for steer, sideslip and slip; where no side-view geometry is known all longitudinal load transfer goes
 * through the springs. Axes ISO 8855. Source: Milliken &amp; Milliken 1995 ch. 5 and 18; Guiggiani 2018 ch. 3 and 6.
 */
final class Equilibrium {
    static final int STEER = 0;
    static final int SIDESLIP = 1;
    static final int DRIVE = 2;
    static final int FRONT_HEAVE = 3;
    static final int REAR_HEAVE = 4;
    static final int FRONT_ROLL = 5;
    static final int REAR_ROLL = 6;
    static final int FRONT_LEFT_RISE = 7;
    static final int FRONT_RIGHT_RISE = 8;
    static final int REAR_LEFT_RISE = 9;
    static final int REAR_RIGHT_RISE = 10;
    static final int FRONT_COMPLIANCE = 11;
    static final int REAR_COMPLIANCE = 12;
    static final int BALANCES = 13;
    /** The lateral acceleration stands behind the unknowns. */
    static final int ACCELERATION = 13;

    /** Unknowns and lateral acceleration: what a state is. */
    static final int COLUMNS = 14;

    /** Behind them in a row of slopes: the curvature of the path, 1/m, at constant lateral acceleration. */
    private static final int CURVATURE = 14;

    /** Length of a row of slopes. */
    static final int ROW = 15;

    /** Nearer than this to where links end is there, m or rad. */
    private static final double AT_THE_END = 1e-5;

    private static final int FORWARD = 0;
    private static final int SIDEWAYS = 1;
    private static final int YAW = 2;
    private static final int FRONT_BODY_HEAVE = 3;
    private static final int REAR_BODY_HEAVE = 4;
    private static final int FRONT_BODY_ROLL = 5;
    private static final int REAR_BODY_ROLL = 6;
    private static final int FRONT_AXLE_HEAVE = 7;
    private static final int REAR_AXLE_HEAVE = 8;
    private static final int FRONT_AXLE_ROLL = 9;
    private static final int REAR_AXLE_ROLL = 10;
    private static final int FRONT_COMPLIANCE_STEER = 11;
    private static final int REAR_COMPLIANCE_STEER = 12;

    /** Where an axle's unknowns stand, in the order of {@link AxleInTurn}. */
    private static final int[] FRONT_UNKNOWNS = {
        STEER, SIDESLIP, DRIVE, FRONT_HEAVE, FRONT_ROLL, FRONT_LEFT_RISE, FRONT_RIGHT_RISE, FRONT_COMPLIANCE, CURVATURE
    };

    private static final int[] REAR_UNKNOWNS = {
        STEER, SIDESLIP, DRIVE, REAR_HEAVE, REAR_ROLL, REAR_LEFT_RISE, REAR_RIGHT_RISE, REAR_COMPLIANCE, CURVATURE
    };

    /** What is left over in each balance, over the car's weight (forces) or its weight times one metre (moments). */
    final double[] left = new double[BALANCES];

    /** Slopes of {@link #left}, row by row over unknowns, lateral acceleration and curvature. */
    final double[] slopes = new double[BALANCES * ROW];

    final AxleInTurn front;
    final AxleInTurn rear;
    final double radius;
    final double frontShare;
    final double rearShare;
    final double weight;
    final double mass;
    /** Air drag over the lateral acceleration on this circle, N per m/s²: ½·ρ·dragArea·R, as V² = ac·R. */
    final double dragPerAcceleration;

    final double wheelbase;
    /** From the centre of gravity back to the rear axle, m. */
    final double cgToRear;

    private final double sprungHeight;
    private final double cgHeight;
    private final double dragHeight;
    private final double frontLiftPerAcceleration;
    private final double rearLiftPerAcceleration;
    private final double chassisStiffness; // N·m/rad, infinite: rigid
    private final double shaftTorquePerDrive; // m, sense included; zero without a driven live axle
    private final boolean frontDriven;

    // Of the state at hand: sideslip, acceleration across the car, drag.
    private double cos;
    private double sin;
    private double across; // ay, m/s²
    private double acrossBySideslip;
    private double drag; // N

    private final Car car;
    private final Along along;
    /** al, m/s². */
    private final double gain;

    /** The steady turn. */
    Equilibrium(Car car, double radius) {
        this(car, radius, Along.NONE);
    }

    Equilibrium(Car car, double radius, Along along) {
        this.car = car;
        this.radius = radius;
        this.along = along;
        gain = along.acceleration();
        front = new AxleInTurn(car, End.FRONT, radius, along);
        rear = new AxleInTurn(car, End.REAR, radius, along);
        mass = car.weights().mass();
        weight = mass * Weights.GRAVITY;
        wheelbase = car.wheelbase();
        cgToRear = car.wheelbase() - car.cgBehindFront();
        Car.Sprung sprung = car.sprung();
        sprungHeight = sprung.height();
        frontShare = sprung.frontShare();
        rearShare = sprung.rearShare();
        cgHeight = car.cgHeight();
        dragHeight = car.air().dragHeight().orElse(cgHeight);
        double pressurePerAcceleration = Air.DENSITY / 2 * radius;
        dragPerAcceleration = pressurePerAcceleration * car.air().dragArea();
        frontLiftPerAcceleration = pressurePerAcceleration * car.air().frontLiftArea();
        rearLiftPerAcceleration = pressurePerAcceleration * car.air().rearLiftArea();
        chassisStiffness = car.chassisTorsionalStiffness();
        frontDriven = car.drive().axle() == End.FRONT;
        shaftTorquePerDrive = car.shaftTorquePerDrive();
    }

    /** The same car on another circle. */
    Equilibrium onCircle(double otherRadius) {
        return new Equilibrium(car, otherRadius, along);
    }

    /** What changes the speed at the state at hand. */
    Optional<TurnRow.Changing> changing() {
        if (along.isSteady()) {
            return Optional.empty();
        }
        double brakeForce =
                along.byBrakes() ? -2 * (front.brakes.orElseThrow().force + rear.brakes.orElseThrow().force) : 0;
        return Optional.of(new TurnRow.Changing(gain, brakeForce));
    }

    /** The effort of the brakes, or the drive force, with which a search begins, N. */
    double firstEffort() {
        return front.brakes.isPresent() ? front.brakes.get().effortFor(-mass * gain) : 0;
    }

    boolean byBrakes() {
        return along.byBrakes();
    }

    AxleInTurn axle(End end) {
        return end == End.FRONT ? front : rear;
    }

    /**
     * Sets balances and slopes.
     *
     * @return false where a wheel is asked for more than its friction
     */
    boolean at(double[] state) {
        if (!front.at(
                        state[STEER],
                        state[SIDESLIP],
                        state[DRIVE],
                        state[FRONT_HEAVE],
                        state[FRONT_ROLL],
                        state[FRONT_LEFT_RISE],
                        state[FRONT_RIGHT_RISE],
                        state[FRONT_COMPLIANCE])
                || !rear.at(
                        state[STEER],
                        state[SIDESLIP],
                        state[DRIVE],
                        state[REAR_HEAVE],
                        state[REAR_ROLL],
                        state[REAR_LEFT_RISE],
                        state[REAR_RIGHT_RISE],
                        state[REAR_COMPLIANCE])) {
            return false;
        }
        Arrays.fill(slopes, 0);
        double acceleration = state[ACCELERATION];
        cos = Math.cos(state[SIDESLIP]);
        sin = Math.sin(state[SIDESLIP]);
        across = acceleration * cos + gain * sin;
        acrossBySideslip = -acceleration * sin + gain * cos;
        drag = dragPerAcceleration * acceleration;
        forwardForces(acceleration);
        sideForces();
        yawMoments();
        bodyHeave(acceleration);
        bodyRoll(FRONT_BODY_ROLL, front, FRONT_UNKNOWNS, state[FRONT_HEAVE], state[FRONT_ROLL]);
        bodyRoll(REAR_BODY_ROLL, rear, REAR_UNKNOWNS, state[REAR_HEAVE], state[REAR_ROLL]);
        chassisTwist(state);
        axleHeave(FRONT_AXLE_HEAVE, front, FRONT_UNKNOWNS);
        axleHeave(REAR_AXLE_HEAVE, rear, REAR_UNKNOWNS);
        axleRoll(FRONT_AXLE_ROLL, front, FRONT_UNKNOWNS);
        axleRoll(REAR_AXLE_ROLL, rear, REAR_UNKNOWNS);
        if (front.lines.isPresent()) {
            forceLines(FRONT_BODY_HEAVE, FRONT_BODY_ROLL, front, front.lines.get(), FRONT_UNKNOWNS);
        }
        if (rear.lines.isPresent()) {
            forceLines(REAR_BODY_HEAVE, REAR_BODY_ROLL, rear, rear.lines.get(), REAR_UNKNOWNS);
        }
        if (!along.byBrakes()) {
            shaftTorque(state[DRIVE]);
        }
        complianceSteer(FRONT_COMPLIANCE_STEER, front, FRONT_UNKNOWNS, state[FRONT_COMPLIANCE]);
        complianceSteer(REAR_COMPLIANCE_STEER, rear, REAR_UNKNOWNS, state[REAR_COMPLIANCE]);
        if (Double.isInfinite(chassisStiffness)) {
            rigidChassis(state);
        }
        overWeight();
        return true;
    }

    /** Forces along the car: ΣFx − drag·cos β = m·ax, N. */
    private void forwardForces(double acceleration) {
        left[FORWARD] =
                front.forwardForce + rear.forwardForce - drag * cos + mass * acceleration * sin - mass * gain * cos;
        add(FORWARD, 1, front.forwardForceBy, FRONT_UNKNOWNS);
        add(FORWARD, 1, rear.forwardForceBy, REAR_UNKNOWNS);
        add(FORWARD, SIDESLIP, drag * sin + mass * across);
        add(FORWARD, ACCELERATION, -dragPerAcceleration * cos + mass * sin);
        add(FORWARD, CURVATURE, drag * cos * radius);
    }

    /** Forces across the car: ΣFy − drag·sin β = m·ay, N. */
    private void sideForces() {
        left[SIDEWAYS] = front.sideForce + rear.sideForce - drag * sin - mass * across;
        add(SIDEWAYS, 1, front.sideForceBy, FRONT_UNKNOWNS);
        add(SIDEWAYS, 1, rear.sideForceBy, REAR_UNKNOWNS);
        add(SIDEWAYS, SIDESLIP, -drag * cos - mass * acrossBySideslip);
        add(SIDEWAYS, ACCELERATION, -dragPerAcceleration * sin - mass * cos);
        add(SIDEWAYS, CURVATURE, drag * sin * radius);
    }

    /** Yaw moments about the centre of gravity: Σ(x_j·Fy_j − y_j·Fx_j + Mz_j) = 0, N·m. */
    private void yawMoments() {
        left[YAW] = front.yawMoment + rear.yawMoment;
        add(YAW, 1, front.yawMomentBy, FRONT_UNKNOWNS);
        add(YAW, 1, rear.yawMomentBy, REAR_UNKNOWNS);
    }

    /**
     * Both body parts, vertical: springs, stops and jacking carry the part's weight, less or more the longitudinal load
     * transfer, less the lift of the air: S_i = ms_i·g ∓ Q/L − lift_i, N, with Q = m·ax·cgHeight + drag·cos β·dragHeight
     * (front −, rear +).
     */
    private void bodyHeave(double acceleration) {
        double transfer =
                (-mass * acceleration * sin * cgHeight + drag * cos * dragHeight + mass * gain * cos * cgHeight)
                        / wheelbase;
        double transferBySideslip = (-mass * across * cgHeight - drag * sin * dragHeight) / wheelbase;
        double transferByAcceleration = (-mass * sin * cgHeight + dragPerAcceleration * cos * dragHeight) / wheelbase;
        double transferByCurvature = -drag * cos * dragHeight / wheelbase * radius;
        left[FRONT_BODY_HEAVE] = front.bodyForce
                - front.sprungMass * Weights.GRAVITY
                + transfer
                + frontLiftPerAcceleration * acceleration;
        add(FRONT_BODY_HEAVE, 1, front.bodyForceBy, FRONT_UNKNOWNS);
        add(FRONT_BODY_HEAVE, SIDESLIP, transferBySideslip);
        add(FRONT_BODY_HEAVE, ACCELERATION, transferByAcceleration + frontLiftPerAcceleration);
        add(FRONT_BODY_HEAVE, CURVATURE, transferByCurvature - frontLiftPerAcceleration * acceleration * radius);

        left[REAR_BODY_HEAVE] =
                rear.bodyForce - rear.sprungMass * Weights.GRAVITY - transfer + rearLiftPerAcceleration * acceleration;
        add(REAR_BODY_HEAVE, 1, rear.bodyForceBy, REAR_UNKNOWNS);
        add(REAR_BODY_HEAVE, SIDESLIP, -transferBySideslip);
        add(REAR_BODY_HEAVE, ACCELERATION, -transferByAcceleration + rearLiftPerAcceleration);
        add(REAR_BODY_HEAVE, CURVATURE, -transferByCurvature - rearLiftPerAcceleration * acceleration * radius);
    }

    /**
     * One body part, roll about its roll centre: springs, stops and bar carry what the links' force and the weight that
     * leans outwards make on the roll arm, M = (Y_i + ms_i·g·φ_i)·(hs + ζ_i − z_i), N·m.
     */
    private void bodyRoll(int row, AxleInTurn axle, int[] unknowns, double heave, double roll) {
        double arm = sprungHeight + heave - axle.rollCentre;
        double pull = axle.linkForce(across) + axle.sprungMass * Weights.GRAVITY * roll;
        left[row] = axle.bodyMoment - pull * arm;
        add(row, 1, axle.bodyMomentBy, unknowns);
        add(row, -arm, axle.sideForceBy, unknowns);
        addOfPosture(row, pull, axle.rollCentreBy, unknowns);
        add(row, unknowns[AxleInTurn.HEAVE], -pull);
        add(row, unknowns[AxleInTurn.ROLL], -arm * axle.sprungMass * Weights.GRAVITY);
        add(row, SIDESLIP, arm * axle.unsprungMass * acrossBySideslip);
        add(row, ACCELERATION, arm * axle.unsprungMass * cos);
    }

    /** The chassis between both body parts: C·(φ_r − φ_f) helps the front to roll and holds the rear, N·m. */
    private void chassisTwist(double[] state) {
        double stiffness = Double.isInfinite(chassisStiffness) ? 0 : chassisStiffness;
        double carried = stiffness * (state[REAR_ROLL] - state[FRONT_ROLL]);
        left[FRONT_BODY_ROLL] -= carried;
        left[REAR_BODY_ROLL] += carried;
        add(FRONT_BODY_ROLL, FRONT_ROLL, stiffness);
        add(FRONT_BODY_ROLL, REAR_ROLL, -stiffness);
        add(REAR_BODY_ROLL, REAR_ROLL, stiffness);
        add(REAR_BODY_ROLL, FRONT_ROLL, -stiffness);
    }

    /** One axle, vertical: its tyres carry what springs, stops and jacking press down and its own weight, N. */
    private void axleHeave(int row, AxleInTurn axle, int[] unknowns) {
        left[row] = axle.loads - axle.bodyForce - axle.unsprungMass * Weights.GRAVITY;
        addOfPosture(row, 1, axle.loadsBy, unknowns);
        add(row, -1, axle.bodyForceBy, unknowns);
    }

    /**
     * One axle, roll about the ground; this is what decides its lateral load transfer. The tyres' loads carry the moment
     * of springs and bar, the links' force at the roll centre, and the weights that lean with the tyres:
     * <pre>  t·ΔFz = M + Y_i·z_i + ms_i·g·z_i·ψ_i + mu_i·hu_i·(ay + g·ψ_i)  </pre>
     * N·m; ΔFz what the outer wheel gains. On an independent axle the last parts load the outer wheel through its links.
     */
    private void axleRoll(int row, AxleInTurn axle, int[] unknowns) {
        double linkForce = axle.linkForce(across);
        double leaning = axle.sprungMass * Weights.GRAVITY * axle.tyreTilt;
        left[row] = axle.halfTrack * axle.loadDifference
                - axle.bodyMoment
                - (linkForce + leaning) * axle.rollCentre
                - axle.unsprungMass * axle.unsprungHeight * (across + Weights.GRAVITY * axle.tyreTilt);
        addOfPosture(row, axle.halfTrack, axle.loadDifferenceBy, unknowns);
        add(row, -1, axle.bodyMomentBy, unknowns);
        add(row, -axle.rollCentre, axle.sideForceBy, unknowns);
        addOfPosture(row, -(linkForce + leaning), axle.rollCentreBy, unknowns);
        addOfPosture(
                row,
                -Weights.GRAVITY * (axle.sprungMass * axle.rollCentre + axle.unsprungMass * axle.unsprungHeight),
                axle.tyreTiltBy,
                unknowns);
        double arm = axle.rollCentre - axle.unsprungHeight;
        add(row, SIDESLIP, arm * axle.unsprungMass * acrossBySideslip);
        add(row, ACCELERATION, arm * axle.unsprungMass * cos);
    }

    /**
     * What force lines known by points do beyond one roll centre: the unsprung mass takes its part of the lift, a·mu·ay, off the
     * body and the tyres, and lines of unequal heights turn the body, s·(Fy_L − Fy_R) ({@link LinesByPoints}).
     */
    private void forceLines(int bodyHeaveRow, int bodyRollRow, AxleInTurn axle, LinesByPoints lines, int[] unknowns) {
        int axleHeaveRow = bodyHeaveRow + FRONT_AXLE_HEAVE - FRONT_BODY_HEAVE;
        int axleRollRow = bodyRollRow + FRONT_AXLE_ROLL - FRONT_BODY_ROLL;
        double inertia = axle.unsprungMass * across;
        double turning = lines.split * axle.sideForceDifference();
        for (int body = 1; body >= -1; body -= 2) {
            int heaveRow = body > 0 ? bodyHeaveRow : axleHeaveRow;
            int rollRow = body > 0 ? bodyRollRow : axleRollRow;
            left[heaveRow] -= body * lines.lift * inertia;
            addOfPosture(heaveRow, -body * inertia, lines.liftBy, unknowns);
            add(heaveRow, SIDESLIP, -body * lines.lift * axle.unsprungMass * acrossBySideslip);
            add(heaveRow, ACCELERATION, -body * lines.lift * axle.unsprungMass * cos);
            left[rollRow] += body * turning;
            addOfPosture(rollRow, body * axle.sideForceDifference(), lines.splitBy, unknowns);
            add(rollRow, body * lines.split, axle.sideForceDifferenceBy, unknowns);
        }
    }

    /**
     * The propeller shaft turns the driven housing one way and, through the engine's mounts, the front body the other:
     * T = P·loadedRadius/finalDrive, N·m.
     */
    private void shaftTorque(double drive) {
        double torque = shaftTorquePerDrive * drive;
        int axleRow = frontDriven ? FRONT_AXLE_ROLL : REAR_AXLE_ROLL;
        left[FRONT_BODY_ROLL] -= torque;
        left[axleRow] += torque;
        add(FRONT_BODY_ROLL, DRIVE, -shaftTorquePerDrive);
        add(axleRow, DRIVE, shaftTorquePerDrive);
    }

    /** Steer by roll and by the give of links and bushes: U = rollSteer·φs + lateralForceSteer·ΣFy − aligningTorqueSteer·ΣMz. */
    private void complianceSteer(int row, AxleInTurn axle, int[] unknowns, double compliance) {
        var alignment = axle.alignment;
        left[row] = compliance
                - axle.linkSteer
                - alignment.lateralForceSteer() * axle.sideForce
                + alignment.aligningTorqueSteer() * axle.aligningMoment;
        add(row, unknowns[AxleInTurn.COMPLIANCE], 1);
        addOfPosture(row, -1, axle.linkSteerBy, unknowns);
        add(row, -alignment.lateralForceSteer(), axle.sideForceBy, unknowns);
        add(row, alignment.aligningTorqueSteer(), axle.aligningMomentBy, unknowns);
    }

    /** One roll angle for the whole body: the front row takes the sum, the rear row says that both rolls are equal. */
    private void rigidChassis(double[] state) {
        left[FRONT_BODY_ROLL] += left[REAR_BODY_ROLL];
        for (int column = 0; column < ROW; column++) {
            slopes[FRONT_BODY_ROLL * ROW + column] += slopes[REAR_BODY_ROLL * ROW + column];
            slopes[REAR_BODY_ROLL * ROW + column] = 0;
        }
        left[REAR_BODY_ROLL] = weight * (state[REAR_ROLL] - state[FRONT_ROLL]);
        add(REAR_BODY_ROLL, REAR_ROLL, weight);
        add(REAR_BODY_ROLL, FRONT_ROLL, -weight);
    }

    /** Forces over the car's weight; the angles of the compliance steer stay as they are. */
    private void overWeight() {
        double perWeight = 1 / weight;
        for (int i = 0; i < FRONT_COMPLIANCE_STEER * ROW; i++) {
            slopes[i] *= perWeight;
        }
        for (int i = 0; i < FRONT_COMPLIANCE_STEER; i++) {
            left[i] *= perWeight;
        }
    }

    /** Adds slopes of an axle's figure to a row. */
    private void add(int row, double factor, double[] by, int[] unknowns) {
        int start = row * ROW;
        for (int i = 0; i < AxleInTurn.UNKNOWNS; i++) {
            slopes[start + unknowns[i]] += factor * by[i];
        }
    }

    /** The same of a figure that only the posture of body and wheels moves: heave, roll and the wheels' rises. */
    private void addOfPosture(int row, double factor, double[] by, int[] unknowns) {
        int start = row * ROW;
        for (int i = AxleInTurn.HEAVE; i <= AxleInTurn.RIGHT_RISE; i++) {
            slopes[start + unknowns[i]] += factor * by[i];
        }
    }

    private void add(int row, int column, double slope) {
        slopes[row * ROW + column] += slope;
    }

    /** Copies the slopes over unknowns and lateral acceleration, row by row, {@link #COLUMNS} each. */
    void slopesInto(double[] matrix) {
        for (int row = 0; row < BALANCES; row++) {
            System.arraycopy(slopes, row * ROW, matrix, row * COLUMNS, COLUMNS);
        }
    }

    /** Slope of a balance over the curvature of the path, at constant lateral acceleration: drag and lift fall with V² = ac/κ. */
    double byCurvature(int row) {
        return slopes[row * ROW + CURVATURE];
    }

    /** The axle whose links reach no further than the state at hand, to within what a last step of the branch leaves. */
    Optional<Limit.EndOfLinks> endOfLinks(double steer) {
        for (End end : End.values()) {
            Optional<LinesByPoints> lines = axle(end).lines;
            if (lines.isPresent() && lines.get().beyondReach(steer) > -AT_THE_END) {
                return Optional.of(new Limit.EndOfLinks(end, lines.get().reach.part()));
            }
        }
        return Optional.empty();
    }

    /** Which pieces of all that has corners hold; it changes where the branch turns a corner. */
    long pieces() {
        return front.pieces * rear.pieceCount() + rear.pieces;
    }

    /** Largest of what is left over. */
    double worst() {
        double worst = 0;
        for (double each : left) {
            worst = Math.max(worst, Math.abs(each));
        }
        return worst;
    }

    /** Slope of an axle's figure along a direction of the unknowns. */
    static double along(double[] by, End end, double[] direction) {
        int[] unknowns = end == End.FRONT ? FRONT_UNKNOWNS : REAR_UNKNOWNS;
        double sum = 0;
        for (int i = 0; i < AxleInTurn.CURVATURE; i++) {
            sum += by[i] * direction[unknowns[i]];
        }
        return sum;
    }
}
