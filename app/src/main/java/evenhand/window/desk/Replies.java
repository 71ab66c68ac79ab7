package evenhand.window.desk;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The newest answers there are; they say what they are of, and may be late.
 *
 * @param turns of the set-ups that are shown
 * @param reply to the question
 * @param progress of a long answer on its way, from 0 to 1
 */
public record Replies(Optional<Turns> turns, Optional<Replied> reply, Optional<Double> progress) {
    public static final Replies NONE = new Replies(Optional.empty(), Optional.empty(), Optional.empty());

    /** The turns of the set-ups, by name. */
    public record Turns(Work of, Map<String, TurnedSetup> setups) {
        public Turns {
            setups = Collections.unmodifiableMap(new LinkedHashMap<>(setups));
        }
    }

    /**
     * A reply to a question.
     *
     * @param after what was worked out besides when the hands were still
     * @param afterLate whether that was for an earlier asking
     */
    public record Replied(Asking of, Reply reply, Afterthought after, boolean afterLate) {
        /** The verdict, with its doubt where that is known. */
        public Optional<Verdict> verdict() {
            return afterLate || after.verdict().isEmpty() ? reply.verdict() : after.verdict();
        }
    }

    /** Whether the turns belong to an earlier state of the job. */
    public boolean turnsLate(Work work) {
        return !turns.map(own -> own.of().equals(work)).orElse(false);
    }

    /** Whether the reply belongs to an earlier asking. */
    public boolean replyLate(Asking asking) {
        return !reply.map(own -> own.of().equals(asking)).orElse(false);
    }

    Replies with(Turns next) {
        return new Replies(Optional.of(next), reply, progress);
    }

    /** With a newer reply; what was thought after the one before stays for the time being where it is of the same question. */
    Replies with(Asking of, Reply next) {
        Afterthought after = reply.filter(before -> before.of().question().equals(of.question()))
                .map(Replied::after)
                .orElse(Afterthought.NONE);
        return new Replies(turns, Optional.of(new Replied(of, next, after, true)), Optional.empty());
    }

    /** With what was thought after the reply, if that is still shown. */
    Replies withAfter(Asking of, Afterthought after) {
        return new Replies(
                turns,
                reply.map(shown -> shown.of().equals(of) ? new Replied(of, shown.reply(), after, false) : shown),
                progress);
    }

    Replies withProgress(Optional<Double> next) {
        return new Replies(turns, reply, next);
    }
}
