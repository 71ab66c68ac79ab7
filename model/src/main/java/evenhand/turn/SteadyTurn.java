package evenhand.turn;

import static evenhand.turn.Equilibrium.ACCELERATION;
import static evenhand.turn.Equilibrium.STEER;
import static evenhand.turn.Equilibrium.along;

import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * The steady turn of one car: from straight ahead along the branch of equilibria to the limit that a driver meets, and on
 * to the fold.
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

    /** So often the deceleration without any drive is improved, each time by a hundredth of what is left or less. */
    private static final int COASTING = 4;

    /** An axle that uses this part of its grip slides: common practice, no source. */
    private static final double SLIDING = 0.9;

    private final Car car;
    private final double radius;
    private final Direction direction;
    private final Equilibrium equilibrium;
    private final Branch branch;

    SteadyTurn(Car car, double radius, Direction direction) {
        this(car, radius, direction, Along.NONE);
    }

    private SteadyTurn(Car car, double radius, Direction direction, Along along) {
        this.car = direction == Direction.LEFT ? car : car.mirrored();
        this.radius = radius;
        this.direction = direction;
        equilibrium = new Equilibrium(this.car, radius, along);
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
        return answer(car, paces, radius, direction, Along.NONE);
    }

    /**
     * The same of the moment at which its speed begins to change.
     *
     * @param along what changes it
     */
    public static TurnAnswer answer(Car car, List<Double> paces, double radius, Direction direction, Along along) {
        SteadyTurn turn = new SteadyTurn(car, radius, direction, along);
        Followed followed = turn.follow(Branch.Until.FOLD);
        if (followed.none().isPresent()) {
            return along.byBrakes()
                    ? coasts(car, radius, direction, along)
                            .orElse(followed.none().get())
                    : followed.none().get();
        }
        TurnAnswer.Turns answer = turn.whole(paces, followed.end());
        return along.isSteady() ? answer : against(new SteadyTurn(car, radius, direction), answer);
    }

    /** An answer beside the steady turn of the same car. */
    private static TurnAnswer.Turns against(SteadyTurn steady, TurnAnswer.Turns answer) {
        Followed followed = steady.follow(Branch.Until.LIMIT);
        if (followed.none().isPresent()) {
            return answer;
        }
        List<PaceAnswer> paces = new ArrayList<>();
        for (PaceAnswer pace : answer.paces()) {
            paces.add(
                    pace instanceof PaceAnswer.InBalance here
                            ? here.against(
                                    steady.find(pace.lateralAcceleration())
                                            ? Optional.of(steady.rowHere())
                                            : Optional.empty())
                            : pace);
        }
        return new TurnAnswer.Turns(
                answer.radius(),
                answer.direction(),
                paces,
                answer.limit(),
                answer.events(),
                answer.rows(),
                Optional.of(steady.limit(followed.end())));
    }

    /** That there is nothing to brake, where drag and rolling alone slow the car more in the gentlest bend. */
    private static Optional<TurnAnswer.NoTurn> coasts(Car car, double radius, Direction direction, Along along) {
        double gain = 0;
        for (int i = 0; i < COASTING; i++) {
            SteadyTurn coasting = new SteadyTurn(car, radius, direction, new Along(gain, Along.By.ENGINE));
            if (coasting.branch.follow(Branch.Until.LIMIT) == Branch.End.NO_START) {
                return Optional.empty();
            }
            coasting.branch.atState(0);
            gain -= coasting.branch.state[Equilibrium.DRIVE] / car.weights().mass();
        }
        return gain > along.acceleration()
                ? Optional.empty()
                : none(
                        TurnAnswer.Reason.NO_EQUILIBRIUM,
                        String.format(Locale.ROOT, "coasting alone slows it by %.2f g", -gain / Weights.GRAVITY));
    }

    /**
     * The same turn without its curve, and without what lies beyond the limit: of the rows the first and that of the limit. For
     * looking at what happens on the way, in a third of the time.
     *
     * @param car settled at its ride height
     * @param paces lateral accelerations, m/s², above zero
     * @param radius of the circle that the centre of gravity follows, m
     * @param direction of the turn
     */
    public static TurnAnswer toLimit(Car car, List<Double> paces, double radius, Direction direction) {
        SteadyTurn turn = new SteadyTurn(car, radius, direction);
        Followed followed = turn.follow(Branch.Until.LIMIT);
        return followed.none().isPresent() ? followed.none().get() : turn.ends(paces, followed.end());
    }

    /**
     * Asks a car for its paces and its limit alone, in a quarter of the time: for comparing and searching. It does not look
     * beyond the limit.
     *
     * @param car settled at its ride height
     * @param paces lateral accelerations, m/s², above zero
     * @param radius of the circle that the centre of gravity follows, m
     * @param direction of the turn
     */
    public static PacesAnswer atPaces(Car car, List<Double> paces, double radius, Direction direction) {
        SteadyTurn turn = new SteadyTurn(car, radius, direction);
        Followed followed = turn.follow(Branch.Until.LIMIT);
        return followed.none().isPresent()
                ? followed.none().get()
                : new PacesAnswer.Paces(direction, turn.paces(paces), turn.limit(followed.end()));
    }

    /** The states of a turn at some paces, as far as they lie within the limit. */
    static List<double[]> states(Car car, List<Double> paces, double radius, Direction direction) {
        SteadyTurn turn = new SteadyTurn(car, radius, direction);
        List<double[]> states = new ArrayList<>();
        if (turn.follow(Branch.Until.LIMIT).none().isEmpty()) {
            for (double pace : paces) {
                if (pace <= turn.branch.limit() && turn.find(pace)) {
                    states.add(turn.branch.state.clone());
                }
            }
        }
        return states;
    }

    /** The row at a pace, found from the state of a car that hardly differs. */
    Optional<TurnRow> rowFrom(double[] state, double pace) {
        return branch.from(state, pace) ? Optional.of(rowWithoutGradients()) : Optional.empty();
    }

    /** The limit alone, m/s²; empty where there is no turn. */
    public static OptionalDouble limit(Car car, double radius) {
        SteadyTurn turn = new SteadyTurn(car, radius, Direction.LEFT);
        Followed followed = turn.follow(Branch.Until.LIMIT);
        return followed.none().isPresent() ? OptionalDouble.empty() : OptionalDouble.of(turn.branch.limit());
    }

    /** How a walk ended, and why there is no turn where there is none. */
    private record Followed(Branch.End end, Optional<TurnAnswer.NoTurn> none) {}

    /** Why a car at rest falls over on its springs; nothing of one that stands. */
    public static Optional<String> fallsOver(Car car) {
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
        double arm = sums.sprung().height() - car.axle(end).geometry().rollCentreHeight();
        return sums.sprung().mass() * sums.sprung().share(end) * Weights.GRAVITY * arm;
    }

    private Followed follow(Branch.Until until) {
        Optional<String> falls = fallsOver(car);
        if (falls.isPresent()) {
            return new Followed(
                    Branch.End.NO_START, Optional.of(new TurnAnswer.NoTurn(TurnAnswer.Reason.FALLS_OVER, falls.get())));
        }
        Branch.End end = branch.follow(until);
        return new Followed(end, noTurn(end));
    }

    private Optional<TurnAnswer.NoTurn> noTurn(Branch.End end) {
        boolean shared = !(car.drive().differential() instanceof Drive.Differential.Open);
        return switch (end) {
            case NO_START, NO_START_FOR_FRICTION ->
                shared
                        ? none(
                                TurnAnswer.Reason.NO_EQUILIBRIUM,
                                "this differential and this bend are beyond the model: it finds no balance of forces"
                                        + " with both driven wheels on one shaft even at 0.02 g")
                        : end == Branch.End.NO_START
                                ? none(
                                        TurnAnswer.Reason.NO_EQUILIBRIUM,
                                        "there is no balance of forces even at 0.02 g on this circle")
                                : none(
                                        TurnAnswer.Reason.WHEELSPIN,
                                        "a driven wheel has not enough grip to keep the car rolling even at 0.02 g on"
                                                + " this circle");
            case ENDLESS ->
                none(
                        TurnAnswer.Reason.NO_EQUILIBRIUM,
                        "the tyres or the down-force hold beyond 20 g: the sums find no limit");
            case FOLD, FRICTION_SPENT, LOST_HOLD, GAVE_UP -> Optional.empty();
        };
    }

    private static Optional<TurnAnswer.NoTurn> none(TurnAnswer.Reason reason, String text) {
        return Optional.of(new TurnAnswer.NoTurn(reason, text));
    }

    private List<PaceAnswer> paces(List<Double> paces) {
        List<PaceAnswer> answers = new ArrayList<>();
        for (double pace : paces) {
            if (!find(pace)) {
                answers.add(new PaceAnswer.BeyondLimit(pace, Optional.empty()));
                continue;
            }
            PaceAnswer.InBalance here = new PaceAnswer.InBalance(rowHere(), budget());
            answers.add(pace > branch.limit() ? new PaceAnswer.BeyondLimit(pace, Optional.of(here)) : here);
        }
        return answers;
    }

    /** Sets the branch at an acceleration, also at one gentler than the curve starts with. */
    private boolean find(double acceleration) {
        return branch.atAcceleration(acceleration)
                || (acceleration > 0 && acceleration < Branch.START && branch.back(acceleration));
    }

    private TurnAnswer.Turns whole(List<Double> paces, Branch.End end) {
        List<PaceAnswer> paceAnswers = paces(paces);
        TreeSet<Double> accelerations = new TreeSet<>();
        for (PaceAnswer answer : paceAnswers) {
            if (answer.lateralAcceleration() >= Branch.START) {
                accelerations.add(answer.lateralAcceleration());
            }
        }
        double last = branch.end();
        for (int i = 0; i < ROWS; i++) {
            accelerations.add(Branch.START + (last - Branch.START) * i / ROWS);
        }
        Limit limit = limit(end);
        List<TurnRow> rows = new ArrayList<>();
        for (double acceleration : accelerations) {
            if (acceleration < last && branch.atAcceleration(acceleration)) {
                rows.add(rowHere());
            }
        }
        rows.add(rowAtEnd(end));
        if (branch.losesHold()) {
            rows.removeIf(row -> row.lateralAcceleration() == limit.lateralAcceleration());
            rows.add(limit.row());
            rows.sort(Comparator.comparingDouble(TurnRow::lateralAcceleration));
        }
        return new TurnAnswer.Turns(radius, direction, paceAnswers, limit, events(limit), rows);
    }

    private TurnAnswer ends(List<Double> paces, Branch.End end) {
        List<PaceAnswer> paceAnswers = paces(paces);
        Limit limit = limit(end);
        List<TurnRow> rows = new ArrayList<>();
        if (Branch.START < branch.end() && branch.atAcceleration(Branch.START)) {
            rows.add(rowHere());
        }
        rows.add(limit.row());
        return new TurnAnswer.Turns(radius, direction, paceAnswers, limit, events(limit), rows);
    }

    private List<TurnEvent> events(Limit limit) {
        List<TurnEvent> events = new ArrayList<>(new TurnEvents(equilibrium, branch).find());
        limit.endOfLinks()
                .ifPresent(links -> events.add(new TurnEvent(
                        limit.lateralAcceleration(),
                        TurnEvent.Kind.LINK_LIMIT,
                        Optional.of(links.axle()),
                        Optional.empty())));
        events.sort(Comparator.comparingDouble(TurnEvent::lateralAcceleration));
        if (direction == Direction.RIGHT) {
            events.replaceAll(TurnEvent::mirrored);
        }
        return events;
    }

    private TurnRow rowHere() {
        return mirrored(row(
                OptionalDouble.of(branch.derivative[STEER]),
                rollDerivative(),
                OptionalDouble.of(branch.steerByCurvature / car.wheelbase())));
    }

    /** The last row: at the fold it has no gradients. */
    private TurnRow rowAtEnd(Branch.End end) {
        branch.atState(branch.count() - 1);
        return end == Branch.End.GAVE_UP && branch.derive() != 0 ? rowHere() : rowWithoutGradients();
    }

    private TurnRow rowWithoutGradients() {
        return mirrored(row(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
    }

    private TurnRow mirrored(TurnRow row) {
        return direction == Direction.LEFT ? row : row.mirrored();
    }

    /** The limit, once the branch has been followed. */
    private Limit limit(Branch.End end) {
        int at = branch.limitAt();
        branch.atState(at);
        End faster =
                Math.abs(meanSlipAlong(End.FRONT, branch.tangent)) > Math.abs(meanSlipAlong(End.REAR, branch.tangent))
                        ? End.FRONT
                        : End.REAR;
        Optional<Wheel> spinning = spinningWheel();
        boolean rearSlides = equilibrium.rear.gripUsed() >= SLIDING;
        boolean hasGradients = branch.losesHold() || end == Branch.End.GAVE_UP;
        TurnRow row = hasGradients && branch.derive() != 0 ? rowHere() : rowWithoutGradients();
        Optional<Limit.EndOfLinks> links = branch.losesHold() || end != Branch.End.FRICTION_SPENT
                ? Optional.empty()
                : equilibrium.endOfLinks(steer());
        Limit.Cause cause = links.isPresent() ? Limit.Cause.LINKS : cause(end, spinning, rearSlides);
        Optional<End> first = switch (cause) {
            case SPIN -> Optional.of(End.REAR);
            case CRITICAL_SPEED, LINKS, GAVE_UP -> Optional.empty();
            case SIDESLIP, WHEELSPIN -> Optional.of(faster);
        };
        OptionalDouble fold = branch.losesHold() && (end == Branch.End.FOLD || end == Branch.End.FRICTION_SPENT)
                ? OptionalDouble.of(branch.end())
                : OptionalDouble.empty();
        OptionalDouble near = find(Limit.NEAR * branch.limit())
                ? OptionalDouble.of(branch.derivative[STEER])
                : OptionalDouble.empty();
        return new Limit(
                row, cause, first, cause == Limit.Cause.WHEELSPIN ? spinning : Optional.empty(), links, fold, near);
    }

    private double steer() {
        return branch.state[STEER];
    }

    private Limit.Cause cause(Branch.End end, Optional<Wheel> spinning, boolean rearSlides) {
        if (!branch.losesHold() && end == Branch.End.GAVE_UP) {
            return Limit.Cause.GAVE_UP;
        }
        if (spinning.isPresent()) {
            return Limit.Cause.WHEELSPIN;
        }
        if (!branch.losesHold()) {
            return Limit.Cause.SIDESLIP;
        }
        return rearSlides ? Limit.Cause.SPIN : Limit.Cause.CRITICAL_SPEED;
    }

    /**
     * The driven wheel that has spent its grip on drive at the state at hand, under braking any wheel on its brake, as the
     * direction of the turn sees it.
     */
    private Optional<Wheel> spinningWheel() {
        Optional<Wheel> spent = Optional.empty();
        double least = SPENT;
        for (Wheel wheel : Wheel.values()) {
            boolean pulls = equilibrium.byBrakes() || wheel.end() == car.drive().axle();
            double left = equilibrium.axle(wheel.end()).wheel(wheel.side()).sideLeft;
            if (pulls && left < least) {
                spent = Optional.of(wheel);
                least = left;
            }
        }
        return direction == Direction.LEFT ? spent : spent.map(Wheel::mirrored);
    }

    private double meanSlipAlong(End end, double[] way) {
        AxleInTurn axle = equilibrium.axle(end);
        return (along(axle.left.slipBy, end, way) + along(axle.right.slipBy, end, way)) / 2;
    }

    private OptionalDouble rollDerivative() {
        return OptionalDouble.of(equilibrium.frontShare * branch.derivative[Equilibrium.FRONT_ROLL]
                + equilibrium.rearShare * branch.derivative[Equilibrium.REAR_ROLL]);
    }

    /** The budget at the state just found: tangents that add up to the understeer gradient. */
    private PaceAnswer.Budget budget() {
        double[] way = branch.derivative;
        double camber = camberAlong(End.FRONT, way) - camberAlong(End.REAR, way);
        double tyres = meanSlipAlong(End.FRONT, way) - meanSlipAlong(End.REAR, way) - camber;
        double rollSteer = 0;
        double lateralForce = 0;
        double aligningTorque = 0;
        for (End end : End.values()) {
            AxleInTurn axle = equilibrium.axle(end);
            rollSteer += along(axle.linkSteerBy, end, way) + axle.bumpSteerAlong(end, way);
            lateralForce += axle.alignment.lateralForceSteer() * along(axle.sideForceBy, end, way);
            aligningTorque -= axle.alignment.aligningTorqueSteer() * along(axle.aligningMomentBy, end, way);
        }
        double total = way[STEER];
        double rest = total - tyres - camber - rollSteer - lateralForce - aligningTorque;
        return new PaceAnswer.Budget(tyres, camber, rollSteer, lateralForce, aligningTorque, rest);
    }

    private double camberAlong(End end, double[] way) {
        AxleInTurn axle = equilibrium.axle(end);
        return axle.camberThrustRatio * (along(axle.left.leanBy, end, way) + along(axle.right.leanBy, end, way)) / 2;
    }

    private TurnRow row(OptionalDouble understeerGradient, OptionalDouble rollGradient, OptionalDouble hold) {
        double[] state = branch.state;
        double acceleration = state[ACCELERATION];
        double b = car.wheelbase() - car.cgBehindFront();
        List<WheelState> wheels = new ArrayList<>(4);
        for (End end : End.values()) {
            wheels.add(wheel(equilibrium.axle(end).left));
            wheels.add(wheel(equilibrium.axle(end).right));
        }
        double frontRoll = state[Equilibrium.FRONT_ROLL];
        double rearRoll = state[Equilibrium.REAR_ROLL];
        return new TurnRow(
                acceleration,
                Math.sqrt(acceleration * radius),
                state[STEER],
                Math.atan(car.wheelbase() / Math.sqrt(radius * radius - b * b)),
                understeerGradient,
                rollGradient,
                hold,
                state[Equilibrium.SIDESLIP],
                equilibrium.frontShare * frontRoll + equilibrium.rearShare * rearRoll,
                frontRoll,
                rearRoll,
                state[Equilibrium.FRONT_HEAVE],
                state[Equilibrium.REAR_HEAVE],
                equilibrium.front.rollCentre,
                equilibrium.rear.rollCentre,
                equilibrium.front.lateralLoadTransfer(),
                equilibrium.rear.lateralLoadTransfer(),
                equilibrium.front.gripUsed(),
                equilibrium.rear.gripUsed(),
                equilibrium.byBrakes() ? 0 : state[Equilibrium.DRIVE],
                equilibrium.dragPerAcceleration * acceleration,
                wheels,
                equilibrium.changing());
    }

    private static WheelState wheel(WheelInTurn wheel) {
        return new WheelState(
                wheel.load,
                wheel.sideForce,
                wheel.forwardForce,
                wheel.aligningMoment,
                wheel.slip,
                wheel.steer,
                wheel.lean,
                wheel.travel,
                wheel.sideLeft);
    }
}
