package evenhand.answers;

import evenhand.ride.Ride;
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
 * @param pace lateral acceleration, or straight ahead that along the car, m/s²; none for what is of the limit, of the ride or of
 *     links
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

    /** The lateral acceleration at which it needs a turn, m/s². */
    public OptionalDouble turnPace() {
        return criterion.needsNoTurn() ? OptionalDouble.empty() : pace;
    }

    /** Its value in SI in the first bend; none where the car does not turn, or not at this pace, or has no dampers. */
    public OptionalDouble si(Answers answers) {
        return ofNoTurn(answers).orElseGet(() -> si(answers.turn(), answers.ride()));
    }

    /**
     * Its values in SI in every bend, in their order, signs as in the first way round; empty where one of them has none.
     * What is of the ride, of links or straight ahead has one.
     */
    public List<Double> everywhere(Answers answers) {
        Optional<OptionalDouble> one = ofNoTurn(answers).or(() -> ofRide(answers.ride()));
        if (one.isPresent()) {
            return one.get().stream().boxed().toList();
        }
        List<Double> values = new ArrayList<>();
        for (int bend = 0; bend < answers.bends().size(); bend++) {
            OptionalDouble value = si(answers, bend);
            if (value.isEmpty()) {
                return List.of();
            }
            values.add(value.getAsDouble());
        }
        return values;
    }

    /** Its value in SI in one of the bends, sign as in the first way round. */
    public OptionalDouble si(Answers answers, int bend) {
        Optional<OptionalDouble> ofNoTurn = ofNoTurn(answers);
        if (ofNoTurn.isPresent()) {
            return ofNoTurn.get();
        }
        if (bend >= answers.bends().size()) {
            return OptionalDouble.empty();
        }
        Answers.Bend there = answers.bends().get(bend);
        OptionalDouble value = si(there.turn(), answers.ride());
        boolean turnedOver = criterion.mirrors()
                && there.direction() != answers.bends().get(0).direction();
        return turnedOver && value.isPresent() ? OptionalDouble.of(-value.getAsDouble()) : value;
    }

    /** Its value in SI in one turn, or in the ride that goes with it. */
    public OptionalDouble si(PacesAnswer turn, Optional<Ride> itsRide) {
        return ofRide(itsRide).orElseGet(() -> si(turn));
    }

    /** What is of links, straight ahead or of what parts carry. */
    private Optional<OptionalDouble> ofNoTurn(Answers answers) {
        return criterion.ahead().isPresent() || criterion.loads().isPresent()
                ? Optional.of(answers.ahead().si(this))
                : criterion.links().map(reading -> reading.of(answers.links()));
    }

    private Optional<OptionalDouble> ofRide(Optional<Ride> itsRide) {
        if (criterion.reading() instanceof Criterion.Reading.OfRide ride) {
            return Optional.of(itsRide.map(found -> ride.si().apply(found.axle(ride.end())))
                    .orElseGet(OptionalDouble::empty));
        }
        return criterion.reading() instanceof Criterion.Reading.OfWholeRide ride
                ? Optional.of(itsRide.map(ride.si()).orElseGet(OptionalDouble::empty))
                : Optional.empty();
    }

    /** Its value in SI in one turn. */
    public OptionalDouble si(PacesAnswer answer) {
        if (!(answer instanceof PacesAnswer.Paces turn)) {
            return OptionalDouble.empty();
        }
        if (criterion.reading() instanceof Criterion.Reading.AtPace reading) {
            return at(turn, pace.orElseThrow())
                    .map(row -> reading.si().apply(row, turn.direction()))
                    .orElseGet(OptionalDouble::empty);
        }
        return criterion.reading() instanceof Criterion.Reading.AtLimit reading
                ? reading.si().apply(turn.limit())
                : OptionalDouble.empty();
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
