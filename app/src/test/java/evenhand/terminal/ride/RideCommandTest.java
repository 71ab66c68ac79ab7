package evenhand.terminal.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RideCommandTest {
    private static final String DAMPER = """
            "damper": {"motionRatio": 0.63, "bump": [["0 m/s","0 N"], ["0.1 m/s","250 N"]],
              "rebound": [["0 m/s","0 N"], ["0.1 m/s","600 N"]], "settings": [
                {"name": "3 clicks", "bump": [["0 m/s","0 N"], ["0.1 m/s","200 N"]],
                 "rebound": [["0 m/s","0 N"], ["0.1 m/s","400 N"]]},
                {"name": "6 clicks", "bump": [["0 m/s","0 N"], ["0.1 m/s","350 N"]],
                 "rebound": [["0 m/s","0 N"], ["0.1 m/s","800 N"]]}]}""";
    private static final String SETUPS = """
              "setups": [
                {"name": "As bought"},
                {"name": "Damped", "changes": {"front": {DAMPER}, "rear": {
                  "damper": {"lean": "20 deg", "base": "900 mm", "bump": [["0 m/s","0 N"], ["0.1 m/s","150 N"]],
                             "rebound": [["0 m/s","0 N"], ["0.1 m/s","300 N"]]},
                  "metalStop": {"gap": "60 mm"}, "droopStop": {"travel": "120 mm"}}}},
                {"name": "Six clicks", "basedOn": "Damped", "changes": {"front": {"damper": {"setting": "6 clicks"}}}},
                {"name": "On its stops", "basedOn": "Damped", "changes": {"rear": {"lowered": "35 mm"}}},
                {"name": "All on its stops", "basedOn": "Damped", "changes": {"rear": {"lowered": "90 mm"}}},
                {"name": "Give way", "changes": {"rear": {"spring": {
                  "rate": "5 N/mm", "base": "1000 mm", "lean": "60 deg", "lowerMountHeight": "200 mm",
                  "installedLength": "250 mm"}}}}
              ]
            }
            """;

    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeTheCar() {
        String head = Run.CAR.substring(0, Run.CAR.indexOf("\"setups\""));
        car = Run.file(folder, "ride.json", head + SETUPS.strip().replace("DAMPER", DAMPER))
                .toString();
    }

    @Test
    void theAnswerHasTheKeysOfTheContract() {
        JsonNode answer = json("ride", car, "--json", "--setup", "Damped");
        assertThat(keys(answer)).containsExactly("evenhand", "command", "scenario", "setups");
        JsonNode setup = answer.get("setups").get(0);
        assertThat(keys(setup)).startsWith("name", "words", "front", "rear", "road", "pitchBounce", "static");
        assertThat(keys(setup.get("front")))
                .startsWith(
                        "wheelRate_N_per_m",
                        "rideRate_N_per_m",
                        "rollWheelRate_N_per_m",
                        "oneWheelRate_N_per_m",
                        "bodyFrequency_Hz",
                        "bodyDampedFrequency_Hz",
                        "bodyDampingRatio",
                        "hopFrequency_Hz",
                        "hopDampingRatio",
                        "staticDeflection_m",
                        "damperRate_N_s_per_m");
        assertThat(keys(setup.get("rear"))).contains("bumpTravelToStop_m", "droopTravel_m", "tramp");
        assertThat(keys(setup.get("road"))).containsExactly("class", "speed_m_per_s", "front", "rear");
        assertThat(setup.at("/road/class").asText()).isEqualTo("B");
        assertThat(keys(setup.at("/road/front")))
                .contains(
                        "bodyAcceleration_rms_m_per_s2",
                        "weightedAcceleration_rms_m_per_s2",
                        "tyreDeflection_rms_m",
                        "suspensionTravel_rms_m");
        assertThat(keys(setup.get("pitchBounce")))
                .containsExactly(
                        "bounceFrequency_Hz",
                        "pitchFrequency_Hz",
                        "bounceCentre_m",
                        "pitchCentre_m",
                        "pitchInertia_kg_m2");
        assertThat(keys(setup.at("/static/rear")))
                .contains("springLoad_N", "bumpTravelToMetal_m", "stopLoadAtRest_N", "stopTouched_g", "looseInDroop");
        assertThat(paths(setup.get("estimated"))).contains("pitchInertia", "rear.rollInertia");
        assertThat(setup.has("curves")).isFalse();
    }

    @Test
    void theNumbersAreThoseOfASumByHand() {
        JsonNode setup = json("ride", car, "--json", "--setup", "Damped").at("/setups/0");
        JsonNode front = setup.get("front");
        double rate = 60e3 * 0.63 * 0.63;
        double sprung = (1380 * 0.545 - 85) / 2;
        assertThat(front.get("wheelRate_N_per_m").asDouble()).isCloseTo(rate, within(1e-6));
        assertThat(front.get("rollWheelRate_N_per_m").asDouble()).isCloseTo(rate, within(1e-6));
        assertThat(front.get("staticDeflection_m").asDouble()).isCloseTo(sprung * 9.80665 / rate, within(1e-9));
        assertThat(front.get("damperRate_N_s_per_m").asDouble()).isCloseTo(4250 * 0.63 * 0.63, within(1e-6));
        assertThat(setup.at("/static/front/springLoad_N").asDouble()).isCloseTo(sprung * 9.80665 / 0.63, within(1e-6));
        // A live axle: in roll the springs work at their base, in heave a damper by the cosine of its lean.
        JsonNode rear = setup.get("rear");
        assertThat(rear.get("wheelRate_N_per_m").asDouble()).isCloseTo(28e3, within(1e-6));
        assertThat(rear.get("rollWheelRate_N_per_m").asDouble()).isCloseTo(28e3 / 1.43 / 1.43, within(1e-6));
        double square = Math.pow(Math.cos(Math.toRadians(20)), 2);
        assertThat(rear.get("damperRate_N_s_per_m").asDouble()).isCloseTo(2250 * square, within(1e-6));
        assertThat(rear.get("bumpTravelToStop_m").asDouble()).isEqualTo(0.025);
        double rearSprung = (1380 * 0.455 - 120) / 2;
        assertThat(setup.at("/static/rear/looseInDroop").asBoolean()).isEqualTo(28e3 * 0.12 > rearSprung * 9.80665);
        assertThat(setup.at("/static/rear/stopTouched_g").asDouble()).isBetween(0.2, 0.8);
    }

    @Test
    void withoutDamperCurvesNothingIsSaidOfDamping() {
        JsonNode setup = json("ride", car, "--json", "--setup", "As bought").at("/setups/0");
        assertThat(keys(setup.get("front")))
                .doesNotContain("bodyDampingRatio", "damperRate_N_s_per_m", "hopDampingRatio", "bodyDampedFrequency_Hz")
                .contains("bodyFrequency_Hz", "hopFrequency_Hz");
        assertThat(keys(setup.at("/road/front"))).isEmpty();
        assertThat(setup.get("words").asText()).contains("There are no damper curves at the front");
    }

    @Test
    void everyNamedSettingIsAnswered() {
        JsonNode damped = json("ride", car, "--json", "--setup", "Six clicks").at("/setups/0");
        JsonNode settings = damped.at("/front/damperSettings");
        assertThat(settings.size()).isEqualTo(2);
        assertThat(settings.get(1).get("set").asBoolean()).isTrue();
        assertThat(settings.get(1).get("bodyDampingRatio").asDouble())
                .isEqualTo(damped.at("/front/bodyDampingRatio").asDouble());
        assertThat(settings.get(0).get("bodyDampingRatio").asDouble())
                .isLessThan(settings.get(1).get("bodyDampingRatio").asDouble());
        assertThat(damped.get("words").asText()).contains("\"6 clicks\"", "(set)");
    }

    @Test
    void aCarOnItsStopsIsAnsweredWithAWarning() {
        JsonNode answer = json("ride", car, "--json", "--setup", "On its stops", "--setup", "All on its stops");
        JsonNode some = answer.at("/setups/0");
        assertThat(some.at("/warnings/0").asText()).contains("The rear stands on its bump stops at rest");
        assertThat(some.at("/static/rear/stopLoadAtRest_N").asDouble()).isCloseTo(750, within(1e-6));
        assertThat(some.at("/rear/bumpTravelToStop_m").asDouble()).isCloseTo(-0.01, within(1e-12));
        assertThat(some.at("/rear/wheelRate_N_per_m").asDouble()).isCloseTo(28e3 + 75e3, within(1e-6));
        JsonNode all = answer.at("/setups/1");
        assertThat(all.at("/warnings/0").asText()).contains("springs are loose at this ride height");
        assertThat(all.at("/static/rear/springLoad_N").asDouble()).isZero();
    }

    @Test
    void springsThatGiveWayByThemselvesHaveNoRide() {
        Run run = Run.of("ride", car, "--json", "--setup", "Give way", "--setup", "Damped");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        JsonNode setups = parse(run.out()).get("setups");
        assertThat(setups.at("/0/noAnswer/reason").asText()).isEqualTo("noEquilibrium");
        assertThat(setups.at("/0/noAnswer/text").asText()).contains("wheel rate of -", "lean them less");
        assertThat(setups.at("/1/front/bodyFrequency_Hz").asDouble()).isPositive();
        Run table = Run.of("ride", car, "--setup", "Give way");
        assertThat(table.out()).contains("No answer: at the rear the springs");
        Run csv = Run.of("ride", car, "--csv", "--setup", "Give way");
        assertThat(csv.err()).contains("no answer for \"Give way\"");
        assertThat(csv.lines()).hasSize(1);
    }

    @Test
    void aWrongRoadOrSpeedIsOneClearLine() {
        wrong("--road \"J\": write a class from A (smooth) to H", "--road", "J");
        wrong("there is no such file; write a class from A", "--road", "lane.csv");
        wrong("must lie between \"1 km/h\" and \"400 km/h\"", "--speed", "0 km/h");
        wrong("must lie between", "--speed", "-20 km/h");
        wrong("needs a unit", "--speed", "80");
        wrong("--json and --csv", "--json", "--csv");
        wrong("take --json", "--curves", "--csv");
    }

    private void wrong(String message, String... options) {
        List<String> words = new ArrayList<>(List.of("ride", car));
        words.addAll(List.of(options));
        Run run = Run.of(words.toArray(new String[0]));
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).contains(message).hasLineCount(1);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void theVerdictKeepsToOneScreenUnlessAllIsAskedFor() {
        for (String units : List.of("metric", "imperial")) {
            List<String> lines = Run.of("ride", "../scenarios/harbour-saloon.json", "--units", units)
                    .lines();
            assertThat(lines).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 100);
            assertThat(lines.get(1)).startsWith("Against \"As bought\": \"Lowered\": it has ");
            assertThat(lines)
                    .filteredOn(line -> line.matches(".*( +\\d\\.\\d\\d){4} .* uncomfortable"))
                    .hasSize(8);
        }
        String full =
                Run.of("ride", "../scenarios/harbour-saloon.json", "--full").out();
        assertThat(full).contains("At the front, at rest and in the turn", "Rear over front frequency is");
        assertThat(full.lines().count()).isGreaterThan(200);
        wrong("add --full, or take --json", "--curves");
    }

    @Test
    void whatIsOutOfOrderIsWarnedOfOnTheOneScreen() {
        List<String> lines = Run.of("ride", "../scenarios/slipper-coupe.json", "--speed", "20 km/h", "--road", "C")
                .lines();
        assertThat(lines).noneMatch(line -> line.startsWith("! "));
        List<String> onStops = Run.of("ride", car, "--setup", "On its stops").lines();
        assertThat(onStops).anyMatch(line -> line.startsWith("! ") && line.contains("stands on its bump stops"));
    }

    @Test
    void curvesAreAsLongAsTheirFrequencies() {
        JsonNode curves =
                json("ride", car, "--json", "--curves", "--setup", "Damped").at("/setups/0/curves/front");
        int count = curves.get("frequency_Hz").size();
        assertThat(count).isGreaterThan(50);
        for (String key : List.of("bodyAcceleration_per_s2", "suspensionTravel", "tyreDeflection")) {
            assertThat(curves.get(key).size()).isEqualTo(count);
        }
        assertThat(curves.get("damping").size()).isGreaterThan(10);
        assertThat(curves.get("damperSettings").size()).isEqualTo(2);
        Run table = Run.of("ride", car, "--full", "--curves", "--setup", "Damped");
        assertThat(table.status()).isEqualTo(Status.DONE);
        assertThat(table.out()).contains("comfort against grip", "as set", "\"3 clicks\"");
    }

    @Test
    void aRowOfTheSheetHoldsWhatTheAnswerHolds() {
        List<String> lines = Run.of("ride", car, "--csv").lines();
        assertThat(lines).hasSize(6); // the head, and five of six set-ups
        String[] heads = lines.get(0).split(",", -1);
        assertThat(heads).startsWith("setup", "front.wheelRate_N_per_m").doesNotHaveDuplicates();
        for (String line : lines) {
            assertThat(line.split(",", -1)).hasSameSizeAs(heads);
        }
        assertThat(Run.of("ride", car, "--csv", "--units", "imperial").lines().get(0))
                .contains("front.wheelRate_lbf_per_in", "rear.damperRate_lbf_s_per_in");
    }

    @Test
    void aMeasuredRoadIsReadFromItsFile() {
        String lane = profile(2000, 0.25);
        JsonNode setup =
                json("ride", car, "--json", "--setup", "Damped", "--road", lane).at("/setups/0");
        assertThat(setup.at("/road/file").asText()).isEqualTo(lane);
        // One wave of 8 m and 10 mm at 80 km/h, 2.8 Hz: the answer is its transfer over the root of two.
        JsonNode curves = json("ride", car, "--json", "--setup", "Damped", "--road", lane, "--curves")
                .at("/setups/0/curves/front");
        double at = 80 / 3.6 / 8;
        int i = 0;
        while (curves.at("/frequency_Hz/" + i).asDouble() < at) {
            i++;
        }
        double tyre = curves.at("/tyreDeflection/" + i).asDouble() * 0.01 / Math.sqrt(2);
        assertThat(setup.at("/road/front/tyreDeflection_rms_m").asDouble()).isCloseTo(tyre, within(0.05 * tyre));
        assertThat(setup.has("warnings")).isFalse();
        assertThat(Run.of("ride", car, "--road", lane).out()).contains("500 m of it");
    }

    @Test
    void aMeasuredRoadThatIsTooShortSaysSo() {
        wrong("has 100 points, and a spectrum needs at least 129", "--road", profile(100, 0.25));
        String brief = profile(200, 0.25);
        assertThat(json("ride", car, "--json", "--setup", "Damped", "--road", brief)
                        .at("/setups/0/warnings/0")
                        .asText())
                .contains("the body's own swinging is left out");
        assertThat(Run.of("ride", car, "--road", brief).out()).contains("Measure a longer one");
        wrong(
                "has no points",
                "--road",
                Run.file(folder, "empty.csv", "distance_m,height_m\n").toString());
    }

    private String profile(int points, double spacing) {
        StringBuilder text = new StringBuilder("# invented\ndistance_m,height_m\n");
        for (int i = 0; i < points; i++) {
            double x = i * spacing;
            text.append(x)
                    .append(',')
                    .append(0.01 * Math.sin(2 * Math.PI * x / 8))
                    .append('\n');
        }
        return Run.file(folder, "road" + points + ".csv", text.toString()).toString();
    }

    @Test
    void aRoughRoadAndTheSpeedAreThoseAskedFor() {
        JsonNode slow = json("ride", car, "--json", "--setup", "Damped", "--road", "c", "--speed", "40 mph");
        assertThat(slow.at("/setups/0/road/class").asText()).isEqualTo("C");
        assertThat(slow.at("/setups/0/road/speed_m_per_s").asDouble()).isCloseTo(40 * 0.44704, within(1e-12));
    }

    @Test
    void aLoadAboardIsRiddenWith() {
        String laden = Run.file(folder, "laden.json", read(car).replace("\"setups\"", """
                                "loadCases": [{"name": "Boot full", "added": [{"what": "flour", "mass": "80 kg",
                                  "behindFrontAxle": "2900 mm", "height": "600 mm"}]}], "setups\""""))
                .toString();
        JsonNode empty = json("ride", laden, "--json", "--setup", "Damped").at("/setups/0");
        JsonNode full = json("ride", laden, "--json", "--setup", "Damped", "--load", "Boot full")
                .at("/setups/0");
        assertThat(full.at("/rear/bodyFrequency_Hz").asDouble())
                .isLessThan(empty.at("/rear/bodyFrequency_Hz").asDouble());
        double sinks = 80 * 9.80665 * 2.9 / 2.66 / 2 / 28e3;
        assertThat(empty.at("/rear/bumpTravelToStop_m").asDouble()
                        - full.at("/rear/bumpTravelToStop_m").asDouble())
                .isCloseTo(sinks, within(1e-9));
        assertThat(full.get("words").asText()).startsWith("With \"Boot full\" aboard it sits");
        assertThat(Run.of("ride", laden, "--load", "Boot full").out()).contains("flour 80 kg");
    }

    private static String read(String file) {
        try {
            return java.nio.file.Files.readString(Path.of(file));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bakery-front-drive",
                "harbour-saloon",
                "orchard-estate",
                "postman-leaf",
                "quarry-special",
                "slipper-coupe",
                "tinkers-lane-roadster"
            })
    void everyDemoCarRidesAsCarsDo(String name) {
        JsonNode setups =
                json("ride", "../scenarios/" + name + ".json", "--json").get("setups");
        for (JsonNode setup : setups) {
            for (String end : List.of("front", "rear")) {
                JsonNode axle = setup.get(end);
                assertThat(axle.get("bodyFrequency_Hz").asDouble()).isBetween(1.0, 2.2);
                assertThat(axle.get("hopFrequency_Hz").asDouble()).isBetween(8.0, 15.0);
                assertThat(axle.get("bodyDampingRatio").asDouble()).isBetween(0.1, 0.8);
                assertThat(setup.at("/road/" + end + "/weightedAcceleration_rms_m_per_s2")
                                .asDouble())
                        .isBetween(0.3, 1.6);
            }
            assertThat(setup.get("words").asText()).doesNotContain("NaN", "Infinity", "null");
        }
        Run table = Run.of("ride", "../scenarios/" + name + ".json", "--units", "imperial", "--full", "--curves");
        assertThat(table.status()).isEqualTo(Status.DONE);
        assertThat(table.out()).doesNotContain("NaN", "Infinity", "null").contains("lbf/in");
    }

    private static JsonNode json(String... words) {
        Run run = Run.of(words);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out()).doesNotContain("NaN", "Infinity", "null");
        return parse(run.out());
    }

    private static JsonNode parse(String text) {
        try {
            return JsonMapper.builder().build().readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError(text, e);
        }
    }

    private static List<String> keys(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static List<String> paths(JsonNode estimated) {
        List<String> paths = new ArrayList<>();
        estimated.forEach(one -> paths.add(one.get("path").asText()));
        return paths;
    }
}
