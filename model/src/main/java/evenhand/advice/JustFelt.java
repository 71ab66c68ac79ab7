package evenhand.advice;

import evenhand.answers.Judged;
import evenhand.quantity.Unit;

/**
 * The least change that a driver feels who drives before and after it: a tenth of what there is. A scale, a stopwatch or these
 * sums show smaller ones, a hand at the wheel or a seat does not. A neutral car has no tenth: of balance, 0.3 deg/g is the least,
 * of all else what is worth a word. Common practice, no source.
 */
final class JustFelt {
    private static final double PART = 0.1;
    private static final double OF_BALANCE = Unit.of("deg/g").toSi(0.3);

    private JustFelt() {}

    /** SI, for a figure that is so large now. */
    static double least(Judged judged, double now) {
        double floor = Harm.isOfBalance(judged.criterion())
                ? OF_BALANCE
                : judged.criterion().noticeable();
        return Math.max(floor, PART * Math.abs(now));
    }
}
