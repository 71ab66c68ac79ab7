package evenhand.terminal.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code find} says of both ways round, of several circles, and of which end goes first. */
class FindBothWaysTest {
    private static final String HARBOUR = "../scenarios/harbour-saloon.json";
    private static final String NEAR = "nearUndersteer_deg_per_g";

    @TempDir
    Path folder;

    private static Run pivot(String file, String setup, String aim, String... more) {
        return Run.of(Stream.concat(
                        Stream.of(
                                "find",
                                file,
                                "--setup",
                                setup,
                                "--change",
                                "rear.lateralLocator.height",
                                "--from",
                                "200 mm",
                                "--to",
                                "340 mm",
                                "--aim",
                                aim),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    private static JsonNode parsed(Run run) {
        try {
            return JsonMapper.builder().build().readTree(run.out());
        } catch (IOException e) {
            throw new AssertionError(run.out() + run.err(), e);
        }
    }

    private static List<String> keys(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    /** The limit of a set-up, one way round. */
    private static JsonNode limit(String file, String setup, String turn, String radius) {
        return parsed(Run.of("balance", file, "--setup", setup, "--turn", turn, "--radius", radius, "--json"))
                .get("setups")
                .get(0)
                .get("limit");
    }

    private static JsonNode limit(String file, String setup, String turn) {
        return limit(file, setup, turn, "40 m");
    }

    @Test
    void turningLeftAloneTheDemoCarsPivotGivesTheLimitBalanceAsked() {
        Run run = pivot(HARBOUR, "As bought", "limit balance 16 %", "--turn", "left", "--json");
        JsonNode answer = parsed(run);
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(answer.get("value").asDouble()).isCloseTo(0.33094, within(5e-6));
        assertThat(answer.get("turn").asText()).isEqualTo("left");
        assertThat(keys(answer)).contains("achievedLeft").doesNotContain("achievedRight", "otherTurn", "alike");
    }

    @Test
    void bothWaysAreToldAndAnExactAimIsTheirMeanWithAWarningWhereTheyAreTooFarApart() {
        Run run = pivot(HARBOUR, "As bought", "limit balance 16 %", "--json");
        JsonNode answer = parsed(run);
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(answer.get("status").asText()).isEqualTo("nearest");
        assertThat(answer.get("radius_m").asDouble()).isEqualTo(40);
        assertThat(answer.get("turn").asText()).isEqualTo("left");
        double left = answer.get("achievedLeft").asDouble();
        double right = answer.get("achievedRight").asDouble();
        assertThat(answer.get("achieved").asDouble()).isEqualTo(left);
        assertThat((left + right) / 2).isCloseTo(16, within(1e-5));
        assertThat(left - right).isGreaterThan(2);
        JsonNode other = answer.get("otherTurn");
        assertThat(keys(other)).contains("turn", "achieved", "reach", "curve");
        assertThat(other.get("turn").asText()).isEqualTo("right");
        assertThat(other.get("achieved").asDouble()).isEqualTo(right);
        for (JsonNode one : List.of(answer, other)) {
            double low = one.get("reach").get("lowest").asDouble();
            double high = one.get("reach").get("highest").asDouble();
            assertThat(one.get("achieved").asDouble()).isBetween(low, high);
            assertThat(one.get("curve").size()).isGreaterThanOrEqualTo(25);
            for (JsonNode point : one.get("curve")) {
                assertThat(point.get(1).asDouble()).isBetween(low - 1e-9, high + 1e-9);
            }
        }
        String warning = answer.get("warnings").get(0).asText();
        assertThat(warning)
                .startsWith("Turning left it is ")
                .contains(" above the 16 % that was asked; turning right ");
        assertThat(answer.get("words").asText()).startsWith("Warning: " + warning);
    }

    @Test
    void aCarThatIsAlikeBothWaysSaysSo() {
        JsonNode answer =
                parsed(pivot(Run.car(folder).toString(), "As bought", "understeer at most 9 deg/g at 0.4 g", "--json"));
        assertThat(answer.get("alike").asBoolean()).isTrue();
        assertThat(keys(answer)).doesNotContain("otherTurn");
        assertThat(answer.get("achievedRight").asDouble())
                .isEqualTo(answer.get("achievedLeft").asDouble());
    }

    @Test
    void aBoundHoldsBothWaysOnEveryCircleAndTheOthersStandAtTheirRadius() throws IOException {
        String file =
                Files.copy(Path.of(HARBOUR), folder.resolve("saloon.json")).toString();
        String[] circles = {"--radius", "60 m", "--radius", "25 m"};
        Run run = pivot(
                file,
                "As bought",
                "understeer near the limit at most 17 deg/g",
                Stream.concat(Stream.of(circles), Stream.of("--json", "--save-as", "Found"))
                        .toArray(String[]::new));
        JsonNode answer = parsed(run);
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(answer.get("radius_m").asDouble()).isEqualTo(60);
        JsonNode tight = answer.get("atRadius").get(0);
        assertThat(answer.get("atRadius").size()).isEqualTo(1);
        assertThat(keys(tight))
                .contains("radius_m", "setup", "achieved", "achievedLeft", "achievedRight", "reach", "curve");
        assertThat(tight.get("radius_m").asDouble()).isEqualTo(25);
        double worst = 0;
        for (String radius : List.of("60 m", "25 m")) {
            JsonNode there = radius.equals("60 m") ? answer : tight;
            double left = limit(file, "Found", "left", radius).get(NEAR).asDouble();
            double right = limit(file, "Found", "right", radius).get(NEAR).asDouble();
            assertThat(there.get("achievedLeft").asDouble()).isCloseTo(left, within(1e-4));
            assertThat(there.get("achievedRight").asDouble()).isCloseTo(right, within(1e-4));
            worst = Math.max(worst, Math.max(left, right));
        }
        assertThat(worst).isCloseTo(17, within(1e-4));
    }

    @Test
    void theFrontGoingFirstIsAnAimOfItsOwn() {
        String setup = "Pivot middle, rear bar added";
        assertThat(limit(HARBOUR, setup, "left").get("firstAxle").asText()).isEqualTo("front");
        assertThat(limit(HARBOUR, setup, "right").get("firstAxle").asText()).isEqualTo("rear");
        Run run = pivot(HARBOUR, setup, "front first", "--json");
        JsonNode answer = parsed(run);
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(answer.get("unit").asText()).isEmpty();
        assertThat(answer.get("achieved").asDouble()).isEqualTo(1);
        assertThat(answer.get("reach").get("lowest").asDouble()).isEqualTo(1); // turning left it does throughout
        assertThat(answer.get("otherTurn").get("reach").get("lowest").asDouble())
                .isZero();
        assertThat(keys(answer)).doesNotContain("slopeAtValue", "frontFirst", "warnings");
        assertThat(answer.get("words").asText())
                .contains(
                        "the front goes first both ways in a part of that range",
                        "the front goes first both ways, as asked");
        JsonNode left = parsed(pivot(HARBOUR, setup, "front first", "--turn", "left", "--json"));
        assertThat(left.get("words").asText())
                .contains("the front goes first turning left throughout", "The car as it stands does");
    }

    @Test
    void whereTheTailGoesFirstOneWayThatIsSaidFirstAndTheLastValueWhereItDoesNotIsOffered() throws IOException {
        String file =
                Files.copy(Path.of(HARBOUR), folder.resolve("saloon.json")).toString();
        String aim = "understeer near the limit at most 15.9 deg/g";
        Run run = pivot(file, "As bought", aim, "--json", "--save-as", "Found");
        assertThat(run.status()).isEqualTo(Status.DONE);
        JsonNode answer = parsed(run);
        assertThat(limit(file, "Found", "right").get("firstAxle").asText()).isEqualTo("rear");
        String warning = answer.get("warnings").get(0).asText();
        assertThat(warning)
                .startsWith("Turning left the front goes first, at ")
                .contains("; turning right the tail comes round past ")
                .contains("; the last value at which the front still goes first both ways is ");
        assertThat(answer.get("words").asText()).startsWith("Warning: " + warning);
        JsonNode last = answer.get("frontFirst");
        assertThat(keys(last)).containsExactly("value", "valueUnit", "achieved", "achievedLeft", "achievedRight");
        double edge = parsed(pivot(file, "Found", "front first", "--json"))
                .get("value")
                .asDouble();
        // Asked for itself, the value stands half a thousandth of the range of 140 mm within its edge.
        assertThat(last.get("value").asDouble())
                .isCloseTo(edge + 5e-4 * 0.14, within(1e-5))
                .isLessThan(answer.get("value").asDouble());
        assertThat(pivot(file, "As bought", aim).lines().get(3)).startsWith("  Warning: Turning left");
        Run csv = pivot(file, "As bought", aim, "--csv");
        assertThat(csv.err())
                .contains("evenhand find: warning for \"As bought\": Turning left")
                .hasLineCount(1);
        double stepped = parsed(pivot(file, "As bought", aim, "--grid", "5 mm", "--json"))
                .get("frontFirst")
                .get("value")
                .asDouble();
        assertThat(stepped).isCloseTo(0.005 * Math.floor(edge / 0.005), within(1e-12));
    }

    @Test
    void oneWayWithoutAnAnswerIsTold() throws IOException {
        // Past what it holds turning left, and within what it holds turning right; then its mirror image.
        double left = limit(HARBOUR, "Pivot high", "left")
                .get("lateralAcceleration_g")
                .asDouble();
        double right = limit(HARBOUR, "Pivot high", "right")
                .get("lateralAcceleration_g")
                .asDouble();
        double pace = (left + right) / 2;
        String aim = "understeer at most 60 deg/g at " + pace + " g";
        Run run = Run.of(
                "find",
                HARBOUR,
                "--setup",
                "Pivot high",
                "--change",
                "mass",
                "--from",
                "1065 kg",
                "--to",
                "1066 kg",
                "--aim",
                aim,
                "--json");
        JsonNode answer = parsed(run);
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(answer.get("noAnswer").get("text").asText()).contains("is beyond the limit of this car");
        assertThat(keys(answer.get("otherTurn"))).contains("reach", "curve").doesNotContain("noAnswer");
        String mirrored =
                Files.readString(Path.of(HARBOUR)).replace("anticlockwise from behind", "clockwise from behind");
        String file = Run.file(folder, "mirrored.json", mirrored).toString();
        JsonNode there = parsed(Run.of(
                "find",
                file,
                "--setup",
                "Pivot high",
                "--change",
                "mass",
                "--from",
                "1065 kg",
                "--to",
                "1066 kg",
                "--aim",
                aim,
                "--json"));
        assertThat(keys(there)).contains("reach", "curve").doesNotContain("noAnswer", "value");
        assertThat(there.get("otherTurn").get("noAnswer").get("reason").asText())
                .isEqualTo("noEquilibrium");
        assertThat(there.get("words").asText()).contains("No answer: turning right, ");
    }
}
