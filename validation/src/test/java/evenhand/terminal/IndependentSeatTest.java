package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Holds what {@code ride} and {@code bump} say of the seat against the answers of an independent program. */
class IndependentSeatTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Six figures are given. */
    private static final double ROAD = 1e-6;

    /** What integration leaves in a peak over something sharp. */
    private static final double PEAK = 2e-5;

    @TestFactory
    Stream<DynamicTest> whatIsFeltAtTheSeatAgreesWithTheIndependentProgram() throws IOException {
        Path folder = folder();
        CsvSchema schema = CsvSchema.emptySchema().withHeader().withComments();
        List<Map<String, String>> rows;
        try (var read = new CsvMapper()
                .readerForMapOf(String.class)
                .with(schema)
                .<Map<String, String>>readValues(folder.resolve("expected.csv").toFile())) {
            rows = read.readAll();
        }
        assertThat(rows).hasSize(20);
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.get("car") + ", " + row.get("setup") + ", " + row.get("event"),
                        () -> compare(folder, row)));
    }

    private static void compare(Path folder, Map<String, String> row) throws IOException {
        String file = folder.resolve(row.get("car") + ".json").toString();
        String speed = row.get("speed") + " km/h";
        double expected = Double.parseDouble(row.get("acceleration"));
        boolean onRoad = row.get("event").isEmpty();
        JsonNode answer = onRoad
                ? asked("ride", file, "--setup", row.get("setup"), "--speed", speed)
                : asked("bump", file, "--setup", row.get("setup"), "--speed", speed, "--over", row.get("event"));
        JsonNode setup = answer.get("setups").get(0);
        double is = onRoad
                ? setup.at("/road/seat/weightedAcceleration_rms_m_per_s2").asDouble()
                : setup.at("/seat/peakAcceleration_m_per_s2").asDouble();
        assertThat(is).isCloseTo(expected, within((onRoad ? ROAD : PEAK) * expected));
    }

    private static JsonNode asked(String... words) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] all = Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new);
        Status status = Evenhand.run(Console.of(out, err, false, Map.of()), all);
        assertThat(status).as(err.toString(StandardCharsets.UTF_8)).isEqualTo(Status.DONE);
        return JSON.readTree(out.toByteArray());
    }

    private static Path folder() {
        Path inside = Path.of("independent", "seat").toAbsolutePath();
        return Files.isDirectory(inside)
                ? inside
                : Path.of("validation").resolve("independent").resolve("seat");
    }
}
