package evenhand.window.desk;

import evenhand.scenario.ScenarioWriter;
import evenhand.scenario.SetupsWriter;
import java.util.Map;
import java.util.Optional;

/** Something that is done to the list of set-ups. */
public sealed interface SetupAct extends Act {
    /** Adds a set-up, with changes by path, and makes it the active one. */
    record AddSetup(String name, Optional<String> basedOn, Optional<String> note, Map<String, String> changes)
            implements SetupAct {
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

    record DuplicateSetup(String name, String copy) implements SetupAct {
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

    record RenameSetup(String name, String next) implements SetupAct {
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

    record DeleteSetup(String name) implements SetupAct {
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
    record MoveSetup(String name, int to) implements SetupAct {
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
    record BaseOn(String name, Optional<String> base) implements SetupAct {
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

    record SetNote(String name, String note) implements SetupAct {
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

    /** Gives a set-up other free words for the sheet, as JSON. */
    record SetSheet(String name, String json) implements SetupAct {
        @Override
        public Outcome on(Desk desk) {
            return Edit.at("sheet", desk, old -> SetupsWriter.sheet(old, name, json));
        }

        @Override
        public String words() {
            return "words on the sheet of \"" + name + "\"";
        }
    }
}
