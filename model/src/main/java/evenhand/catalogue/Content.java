package evenhand.catalogue;

import evenhand.car.Curve;
import evenhand.quantity.Dimension;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What a slot holds. */
public sealed interface Content<V> {
    /**
     * A quantity, or a ratio; its value in SI.
     *
     * @param bare whether a bare number is one in SI units: only where a printed set of coefficients says so
     */
    record Measure(Dimension dimension, boolean bare) implements Content<Double> {
        Measure(Dimension dimension) {
            this(dimension, dimension == Dimension.RATIO);
        }
    }

    /** A half-width alone, "± 1 deg", in SI. */
    record Tolerance(Dimension dimension) implements Content<Double> {}

    /** One of a few words. */
    record Choice<V>(Map<String, V> words) implements Content<V> {}

    /** True or false. */
    record Flag() implements Content<Boolean> {}

    /** Any text. */
    record Text() implements Content<String> {}

    /** Texts by free words. */
    record Texts() implements Content<Map<String, String>> {}

    /** A curve, as a list of pairs. */
    record Points<V>(CurveOf of, Function<List<Curve.Point>, V> made) implements Content<V> {}

    /**
     * Numbers one after another, bare where they are ratios.
     *
     * @param count how many; any from one on where 0
     */
    record Numbers(Dimension dimension, int count, String example) implements Content<List<Double>> {}

    /** Texts one after another. */
    record Names(String example) implements Content<List<String>> {}

    /** Pairs of a name and how often it counts. */
    record Shares(String example) implements Content<List<Share>> {}

    /** A name and how often it counts. */
    record Share(String name, double times) {}

    /** One of a few words, or something else. */
    record WordOr<W, V>(Map<String, V> words, Content<W> otherwise, Function<W, V> made) implements Content<V> {}

    /** What a curve is measured on. */
    enum CurveOf {
        /** A stop: force over deflection. */
        STOP(
                Dimension.LENGTH,
                "deflection",
                Dimension.FORCE,
                "force",
                "[[\"0 mm\", \"0 N\"], [\"20 mm\", \"1500 N\"]]"),
        /** A damper: force over speed. */
        DAMPER(Dimension.SPEED, "speed", Dimension.FORCE, "force", "[[\"0 m/s\", \"0 N\"], [\"0.1 m/s\", \"250 N\"]]"),
        /** An engine: torque over its speed. */
        ENGINE(
                Dimension.ROTATION,
                "engine speed",
                Dimension.MOMENT,
                "torque",
                "[[\"1000 rpm\", \"150 N*m\"], [\"3200 rpm\", \"235 N*m\"]]");

        private final Dimension at;
        private final String across;
        private final Dimension up;
        private final String upwards;
        private final String example;

        CurveOf(Dimension at, String across, Dimension up, String upwards, String example) {
            this.at = at;
            this.across = across;
            this.up = up;
            this.upwards = upwards;
            this.example = example;
        }

        /** What is measured: a force or a torque. */
        public Dimension up() {
            return up;
        }

        /** The same in words: "force". */
        public String upwards() {
            return upwards;
        }

        /** How few points it may have. */
        public int fewest() {
            return this == ENGINE ? 1 : 2;
        }

        /** What it is measured over. */
        public Dimension at() {
            return at;
        }

        /** The same in words: "deflection". */
        public String across() {
            return across;
        }

        /** A curve as it is written in a file. */
        public String example() {
            return example;
        }

        /** Whether it may stand there without a point, still to be measured: a damper then gives no force. */
        public boolean mayBeUnmeasured() {
            return this == DAMPER;
        }
    }

    /** An object. */
    record Group<V>(Shape<V> shape) implements Content<V> {}

    /** A list of objects. */
    record Groups<V>(Shape<V> shape) implements Content<List<V>> {}

    /** A merge patch on an object of this shape. It has no value of its own. */
    record Changes<V>(Shape<V> shape) implements Content<V> {}

    /** The number of the file's format. */
    record Version(int known) implements Content<Integer> {}
}
