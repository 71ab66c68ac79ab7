package evenhand.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Edits the list of set-ups in a scenario's text. As with {@link ScenarioWriter}, what is not edited stays byte for byte; only
 * the look of a set-up is written down where its new place in the list would give it another. A file
 * without set-ups has one, named {@link Setup#AS_GIVEN}; it is written down by the first edit.
 */
public final class SetupsWriter {
    private static final String NAME = "name";
    private static final String BASED_ON = "basedOn";
    private static final String NOTE = "note";
    private static final String SHEET = "sheet";
    private static final String LOOK = "look";

    private SetupsWriter() {}

    /**
     * The text with a copy of a set-up right behind it.
     *
     * @throws IllegalArgumentException if there is no such set-up, or one of the new name
     */
    public static String duplicate(String text, String name, String copy) {
        String listed = listed(text);
        refuseTaken(listed, copy);
        Json.Obj setup = setup(listed, name);
        Place place = setup.place();
        String own = listed.substring(place.start(), place.end());
        Place word = place(setup, NAME);
        String renamed = own.substring(0, word.start() - place.start())
                + ScenarioWriter.quoted(copy)
                + own.substring(word.end() - place.start());
        String edited = JsonEdit.insertAfter(listed, list(listed), index(listed, name), renamed);
        return keepingLooks(listed, JsonEdit.removeBelow(edited, setup(edited, copy), List.of(LOOK)));
    }

    /**
     * The text with a set-up of another name, and those based on it following.
     *
     * @throws IllegalArgumentException if there is no such set-up, or one of the new name
     */
    public static String rename(String text, String name, String next) {
        if (name.equals(next)) {
            return text;
        }
        String listed = listed(text);
        refuseTaken(listed, next);
        setup(listed, name);
        List<Place> places = new ArrayList<>();
        for (Json.Obj setup : setups(listed)) {
            for (String key : List.of(NAME, BASED_ON)) {
                if (setup.members().get(key) instanceof Json.Str word
                        && word.text().equals(name)) {
                    places.add(word.place());
                }
            }
        }
        for (Json.Obj test : roadTests(listed)) {
            if (test.members().get("setup") instanceof Json.Str word
                    && word.text().equals(name)) {
                places.add(word.place());
            }
        }
        places.sort(Comparator.comparingInt(Place::start).reversed());
        String edited = listed;
        for (Place place : places) {
            edited = edited.substring(0, place.start()) + ScenarioWriter.quoted(next) + edited.substring(place.end());
        }
        return edited;
    }

    /**
     * The text without a set-up.
     *
     * @throws IllegalArgumentException if there is no such set-up, it is the only one, or others are based on it
     */
    public static String delete(String text, String name) {
        int at = index(text, name);
        if (setups(text).size() < 2) {
            throw new IllegalArgumentException("the only set-up stays");
        }
        List<String> children = basedOn(text, name);
        if (!children.isEmpty()) {
            throw new IllegalArgumentException("others are based on \"" + name + "\": \""
                    + String.join("\", \"", children) + "\"; base them on another first");
        }
        List<String> tests = roadTests(text).stream()
                .filter(test -> test.members().get("setup") instanceof Json.Str own
                        && own.text().equals(name))
                .map(test -> test.members().get(NAME) instanceof Json.Str own ? own.text() : "")
                .toList();
        if (!tests.isEmpty()) {
            throw new IllegalArgumentException("\"" + name + "\" was driven in the road tests \""
                    + String.join("\", \"", tests) + "\"; take these out of the file first");
        }
        return keepingLooks(text, JsonEdit.removeItem(text, list(text), at));
    }

    private static List<Json.Obj> roadTests(String text) {
        List<Json.Obj> tests = new ArrayList<>();
        if (ScenarioWriter.root(text).members().get("roadTests") instanceof Json.Arr list) {
            for (Json item : list.items()) {
                if (item instanceof Json.Obj test) {
                    tests.add(test);
                }
            }
        }
        return tests;
    }

    /**
     * The text with a set-up at another place of the list.
     *
     * @param to counted from 0, in the list without it
     * @throws IllegalArgumentException if there is no such set-up
     */
    public static String move(String text, String name, int to) {
        String listed = listed(text);
        List<Json> items = list(listed).items();
        List<Json> order = new ArrayList<>(items);
        Json moved = order.remove(index(listed, name));
        order.add(Math.max(0, Math.min(to, order.size())), moved);
        StringBuilder edited = new StringBuilder();
        int from = 0;
        for (int i = 0; i < items.size(); i++) {
            Place here = items.get(i).place();
            Place own = order.get(i).place();
            edited.append(listed, from, here.start()).append(listed, own.start(), own.end());
            from = here.end();
        }
        return keepingLooks(listed, edited.append(listed.substring(from)).toString());
    }

    /** The edited text, in which every set-up that was there before looks as it did. */
    private static String keepingLooks(String before, String edited) {
        Map<String, Integer> looks = looks(before);
        String text = edited;
        for (String name : looks(edited).keySet()) {
            text = JsonEdit.removeBelow(text, setup(text, name), List.of(LOOK));
        }
        if (changed(looks, text).isEmpty()) {
            return text; // their order says it
        }
        text = edited;
        // To write one down may free the look of another.
        for (Optional<String> next = changed(looks, text); next.isPresent(); next = changed(looks, text)) {
            String name = next.get();
            String look = String.valueOf(Objects.requireNonNull(looks.get(name)) + 1);
            text = JsonEdit.put(text, setup(text, name), List.of(LOOK), look);
        }
        return text;
    }

    /** A set-up that looks another way than before. */
    private static Optional<String> changed(Map<String, Integer> before, String text) {
        Map<String, Integer> now = looks(text);
        return now.keySet().stream()
                .filter(name -> before.containsKey(name) && !Objects.equals(before.get(name), now.get(name)))
                .findFirst();
    }

    private static Map<String, Integer> looks(String text) {
        List<OptionalInt> given = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Json.Obj setup : setups(text)) {
            if (setup.members().get(NAME) instanceof Json.Str name) {
                names.add(name.text());
                given.add(look(setup));
            }
        }
        Iterator<Integer> each = SetupLooks.of(given).iterator();
        Map<String, Integer> looks = new LinkedHashMap<>();
        names.forEach(name -> looks.put(name, each.next()));
        return looks;
    }

    private static OptionalInt look(Json.Obj setup) {
        Json given = setup.members().get(LOOK);
        String written =
                given instanceof Json.Num number ? number.text() : given instanceof Json.Str word ? word.text() : "";
        try {
            return OptionalInt.of((int) Double.parseDouble(written) - 1);
        } catch (NumberFormatException none) {
            return OptionalInt.empty();
        }
    }

    /**
     * The text with a set-up based on another, or on the car itself. Only the words of the file change: what the set-up does not
     * change itself then comes from its new base.
     *
     * @throws IllegalArgumentException if there is no such set-up
     */
    public static String baseOn(String text, String name, Optional<String> base) {
        return word(text, name, BASED_ON, base);
    }

    /**
     * The text with another note on a set-up, or none.
     *
     * @throws IllegalArgumentException if there is no such set-up
     */
    public static String note(String text, String name, Optional<String> note) {
        return word(text, name, NOTE, note);
    }

    /**
     * The text with one change of a set-up taken back, and the objects that it alone was in.
     *
     * @throws IllegalArgumentException if there is no such set-up
     */
    public static String takeBack(String text, String name, String path) {
        String listed = listed(text);
        List<String> keys = new ArrayList<>(List.of("changes"));
        keys.addAll(JsonEdit.steps(path));
        return JsonEdit.removeBelow(listed, setup(listed, name), keys);
    }

    /** The set-ups that are directly based on one. */
    public static List<String> basedOn(String text, String name) {
        return setups(text).stream()
                .filter(setup -> setup.members().get(BASED_ON) instanceof Json.Str base
                        && base.text().equals(name))
                .map(setup -> setup.members().get(NAME) instanceof Json.Str own ? own.text() : "")
                .toList();
    }

    /**
     * The text with other free words of a set-up for the sheet, or none.
     *
     * @throws IllegalArgumentException if there is no such set-up
     */
    public static String sheet(String text, String name, String words) {
        String listed = listed(text);
        Json.Obj setup = setup(listed, name);
        return words.equals("{}")
                ? JsonEdit.removeBelow(listed, setup, List.of(SHEET))
                : JsonEdit.put(listed, setup, List.of(SHEET), words);
    }

    private static String word(String text, String name, String key, Optional<String> word) {
        String listed = listed(text);
        Json.Obj setup = setup(listed, name);
        return word.isPresent()
                ? JsonEdit.put(listed, setup, List.of(key), ScenarioWriter.quoted(word.get()))
                : JsonEdit.removeBelow(listed, setup, List.of(key));
    }

    /** The text with its list of set-ups, where it had none. */
    private static String listed(String text) {
        Json.Obj root = ScenarioWriter.root(text);
        if (root.members().get("setups") instanceof Json.Arr list
                && !list.items().isEmpty()) {
            return text;
        }
        String only = "[{\"name\": " + ScenarioWriter.quoted(Setup.AS_GIVEN) + "}]";
        return JsonEdit.put(text, root, List.of("setups"), only);
    }

    private static Json.Arr list(String text) {
        if (ScenarioWriter.root(text).members().get("setups") instanceof Json.Arr list) {
            return list;
        }
        throw new IllegalArgumentException("there are no set-ups");
    }

    private static List<Json.Obj> setups(String text) {
        List<Json.Obj> setups = new ArrayList<>();
        if (ScenarioWriter.root(text).members().get("setups") instanceof Json.Arr list) {
            for (Json item : list.items()) {
                if (item instanceof Json.Obj setup) {
                    setups.add(setup);
                }
            }
        }
        return setups;
    }

    private static int index(String text, String name) {
        List<Json> items =
                ScenarioWriter.root(text).members().get("setups") instanceof Json.Arr list ? list.items() : List.of();
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i) instanceof Json.Obj setup && isNamed(setup, name)) {
                return i;
            }
        }
        if (items.isEmpty() && name.equals(Setup.AS_GIVEN)) {
            return 0;
        }
        throw new IllegalArgumentException("no set-up named " + name);
    }

    private static Json.Obj setup(String text, String name) {
        return setups(text).stream()
                .filter(setup -> isNamed(setup, name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no set-up named " + name));
    }

    private static boolean isNamed(Json.Obj setup, String name) {
        return setup.members().get(NAME) instanceof Json.Str own && own.text().equals(name);
    }

    private static Place place(Json.Obj setup, String key) {
        Json value = setup.members().get(key);
        return value == null ? setup.place() : value.place();
    }

    private static void refuseTaken(String text, String name) {
        if (setups(text).stream().anyMatch(setup -> isNamed(setup, name))) {
            throw new IllegalArgumentException("there is a set-up named " + name + " already");
        }
    }
}
