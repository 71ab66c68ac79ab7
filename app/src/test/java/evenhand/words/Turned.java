package evenhand.words;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.handsums.HandSums;
import evenhand.handsums.UndersteerBudget;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import evenhand.words.balance.BalanceWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Made-up answers of a car, so that sentences can be seen to follow the numbers. */
public final class Turned {
    private static final Unit DEG_PER_G = Unit.of("deg/g");
    private static final Unit G = Unit.of("g");
    private static final double ACKERMANN = 0.065;

    private final List<PaceAnswer> paces = new ArrayList<>();
    private final List<TurnEvent> events = new ArrayList<>();
    private Direction direction = Direction.LEFT;
    private Optional<TurnAnswer> other = Optional.empty();
    private Limit limit = limited(
            row(0.8, OptionalDouble.empty(), 1, 0.9), Limit.Cause.SIDESLIP, Optional.of(End.FRONT), Optional.empty());

    /** A pace in g with an understeer gradient in deg/g, a sum of the tyres' and roll steer's. */
    public Turned pace(double g, double tyres, double rollSteer) {
        double k = DEG_PER_G.toSi(tyres + rollSteer);
        paces.add(new PaceAnswer.InBalance(
                row(g, OptionalDouble.of(k), 0.5, 0.5, ACKERMANN + k * G.toSi(g), 0.01, 1),
                new PaceAnswer.Budget(DEG_PER_G.toSi(tyres), 0, DEG_PER_G.toSi(rollSteer), 0, 0, 0)));
        return this;
    }

    /** A pace with a gradient in deg/g, steer more than the circle asks in deg, and grip used. */
    public Turned pushed(double g, double gradient, double excess, double frontGripUsed, double rearGripUsed) {
        double steer = ACKERMANN + Math.toRadians(excess);
        double k = DEG_PER_G.toSi(gradient);
        double sign = direction == Direction.LEFT ? 1 : -1;
        paces.add(new PaceAnswer.InBalance(
                row(g, OptionalDouble.of(k), frontGripUsed, rearGripUsed, sign * steer, 0.01, sign),
                new PaceAnswer.Budget(k, 0, 0, 0, 0, 0)));
        return this;
    }

    /** Steer and sideslip at the limit, deg to the left. */
    public Turned atTheLimit(double steer, double sideslip) {
        TurnRow row = limit.row();
        limit = limited(
                row(
                        G.fromSi(row.lateralAcceleration()),
                        OptionalDouble.empty(),
                        row.frontGripUsed(),
                        row.rearGripUsed(),
                        Math.toRadians(steer),
                        Math.toRadians(sideslip),
                        1),
                limit.cause(),
                limit.firstAxle(),
                limit.spinningWheel());
        return this;
    }

    /** Loads of the wheels at the limit, N, in their order. */
    public Turned loads(double... loads) {
        List<WheelState> wheels = new ArrayList<>();
        for (double load : loads) {
            wheels.add(new WheelState(load, 900, 10, -20, 0.05, 0.06, 0.01, 0.02, 1));
        }
        TurnRow row = limit.row();
        limit = limited(
                new TurnRow(
                        row.lateralAcceleration(),
                        row.speed(),
                        row.steer(),
                        row.ackermannSteer(),
                        row.understeerGradient(),
                        row.rollGradient(),
                        row.hold(),
                        row.sideslip(),
                        row.roll(),
                        row.frontRoll(),
                        row.rearRoll(),
                        row.frontHeave(),
                        row.rearHeave(),
                        row.frontRollCentreHeight(),
                        row.rearRollCentreHeight(),
                        row.frontLoadTransfer(),
                        row.rearLoadTransfer(),
                        row.frontGripUsed(),
                        row.rearGripUsed(),
                        row.driveForce(),
                        row.airDrag(),
                        wheels,
                        row.changing()),
                limit.cause(),
                limit.firstAxle(),
                limit.spinningWheel());
        return this;
    }

