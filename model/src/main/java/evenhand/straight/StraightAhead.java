package evenhand.straight;

import evenhand.car.BrakeForces;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.linear.LinearSolve;
import java.util.Arrays;

/**
 * The car straight ahead at an acceleration along it, at walking pace without air: heave and roll of the body over both axles and
 * the rise of the four wheels, at which everything is in balance. Balances 1 and 4 to 7 of the steady turn, all side forces zero.
 *
 * <pre>
 *   body, vertical   S_i + ΣJ_i = ms_i·g ∓ Q/L,  Q = m·ax·cgHeight                           front −, rear +
 *   body, roll       M_i = ms_i·g·(hs + ζ_i − z_i)·φ_i + C·(φ_o − φ_i)                      front + T
 *   axle, vertical   ΣFz = S_i + ΣJ_i + mu_i·g
 *   axle, roll       (t/2)·(Fz_R − Fz_L) = M_i + ms_i·g·z_i·ψ_i + mu_i·g·hu_i·ψ_i           driven live axle − T
 * </pre>
 * S springs and stops, M their moment with the bar's and that of J, T = P·loadedRadius/finalDrive of the propeller shaft, N, N·m.
 *
 * <p>Newton's method from the state before, every slope in closed form; a step that does no good is halved. It gives up where no
 * state is found: a wheelie, links at their end. {@link #brakeAt}, {@link #press} and {@link #drive} allocate nothing. One per
 * thread.
 *
 * <p>Source: Milliken &amp; Milliken 1995 ch. 17; Gillespie 1992 ch. 2, 3 and 7.
 */
public final class StraightAhead {
    private static final int UNKNOWNS = AxleAlong.UNKNOWNS;
    private static final int POSTURE = AxleAlong.POSTURE;
    private static final int BODY_HEAVE = 0;
    private static final int BODY_ROLL = 1;
    private static final int AXLE_HEAVE = 2;
    private static final int AXLE_ROLL = 3;

    private static final int MAX_ITERATIONS = 40;
    /** What may be left over, over the car's weight: rounding of sums of some 1e4 N leaves about 1e-15. */
    private static final double TOLERANCE = 2e-13;
    /** Good enough where rounding lets it fall no further. */
    private static final double ACCEPTABLE = 1e-11;
    /** A step that does no good is halved down to this part of itself. */
    private static final double LEAST_PART = 1e-3;

    /** Nothing limits how a locked differential shares. */
    private static final double NO_LEAST_SHARE = 0;

    final AxleAlong front;
    final AxleAlong rear;
    /** What the parts of the brakes, or their share, make. */
    final BrakeForces brakes;

    /** The state: heave, roll and both rises of the front axle, then of the rear one; m, rad. */
    private final double[] state = new double[UNKNOWNS];

    private final double[] kept = new double[UNKNOWNS];
    private final double[] left = new double[UNKNOWNS];
    private final double[] step = new double[UNKNOWNS];
    private final double[] slopes = new double[UNKNOWNS * UNKNOWNS];
    private final LinearSolve solve = new LinearSolve(UNKNOWNS);

    private final double weight;
    private final double mass;
    private final double wheelbase;
    private final double cgHeight;
    private final double sprungHeight;
    private final double chassisStiffness;
    private final double rollingResistance;
    private final End drivenEnd;
    private final double shaftTorquePerDrive;
    private final double leastShareAsBuilt;

    /** What acts along the car. */
    private enum Act {
        /** The brakes add up to a deceleration. */
        BRAKES_FOR,
        /** The brakes are pressed with a force of the rod. */
        BRAKES_BY,
        DRIVE
    }

    private Act act = Act.BRAKES_FOR;
    private double wanted; // deceleration, m/s², or rod's force, N
    private double acceleration; // ax, m/s²
    private double accelerationByRearTravel;
    private double driveForce; // P, N
    private double leastShare; // of the wheel that gets less of the drive

