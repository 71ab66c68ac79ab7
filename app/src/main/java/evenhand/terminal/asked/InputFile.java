package evenhand.terminal.asked;

import evenhand.scenario.Reading;
import evenhand.scenario.RoadFile;
import evenhand.scenario.RoadReading;
import evenhand.scenario.ScenarioReader;
import evenhand.terminal.page.Console;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;

/** Files by the names that they have on the command line, where one of them may be standard input. */
public final class InputFile {
    /** A file of this very name is {@code ./-}. */
    private static final String STANDARD = "-";

    private InputFile() {}

    public static boolean isStandard(Path file) {
        return isStandard(file.toString());
    }

    static boolean isStandard(String name) {
        return name.equals(STANDARD);
    }

    /** A car and its set-ups. */
    public static Reading scenario(Path file, Console console) {
        return isStandard(file) ? ScenarioReader.read(STANDARD, console.in()) : ScenarioReader.read(file);
    }

    /** A measured road. */
    public static RoadReading road(Path file, Console console) {
        return isStandard(file) ? RoadFile.read(STANDARD, console.in()) : RoadFile.read(file);
    }

    /** That standard input, which is gone once it was read, is named at most once. */
    public static void requireReadable(List<String> names) throws Mistake {
        if (Collections.frequency(names, STANDARD) > 1) {
            throw new Mistake("\"-\": standard input can be read once; name it once");
        }
    }
}
