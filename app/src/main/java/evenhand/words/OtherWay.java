package evenhand.words;

import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What is another thing where a car turns the other way. */
final class OtherWay {
    /** The other turn is spoken of where its limit differs by more than this share of it. */
    private static final double OTHER_LIMIT = 0.01;

    /** The other turn is spoken of where its limit balance differs by more than this. */
    private static final double OTHER_LIMIT_BALANCE = 0.03;

    private OtherWay() {}

    /** Said where the car is another one in the other direction. */
    static List<String> of(TurnAnswer.Turns turn, TurnAnswer other) {
        List<String> sentences = new ArrayList<>();
        String to = "To the " + turn.direction().other().key() + " ";
        if (other instanceof TurnAnswer.NoTurn none) {
            sentences.add(to + "it has no answer: " + none.text() + ".");
        } else if (other instanceof TurnAnswer.Turns turns && differs(turn.limit(), turns.limit())) {
            Limit limit = turns.limit();
            String pace = Units.exactPace(limit.lateralAcceleration());
            String ofBalance = "limit balance " + BalanceWords.perCent(limit.limitBalance(), true);
            String first = EventWords.end(limit.firstAxle());
            StringBuilder text = new StringBuilder(to);
            if (BalanceWords.tips(limit)) {
                text.append("it tips over rather than slides, at ").append(pace);
                text.append(" (grip used ")
                        .append(BalanceWords.gripOfBoth(limit.row()))
                        .append(").");
            } else if (limit.spinningWheel().isPresent()) {
                text.append("the ").append(limit.spinningWheel().get().words());
                text.append(" wheel spins, at ").append(pace);
                text.append(", and the ").append(first);
                text.append(BalanceWords.even(limit) ? "'s slip runs away first (" : " gives out first (");
                text.append(ofBalance).append(").");
            } else if (BalanceWords.even(limit)) {
                text.append("both ends have spent their grip together, at ").append(pace);
                text.append(", and the ").append(first).append("'s slip runs away first (");
                text.append(ofBalance).append(").");
            } else {
                text.append("the ").append(first).append(" gives out first, at ");
                text.append(pace).append(" (").append(ofBalance).append(").");
            }
            sentences.add(text.toString());
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
    static OptionalDouble letBack(TurnAnswer.Turns turns) {
        return turns.events().stream()
                .filter(event -> event.kind() == TurnEvent.Kind.STEER_REVERSAL)
                .mapToDouble(TurnEvent::lateralAcceleration)
                .findFirst();
    }

    static boolean sooner(double there, OptionalDouble here) {
        return here.isEmpty() || there < here.getAsDouble() * (1 - OTHER_LIMIT);
    }

    /** Whether the limit of one turn is not that of the other, for somebody who drives it. */
    static boolean differs(Limit here, Limit there) {
        double limit = here.lateralAcceleration();
        return here.firstAxle() != there.firstAxle()
                || BalanceWords.tips(here) != BalanceWords.tips(there)
                || here.spinningWheel().isPresent() != there.spinningWheel().isPresent()
                || BalanceWords.even(here) != BalanceWords.even(there)
                || Math.abs(there.lateralAcceleration() - limit) > OTHER_LIMIT * limit
                || Math.abs(there.limitBalance() - here.limitBalance()) > OTHER_LIMIT_BALANCE;
    }
}
