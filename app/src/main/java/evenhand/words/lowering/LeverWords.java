package evenhand.words.lowering;

import evenhand.answers.Criterion;
import evenhand.answers.HandSumFigures;
import evenhand.car.Spring;
import evenhand.handsums.HandSums;
import evenhand.lowering.Stance;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.List;

/** Why a car that is lower leans no less, or why it does: the lever between its weight and what it rolls about. */
final class LeverWords {
    /** Levers closer than this are called the same, m. */
    private static final double SAME_LEVER = 0.001;

    /** Roll gradients closer than this are called the same, rad per m/s². */
    private static final double SAME_ROLL = Criterion.ROLL_GRADIENT.noticeable();

    private static final Unit DEG_PER_G = Dimension.UNDERSTEER_GRADIENT.metric();

    private final Stance.Stands high;
    private final Stance.Stands low;
    private final HandSums before;
    private final HandSums after;
    private final boolean stiffened;
    private final Units units;

    private LeverWords(Stance.Stands high, Stance.Stands low, boolean stiffened, Units units) {
        this.high = high;
        this.low = low;
        before = high.handSums().orElseThrow();
        after = low.handSums().orElseThrow();
        this.stiffened = stiffened;
        this.units = units;
    }

    /**
     * The lever, and what the lean makes of it.
     *
     * @param high with hand sums, off its stops
     * @param low the same further down
     * @param stiffened whether it got stiffer springs on the way
     */
    static List<String> of(Stance.Stands high, Stance.Stands low, boolean stiffened, Units units) {
        LeverWords words = new LeverWords(high, low, stiffened, units);
        return List.of(words.lever(), words.lean());
    }

    private String lever() {
        double fall = before.sprung().height() - after.sprung().height();
        double front = high.car().front().geometry().rollCentreHeight()
                - low.car().front().geometry().rollCentreHeight();
        double rear = high.car().rear().geometry().rollCentreHeight()
                - low.car().rear().geometry().rollCentreHeight();
        double longer = after.rollArm() - before.rollArm();
        StringBuilder text = new StringBuilder("From ");
        text.append(length(high.lowered())).append(" to ").append(LowestWords.down(low.lowered(), units));
        text.append(" its sprung weight comes down by ").append(length(fall));
        text.append(", the front roll centre ").append(falls(front));
        text.append(" and the rear one ").append(falls(rear));
        text.append(": the lever between the weight and the axis that it rolls about ");
        if (Math.abs(longer) < SAME_LEVER) {
            text.append("stays ").append(length(after.rollArm()));
        } else {
            text.append(longer > 0 ? "grows" : "shrinks").append(" from ");
            text.append(length(before.rollArm())).append(" to ").append(length(after.rollArm()));
        }
        return text.append('.').toString();
    }

    private String falls(double fall) {
        return Math.abs(fall) < SAME_LEVER
                ? "not at all"
                : fall > 0 ? "by " + length(fall) : "rises by " + length(-fall);
    }

    private String lean() {
        double longer = after.rollArm() - before.rollArm();
        double was = HandSumFigures.ROLL_GRADIENT.si(before).orElse(0);
        double is = HandSumFigures.ROLL_GRADIENT.si(after).orElse(0);
        boolean same = Math.abs(is - was) < SAME_ROLL;
        String gradients = Numbers.fixed(DEG_PER_G.fromSi(was), 2) + " deg/g by the hand sums before, "
                + Numbers.fixed(DEG_PER_G.fromSi(is), 2) + " deg/g there.";
        if (stiffened) {
            return (same
                            ? "On its stiffer springs it leans as before: "
                            : "On its stiffer springs it leans " + (is < was ? "less: " : "more: "))
                    + gradients;
        }
        if (longer >= SAME_LEVER) {
            return (is < was && !same
                            ? "It leans less all the same, " + whyLess() + ": "
                            : "So it leans " + (same ? "no less" : "more") + ", although it is lower: ")
                    + gradients;
        }
        if (longer > -SAME_LEVER) {
            return (same
                            ? "So it leans as before, although it is lower: "
                            : "It leans " + (is < was ? "less, " + whyLess() : "more") + ": ")
                    + gradients;
        }
        return (same ? "Yet it leans as before: " : is < was ? "So it leans less: " : "Yet it leans more: ")
                + gradients;
    }

    /** What of the lean becomes less: that of the tyres, or that of the springs. */
    private String whyLess() {
        double tyres = before.front().tyreTilt()
                + before.rear().tyreTilt()
                - after.front().tyreTilt()
                - after.rear().tyreTilt();
        if (tyres > before.rollAngle() - after.rollAngle()) { // the mean of both axles against half of the roll
            return "because its tyres give less under a lower weight";
        }
        boolean leaning = low.car().rear().spring() instanceof Spring.Leaning;
        return leaning
                ? "because leaning springs gain leverage as the roll centre falls"
                : "because less of its weight hangs on its springs in roll";
    }

    private String length(double metres) {
        return LowestWords.length(metres, units);
    }
}
