package evenhand.window.desk;

import evenhand.scenario.ScenarioWriter;
import evenhand.scenario.SetupsWriter;
import evenhand.turn.Direction;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Something that is done to the desk. */
public sealed interface Act {
    /** The desk afterwards, or why it cannot be done. */
    Outcome on(Desk desk);

    /** What is done, for the words beside undo. */
    String words();

    /** Whether undo takes it back. */
    default boolean isWork() {
        return true;
    }

    /** Whether it goes on with the gesture of the act before: a drag is one act to undo. */
    default boolean sameGesture() {
        return false;
    }

    /**
     * Gives a value another quantity, ratio or word.
     *
     * @param setup the set-up that is changed; the car itself where empty
     * @param text as typed
     * @param insteadOf paths of what cannot stand beside it, which is taken out
     */
    record SetValue(Optional<String> setup, String path, String text, boolean sameGesture, List<String> insteadOf)
            implements Act {
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
    record SetValues(Optional<String> setup, Map<String, String> texts) implements Act {
        public SetValues {
            texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
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
    record SetJson(Optional<String> setup, String path, String json, List<String> insteadOf) implements Act {
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

    /** Takes a change of a set-up back, or a value out of the car so that it is estimated or left out. */
    record TakeBack(Optional<String> setup, String path) implements Act {
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

    /** Adds a set-up, with changes by path, and makes it the active one. */
    record AddSetup(String name, Optional<String> basedOn, Optional<String> note, Map<String, String> changes)
            implements Act {
        public AddSetup {
            changes = Map.copyOf(changes);
        }

        @Override
        public Outcome on(Desk desk) {
            return Names.refusal(desk, name)
                    .orElseGet(() -> Edit.adding(
                            desk, name, old -> ScenarioWriter.addSetup(old, name.strip(), basedOn, note, changes)));
        }

        @Override
        public String words() {
            return "adding \"" + name + "\"";
        }
    }

    record DuplicateSetup(String name, String copy) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return Names.refusal(desk, copy)
                    .orElseGet(() -> Edit.adding(desk, copy, old -> SetupsWriter.duplicate(old, name, copy.strip())));
        }

        @Override
        public String words() {
            return "copying \"" + name + "\"";
        }
    }

    record RenameSetup(String name, String next) implements Act {
        @Override
        public Outcome on(Desk desk) {
            if (next.strip().equals(name)) {
                return new Outcome.Done(desk);
            }
            return Names.refusal(desk, next)
                    .orElseGet(() -> Edit.whole(
                            desk,
                            desk.work().renamed(name, next.strip()),
                            old -> SetupsWriter.rename(old, name, next.strip())));
        }

        @Override
        public String words() {
            return "renaming \"" + name + "\"";
        }
    }

    record DeleteSetup(String name) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> SetupsWriter.delete(old, name));
        }

        @Override
        public String words() {
            return "deleting \"" + name + "\"";
        }
    }

    /** Moves a set-up in the list; {@code to} counts from 0 in the list without it. */
    record MoveSetup(String name, int to) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> SetupsWriter.move(old, name, to));
        }

        @Override
        public String words() {
            return "moving \"" + name + "\"";
        }
    }

    /** Bases a set-up on another, or on the car itself. */
    record BaseOn(String name, Optional<String> base) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> SetupsWriter.baseOn(old, name, base));
        }

        @Override
        public String words() {
            return "basing \"" + name + "\" on "
                    + base.map(own -> "\"" + own + "\"").orElse("the car itself");
        }
    }

    record SetNote(String name, String note) implements Act {
        @Override
        public Outcome on(Desk desk) {
            Optional<String> words = Optional.of(note.strip()).filter(text -> !text.isEmpty());
            return Edit.whole(desk, desk.work(), old -> SetupsWriter.note(old, name, words));
        }

        @Override
        public String words() {
            return "the note on \"" + name + "\"";
        }
    }

    /** Gives the job something else beside its car and set-ups, as JSON, or takes it out. */
    record SetInFile(String path, Optional<String> json) implements Act {
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

    /** Gives a set-up other free words for the sheet, as JSON. */
    record SetSheet(String name, String json) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return Edit.at("sheet", desk, old -> SetupsWriter.sheet(old, name, json));
        }

        @Override
        public String words() {
            return "words on the sheet of \"" + name + "\"";
        }
    }

    record SetTitle(String title) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> ScenarioWriter.setText(old, "title", title.strip()));
        }

        @Override
        public String words() {
            return "the title";
        }
    }

    /** Shows a set-up, or no longer. */
    record Show(String name, boolean shown) implements Act {
        @Override
        public Outcome on(Desk desk) {
            List<String> names = new ArrayList<>(desk.work().chosen());
            names.remove(name);
            if (shown) {
                names.add(name);
            }
            return new Outcome.Done(desk.with(desk.work().withChosen(names)));
        }

        @Override
        public String words() {
            return (shown ? "showing \"" : "hiding \"") + name + "\"";
        }
    }

    /** Makes a set-up the one that is adjusted. */
    record Activate(String name) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.work().withActive(name)));
        }

        @Override
        public String words() {
            return "turning to \"" + name + "\"";
        }
    }

    /** Makes a set-up the one that others are compared with. */
    record CompareWith(String name) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.work().withBase(name)));
        }

        @Override
        public String words() {
            return "comparing with \"" + name + "\"";
        }
    }

    /** m/s². */
    record ChoosePace(double pace, boolean sameGesture) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.work().withPace(pace)));
        }

        @Override
        public String words() {
            return "the pace";
        }
    }

    /** m. */
    record ChooseRadius(double radius) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.work().withRadius(radius)));
        }

        @Override
        public String words() {
            return "the circle";
        }
    }

    record ChooseDirection(Direction direction) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.work().withDirection(direction)));
        }

        @Override
        public String words() {
            return "the direction of the turn";
        }
    }

    /** Puts a load case aboard, or takes it out. */
    record ChooseLoad(Optional<String> load) implements Act {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.work().withLoad(load)));
        }

        @Override
        public String words() {
            return "the load";
        }
    }

    /** Something that changes only how the desk is looked at. */
    sealed interface Looking extends Act {
        @Override
        default boolean isWork() {
            return false;
        }

        @Override
        default String words() {
            return "";
        }
    }

    record Ask(String question) implements Looking {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.look().withQuestion(question)));
        }
    }

    /** Puts something into a field of the question that is asked. */
    record Wish(String field, String value) implements Looking {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.look().withWish(field, value)));
        }
    }

    record ShowUnits(Units units) implements Looking {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.look().withUnits(units)));
        }
    }

    record ShowDark(boolean dark) implements Looking {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.look().withDark(dark)));
        }
    }

    /** The scenario was saved, as it is now or was a moment ago. */
    record Saved(Filed filed) implements Looking {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(filed));
        }
    }

    /** Replies have come. */
    record TurnsCame(Replies.Turns turns) implements Looking {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.replies().with(turns)));
        }
    }

    record ReplyCame(Asking of, Reply reply) implements Looking {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.replies().with(of, reply)));
        }
    }

    /** What may be done next has come; it joins the reply that it belongs to, if that is still shown. */
    record AfterthoughtCame(Asking of, List<Reply.Next> next) implements Looking {
        public AfterthoughtCame {
            next = List.copyOf(next);
        }

        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.replies().withAfter(of, next)));
        }
    }

    record ProgressCame(Optional<Double> progress) implements Looking {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.replies().withProgress(progress)));
        }
    }
}
