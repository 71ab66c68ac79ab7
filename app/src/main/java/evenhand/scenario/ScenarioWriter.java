package evenhand.scenario;

import evenhand.catalogue.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Edits a scenario's text. Only the edited value changes; everything else, blanks and line ends included, stays byte for byte.
 * Each edit gives a new text, which is read again before the next.
 */
public final class ScenarioWriter {
    private static final String INDENT = "  ";

    private ScenarioWriter() {}

    /**
     * The text with another quantity at a path of the car, or of a set-up's changes where a set-up is named.
     *
     * @param quantity as it is to be written, such as "275 mm"; a plain number is written without quotes
     * @throws IllegalArgumentException if there is no such set-up, the text is no JSON, or the path leads into a list
     */
    public static String set(String text, Optional<String> setup, String path, String quantity) {
        return setJson(text, setup, path, scalar(quantity));
    }

    /**
     * The same for any JSON: a word or text in quotes, an object, a list; in a set-up, {@code null} removes.
     *
     * @throws IllegalArgumentException if there is no such set-up, the text is no JSON, or the path leads into a list
     */
    public static String setJson(String text, Optional<String> setup, String path, String json) {
        if (Path.of(path).steps().stream().anyMatch(step -> step.index() >= 0)) {
            throw new IllegalArgumentException("a list is written as a whole: " + path);
        }
        List<String> keys = Path.of(path).steps().stream().map(Path.Step::key).toList();
        Json.Obj root = root(text);
        if (setup.isEmpty()) {
            return put(text, member(root, "car"), keys, json);
        }
        Json.Obj chosen = setup(root, setup.get())
                .orElseThrow(() -> new IllegalArgumentException("no set-up named " + setup.get()));
        List<String> below = new ArrayList<>(keys);
        below.add(0, "changes");
        return put(text, chosen, below, json);
    }

    /**
     * The text with one more set-up at the end.
     *
     * @param basedOn the set-up that it builds on
     * @param changes quantities by path
     */
    public static String addSetup(
            String text, String name, Optional<String> basedOn, Optional<String> note, Map<String, String> changes) {
        Json.Obj root = root(text);
        if (setup(root, name).isPresent()) {
            throw new IllegalArgumentException("there is a set-up named " + name + " already");
        }
        StringBuilder added = new StringBuilder("{\"name\": ").append(quoted(name));
        basedOn.ifPresent(base -> added.append(", \"basedOn\": ").append(quoted(base)));
        note.ifPresent(words -> added.append(", \"note\": ").append(quoted(words)));
        String setupText = added.append('}').toString();
        String edited;
        if (root.members().get("setups") instanceof Json.Arr list) {
            edited = append(text, list, setupText);
        } else {
            // Without set-ups the car as given was the only one; it stays the first.
            String first = basedOn.equals(Optional.of(Setup.AS_GIVEN)) || basedOn.isEmpty()
                    ? "{\"name\": " + quoted(Setup.AS_GIVEN) + "}, "
                    : "";
            edited = put(text, root, List.of("setups"), "[" + first + setupText + "]");
        }
        for (Map.Entry<String, String> change : changes.entrySet()) {
            edited = set(edited, Optional.of(name), change.getKey(), change.getValue());
        }
        return edited;
    }

    /** The text in the form of a new file: two blanks a level, short lists and objects on one line. */
    public static String format(String text) {
        StringBuilder out = new StringBuilder();
        format(root(text), "", out);
        return out.append('\n').toString();
    }

    private static Json.Obj root(String text) {
        Problems problems = new Problems("");
        Optional<Json> json = JsonReader.read(new Source(text), problems);
        if (json.isPresent() && problems.isEmpty() && json.get() instanceof Json.Obj root) {
            return root;
        }
        throw new IllegalArgumentException("the text is no JSON object");
    }

    private static Json.Obj member(Json.Obj object, String key) {
        if (object.members().get(key) instanceof Json.Obj below) {
            return below;
        }
        throw new IllegalArgumentException("there is no object " + key);
    }

    private static Optional<Json.Obj> setup(Json.Obj root, String name) {
        return root.members().get("setups") instanceof Json.Arr list
                ? list.items().stream()
                        .filter(item -> item instanceof Json.Obj object
                                && object.members().get("name") instanceof Json.Str text
                                && text.text().equals(name))
                        .map(item -> (Json.Obj) item)
                        .findFirst()
                : Optional.empty();
    }

