package evenhand.words.balance;

import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What is another thing where a car turns the other way. */
public final class OtherWay {
    /** The other turn is spoken of where its limit differs by more than this share of it. */
    private static final double OTHER_LIMIT = 0.01;

    /** How it steers near the limit is spoken of where it differs by more than this, deg/g. */
    private static final double OTHER_UNDERSTEER = 0.5;

    private static final Unit DEG_PER_G = Dimension.UNDERSTEER_GRADIENT.metric();

    private OtherWay() {}

    /** Said where the car is another one in the other direction. */
    public static List<String> of(TurnAnswer.Turns turn, TurnAnswer other) {
        List<String> sentences = new ArrayList<>();
        String to = "To the " + turn.direction().other().key() + " ";
        if (other instanceof TurnAnswer.NoTurn none) {
            sentences.add(to + "it has no answer: " + none.text() + ".");
        } else if (other instanceof TurnAnswer.Turns turns && differs(turn.limit(), turns.limit())) {
            sentences.add(to + LimitWords.brief(turns.limit()) + ".");
        }
        if (other instanceof TurnAnswer.Turns turns && steersOtherwise(turn.limit(), turns.limit())) {
            sentences.add(to + "it "
                    + BalanceWords.verdict(turns.limit().nearUndersteer().getAsDouble()) + " near its limit.");
        }
        if (other instanceof TurnAnswer.Turns turns) {
            OptionalDouble there = letBack(turns);
            if (there.isPresent() && sooner(there.getAsDouble(), letBack(turn))) {
                sentences.add(to + "it comes to oversteer " + (letBack(turn).isPresent() ? "sooner, " : "") + "at "
                        + Units.exactPace(there.getAsDouble())
                        + ": to go faster, the steering has to be turned back.");
            }
        }
        return sentences;
    }

    /** From where the steering has to be let back. */
    public static OptionalDouble letBack(TurnAnswer.Turns turns) {
        return turns.eventsToLimit().stream()
                .filter(event -> event.kind() == TurnEvent.Kind.STEER_REVERSAL)
                .mapToDouble(TurnEvent::lateralAcceleration)
                .findFirst();
    }

    public static boolean sooner(double there, OptionalDouble here) {
        return here.isEmpty() || there < here.getAsDouble() * (1 - OTHER_LIMIT);
    }

    /** Whether the limit of one turn is not that of the other, for somebody who drives it. */
    public static boolean differs(Limit here, Limit there) {
        double limit = here.lateralAcceleration();
        return !here.firstAxle().equals(there.firstAxle())
                || here.cause() != there.cause()
                || LimitWords.tips(here) != LimitWords.tips(there)
                || Math.abs(there.lateralAcceleration() - limit) > OTHER_LIMIT * limit;
    }

    /** Whether near its limit a car steers in one turn as it does not in the other. */
    private static boolean steersOtherwise(Limit here, Limit there) {
        return here.nearUndersteer().isPresent()
                && there.nearUndersteer().isPresent()
                && Math.abs(DEG_PER_G.fromSi(there.nearUndersteer().getAsDouble()
                                - here.nearUndersteer().getAsDouble()))
                        > OTHER_UNDERSTEER;
    }
}
