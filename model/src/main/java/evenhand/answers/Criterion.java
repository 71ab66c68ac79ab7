package evenhand.answers;

import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.Ride;
import evenhand.turn.Direction;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A figure that a car is judged by: at a pace, at its limit, or in its ride; declared once for comparing, aiming and doubting.
 *
 * @param name as it is written in an aim and in answers
 * @param unit that its numbers are answered in
 * @param digits behind the point in a table
 * @param noticeable the least difference that is worth a word, SI: about what a driver feels or a scale shows (common
 *     practice, no source)
 * @param reading where it is read, and how
 */
public record Criterion(String name, Unit unit, int digits, double noticeable, Reading reading) {
    /** Where a figure stands in the answers. */
    sealed interface Reading {
        /** At a pace. */
        record AtPace(BiFunction<TurnRow, Direction, OptionalDouble> si) implements Reading {}

        /** At the limit. */
        record AtLimit(Function<TurnRow, OptionalDouble> si) implements Reading {}

        /** In the ride. */
        record OfRide(Function<Ride, OptionalDouble> si) implements Reading {}
    }

    public static final Criterion UNDERSTEER = new Criterion(
            "understeer",
            Unit.of("deg/g"),
            2,
            Unit.of("deg/g").toSi(0.05),
            new Reading.AtPace((row, direction) -> TurnFigures.UNDERSTEER_GRADIENT.si(row)));
    public static final Criterion ROLL_GRADIENT = new Criterion(
            "roll gradient",
            Unit.of("deg/g"),
            2,
            Unit.of("deg/g").toSi(0.1),
            new Reading.AtPace((row, direction) -> TurnFigures.ROLL_GRADIENT.si(row)));
    /**
     * How far the body leans, out of the turn positive: what somebody means who says that a car leans. The roll gradient at
     * a pace is a slope, and can fall where the car leans more, on a stop. No aim and no row of a table.
     */
    public static final Criterion LEAN = new Criterion(
            "lean",
            Unit.of("deg"),
            2,
            Unit.of("deg").toSi(0.05),
            new Reading.AtPace((row, direction) ->
                    TurnFigures.ROLL.si(row).stream().map(Math::abs).findFirst()));

    public static final Criterion SIDESLIP = new Criterion(
            "sideslip",
            Unit.of("deg"),
            2,
            Unit.of("deg").toSi(0.1),
            new Reading.AtPace((row, direction) -> TurnFigures.SIDESLIP.si(row)));
    public static final Criterion GRIP_BALANCE = new Criterion(
            "grip balance",
            Unit.of("%"),
            1,
            0.01,
            new Reading.AtPace((row, direction) -> TurnFigures.GRIP_BALANCE.si(row)));
    public static final Criterion FRONT_SHARE = new Criterion(
            "front share",
            Unit.of("%"),
            1,
            0.01,
            new Reading.AtPace((row, direction) -> TurnFigures.FRONT_LOAD_TRANSFER_SHARE.si(row)));
    public static final Criterion INSIDE_REAR_LOAD = new Criterion(
            "inside rear load",
            Unit.of("N"),
            0,
            50,
            new Reading.AtPace((row, direction) -> TurnFigures.LOAD.si(row.wheel(Wheel.inside(End.REAR, direction)))));
    public static final Criterion INSIDE_FRONT_LOAD = new Criterion(
            "inside front load",
            Unit.of("N"),
            0,
            50,
            new Reading.AtPace((row, direction) -> TurnFigures.LOAD.si(row.wheel(Wheel.inside(End.FRONT, direction)))));
    public static final Criterion LIMIT = new Criterion(
            "limit",
            Unit.of("g"),
            3,
            Unit.of("g").toSi(0.01),
            new Reading.AtLimit(row -> TurnFigures.LATERAL_ACCELERATION.si(row)));
    public static final Criterion LIMIT_BALANCE = new Criterion(
            "limit balance", Unit.of("%"), 1, 0.01, new Reading.AtLimit(row -> TurnFigures.GRIP_BALANCE.si(row)));
    public static final Criterion FRONT_DAMPING =
            new Criterion("front damping", Unit.of(""), 2, 0.03, new Reading.OfRide(ride -> ride.damping(End.FRONT)));
    public static final Criterion REAR_DAMPING =
            new Criterion("rear damping", Unit.of(""), 2, 0.03, new Reading.OfRide(ride -> ride.damping(End.REAR)));
    public static final Criterion FRONT_FREQUENCY = new Criterion(
            "front frequency",
            Unit.of("Hz"),
            2,
            0.05,
            new Reading.OfRide(ride -> OptionalDouble.of(ride.frequency(End.FRONT))));
    public static final Criterion REAR_FREQUENCY = new Criterion(
            "rear frequency",
            Unit.of("Hz"),
            2,
            0.05,
            new Reading.OfRide(ride -> OptionalDouble.of(ride.frequency(End.REAR))));
    public static final Criterion FRONT_COMFORT = new Criterion(
            "front comfort", Unit.of("m/s^2"), 3, 0.03, new Reading.OfRide(ride -> ride.comfort(End.FRONT)));
    public static final Criterion REAR_COMFORT = new Criterion(
            "rear comfort", Unit.of("m/s^2"), 3, 0.03, new Reading.OfRide(ride -> ride.comfort(End.REAR)));
    public static final Criterion FRONT_TYRE_LOAD_VARIATION = new Criterion(
            "front tyre load variation",
            Unit.of("%"),
            1,
            0.005,
            new Reading.OfRide(ride -> ride.tyreLoadVariation(End.FRONT)));
    public static final Criterion REAR_TYRE_LOAD_VARIATION = new Criterion(
            "rear tyre load variation",
            Unit.of("%"),
            1,
            0.005,
            new Reading.OfRide(ride -> ride.tyreLoadVariation(End.REAR)));

    /** All that can be an aim and has its row: those at a pace, those of the limit, those of the ride. */
    public static final List<Criterion> ALL = List.of(
            UNDERSTEER,
            ROLL_GRADIENT,
            SIDESLIP,
            GRIP_BALANCE,
            FRONT_SHARE,
            INSIDE_REAR_LOAD,
            INSIDE_FRONT_LOAD,
            LIMIT,
            LIMIT_BALANCE,
            FRONT_DAMPING,
            REAR_DAMPING,
            FRONT_FREQUENCY,
            REAR_FREQUENCY,
            FRONT_COMFORT,
            REAR_COMFORT,
            FRONT_TYRE_LOAD_VARIATION,
            REAR_TYRE_LOAD_VARIATION);

    public Dimension dimension() {
        return unit.dimension();
    }

    /** Whether it is judged at a pace. */
    public boolean hasPace() {
        return reading instanceof Reading.AtPace;
    }

    /** Whether it is of the limit. */
    public boolean atLimit() {
        return reading instanceof Reading.AtLimit;
    }

    /** Whether it is of the ride. */
    public boolean ofRide() {
        return reading instanceof Reading.OfRide;
    }
}
