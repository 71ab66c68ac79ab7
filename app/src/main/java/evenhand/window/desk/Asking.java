package evenhand.window.desk;

import evenhand.words.Units;
import java.util.Map;
import java.util.Optional;

/** One asking of one question: everything that its answer depends on. */
public record Asking(Work work, String question, Units units, Map<String, String> wishes) {
    /** What was put into a field of the question. */
    public Optional<String> wish(String field) {
        return Optional.ofNullable(wishes.get(question + "/" + field));
    }
}
