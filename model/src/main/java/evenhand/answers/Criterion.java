package evenhand.answers;

import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/**
 * A figure that the balance of a car is judged by, at a pace or at its limit; declared once for comparing, aiming and
 * doubting.
 *
 * @param name as it is written in an aim and in answers
 * @param unit that its numbers are answered in
 * @param digits behind the point in a table
 * @param atLimit whether it is of the limit; else it needs a pace
 * @param noticeable the least difference that is worth a word, SI: about what a driver feels or a scale shows
 * @param reading the value in SI
 */
public record Criterion(
        String name,
        Unit unit,
        int digits,
        boolean atLimit,
        double noticeable,
        BiFunction<TurnRow, Direction, OptionalDouble> reading) {
    public static final Criterion UNDERSTEER = new Criterion(
            "understeer",
            Unit.of("deg/g"),
            2,
            false,
            Unit.of("deg/g").toSi(0.05),
            (row, direction) -> TurnFigures.UNDERSTEER_GRADIENT.si(row));
    public static final Criterion ROLL_GRADIENT = new Criterion(
            "roll gradient",
            Unit.of("deg/g"),
            2,
            false,
            Unit.of("deg/g").toSi(0.1),
            (row, direction) -> TurnFigures.ROLL_GRADIENT.si(row));
    public static final Criterion SIDESLIP = new Criterion(
            "sideslip",
            Unit.of("deg"),
            2,
            false,
            Unit.of("deg").toSi(0.1),
            (row, direction) -> TurnFigures.SIDESLIP.si(row));
    public static final Criterion GRIP_BALANCE = new Criterion(
            "grip balance", Unit.of("%"), 1, false, 0.01, (row, direction) -> TurnFigures.GRIP_BALANCE.si(row));
    public static final Criterion FRONT_SHARE = new Criterion(
            "front share",
            Unit.of("%"),
            1,
            false,
            0.01,
            (row, direction) -> TurnFigures.FRONT_LOAD_TRANSFER_SHARE.si(row));
    public static final Criterion INSIDE_REAR_LOAD = new Criterion(
            "inside rear load",
            Unit.of("N"),
            0,
            false,
            50,
            (row, direction) -> TurnFigures.LOAD.si(row.wheel(inside(End.REAR, direction))));
    public static final Criterion INSIDE_FRONT_LOAD = new Criterion(
            "inside front load",
            Unit.of("N"),
            0,
            false,
            50,
            (row, direction) -> TurnFigures.LOAD.si(row.wheel(inside(End.FRONT, direction))));
    public static final Criterion LIMIT = new Criterion(
            "limit",
            Unit.of("g"),
            3,
            true,
            Unit.of("g").toSi(0.01),
            (row, direction) -> TurnFigures.LATERAL_ACCELERATION.si(row));
    public static final Criterion LIMIT_BALANCE = new Criterion(
            "limit balance", Unit.of("%"), 1, true, 0.01, (row, direction) -> TurnFigures.GRIP_BALANCE.si(row));

    /** All, those at a pace first. */
    public static final List<Criterion> ALL = List.of(
            UNDERSTEER,
            ROLL_GRADIENT,
            SIDESLIP,
            GRIP_BALANCE,
            FRONT_SHARE,
            INSIDE_REAR_LOAD,
            INSIDE_FRONT_LOAD,
            LIMIT,
            LIMIT_BALANCE);

    public Dimension dimension() {
        return unit.dimension();
    }

    /** The value at a point of a turn, SI. */
    public OptionalDouble si(TurnRow row, Direction direction) {
        return reading.apply(row, direction);
    }

    private static Wheel inside(End end, Direction direction) {
        if (end == End.FRONT) {
            return direction == Direction.LEFT ? Wheel.FRONT_LEFT : Wheel.FRONT_RIGHT;
        }
        return direction == Direction.LEFT ? Wheel.REAR_LEFT : Wheel.REAR_RIGHT;
    }
}
