package evenhand.catalogue;

import evenhand.car.Curve;
import evenhand.quantity.Dimension;
import java.util.List;
import java.util.Map;

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

    /** One of a few words. */
    record Choice<V>(Map<String, V> words) implements Content<V> {}

    /** Any text. */
    record Text() implements Content<String> {}

    /** Texts by free words. */
    record Texts() implements Content<Map<String, String>> {}

    /** A curve of force over something, as a list of pairs. */
    record Points(Dimension at) implements Content<Curve> {}

    /** An object. */
    record Group<V>(Shape<V> shape) implements Content<V> {}

    /** A list of objects. */
    record Groups<V>(Shape<V> shape) implements Content<List<V>> {}

    /** A merge patch on an object of this shape. It has no value of its own. */
    record Changes<V>(Shape<V> shape) implements Content<V> {}

    /** The number of the file's format. */
    record Version(int known) implements Content<Integer> {}
}
