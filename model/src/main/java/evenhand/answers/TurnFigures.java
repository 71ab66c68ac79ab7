package evenhand.answers;

import evenhand.quantity.Dimension;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer.Budget;
import evenhand.turn.TurnRow;
import evenhand.turn.WheelState;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The figures of a steady turn. */
public final class TurnFigures {
    public static final Figure<TurnRow> LATERAL_ACCELERATION = Figure.of(
            "lateralAcceleration",
            "lateral acceleration",
            Dimension.ACCELERATION,
            "g",
            3,
            TurnRow::lateralAcceleration);
    public static final Figure<TurnRow> SPEED = Figure.of("speed", "speed", Dimension.SPEED, "m/s", 1, TurnRow::speed);
    public static final Figure<TurnRow> STEER = angle("steer", "steer at the road wheels", TurnRow::steer);
    public static final Figure<TurnRow> ACKERMANN_STEER =
            angle("ackermannSteer", "of it for the circle alone", TurnRow::ackermannSteer);
    public static final Figure<TurnRow> UNDERSTEER_GRADIENT = Figure.ofOptional(
            "understeerGradient",
            "understeer gradient",
            Dimension.UNDERSTEER_GRADIENT,
            "deg/g",
            2,
            TurnRow::understeerGradient);
    public static final Figure<TurnRow> ROLL_GRADIENT = Figure.ofOptional(
            "rollGradient", "roll gradient", Dimension.UNDERSTEER_GRADIENT, "deg/g", 2, TurnRow::rollGradient);
    public static final Figure<TurnRow> SIDESLIP = angle("sideslip", "sideslip of the car", TurnRow::sideslip);
    public static final Figure<TurnRow> ROLL = angle("roll", "roll of the body", TurnRow::roll);
    public static final Figure<TurnRow> FRONT_ROLL_CENTRE_HEIGHT =
            length("frontRollCentreHeight", "front roll centre above the ground", TurnRow::frontRollCentreHeight);
    public static final Figure<TurnRow> REAR_ROLL_CENTRE_HEIGHT =
            length("rearRollCentreHeight", "rear roll centre above the ground", TurnRow::rearRollCentreHeight);
    public static final Figure<TurnRow> FRONT_LOAD_TRANSFER =
            force("frontLoadTransfer", "load transfer at the front", TurnRow::frontLoadTransfer);
    public static final Figure<TurnRow> REAR_LOAD_TRANSFER =
            force("rearLoadTransfer", "load transfer at the rear", TurnRow::rearLoadTransfer);
    public static final Figure<TurnRow> FRONT_LOAD_TRANSFER_SHARE =
            ratio("frontLoadTransferShare", "front share of load transfer", TurnRow::frontLoadTransferShare);
    public static final Figure<TurnRow> FRONT_GRIP_USED =
            ratio("frontGripUsed", "grip used at the front", TurnRow::frontGripUsed);
    public static final Figure<TurnRow> REAR_GRIP_USED =
            ratio("rearGripUsed", "grip used at the rear", TurnRow::rearGripUsed);
    public static final Figure<TurnRow> GRIP_BALANCE = ratio("gripBalance", "grip balance", TurnRow::gripBalance);

    /** One is neutral, more is understeer, and at zero the car no longer stays in its bend by itself. */
    public static final Figure<TurnRow> HOLD =
            Figure.ofOptional("hold", "hold (steer by bend at held speed)", Dimension.RATIO, "", 2, TurnRow::hold);

    /** All but the wheels, in the order of an answer. */
    public static final List<Figure<TurnRow>> ROW = List.of(
            LATERAL_ACCELERATION,
            SPEED,
            STEER,
            ACKERMANN_STEER,
            UNDERSTEER_GRADIENT,
            ROLL_GRADIENT,
            SIDESLIP,
            ROLL,
            angle("frontRoll", "roll of the body at the front", TurnRow::frontRoll),
            angle("rearRoll", "roll of the body at the rear", TurnRow::rearRoll),
            length("frontHeave", "rise of the body at the front", TurnRow::frontHeave),
            length("rearHeave", "rise of the body at the rear", TurnRow::rearHeave),
            FRONT_ROLL_CENTRE_HEIGHT,
            REAR_ROLL_CENTRE_HEIGHT,
            FRONT_LOAD_TRANSFER,
            REAR_LOAD_TRANSFER,
            FRONT_LOAD_TRANSFER_SHARE,
            FRONT_GRIP_USED,
            REAR_GRIP_USED,
            GRIP_BALANCE,
            force("driveForce", "drive force", TurnRow::driveForce),
            force("airDrag", "drag of the air", TurnRow::airDrag),
            HOLD);

