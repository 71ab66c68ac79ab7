package evenhand.window.desk;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the scenario is kept.
 *
 * @param path of its file; none before it is first saved
 * @param text as it was last read or saved; none of what was never saved
 */
public record Filed(Optional<Path> path, Optional<String> text) {
    /** Of a scenario that has no file yet. */
    public static final Filed NOWHERE = new Filed(Optional.empty(), Optional.empty());
}
