package evenhand.scenario;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Saves a scenario so that a crash leaves the old file or the new one, never half of either; and tells whether somebody else has
 * written a file since it was read.
 */
public final class ScenarioFile {
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
        write(file, text, true);
    }

    /** The same for a file of which no earlier version is kept. */
    public static void replace(Path file, String text) throws IOException {
        write(file, text, false);
    }

    private static void write(Path file, String text, boolean keep) throws IOException {
        Path target = Files.isSymbolicLink(file) ? file.toRealPath() : file.toAbsolutePath();
        Path fresh = Files.createTempFile(target.getParent(), "." + target.getFileName(), ".new");
        try {
            write(fresh, text.getBytes(StandardCharsets.UTF_8));
            if (Files.exists(target)) {
                keepPermissions(target, fresh);
                if (keep) {
                    Files.copy(target, previous(target), StandardCopyOption.REPLACE_EXISTING);
                }
            }
            move(fresh, target);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        try {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        } catch (UnsupportedOperationException otherSystem) {
            // There are no such permissions here to be kept.
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException otherDisk) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
