package evenhand.window.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.scenario.ScenarioFile;
import evenhand.words.Units;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the window remembers from one time to the next: recent files, units and theme, how the window is arranged, and
 * which set-ups of a file are kept at the top of the list or put aside. It is a convenience: a folder that cannot
 * be read or written is one in which nothing is remembered, and no error.
 */
public final class Memory {
    private static final int MOST_RECENT = 12;
    private static final int MOST_SHELVED = 500;
    private static final String FOLDED = "folded ";
    private static final String UNFOLDED = "unfolded ";
    private static final String ZOOM = "zoom ";
    private static final String DIFFERENCES = "differences";
    private static final String HIDDEN = "hidden";
    private static final String PINNED = "pinned";

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Path recentFile;

    /** Names alone, of the version before. */
    private final Path namesFile;

    private final Path lookFile;
    private final Path shelfFile;

    public Memory(Path folder) {
        recentFile = folder.resolve("recent.json");
        namesFile = folder.resolve("recent.txt");
        lookFile = folder.resolve("look.txt");
        shelfFile = folder.resolve("set-ups.txt");
    }

    /** What has become of a file since it was last open here. */
    public enum Since {
        SAME,
        CHANGED,
        GONE
    }

    /**
     * A file that was open here.
     *
     * @param title of its car; empty where it is not known
     * @param when it was last open
     * @param verdict on its car when it was last answered; empty where it never was
     * @param stamp by which another version of it is told
     */
    public record Recent(Path file, String title, Optional<Instant> when, String verdict, String stamp) {
        /** What has become of it. */
        public Since since() {
            String now = Memory.stamp(file);
            return now.isEmpty() ? Since.GONE : stamp.isEmpty() || now.equals(stamp) ? Since.SAME : Since.CHANGED;
        }
    }

    /** A line of the file of recent files. */
    record Line(String file, String title, long when, String verdict, String stamp) {}

    /** Files opened or saved, the latest first; those that are gone are left out. */
    public List<Path> recent() {
        return remembered().stream()
                .map(Recent::file)
                .filter(Files::isRegularFile)
                .toList();
    }

    /** The same with what is remembered of them, and with those that are gone. */
    public synchronized List<Recent> remembered() {
        List<Recent> known = new ArrayList<>();
        for (Line line : recentLines()) {
            try {
                known.add(new Recent(
                        Path.of(line.file()),
                        line.title(),
                        line.when() == 0 ? Optional.empty() : Optional.of(Instant.ofEpochSecond(line.when())),
                        line.verdict(),
                        line.stamp()));
            } catch (java.nio.file.InvalidPathException foreign) {
                // A line of another system names no file here.
            }
        }
        return List.copyOf(known);
    }

    private List<Line> recentLines() {
        try {
            return List.of(JSON.readValue(Files.readString(recentFile, StandardCharsets.UTF_8), Line[].class));
        } catch (IOException none) {
            return lines(namesFile).stream()
                    .filter(name -> !name.isBlank())
                    .map(name -> new Line(name, "", 0, "", ""))
                    .toList();
        }
    }

    /** A file was opened or saved; its verdict is still the one of before. */
    public synchronized void opened(Path file, String title, Instant now) {
        Path whole = whole(file);
        String verdict = remembered().stream()
                .filter(other -> other.file().equals(whole))
                .map(Recent::verdict)
                .findFirst()
                .orElse("");
        answered(file, title, verdict, now);
    }

    /** The car of a file was answered as it stands there. */
    public synchronized void answered(Path file, String title, String verdict, Instant now) {
        Path whole = whole(file);
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(whole.toString(), title, now.getEpochSecond(), verdict, stamp(whole)));
        recentLines().stream()
                .filter(other -> !other.file().equals(whole.toString()))
                .limit(MOST_RECENT - 1)
                .forEach(lines::add);
        try {
            write(recentFile, JSON.writeValueAsString(lines));
        } catch (JsonProcessingException nothingIsRemembered) {
            // Said in the description of this class.
        }
    }

    /** One more line of the list is no longer wanted. */
    public synchronized void forget(Path file) {
        try {
            write(
                    recentFile,
                    JSON.writeValueAsString(recentLines().stream()
                            .filter(other -> !other.file().equals(whole(file).toString()))
                            .toList()));
        } catch (JsonProcessingException nothingIsForgotten) {
            // Said in the description of this class.
        }
    }

    private static Path whole(Path file) {
        return file.toAbsolutePath().normalize();
    }

    /** Length and last change of a file; empty where there is none. */
    private static String stamp(Path file) {
        try {
            return Files.isRegularFile(file)
                    ? Files.size(file) + " " + Files.getLastModifiedTime(file).toMillis()
                    : "";
        } catch (IOException | SecurityException unreadable) {
            return "";
        }
    }

    /** Units, theme and arrangement as they were last chosen, or with the units that are wanted. */
    public Look look(String question, Optional<Units> wanted) {
        List<String> lines = lines(lookFile);
        Look look = Look.at(
                question,
                wanted.orElse(lines.contains("units imperial") ? Units.IMPERIAL : Units.METRIC),
                lines.contains("theme dark"));
        Map<String, Boolean> folded = new HashMap<>();
        int zoom = Arrangement.USUAL.zoom();
        for (String line : lines) {
            if (line.startsWith(FOLDED)) {
                folded.put(line.substring(FOLDED.length()), true);
            } else if (line.startsWith(UNFOLDED)) {
                folded.put(line.substring(UNFOLDED.length()), false);
            } else if (line.matches(ZOOM + "\\d{1,4}")) {
                zoom = Integer.parseInt(line.substring(ZOOM.length()));
            }
        }
        return look.with(new Arrangement(zoom, folded, lines.contains(DIFFERENCES)));
    }

    public void remember(Look look) {
        Arrangement arrangement = look.arrangement();
        List<String> lines = new ArrayList<>(List.of(
                "units " + (look.units() == Units.IMPERIAL ? "imperial" : "metric"),
                "theme " + (look.dark() ? "dark" : "light"),
                ZOOM + arrangement.zoom()));
        if (arrangement.differences()) {
            lines.add(DIFFERENCES);
        }
        arrangement.folded().forEach((part, folded) -> lines.add((folded ? FOLDED : UNFOLDED) + part));
        write(lookFile, String.join("\n", lines) + "\n");
    }

    /** Which set-ups of a file are kept at the top of the list, and which are put aside. */
    public Shelf shelf(Path file) {
        String whole = whole(file).toString();
        Set<String> hidden = new HashSet<>();
        Set<String> pinned = new HashSet<>();
        for (String line : lines(shelfFile)) {
            String[] parts = line.split("\t", 3);
            if (parts.length == 3 && parts[2].equals(whole)) {
                (parts[0].equals(PINNED) ? pinned : hidden).add(parts[1]);
            }
        }
        return new Shelf(hidden, pinned);
    }

    public void remember(Path file, Shelf shelf) {
        String whole = whole(file).toString();
        List<String> own = new ArrayList<>();
        shelf.hidden().forEach(name -> own.add(String.join("\t", HIDDEN, name, whole)));
        shelf.pinned().forEach(name -> own.add(String.join("\t", PINNED, name, whole)));
        lines(shelfFile).stream()
                .filter(line -> !line.endsWith("\t" + whole))
                .limit(MOST_SHELVED)
                .forEach(own::add);
        write(shelfFile, String.join("\n", own) + "\n");
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException nothing) {
            return List.of();
        }
    }

    private static void write(Path file, String text) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ScenarioFile.replace(file, text);
        } catch (IOException nothingIsRemembered) {
            // Said in the description of this class.
        }
    }
}
