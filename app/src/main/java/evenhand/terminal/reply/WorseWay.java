package evenhand.terminal.reply;

import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The way round that is the worse to drive by an understeer gradient: the one that slides where one of them does, else the one
 * that pushes more.
 */
public record WorseWay(TurnAnswer.Turns turn, double gradient) {
    /** Of the ways that have the gradient; nothing where none has. */
    public static Optional<WorseWay> of(
            List<TurnAnswer.Turns> ways, Function<TurnAnswer.Turns, OptionalDouble> gradient) {
        Optional<WorseWay> worse = Optional.empty();
        for (TurnAnswer.Turns way : ways) {
            OptionalDouble value = gradient.apply(way);
            if (value.isPresent() && (worse.isEmpty() || worse.get().isBetterThan(value.getAsDouble()))) {
                worse = Optional.of(new WorseWay(way, value.getAsDouble()));
            }
        }
        return worse;
    }

    private boolean isBetterThan(double other) {
        return Math.min(gradient, other) < 0 ? other < gradient : other > gradient;
    }
}
