package evenhand.lowering;

import evenhand.answers.Figure;
import evenhand.answers.HandSumFigures;
import evenhand.answers.RideFigures;
import evenhand.answers.TravelFigures;
import evenhand.answers.TurnFigures;
import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.linkage.AxleState;
import evenhand.linkage.AxleState.ShaftFigures;
import evenhand.lowering.Stance.Stands;
import evenhand.quantity.Dimension;
import evenhand.ride.AxleRide;
import evenhand.ride.Standing;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The figures of a car at one height. What turn, ride and hand sums have declared is taken from there; a {@link Need} sets a
 * bound to one of them.
 */
public final class LoweringFigures {
    /** Of any height, with an answer or without. */
    public static final Figure<Stance> LOWERED =
            Figure.of("lowered", "let down by", Dimension.LENGTH, "m", 0, Stance::lowered);

    /** What is left of the travel. */
    public static final List<Figure<Stands>> TRAVEL = List.of(toStop(End.FRONT), toStop(End.REAR));

    public static final List<Figure<Stands>> METAL = List.of(toMetal(End.FRONT), toMetal(End.REAR));

    public static final List<Figure<Stands>> ROLL = List.of(HandSumFigures.ROLL_GRADIENT.within(Stands::handSums));

    /** Key and unit of what stands for each pace. */
    public static final Figure<PaceAnswer> UNDERSTEER =
            TurnFigures.UNDERSTEER_GRADIENT.within(LoweringFigures::row).named("understeer", "understeer");

    /** The first bump stop that is touched in the turn. */
    public static final Figure<Stands> FIRST_STOP =
            Figure.ofOptional("firstStop", "first stop touched at", Dimension.ACCELERATION, "g", 2, Stands::firstStop);

    public static final Figure<Stands> LIMIT =
            TurnFigures.LATERAL_ACCELERATION.within(LoweringFigures::atLimit).named("limit", "limit");

    public static final Figure<Stands> LIMIT_BALANCE =
            TurnFigures.GRIP_BALANCE.within(LoweringFigures::atLimit).named("limitBalance", "limit balance");

    /** Of the limit and the stops, in the order of an answer. */
    public static final List<Figure<Stands>> TURN = List.of(LIMIT, LIMIT_BALANCE, FIRST_STOP);

    /** How it steers near its limit. */
    public static final Figure<Stands> NEAR_UNDERSTEER =
            TurnFigures.NEAR_UNDERSTEER.within(stance -> stance.turns().map(TurnAnswer.Turns::limit));

    public static final List<Figure<Stands>> ROLL_CENTRES = List.of(rollCentre(End.FRONT), rollCentre(End.REAR));

    /** On the road that comfort is judged on. */
    public static final List<Figure<Stands>> COMFORT = List.of(
            comfort(End.FRONT),
            comfort(End.REAR),
            RideFigures.SEAT_COMFORT
                    .within(Stands::rides)
                    .named("seatWeightedAcceleration_rms", "at the seat, as a body feels it")
                    .to(2));

    public static final List<Figure<Stands>> LEVER = List.of(
            Figure.of(
                    "sprungHeight",
                    "weight above the ground",
                    Dimension.LENGTH,
                    "m",
                    0,
                    stance -> stance.car().sprung().height()),
            HandSumFigures.ROLL_ARM
                    .within(Stands::handSums)
                    .named(HandSumFigures.ROLL_ARM.name(), "weight above the roll axis"));

    public static final List<Figure<Stands>> CAMBER = List.of(
            camber("frontCamber", "front camber at rest", End.FRONT),
            camber("rearCamber", "rear camber at rest", End.REAR));

    /** What links that are known by points do at rest, and how far they let the wheels up. */
    public static final List<Figure<Stands>> LINKS = List.of(
            ofLinks(TravelFigures.ROLL_STEER, End.FRONT, "front roll steer"),
            ofLinks(TravelFigures.ROLL_STEER, End.REAR, "rear roll steer"),
            ofShaft(TravelFigures.PINION_SLOPE, "pinionSlope", "pinion slope"),
            ofShaft(TravelFigures.GREATEST_JOINT_ANGLE, "jointAngle", "greatest joint angle"),
            ofShaft(TravelFigures.RESIDUAL_JOINT_ANGLE, "residualJointAngle", "left-over joint angle"),
            toLinkLimit(End.FRONT),
            toLinkLimit(End.REAR));

    public static final List<Figure<Stands>> FREQUENCIES = List.of(
            onSprings(End.FRONT),
            onSprings(End.REAR),
            ofRide(RideFigures.BODY_FREQUENCY, End.FRONT, "front frequency with tyre"),
            ofRide(RideFigures.BODY_FREQUENCY, End.REAR, "rear frequency with tyre"),
            ofRide(RideFigures.BODY_DAMPING, End.FRONT, "front damping ratio"),
            ofRide(RideFigures.BODY_DAMPING, End.REAR, "rear damping ratio"));

