package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.sun.management.ThreadMXBean;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.LateralLocator;
import evenhand.car.Spring;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ScenarioReaderTest {
    @Test
    void everyKeyOfTheFormatIsRead() {
        Scenario scenario = Samples.everyKey();
        assertThat(scenario.title()).isEqualTo("Format sample");
        assertThat(scenario.setups())
                .extracting(Setup::name)
                .containsExactly("As bought", "Pivot 20 mm up", "Pivot up, soft bar");
        assertThat(scenario.loadCases().get(0).added().get(0).mass()).isEqualTo(150);
        Axle.Live rear = (Axle.Live) scenario.setups().get(0).car().rear();
        assertThat(rear.lateralLocator())
                .isEqualTo(new LateralLocator.WattsLinkage(0.255, LateralLocator.CarriedBy.BODY));
        assertThat(((Spring.Leaning) rear.spring()).lean()).isCloseTo(Math.PI / 12, within(1e-15));
        assertThat(scenario.setups().get(1).sheet()).containsEntry("castor", "4 deg");
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void anEditedTextReadAgainIsTheScenarioThatItWouldBeReadAsAfresh(String demo) {
        Scenario before = Demo.read(demo);
        SplittableRandom random = new SplittableRandom(29);
        for (int i = 0; i < 40; i++) {
            List<Setup> setups = before.setups();
            String text = ScenarioWriter.set(
                    before.text(),
                    random.nextInt(4) == 0
                            ? Optional.empty()
                            : Optional.of(
                                    setups.get(random.nextInt(setups.size())).name()),
                    random.nextBoolean() ? "front.lowered" : "rear.spring.rate",
                    random.nextBoolean() ? random.nextInt(12, 40) + " N/mm" : random.nextInt(20) + " mm");
            Reading again = ScenarioReader.again(before, text);
            assertThat(again).isEqualTo(ScenarioReader.read(before.file(), text));
            before = again.scenario().orElse(before);
        }
    }

    @Test
    void setupsThatAnEditLeavesAloneAreTakenOver() {
        Scenario before = Demo.read("harbour-saloon");
        String name = before.setups().get(before.setups().size() - 1).name();
        String once = ScenarioWriter.set(before.text(), Optional.of(name), "front.lowered", "11 mm");
        Scenario first = ScenarioReader.again(before, once).scenario().orElseThrow();
        String twice = ScenarioWriter.set(once, Optional.of(name), "front.lowered", "12 mm");
        Scenario second = ScenarioReader.again(first, twice).scenario().orElseThrow();
        for (Setup setup : second.setups()) {
            Setup old = first.setup(setup.name()).orElseThrow();
            if (setup.name().equals(name)) {
                assertThat(setup).isNotEqualTo(old);
            } else {
                assertThat(setup).isSameAs(old);
            }
        }
    }

    @Test
    void ofVeryManyProblemsTheFirstAreListedAndTheOthersCounted() {
        String text = Samples.text();
        String many = text.substring(0, text.indexOf("\"setups\"")) + "\"setups\": [" + "{},".repeat(100_000) + "{}]}";
        Reading reading = ScenarioReader.read("x.json", many);
        assertThat(reading.scenario()).isEmpty();
        assertThat(reading.problems()).hasSize(201);
        assertThat(reading.problems().get(200)).hasToString("x.json: and more than 9800 more problems");
    }

    @Test
    void aDamperSettingThatIsStillToBeMeasuredMayHaveEmptyCurves() {
        String settings =
                "\"settings\": [{\"name\": \"new\", \"bump\": [], \"rebound\": []}], \"setting\": \"new\", \"bump\": [";
        String text = Samples.text()
                .replaceFirst("(?s)\"settings\": \\[.*?\\}\\],?", "")
                .replaceFirst("\"setting\": \"[^\"]*\",?", "")
                .replaceFirst("\"bump\": \\[", java.util.regex.Matcher.quoteReplacement(settings));
        assertThat(text).contains("\"rebound\": []}]");
        Reading reading = ScenarioReader.read("x.json", text.replaceFirst(",(\\s*\\})", "$1"));
        assertThat(reading.problems()).isEmpty();
    }

    @Test
    void aPrintedSetOfCoefficientsMaySayItsLoadAsABareNumber() {
        String tyre =
                "\"tyre\": {\"loadedRadius\": \"300 mm\", \"verticalRate\": \"210 N/mm\", \"coefficients\": {\"Fz0\": 4000,"
                        + " \"R0\": 0.313, \"pCy1\": 1.193, \"pDy1\": -0.99, \"pKy1\": -14.95, \"pKy2\": 2.13}}";
        String text = Samples.text();
        int at = text.indexOf("\"tyre\":");
        int end = text.indexOf('}', at);
        Scenario scenario = Samples.read(text.substring(0, at) + tyre + text.substring(end + 1));
        assertThat(scenario.setups().get(0).car().front().tyre().lateral().referenceLoad())
                .isEqualTo(4000);
    }

    @Test
    void linesAndTabsMayStandInAStory() {
        String text = Samples.text().replace("Every key of the format, for", "Every key\\n\\tfor");
        assertThat(Samples.read(text).story()).contains("Every key\n\tfor the tests.");
    }

    @Test
    void aSetupBuildsOnAnother() {
        Setup setup = Samples.everyKey().setups().get(2);
        assertThat(setup.car().rear().geometry().rollCentreHeight()).isEqualTo(0.275);
        assertThat(setup.car().front().bar()).isEmpty();
    }

    @Test
    void aChosenSettingSetsTheDamper() {
        assertThat(Samples.everyKey()
                        .setups()
                        .get(0)
                        .car()
                        .front()
                        .damper()
                        .orElseThrow()
                        .forces()
                        .orElseThrow()
                        .bump()
                        .points()
                        .get(1)
                        .force())
                .isEqualTo(280);
    }

    @Test
    void noSetupsAreOneAsGiven() {
        String text = Samples.text();
        String without = text.substring(0, text.indexOf("\"setups\"")).stripTrailing();
        Scenario scenario = Samples.read(without.substring(0, without.length() - 1) + "}");
        assertThat(scenario.setups()).extracting(Setup::name).containsExactly("As given");
    }

    @Test
    void whatIsEstimatedIsSaidWithItsRule() {
        Setup setup = Samples.everyKey().setups().get(0);
        assertThat(setup.estimated())
                .extracting(Adjustable::path)
                .contains("rear.tyre.curvature", "rear.tyre.verticalRate")
                .allMatch(path -> path.startsWith("rear.tyre."));
        assertThat(setup.estimated()).allMatch(value -> !value.rule().isEmpty());
    }

    @Test
    void anUnusualValueIsAWarningWithItsPlace() {
        Scenario scenario =
                Samples.read(Samples.text().replace("\"cgHeight\": \"520 mm ± 25 mm\"", "\"cgHeight\": \"900 mm\""));
        assertThat(scenario.warnings())
                .extracting(Warning::toString)
                .containsExactly(
                        "x.json:10:17: car.cgHeight: is unusual: 900 mm, where most cars have from 350 mm to 750 mm");
    }

    @Test
    void rollCamberOnALiveAxleIsAWarning() {
        Scenario scenario = Samples.read(
                Samples.text().replace("\"layout\": \"live axle\",", "\"layout\": \"live axle\", \"rollCamber\": 1,"));
        assertThat(scenario.warnings()).extracting(Warning::where).containsExactly("car.rear.rollCamber");
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreAccepted() {
        String text = "\uFEFF" + Samples.text().replace("\n", "\r\n").replace("\"1430 mm\"", "1430");
        assertThat(ScenarioReader.read("x.json", text).problems())
                .extracting(Problem::toString)
                .containsExactly("x.json:17:16: car.front.track: needs a unit, for example \"1420 mm\" or \"55.9 in\"");
    }

    @Test
    void aMissingFileAndAFolderAreOneLineEach() {
        assertThat(ScenarioReader.read(Path.of("nowhere.json")).problems())
                .extracting(Problem::toString)
                .containsExactly("nowhere.json: is not there; look at the name and the folder");
        assertThat(ScenarioReader.read(Path.of("src")).problems())
                .extracting(Problem::toString)
                .containsExactly("src: is a folder; name a scenario file in it");
    }

    @Test
    void aFileCutAnywhereGivesAMessage() {
        byte[] bytes = Samples.text().stripTrailing().getBytes(StandardCharsets.UTF_8);
        for (int length = 0; length < bytes.length; length++) {
            Problems problems = new Problems("x.json");
            byte[] cut = Arrays.copyOf(bytes, length);
            Source.decode(cut, problems).ifPresent(source -> JsonReader.read(source, problems));
            assertThat(problems.inOrder()).as("cut after %d bytes", length).hasSize(1);
            assertThat(problems.inOrder().get(0).toString()).matches("x\\.json:\\d+:\\d+: is [^\\p{Cntrl}]+");
        }
    }

    @Test
    void aFileTooLargeIsRefusedUnread(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("large.json");
        Files.write(file, new byte[(int) Source.LARGEST + 1]);
        assertThat(ScenarioReader.read(file).problems())
                .extracting(Problem::what)
                .containsExactly("is larger than 20 MB, which no scenario is; look at the name");
    }

    @Test
    void massesMayComeFromFourScalesAndHeightFromAnAxleLift() {
        String text = Samples.text()
                .replace(
                        "\"mass\": \"1380 kg\",",
                        "\"cornerWeights\": {\"frontLeft\": \"380 kg\", \"frontRight\": \"370 kg\","
                                + " \"rearLeft\": \"320 kg\", \"rearRight\": \"310 kg\"},")
                .replace("\"frontWeightFraction\": \"0.545 ± 0.005\",", "")
                .replace(
                        "\"cgHeight\": \"520 mm ± 25 mm\"",
                        "\"axleLift\": {\"liftedAxle\": \"rear\", \"readings\": "
                                + "[{\"rise\": \"300 mm\", \"otherAxleGain\": \"14 kg\"}]}");
        Setup setup = Samples.read(text).setups().get(0);
        Car car = setup.car();
        assertThat(setup.values()).extracting(Adjustable::path).contains("axleLift.readings[0].rise");
        assertThat(setup.values())
                .filteredOn(value -> !isEstimatedStiffness(value)) // once given, trail and camber are none beside it
                .allMatch(value -> Catalogue.build(Catalogue.with(setup.entries(), value.path(), value.si()))
                        .value()
                        .equals(Optional.of(car)));
        assertThat(car.weights().mass()).isEqualTo(1380);
        // By hand: radius 0.3066 m + 2.66·14/(1380·tan(asin(0.3/2.66))).
        assertThat(car.cgHeight()).isCloseTo(0.5443, within(2e-4));
    }

    private static boolean isEstimatedStiffness(Adjustable value) {
        return value.path().endsWith(".corneringStiffness") && value.origin() == Adjustable.Origin.ESTIMATED;
    }

    @Test
    void publishedTyreCoefficientsStandInPlaceOfTheLaw() {
        String text = Samples.text()
                .replace(
                        "\"tyre\": {\"size\": \"205/60R15\", \"kind\": \"touring radial\", \"pressure\": \"2.1 bar\"}",
                        "\"tyre\": {\"loadedRadius\": \"300 mm\", \"verticalRate\": \"200 N/mm\", \"coefficients\": {\"Fz0\": \"4000 N\","
                                + " \"pCy1\": 1.3, \"pDy1\": -0.9, \"pKy1\": -15, \"pKy2\": 1.7}}");
        Setup setup = Samples.read(text).setups().get(0);
        assertThat(setup.car().rear().tyre().lateral().referenceLoad()).isEqualTo(4000);
        assertThat(setup.estimated()).isEmpty();
    }

    /** Every set-up began from the car again: 4 000 of them, each based on the one before, took more than a minute. */
    @Test
    void aLongChainOfSetupsCostsAboutWhatAsManySideBySideDo() {
        String chained = setups(800, i -> i == 0 ? "" : "\"basedOn\": \"S" + (i - 1) + "\", ");
        String sideBySide = setups(800, i -> "");
        long usual = bytesToRead(sideBySide, 800);
        assertThat(bytesToRead(chained, 800)).isLessThan(usual + usual / 4);
    }

    private static String setups(int count, IntFunction<String> basedOn) {
        String head = Samples.text().substring(0, Samples.text().indexOf("\"setups\""));
        StringBuilder text = new StringBuilder(head).append("\"setups\": [");
        for (int i = 0; i < count; i++) {
            text.append(i == 0 ? "" : ",\n").append("{\"name\": \"S").append(i).append("\", ");
            text.append(basedOn.apply(i)).append("\"changes\": {\"front\": {\"track\": \"");
            text.append(1400 + i % 50).append(" mm\"}}}");
        }
        return text.append("]}").toString();
    }

    private static long bytesToRead(String text, int count) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        assertThat(Samples.read(text).setups()).hasSize(count);
        return threads.getCurrentThreadAllocatedBytes() - before;
    }

    @Test
    void whoeverGoesRoundInARingOrLeadsIntoOneIsToldWhereverItStandsInTheFile() {
        List<String> items = List.of(
                "{\"name\": \"A\", \"basedOn\": \"B\"}",
                "{\"name\": \"B\", \"basedOn\": \"A\"}",
                "{\"name\": \"C\", \"basedOn\": \"B\"}",
                "{\"name\": \"D\", \"basedOn\": \"C\"}",
                "{\"name\": \"Sound\"}");
        String head = Samples.text().substring(0, Samples.text().indexOf("\"setups\""));
        for (int turn = 0; turn < items.size(); turn++) {
            List<String> order = new ArrayList<>(items);
            Collections.rotate(order, turn);
            String text = head + "\"setups\": [\n" + String.join(",\n", order) + "]}";
            assertThat(ScenarioReader.read("x.json", text).problems())
                    .extracting(Problem::what)
                    .as(String.join(" ", order))
                    .containsExactlyInAnyOrder(
                            "goes round in a ring: a set-up cannot be based on itself; base one of them on nothing",
                            "goes round in a ring: a set-up cannot be based on itself; base one of them on nothing",
                            "leads into a ring: \"B\" on \"A\" on \"B\"; base one of these on nothing",
                            "leads into a ring: \"B\" on \"A\" on \"B\"; base one of these on nothing");
        }
    }

    /** Whoever named one waited for ever. */
    @Test
    @Timeout(20)
    void aPipeThatNobodyMayWriteToIsNotWaitedFor(@TempDir Path folder) throws Exception {
        Path pipe = folder.resolve("pipe.json");
        assumeThat(Files.isExecutable(Path.of("/usr/bin/mkfifo"))).isTrue();
        assertThat(new ProcessBuilder("/usr/bin/mkfifo", pipe.toString())
                        .start()
                        .waitFor())
                .isZero();
        assertThat(ScenarioReader.read(pipe).problems())
                .singleElement()
                .hasToString(pipe + ": is a pipe, which may keep one waiting for ever; name a file, or /dev/stdin");
        assertThat(RoadFile.read(pipe).problems()).hasSize(1);
    }

    @Test
    void aNameThatManySetupsMissIsToldForTheFirstWithTheNearestOne() {
        String text = setups(400, i -> "\"basedOn\": \"T" + i + "\", ");
        List<Problem> problems = ScenarioReader.read("x.json", text).problems();
        assertThat(problems.get(0).what()).isEqualTo("names no set-up of this file; the nearest name is \"S1\"");
        assertThat(problems).last().hasToString("x.json: and 200 more problems");
    }

    @Test
    void aDamagedFileGivesMessagesAndNoTrace() {
        String text = Samples.text();
        SplittableRandom random = new SplittableRandom(1);
        String signs = "{}[],:\"0-eEn\\/ \nmx±\u0000";
        for (int i = 0; i < 5_000; i++) {
            StringBuilder damaged = new StringBuilder(text);
            for (int j = 0; j <= random.nextInt(3); j++) {
                int at = random.nextInt(damaged.length());
                damaged.setCharAt(at, signs.charAt(random.nextInt(signs.length())));
            }
            Reading reading = ScenarioReader.read("x.json", damaged.toString());
            assertThat(reading.scenario().isPresent())
                    .isEqualTo(reading.problems().isEmpty());
            assertThat(reading.problems())
                    .allMatch(problem -> problem.toString().matches("x\\.json:\\d+:\\d+: [^\\p{Cntrl}]+"));
        }
    }
}
