package evenhand.answers;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Lateral accelerations at which each axle first touches a bump stop, m/s², in a steady turn on the usual circle of
 * {@link Trial}; none where it touches none up to the limit, or stands on it already.
 *
 * @param noTurn why there is no such turn, where there is none
 */
public record FirstStops(OptionalDouble front, OptionalDouble rear, Optional<String> noTurn) {
    /** No stop is touched. */
    public static final FirstStops NONE =
            new FirstStops(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    /** Of a car settled at its ride height. */
    public static FirstStops of(Car car) {
        TurnAnswer answer = SteadyTurn.answer(car, List.of(), Trial.USUAL_RADIUS, Trial.USUAL_DIRECTION);
        if (answer instanceof TurnAnswer.NoTurn none) {
            return new FirstStops(OptionalDouble.empty(), OptionalDouble.empty(), Optional.of(none.text()));
        }
        List<TurnEvent> events = ((TurnAnswer.Turns) answer).events();
        return new FirstStops(first(events, End.FRONT), first(events, End.REAR), Optional.empty());
    }

    private static OptionalDouble first(List<TurnEvent> events, End end) {
        return events.stream()
                .filter(event -> event.kind() == TurnEvent.Kind.STOP_TOUCHED
                        && event.axle().equals(Optional.of(end)))
                .mapToDouble(TurnEvent::lateralAcceleration)
                .min();
    }

    public OptionalDouble of(End end) {
        return end == End.FRONT ? front : rear;
    }
}
