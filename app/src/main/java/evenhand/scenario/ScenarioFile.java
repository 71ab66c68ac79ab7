package evenhand.scenario;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
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
        write(file, text, true);
    }

    /** The same for a file of which no earlier version is kept. */
    public static void replace(Path file, String text) throws IOException {
        write(file, text, false);
    }

    /**
     * Changes what stands in a file now, whoever wrote it. Where somebody else writes it meanwhile, his text is read again and changed,
     * so that nothing of it is lost. Else as {@link #save}.
     *
     * @param change of the text; what it throws leaves the file as it is
     */
    public static void change(Path file, UnaryOperator<String> change) throws IOException {
        for (int go = 0; go < MOST_GOES; go++) {
            String now = Files.readString(file, StandardCharsets.UTF_8);
            if (write(file, change.apply(now), true, Optional.of(now))) {
                return;
            }
        }
        throw new IOException("somebody else writes it all the time");
    }

    private static void write(Path file, String text, boolean keep) throws IOException {
        write(file, text, keep, Optional.empty());
    }

    /**
     * @param expected what must still stand in the file
     * @return whether it did, and the file was written
     */
    private static boolean write(Path file, String text, boolean keep, Optional<String> expected) throws IOException {
        Path target = Files.isSymbolicLink(file) ? file.toRealPath() : file.toAbsolutePath();
        Path fresh = Files.createTempFile(target.getParent(), "." + target.getFileName(), ".new");
        try {
            write(fresh, text.getBytes(StandardCharsets.UTF_8));
            if (expected.isPresent()
                    && !Files.readString(target, StandardCharsets.UTF_8).equals(expected.get())) {
                return false;
            }
            if (Files.exists(target)) {
                keepPermissions(target, fresh);
                if (keep) {
                    Files.copy(target, previous(target), StandardCopyOption.REPLACE_EXISTING);
                }
            }
            move(fresh, target);
            return true;
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
