package evenhand.words.owner;

import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.quantity.Dimension;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.Wheel;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.BalanceWords;
import evenhand.words.balance.LimitWords;
import evenhand.words.balance.OtherWay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What the owner of a car reads: the same numbers as everywhere, in sentences that need no training. They follow the numbers:
 * where a sign turns round, so does the sentence.
 */
public final class OwnerWords {
    /** Understeer that a driver feels clearly, and strongly, deg/g. Common practice, no source. */
    private static final double CLEAR = 2;

    private static final double STRONG = 4;

    /** Lengths nearer than this are the same to a tape, m. */
    private static final double SAME = 0.0005;

    /** Roll stiffnesses that differ by a smaller part of them are the same. */
    private static final double SAME_STIFFNESS = 0.005;

    /** Up to here a bend is a gentle one, m/s². */
    private static final double GENTLE = 0.3 * Weights.GRAVITY;

    private OwnerWords() {}

    /** How a car behaves, from a gentle bend to its limit. */
    public static List<String> behaviour(TurnAnswer.Turns turn, Units units) {
        List<String> sentences = new ArrayList<>();
        for (PaceAnswer pace : turn.paces()) {
            sentences.add(bend(pace.lateralAcceleration()) + " " + feel(pace, units) + ".");
        }
        sentences.add(limit(turn.limit(), units));
        turn.eventsToLimit().stream()
                .filter(event -> event.kind() != TurnEvent.Kind.ROLL_CENTRE_THROUGH_GROUND)
                .forEach(event -> sentences.add(EventWords.sentence(event)));
        return sentences;
    }

    /** What is another thing in a turn the other way; nothing where the car goes round both ways alike. */
    public static List<String> otherWay(TurnAnswer.Turns turn, TurnAnswer other, Units units) {
        List<String> sentences = new ArrayList<>();
        if (other instanceof TurnAnswer.Turns there) {
            String turning = "Turning " + there.direction().key() + ": ";
            if (OtherWay.differs(turn.limit(), there.limit())) {
                String limit = limit(there.limit(), units);
                sentences.add(turning + limit.substring(0, 1).toLowerCase(Locale.ROOT) + limit.substring(1));
            }
            OptionalDouble letBack = OtherWay.letBack(there);
            if (letBack.isPresent() && OtherWay.sooner(letBack.getAsDouble(), OtherWay.letBack(turn))) {
                sentences.add(turning + "from " + Units.exactPace(letBack.getAsDouble())
                        + " on the steering has to be let back to go faster: the tail leads.");
            }
        }
        return sentences;
    }

    private static String bend(double pace) {
        return (pace < GENTLE ? "In a gentle bend, at " : "In a brisk bend, at ") + Units.pace(pace) + ",";
    }

    private static String feel(PaceAnswer pace, Units units) {
        if (!(pace instanceof PaceAnswer.InBalance in)) {
            return "it is beyond what its tyres can hold";
        }
        String leans = "the body leans " + units.show(Math.abs(in.row().roll()), Dimension.ANGLE, 1);
        OptionalDouble gradient = in.row().understeerGradient();
        if (gradient.isEmpty()) {
            return "it is at its limit; " + leans;
        }
        double k = Dimension.UNDERSTEER_GRADIENT.metric().fromSi(gradient.getAsDouble());
        return feel(k) + "; " + leans;
    }

    /** What an understeer gradient, deg/g, is like from the seat. */
    static String feel(double k) {
        String number = Numbers.fixed(Math.abs(k), 2) + " deg/g";
        if (Math.abs(k) < BalanceWords.NEAR_NEUTRAL) {
            return "it follows the wheel and neither pushes nor slides (near neutral, " + Numbers.signed(k, 2)
                    + " deg/g)";
        }
        if (k < 0) {
            return "the steering has to be let back as the speed rises: the tail leads (oversteer of " + number + ")";
        }
        String amount = k < CLEAR ? "a little more" : k < STRONG ? "clearly more" : "far more";
        return "it wants " + amount + " steering as the speed rises, so it runs wide rather than round (understeer of "
                + number + ")";
    }

    /** Which end lets go, where, and what the other has left. */
    public static String limit(Limit limit, Units units) {
        String at = "At its limit, " + Units.exactPace(limit.lateralAcceleration()) + ", ";
        return switch (limit.cause()) {
            case SIDESLIP -> at + (LimitWords.tips(limit) ? "it would tip rather than slide." : letsGo(limit));
            case WHEELSPIN ->
                at + "the " + limit.spinningWheel().map(Wheel::words).orElse("driven")
                        + " wheel has spent its grip on drive and spins"
                        + limit.firstAxle()
                                .map(end -> ", and the " + EventWords.end(end) + " lets go first")
                                .orElse("")
                        + ".";
            case SPIN ->
                at + "the tail comes round unless the driver steers against it; the front has "
                        + inHand(limit.row().frontGripUsed()) + ".";
            case CRITICAL_SPEED ->
                at + "neither end slides, but past " + units.show(limit.row().speed(), Dimension.SPEED, 0)
                        + " on this circle the steering wheel has to be held against the turn.";
            case LINKS -> at + LimitWords.ends(limit) + " no further, though no tyre slides yet.";
            case GAVE_UP ->
                "The sums gave up at " + Units.exactPace(limit.lateralAcceleration()) + " before they met a limit.";
        };
    }

    private static String letsGo(Limit limit) {
        return limit.frontFirst()
                ? "the front tyres give out first and it runs wide; the rear has "
                        + inHand(limit.row().rearGripUsed()) + "."
                : "the rear tyres give out first and the tail comes round; the front has "
                        + inHand(limit.row().frontGripUsed()) + ".";
    }

