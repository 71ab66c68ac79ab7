package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.choice.Effect;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.effects.EffectsReply;
import evenhand.terminal.page.OneScreen;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.words.Units;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What compare, effects and doubt say of both ways round and of several circles, and that it finds room on a screen. */
class OtherTurnTest {
    private static final String SALOON = "../scenarios/harbour-saloon.json";

    @ParameterizedTest
    @CsvSource({
        "compare, differences, quarry-special, ''",
        "compare, differences, harbour-saloon, --setup=Pivot high",
        "effects, effects, slipper-coupe, ''",
        "doubt, figures, harbour-saloon, --samples=40"
    })
    void theOtherWayIsWhatTurningRightAnswersAndTheFirstWhatTurningLeftAnswers(
            String command, String key, String car, String more) {
        String[] asked = words(command, "../scenarios/" + car + ".json", "--json", more);
        JsonNode both = json(asked);
        JsonNode left = json(with(asked, "--turn", "left"));
        JsonNode right = json(with(asked, "--turn", "right"));
        assertThat(both.get("setups").size()).isPositive();
        for (int i = 0; i < both.get("setups").size(); i++) {
            JsonNode one = both.get("setups").get(i);
            assertThat(one.has("alike")).isFalse();
            assertThat(one.get(key)).isEqualTo(left.get("setups").get(i).get(key));
            assertThat(one.get("otherTurn").get("turn").asText()).isEqualTo("right");
            assertThat(one.get("otherTurn").get(key))
                    .isEqualTo(right.get("setups").get(i).get(key));
            assertThat(one.get(key)).isNotEqualTo(one.get("otherTurn").get(key));
        }
    }

    @Test
    void theOtherWayOfDoubtHasItsDifferencesBesideTheSetups() {
        String[] asked = words("doubt", SALOON, "--json", "--samples=30", "--setup=As bought", "--setup=Lowered");
        JsonNode both = json(asked);
        JsonNode right = json(with(asked, "--turn", "right"));
        assertThat(both.get("otherTurn").get("turn").asText()).isEqualTo("right");
        JsonNode there = both.get("otherTurn").get("differences").get(0);
        assertThat(there.get("figures"))
                .isEqualTo(right.get("differences").get(0).get("figures"));
    }

