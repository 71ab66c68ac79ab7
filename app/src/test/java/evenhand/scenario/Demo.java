package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The demo cars. */
public final class Demo {
    private static final Path FOLDER = Path.of("../scenarios");

    private Demo() {}

    /** Names of their files, without ending. */
    public static Stream<String> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files
                    .map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(".json"))
                    .map(file -> file.substring(0, file.length() - ".json".length()))
                    .sorted()
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Scenario read(String name) {
        Reading reading = ScenarioReader.read(FOLDER.resolve(name + ".json"));
        assertThat(reading.problems()).isEmpty();
        return reading.scenario().orElseThrow();
    }
}
