package evenhand.bump;

import evenhand.car.End;
import evenhand.car.RoadCars;

/** Wheel stations for tests. */
final class Stations {
    private Stations() {}

    /** A wheel of a random car with dampers, standing. */
    static WheelStation random(long seed, End end) {
        return WheelStation.atRest(RoadCars.damped(seed).settled(), end).orElseThrow();
    }
}
