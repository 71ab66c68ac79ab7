package evenhand.bump;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.road.Profile;
import evenhand.road.RoadEvent;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.Wheel;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Drives a car over an event of the road: each wheel with its part of the body by itself, from balance until it is at
 * rest again. What the wheels do to each other through pitch and roll of the body is left out there. The seat, straight
 * ahead, has both axles under one body, one after the other.
 */
public final class DriveOver {
    /** Error of a step in the places of body and wheel, m. Answers are then sure to 1e-6, landings and metal included. */
    static final double USUAL_TOLERANCE = 1e-9;

    private DriveOver() {}

    /** Straight ahead, to the end. */
    public static BumpAnswer straight(Car car, RoadEvent event, double speed) {
        return straight(car, event, speed, DriveOver::undisturbed);
    }

    /**
     * Straight ahead.
     *
     * @param car settled at its ride height
     * @param speed m/s
     * @param goOn asked again and again on the way; what it throws ends the drive
     * @throws evenhand.quantity.InvalidValue where a wheel of the car cannot get over the event
     */
    public static BumpAnswer straight(Car car, RoadEvent event, double speed, Runnable goOn) {
        Map<End, Bump> bumps = new EnumMap<>(End.class);
        Map<End, WheelStation> stations = new EnumMap<>(End.class);
        for (End end : End.values()) {
            Optional<WheelStation> station = WheelStation.atRest(car, end);
            if (station.isEmpty()) {
                return noSpring(end);
            }
            Optional<Bump> bump = over(station.get(), path(car, end, event), speed, goOn);
            if (bump.isEmpty()) {
                return notFollowed();
            }
            stations.put(end, station.get());
            bumps.put(end, bump.get());
        }
        Optional<SeatMotion> seat = SeatOver.of(
                car,
                Objects.requireNonNull(stations.get(End.FRONT)),
                Objects.requireNonNull(stations.get(End.REAR)),
                path(car, End.FRONT, event),
                path(car, End.REAR, event),
                speed,
                goOn);
        return seat.isPresent() ? new BumpAnswer.Straight(bumps, seat.get()) : notFollowed();
    }

    /** In mid-corner, to the end. */
    public static BumpAnswer inCorner(Car car, RoadEvent event, double speed, double pace, Direction direction) {
        return inCorner(car, event, speed, pace, direction, DriveOver::undisturbed);
    }

    /**
     * In mid-corner, on the circle that pace and speed make.
     *
     * @param car settled at its ride height
     * @param speed m/s
     * @param pace lateral acceleration, m/s²
     * @param goOn asked again and again on the way; what it throws ends the drive
     * @throws evenhand.quantity.InvalidValue where a wheel of the car cannot get over the event
     */
    public static BumpAnswer inCorner(
            Car car, RoadEvent event, double speed, double pace, Direction direction, Runnable goOn) {
        TurnAnswer answer = SteadyTurn.answer(car, List.of(pace), speed * speed / pace, direction);
        if (!(answer instanceof TurnAnswer.Turns turn)) {
            TurnAnswer.NoTurn none = (TurnAnswer.NoTurn) answer;
            return new BumpAnswer.None(none.reason(), none.text());
        }
        if (!(turn.paces().get(0) instanceof PaceAnswer.InBalance balance)) {
            return new BumpAnswer.BeyondLimit(pace);
        }
        Map<Wheel, Bump> bumps = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            Optional<WheelStation> station = WheelStation.inTurn(car, wheel, balance.row());
            if (station.isEmpty()) {
                return noSpring(wheel.end());
            }
            Optional<Bump> bump = over(station.get(), path(car, wheel.end(), event), speed, goOn);
            if (bump.isEmpty()) {
                return notFollowed();
            }
            bumps.put(wheel, bump.get());
        }
        return new BumpAnswer.InCorner(balance.row(), bumps);
    }

    private static void undisturbed() {
        // Nobody waits; it is driven to the end.
    }

    private static Profile path(Car car, End end, RoadEvent event) {
        return event.under(car.axle(end).tyre().loadedRadius());
    }

    private static BumpAnswer noSpring(End end) {
        return new BumpAnswer.None(
                TurnAnswer.Reason.NO_EQUILIBRIUM,
                "the " + end.key() + " springs do not hold the car up: their rate at the" + " wheel is not above zero");
    }

    private static BumpAnswer notFollowed() {
        return new BumpAnswer.None(
                TurnAnswer.Reason.NO_EQUILIBRIUM,
                "it cannot be followed in time: a spring, stop or damper is too stiff, or the event too long for this"
                        + " speed");
    }

    private static Optional<Bump> over(WheelStation station, Profile road, double speed, Runnable goOn) {
        return over(station, road, speed, new Crossing(station, USUAL_TOLERANCE, Series.FINEST, goOn));
    }

    /** One wheel; nothing where it cannot be followed. */
    static Optional<Bump> over(WheelStation station, Profile road, double speed, double tolerance, double finestRow) {
        return over(station, road, speed, new Crossing(station, tolerance, finestRow));
    }

    private static Optional<Bump> over(WheelStation station, Profile road, double speed, Crossing crossing) {
        if (!crossing.drive(road, speed)) {
            return Optional.empty();
        }
        Witness seen = crossing.witness;
        double more = station.wheelMore();
        return Optional.of(new Bump(
                seen.peakBodyPull,
                Math.max(0, seen.mostTravel + more),
                Math.max(0, -seen.leastTravel - more),
                Math.max(0, station.tyreRate() * seen.leastDeflection),
                seen.offGround,
                seen.mostTravel > Math.min(station.touches(), station.metal()),
                seen.mostTravel > station.metal(),
                seen.leastTravel < station.droopEnd(),
                seen.gripLost(),
                seen.gripTime(),
                new Bump.Room(
                        finite(station.touches() + more),
                        finite(station.metal() + more),
                        finite(-station.droopEnd() - more)),
                crossing.settled(),
                new EnergyBalance(crossing.step.roadWork, crossing.step.damped, crossing.step.energy()),
                seen.series()));
    }

    private static OptionalDouble finite(double length) {
        return Double.isFinite(length) ? OptionalDouble.of(length) : OptionalDouble.empty();
    }
}
