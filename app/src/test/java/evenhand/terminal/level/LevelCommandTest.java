package evenhand.terminal.level;

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

class LevelCommandTest {
    private static final String CROOKED = "../scenarios/quarry-special.json";
    private static final String SALOON = "../scenarios/harbour-saloon.json";

    @TempDir
    Path folder;

    private static Run run(String... words) {
        return Run.of(Stream.concat(Stream.of("level"), Stream.of(words)).toArray(String[]::new));
    }

    private static JsonNode json(Status status, String... words) {
        Run run = run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isEqualTo(status);
        try {
            return JsonMapper.builder().build().readTree(run.out()).at("/setups/0");
        } catch (JsonProcessingException e) {
            throw new AssertionError(run.out(), e);
        }
    }

    private Path with(String from, String to) throws IOException {
        String text = Files.readString(Path.of(CROOKED));
        assertThat(text).contains(from);
        return Files.writeString(folder.resolve("car.json"), text.replace(from, to));
    }

    @Test
    void theCrookedCarIsBroughtToHalfAndTurnsBetterToTheRightThen() {
        JsonNode answer = json(Status.DONE, CROOKED);
        assertThat(answer.get("status").asText()).isEqualTo("met");
        assertThat(answer.get("crossWeight").asDouble()).isCloseTo((348.0 + 306) / 1250, within(1e-12));
        assertThat(answer.get("crossWeightAfter").asDouble()).isCloseTo(0.5, within(1e-7));
        assertThat(answer.get("corners").findValuesAsText("corner"))
                .containsExactly("frontLeft", "frontRight", "rearLeft", "rearRight");
        double sum = 0;
        for (JsonNode corner : answer.get("corners")) {
            sum += corner.get("change_kg").asDouble();
            assertThat(Math.abs(corner.get("rise_m").asDouble())).isLessThan(0.003);
            assertThat(corner.get("turns").asDouble() % 0.25).isNotZero();
            assertThat(corner.get("turnsInQuarters").asDouble() % 0.25).isZero();
        }
        assertThat(sum).isCloseTo(0, within(1e-6));
        JsonNode leftFront = answer.at("/corners/0");
        assertThat(leftFront.get("turns").asDouble()).isCloseTo(-3.63, within(0.01));
        // 30 mm of thread less what the turns of 2 mm use up
        assertThat(leftFront.get("turnsLeftDown").asDouble())
                .isCloseTo(15 + leftFront.get("turns").asDouble(), within(1e-9));
        double left = answer.at("/limitAfter/0/lateralAcceleration_g").asDouble();
        double right = answer.at("/limitAfter/1/lateralAcceleration_g").asDouble();
        assertThat(answer.at("/limitNow/0/lateralAcceleration_g").asDouble())
                .isGreaterThan(answer.at("/limitNow/1/lateralAcceleration_g").asDouble());
        assertThat(right).isGreaterThan(left);
        assertThat(answer.at("/limitAfter/1/turn").asText()).isEqualTo("right");
    }

    @Test
    void theTurnsToAnotherSetUpsScalesMakeItsLimits() {
        JsonNode answer = json(Status.DONE, CROOKED, "--to", "Scales set for the shaft");
        assertThat(answer.get("crossWeightWanted").asDouble()).isCloseTo((341.5 + 299.5) / 1250, within(1e-12));
        assertThat(answer.at("/limitAfter/0/lateralAcceleration_g").asDouble()).isCloseTo(0.893, within(0.001));
        assertThat(answer.at("/limitAfter/1/lateralAcceleration_g").asDouble()).isCloseTo(0.887, within(0.001));
    }

    @Test
    void withTheDriverAboardAndTheBarsHookedMoreTurnsAreNeeded() {
        JsonNode alone = json(Status.DONE, CROOKED, "--bars", "hooked");
        JsonNode driven = json(Status.DONE, CROOKED, "--bars", "hooked", "--load", "Driver aboard");
        assertThat(driven.at("/corners/0/weighs_kg").asDouble())
                .isCloseTo(348 + 82 * (1 - 1380.0 / 2520) / 2, within(1e-6));
        assertThat(driven.get("crossWeight").asDouble())
                .isLessThan(alone.get("crossWeight").asDouble());
        double turns = 0;
        double unhooked = 0;
        JsonNode loose = json(Status.DONE, CROOKED);
        for (int i = 0; i < 4; i++) {
            turns += Math.pow(alone.at("/corners/" + i + "/turns").asDouble(), 2);
            unhooked += Math.pow(loose.at("/corners/" + i + "/turns").asDouble(), 2);
        }
        assertThat(turns).isGreaterThan(unhooked);
    }

    @Test
    void heightsThatWereMeasuredComeWithinWhatIsAskedFor() {
        JsonNode answer = json(
                Status.DONE,
                CROOKED,
                "--height",
                "frontLeft=361 mm",
                "--height",
                "frontRight=13.976 in",
                "--height",
                "rearLeft=364 mm",
                "--height",
                "rearRight = 358 mm");
        for (JsonNode corner : answer.get("corners")) {
            assertThat(corner.get("heightAfter_m").asDouble())
                    .isCloseTo(corner.get("heightWanted_m").asDouble(), within(0.003 + 1e-6));
        }
        assertThat(answer.get("crossWeightAfter").asDouble()).isCloseTo(0.5, within(1e-7));
    }

