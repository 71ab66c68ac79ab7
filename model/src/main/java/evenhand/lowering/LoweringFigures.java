package evenhand.lowering;

import evenhand.answers.Figure;
import evenhand.answers.HandSumFigures;
import evenhand.answers.TurnFigures;
import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.handsums.HandSums;
import evenhand.lowering.Stance.Stands;
import evenhand.quantity.Dimension;
import evenhand.ride.Ride;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The figures of a car at one height. */
public final class LoweringFigures {
    /** Of any height, with an answer or without. */
    public static final Figure<Stance> LOWERED =
            Figure.of("lowered", "let down by", Dimension.LENGTH, "m", 0, Stance::lowered);

    /** What is left of the travel. */
    public static final List<Figure<Stands>> TRAVEL = List.of(
            length(
                    "frontBumpTravelToStop",
                    "front travel to the stop",
                    stance -> stance.front().bumpTravelToStop()),
            length(
                    "rearBumpTravelToStop",
                    "rear travel to the stop",
                    stance -> stance.rear().bumpTravelToStop()));

    public static final List<Figure<Stands>> ROLL = List.of(ofSums(
            "rollGradient", "roll gradient", Dimension.UNDERSTEER_GRADIENT, "deg/g", 2, HandSumFigures.ROLL_GRADIENT));

    /** Key and unit of what stands for each pace. */
    public static final Figure<PaceAnswer> UNDERSTEER = Figure.ofOptional(
            "understeer",
            "understeer",
            Dimension.UNDERSTEER_GRADIENT,
            "deg/g",
            2,
            answer -> answer instanceof PaceAnswer.InBalance pace
                    ? TurnFigures.UNDERSTEER_GRADIENT.si(pace.row())
                    : OptionalDouble.empty());

    /** Of the limit and the stops. */
    public static final List<Figure<Stands>> TURN = List.of(
            ofTurn(
                    "limit",
                    "limit",
                    Dimension.ACCELERATION,
                    "g",
                    3,
                    turn -> turn.limit().lateralAcceleration()),
            ofTurn(
                    "limitBalance",
                    "limit balance",
                    Dimension.RATIO,
                    "",
                    1,
                    turn -> turn.limit().limitBalance()),
            Figure.ofOptional("firstStop", "first stop touched at", Dimension.ACCELERATION, "g", 2, Stands::firstStop));

    /** How it steers near its limit. */
    public static final Figure<Stands> NEAR_UNDERSTEER = Figure.ofOptional(
            "nearUndersteer",
            TurnFigures.NEAR_UNDERSTEER.words(),
            Dimension.UNDERSTEER_GRADIENT,
            "deg/g",
            2,
            stance -> optional(stance.turns().map(turn -> TurnFigures.NEAR_UNDERSTEER.si(turn.limit()))));

    public static final List<Figure<Stands>> ROLL_CENTRES = List.of(
            Figure.of(
                    "frontRollCentreHeight",
                    "front roll centre",
                    Dimension.LENGTH,
                    "m",
                    0,
                    stance -> stance.car().front().rollCentreHeight()),
            Figure.of(
                    "rearRollCentreHeight",
                    "rear roll centre",
                    Dimension.LENGTH,
                    "m",
                    0,
                    stance -> stance.car().rear().rollCentreHeight()));

    /** On the road that comfort is judged on. */
    public static final List<Figure<Stands>> COMFORT = List.of(
            comfort("frontWeightedAcceleration_rms", "front, as a body feels it", End.FRONT),
            comfort("rearWeightedAcceleration_rms", "rear, as a body feels it", End.REAR));

    public static final List<Figure<Stands>> METAL = List.of(
            length(
                    "frontBumpTravelToMetal",
                    "front travel to metal",
                    stance -> stance.front().bumpTravelToMetal()),
            length(
                    "rearBumpTravelToMetal",
                    "rear travel to metal",
                    stance -> stance.rear().bumpTravelToMetal()));

    public static final List<Figure<Stands>> LEVER = List.of(
            Figure.of(
                    "sprungHeight",
                    "weight above the ground",
                    Dimension.LENGTH,
                    "m",
                    0,
                    stance -> stance.car().sprung().height()),
            ofSums("rollArm", "weight above the roll axis", Dimension.LENGTH, "m", 0, HandSums::rollArm));

    public static final List<Figure<Stands>> CAMBER = List.of(
            camber("frontCamber", "front camber at rest", End.FRONT),
            camber("rearCamber", "rear camber at rest", End.REAR));

    public static final List<Figure<Stands>> FREQUENCIES = List.of(
            onSprings("frontSpringFrequency", "front frequency on springs", End.FRONT),
            onSprings("rearSpringFrequency", "rear frequency on springs", End.REAR),
            ofRide(
                    "frontBodyFrequency",
                    "front frequency with tyre",
                    Dimension.FREQUENCY,
                    "Hz",
                    ride -> OptionalDouble.of(ride.frequency(End.FRONT))),
            ofRide(
                    "rearBodyFrequency",
                    "rear frequency with tyre",
                    Dimension.FREQUENCY,
                    "Hz",
                    ride -> OptionalDouble.of(ride.frequency(End.REAR))),
            ofRide(
                    "frontBodyDampingRatio",
                    "front damping ratio",
                    Dimension.RATIO,
                    "",
                    ride -> ride.damping(End.FRONT)),
            ofRide("rearBodyDampingRatio", "rear damping ratio", Dimension.RATIO, "", ride -> ride.damping(End.REAR)));

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

    private static Figure<Stands> length(String name, String words, Function<Stands, OptionalDouble> reading) {
        return Figure.ofOptional(name, words, Dimension.LENGTH, "m", 0, reading);
    }

    private static Figure<Stands> ofSums(
            String name, String words, Dimension dimension, String unit, int digits, Figure<HandSums> figure) {
        return Figure.ofOptional(
                name,
                words,
                dimension,
                unit,
                digits,
                stance -> optional(stance.handSums().map(figure::si)));
    }

    private static Figure<Stands> ofSums(
            String name,
            String words,
            Dimension dimension,
            String unit,
            int digits,
            ToDoubleFunction<HandSums> reading) {
        return Figure.ofOptional(
                name,
                words,
                dimension,
                unit,
                digits,
                stance -> optional(stance.handSums().map(sums -> OptionalDouble.of(reading.applyAsDouble(sums)))));
    }

    private static Figure<Stands> ofTurn(
            String name,
            String words,
            Dimension dimension,
            String unit,
            int digits,
            ToDoubleFunction<TurnAnswer.Turns> reading) {
        return Figure.ofOptional(
                name,
                words,
                dimension,
                unit,
                digits,
                stance -> optional(stance.turns().map(turn -> OptionalDouble.of(reading.applyAsDouble(turn)))));
    }

    private static Figure<Stands> ofRide(
            String name, String words, Dimension dimension, String unit, Function<Ride, OptionalDouble> reading) {
        return Figure.ofOptional(
                name,
                words,
                dimension,
                unit,
                2,
                stance -> optional(stance.rides().map(reading)));
    }

    private static Figure<Stands> comfort(String name, String words, End end) {
        return ofRide(name, words, Dimension.ACCELERATION, "m/s^2", ride -> ride.comfort(end));
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

    private static Figure<Stands> onSprings(String name, String words, End end) {
        return Figure.ofOptional(name, words, Dimension.FREQUENCY, "Hz", 2, stance -> stance.frequencyOnSprings(end));
    }

    private static OptionalDouble optional(Optional<OptionalDouble> value) {
        return value.orElseGet(OptionalDouble::empty);
    }
}
