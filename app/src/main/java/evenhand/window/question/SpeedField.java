package evenhand.window.question;

import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.window.desk.Question;
import java.util.List;
import java.util.Optional;

/** The speed that a question is asked at. */
final class SpeedField {
    private static final double LEAST = Unit.of("km/h").toSi(1);
    private static final double GREATEST = Unit.of("km/h").toSi(400);

    private SpeedField() {}

    static Question.Field at(String start) {
        return new Question.Field("speed", "at", List.of(), start);
    }

    /** Why a text is no speed to drive at, in a sentence; nothing where it is one. */
    static Optional<String> refusal(String text) {
        try {
            double speed = Quantity.parse(text, Dimension.SPEED).si();
            return speed >= LEAST && speed <= GREATEST
                    ? Optional.empty()
                    : Optional.of("The speed must lie between 1 km/h and 400 km/h, for example 80 km/h.");
        } catch (QuantityException wrong) {
            return Optional.of("The speed " + wrong.getMessage() + ".");
        }
    }

    /** m/s, of a text that is not refused. */
    static double speed(String text) {
        try {
            return Quantity.parse(text, Dimension.SPEED).si();
        } catch (QuantityException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }
}
