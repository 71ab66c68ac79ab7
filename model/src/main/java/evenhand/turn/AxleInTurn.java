package evenhand.turn;

import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import evenhand.tyre.LateralLaw;
import evenhand.tyre.SideForce;
import evenhand.tyre.Tyre;

/**
 * One axle of the turn: what its two tyres, springs and stops do at given unknowns, and the slopes of all that over the
 * unknowns that the axle feels. {@link #at} sets the fields and allocates nothing.
 *
 * <p>Left turn, axes ISO 8855. Side 0 is left (σ = +1), side 1 is right (σ = −1). Slopes are arrays over the axle's own
 * unknowns, {@link #STEER} to {@link #COMPLIANCE}.
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
    static final int UNKNOWNS = 8;

    /** Sums over both wheels along the car's axes, N and N·m, and their slopes. */
    double forwardForce;

    double sideForce;
    double yawMoment;
    double aligningMoment;
    final double[] forwardForceBy = new double[UNKNOWNS];
    final double[] sideForceBy = new double[UNKNOWNS];
    final double[] yawMomentBy = new double[UNKNOWNS];
    final double[] aligningMomentBy = new double[UNKNOWNS];

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
    final double[] rollCentreBy = new double[UNKNOWNS];
    final double[] suspensionRollBy = new double[UNKNOWNS];
    final double[] tyreTiltBy = new double[UNKNOWNS];

    /** Which pieces of springs, stops, contact and differential hold: it changes where a slope jumps. */
    long pieces;

    /** By side: what a row shows, and slopes that the budget needs. */
    final double[] load = new double[2];

    final double[] forwardForces = new double[2];
    final double[] sideForces = new double[2];
    final double[] wheelSideForces = new double[2]; // across the wheel, what drive leaves
    final double[] available = new double[2]; // D·e
    final double[] sideLeft = new double[2]; // e
    final double[] aligningMoments = new double[2];
    final double[] slip = new double[2];
    final double[] enteredSlip = new double[2];
    final double[] wheelSteer = new double[2];
    final double[] lean = new double[2];
    final double[] wheelTravel = new double[2];
    final double[][] slipBy = new double[2][UNKNOWNS];
    final double[][] leanBy = new double[2][UNKNOWNS];

    final Alignment alignment;
    final double camberThrustRatio;
    final double restRollCentre;
    final AxleSuspension suspension;
    final double[] restLoad = new double[2];

    private final boolean front;
    private final boolean live;
    private final double x; // of the axle ahead of the centre of gravity, m
    private final double[] y = new double[2]; // of the wheels left of the centre of gravity, m
    private final double radius;
    private final double track;
    private final double tyreRate;
    private final double camberPerBump;
    private final double perBump;
    private final double ackermannShare;
    private final double ackermannHalf; // half the track over the wheelbase
    private final double rollingResistance;
    private final double frictionRatio;
    private final LateralLaw law;
    private final DriveShares driveShares;
    private final SideForce tyre;
    private final double[] turnSpeed = new double[2]; // n_j = v_j/V
    private final double[] steerBy = new double[UNKNOWNS];
    private final double[] sideForceDifferenceBy = new double[UNKNOWNS]; // left less right

    AxleInTurn(Car car, End end, double radius) {
        Axle axle = car.axle(end);
        this.radius = radius;
        front = end == End.FRONT;
        live = axle instanceof Axle.Live;
        track = axle.track();
        alignment = axle.alignment();
        suspension = AxleSuspension.of(car, end);
        restRollCentre = axle.rollCentreHeight();
        perBump = axle.rollCentrePerBump();
        camberPerBump = axle instanceof Axle.Independent independent ? independent.camberPerBump() : 0;
        x = front ? car.cgBehindFront() : car.cgBehindFront() - car.wheelbase();
        double offset = cgOffset(car);
        for (int side = 0; side < 2; side++) {
            double sigma = side == 0 ? 1 : -1;
            restLoad[side] = car.staticLoad(end, side == 0 ? Side.LEFT : Side.RIGHT);
            y[side] = sigma * track / 2 - offset;
        }
        Tyre fitted = axle.tyre();
        law = fitted.lateral();
        tyre = SideForce.of(law);
        tyreRate = fitted.verticalRate();
        camberThrustRatio = law.camberThrustRatio();
        frictionRatio = fitted.longitudinalFrictionRatio();
        driveShares = new DriveShares(car, end);
        rollingResistance = car.rollingResistance();
        ackermannShare = car.steering().ackermannShare();
        ackermannHalf = track / (2 * car.wheelbase());
        constantSlopes();
    }

    /** How far the centre of gravity lies to the left of the middle, m. */
    private static double cgOffset(Car car) {
        double moment = 0;
        for (End end : End.values()) {
            moment += (car.staticLoad(end, Side.LEFT) - car.staticLoad(end, Side.RIGHT))
                    * car.axle(end).track()
                    / 2;
        }
        return moment / (car.weights().mass() * Weights.GRAVITY);
    }

    private void constantSlopes() {
        suspensionRollBy[ROLL] = 1;
        suspensionRollBy[LEFT_RISE] = -1 / track;
        suspensionRollBy[RIGHT_RISE] = 1 / track;
        tyreTiltBy[LEFT_RISE] = 1 / track;
        tyreTiltBy[RIGHT_RISE] = -1 / track;
        rollCentreBy[HEAVE] = -perBump;
        rollCentreBy[LEFT_RISE] = (perBump + 1) / 2;
        rollCentreBy[RIGHT_RISE] = (perBump + 1) / 2;
        steerBy[COMPLIANCE] = front ? -1 : 1;
        for (int side = 0; side < 2; side++) {
            double sigma = side == 0 ? 1 : -1;
            double[] by = leanBy[side];
            if (live) {
                by[LEFT_RISE] = 1 / track;
                by[RIGHT_RISE] = -1 / track;
            } else {
                by[ROLL] = 1 - camberPerBump * track / 2;
                by[HEAVE] = -sigma * camberPerBump;
                by[side == 0 ? LEFT_RISE : RIGHT_RISE] = sigma * camberPerBump;
            }
        }
    }

    /**
     * Sets all fields.
     *
     * @return false where a wheel is asked for more drive or drag than its friction: there is no such state
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
        double rise = (leftRise + rightRise) / 2;
        travel = rise - heave;
        tyreTilt = (leftRise - rightRise) / track;
        suspensionRoll = roll - tyreTilt;
        rollCentre = restRollCentre + perBump * travel + rise;
        wheelTravel[0] = travel - track / 2 * suspensionRoll;
        wheelTravel[1] = travel + track / 2 * suspensionRoll;

        loadOf(0, leftRise);
        loadOf(1, rightRise);
        pieces = (load[0] > 0 ? 1L : 0) + (load[1] > 0 ? 2 : 0);
        loads = load[0] + load[1];
        loadDifference = load[1] - load[0] - (restLoad[1] - restLoad[0]);

        double cos = Math.cos(sideslip);
        double sin = Math.sin(sideslip);
        turnSpeed[0] = cos - y[0] / radius;
        turnSpeed[1] = cos - y[1] / radius;
        driveShares.at(drive, sin, turnSpeed, load);
        pieces += driveShares.piece;

        clear();
        for (int side = 0; side < 2; side++) {
            if (!wheel(side, steer, roll, cos, sin, compliance)) {
                return false;
            }
        }
        body();
        return true;
    }

    private void loadOf(int side, double rise) {
        double held = restLoad[side] - tyreRate * rise;
        boolean down = held > 0;
        load[side] = down ? held : 0;
        int column = side == 0 ? LEFT_RISE : RIGHT_RISE;
        loadsBy[column] = down ? -tyreRate : 0;
        loadDifferenceBy[column] = down ? (side == 0 ? tyreRate : -tyreRate) : 0;
    }

    private void clear() {
        forwardForce = 0;
        sideForce = 0;
        yawMoment = 0;
        aligningMoment = 0;
        for (int i = 0; i < UNKNOWNS; i++) {
            forwardForceBy[i] = 0;
            sideForceBy[i] = 0;
            yawMomentBy[i] = 0;
            aligningMomentBy[i] = 0;
            sideForceDifferenceBy[i] = 0;
        }
    }

    private boolean wheel(int side, double steer, double roll, double cos, double sin, double compliance) {
        double sigma = side == 0 ? 1 : -1;
        steerOf(side, sigma, steer, compliance);
        double across = sin + x / radius;
        double along = turnSpeed[side];
        slip[side] = wheelSteer[side] - Math.atan2(across, along);
        double[] slipSlopes = slipBy[side];
        slipSlopes[STEER] = steerBy[STEER];
        slipSlopes[COMPLIANCE] = steerBy[COMPLIANCE];
        slipSlopes[SIDESLIP] = -(along * cos + across * sin) / (along * along + across * across);

        lean[side] = live
                ? tyreTilt - sigma * alignment.camber()
                : roll + sigma * (camberPerBump * wheelTravel[side] - alignment.camber());

        tyre.at(slip[side], lean[side], load[side]);
        enteredSlip[side] = tyre.enteredSlip;
        double drag = rollingResistance * load[side];
        double longitudinal = driveShares.share[side] - drag; // share stays zero where the axle is not driven
        double most = frictionRatio * tyre.peak;
        double used = 0;
        if (longitudinal != 0) {
            used = longitudinal / most;
            if (!(Math.abs(used) < 1)) {
                return false;
            }
        }
        double left = Math.sqrt(1 - used * used);
        double across0 = tyre.force;
        double lateral = across0 * left;
        double moment = -tyre.trail * lateral + tyre.residualMoment;
        double steerCos = Math.cos(wheelSteer[side]);
        double steerSin = Math.sin(wheelSteer[side]);
        double forward = longitudinal * steerCos - lateral * steerSin;
        double sideways = longitudinal * steerSin + lateral * steerCos;

        sideLeft[side] = left;
        available[side] = tyre.peak * left;
        wheelSideForces[side] = lateral;
        forwardForces[side] = forward;
        sideForces[side] = sideways;
        aligningMoments[side] = moment;
        forwardForce += forward;
        sideForce += sideways;
        aligningMoment += moment;
        yawMoment += x * sideways - y[side] * forward + moment;

        double[] leanSlopes = leanBy[side];
        int riseColumn = side == 0 ? LEFT_RISE : RIGHT_RISE;
        double ownLoadBy = load[side] > 0 ? -tyreRate : 0;
        double leftLoadBy = load[0] > 0 ? -tyreRate : 0;
        double rightLoadBy = load[1] > 0 ? -tyreRate : 0;
        for (int i = 0; i < UNKNOWNS; i++) {
            double slipI = slipSlopes[i];
            double leanI = leanSlopes[i];
            double loadI = i == riseColumn ? ownLoadBy : 0;
            double longitudinalI = -rollingResistance * loadI;
            if (driveShares.driven) {
                switch (i) {
                    case DRIVE -> longitudinalI += driveShares.shareByDrive[side];
                    case SIDESLIP -> longitudinalI += driveShares.shareBySideslip[side];
                    case LEFT_RISE -> longitudinalI += driveShares.shareByLeftLoad[side] * leftLoadBy;
                    case RIGHT_RISE -> longitudinalI += driveShares.shareByRightLoad[side] * rightLoadBy;
                    default -> {}
                }
            }
            double forceI = tyre.forceBySlip * slipI + tyre.forceByLean * leanI + tyre.forceByLoad * loadI;
            double leftI = 0;
            if (used != 0) {
                double peakI = tyre.peakByLean * leanI + tyre.peakByLoad * loadI;
                double usedI = (longitudinalI - used * frictionRatio * peakI) / most;
                leftI = -used * usedI / left;
            }
            double lateralI = forceI * left + across0 * leftI;
            double trailI = tyre.trailBySlip * slipI + tyre.trailByLean * leanI + tyre.trailByLoad * loadI;
            double residualI = tyre.residualMomentBySlip * slipI
                    + tyre.residualMomentByLean * leanI
                    + tyre.residualMomentByLoad * loadI;
            double momentI = -trailI * lateral - tyre.trail * lateralI + residualI;
            double forwardI = longitudinalI * steerCos - lateralI * steerSin - sideways * steerBy[i];
            double sidewaysI = longitudinalI * steerSin + lateralI * steerCos + forward * steerBy[i];
            forwardForceBy[i] += forwardI;
            sideForceBy[i] += sidewaysI;
            aligningMomentBy[i] += momentI;
            yawMomentBy[i] += x * sidewaysI - y[side] * forwardI + momentI;
            sideForceDifferenceBy[i] += sigma * sidewaysI;
        }
        return true;
    }

    /** Steer of a wheel: at the front the reference steer, moved towards the Ackermann angle by its share. */
    private void steerOf(int side, double sigma, double steer, double compliance) {
        if (!front) {
            wheelSteer[side] = compliance - sigma * alignment.toe();
            return;
        }
        double tan = Math.tan(steer);
        double turned = 1 - sigma * ackermannHalf * tan;
        double ackermannTan = tan / turned;
        double ackermann = Math.atan(ackermannTan);
        double ackermannBySteer = (1 + tan * tan) / (turned * turned) / (1 + ackermannTan * ackermannTan);
        wheelSteer[side] = steer + ackermannShare * (ackermann - steer) - compliance - sigma * alignment.toe();
        steerBy[STEER] = 1 + ackermannShare * (ackermannBySteer - 1);
    }

    /** Springs, stops and bar; and of an independent axle the jacking of its force lines, Σ V_j = −(2z/t)·(Fy_L − Fy_R). */
    private void body() {
        suspension.at(travel, suspensionRoll, rollCentre);
        pieces += 16 * suspension.pieces;
        bodyForce = suspension.force;
        bodyMoment = suspension.moment;
        double difference = sideForces[0] - sideForces[1];
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

    /** How many states {@link #pieces} can tell apart. */
    long pieceCount() {
        return 16 * suspension.pieceCount();
    }

    double tyreRate() {
        return tyreRate;
    }

    double halfTrack() {
        return track / 2;
    }

    /** Side force over what the loads, lean and drive allow. */
    double gripUsed() {
        return Math.abs(wheelSideForces[0] + wheelSideForces[1]) / (available[0] + available[1]);
    }
}
