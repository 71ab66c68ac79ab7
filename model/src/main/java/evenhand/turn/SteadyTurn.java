package evenhand.turn;

import static evenhand.turn.Equilibrium.ACCELERATION;
import static evenhand.turn.Equilibrium.along;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * The steady turn of one car: from straight ahead along the branch of equilibria to the fold, the limit.
 *
 * <p>A left turn is solved; a right turn is the mirrored car's left turn, seen in the mirror. {@link Equilibrium} has the
 * balances, {@link Branch} follows them, {@link TurnEvents} finds what happens on the way; this class asks and puts the
 * answers into words of SI. Made once per car and circle; it may be asked again and again. One per thread.
 *
 * <p>Source: equilibrium after Milliken &amp; Milliken 1995 ch. 5 and 18, Guiggiani 2018 ch. 6; constant radius as
 * ISO 4138.
 */
public final class SteadyTurn {
    /** Rows of a curve, the paces and the limit not counted. */
    private static final int ROWS = 50;

    /** A driven wheel with less than this part of its side force left has spent its grip on drive. */
    private static final double SPENT = 0.3;

    private final Car car;
    private final double radius;
    private final Direction direction;
    private final Equilibrium equilibrium;
    private final Branch branch;

    private SteadyTurn(Car car, double radius, Direction direction) {
        this.car = direction == Direction.LEFT ? car : car.mirrored();
        this.radius = radius;
        this.direction = direction;
        equilibrium = new Equilibrium(this.car, radius);
        branch = new Branch(equilibrium);
    }

    /**
     * Asks a car for the whole turn.
     *
     * @param car settled at its ride height
     * @param paces lateral accelerations at which to answer in full, m/s², above zero
     * @param radius of the circle that the centre of gravity follows, m
     * @param direction of the turn
     */
    public static TurnAnswer answer(Car car, List<Double> paces, double radius, Direction direction) {
        SteadyTurn turn = new SteadyTurn(car, radius, direction);
        Optional<TurnAnswer.NoTurn> none = turn.noTurn();
        return none.isPresent() ? none.get() : turn.whole(paces);
    }

    /**
     * Asks a car for its paces and its limit alone, in a quarter of the time: for comparing and searching.
     *
     * @param car settled at its ride height
     * @param paces lateral accelerations, m/s², above zero
     * @param radius of the circle that the centre of gravity follows, m
     * @param direction of the turn
     */
    public static PacesAnswer atPaces(Car car, List<Double> paces, double radius, Direction direction) {
        SteadyTurn turn = new SteadyTurn(car, radius, direction);
        Optional<TurnAnswer.NoTurn> none = turn.noTurn();
        return none.isPresent() ? none.get() : new PacesAnswer.Paces(direction, turn.paces(paces), turn.fold());
    }

    /** The same question again and again, for measuring: solves the branch, gives its limit in m/s². */
    public static OptionalDouble limit(Car car, double radius) {
        SteadyTurn turn = new SteadyTurn(car, radius, Direction.LEFT);
        Branch.End end = turn.follow();
        return end == Branch.End.FOLD || end == Branch.End.FRICTION_SPENT
                ? OptionalDouble.of(turn.branch.limit())
                : OptionalDouble.empty();
    }

    private static Optional<String> fallsOver(Car car) {
        HandSums.Outcome outcome = HandSums.of(car, Weights.GRAVITY);
        if (outcome instanceof HandSums.FallsOver falls) {
            return Optional.of(falls.text());
        }
        HandSums sums = ((HandSums.Found) outcome).sums();
        double twist = car.chassisTorsionalStiffness();
        if (Double.isInfinite(twist)) {
            return Optional.empty();
        }
        double front = sums.front().rollStiffness() - overturning(car, sums, End.FRONT);
        double rear = sums.rear().rollStiffness() - overturning(car, sums, End.REAR);
        return front + twist > 0 && (front + twist) * (rear + twist) > twist * twist
                ? Optional.empty()
                : Optional.of("one end is too soft in roll for its weight and the chassis too weak to help it: the car"
                        + " falls over on its springs");
    }

