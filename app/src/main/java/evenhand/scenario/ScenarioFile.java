package evenhand.scenario;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Saves a scenario so that a crash leaves the old file or the new one, never half of either. */
public final class ScenarioFile {
    private static final int MOST_GOES = 100;

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
        WholeFile.write(target, text.getBytes(StandardCharsets.UTF_8), Optional.of(previous(target.toAbsolutePath())), Optional.empty());
    }

    /** The same for a file of which no earlier version is kept. */
    public static void replace(Path file, String text) throws IOException {
        WholeFile.write(followed(file), text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Changes what stands in a file now, whoever wrote it. Where somebody else writes it meanwhile, his text is read again and changed,
     * so that nothing of it is lost. Else as {@link #save}.
     *
     * @param change of the text; what it throws leaves the file as it is
     */
    public static void change(Path file, UnaryOperator<String> change) throws IOException {
        Path target = followed(file).toAbsolutePath();
        for (int go = 0; go < MOST_GOES; go++) {
            byte[] now = Files.readAllBytes(target);
            String changed = change.apply(new String(now, StandardCharsets.UTF_8));
            if (WholeFile.write(
                    target,
                    changed.getBytes(StandardCharsets.UTF_8),
                    Optional.of(previous(target)),
                    Optional.of(now))) {
                return;
            }
        }
        throw new IOException("somebody else writes it all the time");
    }

    /** A link that the person made is kept, and what it leads to is written. */
    private static Path followed(Path file) throws IOException {
        return Files.isSymbolicLink(file) ? file.toRealPath() : file;
    }
}
