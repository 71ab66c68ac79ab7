package evenhand.window.desk;

import evenhand.scenario.ScenarioWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Values by path that need not make a car yet: what was typed so far. Immutable.
 *
 * @param values as typed, in the order that they came
 */
public record Draft(Map<String, String> values) {
    public static final Draft EMPTY = new Draft(Map.of());

    public Draft {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** With another text at a path; an empty one takes it out. */
    public Draft with(String path, String text) {
        Map<String, String> next = new LinkedHashMap<>(values);
        if (text.isBlank()) {
            next.remove(path);
        } else {
            next.put(path, text.strip());
        }
        return new Draft(next);
    }

    /** Without what lies below a path. */
    public Draft without(String path) {
        Map<String, String> next = new LinkedHashMap<>(values);
        next.keySet().removeIf(key -> key.equals(path) || key.startsWith(path + "."));
        return new Draft(next);
    }

    public Optional<String> get(String path) {
        return Optional.ofNullable(values.get(path));
    }

    /** The object that it makes, as JSON; a value beginning with a bracket, true and false stand for themselves. */
    public String json() {
        return json("", values.keySet());
    }

    private String json(String path, Set<String> paths) {
        // Keys of one level, in the order that they first came.
        Map<String, List<String>> below = new LinkedHashMap<>();
        for (String each : paths) {
            String rest = path.isEmpty() ? each : each.substring(path.length() + 1);
            int dot = rest.indexOf('.');
            below.computeIfAbsent(dot < 0 ? rest : rest.substring(0, dot), key -> new ArrayList<>())
                    .add(each);
        }
        List<String> members = new ArrayList<>();
        below.forEach((key, under) -> {
            String here = path.isEmpty() ? key : path + "." + key;
            String value = values.get(here);
            members.add(ScenarioWriter.quoted(key) + ": "
                    + (value == null ? json(here, new java.util.LinkedHashSet<>(under)) : scalar(value)));
        });
        return "{" + String.join(", ", members) + "}";
    }

    private static String scalar(String value) {
        boolean flag = value.equals("true") || value.equals("false");
        return flag || value.startsWith("[") || value.startsWith("{") ? value : ScenarioWriter.scalar(value);
    }

    /** The object at a path, as JSON. */
    public String object(String path) {
        Map<String, String> below = new LinkedHashMap<>();
        values.forEach((key, value) -> {
            if (key.startsWith(path + ".")) {
                below.put(key.substring(path.length() + 1), value);
            }
        });
        return new Draft(below).json();
    }
}
