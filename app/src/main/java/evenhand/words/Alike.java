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

    /** The name that it stands under. */
    public String heading() {
        return names.get(0);
    }

    /** What is said, and of whom else: "Pivot low" and "Pivot high" come out the same. */
    public List<String> saidOfAll() {
        if (names.size() == 1) {
            return sentences;
        }
        List<String> quoted =
                names.stream().skip(1).map(name -> "\"" + name + "\"").toList();
        int last = quoted.size() - 1;
        List<String> all = new ArrayList<>(sentences);
        all.add(
                last == 0
                        ? quoted.get(0) + " comes out the same."
                        : String.join(", ", quoted.subList(0, last)) + " and " + quoted.get(last)
                                + " come out the same.");
        return all;
    }
}