    private static double overturning(Car car, HandSums sums, End end) {
        double arm = sums.sprung().height() - car.axle(end).rollCentreHeight();
        return sums.sprung().mass() * sums.sprung().share(end) * Weights.GRAVITY * arm;
    }

    private Branch.End follow() {
        return branch.follow(car.wheelbase(), car.wheelbase() - car.cgBehindFront());
    }

    /** Follows the branch; says why, where there is none. */
    private Optional<TurnAnswer.NoTurn> noTurn() {
        Optional<String> falls = fallsOver(car);
        if (falls.isPresent()) {
            return Optional.of(new TurnAnswer.NoTurn(TurnAnswer.Reason.FALLS_OVER, falls.get()));
        }
        return switch (follow()) {
            case NO_START ->
                Optional.of(new TurnAnswer.NoTurn(
                        TurnAnswer.Reason.NO_EQUILIBRIUM,
                        "there is no balance of forces even at 0.02 g on this circle"));
            case NO_START_FOR_FRICTION ->
                Optional.of(new TurnAnswer.NoTurn(
                        TurnAnswer.Reason.WHEELSPIN,
                        "a driven wheel has not enough grip to keep the car rolling even at 0.02 g on this circle"));
            case ENDLESS ->
                Optional.of(new TurnAnswer.NoTurn(
                        TurnAnswer.Reason.NO_EQUILIBRIUM,
                        "the tyres or the down-force hold beyond 20 g: the sums find no limit"));
            case FOLD, FRICTION_SPENT -> Optional.empty();
        };
    }

    private List<PaceAnswer> paces(List<Double> paces) {
        List<PaceAnswer> answers = new ArrayList<>();
        for (double pace : paces) {
            boolean held = branch.atAcceleration(pace) || (pace > 0 && pace < Branch.START && branch.back(pace));
            answers.add(held ? new PaceAnswer.InBalance(rowHere(), budget()) : new PaceAnswer.BeyondLimit(pace));
        }
        return answers;
    }

    private TurnAnswer whole(List<Double> paces) {
        List<PaceAnswer> paceAnswers = paces(paces);
        TreeSet<Double> accelerations = new TreeSet<>();
        for (PaceAnswer answer : paceAnswers) {
            if (answer instanceof PaceAnswer.InBalance && answer.lateralAcceleration() >= Branch.START) {
                accelerations.add(answer.lateralAcceleration());
            }
        }
        double limit = branch.limit();
        for (int i = 0; i < ROWS; i++) {
            accelerations.add(Branch.START + (limit - Branch.START) * i / ROWS);
        }
        List<TurnRow> rows = new ArrayList<>();
        for (double acceleration : accelerations) {
            if (branch.atAcceleration(acceleration)) {
                rows.add(rowHere());
            }
        }
        List<TurnEvent> events = new ArrayList<>(new TurnEvents(equilibrium, branch).find());
        events.sort(Comparator.comparingDouble(TurnEvent::lateralAcceleration));
        if (direction == Direction.RIGHT) {
            events.replaceAll(TurnEvent::mirrored);
        }
        Limit fold = fold();
        rows.removeIf(row -> row.lateralAcceleration() >= fold.lateralAcceleration());
        rows.add(fold.row());
        return new TurnAnswer.Turns(radius, direction, paceAnswers, fold, events, rows);
    }

    private TurnRow rowHere() {
        return mirrored(row(OptionalDouble.of(branch.derivative[Equilibrium.STEER]), rollDerivative()));
    }

    private TurnRow mirrored(TurnRow row) {
        return direction == Direction.LEFT ? row : row.mirrored();
    }

    private Limit fold() {
        branch.atState(branch.count() - 1);
        double frontRate = meanSlipAlong(true, branch.tangent);
        double rearRate = meanSlipAlong(false, branch.tangent);
        End first = Math.abs(frontRate) > Math.abs(rearRate) ? End.FRONT : End.REAR;
        Optional<Wheel> spinning = Optional.empty();
        AxleInTurn driven = car.drive().axle() == End.FRONT ? equilibrium.front : equilibrium.rear;
        int worse = driven.sideLeft[0] < driven.sideLeft[1] ? 0 : 1;
        if (driven.sideLeft[worse] < SPENT) {
            Wheel wheel = Wheel.values()[(car.drive().axle() == End.FRONT ? 0 : 2) + worse];
            spinning = Optional.of(direction == Direction.LEFT ? wheel : wheel.mirrored());
        }
        return new Limit(mirrored(row(OptionalDouble.empty(), OptionalDouble.empty())), first, spinning);
    }

