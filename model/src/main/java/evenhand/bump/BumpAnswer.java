package evenhand.bump;

import evenhand.car.End;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import java.util.Map;
import java.util.OptionalDouble;

/** What a car answers when it is driven over an event of the road. */
public sealed interface BumpAnswer {
    /**
     * Straight ahead: one wheel of each axle, both being alike, each with its part of the body by itself; and the seat, with
     * both axles under one body.
     */
    record Straight(Map<End, Bump> axles, SeatMotion seat) implements BumpAnswer {
        public Straight {
            axles = Map.copyOf(axles);
        }
    }

    /** In mid-corner: each wheel by itself, from the turn's row. */
    record InCorner(TurnRow row, Map<Wheel, Bump> wheels) implements BumpAnswer {
        public InCorner {
            wheels = Map.copyOf(wheels);
        }

        /**
         * Part of an axle's side force that the changes of load take: the parts of its wheels, each by the side force that the wheel
         * has in the turn; none where the axle has none.
         */
        public OptionalDouble gripLost(End end) {
            double lost = 0;
            double all = 0;
            for (Wheel wheel : Wheel.values()) {
                Bump bump = wheels.get(wheel);
                if (wheel.end() == end && bump != null && bump.gripLost().isPresent()) {
                    double force = Math.abs(row.wheel(wheel).lateralForce());
                    lost += force * bump.gripLost().getAsDouble();
                    all += force;
                }
            }
            return all > 0 ? OptionalDouble.of(lost / all) : OptionalDouble.empty();
        }
    }

    /** The car does not turn at such a pace, m/s². */
    record BeyondLimit(double lateralAcceleration) implements BumpAnswer {}

    /** There is no answer. */
    record None(TurnAnswer.Reason reason, String text) implements BumpAnswer {}
}
