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

    /** What becomes of a file that another program has written since it was read here. */
    enum Changed {
        /** What is here is saved, the other version kept beside it. */
        MINE,
        /** What is in the file is shown, the work here kept beside it. */
        THEIRS,
        ELSEWHERE,
        BACK
    }

    Changed changedOutside(String file);

    /** Which file to open. */
    Optional<Path> toOpen(Optional<Path> near);

    /** Which file to save in; one that is there already was agreed to. */
    Optional<Path> toSave(Path proposed);

    /** A line of text, such as a name. */
    Optional<String> line(String question, String start);
}
