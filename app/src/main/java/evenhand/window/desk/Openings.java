package evenhand.window.desk;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * Which file each window of a person has open. It locks nothing: it tells that there are two, and saving looks at the file
 * itself. A folder that cannot be read or written is one in which no other window is known.
 */
public final class Openings {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final ProcessFiles files;

    /** @param since when it was opened, s since 1970 */
    record Held(String file, long since) {}

    /** @param process number of this process */
    public Openings(Path folder, long process) {
        files = new ProcessFiles(folder, ".open", process);
    }

    /** This window has another file open now, or none. */
    public void hold(Optional<Path> file, Instant now) {
        if (file.isEmpty()) {
            close();
            return;
        }
        try {
            Files.createDirectories(files.folder());
            Held held = new Held(file.get().toAbsolutePath().normalize().toString(), now.getEpochSecond());
            Files.writeString(files.own(), JSON.writeValueAsString(held), StandardCharsets.UTF_8);
        } catch (IOException unknown) {
            // Said in the description of this class.
        }
    }

    /** Since when another window has a file open; nothing where none has. */
    public Optional<Instant> elsewhere(Path file) {
        files.others(false).forEach(ProcessFiles::drop);
        return files.others(true).stream()
                .flatMap(other -> read(other).stream())
                .filter(held -> Drawer.isSame(Path.of(held.file()), file))
                .map(held -> Instant.ofEpochSecond(held.since()))
                .min(Instant::compareTo);
    }

    private static Optional<Held> read(Path other) {
        try {
            return Optional.of(JSON.readValue(Files.readString(other, StandardCharsets.UTF_8), Held.class));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /** This window has no file open any more. */
    public void close() {
        ProcessFiles.drop(files.own());
    }
}
