package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Holds every figure of {@code balance --json} against the answers of an independent program. */
class IndependentAnswersTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String EXPECTED = ".expected.json";

    /** Begins the path of figures of cars whose links are given by points. */
    static final String LINKED = "/linked";

    @TestFactory
    Stream<DynamicTest> everyFigureAgreesWithTheIndependentProgram() throws IOException {
        Path folder = folder();
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.getFileName().toString().endsWith(EXPECTED))
                    .sorted()
                    .toList();
        }
        assertThat(files).hasSizeGreaterThanOrEqualTo(20);
        List<DynamicTest> tests = new ArrayList<>();
        for (Path file : files) {
            String name = file.getFileName().toString().replace(EXPECTED, "");
            List<String> asked = List.of(name.split("\\.", -1)); // car, turn, and the radius where it is not 40 m
            Path car = folder.resolve(asked.get(0) + ".json");
            String radius = asked.size() > 2 ? asked.get(2).replace("m", " m") : "40 m";
            JsonNode ours = JSON.readTree(balance(car.toString(), asked.get(1), radius));
            for (JsonNode setup : JSON.readTree(file.toFile()).get("setups")) {
                String setupName = setup.get("name").asText();
                tests.add(DynamicTest.dynamicTest(
                        name + ", " + setupName, () -> compare("", setup, named(ours, setupName))));
            }
        }
        return tests.stream();
    }

    static Path folder() {
        Path root = Path.of("").toAbsolutePath();
        return Files.isDirectory(root.resolve("independent"))
                ? root.resolve("independent")
                : root.resolve("validation").resolve("independent");
    }

    static String balance(String file, String turn, String radius, String... more) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] words = Stream.concat(
                        Stream.of("balance", file, "--json", "--turn", turn, "--radius", radius), Stream.of(more))
                .toArray(String[]::new);
        Status status = Evenhand.run(Console.of(out, err, false, Map.of()), words);
        assertThat(status).as(err.toString(StandardCharsets.UTF_8)).isEqualTo(Status.DONE);
        return out.toString(StandardCharsets.UTF_8);
    }

    static JsonNode named(JsonNode answer, String name) {
        for (JsonNode setup : answer.get("setups")) {
            if (setup.get("name").asText().equals(name)) {
                return setup;
            }
        }
        throw new AssertionError("no set-up \"" + name + "\" in the answer");
    }

    /** Every leaf that the independent program gives must be in our answer, and agree. */
    static void compare(String path, JsonNode expected, JsonNode actual) {
        assertThat(actual).as(path).isNotNull();
        if (expected.isObject()) {
            expected.fieldNames()
                    .forEachRemaining(key -> compare(path + "/" + key, expected.get(key), actual.get(key)));
        } else if (expected.isArray()) {
            assertThat(actual.size()).as(path).isEqualTo(expected.size());
            for (int i = 0; i < expected.size(); i++) {
                compare(path + "/" + i, expected.get(i), actual.get(i));
            }
        } else if (expected.isNumber()) {
            assertThat(actual.asDouble())
                    .as(path)
                    .isCloseTo(expected.asDouble(), within(tolerance(path, expected.asDouble())));
        } else {
            assertThat(actual).as(path).isEqualTo(expected);
        }
    }

    /** What the equations' text asks of two programs that follow it. */
    private static double tolerance(String path, double value) {
        if (path.contains("/events/")) {
            return 1e-5;
        }
        if (path.endsWith("/hold")) {
            return path.startsWith(LINKED) ? 1e-7 : 1e-8; // links are kept to 1e-9, and the hold takes their slopes
        }
        if (path.endsWith("_per_g") || path.contains("Budget")) {
            return path.contains("deg") ? 1e-6 * (1 + Math.abs(value)) : 2e-6 * (1 + Math.abs(value));
        }
        if (path.contains("/limit/")) {
            return 2e-6;
        }
        double scale = path.endsWith("_N") || path.endsWith("_Nm") ? 4_000 : path.endsWith("_deg") ? 5 : 1;
        return 2e-6 * Math.max(scale, Math.abs(value));
    }
}
