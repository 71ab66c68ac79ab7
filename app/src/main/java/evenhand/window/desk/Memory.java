package evenhand.window.desk;

import evenhand.scenario.ScenarioFile;
import evenhand.words.Units;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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

    private final Path recentFile;
    private final Path lookFile;
    private final Path shelfFile;

    public Memory(Path folder) {
        recentFile = folder.resolve("recent.txt");
        lookFile = folder.resolve("look.txt");
        shelfFile = folder.resolve("set-ups.txt");
    }

    /** Files opened or saved, the latest first; those that are gone are left out. */
    public List<Path> recent() {
        List<Path> files = new ArrayList<>();
        for (String line : lines(recentFile)) {
            try {
                Path file = Path.of(line);
                if (!line.isBlank() && Files.isRegularFile(file)) {
                    files.add(file);
                }
            } catch (java.nio.file.InvalidPathException foreign) {
                // A line of another system names no file here.
            }
        }
        return List.copyOf(files);
    }

    public void opened(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        List<String> lines = new ArrayList<>(List.of(whole.toString()));
        recent().stream()
                .filter(other -> !other.equals(whole))
                .limit(MOST_RECENT - 1)
                .forEach(other -> lines.add(other.toString()));
        write(recentFile, lines);
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
        write(lookFile, lines);
    }

    /** Which set-ups of a file are kept at the top of the list, and which are put aside. */
    public Shelf shelf(Path file) {
        String whole = whole(file);
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
        String whole = whole(file);
        List<String> own = new ArrayList<>();
        shelf.hidden().forEach(name -> own.add(String.join("\t", HIDDEN, name, whole)));
        shelf.pinned().forEach(name -> own.add(String.join("\t", PINNED, name, whole)));
        lines(shelfFile).stream()
                .filter(line -> !line.endsWith("\t" + whole))
                .limit(MOST_SHELVED)
                .forEach(own::add);
        write(shelfFile, own);
    }

    private static String whole(Path file) {
        return file.toAbsolutePath().normalize().toString();
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException nothing) {
            return List.of();
        }
    }

    private static void write(Path file, List<String> lines) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ScenarioFile.replace(file, String.join("\n", lines) + "\n");
        } catch (IOException nothingIsRemembered) {
            // Said in the description of this class.
        }
    }
}
