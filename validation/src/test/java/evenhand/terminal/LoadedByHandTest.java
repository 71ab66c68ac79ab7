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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * A car under a load against the same car settled by an independent program, which wrote its masses, heights, gaps, spring
 * lengths and camber into a set-up "..., with LOAD by hand".
 */
class LoadedByHandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String FILE = folder().resolve("larkspur-loaded.json").toString();

    @TestFactory
    Stream<DynamicTest> aLoadAnswersLikeTheCarSettledByHand() throws IOException {
        JsonNode byHand = balance();
        List<DynamicTest> tests = new ArrayList<>();
        for (JsonNode load : JSON.readTree(Path.of(FILE).toFile()).get("loadCases")) {
            String name = load.get("name").asText();
            for (JsonNode setup : balance("--load", name).get("setups")) {
                String twin = setup.get("name").asText() + ", with " + name + " by hand";
                for (JsonNode hand : byHand.get("setups")) {
                    if (hand.get("name").asText().equals(twin)) {
                        tests.add(DynamicTest.dynamicTest(twin, () -> {
                            for (String part : List.of("handSums", "paces", "limit", "events")) {
                                compare(part, hand.get(part), setup.get(part));
                            }
                        }));
                    }
                }
            }
        }
        assertThat(tests).hasSize(9);
        return tests.stream();
    }

    private static void compare(String path, JsonNode hand, JsonNode loaded) {
        assertThat(loaded).as(path).isNotNull();
        assertThat(loaded.size()).as(path).isEqualTo(hand.size());
        if (hand.isObject()) {
            for (Iterator<String> keys = hand.fieldNames(); keys.hasNext(); ) {
                String key = keys.next();
                compare(path + "/" + key, hand.get(key), loaded.get(key));
            }
        } else if (hand.isArray()) {
            for (int i = 0; i < hand.size(); i++) {
                compare(path + "/" + i, hand.get(i), loaded.get(i));
            }
        } else if (hand.isNumber()) {
            // The events are found to 1e-7 g; everything else is the same sum of the same numbers.
            double value = hand.asDouble();
            assertThat(loaded.asDouble()).as(path).isCloseTo(value, within(1e-6 * Math.max(1e-3, Math.abs(value))));
        } else {
            assertThat(loaded).as(path).isEqualTo(hand);
        }
    }

    private static Path folder() {
        Path root = Path.of("").toAbsolutePath();
        return Path.of(root.endsWith("validation") ? "independent" : "validation/independent");
    }

    private static JsonNode balance(String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of("balance", FILE, "--json"));
        args.addAll(List.of(more));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Status status = Evenhand.run(Console.of(out, err, false, Map.of()), args.toArray(String[]::new));
        assertThat(status).as(err.toString(StandardCharsets.UTF_8)).isEqualTo(Status.DONE);
        return JSON.readTree(out.toString(StandardCharsets.UTF_8));
    }
}
