package evenhand.scenario;

import evenhand.catalogue.Shape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Edits a scenario's text. Only the edited value changes; everything else, blanks and line ends included, stays byte for byte.
 * Each edit gives a new text, which is read again before the next.
 */
public final class ScenarioWriter {
    private static final String INDENT = "  ";
    private static final String CHANGES = "changes";

    private ScenarioWriter() {}

    /**
     * The text with another quantity at a path of the car, or of a set-up's changes where a set-up is named.
     *
     * @param quantity as it is to be written, such as "275 mm"; a plain number is written without quotes
     * @throws IllegalArgumentException if there is no such set-up or place in a list, or the text is no JSON
     */
    public static String set(String text, Optional<String> setup, String path, String quantity) {
        return setJson(text, setup, path, scalar(quantity));
    }

    /**
     * The same for any JSON: a word or text in quotes, an object, a list; in a set-up, {@code null} removes. A path such as
     * {@code front.damper.settings[1].name} leads into a list, where the place behind the last adds to it.
     *
     * @throws IllegalArgumentException if there is no such set-up or place in a list, or the text is no JSON
     */
    public static String setJson(String text, Optional<String> setup, String path, String json) {
        Json.Obj root = root(text);
        if (setup.isEmpty()) {
            return JsonEdit.put(text, member(root, "car"), JsonEdit.steps(path), json);
        }
        List<String> below = new ArrayList<>(List.of(CHANGES));
        below.addAll(JsonEdit.steps(path));
        return JsonEdit.put(text, named(root, setup.get()), below, json);
    }

    /**
     * The text with another value beside the car: a title, a load case, the workshop.
     *
     * @param path from the top of the file, such as {@code loadCases[0].name}
     * @throws IllegalArgumentException if the text is no JSON, or there is no such place in a list
     */
    public static String setInFile(String text, String path, String json) {
        return JsonEdit.put(text, root(text), JsonEdit.steps(path), json);
    }

    /**
     * The text without a value beside the car, and without the objects that it alone was in.
     *
     * @throws IllegalArgumentException if the text is no JSON
     */
    public static String removeInFile(String text, String path) {
        return JsonEdit.removeBelow(text, root(text), JsonEdit.steps(path));
    }

    /** Whether a set-up gives something of its own at a path. */
    public static boolean isChanged(String text, String setup, String path) {
        List<String> below = new ArrayList<>(List.of(CHANGES));
        below.addAll(JsonEdit.steps(path));
        return JsonEdit.leadsTo(named(root(text), setup), below);
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
            edited = JsonEdit.append(text, list, setupText);
        } else {
            // Without set-ups the car as given was the only one; it stays the first.
            String first = basedOn.equals(Optional.of(Setup.AS_GIVEN)) || basedOn.isEmpty()
                    ? "{\"name\": " + quoted(Setup.AS_GIVEN) + "}, "
                    : "";
            edited = JsonEdit.put(text, root, List.of("setups"), "[" + first + setupText + "]");
        }
        for (Map.Entry<String, String> change : changes.entrySet()) {
            edited = set(edited, Optional.of(name), change.getKey(), change.getValue());
        }
        return edited;
    }

    /**
     * The text with one more entry in its book, behind the last; nothing else of it changes.
     *
     * @param entry as JSON
     */
    public static String addToBook(String text, String entry) {
        Json.Obj root = root(text);
        if (root.members().get(BookChecks.KEY) instanceof Json.Arr list) {
            return JsonEdit.append(text, list, entry);
        }
        String lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
        String own = lineEnd + INDENT + INDENT + entry + lineEnd + INDENT;
        return JsonEdit.put(text, root, List.of(BookChecks.KEY), "[" + own + "]");
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
        return JsonEdit.removeBelow(text, member(root(text), "car"), JsonEdit.steps(path));
    }

    /**
     * The text with another key at a path of the car, and in the changes of every set-up.
     *
     * @throws IllegalArgumentException if the text is no JSON, or the name cannot be a step of a path or is there already
     */
    public static String rename(String text, String path, String name) {
        List<String> steps = JsonEdit.steps(path);
        if (name.equals(steps.get(steps.size() - 1))) {
            return text;
        }
        Shape.ByName.fault(name).ifPresent(fault -> {
            throw new IllegalArgumentException(fault);
        });
        List<String> beside = new ArrayList<>(steps);
        beside.set(steps.size() - 1, name);
        Json.Obj root = root(text);
        List<Json> holders = new ArrayList<>(List.of(member(root, "car")));
        if (root.members().get("setups") instanceof Json.Arr setups) {
            for (Json setup : setups.items()) {
                if (setup instanceof Json.Obj object && object.members().get(CHANGES) instanceof Json.Obj changes) {
                    holders.add(changes);
                }
            }
        }
        holders.sort(
                Comparator.comparingInt((Json holder) -> holder.place().start()).reversed());
        if (holders.stream().anyMatch(holder -> JsonEdit.leadsTo(holder, beside))) {
            throw new IllegalArgumentException("is the name of another; choose one of its own");
        }
        String edited = text;
        for (Json holder : holders) { // from the end, so that the places before it hold
            edited = JsonEdit.rename(edited, holder, steps, name);
        }
        return edited;
    }

    /** The text with another title or story of the file. */
    public static String setText(String text, String key, String words) {
        return JsonEdit.put(text, root(text), List.of(key), quoted(words));
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

    private static Json.Obj named(Json.Obj root, String setup) {
        return setup(root, setup).orElseThrow(() -> new IllegalArgumentException("no set-up named " + setup));
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
