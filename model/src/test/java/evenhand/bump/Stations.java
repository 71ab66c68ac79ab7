package evenhand.bump;

import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.turn.LinkedCars;
import java.util.Optional;

/** Wheel stations for tests. */
final class Stations {
    private Stations() {}

    /** A wheel of a random car with dampers, standing. */
    static WheelStation random(long seed, End end) {
        return WheelStation.atRest(RoadCars.damped(seed).settled(), end).orElseThrow();
    }

    /** The same on links known by points; none where they do not come together. */
    static Optional<WheelStation> onLinks(long seed, End end) {
        return LinkedCars.damped(seed).flatMap(car -> WheelStation.atRest(car, end));
    }
}