    /** Of springs that keep a reserve. */
    public static final List<Figure<Stands>> SPRINGS = List.of(
            springRate("frontSpringRate", "front spring", End.FRONT),
            springRate("rearSpringRate", "rear spring", End.REAR),
            needed("frontFrequencyNeeded", "front frequency needed", End.FRONT),
            needed("rearFrequencyNeeded", "rear frequency needed", End.REAR));

    private LoweringFigures() {}

    /** The paces of a height, in the order that they were asked; none where it does not turn. */
    public static List<PaceAnswer> paces(Stands stance) {
        return stance.turns().map(TurnAnswer.Turns::paces).orElse(List.of());
    }

    static Figure<Stands> toStop(End end) {
        return standing(RideFigures.BUMP_TRAVEL_TO_STOP, end, " travel to the stop");
    }

    static Figure<Stands> toMetal(End end) {
        return standing(RideFigures.BUMP_TRAVEL_TO_METAL, end, " travel to metal");
    }

    /** At rest. */
    static Figure<Stands> rollCentre(End end) {
        return Figure.of(
                end.key() + "RollCentreHeight",
                end.key() + " roll centre",
                Dimension.LENGTH,
                "m",
                0,
                stance -> stance.car().axle(end).geometry().rollCentreHeight());
    }

    private static Figure<Stands> ofLinks(Figure<AxleState> figure, End end, String words) {
        return figure.<Stands>within(stance -> stance.links(end).map(StandingLinks::rest))
                .named(end, words);
    }

    private static Figure<Stands> ofShaft(Figure<ShaftFigures> figure, String name, String words) {
        return figure.<Stands>within(stance -> Stream.of(stance.rearLinks(), stance.frontLinks())
                        .flatMap(Optional::stream)
                        .flatMap(links -> links.rest().live().stream())
                        .flatMap(live -> live.shaft().stream())
                        .findFirst())
                .named(name, words);
    }

    private static Figure<Stands> toLinkLimit(End end) {
        return Figure.ofOptional(
                end.key() + "TravelToLinkLimit",
                end.key() + " travel to the links' limit",
                Dimension.LENGTH,
                "m",
                0,
                stance -> stance.links(end)
                        .flatMap(StandingLinks::firstInBump)
                        .map(limit -> OptionalDouble.of(limit.at()))
                        .orElseGet(OptionalDouble::empty));
    }

    static Figure<Stands> onSprings(End end) {
        return Figure.ofOptional(
                end.key() + "SpringFrequency",
                end.key() + " frequency on springs",
                Dimension.FREQUENCY,
                "Hz",
                2,
                stance -> stance.frequencyOnSprings(end));
    }

    private static Figure<Stands> standing(Figure<Standing> figure, End end, String words) {
        return figure.<Stands>within(stance -> Optional.of(stance.standing(end)))
                .named(end, end.key() + words);
    }

    private static Figure<Stands> ofRide(Figure<AxleRide> figure, End end, String words) {
        return figure.<Stands>within(stance -> stance.rides().map(ride -> ride.axle(end)))
                .named(end, words);
    }

    private static Figure<Stands> comfort(End end) {
        return RideFigures.WEIGHTED_ACCELERATION
                .<Stands>within(stance ->
                        stance.rides().flatMap(ride -> ride.axle(end).damped()).map(AxleRide.Damped::road))
                .named(end, "above the " + end.key() + " axle, as a body feels it");
    }

    private static Optional<TurnRow> row(PaceAnswer answer) {
        return answer instanceof PaceAnswer.InBalance pace ? Optional.of(pace.row()) : Optional.empty();
    }

    private static Optional<TurnRow> atLimit(Stands stance) {
        return stance.turns().map(turn -> turn.limit().row());
    }

    private static Figure<Stands> camber(String name, String words, End end) {
        return Figure.ofOptional(
                name,
                words,
                Dimension.ANGLE,
                "deg",
                2,
                stance -> stance.car().axle(end) instanceof Axle.Independent axle
                        ? OptionalDouble.of(axle.alignment().camber())
                        : OptionalDouble.empty());
    }

    private static Figure<Stands> springRate(String name, String words, End end) {
        return Figure.ofOptional(
                name,
                words,
                Dimension.STIFFNESS,
                "N/m",
                1,
                stance -> optional(stance.springs().map(springs -> OptionalDouble.of(springs.rate(end)))));
    }

    private static Figure<Stands> needed(String name, String words, End end) {
        return Figure.ofOptional(
                name,
                words,
                Dimension.FREQUENCY,
                "Hz",
                2,
                stance -> optional(stance.springs().map(springs -> springs.needs(end))));
    }

    private static OptionalDouble optional(Optional<OptionalDouble> value) {
        return value.orElseGet(OptionalDouble::empty);
    }
}