    /** Of the limit. */
    public static final Figure<Limit> NEAR_UNDERSTEER = Figure.ofOptional(
            "nearUndersteer",
            "understeer near the limit",
            Dimension.UNDERSTEER_GRADIENT,
            "deg/g",
            2,
            Limit::nearUndersteer);

    /** One where the front goes first at the limit, else zero: it runs wide instead of coming round. */
    public static final Figure<Limit> FRONT_FIRST = Figure.of(
            "frontFirst",
            "end that goes first at the limit",
            Dimension.RATIO,
            "",
            0,
            limit -> limit.frontFirst() ? 1 : 0);

    public static final Figure<Limit> FOLD =
            Figure.ofOptional("fold", "most that could be had", Dimension.ACCELERATION, "g", 3, Limit::fold);

    public static final Figure<WheelState> LOAD = Figure.of("load", "load", Dimension.FORCE, "N", 0, WheelState::load);

    /** Of each wheel, in the order of an answer. */
    public static final List<Figure<WheelState>> WHEEL = List.of(
            LOAD,
            Figure.of("lateralForce", "side force", Dimension.FORCE, "N", 0, WheelState::lateralForce),
            Figure.of("longitudinalForce", "force forwards", Dimension.FORCE, "N", 0, WheelState::longitudinalForce),
            Figure.of("aligningMoment", "aligning moment", Dimension.MOMENT, "N*m", 1, WheelState::aligningMoment),
            Figure.of("slip", "slip angle", Dimension.ANGLE, "deg", 2, WheelState::slip),
            Figure.of("steer", "steer", Dimension.ANGLE, "deg", 2, WheelState::steer),
            Figure.of("lean", "lean to the right", Dimension.ANGLE, "deg", 2, WheelState::lean),
            Figure.of("travel", "bump travel", Dimension.LENGTH, "m", 1, WheelState::travel));

    /** Key of the object that the parts of an understeer gradient stand in. */
    public static final String BUDGET_KEY = "understeerBudget_deg_per_g";

    /** What the understeer gradient at a pace is made of. */
    public static final List<Figure<Budget>> BUDGET = List.of(
            gradient("tyres", "the tyres' slip", Budget::tyres),
            gradient("camber", "lean of the wheels", Budget::camber),
            gradient("rollSteer", "roll steer", Budget::rollSteer),
            gradient("lateralForceSteer", "give under side force", Budget::lateralForceSteer),
            gradient("aligningTorqueSteer", "give under aligning torque", Budget::aligningTorqueSteer),
            gradient("rest", "geometry of the circle", Budget::rest));

    private TurnFigures() {}

    private static Figure<TurnRow> angle(String name, String words, ToDoubleFunction<TurnRow> reading) {
        return Figure.of(name, words, Dimension.ANGLE, "deg", 2, reading);
    }

    private static Figure<TurnRow> length(String name, String words, ToDoubleFunction<TurnRow> reading) {
        return Figure.of(name, words, Dimension.LENGTH, "m", 0, reading);
    }

    private static Figure<TurnRow> force(String name, String words, ToDoubleFunction<TurnRow> reading) {
        return Figure.of(name, words, Dimension.FORCE, "N", 0, reading);
    }

    private static Figure<TurnRow> ratio(String name, String words, ToDoubleFunction<TurnRow> reading) {
        return Figure.of(name, words, Dimension.RATIO, "", 1, reading);
    }

    private static Figure<Budget> gradient(String name, String words, ToDoubleFunction<Budget> reading) {
        return Figure.of(name, words, Dimension.UNDERSTEER_GRADIENT, "deg/g", 2, reading);
    }
}
