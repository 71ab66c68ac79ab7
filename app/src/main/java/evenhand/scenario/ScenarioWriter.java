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

    /**
     * The text without the value at a path of the car, so that its default or estimate stands in for it, and without the objects
     * that it alone was in.
     *
     * @throws IllegalArgumentException if the text is no JSON
     */
    public static String remove(String text, String path) {
        return removeBelow(text, member(root(text), "car"), List.of(path.split("\\.", -1)));
    }

    /** The text with another title or story of the file. */
    public static String setText(String text, String key, String words) {
        return put(text, root(text), List.of(key), quoted(words));
    }

    static Json.Obj root(String text) {
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
    static String put(String text, Json.Obj object, List<String> keys, String value) {
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

    /** Puts an item into a list behind another, with the blanks that stand between its neighbours. */
    static String insertAfter(String text, Json.Arr list, int index, String piece) {
        List<Json> items = list.items();
        if (index == items.size() - 1) {
            return append(text, list, piece);
        }
        int end = items.get(index).place().end();
        String between = text.substring(end, items.get(index + 1).place().start());
        return text.substring(0, end) + between + piece + text.substring(end);
    }

    static String removeItem(String text, Json.Arr list, int index) {
        return cut(text, list.place(), list.items().stream().map(Json::place).toList(), index);
    }

    /** Takes out what stands below an object, and the objects that it alone was in. Nothing happens where there is none. */
    static String removeBelow(String text, Json.Obj object, List<String> keys) {
        String key = keys.get(0);
        List<String> rest = keys.subList(1, keys.size());
        if (!leadsTo(object, keys)) {
            return text;
        }
        if (object.members().get(key) instanceof Json.Obj inside && !isAlone(inside, rest)) {
            return removeBelow(text, inside, rest);
        }
        List<Place> members = new ArrayList<>();
        object.members().forEach((name, value) -> {
            Place start = object.keys().getOrDefault(name, value.place());
            members.add(new Place(
                    "",
                    start.line(),
                    start.column(),
                    start.start(),
                    value.place().end()));
        });
        return cut(
                text,
                object.place(),
                members,
                List.copyOf(object.members().keySet()).indexOf(key));
    }

    private static boolean leadsTo(Json json, List<String> keys) {
        if (keys.isEmpty()) {
            return true;
        }
        Json below = json instanceof Json.Obj object ? object.members().get(keys.get(0)) : null;
        return below != null && leadsTo(below, keys.subList(1, keys.size()));
    }

    /** Whether nothing else stands on the way down. */
    private static boolean isAlone(Json json, List<String> keys) {
        if (keys.isEmpty()) {
            return true;
        }
        Json below = json instanceof Json.Obj object && object.members().size() == 1
                ? object.members().get(keys.get(0))
                : null;
        return below != null && isAlone(below, keys.subList(1, keys.size()));
    }

    /** Cuts out one of the pieces of a container, with one of its commas. */
    private static String cut(String text, Place container, List<Place> pieces, int index) {
        Place piece = pieces.get(index);
        if (pieces.size() == 1) {
            return text.substring(0, container.start() + 1) + text.substring(container.end() - 1);
        }
        return index < pieces.size() - 1
                ? text.substring(0, piece.start())
                        + text.substring(pieces.get(index + 1).start())
                : text.substring(0, pieces.get(index - 1).end()) + text.substring(piece.end());
    }

    private static int lastKey(Json.Obj object) {
        return object.keys().values().stream()
                .mapToInt(Place::start)
                .max()
                .orElse(object.place().start());
    }

    /** A quantity as it is written: a plain number without quotes. */
    public static String scalar(String quantity) {
        return quantity.matches("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][-+]?\\d+)?") ? quantity : quoted(quantity);
    }

    /** A text as JSON. */
    public static String quoted(String text) {
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
