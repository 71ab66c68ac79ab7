package evenhand.answers;

import evenhand.car.End;
import evenhand.linkage.LinkPlace;
import evenhand.linkage.LinkPlaces;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.AxleRide;
import evenhand.ride.Ride;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A figure that a car is judged by: at a pace, at its limit, in its ride, in the travel of its links, straight ahead or by what its parts carry; declared once for
 * comparing, aiming and doubting. Those of links are {@link LinkCriteria}, those straight ahead {@link AheadCriteria}, those of what parts carry {@link
 * LoadCriteria}.
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
    public sealed interface Reading {
        /** At a pace. */
        record AtPace(BiFunction<TurnRow, Direction, OptionalDouble> si) implements Reading {}

        /** At the limit, or of it. */
        record AtLimit(Function<Limit, OptionalDouble> si) implements Reading {}

        /** In the ride, of one axle. */
        record OfRide(End end, Function<AxleRide, OptionalDouble> si) implements Reading {}

        /** In the ride, of the whole car. */
        record OfWholeRide(Function<Ride, OptionalDouble> si) implements Reading {}

        /**
         * Straight ahead.
         *
         * @param paced whether it is judged at a deceleration or an acceleration
         * @param ofBrakes whether the car brakes
         */
        record Ahead(boolean paced, boolean ofBrakes, BiFunction<AheadCriteria.Asked, Double, OptionalDouble> si)
                implements Reading {}

        /**
         * Of what a part carries, the worst of all that the car is put through.
         *
         * @param what of it
         * @param part a member, such as {@code rear.upperRod}, or the name of a mount
         */
        record OfLoads(LoadCriteria.What what, String part) implements Reading {}

        /**
         * Of the links of an axle: of the first of these that has such a figure at rest.
         *
         * @param where in its travel
         * @param needs what an axle needs for it, in the words of a file
         */
        record OfLinks(List<End> axles, LinkPlaces.Where where, String needs, Function<LinkPlace, OptionalDouble> si)
                implements Reading {
            public OfLinks {
                axles = List.copyOf(axles);
            }

            /** The axle whose figure it is; nothing where none has it at rest. */
            public Optional<End> axle(LinkAnswers links) {
                return axles.stream()
                        .filter(end -> links.axle(end)
                                .filter(places -> si.apply(places.rest()).isPresent())
                                .isPresent())
                        .findFirst();
            }

            /** Nothing where no axle has it, or its links do not reach that place. */
            OptionalDouble of(LinkAnswers links) {
                return axle(links)
                        .flatMap(links::axle)
                        .flatMap(places -> places.at(where))
                        .map(si)
                        .orElseGet(OptionalDouble::empty);
            }
        }
    }

    public static final Criterion UNDERSTEER = atPace("understeer", TurnFigures.UNDERSTEER_GRADIENT, "deg/g", 0.05);
    public static final Criterion ROLL_GRADIENT = atPace("roll gradient", TurnFigures.ROLL_GRADIENT, "deg/g", 0.1);
    /**
     * How far the body leans, out of the turn positive: what somebody means who says that a car leans. The roll gradient at
     * a pace is a slope, and can fall where the car leans more, on a stop. No aim and no row of a table.
     */
    public static final Criterion LEAN = of(
            "lean",
            TurnFigures.ROLL,
            "deg",
            0.05,
            new Reading.AtPace((row, direction) ->
                    TurnFigures.ROLL.si(row).stream().map(Math::abs).findFirst()));

    public static final Criterion SIDESLIP = atPace("sideslip", TurnFigures.SIDESLIP, "deg", 0.1);
    public static final Criterion GRIP_BALANCE = atPace("grip balance", TurnFigures.GRIP_BALANCE, "%", 1);
    public static final Criterion FRONT_SHARE = atPace("front share", TurnFigures.FRONT_LOAD_TRANSFER_SHARE, "%", 1);
    public static final Criterion INSIDE_REAR_LOAD = insideLoad("inside rear load", End.REAR);
    public static final Criterion INSIDE_FRONT_LOAD = insideLoad("inside front load", End.FRONT);
    public static final Criterion LIMIT = atLimit("limit", TurnFigures.LATERAL_ACCELERATION, "g", 0.01);
    public static final Criterion LIMIT_BALANCE = atLimit("limit balance", TurnFigures.GRIP_BALANCE, "%", 1);
    /** Smooth through neutral: positive pushes, negative slides. */
    public static final Criterion NEAR_UNDERSTEER = of(
            "understeer near the limit",
            TurnFigures.NEAR_UNDERSTEER,
            "deg/g",
            0.1,
            new Reading.AtLimit(TurnFigures.NEAR_UNDERSTEER::si));
    /** One where the front goes first at the limit, else zero. An aim without a number, and no row of a table. */
    public static final Criterion FRONT_FIRST =
            of("front first", TurnFigures.FRONT_FIRST, "", 1, new Reading.AtLimit(TurnFigures.FRONT_FIRST::si));

    public static final Criterion FRONT_DAMPING =
            ofRide("front damping", End.FRONT, RideFigures.BODY_DAMPING, "", 0.03);
    public static final Criterion REAR_DAMPING = ofRide("rear damping", End.REAR, RideFigures.BODY_DAMPING, "", 0.03);
    public static final Criterion FRONT_FREQUENCY =
            ofRide("front frequency", End.FRONT, RideFigures.BODY_FREQUENCY, "Hz", 0.05);
    public static final Criterion REAR_FREQUENCY =
            ofRide("rear frequency", End.REAR, RideFigures.BODY_FREQUENCY, "Hz", 0.05);
    public static final Criterion FRONT_COMFORT =
            ofRide("front comfort", End.FRONT, RideFigures.COMFORT, "m/s^2", 0.03);
    public static final Criterion REAR_COMFORT = ofRide("rear comfort", End.REAR, RideFigures.COMFORT, "m/s^2", 0.03);
    public static final Criterion FRONT_TYRE_LOAD_VARIATION =
            ofRide("front tyre load variation", End.FRONT, RideFigures.TYRE_LOAD_VARIATION, "%", 0.5);
    public static final Criterion REAR_TYRE_LOAD_VARIATION =
            ofRide("rear tyre load variation", End.REAR, RideFigures.TYRE_LOAD_VARIATION, "%", 0.5);

    /** What is felt where the driver sits: comfort itself, where the figures of both axles are its parts. */
    public static final Criterion SEAT_COMFORT =
            of("seat comfort", RideFigures.SEAT_COMFORT, "m/s^2", 0.02, new Reading.OfWholeRide(Ride::seatComfort));

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
            NEAR_UNDERSTEER,
            FRONT_DAMPING,
            REAR_DAMPING,
            FRONT_FREQUENCY,
            REAR_FREQUENCY,
            SEAT_COMFORT,
            FRONT_COMFORT,
            REAR_COMFORT,
            FRONT_TYRE_LOAD_VARIATION,
            REAR_TYRE_LOAD_VARIATION);

    /** The axle whose ride it is of; none of the whole car's. */
    public Optional<End> axle() {
        return reading instanceof Reading.OfRide ride ? Optional.of(ride.end()) : Optional.empty();
    }

    /** Judged by a figure, in a unit of its dimension; the least difference that is worth a word is in that unit. */
    private static Criterion of(String name, Figure<?> figure, String unit, double noticeable, Reading reading) {
        Unit shown = Unit.of(unit);
        return new Criterion(name, shown, figure.digits(), shown.toSi(noticeable), reading);
    }

    private static Criterion atPace(String name, Figure<TurnRow> figure, String unit, double noticeable) {
        return of(name, figure, unit, noticeable, new Reading.AtPace((row, direction) -> figure.si(row)));
    }

    private static Criterion insideLoad(String name, End end) {
        Figure<WheelState> load = TurnFigures.LOAD;
        return of(
                name,
                load,
                "N",
                50,
                new Reading.AtPace((row, direction) -> load.si(row.wheel(Wheel.inside(end, direction)))));
    }

    private static Criterion atLimit(String name, Figure<TurnRow> figure, String unit, double noticeable) {
        return of(name, figure, unit, noticeable, new Reading.AtLimit(limit -> figure.si(limit.row())));
    }

    private static Criterion ofRide(String name, End end, Figure<AxleRide> figure, String unit, double noticeable) {
        return of(name, figure, unit, noticeable, new Reading.OfRide(end, figure::si));
    }

    /** Whether its sign tells left from right, so that the other way round it is to be turned over. */
    public boolean mirrors() {
        return equals(SIDESLIP);
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** Whether it is judged at a pace. */
    public boolean hasPace() {
        return reading instanceof Reading.AtPace || (reading instanceof Reading.Ahead ahead && ahead.paced());
    }

    /** Whether it is of the limit. */
    public boolean atLimit() {
        return reading instanceof Reading.AtLimit;
    }

    /** How it is read from an axle's links; nothing of what is of the turn or the ride. */
    public Optional<Reading.OfLinks> links() {
        return reading instanceof Reading.OfLinks links ? Optional.of(links) : Optional.empty();
    }

    /** Whether it is of an axle's links: the same in any turn. */
    public boolean ofLinks() {
        return reading instanceof Reading.OfLinks;
    }

    /** How it is read straight ahead; nothing of what is not. */
    public Optional<Reading.Ahead> ahead() {
        return reading instanceof Reading.Ahead ahead ? Optional.of(ahead) : Optional.empty();
    }

    /** How it is read from what parts carry; nothing of what is not. */
    public Optional<Reading.OfLoads> loads() {
        return reading instanceof Reading.OfLoads loads ? Optional.of(loads) : Optional.empty();
    }

    /** Whether no turn of the trial is needed for it: it is of links, straight ahead, or of what parts carry. */
    public boolean needsNoTurn() {
        return ofLinks() || reading instanceof Reading.Ahead || reading instanceof Reading.OfLoads;
    }

    /** Whether it is one number of the whole car, whichever way it turns. */
    public boolean knowsNoTurn() {
        return ofRide() || needsNoTurn();
    }

    /** Whether it is a size, which cannot fall below zero. */
    public boolean isSize() {
        return loads().isPresent() || (ofLinks() && LinkCriteria.isSize(this));
    }

    /** Whether it is of the ride. */
    public boolean ofRide() {
        return reading instanceof Reading.OfRide || reading instanceof Reading.OfWholeRide;
    }
}
