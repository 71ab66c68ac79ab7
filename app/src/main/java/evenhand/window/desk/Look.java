package evenhand.window.desk;

import evenhand.words.Units;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How the desk is looked at; undo leaves it alone.
 *
 * @param question key of the question that is asked
 * @param wishes what was put into the questions' own fields, by question and field
 */
public record Look(String question, Units units, boolean dark, Map<String, String> wishes) {
    public Look {
        wishes = Collections.unmodifiableMap(new HashMap<>(wishes));
    }

    Look withQuestion(String key) {
        return new Look(key, units, dark, wishes);
    }

    Look withUnits(Units next) {
        return new Look(question, next, dark, wishes);
    }

    Look withDark(boolean next) {
        return new Look(question, units, next, wishes);
    }

    Look withWish(String field, String value) {
        Map<String, String> next = new HashMap<>(wishes);
        next.put(question + "/" + field, value);
        return new Look(question, units, dark, next);
    }

    /** What was put into a field of the question that is asked. */
    public Optional<String> wish(String field) {
        return Optional.ofNullable(wishes.get(question + "/" + field));
    }
}