    /** What the car answers in the other direction; the same as in this one where nothing is said. */
    public Turned butInTheOtherDirection(TurnAnswer answer) {
        other = Optional.of(answer);
        return this;
    }

    public Turned beyond(double g) {
        paces.add(new PaceAnswer.BeyondLimit(G.toSi(g), Optional.empty()));
        return this;
    }

    public Turned limit(double g, End first, double frontGripUsed, double rearGripUsed) {
        limit = limited(
                row(g, OptionalDouble.empty(), frontGripUsed, rearGripUsed),
                Limit.Cause.SIDESLIP,
                Optional.of(first),
                Optional.empty());
        return this;
    }

    public Turned spinning(Wheel wheel) {
        limit = limited(limit.row(), Limit.Cause.WHEELSPIN, limit.firstAxle(), Optional.of(wheel));
        return this;
    }

    /** The tail comes round, or neither end slides and the wheel has to be held against the turn. */
    public Turned endsBy(Limit.Cause cause) {
        limit = limited(
                limit.row(),
                cause,
                cause == Limit.Cause.SPIN ? Optional.of(End.REAR) : Optional.empty(),
                Optional.empty());
        return this;
    }

    /** Understeer gradient at nine tenths of the limit, deg/g. */
    public Turned near(double gradient) {
        limit = new Limit(
                limit.row(),
                limit.cause(),
                limit.firstAxle(),
                limit.spinningWheel(),
                limit.endOfLinks(),
                limit.fold(),
                OptionalDouble.of(DEG_PER_G.toSi(gradient)));
        return this;
    }

    private static Limit limited(TurnRow row, Limit.Cause cause, Optional<End> first, Optional<Wheel> spinning) {
        return new Limit(row, cause, first, spinning, Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    public Turned event(double g, TurnEvent.Kind kind, End axle, Wheel wheel) {
        events.add(new TurnEvent(G.toSi(g), kind, Optional.of(axle), Optional.of(wheel)));
        return this;
    }

    public Turned toTheRight() {
        direction = Direction.RIGHT;
        return this;
    }

    public TurnAnswer.Turns turn() {
        return new TurnAnswer.Turns(40, direction, paces, limit, events, List.of(limit.row()));
    }

    public List<String> words() {
        return words(Units.METRIC);
    }

    public List<String> words(Units units) {
        return BalanceWords.of(sums(), turn(), other.orElseGet(this::turn), units);
    }

    public static HandSums sums() {
        HandSums.AxleSums axle =
                new HandSums.AxleSums(5000, 4500, 400, 200, 2000, 30000, 200000, 190000, 26000, 0.01, 0.09, 2000);
        return new HandSums(
                9.80665,
                new Car.Sprung(1100, 1.2, 0.55, 0.54, 0.46),
                0.42,
                axle,
                axle,
                Math.toRadians(6),
                new UndersteerBudget(0.001, 0, 0, 0, 0, 0));
    }

    public static TurnRow row(double g, OptionalDouble understeer, double frontGripUsed, double rearGripUsed) {
        return row(g, understeer, frontGripUsed, rearGripUsed, 0.07, 0.01, 1);
    }

    private static TurnRow row(
            double g,
            OptionalDouble understeer,
            double frontGripUsed,
            double rearGripUsed,
            double steer,
            double sideslip,
            double sign) {
        List<WheelState> wheels = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            wheels.add(new WheelState(1000 * (i + 1), 900, 10, -20, 0.05, 0.06, 0.01, 0.02, 1));
        }
        return new TurnRow(
                G.toSi(g),
                10,
                steer,
                sign * ACKERMANN,
                understeer,
                OptionalDouble.of(0.01),
                OptionalDouble.of(1),
                sideslip,
                Math.toRadians(5 * g),
                0.04,
                0.04,
                0.001,
                -0.001,
                0.05,
                0.25,
                1500,
                1300,
                frontGripUsed,
                rearGripUsed,
                200,
                20,
                wheels,
                Optional.empty());
    }
}