    /** @param car at rest, its {@code lowered} carried out */
    public StraightAhead(Car car) {
        front = new AxleAlong(car, End.FRONT);
        rear = new AxleAlong(car, End.REAR);
        brakes = BrakeForces.of(car);
        mass = car.weights().mass();
        weight = mass * Weights.GRAVITY;
        wheelbase = car.wheelbase();
        cgHeight = car.cgHeight();
        sprungHeight = car.sprung().height();
        chassisStiffness = car.chassisTorsionalStiffness();
        rollingResistance = car.rollingResistance();
        drivenEnd = car.drive().axle();
        shaftTorquePerDrive = car.shaftTorquePerDrive();
        leastShareAsBuilt = leastShare(car.drive().differential());
        leastShare = leastShareAsBuilt;
    }

    /** Part of the drive force that the wheel with less grip gets at least. */
    static double leastShare(Drive.Differential differential) {
        if (differential instanceof Drive.Differential.TorqueBiasing biasing) {
            return 1 / (1 + biasing.biasRatio());
        }
        return differential instanceof Drive.Differential.Open ? 0.5 : NO_LEAST_SHARE;
    }

    /** Back to rest, to start from there. */
    public void rest() {
        Arrays.fill(state, 0);
    }

    /**
     * Brakes by a deceleration: ΣX = z·m·g, no rolling resistance, clutch down.
     *
     * @param deceleration z·g, m/s²
     * @return whether there is such a state
     */
    public boolean brakeAt(double deceleration) {
        act = Act.BRAKES_FOR;
        wanted = deceleration;
        return balanced();
    }

    /** Brakes with a force of the rod behind the booster, N; asked only where the parts are known. */
    public boolean press(double rodForce) {
        act = Act.BRAKES_BY;
        wanted = rodForce;
        return balanced();
    }

    /** Drives at an acceleration, m/s², through its own differential: P = m·ax + rollingResistance·m·g. */
    public boolean drive(double ax) {
        return drive(ax, leastShareAsBuilt);
    }

    /** The same through a differential that leaves the lighter wheel at least this share. */
    boolean drive(double ax, double share) {
        act = Act.DRIVE;
        acceleration = ax;
        accelerationByRearTravel = 0;
        driveForce = driveForce(ax);
        leastShare = share;
        return balanced();
    }

    /** P = m·ax + rollingResistance·m·g, N. */
    double driveForce(double ax) {
        return mass * ax + rollingResistance * weight;
    }

    private boolean balanced() {
        System.arraycopy(state, 0, kept, 0, UNKNOWNS);
        if (newton()) {
            return true;
        }
        rest();
        if (newton()) {
            return true;
        }
        System.arraycopy(kept, 0, state, 0, UNKNOWNS);
        return false;
    }

    private boolean newton() {
        double worst = worstHere();
        for (int iteration = 0; iteration < MAX_ITERATIONS && worst < Double.POSITIVE_INFINITY; iteration++) {
            if (worst < TOLERANCE) {
                return true;
            }
            System.arraycopy(slopes, 0, solve.matrix, 0, slopes.length);
            if (solve.factor() == 0) {
                return false;
            }
            for (int i = 0; i < UNKNOWNS; i++) {
                step[i] = -left[i];
            }
            solve.solve(step);
            double part = 1;
            move(1);
            double next = worstHere();
            while (!(next < worst) && part > LEAST_PART) {
                part /= 2;
                move(-part);
                next = worstHere();
            }
            if (!(next < worst)) {
                move(-part);
                return worst < ACCEPTABLE && worstHere() <= worst;
            }
            worst = next;
        }
        return worst < ACCEPTABLE;
    }

    private void move(double part) {
        for (int i = 0; i < UNKNOWNS; i++) {
            state[i] += part * step[i];
        }
    }

    /** Largest of what is left over, over the car's weight; infinite where there is no such posture. */
    private double worstHere() {
        if (!at()) {
            return Double.POSITIVE_INFINITY;
        }
        double worst = 0;
        for (double each : left) {
            worst = Math.max(worst, Math.abs(each));
        }
        return Double.isNaN(worst) ? Double.POSITIVE_INFINITY : worst;
    }

