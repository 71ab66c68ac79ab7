package evenhand.turn;

import java.util.List;

/** What a car answers when it is asked for its paces and its limit alone. */
public sealed interface PacesAnswer permits PacesAnswer.Paces, TurnAnswer.NoTurn {
    /** The turn the other way round of a car that is alike both ways, or of the mirrored car. */
    PacesAnswer mirrored();

    /**
     * The turn at some paces and at its limit.
     *
     * @param direction of the turn
     * @param paces in the order that they were asked
     * @param limit that a driver meets: the fold or, before it, lost hold
     */
    record Paces(Direction direction, List<PaceAnswer> paces, Limit limit) implements PacesAnswer {
        public Paces {
            paces = List.copyOf(paces);
        }

        @Override
        public Paces mirrored() {
            return new Paces(
                    direction.other(), paces.stream().map(PaceAnswer::mirrored).toList(), limit.mirrored());
        }
    }
}
