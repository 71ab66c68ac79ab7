package evenhand.window.desk;

import evenhand.words.Units;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How the desk is looked at; undo leaves it alone.
 *
 * @param page that is shown
 * @param question key of the question that is asked
 * @param wishes what was put into the questions' own fields, by question and field
 */
public record Look(
        Page page, String question, Units units, boolean dark, Map<String, String> wishes, Arrangement arrangement) {
    /** What the middle of the window holds. */
    public enum Page {
        ANSWER,
        /** What there is to begin with. */
        START,
        /** What the owner of the car is shown, with nothing to be changed. */
        CUSTOMER,
        MEASURING_UP,
        CIRCLE,
        REPORT
    }

    public Look {
        wishes = Collections.unmodifiableMap(new HashMap<>(wishes));
    }

    /** The answer to a question, nothing put into its fields yet. */
    public static Look at(String question, Units units, boolean dark) {
        return new Look(Page.ANSWER, question, units, dark, Map.of(), Arrangement.USUAL);
    }

    Look withPage(Page next) {
        return new Look(next, question, units, dark, wishes, arrangement);
    }

    /** The answer to another question. */
    Look withQuestion(String key) {
        return new Look(Page.ANSWER, key, units, dark, wishes, arrangement);
    }

    Look withUnits(Units next) {
        return new Look(page, question, next, dark, wishes, arrangement);
    }

    Look withDark(boolean next) {
        return new Look(page, question, units, next, wishes, arrangement);
    }

    Look with(Arrangement next) {
        return new Look(page, question, units, dark, wishes, next);
    }

    /** Whether type and colours are those of another look. */
    public boolean isDressedAs(Look other) {
        return dark == other.dark && arrangement.zoom() == other.arrangement.zoom();
    }

    Look withWish(String field, String value) {
        Map<String, String> next = new HashMap<>(wishes);
        next.put(question + "/" + field, value);
        return new Look(page, question, units, dark, next, arrangement);
    }

    /** What was put into a field of the question that is asked. */
    public Optional<String> wish(String field) {
        return Optional.ofNullable(wishes.get(question + "/" + field));
    }
}