    private static String inHand(double gripUsed) {
        return Numbers.percent(Math.max(0, 1 - gripUsed), 0) + " of its grip in hand";
    }

    /**
     * A car's stance at rest, as it stands.
     *
     * @param frontRoom to the bump stop in front, m, where there is one
     */
    public record Stance(HandSums sums, OptionalDouble frontRoom, OptionalDouble rearRoom) {
        double axisHeight() {
            return sums.sprung().height() - sums.rollArm();
        }

        OptionalDouble room(End end) {
            return end == End.FRONT ? frontRoom : rearRoom;
        }
    }

    /** What the stance of a car does to it, against the one before. */
    public static List<String> stance(Stance before, Stance now, Units units) {
        List<String> sentences = new ArrayList<>();
        double weight = now.sums().sprung().height() - before.sums().sprung().height();
        double axis = now.axisHeight() - before.axisHeight();
        double lever = now.sums().rollArm() - before.sums().rollArm();
        if (Math.abs(weight) < SAME && Math.abs(axis) < SAME) {
            sentences.add(
                    "The body's weight sits as high as before, and so does the axis that it leans about: the lever"
                            + " between them is " + length(now.sums().rollArm(), units) + ".");
        } else {
            sentences.add("The body's weight sits " + moved(weight, "higher", "lower", units)
                    + " than before, the axis that"
                    + " it leans about " + moved(axis, "higher", "lower", units) + ": the lever between them is "
                    + (Math.abs(lever) < SAME ? "as long as before, " : moved(lever, "longer", "shorter", units) + ", ")
                    + length(now.sums().rollArm(), units)
                    + (Math.abs(lever) < SAME
                            ? "."
                            : ", and a "
                                    + (lever < 0 ? "shorter lever leans less" : "longer lever leans more")
                                    + " on the same springs."));
        }
        sentences.add(leans(before.sums(), now.sums(), units));
        for (End end : End.values()) {
            if (before.room(end).isPresent() && now.room(end).isPresent()) {
                double was = before.room(end).getAsDouble();
                double is = now.room(end).getAsDouble();
                sentences.add(room(end, was, is, units));
            }
        }
        return sentences;
    }

    /** Lean for each g, and what springs and bars have to do with it. */
    private static String leans(HandSums before, HandSums now, Units units) {
        double leans = now.rollAngle() - before.rollAngle();
        String by = units.show(Math.abs(leans), Dimension.ANGLE, 1);
        boolean same = by.equals(units.show(0, Dimension.ANGLE, 1));
        double was = stiffness(before);
        double is = stiffness(now);
        String resist = "springs and bars resist its roll with " + units.show(is, Dimension.ROLL_STIFFNESS, 0);
        String stiffness = Math.abs(is - was) < SAME_STIFFNESS * was
                ? resist + " as before"
                : resist + " instead of " + units.show(was, Dimension.ROLL_STIFFNESS, 0);
        return "By the hand sums its body leans " + units.show(now.rollAngle(), Dimension.ANGLE, 1)
                + " for each g of cornering, "
                + (same ? "as before" : by + (leans > 0 ? " more" : " less") + " than before")
                + ": " + stiffness + ".";
    }

    private static double stiffness(HandSums sums) {
        return sums.front().suspensionRollStiffness() + sums.rear().suspensionRollStiffness();
    }

    private static String room(End end, double was, double is, Units units) {
        String at = "At the " + EventWords.end(end) + " ";
        if (is < 0) {
            return at + "the car now stands on its bump stops at rest"
                    + (was < 0 ? ", as before." : "; there was " + length(was, units) + " of room before.");
        }
        if (was < 0) {
            return at + "there is " + length(is, units)
                    + " of travel before the bump stops now; the car stood on them before.";
        }
        if (Math.abs(is - was) < SAME) {
            return at + "the wheels keep their " + length(is, units) + " of travel before the bump stops.";
        }
        return at + "there is " + length(is, units) + " of travel before the bump stops, "
                + length(Math.abs(is - was), units) + (is < was ? " less" : " more") + " than before.";
    }

    /** Where in a bend an axle comes onto its stops, before and now, m/s²; none where it does not. */
    public static String stops(End end, OptionalDouble before, OptionalDouble now) {
        String who = "the outer " + EventWords.end(end) + " wheel";
        if (now.isEmpty()) {
            return before.isEmpty()
                    ? "Up to the limit " + who + " does not come onto its bump stop, before as now."
                    : "Up to the limit " + who + " no longer comes onto its bump stop; before, it did at "
                            + Units.exactPace(before.getAsDouble()) + ".";
        }
        String start = "From " + Units.exactPace(now.getAsDouble()) + " on " + who + " leans on its bump stop";
        if (before.isEmpty()) {
            return start + "; before, it did not up to the limit.";
        }
        double later = now.getAsDouble() - before.getAsDouble();
        return Units.exactPace(now.getAsDouble()).equals(Units.exactPace(before.getAsDouble()))
                ? start + ", as before."
                : start + ", " + (later > 0 ? "later" : "earlier") + " than before ("
                        + Units.exactPace(before.getAsDouble()) + ").";
    }

    private static String moved(double by, String up, String down, Units units) {
        return Math.abs(by) < SAME
                ? "no " + up + " or " + down
                : length(Math.abs(by), units) + " " + (by > 0 ? up : down);
    }

    private static String length(double metres, Units units) {
        return units.show(metres, Dimension.LENGTH, units == Units.METRIC ? 0 : 2);
    }
}
