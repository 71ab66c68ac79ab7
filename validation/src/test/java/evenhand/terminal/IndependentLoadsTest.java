package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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

/** Holds {@code loads --json} against an independent program: what acts, every end of every member, mounts. */
class IndependentLoadsTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String EXPECTED = ".expected.json";
    private static final String LOADED = ".loaded";

    /** What tells the items of a list apart, in this order; none where a list is of numbers. */
    private static final List<List<String>> KEYS = List.of(
            List.of("case", "hand"),
            List.of("end"),
            List.of("on", "what"),
            List.of("member"),
            List.of("mount"),
            List.of("name"));

    @TestFactory
    Stream<DynamicTest> everyFigureAgreesWithTheIndependentProgram() throws IOException {
        Path folder = IndependentAnswersTest.folder().resolve("loads");
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.getFileName().toString().endsWith(EXPECTED))
                    .sorted()
                    .toList();
        }
        assertThat(files).hasSizeGreaterThanOrEqualTo(10);
        return files.stream()
                .map(file -> DynamicTest.dynamicTest(
                        file.getFileName().toString(),
                        () -> compare("", JSON.readTree(file.toFile()), loads(folder, file))));
    }

    private static JsonNode loads(Path folder, Path file) throws IOException {
        String name = file.getFileName().toString().replace(EXPECTED, "");
        boolean loaded = name.endsWith(LOADED);
        String car = folder.resolve((loaded ? name.replace(LOADED, "") : name) + ".json")
                .toString();
        List<String> words = new ArrayList<>(List.of("loads", car, "--json"));
        if (loaded) {
            words.addAll(List.of("--load", "Two behind and luggage"));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Evenhand.run(Console.of(out, err, false, Map.of()), words.toArray(String[]::new));
        assertThat(out.size()).as(err.toString(StandardCharsets.UTF_8)).isPositive();
        return JSON.readTree(out.toString(StandardCharsets.UTF_8));
    }

    /** Every leaf that the independent program gives must be in our answer, and agree. */
    private static void compare(String path, JsonNode expected, JsonNode actual) {
        assertThat(actual).as(path).isNotNull();
        if (path.matches(".*/(front|rear)\\.(spring|damper)\\w+/ends/top/at_m")) {
            return; // where a spring that is known by coefficients ends on the body nobody says
        }
        if (expected.isObject()) {
            expected.fieldNames()
                    .forEachRemaining(key -> compare(path + "/" + key, expected.get(key), actual.get(key)));
        } else if (expected.isArray()) {
            for (int i = 0; i < expected.size(); i++) {
                JsonNode one = expected.get(i);
                compare(path + "/" + named(one, i), one, one.isObject() ? like(path, one, actual) : actual.get(i));
            }
        } else if (expected.isNumber()) {
            assertThat(actual.asDouble())
                    .as(path)
                    .isCloseTo(expected.asDouble(), within(tolerance(path, expected.asDouble())));
        } else {
            assertThat(actual).as(path).isEqualTo(expected);
        }
    }

    private static List<String> keys(JsonNode one) {
        return KEYS.stream().filter(keys -> one.has(keys.get(0))).findFirst().orElseThrow();
    }

    private static String named(JsonNode one, int index) {
        return one.isObject()
                ? one.path(keys(one).get(0)).asText() + one.path("hand").asText()
                : String.valueOf(index);
    }

    private static JsonNode like(String path, JsonNode one, JsonNode all) {
        List<String> keys = keys(one);
        for (JsonNode other : all) {
            if (keys.stream().allMatch(key -> one.path(key).equals(other.path(key)))) {
                return other;
            }
        }
        throw new AssertionError(path + ": no " + named(one, 0) + " in the answer");
    }

    /** Forces to 2e-6 of 10 kN, as the equations' text asks of two programs that follow it. */
    private static double tolerance(String path, double value) {
        String leaf = path.replaceAll("/\\d+$", "");
        if (leaf.endsWith("_N") || leaf.endsWith("_Nm")) {
            return 0.02;
        }
        if (leaf.endsWith("_m")) {
            return 2e-7;
        }
        if (leaf.endsWith("_deg")) {
            return 1e-5;
        }
        return leaf.endsWith("_Pa") ? 200 + 2e-6 * Math.abs(value) : 2e-6 * Math.max(1, Math.abs(value));
    }
}
