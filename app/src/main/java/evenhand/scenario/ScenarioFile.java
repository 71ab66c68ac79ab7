package evenhand.scenario;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Saves a scenario so that a crash leaves the old file or the new one, never half of either. */
public final class ScenarioFile {
    private ScenarioFile() {}

    /** Where the version before the last save is kept. */
    public static Path previous(Path file) {
        String name = file.getFileName().toString();
        String stem = name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
        return file.resolveSibling(stem + ".previous.json");
    }

    /**
     * Writes the text to a new file beside the old one, waits until it is on the disk, keeps the old one as
     * {@code NAME.previous.json}, and puts the new one in its place.
     */
    public static void save(Path file, String text) throws IOException {
        Path target = followed(file);
        WholeFile.write(target, text.getBytes(StandardCharsets.UTF_8), Optional.of(previous(target.toAbsolutePath())));
    }

    /** The same for a file of which no earlier version is kept. */
    public static void replace(Path file, String text) throws IOException {
        WholeFile.write(followed(file), text.getBytes(StandardCharsets.UTF_8));
    }

    /** A link that the person made is kept, and what it leads to is written. */
    private static Path followed(Path file) throws IOException {
        return Files.isSymbolicLink(file) ? file.toRealPath() : file;
    }
}