    @Test
    void aCrossWeightThatNoPerchReachesIsToldWithHowNearItComes() throws IOException {
        Path short_ =
                with("\"raises\": \"18 mm\", \"lowers\": \"27 mm\"", "\"raises\": \"3 mm\", \"lowers\": \"1.5 mm\"");
        JsonNode answer = json(Status.NO_ANSWER, short_.toString(), "--cross", "45 %");
        assertThat(answer.get("status").asText()).isEqualTo("nearest");
        assertThat(answer.get("crossWeightAfter").asDouble()).isBetween(0.46, 0.52);
        assertThat(answer.get("heldBy").findValuesAsText("limit")).contains("threadDown");
        Run run = run(short_.toString(), "--cross", "45 %");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("A cross weight of 45.0 % is out of reach, the nearest is")
                .contains("the right rear perch has no thread left to go down");
    }

    @Test
    void whatTheFileDoesNotSayIsAskedForWithItsPlace() throws IOException {
        assertThat(run(SALOON).err())
                .matches("(?s)\\Q" + SALOON
                        + "\\E:\\d+:\\d+: car.front.spring: stands on no thread as far as the file says,"
                        + " nor does car.rear.spring; .*\"pitch\": \"2 mm\".*");
        Path weighed = with(
                "\"cornerWeights\": {\"frontLeft\": \"348 kg ± 1 kg\", \"frontRight\": \"315 kg ± 1 kg\","
                        + " \"rearLeft\": \"281 kg ± 1 kg\", \"rearRight\": \"306 kg ± 1 kg\"}",
                "\"mass\": \"1250 kg\", \"frontWeightFraction\": 0.53");
        String text = Files.readString(weighed);
        int setups = text.indexOf("  \"setups\"");
        String withoutBook = text.substring(0, setups).replaceFirst("(?s)  \"log\": .*?  \"hardUse\"", "  \"hardUse\"");
        Files.writeString(weighed, withoutBook.stripTrailing().replaceAll(",$", "") + "\n}\n");
        Run run = run(weighed.toString());
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).contains("car.mass: says nothing of the corners").doesNotContain("\tat ");
        JsonNode byHeights = json(Status.DONE, weighed.toString(), "--height", "frontLeft=349 mm");
        assertThat(byHeights.has("crossWeight")).isFalse();
        assertThat(byHeights.at("/corners/0").has("weighs_kg")).isFalse();
        // 356 mm less a tolerance of 3 are asked for
        assertThat(byHeights.at("/corners/0/heightAfter_m").asDouble()).isCloseTo(0.353, within(1e-6));
    }

    @Test
    void aThreadWithoutPitchIsAProblemOfTheFile() throws IOException {
        Path file = with("\"perch\": {\"pitch\": \"1.5 mm\", ", "\"perch\": {");
        Run run = run(file.toString());
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).contains("car.rear.spring.perch").contains("pitch");
        Path none = with("\"pitch\": \"1.5 mm\"", "\"pitch\": \"0 mm\"");
        assertThat(run(none.toString()).err()).contains("car.rear.spring.perch.pitch");
    }

    @Test
    void aBodyLetDownByMoreThanTheThreadIsNoAnswerAndCheckSaysSo() throws IOException {
        Path file = with(
                "\"lateralForceSteer\": \"0.01 deg/kN\"",
                "\"lowered\": \"28 mm\", \"lateralForceSteer\": \"0.01 deg/kN\"");
        Run run = run(file.toString());
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run.out()).contains("mm of thread at the left rear");
        assertThat(Run.of("check", file.toString()).out()).contains("car.rear.lowered: uses 27.7 mm of thread");
    }

    @Test
    void whatCannotBeMeantIsRefusedInALine() {
        List<String[]> wrong = List.of(
                new String[] {"--cross", "80 %"},
                new String[] {"--cross", "50 %", "--to", "Scales evened out"},
                new String[] {"--height", "frontleft 349 mm"},
                new String[] {"--height", "frontLeft=349"},
                new String[] {"--bars", "off"},
                new String[] {"--to", "Scales"});
        for (String[] words : wrong) {
            List<String> all = new ArrayList<>(List.of(CROOKED));
            all.addAll(List.of(words));
            Run run = run(all.toArray(String[]::new));
            assertThat(run.status()).as(run.out()).isEqualTo(Status.WRONG);
            assertThat(run.err().lines()).hasSize(1);
        }
    }

    @Test
    void aSpreadsheetHasARowForEachCorner() {
        Run run = run(CROOKED, "--csv", "--units", "imperial");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out().lines()).hasSize(5);
        assertThat(run.out())
                .startsWith("setup,corner,turns,turnsInQuarters,weighs_lb,")
                .contains("rise_in");
    }
}
