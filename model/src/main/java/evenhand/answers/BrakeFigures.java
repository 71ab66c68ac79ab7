package evenhand.answers;

import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.straight.BrakeRule;
import evenhand.straight.Braking;
import evenhand.straight.Braking.Row;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The figures of a car that brakes. */
public final class BrakeFigures {
    /** For programs; nobody writes it in a file. */
    private static final Unit PASCAL = new Unit("Pa", Dimension.PRESSURE, 1);

    public static final Figure<Row> DECELERATION =
            Figure.of("deceleration", "deceleration", Dimension.ACCELERATION, "g", 3, Row::deceleration);
    public static final Figure<Row> FRONT_LOAD =
            force("frontLoad", "load on the front", row -> row.front().load());
    public static final Figure<Row> REAR_LOAD =
            force("rearLoad", "load on the rear", row -> row.rear().load());
    public static final Figure<Row> FRONT_FORCE =
            force("frontBrakeForce", "front brakes", row -> row.front().force());
    public static final Figure<Row> REAR_FORCE =
            force("rearBrakeForce", "rear brakes", row -> row.rear().force());
    public static final Figure<Row> FRONT_IDEAL =
            force("frontIdealForce", "  ideal in front", row -> row.front().idealForce());
    public static final Figure<Row> REAR_IDEAL =
            force("rearIdealForce", "  ideal behind", row -> row.rear().idealForce());
    public static final Figure<Row> FRONT_ADHESION = ratio(
            "frontAdhesion", "adhesion used in front", 1, row -> row.front().adhesion());
    public static final Figure<Row> REAR_ADHESION =
            ratio("rearAdhesion", "adhesion used behind", 1, row -> row.rear().adhesion());
    public static final Figure<Row> BALANCE = ratio("brakeBalance", "brake balance", 1, Row::brakeBalance);
    public static final Figure<Row> FRONT_PRESSURE =
            pressure("frontPressure", "front pressure", row -> row.front().pressure());
    public static final Figure<Row> REAR_PRESSURE =
            pressure("rearPressure", "rear pressure", row -> row.rear().pressure());
    public static final Figure<Row> PEDAL_FORCE =
            Figure.ofOptional("pedalForce", "force of the foot", Dimension.FORCE, "N", 0, Row::pedalForce);
    public static final Figure<Row> PEDAL_FORCE_NO_BOOSTER = Figure.ofOptional(
            "pedalForceNoBooster", "  without the booster", Dimension.FORCE, "N", 0, Row::pedalForceNoBooster);
    public static final Figure<Row> FRONT_HEAVE = length("frontHeave", "front heave", Row::frontHeave);
    public static final Figure<Row> REAR_HEAVE = length("rearHeave", "rear heave", Row::rearHeave);
    public static final Figure<Row> PITCH =
            Figure.of("pitch", "pitch, nose down", Dimension.ANGLE, "deg", 2, Row::pitch);
    public static final Figure<Row> ANTI_DIVE =
            ratio("antiDive", "links carry in front", 1, row -> OptionalDouble.of(row.antiDive()));
    public static final Figure<Row> ANTI_LIFT =
            ratio("antiLift", "links carry behind", 1, row -> OptionalDouble.of(row.antiLift()));
    public static final Figure<Row> WIND_UP =
            Figure.ofOptional("windUp", "wind-up of the leaves", Dimension.ANGLE, "deg", 1, Row::windUp);

    /** All that a row tells, in its order. */
    public static final List<Figure<Row>> ROW = List.of(
            DECELERATION,
            FRONT_LOAD,
            REAR_LOAD,
            FRONT_FORCE,
            REAR_FORCE,
            FRONT_IDEAL,
            REAR_IDEAL,
            FRONT_ADHESION,
            REAR_ADHESION,
            BALANCE,
            FRONT_PRESSURE,
            REAR_PRESSURE,
            PEDAL_FORCE,
            PEDAL_FORCE_NO_BOOSTER,
            FRONT_HEAVE,
            REAR_HEAVE,
            PITCH,
            ANTI_DIVE,
            ANTI_LIFT,
            WIND_UP);

    public static final Figure<Braking.Locks> LOCK_AT =
            Figure.of("deceleration", "at", Dimension.ACCELERATION, "g", 3, Braking.Locks::deceleration);

    public static final Figure<BrakeRule.Margin> MARGIN =
            Figure.of("margin", "least margin", Dimension.RATIO, "", 1, BrakeRule.Margin::margin);

    public static final Figure<Braking.Stop> STOP_PEDAL =
            Figure.of("pedalForce", "force of the foot", Dimension.FORCE, "N", 0, Braking.Stop::pedalForce);
    public static final Figure<Braking.Stop> STOP_AT =
            Figure.of("deceleration", "deceleration", Dimension.ACCELERATION, "g", 3, Braking.Stop::deceleration);

    private BrakeFigures() {}

    private static Figure<Row> force(String name, String words, ToDoubleFunction<Row> reading) {
        return Figure.of(name, words, Dimension.FORCE, "N", 0, reading);
    }

    private static Figure<Row> length(String name, String words, ToDoubleFunction<Row> reading) {
        return Figure.of(name, words, Dimension.LENGTH, "m", 1, reading);
    }

    private static Figure<Row> ratio(String name, String words, int digits, Function<Row, OptionalDouble> reading) {
        return Figure.ofOptional(name, words, Dimension.RATIO, "", digits, reading);
    }

    private static Figure<Row> pressure(String name, String words, Function<Row, OptionalDouble> reading) {
        return new Figure<>(name, words, Dimension.PRESSURE, PASCAL, false, 1, reading);
    }
}
