package evenhand.advice;

import java.util.Optional;
import java.util.OptionalDouble;

/** What a step that helps takes of the room to the stops, though a road car can do without it. */
public record Price(Optional<Earlier> earlier, Optional<LessLow> lessLow) {
    /** It takes nothing. */
    public static final Price NONE = new Price(Optional.empty(), Optional.empty());

    /**
     * A bump stop is touched earlier in a turn, m/s².
     *
     * @param was none where none was touched
     */
    public record Earlier(OptionalDouble was, double is) {}

    /**
     * The car can no longer stand as low as it can now.
     *
     * @param lowest how far it could be let down with all that a road car needs, m
     * @param missed what it would not have there
     */
    public record LessLow(double lowest, Refused.Missed missed) {}
}
