package evenhand.window.desk;

import evenhand.scenario.Problem;
import evenhand.scenario.Reading;
import evenhand.scenario.ScenarioFile;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.List;
import java.util.Optional;

/** Opens and saves scenarios. What goes wrong is said in words, each with what to do. */
public final class Drawer {
    private static final int LINES = 12;

    private Drawer() {}

    /** What came of opening. */
    public sealed interface Opened {
        record Sound(Work work, Filed filed) implements Opened {}

        /** The problems, a line each. */
        record Broken(List<String> problems) implements Opened {}
    }

    public static Opened open(Path file) {
        return opened(ScenarioReader.read(file), Optional.of(file));
    }

    /** Opens a text as if it stood in a file; its work is unsaved unless the file has the same text. */
    public static Opened open(String text, Optional<Path> file) {
        Opened opened = opened(ScenarioReader.read(file.map(Path::toString).orElse("unsaved"), text), file);
        return opened instanceof Opened.Sound sound
                ? new Opened.Sound(sound.work(), new Filed(file, file.flatMap(Drawer::text)))
                : opened;
    }

    private static Opened opened(Reading reading, Optional<Path> file) {
        if (reading.scenario().isPresent()) {
            String text = reading.scenario().get().text();
            return new Opened.Sound(Work.on(reading.scenario().get()), new Filed(file, Optional.of(text)));
        }
        List<String> lines =
                reading.problems().stream().limit(LINES).map(Problem::toString).toList();
        return new Opened.Broken(lines);
    }

    /** Saves; says why not where it cannot, and then the old file is as it was. */
    public static Optional<String> save(Desk desk, Path file) {
        try {
            ScenarioFile.save(file, desk.work().scenario().text());
            return Optional.empty();
        } catch (IOException | ReadOnlyFileSystemException | SecurityException cannot) {
            return Optional.of("cannot save " + file + ": " + WholeFile.why(cannot)
                    + ". Nothing is lost: it is all still here; save it under another name or elsewhere.");
        }
    }

    /** What has become of a file since it was read or saved here; of what was never in one, nothing. */
    public static ScenarioFile.Since outside(Filed filed) {
        return filed.path().isPresent() && filed.text().isPresent()
                ? ScenarioFile.since(filed.path().get(), filed.text().get())
                : ScenarioFile.Since.SAME;
    }

    /** Whether both names lead to one file. */
    public static boolean isSame(Path one, Path other) {
        try {
            return one.toAbsolutePath()
                            .normalize()
                            .equals(other.toAbsolutePath().normalize())
                    || Files.isSameFile(one, other);
        } catch (IOException notThere) {
            return false;
        }
    }

    /** Keeps what stands in a file under another name beside it; where, or why not. */
    public static Kept keepTheirs(Path file) {
        Path copy = ScenarioFile.free(file, "theirs");
        try {
            Files.copy(file, copy);
            return new Kept.In(copy);
        } catch (IOException | ReadOnlyFileSystemException | SecurityException cannot) {
            return notKept(copy, cannot);
        }
    }

    /** Keeps the work on the desk under another name beside a file; where, or why not. */
    public static Kept keepMine(Desk desk, Path file) {
        Path copy = ScenarioFile.free(file, "mine");
        try {
            ScenarioFile.replace(copy, desk.work().scenario().text());
            return new Kept.In(copy);
        } catch (IOException | ReadOnlyFileSystemException | SecurityException cannot) {
            return notKept(copy, cannot);
        }
    }

    private static Kept notKept(Path copy, Exception cannot) {
        return new Kept.Nowhere(
                "cannot keep the other version in " + copy + ": " + WholeFile.why(cannot) + ". Nothing was changed.");
    }

    /** What came of keeping a version. */
    public sealed interface Kept {
        record In(Path file) implements Kept {}

        record Nowhere(String why) implements Kept {}
    }

    private static Optional<String> text(Path file) {
        try {
            return Optional.of(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }
}
