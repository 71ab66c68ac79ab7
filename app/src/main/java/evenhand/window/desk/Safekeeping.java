package evenhand.window.desk;

import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.scenario.ScenarioFile;
import evenhand.scenario.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Keeps unsaved work on the disk, so that it survives a crash. Each window has a file of its own, named after its process; a
 * file whose process is gone was left by a crash.
 */
public final class Safekeeping {
    private static final String ENDING = ".unsaved";
    /** Stood for no file in the form of before: its name on the first line, the text below. */
    private static final String NO_FILE = "-";

    private static final JsonMapper JSON = JsonMapper.builder().build();

    /**
     * What is kept.
     *
     * @param file whose unsaved work it is; empty for none
     * @param text of the scenario
     */
    record Unsaved(String file, String text) {}

    private final Path folder;
    private final ProcessFiles files;

    /** @param process number of this process */
    public Safekeeping(Path folder, long process) {
        this.folder = folder;
        files = new ProcessFiles(folder, ENDING, process);
    }

    /**
     * Unsaved work that a crash left.
     *
     * @param kept where it is kept
     * @param file the file that it belongs to, if it has one
     * @param when it was last changed
     * @param text of the scenario
     */
    public record Left(Path kept, Optional<Path> file, Instant when, String text) {
        /** What its car is called; empty where that cannot be told. */
        public String title() {
            try {
                return JSON.readTree(text).path("title").asText("");
            } catch (IOException broken) {
                return "";
            }
        }
    }

    /** Keeps unsaved work; says why not where it cannot. */
    public Optional<String> keep(Desk desk) {
        String name = desk.filed()
                .path()
                .map(path -> path.toAbsolutePath().toString())
                .orElse("");
        try {
            Files.createDirectories(folder);
            ScenarioFile.replace(
                    files.own(),
                    JSON.writeValueAsString(
                            new Unsaved(name, desk.work().scenario().text())));
            return Optional.empty();
        } catch (IOException full) {
            return Optional.of("unsaved work cannot be kept safe in " + folder + " (" + WholeFile.why(full)
                    + "); save the file soon");
        }
    }

    /** Nothing is unsaved any more. */
    public void drop() {
        ProcessFiles.drop(files.own());
    }

    /** Forgets work that a crash left. */
    public void drop(Left left) {
        ProcessFiles.drop(left.kept());
    }

    /** What crashes left, the latest first. */
    public List<Left> left() {
        List<Path> sorted = new ArrayList<>(files.others(false));
        sorted.sort((one, other) ->
                Long.compare(other.toFile().lastModified(), one.toFile().lastModified()));
        return sorted.stream().flatMap(file -> read(file).stream()).toList();
    }

    private static Optional<Left> read(Path kept) {
        try {
            Unsaved unsaved = unsaved(Files.readString(kept, StandardCharsets.UTF_8));
            Optional<Path> file = unsaved.file().isEmpty() ? Optional.empty() : Optional.of(Path.of(unsaved.file()));
            return Optional.of(
                    new Left(kept, file, Files.getLastModifiedTime(kept).toInstant(), unsaved.text()));
        } catch (IOException | java.nio.file.InvalidPathException unreadable) {
            return Optional.empty();
        }
    }

    /** Also of a crash of the version before, which kept no JSON: what was typed is not lost. */
    private static Unsaved unsaved(String all) throws IOException {
        int line = all.indexOf('\n');
        if (all.startsWith("{") || line < 0) {
            return JSON.readValue(all, Unsaved.class);
        }
        String name = all.substring(0, line);
        return new Unsaved(name.equals(NO_FILE) ? "" : name, all.substring(line + 1));
    }
}
