package evenhand.window;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the person what only he can decide. */
interface Asker {
    /** What becomes of unsaved work. */
    enum Unsaved {
        SAVE,
        DISCARD,
        STAY
    }

    Unsaved unsaved(String title);

    /** Which file to open. */
    Optional<Path> toOpen(Optional<Path> near);

    /** Which file to save in; one that is there already was agreed to. */
    Optional<Path> toSave(Path proposed);

    /** A line of text, such as a name. */
    Optional<String> line(String question, String start);
}
