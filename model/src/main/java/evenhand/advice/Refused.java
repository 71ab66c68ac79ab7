package evenhand.advice;

import evenhand.choice.Effect;
import evenhand.lowering.Need;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A step that would move the figure as it is wished, and is not advised.
 *
 * @param whereWorst what it does in the bend that is the worst as the car stands
 * @param felt by how much the worst value would get better, in what is noticeable
 * @param missed what a road car needs and this one would not have, or have less of
 */
public record Refused(Effect.Step step, Effect whereWorst, double felt, Reason reason, Optional<Missed> missed) {
    /**
     * A need that would not be met.
     *
     * @param value that it would have, SI; none of what is no number
     */
    public record Missed(Need need, OptionalDouble value) {}

    /** Why not. */
    public enum Reason {
        /** One way round or the other, or at another pace, the car would slide, or slide more. */
        SLIDES("slides"),
        /** The value would lie beyond what is usual. */
        UNUSUAL("unusual"),
        /** A softer car moves more, whatever its damping ratio says. */
        SOFTER("softer"),
        /** The body would be damped too little for a wavy road. */
        UNDAMPED("undamped"),
        /** Other seats would be the worse for it. */
        RIDES_HARDER("ridesHarder"),
        /** Something that a road car needs would be missing. */
        NEED("need"),
        /** Without its stops the car would not be helped. */
        STOP("stop");

        private final String key;

        Reason(String key) {
            this.key = key;
        }

        /** Name in answers. */
        public String key() {
            return key;
        }
    }
}
