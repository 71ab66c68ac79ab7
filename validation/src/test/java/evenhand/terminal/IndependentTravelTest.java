package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Holds what {@code travel} says against the answers of an independent program, figure by figure. */
class IndependentTravelTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final Set<String> ROWS = Set.of("heave", "roll", "oneWheel", "steer");

    /** What the other program does not say, or says in other words; of a limit without a part it names none. */
    private static final Set<String> OWN_WORDS = Set.of("words", "text", "assumed", "estimated", "warnings", "part");

    private int compared;
    private final List<String> off = new ArrayList<>();

    @TestFactory
    Stream<DynamicTest> whatLinksDoThroughTheTravelAgreesWithTheIndependentProgram() throws IOException {
        List<Path> cars;
        try (Stream<Path> files = Files.list(folder())) {
            cars = files.filter(file -> !file.toString().contains("expected"))
                    .sorted()
                    .toList();
        }
        assertThat(cars).hasSize(19);
        return cars.stream()
                .map(car -> DynamicTest.dynamicTest(
                        car.getFileName().toString(), () -> new IndependentTravelTest().compare(car)));
    }

    private void compare(Path car) throws IOException {
        Path expected = Path.of(car.toString().replace(".json", ".expected.json"));
        object("", asked(car.toString()), JSON.readTree(expected.toFile()));
        assertThat(off).isEmpty();
        assertThat(compared).isGreaterThan(200);
    }

    private void object(String path, JsonNode is, JsonNode wanted) {
        wanted.fieldNames().forEachRemaining(key -> {
            if (!is.has(key)) {
                off.add(path + "/" + key + " is missing");
            }
        });
        is.fieldNames().forEachRemaining(key -> {
            boolean empty = is.get(key).isArray() && is.get(key).isEmpty();
            if (!wanted.has(key) && !OWN_WORDS.contains(key) && !empty) {
                off.add(path + "/" + key + " is not expected");
            }
        });
        wanted.fieldNames().forEachRemaining(key -> {
            if (is.has(key) && !OWN_WORDS.contains(key)) {
                value(path + "/" + key, key, is.get(key), wanted.get(key), wanted);
            }
        });
    }

    private void value(String path, String key, JsonNode is, JsonNode wanted, JsonNode around) {
        if (wanted.isObject()) {
            object(path, is, wanted);
        } else if (wanted.isArray()) {
            list(path, key, is, wanted, around);
        } else if (wanted.isNumber()) {
            compared++;
            double error = Math.abs(is.asDouble() - wanted.asDouble());
            if (!(error <= tolerance(path, key, wanted.asDouble(), around))) {
                off.add(path + " is " + is + ", expected " + wanted);
            }
        } else if (!is.equals(wanted)) {
            off.add(path + " is " + is + ", expected " + wanted);
        }
    }

    /** Rows are found by their place, for not all were kept; limits, set-ups and gaps by their names; all else in order. */
    private void list(String path, String key, JsonNode is, JsonNode wanted, JsonNode around) {
        boolean rows = ROWS.contains(key);
        if (!rows && is.size() != wanted.size()) {
            off.add(path + " has " + is.size() + ", expected " + wanted.size());
            return;
        }
        for (int i = 0; i < wanted.size(); i++) {
            JsonNode one = wanted.get(i);
            String name = name(key, one);
            JsonNode found = one.isObject() ? null : is.get(i);
            for (JsonNode candidate : is) {
                if (one.isObject() && name(key, candidate).equals(name)) {
                    found = candidate;
                }
            }
            if (found == null) {
                off.add(path + "[" + name + "] is missing");
            } else {
                value(path + "[" + name + "]", key, found, one, around);
            }
        }
    }

    private static String name(String key, JsonNode one) {
        if (ROWS.contains(key)) {
            return String.format(
                    Locale.ROOT,
                    "%d %d %d",
                    Math.round(one.get("leftTravel_m").asDouble() * 1e6),
                    Math.round(one.get("rightTravel_m").asDouble() * 1e6),
                    Math.round(one.path("referenceSteer_deg").asDouble() * 1e4));
        }
        if (key.equals("limits")) {
            String what = one.get("what").asText();
            boolean whole = what.equals("cannotReach") || what.equals("crankOverCentre");
            return one.get("motion").asText() + " " + what
                    + (whole ? "" : " " + one.path("part").asText());
        }
        return one.path("name").asText();
    }

    /**
     * Lengths 1e-7 m, angles 1e-6 deg, ratios 1e-8; places of limits 1e-6 m and 1e-5 deg. What divides by a slope that may be
     * small is allowed as much more as that magnifies.
     */
    private static double tolerance(String path, String key, double wanted, JsonNode around) {
        double size = Math.abs(wanted);
        if (path.contains("/limits")) {
            return key.endsWith("_m") ? 1e-6 : 1e-5;
        }
        if (key.startsWith("bind")) {
            return 1e-3 + 1e-7 * size;
        }
        if (key.equals("swingArm_m") || key.equals("swingCentreHeight_m")) {
            double arm = around.path("swingArm_m").asDouble(1);
            return 1e-7 + 1e-9 * size + 1e-11 * arm * arm;
        }
        if (key.equals("rollCentreOffset_m") || key.equals("rollCentreHeight_m")) {
            double offset = around.path("rollCentreOffset_m").asDouble();
            return 1e-7 * (1 + 100 * offset * offset);
        }
        if (key.equals("residualJointAngle_deg") || key.equals("jointAngles_deg")) {
            return size < 0.05 ? 1e-5 : 1e-6;
        }
        if (key.equals("rollCentrePerBump")) {
            return 1e-7 * Math.max(1, size);
        }
        return key.endsWith("_m") ? 1e-7 : key.endsWith("_deg") ? 1e-6 : 1e-8 * Math.max(1, size);
    }

    private static JsonNode asked(String file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Status status = Evenhand.run(Console.of(out, err, false, Map.of()), "travel", file, "--json");
        assertThat(status).as(err.toString(StandardCharsets.UTF_8)).isEqualTo(Status.DONE);
        return JSON.readTree(out.toByteArray());
    }

    private static Path folder() {
        Path inside = Path.of("independent", "links").toAbsolutePath();
        return Files.isDirectory(inside)
                ? inside
                : Path.of("validation").resolve("independent").resolve("links");
    }
}
