package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Each file in {@code broken/} has the lines beside it that a person is to see. */
class BrokenFilesTest {
    private static final Path FOLDER = Path.of("src/test/resources/broken");

    @TestFactory
    Stream<DynamicTest> everyProblemIsReportedWithItsPlaceAndRemedy() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(FOLDER)) {
            files = all.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
        assertThat(files).hasSizeGreaterThan(30);
        return files.stream()
                .map(file -> dynamicTest(file.getFileName().toString(), () -> {
                    Path expected =
                            file.resolveSibling(file.getFileName().toString().replace(".json", ".expected.txt"));
                    assertThat(lines(file)).containsExactlyElementsOf(Files.readAllLines(expected));
                }));
    }

    private static List<String> lines(Path file) {
        Reading reading = ScenarioReader.read(file);
        assertThat(reading.scenario()).isEmpty();
        return reading.problems().stream()
                .map(problem -> problem.toString().replace(FOLDER.getParent() + "/", ""))
                .toList();
    }
}
