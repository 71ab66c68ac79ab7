package evenhand.terminal.lower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.terminal.Evenhand;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LowerCommandTest {
    private static final String SALOON = "../scenarios/harbour-saloon.json";

    /** A set-up of it that pushes to the left and loses its tail to the right. */
    private static final String SPLIT = "Pivot middle, rear bar added";

    private static final String DAMPER = """
            "damper": {"motionRatio": 0.63, "bump": [["0 m/s","0 N"], ["0.1 m/s","250 N"]],
              "rebound": [["0 m/s","0 N"], ["0.1 m/s","600 N"]]}""";
    private static final String STOP = """
            "bumpStop": {"gap": "GAP mm", "curve": [["0 mm", "0 N"], ["20 mm", "1500 N"]]}""";
    private static final String SETUPS = """
              "loadCases": [{"name": "Two behind", "added": [
                {"what": "two behind", "mass": "150 kg", "behindFrontAxle": "1750 mm", "height": "620 mm"}]}],
              "setups": [
                {"name": "High", "changes": {
                  "front": {DAMPER, STOP60, "bar": {"rollStiffness": "200 N*m/deg"}},
                  "rear": {DAMPER, STOP70, "metalStop": {"gap": "95 mm"}}}},
                {"name": "Lower", "basedOn": "High", "changes": {"front": {"lowered": "30 mm"}, "rear": {"lowered": "30 mm"}}},
                {"name": "Front sinks", "basedOn": "High", "changes": {"front": {"rollCentre": {"height": "50 mm", "perBump": -2.5}}}},
                {"name": "Front stays", "basedOn": "High", "changes": {"front": {"rollCentre": {"height": "50 mm", "perBump": 0.5}}}},
                {"name": "Low", "basedOn": "High", "changes": {"rear": {STOP12}}},
                {"name": "Bare", "changes": {"rear": {"bumpStop": null}}},
                {"name": "Jelly", "changes": {"front": {"spring": {"rate": "3 N/mm"}}, "rear": {"spring": {"rate": "3 N/mm"}}}}
              ]
            }
            """;

    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeTheCar() {
        String head = Run.CAR.substring(0, Run.CAR.indexOf("\"setups\""));
        String setups = SETUPS.strip().replace("DAMPER", DAMPER);
        for (String gap : List.of("60", "70", "12")) {
            setups = setups.replace("STOP" + gap, STOP.replace("GAP", gap));
        }
        car = Run.file(folder, "lower.json", head + setups).toString();
    }

    @Test
    void theAnswerHasTheKeysOfTheContract() {
        JsonNode answer = json("lower", car, "--json");
        assertThat(keys(answer))
                .startsWith("evenhand", "command", "scenario", "setup")
                .contains("rows", "lowest", "words");
        assertThat(answer.get("rows")).hasSize(9);
        JsonNode row = answer.at("/rows/2");
        assertThat(row.get("lowered_m").asDouble()).isCloseTo(0.02, within(1e-12));
        assertThat(keys(row))
                .containsSubsequence(
                        "lowered_m",
                        "frontBumpTravelToStop_m",
                        "rearBumpTravelToStop_m",
                        "rollGradient_deg_per_g",
                        "understeer_deg_per_g",
                        "limit_g",
                        "limitBalance",
                        "frontRollCentreHeight_m",
                        "rearRollCentreHeight_m",
                        "frontWeightedAcceleration_rms_m_per_s2",
                        "rearWeightedAcceleration_rms_m_per_s2");
        assertThat(row.get("understeer_deg_per_g")).hasSize(2);
        assertThat(row.get("frontBumpTravelToStop_m").asDouble()).isCloseTo(0.04, within(1e-12));
        assertThat(keys(answer.get("lowest"))).containsExactly("lowered_m", "stoppedBy", "text");
    }

    @Test
    void aRowIsWhatBalanceAndRideAnswerForTheSetupLoweredBySoMuch() {
        JsonNode row = json("lower", car, "--json").at("/rows/3");
        JsonNode balance = json("balance", car, "--setup", "Lower", "--json").at("/setups/0");
        JsonNode ride =
                json("ride", car, "--setup", "Lower", "--road", "C", "--json").at("/setups/0");
        assertThat(row.get("rollGradient_deg_per_g")).isEqualTo(balance.at("/handSums/rollGradient_deg_per_g"));
        assertThat(row.get("limit_g")).isEqualTo(balance.at("/limit/lateralAcceleration_g"));
        assertThat(row.get("limitBalance")).isEqualTo(balance.at("/limit/limitBalance"));
        for (int i = 0; i < 2; i++) {
            assertThat(row.get("understeer_deg_per_g").get(i))
                    .isEqualTo(balance.at("/paces/" + i + "/understeerGradient_deg_per_g"));
        }
        assertThat(row.get("rearWeightedAcceleration_rms_m_per_s2"))
                .isEqualTo(ride.at("/road/rear/weightedAcceleration_rms_m_per_s2"));
        assertThat(row.get("rearBumpTravelToStop_m")).isEqualTo(ride.at("/rear/bumpTravelToStop_m"));
        assertThat(row.get("frontBodyFrequency_Hz")).isEqualTo(ride.at("/front/bodyFrequency_Hz"));
        assertThat(json("lower", car, "--setup", "Lower", "--to", "0 mm", "--json")
                        .at("/rows/0/limit_g"))
                .isEqualTo(row.get("limit_g"));
    }

    @Test
    void theLowestAndTheNumberThatStopsIt() {
        JsonNode lowest = json("lower", car, "--json", "--step", "40 mm").get("lowest");
        assertThat(lowest.get("lowered_m").asDouble()).isBetween(0.01, 0.035);
        assertThat(lowest.get("lowered_m").asDouble())
                .isEqualTo(json("lower", car, "--json", "--step", "7 mm")
                        .at("/lowest/lowered_m")
                        .asDouble());
        List<String> lines = Run.of("lower", car, "--full").lines();
        assertThat(String.join(" ", lines))
                .contains("The lowest that works is")
                .contains("What a road car needs (common practice, not a standard)");
        JsonNode all = json("lower", car, "--json", "--to", "5 mm").get("lowest");
        assertThat(keys(all)).containsExactly("lowered_m", "text");
        assertThat(all.get("lowered_m").asDouble()).isEqualTo(0.005);
        assertThat(all.get("text").asText()).contains("5 mm down, the lowest that was asked for");
    }

    @Test
    void aCarThatDoesNotWorkAsItStandsIsToldHowMuchHigher() {
        JsonNode lowest = json("lower", car, "--setup", "Low", "--json").get("lowest");
        assertThat(keys(lowest)).as(lowest.toString()).containsExactly("stoppedBy", "text", "higher_m");
        assertThat(lowest.get("stoppedBy").asText()).isEqualTo("rearBumpTravelToStop");
        assertThat(lowest.get("text").asText())
                .startsWith(
                        "It does not even work as it stands: the rear bump travel to the stop is 12 mm, and at least"
                                + " 25 mm is wanted")
                .contains("mm higher");
        assertThat(lowest.get("higher_m").asDouble()).isGreaterThanOrEqualTo(0.013 - 1e-9);
    }

    /** The same car with a roll centre that falls fast, and one that rises: the sentences turn round with the numbers. */
    @Test
    void theWordsOnTheLeverFollowTheNumbers() {
        assertThat(words("Front sinks")).contains("grows from", "So it leans more, although it is lower");
        assertThat(words("Front stays")).contains("the front roll centre rises by", "shrinks from", "leans less");
        assertThat(words("High")).doesNotContain("rises by");
    }

    @Test
    void whatTheFileDoesNotHaveIsSaidAndTheOthersAnswered() {
        assertThat(words("Bare"))
                .contains("The file has no front bump stop, no front metal stop, no rear bump stop, no rear metal stop")
                .contains("Without damper curves at both ends there is no answer on comfort.");
        JsonNode row = json("lower", car, "--setup", "Bare", "--json").at("/rows/1");
        assertThat(keys(row))
                .contains("limit_g", "frontRollCentreHeight_m")
                .doesNotContain("frontBumpTravelToStop_m", "firstStop_g", "frontWeightedAcceleration_rms_m_per_s2");
        assertThat(Run.of("lower", car, "--setup", "Bare", "--full").out()).contains("not in the file");
    }

    @Test
    void theVerdictKeepsToOneScreenUnlessAllIsAskedFor() {
        List<String> lines = Run.of("lower", SALOON).lines();
        assertThat(lines).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 100);
        assertThat(lines.get(0)).endsWith(": As bought let down; 40 m circle, both ways");
        assertThat(lines.get(1)).startsWith("The lowest that works is 28 mm down");
        assertThat(lines)
                .contains("Turning left", "Turning right")
                .anyMatch(line -> line.matches(" +lets go first +(front +){8}front"));
        List<String> inches = Run.of("lower", SALOON, "--units", "imperial", "--setup", SPLIT, "--step", "1 mm")
                .lines();
        assertThat(inches).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 100);
        assertThat(inches).anyMatch(line -> line.contains("0.00 in") && line.endsWith("3.15 in"));
        String full = Run.of("lower", SALOON, "--full").out();
        assertThat(full).contains("What it rolls about", "Springs and ride", "The lowest that works is 28 mm down");
        assertThat(full.lines().count()).isGreaterThan(60);
    }

    @Test
    void aCarWhoseTailGoesFirstOneWayRoundIsWarnedOfBeforeAllElse() {
        List<String> lines = Run.of("lower", SALOON, "--setup", SPLIT).lines();
        assertThat(lines.get(1))
                .startsWith(
                        "! As it stands, turning left the front goes first, turning right the tail comes round past");
        JsonNode both = json("lower", SALOON, "--setup", SPLIT, "--json");
        assertThat(both.at("/warnings/0").asText())
                .isEqualTo(both.at("/words")
                        .asText()
                        .lines()
                        .findFirst()
                        .orElseThrow()
                        .substring(0, both.at("/warnings/0").asText().length()));
        assertThat(both.at("/rows/0/firstAxle").asText()).isEqualTo("front");
        assertThat(both.at("/otherTurn/rows/0/firstAxle").asText()).isEqualTo("rear");
        assertThat(met(both, "frontFirst")).isFalse();
        assertThat(met(json("lower", SALOON, "--setup", SPLIT, "--json", "--turn", "left"), "frontFirst"))
                .isTrue();
        assertThat(Run.of("lower", SALOON, "--setup", SPLIT, "--turn", "left").out())
                .doesNotContain("!", "Turning right");
    }

    private static boolean met(JsonNode answer, String key) {
        for (JsonNode need : answer.get("needs")) {
            if (need.get("key").asText().equals(key)) {
                return need.get("metAtFirst").asBoolean();
            }
        }
        throw new AssertionError("no need " + key);
    }

    @Test
    void theOtherWayRoundIsWhatItAnswersByItself() {
        JsonNode both = json("lower", SALOON, "--json");
        JsonNode left = json("lower", SALOON, "--json", "--turn", "left");
        JsonNode right = json("lower", SALOON, "--json", "--turn", "right");
        assertThat(both.get("turn").asText()).isEqualTo("left");
        assertThat(both.get("rows")).isEqualTo(left.get("rows"));
        assertThat(keys(both.get("otherTurn"))).containsExactly("turn", "rows", "lowest");
        assertThat(both.at("/otherTurn/turn").asText()).isEqualTo("right");
        assertThat(both.at("/otherTurn/rows")).isEqualTo(right.get("rows")).isNotEqualTo(left.get("rows"));
        assertThat(both.at("/otherTurn/lowest")).isEqualTo(right.get("lowest"));
        assertThat(keys(both)).doesNotContain("alike", "atRadius");
        assertThat(keys(right)).doesNotContain("alike", "otherTurn");
    }

    @Test
    void aCarThatIsAlikeBothWaysSaysSo() {
        JsonNode answer = json("lower", car, "--json", "--to", "20 mm");
        assertThat(answer.get("alike").asBoolean()).isTrue();
        assertThat(keys(answer)).doesNotContain("otherTurn");
        assertThat(Run.of("lower", car).out()).contains("40 m circle, alike both ways", "Turning either way");
    }

    @Test
    void itMustHoldOnEveryCircle() {
        JsonNode answer = json("lower", SALOON, "--json", "--radius", "60 m", "--radius", "15 m");
        assertThat(answer.get("radius_m").asDouble()).isEqualTo(60);
        assertThat(answer.get("atRadius")).hasSize(1);
        JsonNode tight = answer.at("/atRadius/0");
        assertThat(keys(tight)).containsExactly("radius_m", "rows", "lowest", "otherTurn");
        assertThat(tight.get("radius_m").asDouble()).isEqualTo(15);
        JsonNode alone = json("lower", SALOON, "--json", "--radius", "15 m");
        assertThat(tight.get("rows")).isEqualTo(alone.get("rows"));
        assertThat(tight.get("lowest")).isEqualTo(alone.get("lowest"));
        assertThat(tight.get("otherTurn")).isEqualTo(alone.get("otherTurn"));
        assertThat(answer.at("/lowest/lowered_m").asDouble())
                .isLessThanOrEqualTo(alone.at("/lowest/lowered_m").asDouble());
        assertThat(Run.of("lower", SALOON, "--radius", "60 m", "--radius", "15 m")
                        .out())
                .contains("60 m and 15 m circles, both ways", "In the worst of 4 bends");
    }

    @Test
    void aCarThatFallsOverHasNoAnswerAtAnyHeight() {
        Run run = Run.of("lower", car, "--setup", "Jelly", "--to", "10 mm", "--json");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(node(run).at("/rows/0/noAnswer/reason").asText()).isEqualTo("fallsOver");
        assertThat(node(run).at("/lowest/stoppedBy").asText()).isEqualTo("noAnswer");
        Run csv = Run.of("lower", car, "--setup", "Jelly", "--to", "10 mm", "--csv");
        assertThat(csv.err()).contains("evenhand lower: no answer let down by 0 mm: ");
    }

    /** 85 kg less of 752.1 kg on two wheels, 1 g of it in 40 mm. */
    @Test
    void springsKeepTheReserve() {
        JsonNode row = json("lower", car, "--keep-reserve", "1.0 g", "--json").at("/rows/2");
        double carried = (1380 * 0.545 - 85) / 2 * 9.80665;
        assertThat(row.get("frontSpringRate_N_per_m").asDouble())
                .isCloseTo(carried / 0.04 / (0.63 * 0.63), within(1e-3));
        assertThat(row.get("frontFrequencyNeeded_Hz").asDouble())
                .isCloseTo(Math.sqrt(9.80665 / 0.04) / (2 * Math.PI), within(1e-9));
        assertThat(row.get("frontSpringFrequency_Hz").asDouble())
                .isCloseTo(row.get("frontFrequencyNeeded_Hz").asDouble(), within(1e-6));
        assertThat(json("lower", car, "--keep-reserve", "1.0 g", "--json")
                        .get("words")
                        .asText())
                .contains("To keep 1 g in reserve", "the front ones", "instead of 60.0 N/mm");
    }

    @Test
    void aLoadIsAboard() {
        JsonNode empty = json("lower", car, "--json");
        JsonNode loaded = json("lower", car, "--json", "--load", "Two behind");
        assertThat(loaded.get("load").asText()).isEqualTo("Two behind");
        assertThat(loaded.at("/rows/0/rearBumpTravelToStop_m").asDouble())
                .isLessThan(empty.at("/rows/0/rearBumpTravelToStop_m").asDouble() - 0.01);
        assertThat(Run.of("lower", car, "--load", "Two behind").out()).contains("With \"Two behind\" aboard");
    }

    @Test
    void csvHasARowForEachHeightUnderTheKeys() {
        Run run = Run.of("lower", car, "--csv", "--pace", "0.3 g");
        List<String> lines = run.lines();
        assertThat(lines).hasSize(10);
        assertThat(lines.get(0))
                .startsWith("setup,lowered_m,frontBumpTravelToStop_m,rearBumpTravelToStop_m,rollGradient_deg_per_g,"
                        + "0.3_g.understeer_deg_per_g,limit_g,limitBalance,firstStop_g");
        int columns = lines.get(0).split(",", -1).length;
        assertThat(lines).allMatch(line -> line.split(",", -1).length == columns);
        assertThat(Run.of("lower", car, "--csv", "--units", "imperial").lines().get(0))
                .startsWith("setup,lowered_in,frontBumpTravelToStop_in");
        assertThat(Run.of("lower", car, "--units", "imperial").out()).contains("0.98 in");
    }

    @Test
    void aPaceBeyondTheLimitIsNamedAndLeftOut() {
        JsonNode row =
                json("lower", car, "--json", "--pace", "0.3 g", "--pace", "3 g").at("/rows/0");
        assertThat(row.get("understeer_deg_per_g")).hasSize(1);
        assertThat(row.at("/beyondLimit_g/0").asDouble()).isCloseTo(3, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--from|50 mm|--to|20 mm|goes upwards",
                "--step|0 mm|--to|20 mm|must be above zero",
                "--step|-5 mm|--to|20 mm|must be above zero",
                "--step|0.01 mm|--to|20 mm|makes more than 1000 steps",
                "--step|10|--to|20 mm|needs a unit",
                "--keep-reserve|-1 g|--to|20 mm|must lie above zero",
                "--keep-reserve|50 g|--to|20 mm|must lie above zero",
                "--keep-reserve|1 mm|--to|20 mm|",
                "--to|700 mm|--from|0 mm|cannot go there",
                "--from|-700 mm|--to|0 mm|cannot go there",
            })
    void badInputIsOneClearLine(String one, String its, String other, String others, String what) {
        Run run = Run.of("lower", car, one, its, other, others);
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).startsWith("evenhand lower: --").contains(what == null ? "\"" : what);
    }

    @Test
    void progressIsShownOnlyToThoseWhoWatch() {
        assertThat(Run.of("lower", car).err()).isEmpty();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Evenhand.run(Console.of(new ByteArrayOutputStream(), err, false, true, Map.of()), "lower", car);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("letting it down: 100 %")
                .endsWith("\r\u001b[K");
    }

    @Test
    void aRightTurnOfAnEvenCarHasTheSameLimits() {
        JsonNode left = json("lower", car, "--json", "--to", "20 mm");
        JsonNode right = json("lower", car, "--json", "--to", "20 mm", "--turn", "right");
        assertThat(right.get("turn").asText()).isEqualTo("right");
        assertThat(right.at("/rows/2/limit_g").asDouble())
                .isCloseTo(left.at("/rows/2/limit_g").asDouble(), within(0.02));
    }

    private String words(String setup) {
        return json("lower", car, "--setup", setup, "--json").get("words").asText();
    }

    private static JsonNode json(String... args) {
        return node(Run.of(args));
    }

    private static JsonNode node(Run run) {
        try {
            return JsonMapper.builder().build().readTree(run.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(run.err() + run.out(), e);
        }
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
