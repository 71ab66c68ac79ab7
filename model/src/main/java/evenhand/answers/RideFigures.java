package evenhand.answers;

import evenhand.quantity.Dimension;
import evenhand.ride.AxleRide;
import evenhand.ride.AxleTramp;
import evenhand.ride.BodyOverHump;
import evenhand.ride.DampingAtSpeed;
import evenhand.ride.DampingSweep;
import evenhand.ride.PitchBounce;
import evenhand.ride.RoadResponse;
import evenhand.ride.Standing;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The figures of a ride, per wheel. */
public final class RideFigures {
    public static final Figure<AxleRide> BODY_FREQUENCY =
            Figure.of("bodyFrequency", "body frequency", Dimension.FREQUENCY, "Hz", 2, AxleRide::bodyFrequency);
    public static final Figure<AxleRide> BODY_DAMPING = ofDamped(
            "bodyDampingRatio",
            "damping ratio of the body",
            Dimension.RATIO,
            "",
            2,
            d -> OptionalDouble.of(d.modes().body().dampingRatio()));
    public static final Figure<AxleRide> STATIC_DEFLECTION = Figure.of(
            "staticDeflection",
            "springs give under what stands on them",
            Dimension.LENGTH,
            "m",
            0,
            AxleRide::staticDeflection);

    /** What is felt of a road over an axle, to the digits that it is compared with. */
    public static final Figure<AxleRide> COMFORT = Figure.ofOptional(
            "weightedAcceleration_rms",
            "acceleration as it is felt (Wk)",
            Dimension.ACCELERATION,
            "m/s^2",
            3,
            AxleRide::comfort);

    public static final Figure<Standing> BUMP_TRAVEL_TO_STOP =
            atRest("bumpTravelToStop", "bump travel to the stop", Standing::bumpTravelToStop);

    public static final Figure<Standing> BUMP_TRAVEL_TO_METAL =
            atRest("bumpTravelToMetal", "bump travel to metal", Standing::bumpTravelToMetal);

    /** Of an axle, in the order of an answer. */
    public static final List<Figure<AxleRide>> AXLE = List.of(
            rate("wheelRate", "wheel rate in heave", axle -> axle.rates().heave()),
            rate("rideRate", "ride rate, tyre in series", axle -> axle.rates().ride()),
            rate(
                    "rollWheelRate",
                    "wheel rate in roll, no bar",
                    axle -> axle.rates().roll()),
            rate("oneWheelRate", "wheel rate of one wheel", axle -> axle.rates().oneWheel()),
            BODY_FREQUENCY,
            ofDamped(
                    "bodyDampedFrequency",
                    "body frequency, damped",
                    Dimension.FREQUENCY,
                    "Hz",
                    2,
                    d -> d.modes().body().dampedFrequency()),
            BODY_DAMPING,
            Figure.of("hopFrequency", "wheel hop frequency", Dimension.FREQUENCY, "Hz", 1, AxleRide::hopFrequency),
            ofDamped(
                    "hopDampingRatio",
                    "damping ratio of wheel hop",
                    Dimension.RATIO,
                    "",
                    2,
                    d -> OptionalDouble.of(d.modes().hop().dampingRatio())),
            STATIC_DEFLECTION,
            BUMP_TRAVEL_TO_STOP.within(axle -> Optional.of(axle.standing())),
            Figure.ofOptional(
                    "droopTravel",
                    "droop travel",
                    Dimension.LENGTH,
                    "m",
                    0,
                    axle -> axle.standing().droopTravel()),
            ofDamped(
                    "damperRate",
                    "damper rate at the wheel",
                    Dimension.DAMPING,
                    "N*s/m",
                    0,
                    d -> OptionalDouble.of(d.quarterCar().dampingRate())));

    /** What is felt of the road that was asked for. */
    public static final Figure<RoadResponse> WEIGHTED_ACCELERATION = Figure.of(
            "weightedAcceleration_rms",
            "the same as it is felt (Wk)",
            Dimension.ACCELERATION,
            "m/s^2",
            2,
            RoadResponse::weightedAcceleration);

    /** Of an axle on the road. */
    public static final List<Figure<RoadResponse>> ROAD = List.of(
            Figure.of(
                    "bodyAcceleration_rms",
                    "body acceleration",
                    Dimension.ACCELERATION,
                    "m/s^2",
                    2,
                    RoadResponse::bodyAcceleration),
            WEIGHTED_ACCELERATION,
            Figure.of("tyreDeflection_rms", "tyre deflection", Dimension.LENGTH, "m", 1, RoadResponse::tyreDeflection),
            Figure.of(
                    "suspensionTravel_rms",
                    "suspension travel",
                    Dimension.LENGTH,
                    "m",
                    1,
                    RoadResponse::suspensionTravel));

    public static final Figure<AxleRide> TYRE_LOAD_VARIATION = Figure.ofOptional(
            "tyreLoadVariation", "tyre load varies by", Dimension.RATIO, "", 1, AxleRide::tyreLoadVariation);

    public static final List<Figure<PitchBounce>> PITCH_BOUNCE = List.of(
            Figure.of(
                    "bounceFrequency", "bounce frequency", Dimension.FREQUENCY, "Hz", 2, PitchBounce::bounceFrequency),
            Figure.of("pitchFrequency", "pitch frequency", Dimension.FREQUENCY, "Hz", 2, PitchBounce::pitchFrequency),
            Figure.ofOptional(
                    "bounceCentre",
                    "bounce centre, ahead of the c.g.",
                    Dimension.LENGTH,
                    "m",
                    0,
                    PitchBounce::bounceCentre),
            Figure.of(
                    "pitchCentre",
                    "pitch centre, ahead of the c.g.",
                    Dimension.LENGTH,
                    "m",
                    0,
                    PitchBounce::pitchCentre),
            Figure.of("pitchInertia", "pitch inertia", Dimension.INERTIA, "kg*m^2", 0, PitchBounce::pitchInertia));

