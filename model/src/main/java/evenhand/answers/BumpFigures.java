package evenhand.answers;

import evenhand.bump.Bump;
import evenhand.bump.SeatMotion;
import evenhand.quantity.Dimension;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The figures of a wheel over an event of the road. */
public final class BumpFigures {
    public static final Figure<Bump> PEAK_BODY_ACCELERATION = Figure.of(
            "peakBodyAcceleration",
            "hardest jolt of the body",
            Dimension.ACCELERATION,
            "m/s^2",
            2,
            Bump::peakBodyAcceleration);
    public static final Figure<Bump> PEAK_BUMP_TRAVEL =
            Figure.of("peakBumpTravel", "farthest into bump", Dimension.LENGTH, "m", 0, Bump::peakBumpTravel);
    public static final Figure<Bump> PEAK_DROOP_TRAVEL =
            Figure.of("peakDroopTravel", "farthest into droop", Dimension.LENGTH, "m", 0, Bump::peakDroopTravel);
    public static final Figure<Bump> LEAST_TYRE_LOAD =
            Figure.of("leastTyreLoad", "least load of the tyre", Dimension.FORCE, "N", 0, Bump::leastTyreLoad);
    public static final Figure<Bump> TIME_OFF_GROUND =
            Figure.of("timeOffGround", "off the ground", Dimension.TIME, "s", 3, Bump::timeOffGround);
    public static final Figure<Bump> GRIP_LOST =
            Figure.ofOptional("gripLost", "grip lost to load changes", Dimension.RATIO, "", 1, Bump::gripLost);
    public static final Figure<Bump> GRIP_TIME =
            Figure.of("gripTime", "grip counted for", Dimension.TIME, "s", 3, Bump::gripTime);
    public static final Figure<Bump> BUMP_TRAVEL_TO_STOP =
            room("bumpTravelToStop", "bump travel to the stop", room -> room.toStop());
    public static final Figure<Bump> BUMP_TRAVEL_TO_METAL =
            room("bumpTravelToMetal", "bump travel to metal", room -> room.toMetal());
    public static final Figure<Bump> DROOP_TRAVEL =
            room("droopTravel", "droop travel to the stop", room -> room.toDroopStop());

    /** Travel that is left, m; below zero as far as the stop was pressed in. */
    public static final Figure<Bump> LEFT_TO_STOP =
            left("leftToStop", "left before the bump stop", Bump.Room::toStop, Bump::peakBumpTravel);

    public static final Figure<Bump> LEFT_TO_METAL =
            left("leftToMetal", "left before metal", Bump.Room::toMetal, Bump::peakBumpTravel);
    public static final Figure<Bump> LEFT_IN_DROOP =
            left("leftInDroop", "left before the droop stop", Bump.Room::toDroopStop, Bump::peakDroopTravel);

    /** Where the driver sits. */
    public static final Figure<SeatMotion> SEAT_PEAK = Figure.of(
            "peakAcceleration",
            "hardest jolt of the seat's mounting",
            Dimension.ACCELERATION,
            "m/s^2",
            2,
            SeatMotion::peakAcceleration);

    /** What happened, in the order of an answer. */
    public static final List<Figure<Bump>> PEAKS =
            List.of(PEAK_BODY_ACCELERATION, PEAK_BUMP_TRAVEL, PEAK_DROOP_TRAVEL, LEAST_TYRE_LOAD, TIME_OFF_GROUND);

    /** Grip, and how far the travel could go. */
    public static final List<Figure<Bump>> GRIP_AND_ROOM =
            List.of(GRIP_LOST, GRIP_TIME, BUMP_TRAVEL_TO_STOP, BUMP_TRAVEL_TO_METAL, DROOP_TRAVEL);

    private BumpFigures() {}

    private static Figure<Bump> room(String name, String words, Function<Bump.Room, OptionalDouble> reading) {
        return Figure.ofOptional(name, words, Dimension.LENGTH, "m", 0, bump -> reading.apply(bump.room()));
    }

    private static Figure<Bump> left(
            String name, String words, Function<Bump.Room, OptionalDouble> room, ToDoubleFunction<Bump> used) {
        return Figure.ofOptional(name, words, Dimension.LENGTH, "m", 0, bump -> {
            OptionalDouble all = room.apply(bump.room());
            return all.isPresent() ? OptionalDouble.of(all.getAsDouble() - used.applyAsDouble(bump)) : all;
        });
    }
}
