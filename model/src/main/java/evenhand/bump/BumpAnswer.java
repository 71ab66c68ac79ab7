package evenhand.bump;

import evenhand.car.End;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import java.util.Map;

/** What a car answers when it is driven over an event of the road. */
public sealed interface BumpAnswer {
    /** Straight ahead: one wheel of each axle, both being alike. */
    record Straight(Map<End, Bump> axles) implements BumpAnswer {
        public Straight {
            axles = Map.copyOf(axles);
        }
    }

    /** In mid-corner: each wheel by itself, from the turn's row. */
    record InCorner(TurnRow row, Map<Wheel, Bump> wheels) implements BumpAnswer {
        public InCorner {
            wheels = Map.copyOf(wheels);
        }
    }

    /** The car does not turn at such a pace, m/s². */
    record BeyondLimit(double lateralAcceleration) implements BumpAnswer {}

    /** There is no answer. */
    record None(TurnAnswer.Reason reason, String text) implements BumpAnswer {}
}
