package evenhand.terminal.loads;

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

class LoadsCommandTest {
    private static final String SAMPLE = "src/test/resources/samples/mounts.json";
    private static final String COUPE = "../scenarios/slipper-coupe.json";

    @TempDir
    Path folder;

    private static Run run(String... words) {
        return Run.of(Stream.concat(Stream.of("loads"), Stream.of(words)).toArray(String[]::new));
    }

    private static JsonNode json(Status status, String... words) {
        Run run = run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isEqualTo(status);
        try {
            return JsonMapper.builder().build().readTree(run.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(run.out(), e);
        }
    }

    private static JsonNode json(String... words) {
        return json(Status.DONE, words);
    }

    private static JsonNode named(JsonNode list, String key, String name) {
        return StreamSupport.stream(list.spliterator(), false)
                .filter(one -> one.get(key).asText().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> keys(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private Path file(String from, String to) throws IOException {
        String text = Files.readString(Path.of(SAMPLE));
        assertThat(text).contains(from);
        return Run.file(folder, "mounts.json", text.replace(from, to));
    }

    @Test
    void anAnswerHasThePinnedKeys() {
        JsonNode setup = json(SAMPLE, "--setup", "As bought").at("/setups/0");
        assertThat(keys(setup)).startsWith("name", "words", "cases", "worst", "estimated");
        assertThat(setup.get("cases").findValuesAsText("case"))
                .containsExactly(
                        "Standing",
                        "Hard corner",
                        "Hard corner",
                        "Brisk corner",
                        "Brisk corner",
                        "Hard braking",
                        "Full-torque start",
                        "Kerb strike",
                        "Kerb strike",
                        "Pothole",
                        "Pothole",
                        "Hung up",
                        "Rule book",
                        "Braking in the bend",
                        "Braking in the bend");
        JsonNode kerb = named(setup.get("cases"), "case", "Kerb strike");
        assertThat(keys(kerb)).containsExactly("case", "kind", "hand", "factor", "axles", "members", "mounts");
        assertThat(kerb.get("hand").asText()).isEqualTo("left");
        assertThat(keys(kerb.at("/axles/rear"))).containsExactly("leftTravel_m", "rightTravel_m", "acts");
        assertThat(keys(kerb.at("/axles/rear/acts/0"))).containsExactly("on", "what", "at_m", "force_N", "moment_Nm");
        JsonNode spring = named(kerb.get("members"), "member", "rear.springLeft");
        assertThat(keys(spring)).containsExactly("member", "axial_N", "handSum", "ends");
        assertThat(keys(spring.at("/ends/0"))).containsExactly("end", "on", "at_m", "force_N", "moment_Nm");
        JsonNode post = named(kerb.get("mounts"), "mount", "pivotPost");
        assertThat(keys(post))
                .contains(
                        "force_N",
                        "along_N",
                        "across_N",
                        "total_N",
                        "bending_Nm",
                        "bendingStress_Pa",
                        "shearStress_Pa",
                        "tensionStress_Pa",
                        "combinedStress_Pa",
                        "yieldUsed",
                        "left_N",
                        "right_N",
                        "twist_Nm");
        assertThat(keys(named(kerb.get("mounts"), "mount", "springTower")))
                .contains("area_m2", "pressure_Pa", "greatestPressure_Pa", "edgeShear_Pa");
        assertThat(named(kerb.get("mounts"), "mount", "link bracket").has("ratedUsed"))
                .isTrue();
        JsonNode combined = named(setup.get("cases"), "case", "Braking in the bend");
        assertThat(keys(combined)).doesNotContain("axles");
        assertThat(keys(setup.get("worst"))).containsExactly("members", "mounts");
        assertThat(keys(named(setup.at("/worst/members"), "member", "rear.springLeft")))
                .containsExactly("member", "greatest_N", "greatestCase", "compression_N", "compressionCase");
        assertThat(keys(named(setup.at("/worst/mounts"), "mount", "pivotPost")))
                .containsExactly(
                        "mount",
                        "total_N",
                        "totalCase",
                        "combinedStress_Pa",
                        "combinedStressCase",
                        "yieldUsed",
                        "yieldUsedCase");
    }

    /**
     * A post behind a live axle's locator: all of the blow's side force goes through it. The locator stands 140 mm ahead of the post,
     * 45 mm of which the overhang brings back.
     */
    @Test
    void aKerbBendsThePinOfThePostByItsLever() {
        JsonNode kerb = json(SAMPLE, "--setup", "As bought", "--in", "Kerb strike", "--turn", "left")
                .at("/setups/0/cases/0");
        double load = 1100 * 9.80665 * 0.47 / 2;
        JsonNode post = named(kerb.get("mounts"), "mount", "pivotPost");
        assertThat(post.get("total_N").asDouble()).isCloseTo(2 * load, within(1e-6));
        assertThat(post.get("force_N").get(1).asDouble()).isCloseTo(-2 * load, within(1e-6));
        double bending = 32 * 2 * load * (0.14 - 0.045) / (Math.PI * Math.pow(0.02, 3));
        double shear = 2 * load / (Math.PI / 4 * 0.02 * 0.02);
        assertThat(post.get("combinedStress_Pa").asDouble())
                .isCloseTo(Math.sqrt(bending * bending + 3 * shear * shear), within(1e-3));
        assertThat(post.get("left_N").get(1).asDouble()
                        + post.get("right_N").get(1).asDouble())
                .isCloseTo(-2 * load, within(1e-6));
    }

    @Test
    void theWorstIsThatOfAllCasesAndSaysWhich() {
        JsonNode setup = json(SAMPLE, "--setup", "As bought").at("/setups/0");
        double greatest = 0;
        String title = "";
        for (JsonNode one : setup.get("cases")) {
            double total = named(one.get("mounts"), "mount", "springTower")
                    .get("total_N")
                    .asDouble();
            if (total > greatest) {
                greatest = total;
                title = one.get("case").asText()
                        + (one.has("hand") ? ", " + one.get("hand").asText() : "");
            }
        }
        JsonNode worst = named(setup.at("/worst/mounts"), "mount", "springTower");
        assertThat(worst.get("total_N").asDouble()).isEqualTo(greatest);
        assertThat(worst.get("totalCase").asText()).isEqualTo(title);
    }

    @Test
    void aWiderSeatIsPressedLessByItsAreaAndShearsItsEdgeLessByItsDiameter() {
        JsonNode wide =
                json(SAMPLE, "--setup", "As bought", "--setup", "Bigger cup").at("/setups/1");
        assertThat(ratio(wide, "pressure_Pa"))
                .isCloseTo((38.0 * 38 - 10.2 * 10.2) / (60.0 * 60 - 10.2 * 10.2), within(1e-9));
        assertThat(ratio(wide, "edgeShear_Pa")).isCloseTo(38.0 / 60, within(1e-9));
        assertThat(ratio(wide, "total_N")).isCloseTo(1, within(1e-12));
        assertThat(wide.get("words").asText())
                .contains(
                        "Against \"As bought\": springTower pressure 62 % less, springTower shear at the edge 37 % less")
                .contains("falls with its area")
                .contains("only with its diameter")
                .contains("a stiff eye counts more on a small seat");
    }

    private static double ratio(JsonNode setup, String figure) {
        JsonNode difference = StreamSupport.stream(setup.get("differences").spliterator(), false)
                .filter(one -> one.get("part").asText().equals("springTower")
                        && one.get("figure").asText().equals(figure))
                .findFirst()
                .orElseThrow();
        assertThat(difference.get("difference").asDouble())
                .isEqualTo(difference.get("value").asDouble()
                        - difference.get("base").asDouble());
        return difference.get("value").asDouble() / difference.get("base").asDouble();
    }

    @Test
    void casesHandsAndPartsAreChosen() {
        JsonNode setup = json(
                        SAMPLE,
                        "--setup",
                        "As bought",
                        "--in",
                        "Braking in the bend",
                        "--turn",
                        "right",
                        "--part",
                        "rear.spring")
                .at("/setups/0");
        assertThat(setup.get("cases")).hasSize(1);
        assertThat(setup.at("/cases/0/hand").asText()).isEqualTo("right");
        assertThat(setup.at("/cases/0/members").findValuesAsText("member"))
                .containsExactly("rear.springLeft", "rear.springRight");
        assertThat(setup.at("/cases/0/mounts").findValuesAsText("mount"))
                .containsExactly("springTower", "link bracket");
        assertThat(run(SAMPLE, "--in", "Kerb").err())
                .startsWith("evenhand loads: there is no case of hard use \"Kerb\" in the file, only \"Standing\"");
        Run part = run(SAMPLE, "--part", "rear.springs");
        assertThat(part.status()).isEqualTo(Status.WRONG);
        assertThat(part.err()).contains("there is no part \"rear.springs\"");
        assertThat(run(SAMPLE, "--turn", "up").err()).contains("write left, right or both");
    }

    @Test
    void aPaceBeyondTheLimitHasNoAnswerAndTheOtherCasesStand() throws IOException {
        String file = file("\"pace\": \"0.5 g\"", "\"pace\": \"1.5 g\"").toString();
        JsonNode setup = json(Status.NO_ANSWER, file, "--setup", "As bought").at("/setups/0");
        JsonNode brisk = named(setup.get("cases"), "case", "Brisk corner");
        assertThat(brisk.at("/noAnswer/text").asText()).contains("its limit is");
        assertThat(named(setup.get("cases"), "case", "Kerb strike").get("members"))
                .isNotEmpty();
        assertThat(run(file).out()).contains("Brisk corner, left has no answer: the car does not turn at 1.50 g");
        Run csv = run(file, "--csv", "--in", "Brisk corner");
        assertThat(csv.out().lines()).hasSize(1);
        assertThat(csv.err()).contains("\"As bought\": Brisk corner, left has no answer");
    }

    @Test
    void whatThisCarCannotBeAskedIsLeftOutWithAWarning() throws IOException {
        JsonNode setup = json(SAMPLE, "--setup", "As bought").at("/setups/0");
        assertThat(setup.get("warnings").get(0).asText())
                .contains("Hung up leaves an axle out: the front axle has no droopStop");
        Path bare = Run.car(folder);
        JsonNode mule = json(bare.toString(), "--setup", "As bought").at("/setups/0");
        assertThat(mule.get("cases").findValuesAsText("case")).doesNotContain("Hung up");
        assertThat(mule.get("warnings").toString()).contains("Hung up is left out: both axles have no droopStop");
        String text = Files.readString(bare).replaceFirst(",\\s*\"drive\": .*", "");
        JsonNode still = json(Run.file(folder, "still.json", text).toString(), "--setup", "As bought")
                .at("/setups/0");
        assertThat(still.get("cases").findValuesAsText("case")).doesNotContain("Full-torque start");
        assertThat(still.get("warnings").toString()).contains("the file does not say which wheels drive");
    }

    @Test
    void theUsualCasesAreToldWithTheirOrigins() {
        JsonNode setup =
                json(COUPE, "--setup", "Tail 15 mm up", "--in", "Standing").at("/setups/0");
        JsonNode braking = named(setup.get("estimated"), "path", "hardUse[2].deceleration");
        assertThat(braking.get("value").asDouble()).isCloseTo(1.1 * 9.80665, within(1e-12));
        assertThat(braking.get("rule").asText()).contains("Cranfield");
        assertThat(json(SAMPLE, "--in", "Standing").at("/setups/0/estimated").findValuesAsText("path"))
                .contains("hardUse[6].back")
                .doesNotContain("hardUse[3].deceleration");
    }

    @Test
    void aPersonReadsTheHardestWorkedFirstThenTheTableThenTheCautions() {
        List<String> lines = run(SAMPLE).lines();
        assertThat(lines.get(3))
                .startsWith("  Hardest worked: pivotPost, 96 % of its pin's yield in Kerb strike, left");
        String text = String.join("\n", lines);
        assertThat(text.indexOf("worst in")).isPositive().isLessThan(text.indexOf("no proof of strength"));
        assertThat(text)
                .contains("suitably qualified engineer")
                .contains("In Hard braking and in Braking in the bend more is");
        assertThat(lines).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        String kerb = run(SAMPLE, "--setup", "As bought", "--in", "Kerb strike", "--units", "imperial")
                .out();
        assertThat(kerb)
                .contains("rear spring left, top on body")
                .contains("lbf")
                .contains("pivotPost, left support");
        assertThat(run(SAMPLE, "--units", "imperial").out()).contains("psi").doesNotContain("MPa");
    }

    @Test
    void aRowOfASpreadsheetIsAnEndOfAMemberInACase() {
        List<String> lines = run(COUPE, "--setup", "Tail 15 mm up", "--in", "Kerb strike", "--turn", "left", "--csv")
                .lines();
        assertThat(lines.get(0))
                .isEqualTo(
                        "setup,case,kind,hand,factor,member,axial_N,end,on,atX_m,atY_m,atZ_m,forceX_N,forceY_N,forceZ_N,"
                                + "momentX_Nm,momentY_Nm,momentZ_Nm");
        assertThat(lines)
                .anySatisfy(line -> assertThat(line)
                        .startsWith("Tail 15 mm up,Kerb strike,kerb,left,1.0,rear.upperRod,")
                        .contains(",pin,crank,"));
    }

    private static JsonNode json(Run run) {
        try {
            return JsonMapper.builder().build().readTree(run.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(run.out(), e);
        }
    }

    /** The seat's area decides its pressure, and the worst of all cases is the demand. */
    @Test
    void aSearchSaysHowLargeAWasherMustBe() {
        JsonNode found = json(Run.of(
                "find",
                SAMPLE,
                "--setup",
                "As bought",
                "--change",
                "mounts.springTower.spread.outer",
                "--from",
                "30 mm",
                "--to",
                "120 mm",
                "--aim",
                "pressure at springTower at most 2 MPa",
                "--json"));
        JsonNode worst =
                named(json(SAMPLE, "--setup", "As bought").at("/setups/0/worst/mounts"), "mount", "springTower");
        double area = worst.get("total_N").asDouble() / 2e6;
        double outer = Math.sqrt(4 * area / Math.PI + 0.0102 * 0.0102);
        assertThat(found.get("status").asText()).isEqualTo("met");
        assertThat(found.get("value").asDouble()).isCloseTo(outer, within(1e-5));
        assertThat(found.get("unit").asText()).isEqualTo("MPa");
        Run none = Run.of(
                "find",
                SAMPLE,
                "--setup",
                "As bought",
                "--change",
                "rear.lateralLocator.height",
                "--from",
                "200 mm",
                "--to",
                "300 mm",
                "--aim",
                "pressure at pivotPost 2 MPa");
        assertThat(none.status()).isEqualTo(Status.WRONG);
        assertThat(none.err()).contains("nothing spreads the load of pivotPost; give its spread");
    }

    @Test
    void whatMountsCarryIsComparedAndSharedOut() {
        JsonNode differences = json(Run.of("compare", SAMPLE, "--setup", "Bigger cup", "--turn", "left", "--json"))
                .at("/setups/0/differences");
        JsonNode pressure = named(differences, "figure", "pressure at springTower");
        assertThat(pressure.get("unit").asText()).isEqualTo("MPa");
        assertThat(pressure.get("difference").asDouble()).isNegative();
        assertThat(named(pressure.get("shares"), "change", "mounts.springTower.spread.outer")
                        .get("share")
                        .asDouble())
                .isCloseTo(pressure.get("difference").asDouble(), within(1e-9));
        assertThat(named(differences, "figure", "yield used at pivotPost")
                        .get("difference")
                        .asDouble())
                .isZero();
    }
}
