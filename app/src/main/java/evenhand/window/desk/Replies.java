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

    public record Replied(Asking of, Reply reply) {}

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

    Replies with(Replied next) {
        return new Replies(turns, Optional.of(next), Optional.empty());
    }

    Replies withProgress(Optional<Double> next) {
        return new Replies(turns, reply, next);
    }
}
