package evenhand.words.owner;

import java.util.OptionalDouble;

/** How sure something is that a number says, and so how strong a word it may have. */
public enum Sureness {
    /** Wrong once in twenty times at most. */
    SURE,
    /** Wrong once in six times at most. */
    LIKELY,
    /** It may be the other way round. */
    OPEN;

    /** Part of a half-width that holds nineteen times in twenty (two standard deviations), from which on a difference is likely. */
    private static final double ONE_DEVIATION = 0.5;

    /**
     * Of a difference from nothing, or from a bound.
     *
     * @param doubt half-width that holds nineteen times in twenty; none where the sums cannot tell it
     */
    public static Sureness of(double difference, OptionalDouble doubt) {
        if (doubt.isEmpty()) {
            return OPEN;
        }
        double size = Math.abs(difference);
        return size >= doubt.getAsDouble() ? SURE : size >= ONE_DEVIATION * doubt.getAsDouble() ? LIKELY : OPEN;
    }

    /** The less sure of two. */
    public Sureness and(Sureness other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
