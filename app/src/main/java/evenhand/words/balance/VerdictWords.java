package evenhand.words.balance;

import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import java.util.Optional;

/**
 * What a driver asks first of a set-up, in one sentence: which end lets go, where, what the other end still has, and what is
 * another thing the other way round.
 */
public final class VerdictWords {
    private static final Unit G = Dimension.ACCELERATION.metric();

    private VerdictWords() {}

    /**
     * "The front goes first, at 0.78 g to the left and 0.80 g to the right; the rear still has 16 % and 12 % of its grip in hand.";
     * where the ways are not of one kind, a sentence for each.
     */
    public static String sentence(TurnAnswer.Turns turn, TurnAnswer back) {
        Limit here = turn.limit();
        String to = "To the " + turn.direction().other().key() + " ";
        if (back instanceof TurnAnswer.NoTurn none) {
            return oneWay(here) + ". " + to + "it has no answer: " + none.text() + ".";
        }
        Limit there = ((TurnAnswer.Turns) back).limit();
        if (!OtherWay.differs(here, there)) {
            return oneWay(here) + ".";
        }
        if (here.cause() == Limit.Cause.SIDESLIP && there.cause() == Limit.Cause.SIDESLIP && goesAlike(here, there)) {
            End end = other(here).orElseThrow();
            return "The " + LimitWords.first(here) + " goes first, at " + pace(here) + " to the "
                    + turn.direction().key() + " and " + pace(there) + " to the "
                    + turn.direction().other().key() + "; the " + EventWords.end(end) + " still has "
                    + inHand(here, end)
                    + " and " + inHand(there, end) + " of its grip in hand.";
        }
        return oneWay(here) + ". " + to + lower(oneWay(there)) + ".";
    }

    private static boolean goesAlike(Limit here, Limit there) {
        return other(here).isPresent() && other(here).equals(other(there));
    }

    private static String oneWay(Limit limit) {
        return capital(LimitWords.brief(limit))
                + other(limit)
                        .map(end -> "; the " + EventWords.end(end) + " still has " + inHand(limit, end)
                                + " of its grip in hand")
                        .orElse("");
    }

    private static String pace(Limit limit) {
        return Numbers.fixed(G.fromSi(limit.lateralAcceleration()), 2) + " g";
    }

    /** The end in hand: "front, 0.783 g"; what ends the turn where no end goes. */
    public static String inACell(Limit limit) {
        String at = pace(limit);
        return switch (limit.cause()) {
            case SIDESLIP, WHEELSPIN, SPIN -> LimitWords.first(limit) + ", " + at;
            case CRITICAL_SPEED -> "neither, " + at;
            case LINKS -> "links end, " + at;
            case GAVE_UP -> "gave up, " + at;
        };
    }

    /** The end that does not go first, with grip in hand; none where neither goes for want of grip. */
    public static Optional<End> other(Limit limit) {
        return LimitWords.tips(limit)
                ? Optional.empty()
                : limit.firstAxle().map(end -> end == End.FRONT ? End.REAR : End.FRONT);
    }

    /** The part of its grip that an end has in hand at the limit. */
    public static double gripInHand(Limit limit, End end) {
        double used =
                end == End.FRONT ? limit.row().frontGripUsed() : limit.row().rearGripUsed();
        return Math.max(0, 1 - used);
    }

    /** "16 %". */
    public static String inHand(Limit limit, End end) {
        return Numbers.percent(gripInHand(limit, end), 0);
    }

    private static String lower(String words) {
        return Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
