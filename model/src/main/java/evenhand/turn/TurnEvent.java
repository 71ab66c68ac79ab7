package evenhand.turn;

import evenhand.car.End;
import java.util.Optional;

/** Something that happens on the way to the limit, at a lateral acceleration in m/s². */
public record TurnEvent(double lateralAcceleration, Kind kind, Optional<End> axle, Optional<Wheel> wheel) {
    /** What can happen. */
    public enum Kind {
        STOP_TOUCHED("stopTouched"),
        DROOP_REACHED("droopReached"),
        SPRING_LOOSE("springLoose"),
        WHEEL_LIFTED("wheelLifted"),
        ROLL_CENTRE_THROUGH_GROUND("rollCentreThroughGround"),
        LINK_LIMIT("linkLimit"),
        STEER_REVERSAL("steerReversal");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        /** Name in answers. */
        public String key() {
            return key;
        }
    }

    TurnEvent mirrored() {
        return new TurnEvent(lateralAcceleration, kind, axle, wheel.map(Wheel::mirrored));
    }
}
