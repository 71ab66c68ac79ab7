package evenhand.answers;

import evenhand.linkage.AxleState;
import evenhand.linkage.AxleState.LiveFigures;
import evenhand.linkage.AxleState.OwnLinks;
import evenhand.linkage.AxleState.ShaftFigures;
import evenhand.linkage.AxleState.Steering;
import evenhand.linkage.AxleState.WheelFigures;
import evenhand.quantity.Dimension;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The figures of an axle in one place of its travel. */
public final class TravelFigures {
    public static final Figure<AxleState> LEFT_TRAVEL = length("leftTravel", "left wheel up", AxleState::leftTravel);
    public static final Figure<AxleState> RIGHT_TRAVEL =
            length("rightTravel", "right wheel up", AxleState::rightTravel);
    public static final Figure<AxleState> REFERENCE_STEER = Figure.<Steering>of(
                    "referenceSteer", "reference steer", Dimension.ANGLE, "deg", 1, Steering::referenceSteer)
            .within(AxleState::steering);
    public static final Figure<AxleState> ROLL_CENTRE =
            lengthIfAny("rollCentreHeight", "roll centre", AxleState::rollCentreHeight);
    public static final Figure<AxleState> ROLL_CENTRE_OFFSET =
            lengthIfAny("rollCentreOffset", "roll centre to the left", AxleState::rollCentreOffset);
    public static final Figure<AxleState> ROLL_STEER =
            ratio("rollSteer", "roll steer", AxleState::rollSteer).to(1);
    public static final Figure<AxleState> ACKERMANN = Figure.<Steering>ofOptional(
                    "ackermannShare", "of Ackermann", Dimension.RATIO, "", 0, Steering::ackermannShare)
            .within(AxleState::steering);

    public static final Figure<LiveFigures> AXLE_STEER = angle("axleSteer", "axle steer", LiveFigures::axleSteer);
    public static final Figure<LiveFigures> SIDE_SHIFT = length("sideShift", "to the left", LiveFigures::sideShift);
    public static final Figure<LiveFigures> FORE_AFT = length("foreAft", "forwards", LiveFigures::foreAft);
    public static final Figure<LiveFigures> CRANK =
            Figure.ofOptional("crank", "crank turned", Dimension.ANGLE, "deg", 1, LiveFigures::crank);
    public static final Figure<ShaftFigures> PINION_SLOPE =
            angle("pinionSlope", "pinion slope", ShaftFigures::pinionSlope);
    public static final Figure<ShaftFigures> RESIDUAL_JOINT_ANGLE =
            angle("residualJointAngle", "left-over joint angle", ShaftFigures::residualJointAngle);

    public static final Figure<ShaftFigures> GREATEST_JOINT_ANGLE =
            angle("jointAngle", "greatest joint angle", ShaftFigures::greatestJointAngle);

    public static final Figure<WheelFigures> TOE = angle("toe", "toe", WheelFigures::toe);
    public static final Figure<WheelFigures> CAMBER = angle("camber", "camber", WheelFigures::camber);
    public static final Figure<WheelFigures> SPRING_LENGTH =
            lengthIfAny("springLength", "spring length", WheelFigures::springLength);
    public static final Figure<WheelFigures> SPRING_RATIO =
            ratioIfAny("springRatio", "spring ratio", WheelFigures::springRatio);
    public static final Figure<WheelFigures> DAMPER_LENGTH =
            lengthIfAny("damperLength", "damper length", WheelFigures::damperLength);
    public static final Figure<WheelFigures> DAMPER_RATIO =
            ratioIfAny("damperRatio", "damper ratio", WheelFigures::damperRatio);

    public static final Figure<OwnLinks> STEER = angle("steer", "steer", OwnLinks::steer);
    public static final Figure<OwnLinks> CASTER = angle("caster", "caster", OwnLinks::caster);
    public static final Figure<OwnLinks> TRAIL = length("trail", "trail", OwnLinks::trail);

    /** Of any axle, in the order of an answer. */
    public static final List<Figure<AxleState>> STATE = List.of(
            LEFT_TRAVEL,
            RIGHT_TRAVEL,
            REFERENCE_STEER,
            Figure.<Steering>of("rack", "rack to the left", Dimension.LENGTH, "m", 1, Steering::rack)
                    .within(AxleState::steering),
            length("track", "track", AxleState::track),
            ROLL_CENTRE,
            ROLL_CENTRE_OFFSET,
            ROLL_STEER,
            ratio("rollCamber", "roll camber", AxleState::rollCamber),
            ACKERMANN,
            ratioIfAny("antiDive", "anti-dive", AxleState::antiDive),
            ratioIfAny("antiLift", "anti-lift", AxleState::antiLift),
            ratioIfAny("antiSquat", "anti-squat", AxleState::antiSquat));

