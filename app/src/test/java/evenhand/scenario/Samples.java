package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that read well. */
final class Samples {
    static final Path EVERY_KEY = Path.of("src/test/resources/samples/contract.json");

    private Samples() {}

    static String text() {
        try {
            return Files.readString(EVERY_KEY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Scenario read(String text) {
        Reading reading = ScenarioReader.read("x.json", text);
        assertThat(reading.problems()).isEmpty();
        return reading.scenario().orElseThrow();
    }

    static Scenario everyKey() {
        return read(text());
    }
}
