package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import evenhand.terminal.asked.Status;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the file does not give is said beside every answer: a bare car, front springs without a ratio, measured rear tyres. */
class NotGivenTest {
    private static final String CAUTION = "was taken as 1, as if the part moved as far as the wheel";

    private static final String DAMPER = """
            "bump": [["0 m/s", "0 N"], ["0.1 m/s", "250 N"]], "rebound": [["0 m/s", "0 N"], ["0.1 m/s", "600 N"]]""";

    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeCar() {
        String text = Run.CAR
                .replace("\"motionRatio\": 0.63}", "\"installedLength\": \"260 mm\"}, \"damper\": {" + DAMPER + "}")
                .replace(
                        "\"spring\": {\"rate\": \"28 N/mm\"",
                        "\"damper\": {" + DAMPER + "}, \"spring\": {\"rate\": \"28 N/mm\"");
        int rear = text.indexOf("\"rear\"");
        int tyre = text.indexOf("\"size\"", rear);
        text = text.substring(0, tyre) + "\"corneringStiffness\": \"650 N/deg\", " + text.substring(tyre);
        car = Run.file(folder, "bare.json", text).toString();
    }

    static Stream<Arguments> commands() {
        return Stream.of(
                Arguments.of("balance", List.of()),
                Arguments.of("compare", List.of("--setup", "Flatter, stiffer")),
                Arguments.of("effects", List.of("--setup", "As bought", "--turn", "left")),
                Arguments.of("doubt", List.of("--setup", "As bought", "--samples", "64", "--turn", "left")),
                Arguments.of("ride", List.of("--setup", "As bought")),
                Arguments.of("bump", List.of("--setup", "As bought", "--over", "step 20 mm")),
                Arguments.of("lower", List.of("--setup", "As bought", "--to", "20 mm", "--turn", "left")),
                Arguments.of(
                        "find",
                        List.of(
                                "--setup",
                                "As bought",
                                "--change",
                                "rear.spring.rate",
                                "--from",
                                "24 N/mm",
                                "--to",
                                "32 N/mm",
                                "--aim",
                                "roll gradient 8 deg/g at 0.3 g",
                                "--turn",
                                "left")));
    }

