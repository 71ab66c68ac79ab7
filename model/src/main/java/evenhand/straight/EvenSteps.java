package evenhand.straight;

import evenhand.car.Weights;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.function.DoubleSupplier;

/**
 * Takes a car straight ahead through even steps of what it is braked or driven at, and closes in on where something is used up.
 *
 * <p>Each step starts where the last three lead, by the parabola through them: as a rule so near that Newton's method has one step
 * to do. Where that start leads nowhere, it starts from the step before; a step that was taken before starts where it ended. {@link #closeIn} is false position, the weight of an end
 * that stays halved, and the middle wherever that is slow or a value is not known. One per thread.
 *
 * <p>Source: Dahlquist &amp; Björck, Numerical Methods, 1974, ch. 6 (false position), from memory.
 */
final class EvenSteps {
    /** Nearer than this to each other, g, two places are one: that is what is left of rounding in the balances. */
    private static final double ONE_PLACE = 1e-14;
    /** More than enough for halving alone. */
    private static final int MOST_PLACES = 120;

    private final StraightAhead ahead;
    private final double perG;
    private final DoublePredicate balance;

    /** State of each step that was taken, rest first. */
    private final List<double[]> states = new ArrayList<>();

    private final double[] start = new double[AxleAlong.UNKNOWNS];

    // What is left between two places, the second used up.
    private double from;
    private double to;
    private boolean toStands;

    /**
     * @param perG steps to 1 g
     * @param balance finds the car's state at so many m/s² from the one at hand; false where there is none
     */
    EvenSteps(StraightAhead ahead, int perG, DoublePredicate balance) {
        this.ahead = ahead;
        this.perG = perG;
        this.balance = balance;
        states.add(new double[AxleAlong.UNKNOWNS]);
    }

    /** How far a step is from rest, g. */
    double at(int step) {
        return step / perG;
    }

    /** Goes to a step; those before it were gone to, one after the other, now or earlier. */
    boolean reach(int step) {
        double acceleration = at(step) * Weights.GRAVITY;
        if (step < states.size()) {
            ahead.startFrom(states.get(step));
            return balance.test(acceleration);
        }
        lead(step);
        boolean stands = balance.test(acceleration);
        if (!stands) {
            ahead.startFrom(states.get(step - 1));
            stands = balance.test(acceleration);
        }
        if (stands) {
            double[] found = new double[AxleAlong.UNKNOWNS];
            ahead.copyState(found);
            states.add(found);
        }
        return stands;
    }

    private void lead(int step) {
        double[] last = states.get(step - 1);
        double[] second = states.get(Math.max(step - 2, 0));
        double[] third = states.get(Math.max(step - 3, 0));
        for (int i = 0; i < start.length; i++) {
            start[i] = step > 2 ? 3 * (last[i] - second[i]) + third[i] : step > 1 ? 2 * last[i] - second[i] : last[i];
        }
        ahead.startFrom(start);
    }

    /**
     * The place, g, from which on something is used up or the car no longer stands; the state there is left behind, as far as there
     * is one.
     *
     * @param low where something is left
     * @param high where nothing is, or the car does not stand
     * @param ofLow what is left at the low end; NaN where that is not known
     * @param ofHigh what is left at the high end, zero or less; NaN where the car does not stand there
     * @param left what is left at the state at hand
     */
    double closeIn(double low, double ofLow, double high, double ofHigh, DoubleSupplier left) {
        from = low;
        to = high;
        double ofFrom = ofLow;
        double ofTo = ofHigh;
        boolean movedTo = false;
        boolean movedFrom = false;
        double width = to - from;
        int slow = 0;
        for (int i = 0; i < MOST_PLACES && to - from > ONE_PLACE; i++) {
            double middle = (from + to) / 2;
            double place = from + (to - from) * (ofFrom / (ofFrom - ofTo));
            if (slow > 1 || !(place > from && place < to)) {
                place = middle;
            }
            if (!(place > from && place < to)) {
                break;
            }
            boolean stands = balance.test(place * Weights.GRAVITY);
            double here = stands ? left.getAsDouble() : Double.NaN;
            if (here > 0) {
                from = place;
                ofFrom = here;
                ofTo = movedFrom ? ofTo / 2 : ofTo;
            } else {
                to = place;
                ofTo = here;
                ofFrom = movedTo ? ofFrom / 2 : ofFrom;
            }
            movedFrom = here > 0;
            movedTo = !movedFrom;
            slow = to - from > width / 2 ? slow + 1 : 0;
            width = to - from;
        }
        toStands = balance.test(to * Weights.GRAVITY);
        return to;
    }

    /** The last place, g, at which something was left. */
    double lastLeft() {
        return from;
    }

    /** Whether the car stands where {@link #closeIn} ended. */
    boolean standsThere() {
        return toStands;
    }
}
