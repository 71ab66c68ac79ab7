package evenhand.terminal.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.terminal.Evenhand;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoubtCommandTest {
    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeTheCar() {
        car = Run.car(folder).toString();
    }

    private String[] doubt(String... more) {
        return Stream.concat(Stream.of("doubt", car, "--samples", "100"), Arrays.stream(more))
                .toArray(String[]::new);
    }

    private String[] both(String... more) {
        return Stream.concat(
                        Arrays.stream(doubt("--setup", "As bought", "--setup", "Flatter, stiffer")),
                        Arrays.stream(more))
                .toArray(String[]::new);
    }

    @Test
    void theAnswerHasTheKeysOfTheContract() {
        Run run = Run.of(both("--json", "--aim", "limit at least 0.8 g"));
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.err()).isEmpty();
        JsonNode answer = parsed(run.out());
        assertThat(keys(answer))
                .containsSubsequence("evenhand", "command", "scenario", "setups", "differences", "measureNext");
        assertThat(answer.get("setups").size()).isEqualTo(2);
        JsonNode first = answer.get("setups").get(0);
        assertThat(first.get("name").asText()).isEqualTo("As bought");
        assertThat(keys(first.get("aim"))).containsExactly("text", "chance");
        assertThat(first.get("aim").get("chance").asDouble()).isBetween(0.0, 1.0);
        JsonNode figure = first.get("figures").get(0);
        assertThat(figure.get("figure").asText()).isEqualTo("limit");
        assertThat(figure.has("lateralAcceleration_g")).isFalse();
        JsonNode paced = first.get("figures").get(1);
        assertThat(keys(paced))
                .containsSubsequence(
                        "figure",
                        "lateralAcceleration_g",
                        "unit",
                        "nominal",
                        "low",
                        "high",
                        "median",
                        "sd",
                        "noAnswerShare",
                        "causes");
        for (JsonNode one : first.get("figures")) {
            assertThat(one.get("low").asDouble()).isLessThan(one.get("median").asDouble());
            assertThat(one.get("median").asDouble()).isLessThan(one.get("high").asDouble());
            double before = 1;
            for (JsonNode cause : one.get("causes")) {
                assertThat(keys(cause)).startsWith("path", "share");
                assertThat(cause.get("share").asDouble()).isBetween(0.0, before);
                before = cause.get("share").asDouble();
            }
        }
        JsonNode difference = answer.get("differences").get(0);
        assertThat(difference.get("name").asText()).isEqualTo("Flatter, stiffer");
        assertThat(difference.get("figures").size())
                .isEqualTo(first.get("figures").size());
        for (JsonNode next : answer.get("measureNext")) {
            assertThat(keys(next)).contains("path", "how", "low", "high");
            double width = next.get("high").asDouble() - next.get("low").asDouble();
            assertThat(width)
                    .isLessThan(
                            figure.get("high").asDouble() - figure.get("low").asDouble());
        }
        assertThat(answer.get("measureNext").size()).isLessThanOrEqualTo(3);
    }

    @Test
    void theChanceThatTheFrontGoesFirstIsToldWithoutBeingAsked() {
        JsonNode first =
                json(doubt("--setup", "As bought", "--json")).get("setups").get(0);
        double chance = first.get("frontFirstChance").asDouble();
        assertThat(chance).isBetween(0.2, 0.9);
        JsonNode aimed = json(doubt("--setup", "As bought", "--json", "--aim", "front first"))
                .get("setups")
                .get(0);
        assertThat(aimed.get("aim").get("chance").asDouble()).isEqualTo(chance);
        String percent = Math.round(100 * chance) + " %";
        assertThat(flat(Run.of(doubt("--setup", "As bought"))))
                .contains("As bought: chance of front first both ways " + percent + ";");
        assertThat(flat(Run.of(doubt("--setup", "As bought", "--full"))))
                .contains("The chance that the front goes first at the limit, both ways round, is " + percent + ".");
        assertThat(flat(Run.of(doubt("--setup", "As bought", "--turn", "left"))))
                .contains("chance of front first turning left ");
    }

    @Test
    void whatTheRideEstimatesIsListedWithItsToleranceAndRule() {
        JsonNode estimated = json(doubt("--setup", "As bought", "--json"))
                .get("setups")
                .get(0)
                .get("estimated");
        Map<String, String> rules = new HashMap<>();
        estimated.forEach(one -> rules.put(
                one.get("path").asText(),
                one.get("tolerance").asDouble() + " " + one.get("rule").asText()));
        assertThat(rules.get("seat.behindFrontAxle"))
                .startsWith("0.266")
                .contains("0.55 ± 0.1 of it behind the front axle; common practice, no source");
        assertThat(rules.get("pitchInertia")).contains("± 20 %; common practice, no source");
    }

    @Test
    void nominalValuesAreThoseThatBalanceAnswers() {
        JsonNode figure = json(doubt("--setup", "As bought", "--json"))
                .get("setups")
                .get(0)
                .get("figures")
                .get(0);
        JsonNode balance = json("balance", car, "--setup", "As bought", "--json");
        assertThat(figure.get("figure").asText()).isEqualTo("understeer");
        assertThat(figure.get("nominal").asDouble())
                .isCloseTo(
                        balance.get("setups")
                                .get(0)
                                .get("paces")
                                .get(0)
                                .get("understeerGradient_deg_per_g")
                                .asDouble(),
                        within(1e-9));
    }

    @Test
    void theSameSeedGivesTheSameAnswerToTheLastByteAndAnotherAnother() {
        String one = Run.of(both("--json")).out();
        assertThat(Run.of(both("--json")).out()).isEqualTo(one);
        assertThat(Run.of(both("--json", "--seed", "1")).out()).isEqualTo(one);
        assertThat(Run.of(both("--json", "--seed", "2")).out()).isNotEqualTo(one);
    }

    @Test
    void exactLeavesOnlyWhatTheFileDoubtsAndWhatIsEstimated() {
        JsonNode usual = json(doubt("--setup", "As bought", "--json"));
        JsonNode exact = json(doubt("--setup", "As bought", "--json", "--exact"));
        int narrower = 0;
        for (int i = 0; i < usual.get("setups").get(0).get("figures").size(); i++) {
            JsonNode wide = usual.get("setups").get(0).get("figures").get(i);
            JsonNode narrow = exact.get("setups").get(0).get("figures").get(i);
            narrower += narrow.get("sd").asDouble() < wide.get("sd").asDouble() ? 1 : 0;
            for (JsonNode cause : narrow.get("causes")) {
                assertThat(cause.get("path").asText()).contains(".tyre.");
            }
        }
        assertThat(narrower).isGreaterThan(12);
    }

    @Test
    void wordsSayWhatIsSureAndTurnRoundWithTheDifference() {
        Run there = Run.of(both("--full"));
        assertThat(there.status()).isEqualTo(Status.DONE);
        assertThat(flat(there))
                .contains("Flatter, stiffer, compared with As bought")
                .contains("The roll gradient at 0.5 g, the lean that each further g adds, of \"Flatter, stiffer\" is")
                .contains("less than that of \"As bought\", and between")
                .contains("less, nineteen times in twenty")
                .contains("either figure alone is only known to ±")
                .contains("To know the understeer at 0.2 g better, measure:");
        Run back = Run.of(doubt("--setup", "Flatter, stiffer", "--setup", "As bought", "--full"));
        assertThat(flat(back)).contains("more than that of \"Flatter, stiffer\", and between");
        assertThat(there.out()).doesNotContain("cgHeight").doesNotContain("corneringStiffness");
        assertThat(there.lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void aSetUpAgainstItselfIsTheSameWhateverWasGuessed() {
        String twins = Run.CAR.replace(
                "{\"name\": \"Flatter, stiffer\", \"changes\": {\"front\": {\"bar\":"
                        + " {\"rollStiffness\": \"300 N*m/deg\"}}}}",
                "{\"name\": \"Twin\"}");
        String file = Run.file(folder, "twins.json", twins).toString();
        Run run = Run.of("doubt", file, "--samples", "50", "--setup", "As bought", "--setup", "Twin", "--full");
        assertThat(flat(run)).contains("The limit is the same in \"Twin\" as in \"As bought\", whatever was guessed.");
    }

    @Test
    void aPaceThatSomeSampledCarsDoNotReachIsSaid() {
        double limit = json("balance", car, "--setup", "As bought", "--json")
                .get("setups")
                .get(0)
                .get("limit")
                .get("lateralAcceleration_g")
                .asDouble();
        Run run = Run.of(doubt("--setup", "As bought", "--pace", limit + " g", "--full"));
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(flat(run)).contains("% of the sampled cars do not get there, and are left out of it.");
    }

    @Test
    void aCarThatDoesNotTurnSaysWhyAndTheOthersAreAnswered() {
        Run run = Run.of(doubt("--json"));
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        JsonNode setups = parsed(run.out()).get("setups");
        assertThat(setups.size()).isEqualTo(3);
        assertThat(setups.get(2).get("noAnswer").get("reason").asText()).isEqualTo("fallsOver");
        assertThat(setups.get(0).get("figures").size()).isGreaterThan(10);
        Run words = Run.of(doubt("--setup", "Jelly"));
        assertThat(words.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(words.err())
                .startsWith("evenhand doubt: no answer for \"Jelly\": ")
                .hasLineCount(1);
    }

    @Test
    void tolerancesThatMakeMostSamplesFallOverAreOneLine() {
        String wild = Run.CAR.replace("\"85 kg\"", "\"85 kg ± 6000 kg\"").replace("\"120 kg\"", "\"120 kg ± 6000 kg\"");
        String file = Run.file(folder, "wild.json", wild).toString();
        Run run = Run.of("doubt", file, "--samples", "100", "--setup", "As bought", "--full");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run.err())
                .startsWith("evenhand doubt: \"As bought\": ")
                .contains("% of the sampled cars do not turn; the tolerances are wider than such a car can have")
                .hasLineCount(1);
        assertThat(flat(run)).contains("of the sampled cars do not turn at all; the intervals are of the others.");
    }

    @Test
    void csvHasARowPerFigureAndCause() {
        List<String> lines = Run.of(both("--csv")).lines();
        assertThat(lines.get(0))
                .isEqualTo("setup,base,figure,lateralAcceleration_g,unit,nominal,low,high,median,sd,noAnswerShare,path,"
                        + "share,standardError");
        assertThat(lines)
                .allMatch(line -> line.replaceAll("\"[^\"]*\"", "")
                                .chars()
                                .filter(c -> c == ',')
                                .count()
                        == 13);
        JsonNode answer = json(both("--json"));
        int rows = 0;
        for (String list : List.of("setups", "differences")) {
            for (JsonNode one : answer.get(list)) {
                for (JsonNode figure : one.get("figures")) {
                    rows += Math.max(1, figure.get("causes").size());
                }
            }
        }
        assertThat(lines).hasSize(1 + rows);
        assertThat(Run.of(both("--csv", "--units", "imperial")).out()).contains(",inside rear load,0.5,lbf,");
    }

    @Test
    void somebodyWhoWatchesSeesItComeAndItIsWipedAway() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Evenhand.run(Console.of(out, err, false, true, Map.of()), doubt("--setup", "As bought"));
        String watched = err.toString(StandardCharsets.UTF_8);
        assertThat(watched).contains("asking 100 cars: 100 %").endsWith("\r\u001b[K");
        assertThat(out.toString(StandardCharsets.UTF_8))
                .isEqualTo(Run.of(doubt("--setup", "As bought")).out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--samples 0|must lie between 10 and 100000",
                "--samples -5|must lie between",
                "--samples 1e3|write a whole number",
                "--samples 99999999999999999999|write a whole number",
                "--seed 1.5|write a whole number",
                "--aim understeer_5_g_at_0.5_g|belongs here",
                "--aim undersear_5_g|did you mean \"understeer\"?",
                "--pace 0_g|must be above zero",
                "--setup Nobody|there is no set-up \"Nobody\"",
                "--load Nobody|the file has no load cases",
                "--json --csv|write one of them",
                "--units furlongs|write metric or imperial"
            })
    void everyMistakeIsOneLine(String words, String said) {
        String[] args = Stream.concat(
                        Stream.of("doubt", car),
                        Arrays.stream(words.split(" ", -1)).map(word -> word.replace('_', ' ')))
                .toArray(String[]::new);
        Run run = Run.of(args);
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("evenhand doubt: ").contains(said).hasLineCount(1);
    }

    /** The answer with its line breaks undone. */
    private static String flat(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private static JsonNode json(String... args) {
        return parsed(Run.of(args).out());
    }

    private static JsonNode parsed(String text) {
        try {
            return JsonMapper.builder().build().readTree(text);
        } catch (IOException e) {
            throw new AssertionError(text, e);
        }
    }

    private static List<String> keys(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