    /** Sets balances and slopes. */
    private boolean at() {
        if (!front.stand(state) || !rear.stand(state)) {
            return false;
        }
        pull();
        boolean rolling = act == Act.DRIVE;
        front.carry(rolling);
        rear.carry(rolling);
        Arrays.fill(slopes, 0);
        axle(front, -1);
        axle(rear, 1);
        chassisTwist();
        if (act == Act.DRIVE) {
            shaftTorque();
        }
        if (Double.isInfinite(chassisStiffness)) {
            rigidChassis();
        }
        for (int i = 0; i < UNKNOWNS; i++) {
            left[i] /= weight;
        }
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] /= weight;
        }
        return true;
    }

    /** The forces along the car, of brakes or of the drive, at the loads and travels at hand. */
    private void pull() {
        front.coast();
        rear.coast();
        if (act == Act.DRIVE) {
            AxleAlong driven = drivenEnd == End.FRONT ? front : rear;
            driven.grip();
            share(driven);
            return;
        }
        if (act == Act.BRAKES_FOR) {
            brakes.reach(wanted * mass, rear.travel);
            acceleration = -wanted;
            accelerationByRearTravel = 0;
        } else {
            brakes.press(wanted, rear.travel);
            acceleration = -(brakes.front + brakes.rear) / mass;
            accelerationByRearTravel = -(brakes.frontByTravel + brakes.rearByTravel) / mass;
        }
        front.brake = -brakes.front / 2;
        front.brakeByRearTravel = -brakes.frontByTravel / 2;
        rear.brake = -brakes.rear / 2;
        rear.brakeByRearTravel = -brakes.rearByTravel / 2;
    }

    /**
     * Shares the drive force: in proportion to what the tyres hold, but the lighter wheel gets at least its share: half of it
     * open, 1/(1 + biasRatio) torque-biasing, nothing locked.
     */
    private void share(AxleAlong driven) {
        double sum = driven.capacity[0] + driven.capacity[1];
        double ofLeft = sum > 0 ? driven.capacity[0] / sum : 0.5;
        boolean free = ofLeft > leastShare && ofLeft < 1 - leastShare;
        if (!free) {
            ofLeft = Math.min(Math.max(ofLeft, leastShare), 1 - leastShare);
        }
        driven.drive[0] = ofLeft * driveForce;
        driven.drive[1] = driveForce - driven.drive[0];
        if (free) {
            double square = sum * sum;
            driven.driveByLoad[0][0] = driveForce * driven.capacity[1] / square * driven.capacityByLoad[0];
            driven.driveByLoad[0][1] = -driveForce * driven.capacity[0] / square * driven.capacityByLoad[1];
            driven.driveByLoad[1][0] = -driven.driveByLoad[0][0];
            driven.driveByLoad[1][1] = -driven.driveByLoad[0][1];
        }
    }

    /** The four balances of an axle and the part of the body over it; sign of the longitudinal load transfer: rear +. */
    private void axle(AxleAlong axle, int sign) {
        int at = axle.first;
        double gravity = Weights.GRAVITY;
        double transfer = mass * acceleration * cgHeight / wheelbase;
        double heave = state[at + AxleAlong.HEAVE];
        double roll = state[at + AxleAlong.ROLL];
        double arm = sprungHeight + heave - axle.rollCentre;
        double leaning = axle.sprungMass * gravity;
        double hung = axle.unsprungMass * gravity;
        left[at + BODY_HEAVE] = axle.bodyForce - leaning - sign * transfer;
        left[at + BODY_ROLL] = axle.bodyMoment - leaning * roll * arm;
        left[at + AXLE_HEAVE] = axle.loads() - axle.bodyForce - hung;
        left[at + AXLE_ROLL] = axle.loadMoment()
                - axle.bodyMoment
                - (leaning * axle.rollCentre + hung * axle.unsprungHeight) * axle.tyreTilt;
        double transferByTravel = mass * accelerationByRearTravel * cgHeight / wheelbase;
        for (int i = 0; i < UNKNOWNS; i++) {
            add(at + BODY_HEAVE, i, axle.bodyForceBy[i]);
            add(at + BODY_ROLL, i, axle.bodyMomentBy[i]);
            add(at + AXLE_HEAVE, i, -axle.bodyForceBy[i]);
            add(at + AXLE_ROLL, i, -axle.bodyMomentBy[i]);
        }
        add(at + BODY_HEAVE, POSTURE + AxleAlong.HEAVE, sign * transferByTravel);
        add(at + BODY_HEAVE, POSTURE + AxleAlong.LEFT_RISE, -sign * transferByTravel / 2);
        add(at + BODY_HEAVE, POSTURE + AxleAlong.RIGHT_RISE, -sign * transferByTravel / 2);
        for (int i = 0; i < POSTURE; i++) {
            add(at + BODY_ROLL, at + i, leaning * roll * axle.rollCentreBy[i]);
            add(at + AXLE_ROLL, at + i, -leaning * axle.tyreTilt * axle.rollCentreBy[i]);
        }
        add(at + BODY_ROLL, at + AxleAlong.HEAVE, -leaning * roll);
        add(at + BODY_ROLL, at + AxleAlong.ROLL, -leaning * arm);
        double tilting = (leaning * axle.rollCentre + hung * axle.unsprungHeight) / (2 * axle.halfTrack);
        for (int side = 0; side < 2; side++) {
            int column = at + AxleAlong.LEFT_RISE + side;
            double rightwards = side == 0 ? -1 : 1;
            add(at + AXLE_HEAVE, column, axle.loadByRise[side]);
            add(at + AXLE_ROLL, column, rightwards * (axle.halfTrack * axle.loadByRise[side] + tilting));
        }
    }

    /** The chassis between both body parts: C·(φ_r − φ_f) helps the front to roll and holds the rear, N·m. */
    private void chassisTwist() {
        double stiffness = Double.isInfinite(chassisStiffness) ? 0 : chassisStiffness;
        double carried = stiffness * (state[POSTURE + AxleAlong.ROLL] - state[AxleAlong.ROLL]);
        left[BODY_ROLL] -= carried;
        left[POSTURE + BODY_ROLL] += carried;
        add(BODY_ROLL, AxleAlong.ROLL, stiffness);
        add(BODY_ROLL, POSTURE + AxleAlong.ROLL, -stiffness);
        add(POSTURE + BODY_ROLL, POSTURE + AxleAlong.ROLL, stiffness);
        add(POSTURE + BODY_ROLL, AxleAlong.ROLL, -stiffness);
    }

    /** The propeller shaft turns the housing one way and, through the engine's mounts, the front body the other. */
    private void shaftTorque() {
        double torque = shaftTorquePerDrive * driveForce;
        left[BODY_ROLL] -= torque;
        left[(drivenEnd == End.FRONT ? 0 : POSTURE) + AXLE_ROLL] += torque;
    }

    /** One roll angle for the whole body: the front row takes the sum, the rear row says that both rolls are equal. */
    private void rigidChassis() {
        int rearRoll = POSTURE + BODY_ROLL;
        left[BODY_ROLL] += left[rearRoll];
        for (int i = 0; i < UNKNOWNS; i++) {
            slopes[BODY_ROLL * UNKNOWNS + i] += slopes[rearRoll * UNKNOWNS + i];
            slopes[rearRoll * UNKNOWNS + i] = 0;
        }
        left[rearRoll] = weight * (state[POSTURE + AxleAlong.ROLL] - state[AxleAlong.ROLL]);
        add(rearRoll, POSTURE + AxleAlong.ROLL, weight);
        add(rearRoll, AxleAlong.ROLL, -weight);
    }

    private void add(int row, int column, double slope) {
        slopes[row * UNKNOWNS + column] += slope;
    }

    /** What both wheels of an axle carry at a deceleration, m/s², at which the car stands, N: see the vertical balances above. */
    double loads(End end, double deceleration) {
        AxleAlong axle = axle(end);
        double transfer = mass * deceleration * cgHeight / wheelbase;
        return (axle.sprungMass + axle.unsprungMass) * Weights.GRAVITY + (end == End.FRONT ? transfer : -transfer);
    }

    AxleAlong axle(End end) {
        return end == End.FRONT ? front : rear;
    }

    /** Of the state at hand, m/s²: forwards positive. */
    double acceleration() {
        return acceleration;
    }

    /** Drive force of the state at hand, N. */
    double driveForce() {
        return driveForce;
    }

    /** Torque of the propeller shaft of the state at hand, N·m; zero where it turns no axle's housing. */
    double shaftTorque(double force) {
        return Math.abs(shaftTorquePerDrive) * force;
    }

    /**
     * An axle in the state at hand: loads and forces along the car of its tyres, drive alone and brake alone, N; travels of its
     * wheels, bump positive, m; roll of the body over it, rad.
     */
    public record OnAxle(
            double leftLoad,
            double rightLoad,
            double leftForward,
            double rightForward,
            double leftDrive,
            double rightDrive,
            double brake,
            double leftTravel,
            double rightTravel,
            double roll) {}

    /** An axle in the state at hand. */
    public OnAxle onAxle(End end) {
        AxleAlong axle = axle(end);
        double byRoll = axle.halfTrack * axle.suspensionRoll;
        return new OnAxle(
                axle.load[0],
                axle.load[1],
                axle.forward(Side.LEFT),
                axle.forward(Side.RIGHT),
                axle.drive[0],
                axle.drive[1],
                axle.brake,
                axle.travel - byRoll,
                axle.travel + byRoll,
                roll(end));
    }

    /** Whether a tyre is asked for more along the car than its own friction holds. */
    public boolean beyondGrip() {
        return Math.min(leastLeft(End.FRONT, Double.NaN), leastLeft(End.REAR, Double.NaN)) < 0;
    }

    /** Heave of the body over an axle, up positive, m. */
    double heave(End end) {
        return state[axle(end).first + AxleAlong.HEAVE];
    }

    /** Roll of the body over an axle, right side down positive, rad. */
    double roll(End end) {
        return state[axle(end).first + AxleAlong.ROLL];
    }

    /** Pitch = (ζ_r − ζ_f)/L, nose down positive, rad. */
    double pitch() {
        return (heave(End.REAR) - heave(End.FRONT)) / wheelbase;
    }

    /**
     * What the wheel nearest to its limit has left along the car, N: the least of capacity less |Fx| over both axles or one.
     *
     * @param friction for all loads; NaN: the tyres' own
     */
    double leastLeft(End end, double friction) {
        AxleAlong axle = axle(end);
        if (Double.isNaN(friction)) {
            axle.grip();
        } else {
            axle.grip(friction);
        }
        return Math.min(left(axle, Side.LEFT), left(axle, Side.RIGHT));
    }

    private static double left(AxleAlong axle, Side side) {
        return axle.capacity[side.index()] - Math.abs(axle.forward(side));
    }

    /** The side of an axle with less left, its grip asked before; the left one where both have as much. */
    Side nearer(End end) {
        AxleAlong axle = axle(end);
        double onLeft = left(axle, Side.LEFT);
        double onRight = left(axle, Side.RIGHT);
        return onRight < onLeft - ALIKE * weight ? Side.RIGHT : Side.LEFT;
    }

    /** Two wheels that differ by less of the car's weight are alike. */
    private static final double ALIKE = 1e-9;

    /** Copies the state, to come back to it. */
    void copyState(double[] into) {
        System.arraycopy(state, 0, into, 0, UNKNOWNS);
    }

    void startFrom(double[] from) {
        System.arraycopy(from, 0, state, 0, UNKNOWNS);
    }

    /** For tests: what is left over and its slopes at any state. */
    void evaluate(double[] at, double[] leftInto, double[] slopesInto) {
        System.arraycopy(at, 0, state, 0, UNKNOWNS);
        at();
        System.arraycopy(left, 0, leftInto, 0, UNKNOWNS);
        System.arraycopy(slopes, 0, slopesInto, 0, slopes.length);
    }
}
