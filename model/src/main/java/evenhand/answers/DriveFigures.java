package evenhand.answers;

import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.straight.Driving;
import evenhand.straight.Driving.Gear;
import evenhand.straight.Driving.Launch;
import evenhand.straight.Driving.Pulling;
import evenhand.straight.Driving.Pulls;
import evenhand.straight.Driving.WheelPull;
import java.util.List;
import java.util.OptionalDouble;

/** The figures of a car that pulls away and drives in its gears. */
public final class DriveFigures {
    private static final Unit RPM = Unit.of("rpm");

    public static final Figure<Gear> RATIO = ratio("overallRatio", "engine turns per wheel turn", Gear::overallRatio);
    public static final Figure<Gear> SPEED_PER_1000 =
            Figure.of("speedPer1000rpm", "speed per 1000 rpm", Dimension.SPEED, "m/s", 1, Gear::speedPer1000rpm);
    public static final Figure<Gear> SPEED_AT_RED_LINE = Figure.ofOptional(
            "speedAtRedLine", "speed at the red line", Dimension.SPEED, "m/s", 0, Gear::speedAtRedLine);
    public static final Figure<Pulls> FORCE =
            Figure.of("driveForce", "force at the wheels", Dimension.FORCE, "N", 0, Pulls::force);
    public static final Figure<Pulls> ACCELERATION =
            Figure.of("acceleration", "acceleration", Dimension.ACCELERATION, "g", 3, Pulls::acceleration);
    public static final Figure<Pulls> GRADE =
            Figure.ofOptional("grade", "steepest grade", Dimension.RATIO, "", 1, Pulls::grade);

    /** What a gear is without its engine. */
    public static final List<Figure<Gear>> GEAR = List.of(RATIO, SPEED_PER_1000, SPEED_AT_RED_LINE);

    /** What the engine makes of it. */
    public static final List<Figure<Pulls>> PULLS = List.of(FORCE, ACCELERATION, GRADE);

    public static final Figure<Launch> LAUNCH = Figure.of(
            "acceleration",
            "off the line",
            Dimension.ACCELERATION,
            "g",
            3,
            launch -> launch.state().acceleration());
    public static final Figure<Launch> ENGINE =
            Figure.ofOptional("engine", "  what the engine gives", Dimension.ACCELERATION, "g", 3, Launch::engine);
    public static final Figure<Launch> GRIP =
            Figure.ofOptional("grip", "  what grip allows", Dimension.ACCELERATION, "g", 3, Launch::grip);

    public static final Figure<Driving.Answer> OPEN = Figure.ofOptional(
            "open", "grip with the differential open", Dimension.ACCELERATION, "g", 3, Driving.Answer::openGrip);
    public static final Figure<Driving.Answer> LOCKED = Figure.ofOptional(
            "locked", "grip with it locked", Dimension.ACCELERATION, "g", 3, Driving.Answer::lockedGrip);

    public static final Figure<Pulling> DRIVE_FORCE =
            Figure.of("driveForce", "drive force", Dimension.FORCE, "N", 0, Pulling::driveForce);
    public static final Figure<Pulling> SHAFT_TORQUE = Figure.ofOptional(
            "shaftTorque", "torque of the propeller shaft", Dimension.MOMENT, "N*m", 0, Pulling::shaftTorque);
    public static final Figure<Pulling> ANTI =
            Figure.ofOptional("anti", "links carry", Dimension.RATIO, "", 1, Pulling::anti);
    public static final Figure<Pulling> FRONT_HEAVE =
            Figure.of("frontHeave", "front heave", Dimension.LENGTH, "m", 1, Pulling::frontHeave);
    public static final Figure<Pulling> REAR_HEAVE =
            Figure.of("rearHeave", "rear heave", Dimension.LENGTH, "m", 1, Pulling::rearHeave);
    public static final Figure<Pulling> PITCH =
            Figure.of("pitch", "pitch, nose down", Dimension.ANGLE, "deg", 2, Pulling::pitch);
    public static final Figure<Pulling> ROLL =
            Figure.of("roll", "roll, right side down", Dimension.ANGLE, "deg", 2, Pulling::roll);
    public static final Figure<Pulling> WIND_UP =
            Figure.ofOptional("windUp", "wind-up of the leaves", Dimension.ANGLE, "deg", 1, Pulling::windUp);

    /** What a launch tells of the car, in its order. */
    public static final List<Figure<Pulling>> STATE =
            List.of(DRIVE_FORCE, SHAFT_TORQUE, ANTI, FRONT_HEAVE, REAR_HEAVE, PITCH, ROLL, WIND_UP);

    public static final Figure<WheelPull> LOAD = Figure.of("load", "load", Dimension.FORCE, "N", 0, WheelPull::load);
    public static final Figure<WheelPull> ALONG =
            Figure.of("longitudinalForce", "drive", Dimension.FORCE, "N", 0, WheelPull::force);

    private DriveFigures() {}

    /** Speed of the engine, rpm. */
    public static double rpm(double radiansPerSecond) {
        return RPM.fromSi(radiansPerSecond);
    }

    private static Figure<Gear> ratio(String name, String words, java.util.function.ToDoubleFunction<Gear> reading) {
        return new Figure<>(
                name,
                words,
                Dimension.RATIO,
                Unit.of(""),
                false,
                2,
                gear -> OptionalDouble.of(reading.applyAsDouble(gear)));
    }
}