    /** Puts a value below an object, in place of what stands there, or after its last member, with the objects between. */
    private static String put(String text, Json.Obj object, List<String> keys, String value) {
        String key = keys.get(0);
        Json below = object.members().get(key);
        if (below == null) {
            StringBuilder inserted = new StringBuilder();
            keys.forEach(step -> inserted.append(inserted.isEmpty() ? "" : "{")
                    .append(quoted(step))
                    .append(": "));
            inserted.append(value).append("}".repeat(keys.size() - 1));
            return append(text, object, inserted.toString());
        }
        if (keys.size() > 1 && below instanceof Json.Obj inside) {
            return put(text, inside, keys.subList(1, keys.size()), value);
        }
        StringBuilder replaced = new StringBuilder();
        keys.subList(1, keys.size())
                .forEach(step -> replaced.append('{').append(quoted(step)).append(": "));
        replaced.append(value).append("}".repeat(keys.size() - 1));
        return text.substring(0, below.place().start())
                + replaced
                + text.substring(below.place().end());
    }

    /** Puts a member or item after the last, on a line of its own if the last one has one. */
    private static String append(String text, Json container, String piece) {
        List<Json> items = container instanceof Json.Obj object
                ? List.copyOf(object.members().values())
                : ((Json.Arr) container).items();
        if (items.isEmpty()) {
            int at = container.place().start() + 1;
            return text.substring(0, at) + piece + text.substring(at);
        }
        Json last = items.get(items.size() - 1);
        int start = container instanceof Json.Obj object
                ? lastKey(object)
                : last.place().start();
        int end = last.place().end();
        int lineStart = text.lastIndexOf('\n', start) + 1;
        String indent = text.substring(lineStart, start);
        String lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
        boolean ownLine = indent.isBlank() && lineStart > container.place().start();
        return text.substring(0, end) + "," + (ownLine ? lineEnd + indent : " ") + piece + text.substring(end);
    }

    private static int lastKey(Json.Obj object) {
        return object.keys().values().stream()
                .mapToInt(Place::start)
                .max()
                .orElse(object.place().start());
    }

    private static String scalar(String quantity) {
        return quantity.matches("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][-+]?\\d+)?") ? quantity : quoted(quantity);
    }

    static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\t' -> out.append("\\t");
                default -> out.append(c < ' ' ? String.format("\\u%04x", (int) c) : String.valueOf(c));
            }
        }
        return out.append('"').toString();
    }

    private static final int SHORT = 100;

    private static void format(Json json, String indent, StringBuilder out) {
        String line = onOneLine(json);
        boolean nested = json instanceof Json.Obj object
                && object.members().values().stream().anyMatch(v -> v instanceof Json.Obj || v instanceof Json.Arr);
        boolean scalar = !(json instanceof Json.Obj || json instanceof Json.Arr);
        if (scalar || (line.length() <= SHORT && !nested)) {
            out.append(line);
            return;
        }
        String below = indent + INDENT;
        String separator = "";
        if (json instanceof Json.Obj object) {
            out.append('{');
            for (Map.Entry<String, Json> member : object.members().entrySet()) {
                out.append(separator)
                        .append('\n')
                        .append(below)
                        .append(quoted(member.getKey()))
                        .append(": ");
                format(member.getValue(), below, out);
                separator = ",";
            }
            out.append('\n').append(indent).append('}');
        } else if (json instanceof Json.Arr list) {
            out.append('[');
            for (Json item : list.items()) {
                out.append(separator).append('\n').append(below);
                format(item, below, out);
                separator = ",";
            }
            out.append('\n').append(indent).append(']');
        }
    }

    static String onOneLine(Json json) {
        if (json instanceof Json.Obj object) {
            return "{"
                    + String.join(
                            ", ",
                            object.members().entrySet().stream()
                                    .map(member -> quoted(member.getKey()) + ": " + onOneLine(member.getValue()))
                                    .toList())
                    + "}";
        } else if (json instanceof Json.Arr list) {
            return "["
                    + String.join(
                            ", ",
                            list.items().stream().map(ScenarioWriter::onOneLine).toList()) + "]";
        } else if (json instanceof Json.Str text) {
            return quoted(text.text());
        } else if (json instanceof Json.Num number) {
            return number.text();
        }
        return json.words();
    }
}
