package evenhand.choice;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** A place where the slope of a figure changes at once: one bend far sharper than those beside it, and large against the slope. */
final class Kink {
    /** The neighbourhood is looked at in steps of this part of the range... */
    static final double STEP = 0.0025;
    /** ... so many to either side. */
    private static final int LOOKS = 4;

    /** A bend this many times sharper than the usual bend of the neighbourhood is a kink... */
    private static final double SHARPER = 8;
    /** ... if it changes the slope by this part of itself. */
    private static final double SLOPE_CHANGE = 0.1;

    private Kink() {}

    /**
     * Whether there is one at a place or right beside it.
     *
     * @param from where the range begins
     * @param to where it ends
     * @param ripple a bend smaller than this is none
     * @param figure over the range, as far as it has a value
     */
    static boolean isAt(double place, double from, double to, double ripple, DoubleFunction<OptionalDouble> figure) {
        double[] figures = IntStream.rangeClosed(-LOOKS, LOOKS)
                .mapToDouble(k -> place + k * STEP * (to - from))
                .filter(at -> at >= from && at <= to)
                .mapToObj(figure)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        if (figures.length < LOOKS) {
            return false;
        }
        double[] bends = IntStream.range(1, figures.length - 1)
                .mapToDouble(i -> Math.abs(figures[i + 1] - 2 * figures[i] + figures[i - 1]))
                .sorted()
                .toArray();
        double sharpest = bends[bends.length - 1];
        double usual = bends[bends.length / 2];
        double steepest = IntStream.range(1, figures.length)
                .mapToDouble(i -> Math.abs(figures[i] - figures[i - 1]))
                .max()
                .orElse(0);
        return sharpest > ripple && sharpest > SHARPER * usual && sharpest > SLOPE_CHANGE * steepest;
    }
}
