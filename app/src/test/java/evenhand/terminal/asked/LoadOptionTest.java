package evenhand.terminal.asked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.terminal.Run;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LoadOptionTest {
    private static final String LOADS = """
              "loadCases": [
                {"name": "Two behind", "added": [
                  {"what": "two behind", "mass": "150 kg", "behindFrontAxle": "1750 mm", "height": "620 mm"}]},
                {"name": "Nobody", "added": []},
                {"name": "Anvil on the tow bar", "added": [
                  {"what": "anvil", "mass": "900 kg", "behindFrontAxle": "5000 mm", "height": "500 mm"}]}
              ],
              "setups\"""";

    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeTheCar() {
        car = Run.file(folder, "loads.json", Run.CAR.replace("  \"setups\"", LOADS))
                .toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"balance", "compare", "effects"})
    void everyAnswerSaysWhatIsAboard(String command) {
        JsonNode answer = json(command, car, "--setup", "Flatter, stiffer", "--load", "Two behind", "--json");
        assertThat(keys(answer)).startsWith("evenhand", "command", "scenario", "load");
        assertThat(answer.get("load").asText()).isEqualTo("Two behind");
        assertThat(Run.of(command, car, "--setup", "Flatter, stiffer", "--load", "Two behind")
                        .out())
                .contains("With \"Two behind\" aboard: two behind 150 kg.");
        assertThat(keys(json(command, car, "--setup", "Flatter, stiffer", "--json")))
                .doesNotContain("load");
    }

    /** 150·1750/2660 kg behind: 967.79 N press 28 N/mm springs by 17.282 mm, the rest of it the tyres. */
    @Test
    void theWheelsCarryTheLoadAndTheRollCentreComesDown() {
        JsonNode empty = row("balance", car, "--json");
        JsonNode loaded = row("balance", car, "--json", "--load", "Two behind");
        assertThat(loads(loaded) - loads(empty)).isCloseTo(150 * 9.80665, within(1e-6));
        double fall = empty.get("rearRollCentreHeight_m").asDouble()
                - loaded.get("rearRollCentreHeight_m").asDouble();
        assertThat(fall).isBetween(0.0173, 0.0225);
        JsonNode setup = json("balance", car, "--json", "--load", "Two behind")
                .get("setups")
                .get(0);
        assertThat(setup.get("words").asText())
                .startsWith(
                        "With \"Two behind\" aboard it sits 12 mm lower in front and 20 mm lower behind. Left to the bump"
                                + " stops: 8 mm behind. At 0.2 g");
    }

    @Test
    void nobodyAboardIsTheCarAsItWasWeighed() {
        assertThat(Run.of("balance", car, "--csv", "--load", "Nobody").out())
                .isEqualTo(Run.of("balance", car, "--csv").out());
    }

    @Test
    void aLoadThatTheCarCannotCarryIsNoAnswer() {
        Run run = Run.of("balance", car, "--setup", "As bought", "--load", "Anvil on the tow bar", "--json");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        JsonNode none = parsed(run.out()).get("setups").get(0).get("noAnswer");
        assertThat(none.get("reason").asText()).isEqualTo("noEquilibrium");
        assertThat(none.get("text").asText())
                .isEqualTo(
                        "with \"Anvil on the tow bar\" aboard its front axle is lifted: the load stands too far beyond"
                                + " the other");
        for (String command : List.of("compare", "effects")) {
            Run other = Run.of(command, car, "--setup", "Flatter, stiffer", "--load", "Anvil on the tow bar");
            assertThat(other.status()).isEqualTo(Status.NO_ANSWER);
            assertThat(other.out().replaceAll("\\s+", " ")).contains("the load stands too far");
        }
    }

    @Test
    void aNameThatTheFileDoesNotKnowIsSaidWithThoseThatItKnows() {
        Run run = Run.of("balance", car, "--load", "Two behnid");
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err())
                .isEqualTo("evenhand balance: there is no load case \"Two behnid\" in the file, only \"Two behind\","
                        + " \"Nobody\", \"Anvil on the tow bar\"; did you mean \"Two behind\"?\n");
    }

    @Test
    void aFileWithoutLoadCasesIsToldHowToWriteOne() {
        Run run = Run.of("effects", Run.car(folder).toString(), "--load", "Four up");
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err())
                .startsWith("evenhand effects: --load \"Four up\": the file has no load cases; write beside \"car\"");
        String example = run.err().substring(run.err().indexOf("\"loadCases\"")).strip();
        String mended = Run.CAR.replace("  \"setups\"", example + ",\n  \"setups\"");
        Path file = Run.file(folder, "mended.json", mended);
        assertThat(Run.of("balance", file.toString(), "--setup", "As bought", "--load", "Four up")
                        .status())
                .isEqualTo(Status.DONE);
    }

    private static double loads(JsonNode row) {
        double sum = 0;
        for (JsonNode wheel : row.get("wheels")) {
            sum += wheel.get("load_N").asDouble();
        }
        return sum;
    }

    /** The first row of the first set-up's turn. */
    private static JsonNode row(String... args) {
        return json(args).get("setups").get(0).get("turn").get(0);
    }

    private static JsonNode json(String... args) {
        return parsed(Run.of(args).out());
    }

    private static JsonNode parsed(String text) {
        try {
            return JsonMapper.builder().build().readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
