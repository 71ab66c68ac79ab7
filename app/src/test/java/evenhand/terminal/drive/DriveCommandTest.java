package evenhand.terminal.drive;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DriveCommandTest {
    private static final String SALOON = "../scenarios/harbour-saloon.json";
    private static final double G = 9.80665;

    @TempDir
    Path folder;

    private static JsonNode json(String... words) {
        Run run = Run.of(Stream.concat(Stream.of("drive"), Stream.concat(Stream.of(words), Stream.of("--json")))
                .toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isEqualTo(Status.DONE);
        try {
            return JsonMapper.builder().build().readTree(run.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(run.out(), e);
        }
    }

    @Test
    void anAnswerHasThePinnedKeys() {
        JsonNode setup = json(SALOON, "--setup", "As bought").at("/setups/0");
        List<String> keys = new ArrayList<>();
        setup.get("gears").get(0).fieldNames().forEachRemaining(keys::add);
        assertThat(keys)
                .containsExactly(
                        "gear",
                        "overallRatio",
                        "speedPer1000rpm_m_per_s",
                        "speedAtRedLine_m_per_s",
                        "rpmAtSpeed",
                        "driveForce_N",
                        "acceleration_g",
                        "grade",
                        "limitedBy");
        assertThat(setup.at("/launch/firstWheel").asText()).isEqualTo("rearRight");
        assertThat(setup.at("/launch/limitedBy").asText()).isEqualTo("grip");
        assertThat(setup.at("/differentials/locked_g").asDouble())
                .isGreaterThan(setup.at("/differentials/open_g").asDouble());
        double along = 0;
        double load = 0;
        for (String wheel : List.of("frontLeft", "frontRight", "rearLeft", "rearRight")) {
            along +=
                    setup.at("/launch/wheels/" + wheel + "/longitudinalForce_N").asDouble();
            load += setup.at("/launch/wheels/" + wheel + "/load_N").asDouble();
        }
        assertThat(load).isCloseTo(1065 * G, within(1e-6));
        assertThat(along)
                .isCloseTo(1065 * G * setup.at("/launch/acceleration_g").asDouble(), within(1e-6));
    }

    /** The shaft unloads the right rear wheel; turning the other way round it unloads the left one. */
    @Test
    void theShaftsSenseDecidesWhichWheelSpins() {
        String file = write("anticlockwise from behind", "clockwise from behind");
        assertThat(json(file, "--setup", "As bought")
                        .at("/setups/0/launch/firstWheel")
                        .asText())
                .isEqualTo("rearLeft");
        assertThat(json(SALOON, "--setup", "As bought").at("/setups/0/words").asText())
                .contains("off the right rear wheel")
                .contains("that costs")
                .contains("closed course");
    }

    @Test
    void tallerTyresAndAnotherRatioMoveTheSpeedometer() {
        String file = write(
                "{\"name\": \"As bought\",",
                "{\"name\": \"First\"}, {\"name\": \"Taller\", \"changes\": {\"rear\": {\"tyre\": {\"rollingRadius\": \"330 mm\"}}, \"drive\": {\"finalDrive\": 3.9}}}, {\"name\": \"As bought\",");
        JsonNode setups = json(file, "--setup", "First", "--setup", "Taller").get("setups");
        double before = 3.05 * (14 * 0.0254 + 2 * 0.175 * 0.7) / (2 * Math.PI);
        assertThat(setups.at("/0/tyres/speedometerAt100_km_per_h").asDouble()).isEqualTo(100);
        assertThat(setups.at("/1/tyres/speedometerAt100_km_per_h").asDouble())
                .isCloseTo(100 * before / 0.33 * 3.9 / 4.3, within(1e-9));
        assertThat(setups.at("/1/tyres/equalFinalDrive").asDouble()).isCloseTo(4.3 * 0.33 / before, within(1e-9));
        assertThat(setups.get(0).get("estimated").findValuesAsText("path"))
                .contains("rear.tyre.rollingRadius", "drive.efficiency");
        assertThat(setups.get(1).get("estimated").findValuesAsText("path")).doesNotContain("rear.tyre.rollingRadius");
    }

    @Test
    void aCarWithoutEngineIsLaunchedByGripAlone() {
        JsonNode setup = json("../scenarios/slipper-coupe.json", "--setup", "As the customer wished")
                .at("/setups/0");
        assertThat(setup.has("gears")).isFalse();
        assertThat(setup.at("/launch/engine_g").isMissingNode()).isTrue();
        assertThat(setup.at("/launch/acceleration_g").asDouble())
                .isEqualTo(setup.at("/launch/grip_g").asDouble());
    }

    /** 2·rate·l²/4 of leaves, and nose up under drive. */
    @Test
    void leavesWindUpByTheAxlesTorque() throws IOException {
        String text = Files.readString(Path.of("../scenarios/postman-leaf.json"));
        JsonNode given = JsonMapper.builder().build().readTree(text).at("/car/rear/spring");
        String rate = given.get("rate").asText();
        double newtonsPerMetre = 1000 * Double.parseDouble(rate.substring(0, rate.indexOf(' ')));
        Path file = Files.writeString(
                folder.resolve("leaves.json"),
                text.replaceFirst(
                        "\"rate\": \"" + rate + "\", \"base\"",
                        "\"rate\": \"" + rate + "\", \"leafLength\": \"1180 mm\", \"base\""));
        JsonNode setup = json(file.toString(), "--setup", "As it stands").at("/setups/0");
        double stiffness = 2 * newtonsPerMetre * 1.18 * 1.18 / 4;
        assertThat(setup.get("estimated").findValuesAsText("path")).contains("rear.spring.windUpStiffness");
        double windUp = setup.at("/launch/windUp_deg").asDouble();
        double torque = Math.toRadians(windUp) * stiffness;
        assertThat(torque / setup.at("/launch/driveForce_N").asDouble()).isBetween(0.28, 0.34); // the loaded radius
        assertThat(Run.of("drive", file.toString(), "--setup", "As it stands").out())
                .contains("wind up by");
        assertThat(Run.of("brakes", file.toString(), "--setup", "As it stands", "--json")
                        .out())
                .contains("\"windUp_deg\" : -");
    }

    @Test
    void mistakesAreOneLine() {
        assertThat(Run.of("drive", SALOON, "--speed", "0 km/h").err())
                .contains("--speed")
                .hasLineCount(1);
        assertThat(Run.of("drive", SALOON, "--load", "Four").status()).isEqualTo(Status.WRONG);
        assertThat(Run.of("drive", SALOON, "--csv").out()).startsWith("setup,launch.acceleration_g,");
    }

    private String write(String before, String after) {
        try {
            String text = Files.readString(Path.of(SALOON));
            assertThat(text).contains(before);
            return Files.writeString(folder.resolve("changed.json"), text.replace(before, after))
                    .toString();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
