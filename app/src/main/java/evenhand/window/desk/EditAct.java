package evenhand.window.desk;

import evenhand.scenario.ScenarioWriter;
import evenhand.scenario.SetupsWriter;
import evenhand.words.ChangeWords;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Something that is written into the scenario: values of the car or of a set-up, and what stands beside them. */
public sealed interface EditAct extends Act {
    /** The set-up that is changed; none where it is the car itself, or what stands beside it. */
    default Optional<String> setup() {
        return Optional.empty();
    }

    /**
     * Gives a value another quantity, ratio or word.
     *
     * @param setup the set-up that is changed; the car itself where empty
     * @param text as typed
     * @param insteadOf paths of what cannot stand beside it, which is taken out
     */
    record SetValue(Optional<String> setup, String path, String text, boolean sameGesture, List<String> insteadOf)
            implements EditAct {
        public SetValue {
            insteadOf = List.copyOf(insteadOf);
        }

        public SetValue(Optional<String> setup, String path, String text, boolean sameGesture) {
            this(setup, path, text, sameGesture, List.of());
        }

        public SetValue(Optional<String> setup, String path, String text, List<String> insteadOf) {
            this(setup, path, text, false, insteadOf);
        }

        public SetValue(Optional<String> setup, String path, String text) {
            this(setup, path, text, false, List.of());
        }

        @Override
        public Outcome on(Desk desk) {
            return Edit.at(
                    path,
                    desk,
                    old -> Edit.without(ScenarioWriter.set(old, setup, path, text.strip()), setup, insteadOf));
        }

        @Override
        public String words() {
            return ChangeWords.name(path);
        }
    }

    /**
     * Gives several values other quantities or ratios, all of them or none.
     *
     * @param setup the set-up that is changed; the car itself where empty
     * @param texts by path
     */
    record SetValues(Optional<String> setup, Map<String, String> texts, boolean sameGesture) implements EditAct {
        public SetValues {
            texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
        }

        public SetValues(Optional<String> setup, Map<String, String> texts) {
            this(setup, texts, false);
        }

        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> {
                String next = old;
                for (Map.Entry<String, String> value : texts.entrySet()) {
                    next = ScenarioWriter.set(
                            next, setup, value.getKey(), value.getValue().strip());
                }
                return next;
            });
        }

        @Override
        public String words() {
            return texts.keySet().stream().map(ChangeWords::name).collect(Collectors.joining(", "));
        }
    }

    /**
     * Gives a value another object, list or word, as JSON. Where the path leads into a list that a set-up has from the car, the
     * set-up gets a list of its own.
     *
     * @param insteadOf paths of what cannot stand beside it, which is taken out
     */
    record SetJson(Optional<String> setup, String path, String json, List<String> insteadOf) implements EditAct {
        public SetJson {
            insteadOf = List.copyOf(insteadOf);
        }

        public SetJson(Optional<String> setup, String path, String json) {
            this(setup, path, json, List.of());
        }

        @Override
        public Outcome on(Desk desk) {
            return Edit.at(
                    path,
                    desk,
                    old -> Edit.without(
                            ScenarioWriter.setJson(Edit.withOwnList(desk, old, setup, path), setup, path, json),
                            setup,
                            insteadOf));
        }

        @Override
        public String words() {
            return ChangeWords.name(path);
        }
    }

    /**
     * Gives several values other objects, lists or words, all of them or none.
     *
     * @param setup the set-up that is changed; the car itself where empty
     * @param jsons by path
     */
    record SetJsons(Optional<String> setup, Map<String, String> jsons) implements EditAct {
        public SetJsons {
            jsons = Collections.unmodifiableMap(new LinkedHashMap<>(jsons));
        }

        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> {
                String next = old;
                for (Map.Entry<String, String> value : jsons.entrySet()) {
                    next = ScenarioWriter.setJson(next, setup, value.getKey(), value.getValue());
                }
                return next;
            });
        }

        @Override
        public String words() {
            return jsons.keySet().stream().map(ChangeWords::name).collect(Collectors.joining(", "));
        }
    }

    /** Takes a change of a set-up back, or a value out of the car so that it is estimated or left out. */
    record TakeBack(Optional<String> setup, String path) implements EditAct {
        @Override
        public Outcome on(Desk desk) {
            return Edit.at(
                    path,
                    desk,
                    old -> setup.isPresent()
                            ? SetupsWriter.takeBack(Edit.withOwnList(desk, old, setup, path), setup.get(), path)
                            : ScenarioWriter.remove(old, path));
        }

        @Override
        public String words() {
            return "taking back " + ChangeWords.name(path);
        }
    }

    /** Gives the job something else beside its car and set-ups, as JSON, or takes it out. */
    record SetInFile(String path, Optional<String> json) implements EditAct {
        @Override
        public Outcome on(Desk desk) {
            return Edit.at(
                    path,
                    desk,
                    old -> json.isPresent()
                            ? ScenarioWriter.setInFile(old, path, json.get())
                            : ScenarioWriter.removeInFile(old, path));
        }

        @Override
        public String words() {
            return (json.isPresent() ? "" : "taking out ") + ChangeWords.name(path);
        }
    }

    /** Gives what has a name of its own another name, in the car and in the changes of every set-up. */
    record Rename(String path, String name) implements EditAct {
        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> ScenarioWriter.rename(old, path, name));
        }

        @Override
        public String words() {
            return "the name of " + ChangeWords.name(path);
        }
    }

    record SetTitle(String title) implements EditAct {
        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> ScenarioWriter.setText(old, "title", title.strip()));
        }

        @Override
        public String words() {
            return "the title";
        }
    }
}
