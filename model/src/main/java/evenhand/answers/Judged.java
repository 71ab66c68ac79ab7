package evenhand.answers;

import evenhand.turn.PaceAnswer;
import evenhand.turn.PacesAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A criterion at its pace: one number of a turn.
 *
 * @param pace lateral acceleration, m/s²; none for what is of the limit
 */
public record Judged(Criterion criterion, OptionalDouble pace) {
    /** A pace is met to this part of itself: the solver's rounding. */
    private static final double SAME_PACE = 1e-9;

    public Judged {
        if (pace.isPresent() == criterion.atLimit()) {
            throw new IllegalArgumentException(criterion.name() + " and its pace do not go together");
        }
    }

    /** Every criterion at each pace, then those of the limit. */
    public static List<Judged> all(List<Double> paces) {
        List<Judged> all = new ArrayList<>();
        for (double pace : paces) {
            for (Criterion criterion : Criterion.ALL) {
                if (!criterion.atLimit()) {
                    all.add(new Judged(criterion, OptionalDouble.of(pace)));
                }
            }
        }
        for (Criterion criterion : Criterion.ALL) {
            if (criterion.atLimit()) {
                all.add(new Judged(criterion, OptionalDouble.empty()));
            }
        }
        return List.copyOf(all);
    }

    /** Its value in SI; none where the car does not turn, or not at this pace. */
    public OptionalDouble si(Answers answers) {
        if (!(answers.turn() instanceof PacesAnswer.Paces turn)) {
            return OptionalDouble.empty();
        }
        if (pace.isEmpty()) {
            return criterion.si(turn.limit().row(), turn.direction());
        }
        double wanted = pace.getAsDouble();
        for (PaceAnswer one : turn.paces()) {
            if (one instanceof PaceAnswer.InBalance balance
                    && Math.abs(one.lateralAcceleration() - wanted) <= SAME_PACE * wanted) {
                return criterion.si(balance.row(), turn.direction());
            }
        }
        return OptionalDouble.empty();
    }
}
