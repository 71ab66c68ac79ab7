package evenhand.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Set-ups of which the same is to be said, so that it is said once.
 *
 * @param names in the order of the file, at least one
 */
public record Alike(List<String> names, List<String> sentences) {
    public Alike {
        names = List.copyOf(names);
        sentences = List.copyOf(sentences);
    }

    /** What is said of each, by its name; in the order of the first of those that are alike. */
    public static List<Alike> of(Map<String, List<String>> said) {
        Map<List<String>, List<String>> names = new LinkedHashMap<>();
        said.forEach((name, sentences) ->
                names.computeIfAbsent(sentences, some -> new ArrayList<>()).add(name));
        return names.entrySet().stream()
                .map(one -> new Alike(one.getValue(), one.getKey()))
                .toList();
    }

    /** "Lowered", or "As bought, Lowered and Pivot low alike". */
    public String heading() {
        int last = names.size() - 1;
        return last == 0
                ? names.get(0)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last) + " alike";
    }
}
