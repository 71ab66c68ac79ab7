package evenhand.answers;

import evenhand.ride.Ride;
import evenhand.turn.Direction;
import evenhand.turn.PacesAnswer;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;

/**
 * What one car answers in a trial.
 *
 * @param bends on each circle and each way round, in the trial's order; the first is the one whose figures are read where
 *     one is asked for; none where only the links were asked
 * @param ride on the road; none where its springs give way by themselves
 * @param links what they say at rest and at the ends of the travel; none where they were not asked
 * @param ahead what it says straight ahead, as far as it was asked
 */
public record Answers(List<Bend> bends, Optional<Ride> ride, LinkAnswers links, AheadAnswers ahead) {
    /** Of a car that was asked nothing straight ahead. */
    public Answers(List<Bend> bends, Optional<Ride> ride, LinkAnswers links) {
        this(bends, ride, links, AheadAnswers.NONE);
    }

    /**
     * One circle, one way round.
     *
     * @param radius m
     */
    public record Bend(double radius, Direction direction, PacesAnswer turn) {}

    public Answers {
        bends = List.copyOf(bends);
    }

    /** The same car in one of the bends alone, as many as {@link Trial#bends()}. */
    public Answers in(int bend) {
        return new Answers(List.of(bends.get(bend)), ride, links, ahead);
    }

    /** The turn of the first bend. */
    public PacesAnswer turn() {
        return bends.get(0).turn();
    }

    /** Why there is no turn to be judged in the first bend; empty for a car that turns. */
    public Optional<TurnAnswer.NoTurn> noTurn() {
        return turn() instanceof TurnAnswer.NoTurn none ? Optional.of(none) : Optional.empty();
    }

    /** Whether the front goes first in every bend. */
    public boolean frontFirst() {
        return bends.stream()
                .allMatch(bend -> bend.turn() instanceof PacesAnswer.Paces turn
                        && turn.limit().frontFirst());
    }

    /** Whether every turn one way round is the mirror image of that the other way, on its circle. */
    public boolean isAlike() {
        return bends.stream()
                .allMatch(bend -> bends.stream()
                        .filter(other -> other.radius() == bend.radius() && other.direction() != bend.direction())
                        .allMatch(other -> other.turn().equals(bend.turn())
                                || other.turn().equals(bend.turn().mirrored())
                                || other.turn().mirrored().equals(bend.turn())));
    }

    /** Whether the ride is worth judging: it is where there are dampers. */
    public boolean isDamped() {
        return ride.isPresent()
                && (ride.get().front().damped().isPresent()
                        || ride.get().rear().damped().isPresent());
    }
}
