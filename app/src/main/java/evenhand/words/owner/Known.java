package evenhand.words.owner;

import evenhand.answers.Judged;
import java.util.OptionalDouble;

/**
 * A figure before and now, SI, with what doubt leaves of it: half-widths that hold nineteen times in twenty, the same errors in
 * both.
 *
 * @param before none where there is no set-up before, or it has no such figure
 * @param doubtBefore none where the sums cannot tell it
 * @param noticeable the least difference that a driver feels, or a scale shows, SI
 */
public record Known(
        Judged judged,
        OptionalDouble before,
        OptionalDouble now,
        OptionalDouble doubtBefore,
        OptionalDouble doubt,
        OptionalDouble doubtOfDifference,
        double noticeable) {
    /** A figure of which a difference is noticed as usual. */
    public Known(
            Judged judged,
            OptionalDouble before,
            OptionalDouble now,
            OptionalDouble doubtBefore,
            OptionalDouble doubt,
            OptionalDouble doubtOfDifference) {
        this(
                judged,
                before,
                now,
                doubtBefore,
                doubt,
                doubtOfDifference,
                judged.criterion().noticeable());
    }

    /** Now less before; none where one of them is missing. */
    public OptionalDouble difference() {
        return before.isPresent() && now.isPresent()
                ? OptionalDouble.of(now.getAsDouble() - before.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Whether it differs by as much as a driver feels, or a scale shows. */
    public boolean isNoticed() {
        return difference().isPresent() && Math.abs(difference().getAsDouble()) >= noticeable;
    }

    /** How sure it is which of both is the greater. */
    public Sureness sureness() {
        return difference().isPresent() ? Sureness.of(difference().getAsDouble(), doubtOfDifference) : Sureness.OPEN;
    }
}
