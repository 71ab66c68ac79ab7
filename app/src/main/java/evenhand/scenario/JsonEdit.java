package evenhand.scenario;

import evenhand.catalogue.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Edits a JSON text at steps from an object or list down: keys, and places in lists. All else stays byte for byte. */
final class JsonEdit {
    private JsonEdit() {}

    /** The keys of a path, and the places in lists as {@code [0]}, each a step of its own. */
    static List<String> steps(String path) {
        List<String> steps = new ArrayList<>();
        for (Path.Step step : Path.of(path).steps()) {
            steps.add(step.key());
            if (step.index() >= 0) {
                steps.add("[" + step.index() + "]");
            }
        }
        return steps;
    }

    private static boolean isPlace(String step) {
        return step.startsWith("[");
    }

    private static int place(String step) {
        return Integer.parseInt(step.substring(1, step.length() - 1));
    }

    private static Optional<Json> below(Json json, String step) {
        if (json instanceof Json.Arr list) {
            return isPlace(step) && place(step) < list.items().size()
                    ? Optional.of(list.items().get(place(step)))
                    : Optional.empty();
        }
        return json instanceof Json.Obj object
                ? Optional.ofNullable(object.members().get(step))
                : Optional.empty();
    }

    /** Puts a value below an object or list, in place of what stands there, or behind the last, with all that is between. */
    static String put(String text, Json container, List<String> steps, String value) {
        String step = steps.get(0);
        List<String> rest = steps.subList(1, steps.size());
        Optional<Json> below = below(container, step);
        if (below.isEmpty()) {
            if (container instanceof Json.Arr list
                    && place(step) != list.items().size()) {
                throw new IllegalArgumentException("the list has no place " + step);
            }
            return append(
                    text, container, (isPlace(step) ? "" : ScenarioWriter.quoted(step) + ": ") + wrapped(rest, value));
        }
        boolean leadsOn = !rest.isEmpty()
                && (isPlace(rest.get(0)) ? below.get() instanceof Json.Arr : below.get() instanceof Json.Obj);
        if (leadsOn) {
            return put(text, below.get(), rest, value);
        }
        Place old = below.get().place();
        return text.substring(0, old.start()) + wrapped(rest, value) + text.substring(old.end());
    }

    /** A value in the objects and lists that lead to it. */
    private static String wrapped(List<String> steps, String value) {
        if (steps.isEmpty()) {
            return value;
        }
        String inside = wrapped(steps.subList(1, steps.size()), value);
        if (!isPlace(steps.get(0))) {
            return "{" + ScenarioWriter.quoted(steps.get(0)) + ": " + inside + "}";
        }
        if (place(steps.get(0)) > 0) {
            throw new IllegalArgumentException("the list has no place " + steps.get(0));
        }
        return "[" + inside + "]";
    }

    /** Puts a member or item after the last, on a line of its own if the last one has one. */
    static String append(String text, Json container, String piece) {
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

    /** Gives the last of some steps down another key. Nothing happens where they do not lead on. */
    static String rename(String text, Json container, List<String> steps, String name) {
        String step = steps.get(0);
        Optional<Json> below = below(container, step);
        if (below.isPresent() && steps.size() > 1) {
            return rename(text, below.get(), steps.subList(1, steps.size()), name);
        }
        Place key = container instanceof Json.Obj object && below.isPresent()
                ? object.keys().get(step)
                : null;
        return key == null
                ? text
                : text.substring(0, key.start()) + ScenarioWriter.quoted(name) + text.substring(key.end());
    }

    /** Takes out what stands below an object or list, and the objects that it alone was in. Nothing happens where there is none. */
    static String removeBelow(String text, Json container, List<String> steps) {
        if (!leadsTo(container, steps)) {
            return text;
        }
        String step = steps.get(0);
        List<String> rest = steps.subList(1, steps.size());
        Optional<Json> below = below(container, step);
        if (below.isPresent() && !rest.isEmpty() && !isAlone(below.get(), rest)) {
            return removeBelow(text, below.get(), rest);
        }
        if (container instanceof Json.Arr list) {
            return removeItem(text, list, place(step));
        }
        Json.Obj object = (Json.Obj) container;
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
                List.copyOf(object.members().keySet()).indexOf(step));
    }

    static boolean leadsTo(Json json, List<String> steps) {
        return steps.isEmpty()
                || below(json, steps.get(0))
                        .filter(below -> leadsTo(below, steps.subList(1, steps.size())))
                        .isPresent();
    }

    /** Whether nothing else stands on the way down. A list without items still says something. */
    private static boolean isAlone(Json json, List<String> steps) {
        return steps.isEmpty()
                || (json instanceof Json.Obj object
                        && object.members().size() == 1
                        && below(json, steps.get(0))
                                .filter(below -> isAlone(below, steps.subList(1, steps.size())))
                                .isPresent());
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
}
