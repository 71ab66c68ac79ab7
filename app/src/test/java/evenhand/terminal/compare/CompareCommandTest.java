package evenhand.terminal.compare;

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
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CompareCommandTest {
    private static final String SETUPS = """
              "setups": [
                {"name": "As bought"},
                {"name": "Firmer", "changes": {
                  "front": {"spring": {"rate": "66 N/mm"}, "bar": {"rollStiffness": "300 N*m/deg"}},
                  "rear": {"spring": {"rate": "30 N/mm"}}}},
                {"name": "Back again", "basedOn": "Firmer", "changes": {
                  "front": {"spring": {"rate": "60 N/mm"}, "bar": null}}},
                {"name": "Idle", "changes": {"front": {"spring": {"freeLength": "305 mm"}}}},
                {"name": "Jelly", "changes": {
                  "front": {"spring": {"rate": "3 N/mm"}}, "rear": {"spring": {"rate": "3 N/mm"}}}}
              ]
            }
            """;

    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeTheCar() {
        String head = Run.CAR.substring(0, Run.CAR.indexOf("\"setups\""));
        car = Run.file(folder, "choice.json", head + SETUPS.strip()).toString();
    }

    @Test
    void theAnswerHasTheKeysOfTheContract() {
        JsonNode answer = json("compare", car, "--json", "--setup", "Firmer");
        assertThat(keys(answer)).containsExactly("evenhand", "command", "scenario", "base", "setups");
        assertThat(answer.get("base").asText()).isEqualTo("As bought");
        JsonNode setup = answer.get("setups").get(0);
        assertThat(keys(setup)).startsWith("name", "differences", "words");
        JsonNode first = setup.get("differences").get(0);
        assertThat(keys(first))
                .containsExactly("figure", "lateralAcceleration_g", "unit", "base", "value", "difference", "shares");
        assertThat(first.get("figure").asText()).isEqualTo("understeer");
        assertThat(first.get("unit").asText()).isEqualTo("deg/g");
        assertThat(keys(first.get("shares").get(0))).containsExactly("change", "from", "to", "share");
        List<String> changes = new ArrayList<>();
        first.get("shares").forEach(share -> changes.add(share.get("change").asText()));
        assertThat(changes)
                .containsExactlyInAnyOrder("front.spring.rate", "front.bar.rollStiffness", "rear.spring.rate");
        assertThat(setup.get("differences").size()).isEqualTo(2 * 7 + 3);
        JsonNode last = setup.get("differences").get(15);
        assertThat(last.get("figure").asText()).isEqualTo("limit balance");
        assertThat(last.has("lateralAcceleration_g")).isFalse();
        JsonNode near = setup.get("differences").get(16);
        assertThat(near.get("figure").asText()).isEqualTo("understeer near the limit");
        assertThat(near.get("unit").asText()).isEqualTo("deg/g");
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
    void sharesAddUpToTheDifferenceOnEveryDemoCar(String name) {
        Run run = Run.of("compare", "../scenarios/" + name + ".json", "--json");
        assertThat(run.err()).isEmpty();
        int compared = 0;
        for (JsonNode setup : parsed(run.out()).get("setups")) {
            for (JsonNode difference : setup.get("differences")) {
                double sum = 0;
                for (JsonNode share : difference.get("shares")) {
                    sum += share.get("share").asDouble();
                }
                double whole = difference.get("difference").asDouble();
                assertThat(whole)
                        .isCloseTo(
                                difference.get("value").asDouble()
                                        - difference.get("base").asDouble(),
                                within(1e-9));
                assertThat(sum).isCloseTo(whole, within(1e-9 * Math.max(1, Math.abs(whole))));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(16);
    }

    @Test
    void valuesAndBaseAreThoseThatBalanceAnswers() {
        JsonNode balance = json("balance", car, "--json", "--setup", "Firmer")
                .get("setups")
                .get(0);
        JsonNode first = json("compare", car, "--json", "--setup", "Firmer")
                .get("setups")
                .get(0)
                .get("differences")
                .get(0);
        assertThat(first.get("value").asDouble())
                .isEqualTo(balance.get("paces")
                        .get(0)
                        .get("understeerGradient_deg_per_g")
                        .asDouble());
    }

    @Test
    void theOtherWayRoundEveryShareAndEverySentenceTurnsRound() {
        JsonNode there = json("compare", car, "--json", "--setup", "Firmer")
                .get("setups")
                .get(0);
        JsonNode back = json("compare", car, "--json", "--base", "Firmer", "--setup", "As bought")
                .get("setups")
                .get(0);
        for (int i = 0; i < there.get("differences").size(); i++) {
            Map<String, Double> one = shares(there.get("differences").get(i));
            Map<String, Double> other = shares(back.get("differences").get(i));
            one.forEach((change, share) -> assertThat(other.get(change)).isCloseTo(-share, within(1e-9)));
        }
        assertThat(there.get("words").asText()).contains("At 0.5 g each further g adds less lean, by ");
        assertThat(back.get("words").asText()).contains("At 0.5 g each further g adds more lean, by ");
        assertThat(there.get("words").asText()).contains("front bar roll stiffness goes from none to 300 N*m/deg");
        assertThat(back.get("words").asText()).contains("front bar roll stiffness goes from 300 N*m/deg to none");
    }

    @Test
    void aSetupBasedOnAnotherIsComparedByWhatIsLeftOfItsChanges() {
        JsonNode setup = json("compare", car, "--json", "--setup", "Back again")
                .get("setups")
                .get(0);
        assertThat(shares(setup.get("differences").get(0)).keySet()).containsExactly("rear.spring.rate");
    }

    @Test
    void aChangeWithoutEffectIsSaidToHaveNone() {
        JsonNode setup =
                json("compare", car, "--json", "--setup", "Idle").get("setups").get(0);
        setup.get("differences")
                .forEach(difference ->
                        assertThat(difference.get("difference").asDouble()).isZero());
        assertThat(setup.get("words").asText())
                .contains("No effect on any figure, at any pace or at the limit, has front spring free length.")
                .contains("At 0.5 g the lean that each further g adds stays as it is, ");
    }

    @Test
    void aSetupWithoutAnAnswerSaysWhyAndTheOthersAreAnswered() {
        Run run = Run.of("compare", car, "--json");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        JsonNode setups = parsed(run.out()).get("setups");
        assertThat(setups.size()).isEqualTo(4);
        assertThat(keys(setups.get(3).get("noAnswer"))).containsExactly("reason", "text");
        assertThat(setups.get(0).has("differences")).isTrue();
        assertThat(Run.of("compare", car, "--csv").err()).startsWith("evenhand compare: no answer for \"Jelly\": ");
        Run fromJelly = Run.of("compare", car, "--base", "Jelly", "--setup", "Firmer", "--full");
        assertThat(fromJelly.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(fromJelly.out()).contains("No answer: the base, \"Jelly\", has no answer: ");
    }

    @Test
    void aSetupOfTwentyChangesIsSharedOutToGroupsOfThem() {
        String many = Run.CAR.replace(
                "{\"name\": \"Flatter, stiffer\", \"changes\": {\"front\": {\"bar\": {\"rollStiffness\": \"300 N*m/deg\"}}}}",
                """
                {"name": "All new", "changes": {"mass": "1350 kg", "frontWeightFraction": 0.55, "cgHeight": "510 mm",
                  "front": {"track": "1450 mm", "unsprungMass": "80 kg", "unsprungHeight": "300 mm", "rollCamber": 0.7,
                    "rollSteer": 0.02, "rollCentre": {"height": "60 mm", "perBump": -1.2}, "camber": "-1 deg",
                    "toe": "0.1 deg", "spring": {"rate": "66 N/mm", "motionRatio": 0.65},
                    "bar": {"rollStiffness": "300 N*m/deg"}, "tyre": {"pressure": "2.3 bar"}},
                  "rear": {"track": "1440 mm", "unsprungMass": "115 kg", "lateralLocator": {"height": "270 mm"},
                    "spring": {"rate": "30 N/mm", "base": "1020 mm"}, "tyre": {"pressure": "2.0 bar"}}}}""");
        String file = Run.file(folder, "many.json", many).toString();
        JsonNode setup = json("compare", file, "--json", "--setup", "All new")
                .get("setups")
                .get(0);
        for (JsonNode difference : setup.get("differences")) {
            Map<String, Double> shares = shares(difference);
            assertThat(shares).hasSizeBetween(4, 12);
            double sum =
                    shares.values().stream().mapToDouble(Double::doubleValue).sum();
            double whole = difference.get("difference").asDouble();
            assertThat(sum).isCloseTo(whole, within(1e-9 * Math.max(1, Math.abs(whole))));
        }
    }

    @Test
    void combinationsThatFallOverAreAvoidedAndSaid() {
        String onBars = Run.CAR.replace(
                "{\"name\": \"Jelly\", \"changes\": {",
                "{\"name\": \"On bars\", \"changes\": {\"cgHeight\": \"500 mm\", \"drive\": {\"axle\": \"rear\"},");
        String bars = onBars.replace(
                "\"front\": {\"spring\": {\"rate\": \"3 N/mm\"}}",
                "\"front\": {\"spring\": {\"rate\": \"3 N/mm\"}, \"bar\": {\"rollStiffness\": \"900 N*m/deg\"}}");
        String file = Run.file(folder, "bars.json", bars).toString();
        JsonNode setup = json("compare", file, "--json", "--setup", "On bars")
                .get("setups")
                .get(0);
        assertThat(setup.get("words").asText())
                .contains("combinations of these changes have no answer; the shares leave out the orders of changing");
        for (JsonNode difference : setup.get("differences")) {
            double sum = shares(difference).values().stream()
                    .mapToDouble(Double::doubleValue)
                    .sum();
            assertThat(sum)
                    .isCloseTo(difference.get("difference").asDouble(), within(1e-9 * Math.max(1, Math.abs(sum))));
        }
    }

    @Test
    void aPaceThatOnlyOneReachesIsSaidAndNotCompared() {
        Run run = Run.of("compare", car, "--setup", "Firmer", "--pace", "1.4 g", "--full");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out()).contains("There is nothing to compare at 1.4 g: ").contains("At the limit");
    }

    @Test
    void aSetupAgainstItselfIsTheSameCar() {
        assertThat(Run.of("compare", car, "--setup", "As bought").out()).contains("both are the same car");
    }

    @Test
    void csvHasARowPerShareInTheUnitsAskedFor() {
        List<String> lines =
                Run.of("compare", car, "--csv", "--setup", "Firmer").lines();
        assertThat(lines.get(0))
                .isEqualTo("setup,figure,lateralAcceleration_g,unit,base,value,difference,change,from,to,share");
        assertThat(lines).hasSize(1 + 3 * 17);
        assertThat(lines.get(1)).startsWith("Firmer,understeer,0.2,deg/g,");
        assertThat(Run.of("compare", car, "--csv", "--setup", "Firmer", "--units", "imperial")
                        .out())
                .contains("inside rear load,0.5,lbf,");
    }

    @Test
    void tablesHaveTheChangesAndTheirColumnsAndNoLineIsTooWide() {
        Run run = Run.of("compare", car, "--setup", "Firmer", "--full");
        assertThat(run.out())
                .contains("Firmer, compared with As bought")
                .contains("(1) front.spring.rate: 60 N/mm → 66 N/mm")
                .contains("by (3)");
        assertThat(run.lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void mistakesAreOneLine() {
        assertThat(Run.of("compare", car, "--base", "Nobody").err())
                .startsWith("evenhand compare: there is no set-up \"Nobody\" in the file");
        assertThat(Run.of("compare", car, "--json", "--csv").status()).isEqualTo(Status.WRONG);
        assertThat(Run.of("compare").status()).isEqualTo(Status.WRONG);
        assertThat(Run.of("compare", "--help").out()).contains("--base=NAME");
    }

    @Test
    void theSameQuestionGetsTheSameAnswerToTheLastByte() {
        assertThat(Run.of("compare", car, "--json").out())
                .isEqualTo(Run.of("compare", car, "--json").out());
    }

    private static Map<String, Double> shares(JsonNode difference) {
        Map<String, Double> shares = new TreeMap<>();
        difference
                .get("shares")
                .forEach(share -> shares.put(
                        share.get("change").asText(), share.get("share").asDouble()));
        return shares;
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