    @ParameterizedTest
    @CsvSource({"compare, differences", "effects, effects", "doubt, figures"})
    void aCarThatIsAlikeBothWaysSaysSoAndAnswersOnce(String command, String key) {
        String[] asked = words(
                command,
                "../scenarios/bakery-front-drive.json",
                "--json",
                command.equals("doubt") ? "--samples=20" : "");
        JsonNode both = json(asked);
        JsonNode left = json(with(asked, "--turn", "left"));
        for (int i = 0; i < both.get("setups").size(); i++) {
            JsonNode one = both.get("setups").get(i);
            assertThat(one.get("alike").asBoolean()).isTrue();
            assertThat(one.has("otherTurn")).isFalse();
            assertThat(one.get(key)).isEqualTo(left.get("setups").get(i).get(key));
            assertThat(left.get("setups").get(i).has("alike")).isFalse();
        }
        assertThat(both.has("otherTurn")).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"compare, ''", "effects, ''", "doubt, --samples=20"})
    void theSecondCircleAnswersWhatItAnswersAlone(String command, String more) {
        String[] asked = words(command, "../scenarios/slipper-coupe.json", "--json", more);
        JsonNode two = json(with(asked, "--radius", "40 m", "--radius", "90 m"));
        JsonNode wide = json(with(asked, "--radius", "90 m"));
        JsonNode usual = json(asked);
        assertThat(two.get("setups")).isEqualTo(usual.get("setups"));
        assertThat(two.get("atRadius").size()).isEqualTo(1);
        JsonNode second = two.get("atRadius").get(0);
        assertThat(second.get("radius_m").asDouble()).isEqualTo(90);
        assertThat(second.get("setups")).isEqualTo(wide.get("setups"));
        assertThat(usual.has("atRadius")).isFalse();
    }

    /** The same cars are sampled whichever way is asked, so what both ways meet, each way meets. */
    @ParameterizedTest
    @ValueSource(strings = {"understeer at most 4.1 deg/g at 0.5 g", "limit at least 0.775 g"})
    void theChanceOfAnAimCountsTheCarsThatMeetItBothWays(String aim) {
        String[] asked = words("doubt", SALOON, "--json", "--samples=60", "--setup=As bought", "--aim=" + aim);
        double both = chance(asked);
        double left = chance(with(asked, "--turn", "left"));
        double right = chance(with(asked, "--turn", "right"));
        assertThat(both).isBetween(Math.max(0, left + right - 1) - 1e-12, Math.min(left, right) + 1e-12);
        assertThat(Math.max(left, right)).isGreaterThan(both);
        assertThat(both).isPositive();
    }

    private static double chance(String... asked) {
        return json(asked).get("setups").get(0).get("aim").get("chance").asDouble();
    }

    /** The added bar lets the tail go to the right alone. */
    @ParameterizedTest
    @CsvSource({"compare, ''", "effects, ''", "doubt, --samples=20"})
    void whereTheEndsChangeSidesItIsSaidFirst(String command, String more) {
        String[] asked = words(command, SALOON, "--setup=Pivot middle, rear bar added", more);
        JsonNode setup = json(with(asked, "--json")).get("setups").get(0);
        assertThat(setup.get("warnings").get(0).asText())
                .startsWith("Turning left the front goes first, turning right the tail comes round past ");
        assertThat(setup.get("words").asText()).startsWith("! Turning left the front goes first, turning right ");
        assertThat(Run.of(asked).lines().get(1)).startsWith("! Pivot middle, rear bar added: Turning left the front");
        assertThat(Run.of(with(asked, "--full")).out()).contains("\n! Turning left the front goes first");
        assertThat(json(with(asked, "--json", "--turn", "right"))
                        .get("setups")
                        .get(0)
                        .has("warnings"))
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"pushes at the limit", "slides at the limit", "pushes briskly"})
    void aStepAgainstAComplaintMakesTheWorseWayBetterAndLetsNoOtherSlide(String complaint) {
        int sign = complaint.startsWith("slides") ? 1 : -1;
        int looked = 0;
        for (String car : List.of("slipper-coupe", "harbour-saloon", "tinkers-lane-roadster")) {
            List<Setup> setups = Demo.read(car).setups();
            for (Setup setup : List.of(setups.get(0), setups.get(setups.size() - 1))) {
                JsonNode answer = json(words(
                                "effects",
                                "../scenarios/" + car + ".json",
                                "--json",
                                "--setup=" + setup.name(),
                                "--complaint=" + complaint))
                        .get("setups")
                        .get(0);
                if (!answer.has("otherTurn")) {
                    continue;
                }
                for (int i = 0; i < answer.get("effects").size(); i++) {
                    double[] first = figure(answer.get("effects").get(i), complaint);
                    double[] other =
                            figure(answer.get("otherTurn").get("effects").get(i), complaint);
                    double worse = Math.min(sign * first[0], sign * other[0]);
                    assertThat(Math.min(sign * first[1], sign * other[1])).isGreaterThan(worse);
                    for (double[] way : List.of(first, other)) {
                        assertThat(way[1] < 0 && way[1] < way[0] - 0.011)
                                .as(answer.get("effects").get(i).toString())
                                .isFalse();
                    }
                    looked++;
                }
            }
        }
        assertThat(looked).isGreaterThan(20);
    }

    /** Before and after, of the figure that is complained of. */
    private static double[] figure(JsonNode effect, String complaint) {
        String figure = complaint.endsWith("briskly") ? "understeer" : "understeer near the limit";
        for (JsonNode move : effect.get("differences")) {
            JsonNode pace = move.get("lateralAcceleration_g");
            if (move.get("figure").asText().equals(figure) && (pace == null || pace.asDouble() == 0.5)) {
                double base = move.get("base").asDouble();
                return new double[] {base, base + move.get("difference").asDouble()};
            }
        }
        throw new AssertionError(effect.toString());
    }

    @Test
    void oneWayWithoutAnAnswerIsSaidAndEndsWithOne() {
        Scenario scenario = Demo.read("harbour-saloon");
        Setup setup = scenario.setups().get(0);
        Trial trial = new Trial(Trial.USUAL_PACES, List.of(40.0), Ways.BOTH);
        SetupAnswer.NoAnswer why = new SetupAnswer.NoAnswer(TurnAnswer.Reason.NO_EQUILIBRIUM, "no balance is found");
        EachWay<EffectsReply.Found> one = EachWay.of(
                setup,
                List.of(
                        EachWay.Way.of(
                                Direction.LEFT,
                                new EffectsReply.Found(
                                        Optional.empty(), Effect.each(setup.entries(), trial, trial.ask(setup.car())))),
                        EachWay.Way.none(Direction.RIGHT, why)),
                /* alike= */ false,
                List.of());
        EffectsReply reply =
                new EffectsReply(scenario, trial, List.of(new EachWay.Circle<>(40, List.of(one))), /* full= */ false);
        assertThat(reply.complete()).isFalse();
        JsonNode answer = parsed(new String(reply.written().json().get(), StandardCharsets.UTF_8))
                .get("setups")
                .get(0);
        assertThat(answer.get("effects")).isNotEmpty();
        assertThat(answer.has("noAnswer")).isFalse();
        JsonNode other = answer.get("otherTurn");
        assertThat(other.get("turn").asText()).isEqualTo("right");
        assertThat(other.get("noAnswer").get("text").asText()).isEqualTo("no balance is found");
        assertThat(other.has("effects")).isFalse();
        assertThat(reply.silent(Units.METRIC))
                .containsExactly("evenhand effects: no answer for \"As bought\": turning right: no balance is found");
    }

    /** With less asked they fit where their answers are kept: {@link KeptAnswersTest}. */
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
    void theVerdictFindsRoomOnAScreen(String name) {
        String file = "../scenarios/" + name + ".json";
        List<String> all = new ArrayList<>();
        Demo.read(name).setups().forEach(setup -> all.addAll(List.of("--setup", setup.name())));
        String[] setups = all.toArray(String[]::new);
        List<String[]> asked = new ArrayList<>();
        asked.add(words("compare", file, "--units=imperial", "--radius=40 m", "--radius=100 m"));
        asked.add(with(words("effects", file), setups));
        asked.add(words("effects", file, "--complaint=pushes at the limit"));
        asked.add(with(words("effects", file, "--complaint=leans"), setups));
        asked.add(words("doubt", file, "--samples=10", "--radius=30 m", "--radius=60 m", "--aim=limit at least 0.8 g"));
        for (String[] one : asked) {
            assertFitsAScreen(Run.of(one), String.join(" ", one));
        }
    }

    static void assertFitsAScreen(Run run, String asked) {
        List<String> lines = run.lines();
        assertThat(lines).as(asked).hasSizeBetween(4, 30);
        assertThat(lines).as(asked).allMatch(line -> line.length() <= 100);
        assertThat(lines.get(lines.size() - 1)).as(asked).startsWith("--full shows every ");
    }

    @Test
    void theTableOfAComparisonStandsBelowItsVerdictWithBothWays() {
        Run run = Run.of("compare", SALOON);
        assertThat(run.out()).contains("goes first", "left  right", "front/rear", "Pivot high: near the limit it");
        for (Setup setup : Demo.read("harbour-saloon").setups()) {
            assertThat(run.lines()).anyMatch(line -> line.startsWith(OneScreen.cut(setup.name(), 29) + " "));
        }
    }

    private static String[] words(String... words) {
        return Arrays.stream(words).filter(word -> !word.isEmpty()).toArray(String[]::new);
    }

    private static String[] with(String[] words, String... more) {
        return Stream.concat(Arrays.stream(words), Arrays.stream(more)).toArray(String[]::new);
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
}
