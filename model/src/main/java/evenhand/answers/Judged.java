package evenhand.answers;

import evenhand.turn.PaceAnswer;
import evenhand.turn.PacesAnswer;
import evenhand.turn.TurnRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A criterion at its pace: one number of the answers.
 *
 * @param pace lateral acceleration, m/s²; none for what is of the limit or of the ride
 */
public record Judged(Criterion criterion, OptionalDouble pace) {
    /** A pace is met to this part of itself: the solver's rounding. */
    private static final double SAME_PACE = 1e-9;

    public Judged {
        if (pace.isPresent() != criterion.hasPace()) {
            throw new IllegalArgumentException(criterion.name() + " and its pace do not go together");
        }
    }

    /** Every criterion at each pace, then those of the limit and of the ride. */
    public static List<Judged> all(List<Double> paces) {
        List<Judged> all = new ArrayList<>();
        for (double pace : paces) {
            for (Criterion criterion : Criterion.ALL) {
                if (criterion.hasPace()) {
                    all.add(new Judged(criterion, OptionalDouble.of(pace)));
                }
            }
        }
        for (Criterion criterion : Criterion.ALL) {
            if (!criterion.hasPace()) {
                all.add(new Judged(criterion, OptionalDouble.empty()));
            }
        }
        return List.copyOf(all);
    }

    /** Its value in SI; none where the car does not turn, or not at this pace, or has no dampers to judge its ride by. */
    public OptionalDouble si(Answers answers) {
        if (criterion.reading() instanceof Criterion.Reading.OfRide ride) {
            return answers.ride()
                    .map(found -> ride.si().apply(found.axle(ride.end())))
                    .orElseGet(OptionalDouble::empty);
        }
        if (!(answers.turn() instanceof PacesAnswer.Paces turn)) {
            return OptionalDouble.empty();
        }
        if (criterion.reading() instanceof Criterion.Reading.AtPace reading) {
            return at(turn, pace.orElseThrow())
                    .map(row -> reading.si().apply(row, turn.direction()))
                    .orElseGet(OptionalDouble::empty);
        }
        return ((Criterion.Reading.AtLimit) criterion.reading())
                .si()
                .apply(turn.limit().row());
    }

    private static Optional<TurnRow> at(PacesAnswer.Paces turn, double pace) {
        for (PaceAnswer one : turn.paces()) {
            if (one instanceof PaceAnswer.InBalance balance
                    && Math.abs(one.lateralAcceleration() - pace) <= SAME_PACE * pace) {
                return Optional.of(balance.row());
            }
        }
        return Optional.empty();
    }
}
