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
public record Look(Page page, String question, Units units, boolean dark, Map<String, String> wishes) {
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
        return new Look(Page.ANSWER, question, units, dark, Map.of());
    }

    Look withPage(Page next) {
        return new Look(next, question, units, dark, wishes);
    }

    /** The answer to another question. */
    Look withQuestion(String key) {
        return new Look(Page.ANSWER, key, units, dark, wishes);
    }

    Look withUnits(Units next) {
        return new Look(page, question, next, dark, wishes);
    }

    Look withDark(boolean next) {
        return new Look(page, question, units, next, wishes);
    }

    Look withWish(String field, String value) {
        Map<String, String> next = new HashMap<>(wishes);
        next.put(question + "/" + field, value);
        return new Look(page, question, units, dark, next);
    }

    /** What was put into a field of the question that is asked. */
    public Optional<String> wish(String field) {
        return Optional.ofNullable(wishes.get(question + "/" + field));
    }
}
