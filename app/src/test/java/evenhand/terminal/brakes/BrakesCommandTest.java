package evenhand.terminal.brakes;

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
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BrakesCommandTest {
    private static final String SALOON = "../scenarios/harbour-saloon.json";
    private static final String ESTATE = "../scenarios/orchard-estate.json";
    private static final double G = 9.80665;

    @TempDir
    Path folder;

    private static JsonNode json(String... words) {
        Run run = Run.of(Stream.concat(Stream.of("brakes"), Stream.concat(Stream.of(words), Stream.of("--json")))
                .toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isEqualTo(Status.DONE);
        try {
            return JsonMapper.builder().build().readTree(run.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(run.out(), e);
        }
    }

    private static JsonNode row(JsonNode setup, double deceleration) {
        return StreamSupport.stream(setup.get("rows").spliterator(), false)
                .filter(row -> Math.abs(row.get("deceleration_g").asDouble() - deceleration) < 1e-9)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anAnswerHasThePinnedKeysInTheirOrder() {
        JsonNode setup = json(SALOON, "--setup", "As bought").at("/setups/0");
        List<String> keys = new ArrayList<>();
        setup.get("rows").get(0).fieldNames().forEachRemaining(keys::add);
        assertThat(keys)
                .containsExactly(
                        "deceleration_g",
                        "frontLoad_N",
                        "rearLoad_N",
                        "frontBrakeForce_N",
                        "rearBrakeForce_N",
                        "frontIdealForce_N",
                        "rearIdealForce_N",
                        "frontAdhesion",
                        "rearAdhesion",
                        "brakeBalance",
                        "frontPressure_Pa",
                        "rearPressure_Pa",
                        "pedalForce_N",
                        "pedalForceNoBooster_N",
                        "frontHeave_m",
                        "rearHeave_m",
                        "pitch_deg",
                        "antiDive",
                        "antiLift");
        assertThat(setup.get("rows")).hasSize(24);
        assertThat(setup.get("lock")).hasSize(4);
        assertThat(setup.get("lock").get(1).get("friction").asDouble()).isEqualTo(0.5);
        assertThat(setup.get("lock").get(3).get("tyres").asBoolean()).isTrue();
        assertThat(setup.get("lock").get(3).has("efficiency")).isFalse();
        assertThat(setup.get("crossings_g")).hasSize(1);
        assertThat(setup.get("rules").findValuesAsText("rule")).containsExactly("71/320/EEC, UN R13", "UN R13-H");
        assertThat(setup.get("stops")).hasSize(5);
        assertThat(setup.get("stops").get(0).get("locks").asBoolean()).isFalse();
    }

    /** The whole chain of the file's numbers, at a tenth of what the program rounds to. */
    @Test
    void pressuresForcesAndPedalHangTogether() {
        JsonNode row = row(json(SALOON, "--setup", "As bought").at("/setups/0"), 0.6);
        double pressure = row.get("frontPressure_Pa").asDouble();
        double rod = pressure * Math.PI / 4 * 0.019 * 0.019;
        assertThat(row.get("pedalForce_N").asDouble()).isCloseTo(rod / 1.9 / (4.4 * 0.9), within(1e-6));
        assertThat(row.get("pedalForceNoBooster_N").asDouble()).isCloseTo(rod / (4.4 * 0.9), within(1e-6));
        double rear = 2 * 2.3 * Math.PI / 4 * 0.019 * 0.019 * (pressure - 2.5e5) * 0.1;
        double ratio = row.get("rearBrakeForce_N").asDouble()
                / row.get("frontBrakeForce_N").asDouble();
        double front = 2 * 2 * 0.38 * Math.PI / 4 * 0.048 * 0.048 * pressure * 0.101;
        assertThat(ratio).isCloseTo(rear / radius("rear") / (front / radius("front")), within(1e-9));
        double weight = 1065 * G;
        assertThat(row.get("frontLoad_N").asDouble() + row.get("rearLoad_N").asDouble())
                .isCloseTo(weight, within(1e-6));
        assertThat(row.get("frontBrakeForce_N").asDouble()
                        + row.get("rearBrakeForce_N").asDouble())
                .isCloseTo(0.6 * weight, within(1e-6));
    }

    /** Loaded radius of the saloon's tyres at an end, mm. */
    private static double radius(String end) {
        try {
            String text = JsonMapper.builder()
                    .build()
                    .readTree(Files.readString(Path.of(SALOON)))
                    .at("/car/" + end + "/tyre/loadedRadius")
                    .asText();
            return Double.parseDouble(text.substring(0, text.indexOf(' ')));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void theVerdictStandsFirstAndSaysPlainlyThatTheRearLocksFirst() {
        Run run = Run.of("brakes", SALOON, "--setup", "As bought", "--friction", "0.8", "--at", "0.6 g");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out())
                .contains("The rear locks first: unsafe.")
                .contains("On a road of friction 0.8")
                .contains("no approval")
                .contains("closed ground");
        Run small = Run.of(
                "brakes",
                write(
                        "\"bore\": \"19 mm\", \"radius\": \"100 mm\"",
                        "\"bore\": \"15.9 mm\", \"radius\": \"100 mm\"",
                        SALOON),
                "--setup",
                "As bought");
        assertThat(small.out()).contains("The front locks first").doesNotContain("unsafe");
    }

    @Test
    void withoutTheBoosterTheFootPressesByItsGainMore() {
        double helped = row(json(SALOON, "--setup", "As bought").at("/setups/0"), 0.3)
                .get("pedalForce_N")
                .asDouble();
        double alone = row(json(SALOON, "--setup", "As bought", "--no-booster").at("/setups/0"), 0.3)
                .get("pedalForce_N")
                .asDouble();
        assertThat(alone / helped).isCloseTo(1.9, within(1e-9));
    }

    /** 47 mm of load at 0.6 bar/mm: the valve lets more through, and says so. */
    @Test
    void aLoadRaisesTheKneeOfAValveThatFeelsIt() {
        JsonNode empty = json(ESTATE, "--setup", "Before").at("/setups/0");
        JsonNode full = json(ESTATE, "--setup", "Before", "--load", "Four up and apples")
                .at("/setups/0");
        assertThat(row(full, 0.9).get("rearPressure_Pa").asDouble())
                .isGreaterThan(row(empty, 0.9).get("rearPressure_Pa").asDouble() + 5e5);
        assertThat(full.get("words").asText()).contains("with a full boot").contains("instead of 28 bar");
        assertThat(empty.get("words").asText()).doesNotContain("boot,");
    }

    @Test
    void aShareAloneAnswersWithoutPedalAndAnEstimateIsListed() {
        JsonNode share = json("../scenarios/sluice-tourer.json", "--setup", "As measured")
                .at("/setups/0");
        assertThat(row(share, 0.6).has("pedalForce_N")).isFalse();
        assertThat(share.has("stops")).isFalse();
        assertThat(share.has("estimated") && share.get("estimated").toString().contains("brakes.frontShare"))
                .isFalse();
        JsonNode none = json("../scenarios/postman-leaf.json", "--setup", "As it stands")
                .at("/setups/0");
        assertThat(none.get("estimated").findValuesAsText("path")).contains("brakes.frontShare");
    }

    @Test
    void aCarThatFallsOverHasNoAnswerAndTheOthersStillDo() throws IOException {
        String file = Files.writeString(folder.resolve("mule.json"), Run.CAR).toString();
        for (String command : List.of("brakes", "drive")) {
            Run run = Run.of(command, file, "--json");
            assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
            assertThat(run.out()).contains("\"reason\" : \"fallsOver\"").contains("\"As bought\"");
            assertThat(Run.of(command, file, "--csv").err()).contains("no answer for \"Jelly\"");
            assertThat(Run.of(command, file).out()).contains("No answer: ");
        }
    }

    @Test
    void csvHasARowPerDecelerationAndImperialItsUnits() {
        Run run = Run.of("brakes", SALOON, "--setup", "As bought", "--csv", "--at", "0.33 g", "--units", "imperial");
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSize(26);
        assertThat(lines.get(0))
                .startsWith("setup,deceleration_g,frontLoad_lbf,")
                .contains("frontPressure_psi");
    }

    @Test
    void mistakesOfTheCommandLineAreOneLineWithARemedy() {
        assertThat(Run.of("brakes", SALOON, "--at", "0.6").status()).isEqualTo(Status.WRONG);
        assertThat(Run.of("brakes", SALOON, "--at", "3 g").err()).contains("--at \"3 g\": must lie between");
        assertThat(Run.of("brakes", SALOON, "--pedal", "20 kg").err())
                .contains("--pedal \"20 kg\"")
                .hasLineCount(1);
        assertThat(Run.of("brakes", SALOON, "--friction", "-1").status()).isEqualTo(Status.WRONG);
        assertThat(Run.of("brakes", SALOON, "--setup", "Lowerd").err()).contains("did you mean");
    }

    @Test
    void aSideViewBesideLinksIsRefusedWithWhatTheLinksSay() {
        String file = write(
                "\"layout\": \"live axle\",",
                "\"layout\": \"live axle\", \"sideView\": {\"swingArm\": \"2 m\", \"swingCentreHeight\": \"300 mm\"},",
                "../scenarios/sluice-tourer.json");
        Run run = Run.of("brakes", file);
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).contains("car.rear.sideView: the links decide this, contact slope comes out at 0.");
    }

    @Test
    void aSetUpOnBiggerTyresWithoutNewHeightsIsWarnedOf() {
        String file = write(
                "{\"name\": \"As bought\",",
                "{\"name\": \"Taller\", \"changes\": {\"rear\": {\"tyre\": {\"loadedRadius\": \"320 mm\"}}}}, {\"name\": \"As bought\",",
                SALOON);
        Run run = Run.of("check", file);
        assertThat(run.out())
                .contains("setups[0].changes.rear.tyre.loadedRadius: lifts or lowers all that stands on these tyres");
        assertThat(Run.of("check", SALOON).out()).doesNotContain("lifts or lowers");
    }

    private String write(String before, String after, String file) {
        try {
            String text = Files.readString(Path.of(file));
            assertThat(text).contains(before);
            return Files.writeString(folder.resolve("changed.json"), text.replace(before, after))
                    .toString();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
