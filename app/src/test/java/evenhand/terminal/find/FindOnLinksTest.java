package evenhand.terminal.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.quantity.Unit;
import evenhand.scenario.AimReading;
import evenhand.scenario.ScenarioReader;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code find} says of links by points; each value is put back into the file, and {@code travel} is asked. */
class FindOnLinksTest {
    private static final String TOURER = "../scenarios/sluice-tourer.json";
    /** Three links and a Panhard rod behind. */
    private static final String VAN = "src/test/resources/links/weir-van.json";

    private static final JsonNode TOURER_TRAVELS = travelled(TOURER);

    @TempDir
    Path folder;

    @Test
    void theMiddleLinkOfThreeTurnsThePinion() throws IOException {
        JsonNode found = found(VAN, "rear.links.middleLink.longer", "-15 mm", "15 mm", "pinion slope 2 deg");
        assertThat(found.get("value").asDouble()).isBetween(0.002, 0.004);
        assertThat(inTravel(VAN, found, axle -> axle.at("/rest/pinionSlope_deg").asDouble()))
                .isCloseTo(2, within(1e-5));
        assertThat(found.get("words").asText()).contains("is to be made longer by 2.0 turns of its thread");
    }

    @Test
    void whatTheLinksMakeIsNotLookedFor() {
        Run run = Run.of(words("steering.ackermannShare", "0", "1"));
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err())
                .contains(
                        "steering.ackermannShare is what the links make it on this car; change their points or lengths");
        assertThat(Run.of("effects", TOURER, "--json").out()).doesNotContain("ackermannShare");
    }

    private static String[] words(String path, String from, String to) {
        return new String[] {
            "find", TOURER, "--change", path, "--from", from, "--to", to, "--aim", "understeer 1 deg/g at 0.5 g"
        };
    }

    @Test
    void thePanhardRodMovesTheAxleSideways() throws IOException {
        JsonNode found = found(VAN, "rear.lateralLocator.longer", "-15 mm", "15 mm", "axle sideways -4 mm");
        // the axle's end is on the right, so that a longer rod pushes it there, and a little more for its slope
        assertThat(found.get("value").asDouble()).isBetween(0.004, 0.0042);
        assertThat(inTravel(VAN, found, axle -> axle.at("/rest/sideShift_m").asDouble()))
                .isCloseTo(-0.004, within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({"'', 1", "in bump, 1", "in droop, -1"})
    void aShimParsTheEyesOfADamperAtRestAndAtBothEndsOfTheTravel(String where, double degrees) throws IOException {
        String aim = "eye difference " + where + " " + degrees + " deg";
        JsonNode found = found(TOURER, "rear.damper.bottom.shim", "-30 mm", "40 mm", aim);
        assertThat(inTravel(TOURER, found, axle -> {
                    JsonNode left = state(axle, where).get("left");
                    return left.get("upperEye_deg").asDouble()
                            - left.get("lowerEye_deg").asDouble();
                }))
                .isCloseTo(degrees, within(1e-5));
    }

    private static JsonNode state(JsonNode axle, String where) {
        JsonNode heave = axle.get("heave");
        return switch (where) {
            case "in bump" -> heave.get(heave.size() - 1);
            case "in droop" -> heave.get(0);
            default -> axle.get("rest");
        };
    }

    @Test
    void aBracketFurtherAheadSetsTheDropLinkUpright() throws IOException {
        JsonNode found = found(TOURER, "rear.links.torqueArm.hanger.ahead", "880 mm", "930 mm", "drop link lean 0 deg");
        assertThat(found.get("value").asDouble()).isCloseTo(0.910, within(1e-8)); // above the arm's end
        assertThat(inTravel(
                        TOURER,
                        found,
                        axle -> axle.at("/links/dropLink/leanForward_deg").asDouble()))
                .isCloseTo(0, within(1e-6));
    }

    /** Of every figure, in every place: the car as it stands meets what travel says of it, and nothing else. */
    @ParameterizedTest
    @CsvSource({
        "rear roll centre, m, rear, /rollCentreHeight_m",
        "front roll centre, m, front, /rollCentreHeight_m",
        "roll steer, , rear, /rollSteer",
        "front roll steer, , front, /rollSteer",
        "anti-squat, , rear, /antiSquat",
        "anti-dive, , front, /antiDive",
        "anti-lift, , rear, /antiLift",
        "pinion slope, deg, rear, /pinionSlope_deg",
        "joint angle, deg, rear, /jointAngles_deg/0",
        "left-over joint angle, deg, rear, /residualJointAngle_deg",
        "axle sideways, m, rear, /sideShift_m",
        "caster, deg, front, /left/caster_deg",
    })
    void theCarAsItStandsHasWhatTravelSays(String figure, String unit, String end, String place) {
        Car car = ScenarioReader.read(Path.of(TOURER))
                .scenario()
                .orElseThrow()
                .setups()
                .get(0)
                .car();
        JsonNode axle = TOURER_TRAVELS.at("/setups/0/" + end);
        for (String where : List.of("", "in bump", "in droop")) {
            JsonNode state = state(axle, where);
            double said = figure.equals("joint angle")
                    ? Math.max(
                            state.at(place).asDouble(),
                            state.at("/jointAngles_deg/1").asDouble())
                    : state.at(place).asDouble();
            String aim = ((figure + " " + where).strip() + " 1 " + (unit == null ? "" : unit)).strip();
            Judged judged = AimReading.read(aim).judged();
            Answers answers = Trial.usual().ask(car, List.of(judged));
            assertThat(answers.bends()).as("nothing turns for it").isEmpty();
            Unit shown = judged.criterion().unit();
            assertThat(shown.fromSi(judged.si(answers).orElseThrow()))
                    .as(aim)
                    .isCloseTo(said * scale(shown.symbol()), within(2e-4));
        }
    }

    /** From SI, or degrees, to what an aim is answered in. */
    private static double scale(String unit) {
        return switch (unit) {
            case "mm" -> 1000;
            case "%" -> 100;
            default -> 1;
        };
    }

    @Test
    void bumpSteerIsTheSlopeOfToeThatTravelShowsRowByRow() throws IOException {
        JsonNode found = found(TOURER, "front.links.tieRod.outer.up", "230 mm", "250 mm", "bump steer -2 deg/m");
        double slope = inTravel(
                TOURER,
                found,
                "front",
                axle -> {
                    JsonNode heave = axle.get("heave");
                    for (int i = 1; i + 1 < heave.size(); i++) {
                        if (heave.get(i).get("leftTravel_m").asDouble() == 0) {
                            return (heave.get(i + 1).at("/left/toe_deg").asDouble()
                                            - heave.get(i - 1)
                                                    .at("/left/toe_deg")
                                                    .asDouble())
                                    / (heave.get(i + 1).get("leftTravel_m").asDouble()
                                            - heave.get(i - 1)
                                                    .get("leftTravel_m")
                                                    .asDouble());
                        }
                    }
                    throw new AssertionError("no row at rest");
                },
                "--step",
                "0.5 mm");
        assertThat(slope).isCloseTo(-2, within(5e-3));
    }

    @Test
    void withBothBoltsParallelAShimHasNoReach() throws IOException {
        Path car = folder.resolve("parallel.json");
        ObjectNode file = (ObjectNode) new JsonMapper().readTree(Path.of(TOURER).toFile());
        ((ObjectNode) file.at("/car/rear/damper/top")).remove("bolt");
        ((ObjectNode) file.at("/car/rear/damper/bottom")).remove("tilt");
        Files.writeString(car, file.toString());
        Run run = run(car.toString(), "rear.damper.bottom.shim", "-10 mm", "20 mm", "eye difference 1 deg");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("No value in that range gives 1 deg")
                .contains("this change has no reach")
                .contains("with both bolts parallel both eyes stand at the same angle always");
    }

    @Test
    void aJointAngleThatIsToBeNothingIsFoundAtItsEdge() {
        JsonNode found = found(TOURER, "rear.links.torqueArm.longer", "-20 mm", "20 mm", "left-over joint angle 0 deg");
        assertThat(found.get("achieved").asDouble()).isBetween(0.0, 0.02);
        assertThat(found.get("solutions")).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "../scenarios/harbour-saloon.json | pinion slope 0 deg | a live axle on links with a \"propShaft\", by"
                        + " points in car.rear or car.front",
                "../scenarios/sluice-tourer.json | front pinion slope 0 deg | by points in car.front, as in",
                "src/test/resources/links/weir-van.json | drop link lean 0 deg | it needs a \"torqueArm\" whose drop link",
                "../scenarios/sluice-tourer.json | rear caster 3 deg | it needs independent wheels on links"
            })
    void aCarWithoutThePartIsToldWhatItNeeds(String car, String aim, String needs) {
        Run run = run(car, "rear.spring.rate", "20 N/mm", "40 N/mm", aim);
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("evenhand find: --aim \"" + aim + "\": this car has no such figure: ")
                .contains(needs)
                .containsOnlyOnce("\n");
    }

    @Test
    void linksThatDoNotReachTheEndOfTheTravelHaveNoFigureThere() {
        Run run = run(TOURER, "rear.metalStop.gap", "250 mm", "300 mm", "pinion slope in bump 0 deg", "--json");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        JsonNode answer = asked(run);
        assertThat(answer.at("/noAnswer/reason").asText()).isEqualTo("cannotReach");
        assertThat(answer.at("/noAnswer/text").asText())
                .isEqualTo("nowhere in the range do the rear links reach the end of bump; \"evenhand travel\" shows how"
                        + " far they go, and a smaller gap of metalStop or bumpStop asks for less");
        assertThat(run.out()).doesNotContain("NaN");
    }

    /** Where they reach it in a part of the range only, that part counts, up to where it ends. */
    @Test
    void aRangeCountsAsFarAsTheLinksReach() {
        JsonNode found = found(TOURER, "rear.metalStop.gap", "50 mm", "300 mm", "pinion slope in bump -5 deg");
        assertThat(found.get("value").asDouble()).isBetween(0.09, 0.1);
        JsonNode curve = found.get("curve");
        assertThat(curve.get(curve.size() - 1).get(0).asDouble()).isBetween(0.15, 0.25);
    }

    @Test
    void theSameWhicheverWayItTurnsIsSaidOnce() {
        JsonNode found =
                asked(run(TOURER, "rear.links.torqueArm.longer", "-10 mm", "10 mm", "pinion slope 0.5 deg", "--json"));
        assertThat(found.has("otherTurn")).isFalse();
        assertThat(found.get("achievedLeft").asDouble())
                .isEqualTo(found.get("achievedRight").asDouble());
        Run run = run(TOURER, "rear.links.torqueArm.longer", "-10 mm", "10 mm", "pinion slope 0.5 deg");
        assertThat(run.out()).contains("At 7.971 mm it is 0.50 deg, as asked.").doesNotContain("turning");
    }

    @Test
    void severalChangesAreTheSmallestAndKeepWhatIsToBeKept() {
        JsonNode found = asked(Run.of(
                "find",
                TOURER,
                "--change",
                "rear.links.torqueArm.longer",
                "--from",
                "-10 mm",
                "--to",
                "10 mm",
                "--change",
                "rear.links.torqueArm.hanger.ahead",
                "--from",
                "890 mm",
                "--to",
                "930 mm",
                "--aim",
                "drop link lean 0 deg",
                "--keep",
                "pinion slope at most 0.8 deg",
                "--turn",
                "left",
                "--json"));
        assertThat(found.get("status").asText()).isEqualTo("met");
        assertThat(found.get("achieved").asDouble()).isCloseTo(0, within(1e-6));
        assertThat(found.at("/kept/0/ok").asBoolean()).isTrue();
        assertThat(found.at("/kept/0/value").asDouble()).isCloseTo(0.8, within(1e-4)); // no more than is asked
        assertThat(found.at("/changes/0/value").asDouble()).isBetween(0.003, 0.0034);
        assertThat(found.at("/changes/1/value").asDouble()).isBetween(0.910, 0.911);
    }

    @Test
    void whatIsOfTheLinksCanBeKeptWhileTheTurnIsAimedAt() {
        JsonNode found = asked(run(
                TOURER,
                "rear.lateralLocator.pivot.up",
                "250 mm",
                "340 mm",
                "understeer at most 2.45 deg/g at 0.5 g",
                "--keep",
                "rear roll centre at most 310 mm",
                "--turn",
                "left",
                "--json"));
        assertThat(found.get("status").asText()).isEqualTo("nearest");
        assertThat(found.at("/kept/0/value").asDouble()).isCloseTo(310, within(0.01));
        assertThat(found.at("/withoutKeeps/0/blocks").asBoolean()).isTrue();
        assertThat(found.at("/withoutKeeps/0/stand/0/value").asDouble()).isGreaterThan(310.5);
    }

    /** Beside the turn's figures; where no axle has links by points there is nothing to tell. */
    @Test
    void aComparisonTellsWhatTheLinksDo() {
        JsonNode differences = asked(
                        Run.of("compare", TOURER, "--setup", "Pinion turned down", "--turn", "left", "--json"))
                .at("/setups/0/differences");
        double before = TOURER_TRAVELS.at("/setups/0/rear/rest/pinionSlope_deg").asDouble();
        JsonNode pinion = of(differences, "pinion slope");
        assertThat(pinion.get("base").asDouble()).isCloseTo(before, within(1e-5));
        assertThat(pinion.get("difference").asDouble()).isBetween(-0.4, -0.36);
        assertThat(pinion.at("/shares/0/share").asDouble())
                .isEqualTo(pinion.get("difference").asDouble());
        assertThat(of(differences, "rear roll centre").get("difference").asDouble())
                .isCloseTo(0, within(0.05));
        assertThat(of(differences, "drop link lean").get("unit").asText()).isEqualTo("deg");
        assertThat(Run.of("compare", TOURER, "--setup", "Pinion turned down", "--turn", "left")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("its links at rest: pinion slope −0.38 deg, left-over joint angle −0.29 deg");
        assertThat(Run.of("compare", withoutLinks(), "--turn", "left", "--json").out())
                .doesNotContain("pinion slope")
                .doesNotContain("roll centre\"");
    }

    private static JsonNode of(JsonNode differences, String figure) {
        for (JsonNode one : differences) {
            if (one.get("figure").asText().equals(figure)) {
                return one;
            }
        }
        throw new AssertionError(figure + " is not in " + differences);
    }

    @Test
    void theDoubtAboutAnAimOfTheLinksIsThatOfTheirPoints() {
        JsonNode doubted = asked(Run.of(
                "doubt",
                TOURER,
                "--setup",
                "As measured",
                "--samples",
                "60",
                "--turn",
                "left",
                "--aim",
                "pinion slope at most 1 deg",
                "--json"));
        // the pinion's own slope is measured to ± 0.2 deg, and the car as it stands has just 1 deg
        JsonNode spread = doubted.at("/setups/0/figures/0");
        assertThat(spread.get("figure").asText()).isEqualTo("pinion slope");
        assertThat(spread.get("high").asDouble() - spread.get("low").asDouble()).isBetween(0.3, 0.5);
        assertThat(doubted.at("/setups/0/aim/chance").asDouble()).isBetween(0.3, 1.0);
        Run without = Run.of("doubt", withoutLinks(), "--samples", "10", "--aim", "pinion slope at most 1 deg");
        assertThat(without.status()).isEqualTo(Status.WRONG);
        assertThat(without.err())
                .contains("--aim \"pinion slope at most 1 deg\" for ")
                .contains("this car has no such figure");
    }

    @Test
    void inInchesALengthHasItsDigits() {
        assertThat(run(
                                VAN,
                                "rear.lateralLocator.longer",
                                "-0.5 in",
                                "0.5 in",
                                "axle sideways 0.25 in",
                                "--units",
                                "imperial")
                        .out())
                .contains("it is 0.2500 in, as asked");
    }

    /** A car of which no axle has links by points. */
    private String withoutLinks() {
        return Run.car(folder).toString();
    }

    private static Run run(String car, String path, String from, String to, String aim, String... more) {
        List<String> all =
                new ArrayList<>(List.of("find", car, "--change", path, "--from", from, "--to", to, "--aim", aim));
        all.addAll(List.of(more));
        return Run.of(all.toArray(String[]::new));
    }

    private static JsonNode found(String car, String path, String from, String to, String aim) {
        JsonNode answer = asked(run(car, path, from, to, aim, "--json", "--turn", "left"));
        assertThat(answer.get("status").asText()).as(answer.toString()).isEqualTo("met");
        assertThat(answer.get("solutions")).isNotEmpty();
        return answer;
    }

    private double inTravel(String car, JsonNode found, ToDoubleFunction<JsonNode> figure) throws IOException {
        return inTravel(car, found, "rear", figure);
    }

    /** What travel says of the car with what was found. */
    private double inTravel(
            String car, JsonNode found, String end, ToDoubleFunction<JsonNode> figure, String... options)
            throws IOException {
        ObjectNode file = (ObjectNode) new JsonMapper().readTree(Path.of(car).toFile());
        String[] keys = found.get("change").asText().split("\\.", -1);
        ObjectNode part = (ObjectNode) file.get("car");
        for (int i = 0; i + 1 < keys.length; i++) {
            part = (ObjectNode) part.get(keys[i]);
        }
        part.put(
                keys[keys.length - 1],
                found.get("value").asDouble() + " " + found.get("valueUnit").asText());
        Path changed = Files.writeString(folder.resolve("changed.json"), file.toString());
        return figure.applyAsDouble(travelled(changed.toString(), options).at("/setups/0/" + end));
    }

    private static JsonNode travelled(String car, String... options) {
        List<String> all = new ArrayList<>(List.of("travel", car, "--setup", "As measured", "--json"));
        all.addAll(List.of(options));
        return asked(Run.of(all.toArray(String[]::new)));
    }

    private static JsonNode asked(Run run) {
        try {
            return new JsonMapper().readTree(run.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(run.out() + run.err(), e);
        }
    }
}