    private double meanSlipAlong(boolean front, double[] way) {
        AxleInTurn axle = front ? equilibrium.front : equilibrium.rear;
        return (along(axle.slipBy[0], front, way) + along(axle.slipBy[1], front, way)) / 2;
    }

    private OptionalDouble rollDerivative() {
        return OptionalDouble.of(equilibrium.frontShare * branch.derivative[Equilibrium.FRONT_ROLL]
                + equilibrium.rearShare * branch.derivative[Equilibrium.REAR_ROLL]);
    }

    /** The budget at the state just found: tangents that add up to the understeer gradient. */
    private PaceAnswer.Budget budget() {
        double[] way = branch.derivative;
        double camber = camberAlong(true, way) - camberAlong(false, way);
        double tyres = meanSlipAlong(true, way) - meanSlipAlong(false, way) - camber;
        double rollSteer = 0;
        double lateralForce = 0;
        double aligningTorque = 0;
        for (boolean front : new boolean[] {true, false}) {
            AxleInTurn axle = front ? equilibrium.front : equilibrium.rear;
            rollSteer += axle.alignment.rollSteer() * along(axle.suspensionRollBy, front, way);
            lateralForce += axle.alignment.lateralForceSteer() * along(axle.sideForceBy, front, way);
            aligningTorque -= axle.alignment.aligningTorqueSteer() * along(axle.aligningMomentBy, front, way);
        }
        double total = way[Equilibrium.STEER];
        double rest = total - tyres - camber - rollSteer - lateralForce - aligningTorque;
        return new PaceAnswer.Budget(tyres, camber, rollSteer, lateralForce, aligningTorque, rest);
    }

    private double camberAlong(boolean front, double[] way) {
        AxleInTurn axle = front ? equilibrium.front : equilibrium.rear;
        return axle.camberThrustRatio * (along(axle.leanBy[0], front, way) + along(axle.leanBy[1], front, way)) / 2;
    }

    private TurnRow row(OptionalDouble understeerGradient, OptionalDouble rollGradient) {
        double[] state = branch.state;
        double acceleration = state[ACCELERATION];
        double b = car.wheelbase() - car.cgBehindFront();
        List<WheelState> wheels = new ArrayList<>(4);
        for (AxleInTurn axle : new AxleInTurn[] {equilibrium.front, equilibrium.rear}) {
            for (int side = 0; side < 2; side++) {
                wheels.add(new WheelState(
                        axle.load[side],
                        axle.sideForces[side],
                        axle.forwardForces[side],
                        axle.aligningMoments[side],
                        axle.slip[side],
                        axle.wheelSteer[side],
                        axle.lean[side],
                        axle.wheelTravel[side],
                        axle.sideLeft[side]));
            }
        }
        double frontRoll = state[Equilibrium.FRONT_ROLL];
        double rearRoll = state[Equilibrium.REAR_ROLL];
        return new TurnRow(
                acceleration,
                Math.sqrt(acceleration * radius),
                state[Equilibrium.STEER],
                Math.atan(car.wheelbase() / Math.sqrt(radius * radius - b * b)),
                understeerGradient,
                rollGradient,
                state[Equilibrium.SIDESLIP],
                equilibrium.frontShare * frontRoll + equilibrium.rearShare * rearRoll,
                frontRoll,
                rearRoll,
                state[Equilibrium.FRONT_HEAVE],
                state[Equilibrium.REAR_HEAVE],
                equilibrium.front.rollCentre,
                equilibrium.rear.rollCentre,
                equilibrium.front.loadDifference / 2,
                equilibrium.rear.loadDifference / 2,
                equilibrium.front.gripUsed(),
                equilibrium.rear.gripUsed(),
                state[Equilibrium.DRIVE],
                equilibrium.dragPerAcceleration() * acceleration,
                wheels);
    }
}
