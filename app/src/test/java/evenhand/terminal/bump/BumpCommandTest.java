package evenhand.terminal.bump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BumpCommandTest {
    private static final String DAMPED = Run.CAR.replace(
            "\"rollCamber\": 0.75,",
            "\"damper\": {\"motionRatio\": 0.63, \"bump\": [[\"0 m/s\", \"0 N\"], [\"0.1 m/s\", \"300 N\"]],"
                    + " \"rebound\": [[\"0 m/s\", \"0 N\"], [\"0.1 m/s\", \"700 N\"]]}, \"rollCamber\": 0.75,");

    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeTheCar() {
        car = Run.file(folder, "mule.json", DAMPED).toString();
    }

    private static JsonNode json(String... args) {
        Run run = Run.of(args);
        assertThat(run.err()).isEmpty();
        try {
            return new JsonMapper().readTree(run.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @Test
    void anAxleHasTheKeysOfTheContract() {
        JsonNode answer = json("bump", car, "--over", "hump 50 mm by 2 m", "--json");
        assertThat(keys(answer)).startsWith("evenhand", "command", "scenario", "over", "speed_m_per_s");
        assertThat(answer.get("command").asText()).isEqualTo("bump");
        JsonNode setup = answer.get("setups").get(0);
        assertThat(keys(setup)).startsWith("name", "words", "front", "rear");
        JsonNode front = setup.get("front");
        assertThat(keys(front))
                .contains(
                        "peakBodyAcceleration_m_per_s2",
                        "peakBumpTravel_m",
                        "peakDroopTravel_m",
                        "leastTyreLoad_N",
                        "timeOffGround_s",
                        "stopTouched",
                        "gripLost",
                        "series");
        assertThat(keys(front.get("series")))
                .containsExactly("time_s", "road_m", "bodyAcceleration_m_per_s2", "travel_m", "tyreLoad_N");
        int rows = front.get("series").get("time_s").size();
        assertThat(rows).isGreaterThan(300);
        assertThat(front.get("series").get("tyreLoad_N")).hasSize(rows);
        assertThat(front.get("series").get("tyreLoad_N").get(0).asDouble())
                .isCloseTo(1380 * 9.80665 * 0.545 / 2, within(1e-6));
        assertThat(front.get("series").get("road_m").get(72).asDouble()) // 50 km/h for 72 ms is 1 m
                .isCloseTo(0.05, within(1e-6));
        assertThat(setup.get("rear").get("stopTouched").asBoolean()).isTrue();
        assertThat(setup.get("rear").get("bumpTravelToStop_m").asDouble()).isCloseTo(0.025, within(1e-12));
    }

    @Test
    void inMidCornerThereIsAnAnswerPerWheel() {
        JsonNode answer = json(
                "bump",
                car,
                "--over",
                "ripples 8 mm by 1.2 m times 5",
                "--pace",
                "0.4 g",
                "--json",
                "--setup",
                "As bought");
        assertThat(answer.get("lateralAcceleration_g").asDouble()).isCloseTo(0.4, within(1e-12));
        assertThat(answer.get("radius_m").asDouble()).isCloseTo(Math.pow(50 / 3.6, 2) / 0.4 / 9.80665, within(1e-9));
        JsonNode setup = answer.get("setups").get(0);
        assertThat(keys(setup)).contains("frontLeft", "frontRight", "rearLeft", "rearRight");
        double inner =
                setup.get("frontLeft").get("series").get("tyreLoad_N").get(0).asDouble();
        double outer =
                setup.get("frontRight").get("series").get("tyreLoad_N").get(0).asDouble();
        assertThat(outer).isGreaterThan(inner + 500);
        assertThat(setup.get("frontRight").get("gripLost").asDouble()).isBetween(0.0, 0.5);
        assertThat(setup.get("frontRight").get("series").get("travel_m").get(0).asDouble())
                .isPositive();
    }

    @Test
    void aPaceBeyondTheLimitIsAnAnswerAndACarThatFallsOverHasNone() {
        Run run = Run.of("bump", car, "--over", "step 10 mm", "--pace", "1.8 g", "--json");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER); // for "Jelly" alone
        assertThat(run.out()).contains("\"beyondLimit\" : true").contains("\"reason\" : \"fallsOver\"");
        Run one = Run.of("bump", car, "--over", "step 10 mm", "--pace", "1.8 g", "--setup", "As bought");
        assertThat(one.status()).isEqualTo(Status.DONE);
        assertThat(one.out()).contains("does not hold 1.8 g at this speed at all");
    }

    @Test
    void aCarWithoutDampersIsAnsweredAndItIsSaid() {
        Run run = Run.of("bump", car, "--over", "hump 20 mm by 2 m", "--setup", "As bought");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.lines().stream().map(String::strip))
                .anyMatch(line -> line.startsWith("The file has no damper curves at the rear"));
        assertThat(run.out()).contains("had not come to rest ten seconds after the event");
    }

    @Test
    void theTableAndTheWordsSayWhatHappened() {
        Run run = Run.of("bump", car, "--over", "hump 60 mm by 1.5 m", "--setup", "As bought");
        assertThat(run.out())
                .contains("Over hump 60 mm by 1.5 m at 50 km/h, straight ahead.")
                .contains("Rear wheels")
                .contains("Where the driver sits")
                .contains("hardest jolt of the seat's mounting")
                .contains("touched")
                .contains("on its bump stop from");
        assertThat(Run.of("bump", car, "--over", "hump 60 mm by 1.5 m", "--units", "imperial")
                        .out())
                .contains("at 31 mph")
                .contains("0.98 in");
    }

    @Test
    void csvHasARowPerSetupAndAxleWithTheKeysOfTheAnswer() {
        Run run = Run.of("bump", car, "--over", "pothole 30 mm by 0.5 m", "--csv");
        assertThat(run.lines().get(0))
                .startsWith("setup,wheel,peakBodyAcceleration_m_per_s2,peakBumpTravel_m,peakDroopTravel_m,"
                        + "leastTyreLoad_N,timeOffGround_s,stopTouched,gripLost");
        assertThat(run.lines()).hasSize(7);
        assertThat(run.lines().get(3)).startsWith("\"Flatter, stiffer\",front,");
        int columns = run.lines().get(0).split(",", -1).length;
        assertThat(run.lines().get(1).split(",", -1)).hasSize(columns);
    }

    @Test
    void everyKindOfEventIsUnderstood() {
        Path road =
                Run.file(folder, "lane by the mill.csv", "distance_m,height_m\n0,0\n0.25,0.004\n0.5,-0.003\n0.75,0\n");
        for (String over : List.of(
                "step 20 mm",
                "step -0.5 in",
                "ramp 50 mm over 1 m",
                "KERB 60 mm",
                "hump 3 in by 12 ft",
                "pothole  50 mm  by  0.6 m",
                "ripples 10 mm by 1.2 m times 8",
                "road c",
                road.toString())) {
            Run run = Run.of("bump", car, "--over", over, "--setup", "As bought");
            assertThat(run.status()).as(over).isEqualTo(Status.DONE);
            assertThat(run.err()).as(over).isEmpty();
            assertThat(run.out()).as(over).doesNotContain("NaN").doesNotContain("Infinity");
        }
    }

    @Test
    void anEventThatIsNotUnderstoodIsSaidInOneLineWithARemedy() {
        record Case(String over, String said) {}
        for (Case one : List.of(
                new Case("bumpy", "write \"step 20 mm\", \"ramp 50 mm over 1 m\""),
                new Case("", "write \"step 20 mm\""),
                new Case("step", "needs more; write for example \"step 20 mm\""),
                new Case("step 20", "needs a unit"),
                new Case("step 0 mm", "must not be zero"),
                new Case("hump 80 mm", "\"by\" is missing; write for example \"hump 80 mm by 3.7 m\""),
                new Case("hump by 3 m", "needs more"),
                new Case("hump 80 mm by 0 m", "length must be above zero"),
                new Case("ripples 10 mm by 1 m times 2.5", "write a whole number from 1 to 1000"),
                new Case("kerb 400 mm", "must be less than the wheel's loaded radius"),
                new Case("pothole 1 m by 5 m", "must be less than the wheel's loaded radius"),
                new Case("road J", "the classes of roads are A (smooth) to H"),
                new Case("road", "the classes of roads are A (smooth) to H"))) {
            Run run = Run.of("bump", car, "--over", one.over());
            assertThat(run.status()).as(one.over()).isEqualTo(Status.WRONG);
            assertThat(run.out()).isEmpty();
            assertThat(run.err().lines()).hasSize(1).first().asString().contains(one.said());
        }
        assertThat(Run.of("bump", car, "--over", "nowhere.csv").err()).contains("nowhere.csv: is not there");
        assertThat(Run.of("bump", car).err()).contains("--over PROFILE is missing");
        assertThat(Run.of("bump", car, "--over", "step 1 mm", "--speed", "0 km/h")
                        .err())
                .contains("must lie between \"1 km/h\"");
        assertThat(Run.of("bump", car, "--over", "step 1 mm", "--speed", "10 km/h", "--pace", "0.5 g")
                        .err())
                .contains("is a circle of less than 4 m");
    }

    @Test
    void whereMetalIsMetThePeaksAreSaidToBeNoForecast() {
        String said = "From where metal meets, the peaks are no forecast";
        String slipper = "../scenarios/slipper-coupe.json";
        String[] asked = {"bump", slipper, "--setup", "As the customer wished", "--over"};
        String struck = Run.of(over(asked, "kerb 60 mm")).out().replaceAll("\\s+", " ");
        assertThat(struck).contains(said);
        assertThat(Run.of(over(over(asked, "kerb 60 mm"), "--json")).out()).contains(said);
        assertThat(Run.of(over(asked, "step 5 mm")).out().replaceAll("\\s+", " "))
                .doesNotContain(said);
    }

    private static String[] over(String[] words, String more) {
        String[] all = Arrays.copyOf(words, words.length + 1);
        all[words.length] = more;
        return all;
    }

    @Test
    void aRoadsFileWithProblemsIsReportedAndNothingIsAnswered() {
        Path road = Run.file(folder, "lane.csv", "distance_m,height_m\n0,0\n0.25,oops\n");
        Run run = Run.of("bump", car, "--over", road.toString());
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(road + ":3:6: height_m: is no number: \"oops\"");
    }
}
