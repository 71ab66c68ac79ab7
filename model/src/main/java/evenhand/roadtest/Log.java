package evenhand.roadtest;

import java.util.List;
import java.util.Optional;

/**
 * What instruments wrote down while a car was driven, SI, left turns positive.
 *
 * @param times s, rising
 * @param columns what was written down, each as long as the times
 */
public record Log(List<Double> times, List<Series> columns) {
    /** What is written down. */
    public enum Kind {
        SPEED("speed"),
        LATERAL_ACCELERATION("lateralAcceleration"),
        YAW_RATE("yawRate"),
        STEERING_WHEEL("steeringWheel"),
        ROLL("roll"),
        /** Of a corner that was pressed and let go. */
        HEIGHT("height"),
        /** Of the body above it. */
        ACCELERATION("acceleration");

        /** What is written down while the car turns. */
        public static final List<Kind> DRIVEN = List.of(SPEED, LATERAL_ACCELERATION, YAW_RATE, STEERING_WHEEL, ROLL);

        /** What is written down while a corner swings out. */
        public static final List<Kind> BOUNCED = List.of(HEIGHT, ACCELERATION);

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        /** Name of its tolerance in a file. */
        public String key() {
            return key;
        }
    }

    /** One of them, and what its instrument may be off by, a half-width. */
    public record Series(Kind kind, List<Double> values, double tolerance) {
        public Series {
            values = List.copyOf(values);
        }
    }

    public Log {
        times = List.copyOf(times);
        columns = List.copyOf(columns);
    }

    public Optional<Series> column(Kind kind) {
        return columns.stream().filter(one -> one.kind() == kind).findFirst();
    }
}
