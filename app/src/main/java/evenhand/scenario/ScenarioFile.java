package evenhand.scenario;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Saves a scenario so that a crash leaves the old file or the new one, never half of either; and tells whether somebody else has
 * written a file since it was read.
 */
public final class ScenarioFile {
    private static final int MOST_GOES = 100;

    private ScenarioFile() {}

    /** What has become of a file since it was read. */
    public enum Since {
        SAME,
        CHANGED,
        GONE,
        /** There, but not to be read now: nobody can tell. */
        UNREADABLE
    }

    /**
     * Compares a file with what was read from it.
     *
     * @param text as it was read, or written since
     */
    public static Since since(Path file, String text) {
        if (!Files.exists(file)) {
            return Since.GONE;
        }
        try {
            return Files.readString(file, StandardCharsets.UTF_8).equals(text) ? Since.SAME : Since.CHANGED;
        } catch (CharacterCodingException otherText) {
            return Since.CHANGED;
        } catch (IOException | SecurityException unreadable) {
            return Since.UNREADABLE;
        }
    }

    /** Where the version before the last save is kept. */
    public static Path previous(Path file) {
        return beside(file, "previous");
    }

    /** A name beside a file that is still free, for another version of it: {@code NAME.WORD.json}, {@code NAME.WORD-2.json}. */
    public static Path free(Path file, String word) {
        Path free = beside(file, word);
        for (int i = 2; Files.exists(free); i++) {
            free = beside(file, word + "-" + i);
        }
        return free;
    }

    private static Path beside(Path file, String word) {
        String name = file.getFileName().toString();
        String stem = name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
        return file.resolveSibling(stem + "." + word + ".json");
    }

    /**
     * Writes the text to a new file beside the old one, waits until it is on the disk, keeps the old one as
     * {@code NAME.previous.json}, and puts the new one in its place.
     */
    public static void save(Path file, String text) throws IOException {
        Path target = followed(file);
        WholeFile.write(
                target,
                text.getBytes(StandardCharsets.UTF_8),
                Optional.of(previous(target.toAbsolutePath())),
                Optional.empty());
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
