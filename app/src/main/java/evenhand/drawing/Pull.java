package evenhand.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A handle was pulled or stepped.
 *
 * @param handle its path
 * @param values what it moves, SI, by the path of the value in the car
 * @param phase first, further or last of a gesture; a key is a gesture of its own
 */
public record Pull(String handle, Map<String, Double> values, Phase phase) {
    /** Where in a gesture. */
    public enum Phase {
        BEGUN,
        GOING_ON,
        DONE
    }

    public Pull {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
}