    /** Of an axle at rest; what the turn and yes or no have to say stands beside them. */
    public static final List<Figure<Standing>> STANDING = List.of(
            Figure.of("springLoad", "load along one spring", Dimension.FORCE, "N", 0, Standing::springLoad),
            atRest("requiredFreeLength", "free length for this height", Standing::requiredFreeLength),
            atRest("coilBindMargin", "left between coils at metal", Standing::coilBindMargin),
            BUMP_TRAVEL_TO_METAL,
            Figure.ofOptional(
                    "stopLoadAtRest", "stop carries at rest", Dimension.FORCE, "N", 0, Standing::stopLoadAtRest));

    /** A spring's length against the one it should have. */
    public static final Figure<Standing> PERCH_MOVE =
            atRest("perchMove", "fitted spring longer than that by", Standing::perchMove);

    public static final Figure<Standing> PRELOAD_IN_DROOP = Figure.ofOptional(
            "preloadInDroop", "left on the spring in droop", Dimension.FORCE, "N", 0, Standing::preloadInDroop);

    /** Where the first stop is touched in the turn. */
    public static final Figure<OptionalDouble> STOP_TOUCHED = Figure.ofOptional(
            "stopTouched", "stop touched in the turn at", Dimension.ACCELERATION, "g", 2, touched -> touched);

    /** Of one damper on the curve of comfort against grip. */
    public static final List<Figure<DampingSweep.Point>> SWEEP = List.of(
            Figure.of("damperRate", "damper rate", Dimension.DAMPING, "N*s/m", 0, DampingSweep.Point::dampingRate),
            Figure.of("bodyDampingRatio", "ratio", Dimension.RATIO, "", 2, DampingSweep.Point::dampingRatio),
            Figure.of(
                    "weightedAcceleration_rms",
                    "comfort",
                    Dimension.ACCELERATION,
                    "m/s^2",
                    3,
                    DampingSweep.Point::weightedAcceleration),
            Figure.of(
                    "tyreLoadVariation",
                    "tyre load varies",
                    Dimension.RATIO,
                    "",
                    1,
                    DampingSweep.Point::tyreLoadVariation));

    /** Of one passage over a hump. */
    public static final List<Figure<BodyOverHump.Passage>> HUMP = List.of(
            Figure.of("speed", "speed", Dimension.SPEED, "m/s", 0, BodyOverHump.Passage::speed),
            Figure.of(
                    "peakAcceleration",
                    "greatest acceleration",
                    Dimension.ACCELERATION,
                    "m/s^2",
                    2,
                    BodyOverHump.Passage::peakAcceleration),
            Figure.of("pitchOver", "pitch on the way", Dimension.ANGLE, "deg", 2, BodyOverHump.Passage::pitchOver),
            Figure.of("pitchAfter", "pitch left", Dimension.ANGLE, "deg", 2, BodyOverHump.Passage::pitchAfter),
            Figure.of("bounceAfter", "bounce left", Dimension.LENGTH, "m", 1, BodyOverHump.Passage::bounceAfter),
            Figure.of(
                    "pitchOverBounce",
                    "pitch over bounce",
                    Dimension.RATIO,
                    "",
                    2,
                    BodyOverHump.Passage::pitchOverBounce));

    /** Of a live axle's tramp. */
    public static final List<Figure<AxleTramp>> TRAMP = List.of(
            Figure.of("frequency", "tramp frequency", Dimension.FREQUENCY, "Hz", 1, AxleTramp::frequency),
            Figure.ofOptional(
                    "dampingRatio", "damping ratio of tramp", Dimension.RATIO, "", 2, AxleTramp::dampingRatio),
            Figure.of(
                    "rollInertia", "roll inertia of the axle", Dimension.INERTIA, "kg*m^2", 0, AxleTramp::rollInertia));

    /** Of a damper at one of its speeds. */
    public static final List<Figure<DampingAtSpeed>> DAMPING = List.of(
            Figure.of("damperSpeed", "damper speed", Dimension.SPEED, "m/s", 2, DampingAtSpeed::damperSpeed),
            Figure.of("bump", "bump", Dimension.RATIO, "", 2, DampingAtSpeed::bump),
            Figure.of("rebound", "rebound", Dimension.RATIO, "", 2, DampingAtSpeed::rebound),
            Figure.of("mean", "mean", Dimension.RATIO, "", 2, DampingAtSpeed::mean),
            Figure.of("roll", "mean in roll", Dimension.RATIO, "", 2, DampingAtSpeed::rollMean));

    private RideFigures() {}

    private static Figure<AxleRide> rate(String name, String words, ToDoubleFunction<AxleRide> reading) {
        return Figure.of(name, words, Dimension.STIFFNESS, "N/m", 1, reading);
    }

    private static Figure<Standing> atRest(String name, String words, Function<Standing, OptionalDouble> reading) {
        return Figure.ofOptional(name, words, Dimension.LENGTH, "m", 0, reading);
    }

    private static Figure<AxleRide> ofDamped(
            String name,
            String words,
            Dimension dimension,
            String unit,
            int digits,
            Function<AxleRide.Damped, OptionalDouble> reading) {
        return Figure.ofOptional(
                name,
                words,
                dimension,
                unit,
                digits,
                axle -> axle.damped().map(reading).orElseGet(OptionalDouble::empty));
    }
}