    private Run run(String command, List<String> more, String... last) {
        List<String> all = new ArrayList<>(List.of(command, car));
        all.addAll(more);
        all.addAll(List.of(last));
        return Run.of(all.toArray(String[]::new));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commands")
    void everyAnswerForProgramsListsItAndWarns(String command, List<String> more) throws JsonProcessingException {
        JsonNode answer =
                new ObjectMapper().readTree(run(command, more, "--json").out());
        JsonNode setup = answer.has("assumed") ? answer : answer.path("setups").path(0);
        assertThat(setup.path("assumed").findValuesAsText("path"))
                .as(answer.toPrettyString())
                .contains(
                        "chassisTorsionalStiffness",
                        "air.dragArea",
                        "front.bumpStop",
                        "front.spring.motionRatio",
                        "front.damper.motionRatio",
                        "rear.aligningTorqueSteer",
                        "rear.tyre.camberThrustRatio",
                        "rear.tyre.frictionCamberLoss",
                        "rear.tyre.bestLeanIn",
                        "rear.tyre.pneumaticTrail")
                .doesNotContain("rear.bumpStop", "front.tyre.pneumaticTrail", "front.rollSteer");
        assertThat(setup.path("assumed").get(0).path("text").asText()).isNotEmpty();
        assertThat(setup.path("warnings").valueStream().map(JsonNode::asText))
                .anyMatch(warning -> warning.startsWith("car.front.spring.motionRatio: ") && warning.contains(CAUTION))
                .anyMatch(warning -> warning.startsWith("car.front.damper.motionRatio: ") && warning.contains("40 mm"))
                .noneMatch(warning -> warning.startsWith("car.rear"));
        assertThat(setup.path("estimated").findValuesAsText("path"))
                .contains("front.tyre.referenceLoad", "front.tyre.pneumaticTrail", "rear.tyre.referenceLoad")
                .doesNotContain("rear.tyre.pneumaticTrail", "rear.tyre.corneringStiffness");
        JsonNode friction = setup.path("estimated")
                .valueStream()
                .filter(one -> one.path("path").asText().equals("front.tyre.friction"))
                .findFirst()
                .orElseThrow();
        assertThat(friction.path("tolerance").asDouble()).isCloseTo(0.091, within(1e-12));
        assertThat(friction.path("rule").asText()).contains("kind of tyre", "common practice");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commands")
    void everyAnswerForPeopleListsItAndWarns(String command, List<String> more) {
        String text = run(command, more).out().replaceAll("\\s+", " ");
        assertThat(text).contains("Not given, taken as none").contains(CAUTION);
    }

    @Test
    void checkListsItAndComputesNothing() {
        Run run = Run.of("check", car);
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.lines().stream().filter(line -> !line.contains("(warning)")))
                .allMatch(line -> line.length() <= 100);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains(
                        "not given, taken as none: the chassis does not twist; no drag of the air; no bump stop at the front")
                .contains("the front spring moves as far as the wheel (ratio 1)")
                .contains("car.front.spring.motionRatio: is not given and " + CAUTION);
    }

    @Test
    void checkListsItBySetupForPrograms() throws JsonProcessingException {
        JsonNode file = new ObjectMapper()
                .readTree(Run.of("check", car, "--json").out())
                .path("files")
                .path(0);
        assertThat(file.path("setups").findValuesAsText("name"))
                .containsExactly("As bought", "Flatter, stiffer", "Jelly");
        assertThat(file.path("setups").path(0).path("assumed").findValuesAsText("path"))
                .contains("front.spring.motionRatio", "rear.tyre.pneumaticTrail");
    }

    @Test
    void theReportListsItAndWarns() throws Exception {
        Path out = folder.resolve("bare.html");
        Run run = Run.of("report", car, "-o", out.toString(), "--setup", "Flatter, stiffer");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(Files.readString(out).contains("Not given, taken as none"))
                .as("the owner's")
                .isTrue();
        assertThat(Files.readString(out).contains(CAUTION)).as("the owner's").isTrue();
        Path whole = folder.resolve("engineer.html");
        Run.of("report", car, "-o", whole.toString(), "--setup", "Flatter, stiffer", "--for", "engineer");
        for (String said :
                List.of("What was not given", "no trail of the rear tyres", "no bump stop at the front", CAUTION)) {
            assertThat(Files.readString(whole).contains(said)).as(said).isTrue();
        }
    }

    /** A measured tyre without numbers for lean answers that camber does nothing: then it says why. */
    @Test
    void aChangeOfCamberThatMovesNothingSaysWhy() {
        String text = run("effects", List.of("--setup", "As bought", "--turn", "left"), "--full")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(text)
                .contains("rear.camber (the file has nothing on what the rear tyres do as they lean)")
                .doesNotContain("front.camber (");
    }

    @Test
    void withEstimatedTyresCamberMovesTheLimit() throws JsonProcessingException {
        JsonNode effects = new ObjectMapper()
                .readTree(run("effects", List.of("--setup", "As bought", "--turn", "left"), "--json")
                        .out())
                .path("setups")
                .path(0)
                .path("effects");
        JsonNode camber = effects.valueStream()
                .filter(one -> one.path("change").asText().equals("front.camber"))
                .findFirst()
                .orElseThrow();
        JsonNode limit = camber.path("differences")
                .valueStream()
                .filter(one -> one.path("figure").asText().equals("limit"))
                .findFirst()
                .orElseThrow();
        assertThat(Math.abs(limit.path("difference").asDouble())).isGreaterThan(1e-4);
    }
}
