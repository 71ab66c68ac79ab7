package evenhand.window.desk;

import evenhand.scenario.ScenarioFile;
import evenhand.words.Units;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the window remembers from one time to the next: recent files, units and theme. It is a convenience: a folder that cannot
 * be read or written is one in which nothing is remembered, and no error.
 */
public final class Memory {
    private static final int MOST_RECENT = 12;

    private final Path recentFile;
    private final Path lookFile;

    public Memory(Path folder) {
        recentFile = folder.resolve("recent.txt");
        lookFile = folder.resolve("look.txt");
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

    /** Units and theme as they were last chosen, or with the units that are wanted. */
    public Look look(String question, Optional<Units> wanted) {
        List<String> lines = lines(lookFile);
        return Look.at(
                question,
                wanted.orElse(lines.contains("units imperial") ? Units.IMPERIAL : Units.METRIC),
                lines.contains("theme dark"));
    }

    public void remember(Look look) {
        write(
                lookFile,
                List.of(
                        "units " + (look.units() == Units.IMPERIAL ? "imperial" : "metric"),
                        "theme " + (look.dark() ? "dark" : "light")));
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
