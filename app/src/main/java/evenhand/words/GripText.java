package evenhand.words;

import evenhand.answers.Criterion;
import java.util.Optional;

/**
 * A grip balance as it is read. Front over rear less one is a percentage while both ends work; where the rear has hardly
 * anything to do, as behind a locked differential on a tight circle, it is said how many times as hard the front works.
 */
public final class GripText {
    /** From here on per cent say nothing: one end works twice as hard as the other. */
    private static final double TWICE = 1;

    private GripText() {}

    /** "4.9 times" as hard the front works as the rear, where it is twice or more. */
    public static Optional<String> times(double balance) {
        return balance < TWICE ? Optional.empty() : Optional.of(Numbers.fixed(balance + 1, 1) + " times");
    }

    /** The same of any figure: nothing where it is no grip balance. */
    public static Optional<String> times(Criterion criterion, double si) {
        return criterion.equals(Criterion.GRIP_BALANCE) || criterion.equals(Criterion.LIMIT_BALANCE)
                ? times(si)
                : Optional.empty();
    }
}
