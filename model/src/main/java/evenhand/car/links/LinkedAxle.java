package evenhand.car.links;

import java.util.Optional;

/** All that must be known of one axle to follow its links through the travel. */
public sealed interface LinkedAxle permits LinkedWheels, LinkedLiveAxle {
    Stance stance();

    Mounts mounts();

    SideView sideView();

    /** What stands on the springs, where their points and free length are known and the body was not let down. */
    Optional<Carried> carried();

    /** The same axle with the body so far down, m. */
    LinkedAxle down(double by);

    /** The same axle in a car. */
    LinkedAxle inCar(SideView seen, Optional<Carried> standing);
}
