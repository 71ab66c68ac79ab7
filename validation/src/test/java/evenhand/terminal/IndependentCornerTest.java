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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Holds what {@code bump --pace} says of each wheel in mid-corner against the answers of an independent program. */
class IndependentCornerTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final double MM = 1e-3;

    @TestFactory
    Stream<DynamicTest> everyWheelInMidCornerAgreesWithTheIndependentProgram() throws IOException {
        List<Map<String, String>> rows;
        try (var read = new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader().withComments())
                .<Map<String, String>>readValues(
                        folder("corner").resolve("expected.csv").toFile())) {
            rows = read.readAll();
        }
        assertThat(rows).hasSize(40);
        Map<List<String>, JsonNode> answers = new LinkedHashMap<>();
        for (Map<String, String> row : rows) {
            List<String> words = words(row);
            if (!answers.containsKey(words)) {
                answers.put(words, asked(words).get("setups").get(0));
            }
        }
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.get("car") + ", " + row.get("setup") + ", " + row.get("event") + ", " + row.get("turn")
                                + ", " + row.get("wheel"),
                        () -> compare(answers.get(words(row)).get(row.get("wheel")), row)));
    }

    private static List<String> words(Map<String, String> row) {
        String car = row.get("car");
        Path own = folder("corner").resolve(car + ".json");
        Path file = Files.exists(own) ? own : folder("seat").resolve(car + ".json");
        return List.of(
                "bump",
                file.toString(),
                "--setup",
                row.get("setup"),
                "--over",
                row.get("event"),
                "--speed",
                row.get("speed") + " km/h",
                "--pace",
                row.get("pace") + " g",
                "--turn",
                row.get("turn"),
                "--json");
    }

    private static void compare(JsonNode wheel, Map<String, String> row) {
        double load = given(row, "load");
        // a step lifts the road at once, and the load with it
        if (!row.get("event").startsWith("step")) {
            assertThat(first(wheel, "tyreLoad_N")).as("load").isCloseTo(load, within(1e-7 * load));
        }
        assertThat(first(wheel, "travel_m")).as("travel").isCloseTo(given(row, "travel") * MM, within(1e-10));
        double jolt = given(row, "jolt");
        assertThat(number(wheel, "peakBodyAcceleration_m_per_s2")).as("jolt").isCloseTo(jolt, within(1e-5 * jolt));
        assertThat(number(wheel, "peakBumpTravel_m")).as("bump").isCloseTo(given(row, "bump") * MM, within(1e-8));
        assertThat(number(wheel, "peakDroopTravel_m")).as("droop").isCloseTo(given(row, "droop") * MM, within(1e-8));
        assertThat(number(wheel, "leastTyreLoad_N")).as("least").isCloseTo(given(row, "least"), within(1e-6 * load));
        assertThat(number(wheel, "timeOffGround_s")).as("off").isCloseTo(given(row, "off") * MM, within(1e-7));
        assertThat(number(wheel, "gripLost")).as("grip").isCloseTo(given(row, "grip") / 100, within(1e-6));
    }

    private static double given(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static double number(JsonNode wheel, String key) {
        return wheel.get(key).asDouble();
    }

    private static double first(JsonNode wheel, String column) {
        return wheel.get("series").get(column).get(0).asDouble();
    }

    private static JsonNode asked(List<String> words) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Status status = Evenhand.run(Console.of(out, err, false, Map.of()), words.toArray(String[]::new));
        assertThat(status).as(err.toString(StandardCharsets.UTF_8)).isEqualTo(Status.DONE);
        return JSON.readTree(out.toByteArray());
    }

    private static Path folder(String name) {
        Path inside = Path.of("independent", name).toAbsolutePath();
        return Files.isDirectory(inside)
                ? inside
                : Path.of("validation").resolve("independent").resolve(name);
    }
}
