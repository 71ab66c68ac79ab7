package evenhand.roadtest;

import evenhand.car.End;
import evenhand.turn.Direction;
import java.util.Optional;

/** One number that was read on the road. */
public sealed interface Observation {
    /** A channel in a steady turn; SI, angles in rad. */
    record Reading(Direction turn, Pace pace, Channel channel, Measured measured) implements Observation {}

    /**
     * The pace at which an end went.
     *
     * @param tolerance of seeing it, besides that of the pace; half-width, m/s²
     * @param firstAxle the end that went, where it was noted: compared, never fitted
     */
    record Limit(Direction turn, Pace pace, double tolerance, Optional<End> firstAxle) implements Observation {
        /** Standard deviation of both, m/s². */
        double spread(double radius) {
            return Math.hypot(tolerance / 2, pace.spread(radius));
        }
    }

    /** What a pressed corner does when it is let go. */
    record Bounce(End axle, Swing swing, Measured measured) implements Observation {}

    /** What is read of a swing. */
    enum Swing {
        /** Hz. */
        FREQUENCY("frequency"),
        /** Height of a swing over the one before on the same side. */
        NEXT_SWING("nextSwing");

        private final String key;

        Swing(String key) {
            this.key = key;
        }

        /** Name in files and answers. */
        public String key() {
            return key;
        }
    }
}
