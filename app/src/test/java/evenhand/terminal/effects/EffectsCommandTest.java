package evenhand.terminal.effects;

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
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EffectsCommandTest {
    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeTheCar() {
        car = Run.car(folder).toString();
    }

    @Test
    void theAnswerHasTheKeysOfTheContract() {
        JsonNode answer = json("effects", car, "--json");
        assertThat(keys(answer)).containsExactly("evenhand", "command", "scenario", "setups");
        assertThat(answer.get("setups").size()).isEqualTo(1);
        JsonNode setup = answer.get("setups").get(0);
        assertThat(setup.get("name").asText()).isEqualTo("As bought");
        JsonNode effect = setup.get("effects").get(0);
        assertThat(keys(effect)).containsExactly("change", "step", "stepUnit", "differences");
        assertThat(keys(effect.get("differences").get(0)))
                .containsExactly("figure", "lateralAcceleration_g", "unit", "base", "difference");
        JsonNode spring = effect(setup, "rear.spring.rate");
        assertThat(spring.get("step").asDouble()).isCloseTo(2800, within(1e-9));
        assertThat(spring.get("stepUnit").asText()).isEqualTo("N/m");
    }

    @Test
    void everyAdjustmentStandsOnceAndOneStepDoesWhatAChangedFileDoes() {
        JsonNode setup = json("effects", car, "--json").get("setups").get(0);
        Set<String> changes = new HashSet<>();
        setup.get("effects")
                .forEach(effect ->
                        assertThat(changes.add(effect.get("change").asText())).isTrue());
        assertThat(changes)
                .contains("rear.spring.rate", "front.rollCentre.height", "front.tyre.pressure", "front.lowered");
        String stiffer = Run.CAR.replace("\"28 N/mm\"", "\"30.8 N/mm\"");
        Path changed = Run.file(folder, "stiffer.json", stiffer);
        for (int i = 0; i < 16; i++) {
            JsonNode move = effect(setup, "rear.spring.rate").get("differences").get(i);
            JsonNode there = effect(
                            json("effects", changed.toString(), "--json")
                                    .get("setups")
                                    .get(0),
                            "rear.spring.rate")
                    .get("differences")
                    .get(i);
            assertThat(move.get("base").asDouble() + move.get("difference").asDouble())
                    .as(move.get("figure").asText())
                    .isCloseTo(there.get("base").asDouble(), within(1e-6));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "pushes gently, understeer, -1",
        "pushes briskly, understeer, -1",
        "Pushes  at the limit, understeer near the limit, -1",
        "leans, lean, -1"
    })
    void everythingThatIsNamedAgainstAComplaintHelpsAndTheBestComesFirst(String words, String figure, int sign) {
        JsonNode setup = json("effects", car, "--json", "--complaint", words)
                .get("setups")
                .get(0);
        double pace = words.contains("gently") ? 0.2 : 0.5;
        double before = Double.POSITIVE_INFINITY;
        assertThat(setup.get("complaint").get("shown").asBoolean()).isTrue();
        assertThat(setup.get("complaint").get("figure").asText()).isEqualTo(figure);
        assertThat(setup.get("complaint").get("value").asDouble()).isPositive();
        assertThat(setup.get("effects")).isNotEmpty();
        for (JsonNode effect : setup.get("effects")) {
            assertThat(keys(effect)).contains("work", "wayBack", "worth");
            assertThat(effect.get("worth").asDouble()).isPositive().isLessThanOrEqualTo(before);
            before = effect.get("worth").asDouble();
            for (JsonNode move : effect.get("differences")) {
                JsonNode at = move.get("lateralAcceleration_g");
                if (move.get("figure").asText().equals(figure) && (at == null || at.asDouble() == pace)) {
                    assertThat(sign * move.get("difference").asDouble()).isPositive();
                }
            }
        }
        String best = setup.get("effects").get(0).get("change").asText().replaceAll("\\..*", "");
        assertThat(setup.get("words").asText())
                .containsPattern("^(Change first: |Fit first: a )" + best)
                .contains(figure);
    }

    @ParameterizedTest
    @CsvSource({
        "slides gently, understeer",
        "slides briskly, understeer",
        "Slides  at the limit, understeer near the limit",
        "spins the inside wheel, inside rear load"
    })
    void aComplaintThatTheSumsDoNotShowIsSaidToBeNone(String words, String figure) {
        Run run = Run.of("effects", "../scenarios/harbour-saloon.json", "--json", "--complaint", words);
        assertThat(run.status()).isEqualTo(Status.DONE);
        JsonNode setup = parsed(run.out()).get("setups").get(0);
        assertThat(setup.get("complaint").get("shown").asBoolean()).isFalse();
        assertThat(setup.get("complaint").get("figure").asText()).isEqualTo(figure);
        assertThat(setup.get("effects")).isEmpty();
        assertThat(setup.get("words").asText())
                .startsWith("By the sums it does not ")
                .contains("Look instead at ");
    }

    /** The mule's rubbers are near: bringing them nearer would take much of its push, and snap. */
    @Test
    void whatIsNotAdvisedIsNamedWithItsReason() {
        JsonNode setup = json("effects", car, "--json", "--complaint", "pushes at the limit")
                .get("setups")
                .get(0);
        JsonNode gap = null;
        for (JsonNode refused : setup.get("notAdvised")) {
            if (refused.get("change").asText().equals("rear.bumpStop.gap")) {
                gap = refused;
            }
        }
        assertThat(gap).isNotNull();
        assertThat(gap.get("step").asDouble()).isNegative();
        assertThat(gap.get("reason").asText()).isIn("need", "stop", "slides");
        for (JsonNode effect : setup.get("effects")) {
            assertThat(effect.get("change").asText()).isNotEqualTo("rear.bumpStop.gap");
        }
    }

    @Test
    void aBarThatIsNotFittedIsAdvisedInARangeOfSizes() {
        String baker = "../scenarios/bakery-front-drive.json";
        JsonNode bar = effect(
                json("effects", baker, "--json", "--complaint", "pushes at the limit")
                        .get("setups")
                        .get(0),
                "rear.bar.rollStiffness");
        assertThat(bar.get("step").asDouble()).isCloseTo(60 * 180 / Math.PI, within(1e-6));
        assertThat(bar.get("stepUnit").asText()).isEqualTo("N*m/rad");
        assertThat(bar.get("upTo").asDouble()).isGreaterThan(bar.get("step").asDouble());
        assertThat(bar.get("work").asText()).isEqualTo("rebuilding");
        assertThat(bar.get("wayBack").asText()).isEqualTo("oldPart");
        List<String> rows =
                Run.of("effects", baker, "--csv", "--complaint", "wallows").lines();
        assertThat(rows).anyMatch(row -> row.startsWith("As delivered,rear.damper,0.1"));
    }

    @Test
    void onlyWhatAShopCanChangeIsAdvised() {
        String pushes = Run.of("effects", car, "--complaint", "pushes at the limit", "--full")
                .out();
        assertThat(pushes)
                .contains("rear.spring.rate +", "Best first: the gain")
                .doesNotContain("tyre.friction", "frontWeightFraction", "unsprungMass");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bakery-front-drive", "harbour-saloon", "quarry-special", "tinkers-lane-roadster"})
    void demoCarsAreAnswered(String name) {
        Run run = Run.of("effects", "../scenarios/" + name + ".json", "--full");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.err()).isEmpty();
        assertThat(run.lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void csvHasARowPerDifference() {
        List<String> lines = Run.of("effects", car, "--csv").lines();
        assertThat(lines.get(0))
                .isEqualTo("setup,change,step,stepUnit,figure,lateralAcceleration_g,unit,base,difference");
        assertThat(lines)
                .anyMatch(line -> line.startsWith("As bought,rear.spring.rate,2800.0,N/m,understeer,0.2,deg/g,"));
        assertThat(Run.of("effects", car, "--csv", "--units", "imperial").out()).contains(",lbf/in,understeer,");
    }

    @Test
    void aSetupWithoutAnAnswerSaysWhy() {
        Run run = Run.of("effects", car, "--json", "--setup", "Jelly");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(parsed(run.out())
                        .get("setups")
                        .get(0)
                        .get("noAnswer")
                        .get("reason")
                        .asText())
                .isEqualTo("fallsOver");
        Run beyond = Run.of("effects", car, "--complaint", "leans", "--pace", "1.4 g");
        assertThat(beyond.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(beyond.out()).contains("the pace of the complaint is beyond its limit");
    }

    @Test
    void mistakesAreOneLine() {
        Run unknown = Run.of("effects", car, "--complaint", "squeaks");
        assertThat(unknown.status()).isEqualTo(Status.WRONG);
        assertThat(unknown.err()).startsWith("evenhand effects: --complaint \"squeaks\": write \"pushes\"");
        Run undamped = Run.of("effects", car, "--complaint", "wallows");
        assertThat(undamped.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(undamped.out()).contains("the file has no damper curves to judge its ride by");
        assertThat(Run.of("effects", car, "--json", "--csv").status()).isEqualTo(Status.WRONG);
    }

    @Test
    void aCarThatWallowsIsHelpedByTheNextSettingOfItsDampers() {
        String damper = """
                "damper": {"settings": [
                  {"name": "soft", "bump": [["0 m/s", "0 N"], ["0.1 m/s", "40 N"]],
                   "rebound": [["0 m/s", "0 N"], ["0.1 m/s", "80 N"]]},
                  {"name": "firm", "bump": [["0 m/s", "0 N"], ["0.1 m/s", "80 N"]],
                   "rebound": [["0 m/s", "0 N"], ["0.1 m/s", "160 N"]]}], "setting": "soft"},
                "bumpStop\"""";
        String damped = Run.file(folder, "damped.json", Run.CAR.replace("\"bumpStop\"", damper.strip()))
                .toString();
        JsonNode setup = json("effects", damped, "--complaint", "wallows", "--json")
                .get("setups")
                .get(0);
        JsonNode best = setup.get("effects").get(0);
        assertThat(best.get("change").asText()).isEqualTo("rear.damper.setting");
        assertThat(best.get("from").asText()).isEqualTo("soft");
        assertThat(best.get("to").asText()).isEqualTo("firm");
        assertThat(setup.get("words").asText()).contains("rear damper setting to \"firm\"");
        // Twice the forces of a weak damper are twice its damping, nearly.
        for (JsonNode difference : best.get("differences")) {
            if (difference.get("figure").asText().equals("rear damping")) {
                assertThat(difference.get("difference").asDouble()
                                / difference.get("base").asDouble())
                        .isBetween(0.95, 1.1);
            }
        }
        JsonNode hard = json("effects", damped, "--complaint", "rides hard", "--json");
        assertThat(hard.get("setups").get(0).get("words").asText()).contains("the shaking above the rear axle");
    }

    @Test
    void whatNobodyFeelsAndWhatCostsHeightIsSaid() {
        String[] asked = {
            "effects",
            "../scenarios/bakery-front-drive.json",
            "--complaint",
            "pushes at the limit",
            "--setup",
            "As delivered"
        };
        String words = Run.of(asked).out().replaceAll("\\s+", " ");
        assertThat(words)
                .contains("−1.47 deg/g, from 22.01 to 20.54 deg/g.")
                .contains("By itself that is too small a gain to be felt.")
                .containsPattern("front.bar.diameter −1 mm: [^:]*; no longer works 13 mm down; too small to feel")
                .containsPattern("front.links.tieRod.longer \\+0.25 mm: [^:]*; too small to feel")
                .containsPattern("rear.bar.rollStiffness of 60 to 180 N\\*m/deg: [^:]*deg/g \\(rebuilding\\)");
        JsonNode setup = json(Stream.concat(Arrays.stream(asked), Stream.of("--json"))
                        .toArray(String[]::new))
                .get("setups")
                .get(0);
        assertThat(effect(setup, "front.tyre.pressure").get("tooSmallToFeel").asBoolean())
                .isTrue();
        JsonNode bar = effect(setup, "front.bar.diameter");
        assertThat(bar.get("noLongerWorks").get("lowered_m").asDouble()).isBetween(0.012, 0.014);
        assertThat(bar.get("noLongerWorks").get("need").asText()).isNotEmpty();
        double least = 0.1 * 22.01;
        for (JsonNode one : setup.get("effects")) {
            JsonNode move = one.get("differences")
                    .valueStream()
                    .filter(each -> each.get("figure").asText().equals("understeer near the limit"))
                    .findFirst()
                    .orElseThrow();
            if (one.get("upTo") == null) {
                assertThat(one.has("tooSmallToFeel"))
                        .as(one.get("change").asText())
                        .isEqualTo(Math.abs(move.get("difference").asDouble()) < least);
            }
        }
    }

    private static JsonNode effect(JsonNode setup, String change) {
        for (JsonNode effect : setup.get("effects")) {
            if (effect.get("change").asText().equals(change)) {
                return effect;
            }
        }
        throw new AssertionError(change + " is missing");
    }

    private static JsonNode json(String... args) {
        return parsed(Run.of(args).out());
    }

    private static JsonNode parsed(String text) {
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
}
