package evenhand.turn;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Weights;

/**
 * The balances of the steady turn and their slopes at given unknowns: a left turn on a circle of constant radius.
 *
 * <p>Unknowns stand in one array, {@link #STEER} to {@link #REAR_COMPLIANCE}, with the lateral acceleration behind them.
 * Rows are made free of units by the car's weight, so that one tolerance serves all. {@link #at} gives balances and
 * slopes in one pass, so they cannot drift apart, and allocates nothing. One per thread.
 *
 * <p>Small-angle kinematics for the body, exact angles for steer, sideslip and slip; until side-view geometry is known
 * all longitudinal load transfer goes through the springs. Axes ISO 8855.
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

    static final int COLUMNS = 14;

    private static final int FORWARD = 0;
    private static final int SIDEWAYS = 1;
    private static final int YAW = 2;
    private static final int FRONT_BODY_VERTICAL = 3;
    private static final int REAR_BODY_VERTICAL = 4;
    private static final int FRONT_BODY_ROLL = 5;
    private static final int REAR_BODY_ROLL = 6;
    private static final int FRONT_AXLE_VERTICAL = 7;
    private static final int REAR_AXLE_VERTICAL = 8;
    private static final int FRONT_AXLE_ROLL = 9;
    private static final int REAR_AXLE_ROLL = 10;
    private static final int FRONT_GIVE = 11;
    private static final int REAR_GIVE = 12;

    private static final int[] FRONT_UNKNOWNS = {
        STEER, SIDESLIP, DRIVE, FRONT_HEAVE, FRONT_ROLL, FRONT_LEFT_RISE, FRONT_RIGHT_RISE, FRONT_COMPLIANCE
    };
    private static final int[] REAR_UNKNOWNS = {
        STEER, SIDESLIP, DRIVE, REAR_HEAVE, REAR_ROLL, REAR_LEFT_RISE, REAR_RIGHT_RISE, REAR_COMPLIANCE
    };

    /** What is left over in each balance, over the car's weight (forces) or its weight times one metre (moments). */
    final double[] left = new double[BALANCES];

    /** Slopes of {@link #left}, row by row over unknowns and lateral acceleration. */
    final double[] slopes = new double[BALANCES * COLUMNS];

    final AxleInTurn front;
    final AxleInTurn rear;
    final double radius;
    final double frontShare;
    final double rearShare;
    final double weight;
    final double mass;

    private final double wheelbase;
    private final double sprungHeight;
    private final double cgHeight;
    private final double dragHeight;
    private final double dragPerAcceleration; // N per m/s²
    private final double frontLiftPerAcceleration;
    private final double rearLiftPerAcceleration;
    private final double torsion; // infinite: rigid
    private final double frontSprungMass;
    private final double rearSprungMass;
    private final double frontUnsprungMass;
    private final double rearUnsprungMass;
    private final double frontUnsprungHeight;
    private final double rearUnsprungHeight;
    private final double shaftTorquePerDrive; // m, sense included; zero without a driven live axle
    private final boolean frontDriven;

    Equilibrium(Car car, double radius) {
        this.radius = radius;
        front = new AxleInTurn(car, End.FRONT, radius);
        rear = new AxleInTurn(car, End.REAR, radius);
        mass = car.weights().mass();
        weight = mass * Weights.GRAVITY;
        wheelbase = car.wheelbase();
        Car.Sprung sprung = car.sprung();
        sprungHeight = sprung.height();
        frontShare = sprung.frontShare();
        rearShare = sprung.rearShare();
        frontSprungMass = sprung.mass() * frontShare;
        rearSprungMass = sprung.mass() * rearShare;
        frontUnsprungMass = car.front().unsprung().mass();
        rearUnsprungMass = car.rear().unsprung().mass();
        frontUnsprungHeight = car.front().unsprung().height();
        rearUnsprungHeight = car.rear().unsprung().height();
        cgHeight = car.cgHeight();
        dragHeight = car.air().dragHeight().orElse(cgHeight);
        double pressure = evenhand.car.Air.DENSITY / 2 * radius; // per lateral acceleration: V² = ac·R
        dragPerAcceleration = pressure * car.air().dragArea();
        frontLiftPerAcceleration = pressure * car.air().frontLiftArea();
        rearLiftPerAcceleration = pressure * car.air().rearLiftArea();
        torsion = car.chassisTorsionalStiffness();
        frontDriven = car.drive().axle() == End.FRONT;
        Axle driven = car.axle(car.drive().axle());
        double sense = car.drive().shaftTurns() == Drive.ShaftTurns.ANTICLOCKWISE ? 1 : -1;
        shaftTorquePerDrive =
                driven instanceof Axle.Live && car.drive().finalDrive().isPresent()
                        ? sense
                                * driven.tyre().loadedRadius()
                                / car.drive().finalDrive().getAsDouble()
                        : 0;
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
        java.util.Arrays.fill(slopes, 0);
        double acceleration = state[ACCELERATION];
        double cos = Math.cos(state[SIDESLIP]);
        double sin = Math.sin(state[SIDESLIP]);
        wholeCar(acceleration, cos, sin);
        vertical(acceleration, cos, sin);
        bodyRoll(state, acceleration, cos, sin);
        axle(FRONT_AXLE_VERTICAL, FRONT_AXLE_ROLL, FRONT_GIVE, front, FRONT_UNKNOWNS, acceleration, cos, sin);
        axle(REAR_AXLE_VERTICAL, REAR_AXLE_ROLL, REAR_GIVE, rear, REAR_UNKNOWNS, acceleration, cos, sin);
        give(FRONT_GIVE, front, FRONT_UNKNOWNS, state[FRONT_COMPLIANCE]);
        give(REAR_GIVE, rear, REAR_UNKNOWNS, state[REAR_COMPLIANCE]);
        double shaft = shaftTorquePerDrive * state[DRIVE];
        shaftTorque(shaft);
        if (Double.isInfinite(torsion)) {
            rigidChassis(state);
        }
        double perWeight = 1 / weight;
        for (int i = 0; i < FRONT_GIVE * COLUMNS; i++) {
            slopes[i] *= perWeight;
        }
        for (int i = 0; i < FRONT_GIVE; i++) {
            left[i] *= perWeight;
        }
        return true;
    }

    /** Adds slopes of an axle's figure to a row. */
    private void add(int row, double factor, double[] by, int[] unknowns) {
        int start = row * COLUMNS;
        for (int i = 0; i < AxleInTurn.UNKNOWNS; i++) {
            slopes[start + unknowns[i]] += factor * by[i];
        }
    }

    private void add(int row, int column, double slope) {
        slopes[row * COLUMNS + column] += slope;
    }

    /** Balances 1 to 3: forwards, sideways, yaw. */
    private void wholeCar(double acceleration, double cos, double sin) {
        double drag = dragPerAcceleration * acceleration;
        left[FORWARD] = front.forwardForce + rear.forwardForce - drag * cos + mass * acceleration * sin;
        add(FORWARD, 1, front.forwardForceBy, FRONT_UNKNOWNS);
        add(FORWARD, 1, rear.forwardForceBy, REAR_UNKNOWNS);
        add(FORWARD, SIDESLIP, drag * sin + mass * acceleration * cos);
        add(FORWARD, ACCELERATION, -dragPerAcceleration * cos + mass * sin);

        left[SIDEWAYS] = front.sideForce + rear.sideForce - drag * sin - mass * acceleration * cos;
        add(SIDEWAYS, 1, front.sideForceBy, FRONT_UNKNOWNS);
        add(SIDEWAYS, 1, rear.sideForceBy, REAR_UNKNOWNS);
        add(SIDEWAYS, SIDESLIP, -drag * cos + mass * acceleration * sin);
        add(SIDEWAYS, ACCELERATION, -dragPerAcceleration * sin - mass * cos);

        left[YAW] = front.yawMoment + rear.yawMoment;
        add(YAW, 1, front.yawMomentBy, FRONT_UNKNOWNS);
        add(YAW, 1, rear.yawMomentBy, REAR_UNKNOWNS);
    }

    /** Balance 4: body parts, vertical, with the load that drag and path take from the front to the rear. */
    private void vertical(double acceleration, double cos, double sin) {
        double drag = dragPerAcceleration * acceleration;
        double moved = (-mass * acceleration * sin * cgHeight + drag * cos * dragHeight) / wheelbase;
        double movedBySideslip = (-mass * acceleration * cos * cgHeight - drag * sin * dragHeight) / wheelbase;
        double movedByAcceleration = (-mass * sin * cgHeight + dragPerAcceleration * cos * dragHeight) / wheelbase;
        left[FRONT_BODY_VERTICAL] =
                front.bodyForce - frontSprungMass * Weights.GRAVITY + moved + frontLiftPerAcceleration * acceleration;
        add(FRONT_BODY_VERTICAL, 1, front.bodyForceBy, FRONT_UNKNOWNS);
        add(FRONT_BODY_VERTICAL, SIDESLIP, movedBySideslip);
        add(FRONT_BODY_VERTICAL, ACCELERATION, movedByAcceleration + frontLiftPerAcceleration);

        left[REAR_BODY_VERTICAL] =
                rear.bodyForce - rearSprungMass * Weights.GRAVITY - moved + rearLiftPerAcceleration * acceleration;
        add(REAR_BODY_VERTICAL, 1, rear.bodyForceBy, REAR_UNKNOWNS);
        add(REAR_BODY_VERTICAL, SIDESLIP, -movedBySideslip);
        add(REAR_BODY_VERTICAL, ACCELERATION, -movedByAcceleration + rearLiftPerAcceleration);
    }

    /** Balance 5: body parts, roll about their roll centres, joined by the chassis. */
    private void bodyRoll(double[] state, double acceleration, double cos, double sin) {
        double twist = Double.isInfinite(torsion) ? 0 : torsion;
        partRoll(
                FRONT_BODY_ROLL,
                front,
                FRONT_UNKNOWNS,
                state[FRONT_HEAVE],
                state[FRONT_ROLL],
                frontSprungMass,
                frontUnsprungMass,
                acceleration,
                cos,
                sin);
        partRoll(
                REAR_BODY_ROLL,
                rear,
                REAR_UNKNOWNS,
                state[REAR_HEAVE],
                state[REAR_ROLL],
                rearSprungMass,
                rearUnsprungMass,
                acceleration,
                cos,
                sin);
        double carried = twist * (state[REAR_ROLL] - state[FRONT_ROLL]);
        left[FRONT_BODY_ROLL] -= carried;
        left[REAR_BODY_ROLL] += carried;
        add(FRONT_BODY_ROLL, FRONT_ROLL, twist);
        add(FRONT_BODY_ROLL, REAR_ROLL, -twist);
        add(REAR_BODY_ROLL, REAR_ROLL, twist);
        add(REAR_BODY_ROLL, FRONT_ROLL, -twist);
    }

    private void partRoll(
            int row,
            AxleInTurn axle,
            int[] unknowns,
            double heave,
            double roll,
            double sprungMass,
            double unsprungMass,
            double acceleration,
            double cos,
            double sin) {
        double linkForce = axle.sideForce - unsprungMass * acceleration * cos;
        double arm = sprungHeight + heave - axle.rollCentre;
        double pull = linkForce + sprungMass * Weights.GRAVITY * roll;
        left[row] = axle.bodyMoment - pull * arm;
        add(row, 1, axle.bodyMomentBy, unknowns);
        add(row, -arm, axle.sideForceBy, unknowns);
        add(row, pull, axle.rollCentreBy, unknowns);
        add(row, unknowns[AxleInTurn.HEAVE], -pull);
        add(row, unknowns[AxleInTurn.ROLL], -arm * sprungMass * Weights.GRAVITY);
        add(row, SIDESLIP, -arm * unsprungMass * acceleration * sin);
        add(row, ACCELERATION, arm * unsprungMass * cos);
    }

    /** Balances 6 and 7: axle, vertical and roll about the ground. */
    private void axle(
            int verticalRow,
            int rollRow,
            int giveRow,
            AxleInTurn axle,
            int[] unknowns,
            double acceleration,
            double cos,
            double sin) {
        boolean isFront = giveRow == FRONT_GIVE;
        double sprungMass = isFront ? frontSprungMass : rearSprungMass;
        double unsprungMass = isFront ? frontUnsprungMass : rearUnsprungMass;
        double unsprungHeight = isFront ? frontUnsprungHeight : rearUnsprungHeight;
        double halfTrack = axle.halfTrack();
        left[verticalRow] = axle.loads - axle.bodyForce - unsprungMass * Weights.GRAVITY;
        add(verticalRow, 1, axle.loadsBy, unknowns);
        add(verticalRow, -1, axle.bodyForceBy, unknowns);

        double linkForce = axle.sideForce - unsprungMass * acceleration * cos;
        double leaning = sprungMass * Weights.GRAVITY * axle.tyreTilt;
        left[rollRow] = halfTrack * axle.loadDifference
                - axle.bodyMoment
                - (linkForce + leaning) * axle.rollCentre
                - unsprungMass * unsprungHeight * (acceleration * cos + Weights.GRAVITY * axle.tyreTilt);
        add(rollRow, halfTrack, axle.loadDifferenceBy, unknowns);
        add(rollRow, -1, axle.bodyMomentBy, unknowns);
        add(rollRow, -axle.rollCentre, axle.sideForceBy, unknowns);
        add(rollRow, -(linkForce + leaning), axle.rollCentreBy, unknowns);
        add(
                rollRow,
                -Weights.GRAVITY * (sprungMass * axle.rollCentre + unsprungMass * unsprungHeight),
                axle.tyreTiltBy,
                unknowns);
        double arm = axle.rollCentre - unsprungHeight;
        add(rollRow, SIDESLIP, -arm * unsprungMass * acceleration * sin);
        add(rollRow, ACCELERATION, arm * unsprungMass * cos);
    }

    /** Steer by roll and by the give of links and bushes under load. */
    private void give(int row, AxleInTurn axle, int[] unknowns, double compliance) {
        var alignment = axle.alignment;
        left[row] = compliance
                - alignment.rollSteer() * axle.suspensionRoll
                - alignment.lateralForceSteer() * axle.sideForce
                + alignment.aligningTorqueSteer() * axle.aligningMoment;
        add(row, unknowns[AxleInTurn.COMPLIANCE], 1);
        add(row, -alignment.rollSteer(), axle.suspensionRollBy, unknowns);
        add(row, -alignment.lateralForceSteer(), axle.sideForceBy, unknowns);
        add(row, alignment.aligningTorqueSteer(), axle.aligningMomentBy, unknowns);
    }

    /** The propeller shaft turns the driven housing one way and, through the engine's mounts, the front body the other. */
    private void shaftTorque(double torque) {
        int axleRow = frontDriven ? FRONT_AXLE_ROLL : REAR_AXLE_ROLL;
        left[FRONT_BODY_ROLL] -= torque;
        left[axleRow] += torque;
        add(FRONT_BODY_ROLL, DRIVE, -shaftTorquePerDrive);
        add(axleRow, DRIVE, shaftTorquePerDrive);
    }

    /** One roll angle for the whole body: the front row takes the sum, the rear row says that both rolls are equal. */
    private void rigidChassis(double[] state) {
        left[FRONT_BODY_ROLL] += left[REAR_BODY_ROLL];
        for (int column = 0; column < COLUMNS; column++) {
            slopes[FRONT_BODY_ROLL * COLUMNS + column] += slopes[REAR_BODY_ROLL * COLUMNS + column];
            slopes[REAR_BODY_ROLL * COLUMNS + column] = 0;
        }
        left[REAR_BODY_ROLL] = weight * (state[REAR_ROLL] - state[FRONT_ROLL]);
        add(REAR_BODY_ROLL, REAR_ROLL, weight);
        add(REAR_BODY_ROLL, FRONT_ROLL, -weight);
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
    static double along(double[] by, boolean ofFront, double[] direction) {
        int[] unknowns = ofFront ? FRONT_UNKNOWNS : REAR_UNKNOWNS;
        double sum = 0;
        for (int i = 0; i < AxleInTurn.UNKNOWNS; i++) {
            sum += by[i] * direction[unknowns[i]];
        }
        return sum;
    }

    double dragPerAcceleration() {
        return dragPerAcceleration;
    }
}