    /** Of a live axle besides. */
    public static final List<Figure<LiveFigures>> LIVE = List.of(
            ratio("forceLineSlope", "slope of the force line", LiveFigures::forceLineSlope),
            AXLE_STEER,
            SIDE_SHIFT,
            FORE_AFT,
            angle("axlePitch", "axle pitch", LiveFigures::axlePitch),
            ratio("contactSideSlope", "side-view slope at the contact", LiveFigures::contactSideSlope),
            ratio("wheelSideSlope", "side-view slope at the wheel", LiveFigures::wheelSideSlope),
            lengthIfAny("swingArm", "side-view swing arm", LiveFigures::swingArm),
            lengthIfAny("swingCentreHeight", "height of its centre", LiveFigures::swingCentreHeight),
            CRANK);

    /** Of its propeller shaft. */
    public static final List<Figure<ShaftFigures>> SHAFT = List.of(
            PINION_SLOPE,
            RESIDUAL_JOINT_ANGLE,
            ratio("speedFluctuation", "uneven speed", ShaftFigures::speedFluctuation),
            length("plunge", "plunge", ShaftFigures::plunge),
            angle("shaftSlope", "shaft slope", ShaftFigures::shaftSlope));

    /** Of each wheel. */
    public static final List<Figure<WheelFigures>> WHEEL = List.of(
            TOE,
            CAMBER,
            SPRING_LENGTH,
            SPRING_RATIO,
            ratioIfAny("springRollRatio", "spring ratio in roll", WheelFigures::springRollRatio),
            DAMPER_LENGTH,
            DAMPER_RATIO,
            ratioIfAny("damperRollRatio", "damper ratio in roll", WheelFigures::damperRollRatio),
            ratioIfAny("barRatio", "bar ratio", WheelFigures::barRatio),
            ratioIfAny("barRollRatio", "bar ratio in roll", WheelFigures::barRollRatio),
            angleIfAny("barArm", "bar arm turned", WheelFigures::barArm),
            angleIfAny("upperEye", "upper eye", WheelFigures::upperEye),
            angleIfAny("lowerEye", "lower eye", WheelFigures::lowerEye));

    /** Of a wheel on links of its own besides. */
    public static final List<Figure<OwnLinks>> OWN = List.of(
            STEER,
            CASTER,
            angle("kingpin", "kingpin", OwnLinks::kingpin),
            TRAIL,
            length("scrub", "scrub", OwnLinks::scrub),
            ratio("forceLineSlope", "slope of the force line", OwnLinks::forceLineSlope),
            ratio("contactSideSlope", "side-view slope at the contact", OwnLinks::contactSideSlope),
            ratio("wheelSideSlope", "side-view slope at the wheel", OwnLinks::wheelSideSlope),
            lengthIfAny("swingArm", "side-view swing arm", OwnLinks::swingArm),
            lengthIfAny("swingCentreHeight", "height of its centre", OwnLinks::swingCentreHeight));

    private TravelFigures() {}

    private static <T> Figure<T> length(String name, String words, ToDoubleFunction<T> reading) {
        return Figure.of(name, words, Dimension.LENGTH, "m", 1, reading);
    }

    private static <T> Figure<T> lengthIfAny(String name, String words, Function<T, OptionalDouble> reading) {
        return Figure.ofOptional(name, words, Dimension.LENGTH, "m", 1, reading);
    }

    private static <T> Figure<T> angle(String name, String words, ToDoubleFunction<T> reading) {
        return Figure.of(name, words, Dimension.ANGLE, "deg", 2, reading);
    }

    private static <T> Figure<T> angleIfAny(String name, String words, Function<T, OptionalDouble> reading) {
        return Figure.ofOptional(name, words, Dimension.ANGLE, "deg", 2, reading);
    }

    private static <T> Figure<T> ratio(String name, String words, ToDoubleFunction<T> reading) {
        return Figure.of(name, words, Dimension.RATIO, "", 3, reading);
    }

    private static <T> Figure<T> ratioIfAny(String name, String words, Function<T, OptionalDouble> reading) {
        return Figure.ofOptional(name, words, Dimension.RATIO, "", 3, reading);
    }
}
