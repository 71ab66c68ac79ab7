package evenhand.terminal.roadtest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoadTestCommandTest {
    private static final String CIRCLE = """
            {"name": "First circle", "setup": "As bought", "circle": {"radius": "30 m ± 0.2 m"},
             "readings": [
               {"turn": "left", "laps": 3, "time": "74 s ± 0.5 s", "steeringWheel": "92 deg ± 2 deg", "roll": "1.9 deg ± 0.3 deg"},
               {"turn": "left", "speed": "37 km/h ± 1 km/h", "steeringWheel": "98 deg ± 2 deg"},
               {"turn": "left", "lateralAcceleration": "0.39 g", "steeringWheel": "100 deg"},
               {"turn": "right", "lateralAcceleration": "0.4 g", "roll": "3.9 deg"}],
             "limits": [{"turn": "left", "laps": 1, "time": "12.4 s ± 0.2 s", "firstAxle": "front"}],
             "bounce": [{"axle": "front", "frequency": "1.26 Hz ± 0.05 Hz"}]}""";
    /** Little to read, and soon asked. */
    private static final String GENTLE = """
            {"name": "First circle", "setup": "As bought", "circle": {"radius": "30 m"},
             "readings": [{"turn": "left", "lateralAcceleration": "0.3 g", "steeringWheel": "93 deg", "roll": "3.2 deg"}]}""";

    private static final String DAMPERS = """
            "damper": {"motionRatio": 0.63, "bump": [["0 m/s", "0 N"], ["0.1 m/s", "250 N"]], "rebound": [["0 m/s", "0 N"], ["0.1 m/s", "600 N"]]},""";

    /** The circle's answer, asked once. */
    private static Run circle;

    @TempDir
    Path folder;

    @BeforeAll
    static void askTheCircle(@TempDir Path folder) {
        circle = run(file(folder, CIRCLE), "--json");
    }

    private String file(String... tests) {
        return file(folder, tests);
    }

    private static String file(Path folder, String... tests) {
        String car = Run.CAR
                .replace("\"cgHeight\": \"520 mm\",", "\"cgHeight\": \"520 mm\", \"steering\": {\"ratio\": 17},")
                .replace("\"rollCentre\": {\"height\": \"50 mm\"", DAMPERS + "\"rollCentre\": {\"height\": \"50 mm\"");
        int end = car.lastIndexOf('}');
        return Run.file(
                        folder,
                        "tested.json",
                        car.substring(0, end) + ", \"roadTests\": [" + String.join(", ", tests) + "]}")
                .toString();
    }

    private static Run run(String file, String... more) {
        return Run.of(Stream.concat(Stream.of("roadtest", file, "--samples", "10"), Arrays.stream(more))
                .toArray(String[]::new));
    }

    private static JsonNode parsed(Run run) {
        try {
            return JsonMapper.builder().build().readTree(run.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(run.out() + run.err(), e);
        }
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @Test
    void theAnswerHasTheKeysOfTheContract() {
        assertThat(circle.err()).isEmpty();
        JsonNode answer = parsed(circle);
        assertThat(keys(answer))
                .containsSubsequence(
                        "evenhand",
                        "command",
                        "scenario",
                        "tests",
                        "agreement",
                        "inputs",
                        "setups",
                        "effectiveShare",
                        "nextReadings",
                        "words");
        JsonNode test = answer.get("tests").get(0);
        assertThat(keys(test))
                .containsExactly("name", "setup", "readings", "gradients", "limits", "bounce", "unknowns");
        assertThat(test.get("readings")).hasSize(5);
        JsonNode reading = test.get("readings").get(0);
        assertThat(keys(reading))
                .containsSubsequence(
                        "turn",
                        "lateralAcceleration_g",
                        "channel",
                        "unit",
                        "measured",
                        "tolerance",
                        "before",
                        "beforeLow",
                        "beforeHigh",
                        "after",
                        "residual");
        assertThat(reading.get("measured").asDouble()).isCloseTo(92, within(1e-9));
        assertThat(reading.get("tolerance").asDouble()).isCloseTo(2, within(1e-9));
        assertThat(reading.get("lateralAcceleration_g").asDouble()).isCloseTo(0.199, within(0.003));
        assertThat(reading.get("beforeLow").asDouble())
                .isLessThan(reading.get("before").asDouble());
        assertThat(test.get("readings").get(4).get("tolerance").asDouble()).isCloseTo(0.3, within(1e-9));
        assertThat(keys(test.get("gradients").get(0)))
                .containsExactly("figure", "turn", "unit", "measured", "standardError", "before", "after", "readings");
        assertThat(keys(test.get("limits").get(0)))
                .containsSubsequence(
                        "turn",
                        "measured_g",
                        "tolerance_g",
                        "before_g",
                        "after_g",
                        "residual",
                        "firstAxle",
                        "firstAxleAfter");
        assertThat(keys(test.get("bounce").get(0)))
                .containsSubsequence("axle", "channel", "measured", "tolerance", "before", "after", "residual");
        assertThat(test.get("unknowns")).hasSize(3);
        assertThat(keys(test.get("unknowns").get(0)))
                .containsSubsequence("what", "before", "beforeTolerance", "after", "afterTolerance", "moved");
        assertThat(keys(answer.get("agreement"))).containsExactly("chiSquare", "degrees", "probability", "agrees");
        assertThat(answer.get("agreement").get("degrees").asInt()).isEqualTo(7);
        assertThat(keys(answer.get("inputs").get(0)))
                .containsExactly(
                        "path", "unit", "before", "beforeTolerance", "after", "afterTolerance", "moved", "suspect");
        double last = Double.MAX_VALUE;
        for (JsonNode input : answer.get("inputs")) {
            assertThat(Math.abs(input.get("moved").asDouble())).isLessThanOrEqualTo(last);
            last = Math.abs(input.get("moved").asDouble());
        }
        assertThat(answer.get("setups")).hasSize(3);
        assertThat(keys(answer.get("setups").get(0).get("figures").get(0)))
                .containsExactly(
                        "figure",
                        "lateralAcceleration_g",
                        "unit",
                        "before",
                        "beforeLow",
                        "beforeHigh",
                        "after",
                        "low",
                        "high");
        assertThat(answer.get("nextReadings")).hasSize(3);
    }

    /** The sum that is told is that of the residuals and of what has moved. */
    @Test
    void chiSquareIsTheSumOfSquaresThatAreTold() {
        JsonNode answer = parsed(circle);
        double sum = 0;
        for (JsonNode test : answer.get("tests")) {
            for (String kind : List.of("readings", "limits", "bounce")) {
                for (JsonNode one : test.get(kind)) {
                    sum += Math.pow(one.get("residual").asDouble(), 2);
                }
            }
            for (JsonNode one : test.get("unknowns")) {
                sum += Math.pow(one.get("moved").asDouble(), 2);
            }
        }
        for (JsonNode input : answer.get("inputs")) {
            sum += Math.pow(input.get("moved").asDouble(), 2);
        }
        assertThat(sum).isCloseTo(answer.get("agreement").get("chiSquare").asDouble(), within(1e-6));
    }

    @Test
    void whereFileAndRoadDoNotAgreeItSaysSoAndEndsWithOne() {
        String far = GENTLE.replace(
                "\"readings\": [",
                "\"readings\": [{\"turn\": \"left\", \"lateralAcceleration\": \"0.25 g\", \"steeringWheel\": \"150 deg\"},");
        Run run = run(file(far));
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run.out()).contains("The file and the road do not agree", "does not fit the others");
        Run refused = Run.of("balance", file(far), "--tested");
        assertThat(refused.status()).isEqualTo(Status.WRONG);
        assertThat(refused.err()).contains("do not agree", "--force");
        Run forced = Run.of("balance", file(far), "--tested", "--force", "--json");
        assertThat(parsed(forced).get("testedDisagrees").asBoolean()).isTrue();
    }

    @Test
    void whatWasSeenToGoFirstIsComparedWithTheCar() {
        assertThat(circle.status()).isEqualTo(Status.DONE);
        assertThat(parsed(circle).get("words").asText())
                .contains(
                        "The file and the road agree",
                        "Turning left the front was seen to go first, the corrected car lets its rear go first.");
    }

    @Test
    void withoutATestNothingIsAsked() {
        String none = Run.car(folder).toString();
        assertThat(run(none).status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run(none).err()).contains("the file has no road tests");
        assertThat(run(none, "--test", "First circle").status()).isEqualTo(Status.WRONG);
        assertThat(Run.of("balance", none, "--tested").status()).isEqualTo(Status.WRONG);
        assertThat(Run.of("balance", none, "--force").err()).contains("--force belongs to --tested");
        String empty = file("{\"name\": \"Nothing read\", \"setup\": \"As bought\"}");
        assertThat(run(empty).status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run(empty).err()).contains("\"Nothing read\" has no readings");
    }

    @Test
    void aTestIsChosenByItsName() {
        String first = GENTLE.replace("\"readings\": [", """
                "readings": [
                  {"turn": "left", "lateralAcceleration": "0.2 g", "steeringWheel": "91 deg"},
                  {"turn": "left", "lateralAcceleration": "0.1 g", "steeringWheel": "89 deg"},
                  {"turn": "right", "lateralAcceleration": "0.1 g", "steeringWheel": "89 deg"},""");
        String second = first.replace("First circle", "Second circle").replace("91 deg", "92 deg");
        String file = file(first, second);
        assertThat(parsed(run(file, "--json", "--test", "Second circle")).get("tests"))
                .hasSize(1);
        JsonNode both = parsed(run(file, "--json"));
        assertThat(both.get("tests")).hasSize(2);
        assertThat(both.get("repeats")).isNotEmpty();
        Run slip = run(file, "--test", "Second circl");
        assertThat(slip.status()).isEqualTo(Status.WRONG);
        assertThat(slip.err()).contains("did you mean \"Second circle\"?");
        Run one = Run.of("brakes", file, "--tested=Second circle", "--json");
        assertThat(parsed(one).get("tested").get(0).asText()).isEqualTo("Second circle");
        assertThat(parsed(Run.of("brakes", file, "--tested", "--json")).get("tested"))
                .hasSize(2);
    }

    @Test
    void aRowStandsForEachReadingInCsv() {
        Run run = run(file(GENTLE), "--csv");
        assertThat(run.lines()).hasSize(3);
        assertThat(run.lines().get(0)).isEqualTo("test,reading,unit,measured,before,after,residual");
    }

    /** The corrected car answers, and says that it is corrected. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "balance --setup As_bought",
                "compare",
                "effects --setup As_bought",
                "find --setup As_bought --change front.spring.rate --from 55_N/mm --to 65_N/mm --aim understeer_2_deg/g_at_0.5_g",
                "doubt --samples 10 --setup As_bought",
                "ride --setup As_bought",
                "bump --over step_20_mm --setup As_bought",
                "lower --to 10_mm --setup As_bought",
                "brakes --setup As_bought",
                "drive --setup As_bought"
            })
    void everyQuestionCanBeAskedOfTheCorrectedCar(String question) {
        String file = file(GENTLE);
        String[] words = Stream.concat(
                        Stream.of(question.split(" ", -1)).map(word -> word.replace('_', ' ')),
                        Stream.of("--json", "--tested", file))
                .toArray(String[]::new);
        JsonNode tested = parsed(Run.of(words));
        assertThat(tested.get("tested").get(0).asText()).isEqualTo("First circle");
        words[words.length - 2] = "--json";
        String[] asGiven = Stream.of(words).distinct().toArray(String[]::new);
        JsonNode before = parsed(Run.of(asGiven));
        assertThat(before.has("tested")).isFalse();
        assertThat(before.toString().replace("\"First circle\"", "")).isNotEqualTo(tested.toString());
    }

    @Test
    void forPeopleTheFirstLineSaysThatTheCarIsCorrected() {
        assertThat(Run.of("ride", file(GENTLE), "--tested").lines().get(0))
                .contains("Asked of the car as the road test \"First circle\" has corrected it.");
        Run csv = Run.of("ride", file(GENTLE), "--tested", "--csv");
        assertThat(csv.err()).contains("road test \"First circle\" has corrected it");
    }

    @Test
    void aLogGivesReadings() {
        StringBuilder log =
                new StringBuilder("# invented\ntime_s,speed_km_per_h,yawRate_deg_per_s,steeringWheel_deg,roll_deg\n");
        for (int i = 0; i < 80; i++) {
            log.append(i * 0.1).append(",37,-19.6,-97,-3.5\n");
        }
        Run.file(folder, "right.csv", log.toString());
        String logged = GENTLE.replace(
                "\"readings\"",
                "\"logs\": [{\"file\": \"right.csv\", \"roll\": \"± 0.2 deg\", \"steeringWheel\": \"± 3 deg\"}], \"readings\"");
        JsonNode readings =
                parsed(run(file(logged), "--json")).get("tests").get(0).get("readings");
        assertThat(readings).hasSize(4);
        assertThat(readings.get(2).get("turn").asText()).isEqualTo("right");
        assertThat(readings.get(2).get("measured").asDouble()).isCloseTo(97, within(1e-6));
        assertThat(readings.get(3).get("measured").asDouble()).isCloseTo(3.5, within(1e-6));
        assertThat(readings.get(3).get("tolerance").asDouble()).isCloseTo(0.2, within(1e-6));
        assertThat(readings.get(2).get("lateralAcceleration_g").asDouble()).isCloseTo(0.359, within(0.003));
    }

    /** What is expected is the turn that balance answers, by the steering's ratio; the first run stands at the end again. */
    @Test
    void aCardHasTheRunsInOrderWithWhatIsExpected() throws IOException {
        String file = file(GENTLE);
        Path out = folder.resolve("card.html");
        String[] words = {
            "roadtest",
            file,
            "--card",
            out.toString(),
            "--setup",
            "As bought",
            "--radius",
            "30 m",
            "--pace",
            "0.3 g",
            "--pace",
            "0.2 g",
            "--pace",
            "1.4 g"
        };
        Run run = Run.of(words);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isEqualTo(Status.DONE);
        JsonNode pace = parsed(Run.of(
                        "balance", file, "--setup", "As bought", "--radius", "30 m", "--pace", "0.2 g", "--json"))
                .get("setups")
                .get(0)
                .get("paces")
                .get(0);
        String html = Files.readString(out).replace('\u00a0', ' ');
        assertThat(html)
                .containsSubsequence(
                        "1. left, 0.2 g",
                        "27.6 km/h",
                        "24.6 s",
                        "73.7 s",
                        Math.round(17 * pace.get("steer_deg").asDouble()) + " deg (",
                        String.format(
                                Locale.ROOT,
                                "%.1f deg (",
                                Math.abs(pace.get("roll_deg").asDouble())),
                        "2. right, 0.2 g",
                        "3. left, 0.3 g",
                        "4. right, 0.3 g",
                        "5. left, 0.2 g",
                        "not to be driven: 1.4 g",
                        "When the rear leads",
                        "When a wheel lifts",
                        "suitably qualified engineer")
                .doesNotContain("6. ");
        Run again = Run.of(words);
        assertThat(again.status()).isEqualTo(Status.WRONG);
        assertThat(again.err()).contains("is there already; --force writes over it");
    }

    /** What was read once narrows what is expected of the next run. */
    @Test
    void aCardOfTheCorrectedCarSaysSoAndExpectsMoreClosely() throws IOException {
        String file = file(GENTLE);
        double[] widths = new double[2];
        for (int i = 0; i < 2; i++) {
            Path out = folder.resolve("card" + i + ".html");
            List<String> words = new ArrayList<>(
                    List.of("roadtest", file, "--card", out.toString(), "--setup", "As bought", "--pace", "0.3 g"));
            if (i == 1) {
                words.add("--tested");
            }
            assertThat(Run.of(words.toArray(String[]::new)).status()).isEqualTo(Status.DONE);
            String html = Files.readString(out).replace('\u00a0', ' ');
            assertThat(html.contains("has corrected it")).isEqualTo(i == 1);
            Matcher roll = Pattern.compile("([0-9.]+) deg \\(([0-9.]+) to ([0-9.]+)\\)")
                    .matcher(html);
            assertThat(roll.find()).isTrue();
            assertThat(roll.find())
                    .as("the lean stands behind the steering wheel")
                    .isTrue();
            widths[i] = Double.parseDouble(roll.group(3)) - Double.parseDouble(roll.group(2));
        }
        assertThat(widths[1]).isLessThan(widths[0]);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--card OUT.html|--card: which set-up will be driven?",
                "--card OUT.csv --setup As_bought|let its name end in .pdf or .html",
                "--card OUT.html --setup As_bough|did you mean \"As bought\"?",
                "--card OUT.html --setup As_bought --pace 1.4_g|no pace is within its limit of 0.",
                "--card OUT.html --setup Jelly|it does not turn by the file",
                "--card OUT.html --setup As_bought --json|leave out --test, --aim, --json and --csv",
                "--setup As_bought|belong to --card",
                "--tested|belong to --card"
            })
    void aCardThatCannotBeSaysWhy(String asked) {
        String[] parts = asked.split("\\|", 2);
        String[] words = Stream.concat(
                        Stream.of("roadtest", file(GENTLE)),
                        Arrays.stream(parts[0].split(" ", -1))
                                .map(word -> word.replace('_', ' '))
                                .map(word -> word.startsWith("OUT")
                                        ? folder.resolve(word).toString()
                                        : word))
                .toArray(String[]::new);
        Run run = Run.of(words);
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).contains(parts[1]);
        assertThat(folder.resolve("OUT.html")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "|none.csv: is not there; look at the name and the folder",
                "~|log.csv:1:1: is empty",
                "speed_km_per_h\n3~|log.csv:1:1: header: has no time_s",
                "time_s,roll_deg\n~|log.csv:1:1: has a header and no moment below it",
                "time_s,roll_deg\n0,1\n0,1\n~|log.csv:3:1: time_s: does not rise",
                "time_s,roll_deg\n0,1\n1,much\n~|log.csv:3:3: roll_deg: is no number: \"much\"",
                "time_s,roll_deg\n0,1\n1\n~|log.csv:3:1: has 1 value where the header has 2",
                "time_s;roll_deg\n0;1,5\n~|log.csv:1:1: header: parts its columns by semicolons; write commas between them",
                "time_s,roll_deg\n0,1\n100,1\n200,1\n~|log.csv:1:1: time_s: rises by more than 5 s from moment to moment; are these milliseconds?",
                "time_s,rol_deg\n0,1\n~|log.csv:1:8: header: has \"rol_deg\"; did you mean roll_deg?"
            })
    void whatIsWrongWithALogIsSaidWithItsPlace(String wrong) {
        String[] parts = wrong.split("\\|", 2);
        boolean there = parts[0].endsWith("~");
        if (there) {
            Run.file(folder, "log.csv", parts[0].substring(0, parts[0].length() - 1));
        }
        String file = file(CIRCLE.replace(
                "\"bounce\"", "\"logs\": [{\"file\": \"" + (there ? "log.csv" : "none.csv") + "\"}], \"bounce\""));
        Run run = run(file);
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).contains(parts[1]);
        assertThat(Run.of("check", file).out()).contains(parts[1]);
    }
}
