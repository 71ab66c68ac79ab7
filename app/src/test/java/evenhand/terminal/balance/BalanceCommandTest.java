package evenhand.terminal.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BalanceCommandTest {
    /** The contract's keys of a turn row, in its order. */
    private static final List<String> ROW = List.of(
            "lateralAcceleration_g",
            "speed_m_per_s",
            "steer_deg",
            "ackermannSteer_deg",
            "understeerGradient_deg_per_g",
            "rollGradient_deg_per_g",
            "sideslip_deg",
            "roll_deg",
            "frontRoll_deg",
            "rearRoll_deg",
            "frontHeave_m",
            "rearHeave_m",
            "frontRollCentreHeight_m",
            "rearRollCentreHeight_m",
            "frontLoadTransfer_N",
            "rearLoadTransfer_N",
            "frontLoadTransferShare",
            "frontGripUsed",
            "rearGripUsed",
            "gripBalance",
            "driveForce_N",
            "airDrag_N",
            "hold",
            "wheels");

    private static final List<String> DEMOS = List.of(
            "bakery-front-drive",
            "harbour-saloon",
            "orchard-estate",
            "postman-leaf",
            "quarry-special",
            "slipper-coupe",
            "tinkers-lane-roadster");

    private static final List<String> WHEEL = List.of(
            "load_N",
            "lateralForce_N",
            "longitudinalForce_N",
            "aligningMoment_Nm",
            "slip_deg",
            "steer_deg",
            "lean_deg",
            "travel_m");

    private static final List<String> WHEELS = List.of("frontLeft", "frontRight", "rearLeft", "rearRight");

    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeTheCar() {
        car = Run.car(folder).toString();
    }

    /** With a pocket calculator, from what is printed. */
    @Test
    void thePartsOfAnAxlesMomentAddUpAsPrinted() {
        String table = Run.of("balance", "../scenarios/harbour-saloon.json", "--setup", "As bought", "--full")
                .out();
        for (String end : List.of("front", "rear")) {
            double sum = 0;
            for (String part : List.of(
                    "by the links", "by springs and bar", "of unsprung mass", "of weight leaning on its tyres")) {
                sum += printed(table, end + " moment " + part);
            }
            double all = printed(table, end + " moment in all, load transfer x track");
            assertThat(sum).isCloseTo(all, within(2.0));
            double track = end.equals("front") ? 1.312 : 1.296;
            assertThat(printed(table, "load transfer at the " + end) * track).isCloseTo(all, within(1.5));
        }
    }

    private static double printed(String table, String row) {
        String line = table.lines()
                .filter(one -> one.strip().startsWith(row))
                .findFirst()
                .orElseThrow();
        return Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1));
    }

    /** The hand sums' lean as a turn begins, and the slope of the lean in mid-corner, are two numbers. */
    @Test
    void whichLeanIsToldIsSaid() {
        String saloon = "../scenarios/harbour-saloon.json";
        assertThat(Run.of("balance", saloon).out()).contains("leans at").contains("0 g, deg/g");
        assertThat(Run.of("balance", saloon, "--setup", "As bought", "--full")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("It rolls 6.42 deg/g by the hand sums, as lateral acceleration begins");
        assertThat(Run.of("compare", saloon).out().replaceAll("\\s+", " "))
                .contains("and at 0.5 g, lean that each further g adds there turning left, in deg/g");
    }

    @Test
    void theAnswerOpensAsEveryAnswerDoes() {
        JsonNode answer = json("balance", car, "--json");
        assertThat(keys(answer)).containsExactly("evenhand", "command", "scenario", "radius_m", "turn", "setups");
        assertThat(answer.get("evenhand").asInt()).isEqualTo(1);
        assertThat(answer.get("command").asText()).isEqualTo("balance");
        assertThat(answer.get("scenario").asText()).isEqualTo("Test mule, \"blue\"");
        assertThat(answer.get("radius_m").asDouble()).isEqualTo(40);
        assertThat(answer.get("turn").asText()).isEqualTo("left");
    }

    @Test
    void aSetupHasTheKeysOfTheContract() {
        JsonNode setup = json("balance", car, "--json").get("setups").get(0);
        assertThat(keys(setup))
                .containsExactly(
                        "name",
                        "words",
                        "handSums",
                        "paces",
                        "limit",
                        "events",
                        "turn",
                        "alike",
                        "estimated",
                        "assumed");
        assertThat(keys(setup.get("handSums")))
                .containsExactly(
                        "rollGradient_deg_per_g",
                        "rollArm_m",
                        "frontLoadTransfer_N_per_g",
                        "rearLoadTransfer_N_per_g",
                        "frontLoadTransferShare",
                        "frontGeometric_Nm_per_g",
                        "frontElastic_Nm_per_g",
                        "frontUnsprung_Nm_per_g",
                        "frontLeaning_Nm_per_g",
                        "frontMoment_Nm_per_g",
                        "rearGeometric_Nm_per_g",
                        "rearElastic_Nm_per_g",
                        "rearUnsprung_Nm_per_g",
                        "rearLeaning_Nm_per_g",
                        "rearMoment_Nm_per_g",
                        "frontRollStiffness_Nm_per_deg",
                        "rearRollStiffness_Nm_per_deg",
                        "understeerGradient_deg_per_g",
                        "understeerBudget_deg_per_g");
        assertThat(keys(setup.get("handSums").get("understeerBudget_deg_per_g")))
                .containsExactly(
                        "tyres", "aligningTorque", "camber", "rollSteer", "lateralForceSteer", "aligningTorqueSteer");
        assertThat(keys(setup.get("limit")))
                .containsExactly(
                        "lateralAcceleration_g",
                        "firstAxle",
                        "cause",
                        "limitBalance",
                        "frontGripUsed",
                        "rearGripUsed",
                        "nearUndersteer_deg_per_g",
                        "fold_g");
        String measured = Run.CAR.replace(
                "\"2.1 bar\"}",
                "\"2.1 bar\", \"referenceLoad\": \"3500 N\", \"corneringStiffness\": \"630 N/deg\", \"friction\": 0.9114}");
        JsonNode held = json(
                        "balance", Run.file(folder, "measured.json", measured).toString(), "--json")
                .get("setups")
                .get(0);
        assertThat(keys(held.get("limit")))
                .containsExactly(
                        "lateralAcceleration_g",
                        "cause",
                        "limitBalance",
                        "frontGripUsed",
                        "rearGripUsed",
                        "nearUndersteer_deg_per_g",
                        "fold_g",
                        "speed_m_per_s"); // neither end slides: no first axle, but the speed
        JsonNode stiffer = json("balance", car, "--json").get("setups").get(1);
        assertThat(keys(stiffer.get("limit")))
                .containsExactly(
                        "lateralAcceleration_g",
                        "firstAxle",
                        "cause",
                        "limitBalance",
                        "frontGripUsed",
                        "rearGripUsed",
                        "nearUndersteer_deg_per_g");
        assertThat(keys(setup.get("assumed").get(1))).containsExactly("path", "value", "text");
        assertThat(keys(setup.get("estimated").get(0))).containsExactly("path", "value", "tolerance", "rule");
    }

    @Test
    void aPaceHasTheFieldsOfATurnRowAndItsBudgetAddsUpToTheGradient() {
        for (JsonNode pace : json("balance", car, "--json").get("setups").get(0).get("paces")) {
            List<String> expected = new ArrayList<>(ROW);
            expected.add("understeerBudget_deg_per_g");
            assertThat(keys(pace)).containsExactlyElementsOf(expected);
            JsonNode budget = pace.get("understeerBudget_deg_per_g");
            assertThat(keys(budget))
                    .containsExactly(
                            "tyres", "camber", "rollSteer", "lateralForceSteer", "aligningTorqueSteer", "rest");
            double sum = 0;
            for (JsonNode part : budget) {
                sum += part.asDouble();
            }
            assertThat(sum).isCloseTo(pace.get("understeerGradient_deg_per_g").asDouble(), within(1e-9));
        }
    }

    @Test
    void theTurnHasAtLeastFortyRisingRowsWithTheKeysOfTheContractAndContainsThePaces() {
        JsonNode setup =
                json("balance", car, "--json", "--pace", "0.37 g").get("setups").get(0);
        JsonNode turn = setup.get("turn");
        assertThat(turn.size()).isGreaterThanOrEqualTo(40);
        double before = 0;
        boolean pace = false;
        for (JsonNode row : turn) {
            List<String> keys = keys(row);
            List<String> expected = new ArrayList<>(ROW);
            boolean last = row.equals(turn.get(turn.size() - 1));
            expected.removeIf(key -> last && (key.equals("hold") || key.endsWith("Gradient_deg_per_g"))); // the fold
            if (row.get("lateralAcceleration_g").asDouble()
                    > setup.get("limit").get("lateralAcceleration_g").asDouble()) {
                expected.add("beyondLimit");
            }
            assertThat(keys).containsExactlyElementsOf(expected);
            assertThat(keys(row.get("wheels"))).containsExactlyElementsOf(WHEELS);
            for (JsonNode wheel : row.get("wheels")) {
                assertThat(keys(wheel)).containsExactlyElementsOf(WHEEL);
            }
            double g = row.get("lateralAcceleration_g").asDouble();
            assertThat(g).isGreaterThan(before);
            pace |= Math.abs(g - 0.37) < 1e-12;
            before = g;
        }
        assertThat(pace).isTrue();
        assertThat(before).isCloseTo(setup.get("limit").get("fold_g").asDouble(), within(1e-6));
    }

    @Test
    void anEventHasItsKindItsPlaceAndItsSentence() {
        JsonNode events = json("balance", car, "--json").get("setups").get(0).get("events");
        assertThat(events).isNotEmpty();
        JsonNode event = events.get(0);
        assertThat(keys(event)).containsExactly("lateralAcceleration_g", "kind", "axle", "wheel", "text");
        assertThat(event.get("kind").asText()).isEqualTo("stopTouched");
        assertThat(event.get("wheel").asText()).isEqualTo("rearRight");
        assertThat(event.get("text").asText()).endsWith("the right rear wheel touches its bump stop.");
    }

    @Test
    void aPaceBeyondTheLimitIsNoFailure() {
        Run run = Run.of("balance", car, "--json", "--setup", "As bought", "--pace", "1.4 g");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out())
                .contains("\"lateralAcceleration_g\" : 1.4,")
                .contains("\"beyondLimit\" : true")
                .contains("A pace of 1.4 g is beyond its limit.");
    }

    @Test
    void aSetupWithoutAnAnswerSaysWhyAndTheOthersAreAnswered() {
        Run run = Run.of("balance", car, "--json");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        JsonNode setups = parsed(run.out()).get("setups");
        assertThat(setups.size()).isEqualTo(3);
        assertThat(setups.get(1).has("limit")).isTrue();
        assertThat(setups.get(2).get("name").asText()).isEqualTo("Jelly");
        assertThat(keys(setups.get(2).get("noAnswer"))).containsExactly("reason", "text");
        assertThat(setups.get(2).get("noAnswer").get("reason").asText()).isEqualTo("fallsOver");
        assertThat(Run.of("balance", car, "--full").out()).contains("Jelly\n  No answer: ");
        assertThat(Run.of("balance", car).out()).contains("! Jelly: no answer: ");
        assertThat(Run.of("balance", car, "--csv").err()).startsWith("evenhand balance: no answer for \"Jelly\": ");
        assertThat(Run.of("balance", car, "--setup", "As bought").status()).isEqualTo(Status.DONE);
    }

    @Test
    void noNumberIsNotANumber() {
        assertThat(Run.of("balance", car, "--json").out()).doesNotContain("NaN", "Infinity", "null", "-0.0,");
    }

    @Test
    void aRightTurnIsTheMirrorImageOfALeftOne() {
        JsonNode left =
                json("balance", car, "--json").get("setups").get(0).get("paces").get(1);
        JsonNode answer = json("balance", car, "--json", "--turn", "right");
        assertThat(answer.get("turn").asText()).isEqualTo("right");
        JsonNode right = answer.get("setups").get(0).get("paces").get(1);
        assertThat(right.get("steer_deg").asDouble())
                .isCloseTo(-left.get("steer_deg").asDouble(), within(1e-9));
        assertThat(right.get("wheels").get("frontLeft").get("load_N").asDouble())
                .isCloseTo(left.get("wheels").get("frontRight").get("load_N").asDouble(), within(1e-6));
        assertThat(right.get("understeerGradient_deg_per_g").asDouble())
                .isCloseTo(left.get("understeerGradient_deg_per_g").asDouble(), within(1e-9));
    }

    @Test
    void unitsNeverTouchJson() {
        assertThat(Run.of("balance", car, "--json", "--units", "imperial").out())
                .isEqualTo(Run.of("balance", car, "--json").out());
    }

    @Test
    void csvHasTheKeysOfTheTurnRowsWithSetupFirst() {
        List<String> lines = Run.of("balance", car, "--csv").lines();
        List<String> expected = new ArrayList<>(List.of("setup"));
        expected.addAll(ROW.subList(0, ROW.size() - 1));
        for (String wheel : WHEELS) {
            for (String key : WHEEL) {
                expected.add(wheel + "." + key);
            }
        }
        expected.add("beyondLimit");
        assertThat(lines.get(0).split(",")).containsExactlyElementsOf(expected);
        assertThat(lines).filteredOn(line -> line.startsWith("As bought,")).hasSizeGreaterThanOrEqualTo(40);
        assertThat(lines).anyMatch(line -> line.startsWith("\"Flatter, stiffer\","));
        assertThat(lines.get(1).split(",", -1)).hasSameSizeAs(expected);
    }

    @Test
    void csvInImperialUnitsSaysSoInItsKeysAndItsNumbersFollow() {
        List<String> metric = Run.of("balance", car, "--csv").lines();
        List<String> imperial =
                Run.of("balance", car, "--csv", "--units", "imperial").lines();
        assertThat(imperial.get(0))
                .contains("speed_mph", "frontHeave_in", "driveForce_lbf", "frontLeft.load_lbf")
                .contains("frontLeft.aligningMoment_lbf_ft", "roll_deg,");
        int load = List.of(metric.get(0).split(",")).indexOf("frontLeft.load_N");
        double newtons = Double.parseDouble(metric.get(1).split(",", -1)[load]);
        double pounds = Double.parseDouble(imperial.get(1).split(",", -1)[load]);
        assertThat(pounds * 4.4482216152605).isCloseTo(newtons, within(1e-9 * newtons));
    }

    @Test
    void theTableHasTitleStoryUnitsAndTheSetupsSideBySide() {
        Run run = Run.of("balance", car, "--full", "--turn", "left");
        assertThat(run.lines().get(0)).isEqualTo("Test mule, \"blue\"");
        assertThat(run.lines().get(1)).isEqualTo("An invented car.");
        assertThat(run.out())
                .contains("A steady left turn on a circle of 40 m radius.")
                .contains("Hand sums", "At 0.2 g", "At 0.5 g", "At the limit", "On the way to the limit")
                .contains("Estimated, not measured");
        assertThat(run.lines())
                .anyMatch(line -> line.matches(" +As bought +stiffer"))
                .anyMatch(line -> line.matches("  roll gradient +deg/g +\\d+\\.\\d\\d +\\d+\\.\\d\\d"))
                .anyMatch(line -> line.matches("  rear roll centre above the ground +mm +\\d+ +\\d+"));
        assertThat(Run.of("balance", car, "--full", "--units", "imperial").lines())
                .anyMatch(line -> line.contains("circle of 131.2 ft radius"))
                .anyMatch(line -> line.matches("  rear roll centre above the ground +in +\\d+\\.\\d\\d +\\d+\\.\\d\\d"))
                .anyMatch(line -> line.matches("  load transfer at the front +lbf/g +\\d+ +\\d+"));
    }

    @Test
    void aCarThatTipsSaysSoInTableAndWordsAndKeepsItsCauseInJson() {
        String tall = Run.file(
                        folder,
                        "tall.json",
                        Run.CAR
                                .replace("\"cgHeight\": \"520 mm\"", "\"cgHeight\": \"1150 mm\"")
                                .replace("\"60 N/mm\"", "\"160 N/mm\"")
                                .replace("\"28 N/mm\"", "\"90 N/mm\""))
                .toString();
        Run run = Run.of("balance", tall, "--setup", "As bought", "--full");
        assertThat(run.out())
                .contains("it tips over rather than slides: neither axle is out of grip")
                .doesNotContain("gives out first,");
        assertThat(run.lines())
                .anyMatch(line -> line.matches("  cause +tips over"))
                .anyMatch(line -> line.matches("  gives out first +neither"));
        JsonNode limit = json("balance", tall, "--json", "--setup", "As bought")
                .get("setups")
                .get(0)
                .get("limit");
        assertThat(limit.get("cause").asText()).isEqualTo("sideslip");
        assertThat(limit.has("firstAxle")).isTrue();
    }

    @Test
    void cornerWeightsThatMakeTheOtherTurnAnotherAreToldInBothFaces() {
        String crossed = Run.file(
                        folder,
                        "crossed.json",
                        Run.CAR.replace(
                                "\"mass\": \"1380 kg\", \"frontWeightFraction\": 0.545,",
                                "\"cornerWeights\": {\"frontLeft\": \"430 kg\", \"frontRight\": \"322 kg\","
                                        + " \"rearLeft\": \"260 kg\", \"rearRight\": \"368 kg\"},"))
                .toString();
        JsonNode right = json("balance", crossed, "--json", "--turn", "right")
                .get("setups")
                .get(0)
                .get("limit");
        assertThat(right.get("firstAxle").asText()).isEqualTo("front");
        String sentence =
                "Turning right the front goes first, turning left the steering wheel has to be held against the turn";
        assertThat(String.join(" ", Run.of("balance", crossed).lines()).replaceAll(" +", " "))
                .contains("! As bought: " + sentence);
        assertThat(json("balance", crossed, "--json")
                        .get("setups")
                        .get(0)
                        .get("words")
                        .asText())
                .contains(sentence);
        assertThat(json("balance", crossed, "--json")
                        .get("setups")
                        .get(0)
                        .get("warnings")
                        .get(0)
                        .asText())
                .startsWith(sentence);
        assertThat(Run.of("balance", car).out()).doesNotContain("Turning right");
    }

    @Test
    void anEstimateIsListedWithHowFarItMayBeOffItsRuleAndItsSource() {
        assertThat(Run.of("balance", car, "--full").out())
                .contains("front.tyre.friction: 0.91 ± 0.091, from the kind of tyre; common practice");
    }

    @Test
    void aLongNameMakesNoTallHead() {
        String name = "Everything that the customer could think of on a wet Sunday afternoon and a good deal more";
        String named = Run.file(folder, "named.json", Run.CAR.replace("As bought", name))
                .toString();
        List<String> lines = Run.of("balance", named, "--full").lines();
        int table = lines.indexOf("Hand sums, as lateral acceleration begins");
        assertThat(lines.get(table - 4)).isEmpty();
        assertThat(lines.subList(table - 3, table)).anyMatch(line -> line.contains("…"));
        assertThat(lines).contains(name);
    }

    @Test
    void noLineIsWiderThanTheTerminal() {
        assertThat(Run.of("balance", car).lines()).allMatch(line -> line.length() <= 100);
        assertThat(Run.of("balance", car, "--full").lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void theVerdictOfEveryDemoCarKeepsToOneScreen() {
        for (String demo : DEMOS) {
            List<String> lines = Run.of(
                            "balance",
                            "../scenarios/" + demo + ".json",
                            "--pace",
                            "0.2 g",
                            "--pace",
                            "0.4 g",
                            "--pace",
                            "0.6 g")
                    .lines();
            assertThat(lines).as(demo).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 100);
            assertThat(String.join(" ", lines))
                    .as(demo)
                    .contains("limit, g", "goes first", "Why ", "What would move", "How sure: ");
        }
    }

    @Test
    void theOtherWayRepeatsTheFiguresOfThatTurn() {
        String crossed = Run.file(
                        folder,
                        "crossed.json",
                        Run.CAR.replace(
                                "\"mass\": \"1380 kg\", \"frontWeightFraction\": 0.545,",
                                "\"cornerWeights\": {\"frontLeft\": \"430 kg\", \"frontRight\": \"322 kg\","
                                        + " \"rearLeft\": \"260 kg\", \"rearRight\": \"368 kg\"},"))
                .toString();
        JsonNode both = json("balance", crossed, "--json").get("setups").get(1);
        JsonNode left = json("balance", crossed, "--json", "--turn", "left")
                .get("setups")
                .get(1);
        JsonNode right = json("balance", crossed, "--json", "--turn", "right")
                .get("setups")
                .get(1);
        assertThat(both.has("alike")).isFalse();
        assertThat(keys(both.get("otherTurn"))).containsExactly("turn", "paces", "limit", "events");
        assertThat(both.get("otherTurn").get("turn").asText()).isEqualTo("right");
        for (String part : List.of("paces", "limit", "events")) {
            assertThat(both.get(part)).isEqualTo(left.get(part));
            assertThat(both.get("otherTurn").get(part)).isEqualTo(right.get(part));
        }
        assertThat(left.has("otherTurn") || left.has("alike")).isFalse();
    }

    /** A welded axle with scales so crossed has a balance on the smallest circle to the right only. */
    @Test
    void aCarThatTurnsOneWayOnlyIsAnsweredThatWay() {
        String welded = oneWay();
        Run run = Run.of("balance", welded, "--json", "--radius", "4 m", "--setup", "Welded up");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        JsonNode setup = parsed(run.out()).get("setups").get(0);
        assertThat(setup.get("noAnswer").get("text").asText()).contains("beyond the model");
        assertThat(setup.has("limit")).isFalse();
        assertThat(setup.get("otherTurn").get("limit").get("firstAxle").asText())
                .isEqualTo("rear");
        Run page = Run.of("balance", welded, "--radius", "4 m", "--setup", "Welded up");
        assertThat(page.out()).contains("! Welded up: no answer: turning left: this differential and this bend");
        assertThat(Run.of("balance", welded, "--radius", "4 m", "--setup", "Welded up", "--full")
                        .out())
                .contains("No answer: turning left: ", "Turning right ");
        Run csv = Run.of("balance", welded, "--radius", "4 m", "--setup", "Welded up", "--csv");
        assertThat(csv.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(csv.err()).startsWith("evenhand balance: no answer for \"Welded up\": turning left: ");
    }

    private String oneWay() {
        try {
            String quarry = Files.readString(Path.of("../scenarios/quarry-special.json"));
            ObjectNode file = (ObjectNode) JsonMapper.builder().build().readTree(quarry);
            ((ObjectNode) file.get("car"))
                    .putObject("cornerWeights")
                    .put("frontLeft", "190 kg")
                    .put("frontRight", "480 kg")
                    .put("rearLeft", "140 kg")
                    .put("rearRight", "440 kg");
            file.get("setups").forEach(setup -> {
                if (setup.get("changes") instanceof ObjectNode changes) {
                    changes.remove("cornerWeights");
                }
            });
            return Run.file(folder, "one-way.json", file.toString()).toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyFurtherCircleHasItsOwnAnswers() {
        JsonNode answer = json("balance", car, "--json", "--radius", "40 m", "--radius", "15 m");
        assertThat(answer.get("radius_m").asDouble()).isEqualTo(40);
        assertThat(answer.get("atRadius").size()).isEqualTo(1);
        JsonNode circle = answer.get("atRadius").get(0);
        assertThat(circle.get("radius_m").asDouble()).isEqualTo(15);
        assertThat(circle.get("setups"))
                .isEqualTo(json("balance", car, "--json", "--radius", "15 m").get("setups"));
    }

    @Test
    void theSameQuestionGetsTheSameAnswerToTheLastByte() {
        assertThat(Run.of("balance", car, "--json").out())
                .isEqualTo(Run.of("balance", car, "--json").out());
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
