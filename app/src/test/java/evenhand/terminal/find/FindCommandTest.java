package evenhand.terminal.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.choice.Finding;
import evenhand.choice.OneChange;
import evenhand.choice.Span;
import evenhand.quantity.Unit;
import evenhand.scenario.AimReading;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioFile;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.Setup;
import evenhand.terminal.Evenhand;
import evenhand.terminal.Run;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import evenhand.turn.Direction;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindCommandTest {
    private static final String PIVOT = "rear.lateralLocator.height";
    private static final String[] PIVOT_RANGE = {"--change", PIVOT, "--from", "200 mm", "--to", "340 mm"};
    private static final String[] SPRING_RANGE = {
        "--change", "front.spring.rate", "--from", "50 N/mm", "--to", "80 N/mm"
    };
    private static final String UNDERSTEER = "understeerGradient_deg_per_g";

    @TempDir
    Path folder;

    private String car;
    private double wanted;

    @BeforeEach
    void aimAtWhatAnotherPivotGives() throws IOException {
        car = Run.car(folder).toString();
        String text = Files.readString(Path.of(car)).replace("\"height\": \"255 mm\"", "\"height\": \"287.3 mm\"");
        wanted = understeer(Run.file(folder, "other.json", text).toString(), "As bought");
    }

    private static double understeer(String file, String setup) {
        return json("balance", file, "--json", "--setup", setup, "--pace", "0.5 g")
                .get("setups")
                .get(0)
                .get("paces")
                .get(0)
                .get(UNDERSTEER)
                .asDouble();
    }

    private String aim() {
        return "understeer " + wanted + " deg/g at 0.5 g";
    }

    private String[] find(String... more) {
        return Stream.of(new String[] {"find", car, "--setup", "As bought"}, more)
                .flatMap(Arrays::stream)
                .toArray(String[]::new);
    }

    private static String[] join(String[]... parts) {
        return Arrays.stream(parts).flatMap(Arrays::stream).toArray(String[]::new);
    }

    private static String[] of(String... words) {
        return words;
    }

    @Test
    void whatAnotherCarHasIsFoundAndTheAnswerHasTheKeysOfTheContract() {
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--json"))));
        assertThat(run.status()).isEqualTo(Status.DONE);
        JsonNode answer = parsed(run.out());
        assertThat(keys(answer))
                .containsSubsequence("evenhand", "command", "scenario", "setup", "change")
                .contains("aim", "unit", "status", "value", "valueUnit", "achieved", "solutions", "reach")
                .contains("slopeAtValue", "curve", "notes", "words");
        assertThat(answer.get("change").asText()).isEqualTo(PIVOT);
        assertThat(answer.get("status").asText()).isEqualTo("met");
        assertThat(answer.get("value").asDouble()).isCloseTo(0.2873, within(1e-7));
        assertThat(answer.get("valueUnit").asText()).isEqualTo("m");
        assertThat(answer.get("unit").asText()).isEqualTo("deg/g");
        assertThat(answer.get("aim").asDouble()).isCloseTo(wanted, within(1e-12));
        assertThat(answer.get("achieved").asDouble()).isCloseTo(wanted, within(1e-6));
        double low = answer.get("reach").get("lowest").asDouble();
        double high = answer.get("reach").get("highest").asDouble();
        assertThat(wanted).isBetween(low, high);
        double before = 0;
        for (JsonNode point : answer.get("curve")) {
            assertThat(point.get(0).asDouble()).isGreaterThan(before).isBetween(0.2 - 1e-12, 0.34 + 1e-12);
            assertThat(point.get(1).asDouble()).isBetween(low - 1e-9, high + 1e-9);
            before = point.get(0).asDouble();
        }
        assertThat(answer.get("curve").size()).isGreaterThanOrEqualTo(25);
    }

    @Test
    void aGridGivesAWholeStepNextToTheSolution() {
        JsonNode answer = json(find(join(PIVOT_RANGE, of("--aim", aim(), "--grid", "5 mm", "--json"))));
        assertThat(answer.get("value").asDouble()).isCloseTo(0.285, within(1e-12));
        assertThat(answer.get("solutions").get(0).asDouble()).isCloseTo(0.2873, within(1e-7));
        assertThat(Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--grid", "5 mm"))))
                        .out())
                .contains("of the steps that can be built take 285 mm");
    }

    @Test
    void severalChangesHaveTheirKeysAndKeepWhatIsToBeKept() {
        Run run = Run.of(find(join(
                PIVOT_RANGE,
                SPRING_RANGE,
                of(
                        "--aim",
                        aim(),
                        "--keep",
                        "limit at least 0.5 g",
                        "--keep",
                        "roll gradient at most 9 deg/g at 0.4 g",
                        "--json"))));
        assertThat(run.status()).isEqualTo(Status.DONE);
        JsonNode answer = parsed(run.out());
        assertThat(keys(answer)).contains("changes", "aim", "status", "achieved", "reach", "kept", "notes");
        assertThat(keys(answer)).doesNotContain("change", "value", "solutions", "slopeAtValue", "curve");
        assertThat(keys(answer.get("changes").get(0))).containsExactly("change", "value", "valueUnit");
        assertThat(answer.get("changes").size()).isEqualTo(2);
        assertThat(answer.get("kept").size()).isEqualTo(2);
        assertThat(keys(answer.get("kept").get(0))).contains("keep", "value", "ok");
        assertThat(answer.get("kept").get(0).get("ok").asBoolean()).isTrue();
        assertThat(answer.get("achieved").asDouble()).isCloseTo(wanted, within(1e-6));
    }

    @Test
    void whatIsOutOfReachEndsWithOneAndTellsTheNearest() {
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", "understeer 40 deg/g at 0.5 g"))));
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run.out())
                .contains("No value in that range gives 40 deg/g at 0.5 g; the nearest is ")
                .contains("that is at the end of the range; where more of it can be built, widen the range");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void whatIsMetAtTheEndOfTheRangeLeavesNothingToAdjust() throws IOException {
        Run wide = Run.of(find(join(PIVOT_RANGE, of("--aim", "understeer 40 deg/g at 0.5 g", "--json"))));
        double least = parsed(wide.out()).get("reach").get("lowest").asDouble();
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", "understeer " + (least + 1e-5) + " deg/g at 0.5 g"))));
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out()).contains("that is at the end of the range; there is nothing left to adjust");
    }

    @Test
    void aPaceBeyondTheLimitIsNoAnswer() {
        String[] asked = find(join(PIVOT_RANGE, of("--aim", "understeer 1 deg/g at 1.5 g")));
        Run run = Run.of(asked);
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run.out()).contains("No answer: 1.5 g is beyond the limit of this car, wherever in the range.");
        JsonNode none = json(join(asked, of("--json"))).get("noAnswer");
        assertThat(none.get("reason").asText()).isEqualTo("noEquilibrium");
        Run csv = Run.of(join(asked, of("--csv")));
        assertThat(csv.lines()).hasSize(1);
        assertThat(csv.err().lines()).hasSize(1);
    }

    @Test
    void aCarThatFallsOverSaysThatItDoes() {
        JsonNode none = json(
                        "find",
                        car,
                        "--setup",
                        "Jelly",
                        "--change",
                        PIVOT,
                        "--from",
                        "200 mm",
                        "--to",
                        "210 mm",
                        "--aim",
                        "limit 0.8 g",
                        "--json")
                .get("noAnswer");
        assertThat(none.get("reason").asText()).isEqualTo("fallsOver");
    }

    @Test
    void whatIsFoundIsSavedAndGivesTheAimAndNothingElseOfTheFileChanges() throws IOException {
        String before = Files.readString(Path.of(car));
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--save-as", "Pivot \"right\""))));
        assertThat(run.status()).isEqualTo(Status.DONE);
        String after = Files.readString(Path.of(car));
        int same = 0;
        while (before.charAt(same) == after.charAt(same)) {
            same++;
        }
        assertThat(after).endsWith(before.substring(same));
        assertThat(after.substring(same, after.length() - before.length() + same))
                .contains("\"name\": \"Pivot \\\"right\\\"\"")
                .contains("\"basedOn\": \"As bought\"")
                .contains("\"287.3 mm\"");
        assertThat(understeer(car, "Pivot \"right\"")).isCloseTo(wanted, within(1e-5));
        assertThat(Files.readString(folder.resolve("mule.previous.json"))).isEqualTo(before);
        Run again = Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--save-as", "Pivot \"right\""))));
        assertThat(again.status()).isEqualTo(Status.WRONG);
        assertThat(again.err()).contains("there is a set-up of this name already");
        assertThat(Files.readString(Path.of(car))).isEqualTo(after);
    }

    @ParameterizedTest
    @CsvSource({"understeer 40 deg/g at 0.5 g, Never, 1", "limit at least 0.5 g, ' ', 2"})
    void nothingIsSavedWhereTheAimIsNotMetOrTheFileWouldBreak(String aim, String name, int status) throws IOException {
        String before = Files.readString(Path.of(car));
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", aim, "--save-as", name))));
        assertThat(run.status().code()).isEqualTo(status);
        assertThat(run.err())
                .contains(status == 1 ? "nothing was saved" : "give the set-up a name")
                .hasLineCount(1);
        assertThat(Files.readString(Path.of(car))).isEqualTo(before);
    }

    @Test
    void whatIsToBeKeptIsNamedWhereItBlocksTheAim() {
        String reach = "limit at least 0.1 g";
        String[] asked = find(join(
                PIVOT_RANGE, of("--aim", aim(), "--keep", reach, "--keep", "roll gradient at most 1 deg/g at 0.5 g")));
        Run run = Run.of(asked);
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(flat(run))
                .contains(
                        "What blocks the aim is to keep \"roll gradient at most 1 deg/g at 0.5 g\": without that it is met"
                                + " by rear lateral locator height 287.3 mm, with ")
                .contains(". Then the roll gradient at 0.5 g is ");
        JsonNode answer = json(join(asked, of("--json")));
        JsonNode without = answer.get("withoutKeeps");
        assertThat(without.size()).isEqualTo(1);
        assertThat(without.get(0).get("blocks").asBoolean()).isTrue();
        assertThat(without.get(0).get("leftOut").get(0).asText()).startsWith("roll gradient");
        assertThat(without.get(0).get("changes").get(0).get("value").asDouble()).isCloseTo(0.2873, within(1e-7));
        assertThat(without.get(0).get("stand").get(0).get("ok").asBoolean()).isFalse();
    }

    @Test
    void whatBlocksOnlyTogetherAndWhatDoesNotBlockAreToldApart() {
        String[] two = of(
                "--keep", "roll gradient at most 1 deg/g at 0.5 g", "--keep", "roll gradient at most 1 deg/g at 0.3 g");
        assertThat(flat(Run.of(find(join(PIVOT_RANGE, of("--aim", aim()), two)))))
                .contains("and \"roll gradient at most 1 deg/g at 0.3 g\", together: without that it is met by");
        Run beyond = Run.of(find(
                join(PIVOT_RANGE, of("--aim", "understeer -90 deg/g at 0.5 g", "--keep", "limit at least 0.1 g"))));
        assertThat(flat(beyond))
                .contains("It is not what is to be kept that blocks the aim: without keeping \"limit at least 0.1 g\""
                        + " nothing in the range meets it either; the nearest is then ");
        assertThat(flat(Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--keep", "limit at least 0.1 g"))))))
                .doesNotContain("block");
    }

    @Test
    void whatWasSavedIsToldWithItsNameAndFile() {
        String where = "as the set-up \"Pivot right\", based on \"As bought\", in " + car;
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--save-as", "Pivot right"))));
        assertThat(run.err()).isEmpty();
        assertThat(flat(run)).endsWith("Saved " + where + ". ");
        Run json = Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--save-as", "Pivot second", "--json"))));
        assertThat(json.err())
                .contains("evenhand find: saved " + where.replace("right", "second"))
                .hasLineCount(1);
        assertThat(parsed(json.out()).get("status").asText()).isEqualTo("met");
    }

    @Test
    void aValueThatFewCarsHaveIsCautionedAgainst() {
        String[] high = of("--change", PIVOT, "--from", "450 mm", "--to", "500 mm", "--aim", "limit at least 0.1 g");
        assertThat(flat(Run.of(find(high))))
                .contains("Mind: 450 mm is no usual rear lateral locator height: most cars have from 100 mm to 400 mm;"
                        + " see first that it can be had.");
        assertThat(json(find(join(high, of("--json")))).get("notes").toString()).contains("\"unusual\"");
        assertThat(Run.of(find(join(PIVOT_RANGE, of("--aim", aim())))).out()).doesNotContain("no usual");
    }

    /** Somebody writes the file while the search goes on: what the search read is not what stands there when it is done. */
    private Run foundWhile(String meanwhile, String name) throws IOException {
        Path file = Path.of(car);
        Scenario read = ScenarioReader.read(file).scenario().orElseThrow();
        Setup setup = read.setup("As bought").orElseThrow();
        Finding finding = OneChange.find(
                setup.entries(),
                Span.of(setup.entries(), PIVOT, 0.2, 0.34),
                AimReading.read(aim()),
                List.of(),
                OptionalDouble.empty(),
                new Trial(List.of(0.5 * 9.80665), 40, Direction.LEFT),
                Progress.NONE);
        Files.writeString(file, meanwhile);
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        boolean saved = new SaveAs(read, setup, name)
                .save(
                        setup.entries(),
                        finding,
                        FormOptions.Form.PEOPLE,
                        Console.of(new ByteArrayOutputStream(), err, false, Map.of()));
        return new Run(saved ? Status.DONE : Status.WRONG, "", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void whatAnotherWroteMeanwhileIsKept() throws IOException {
        String meanwhile =
                Run.CAR.replace("{\"name\": \"As bought\"},", "{\"name\": \"As bought\"}, {\"name\": \"His\"},");
        Run run = foundWhile(meanwhile, "Mine");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.err()).isEmpty();
        Scenario now = ScenarioReader.read(Path.of(car)).scenario().orElseThrow();
        assertThat(now.setups())
                .extracting(Setup::name)
                .containsExactly("As bought", "His", "Flatter, stiffer", "Jelly", "Mine");
    }

    @Test
    void aNameThatIsTakenByThenOrABaseThatHasGoneIsOneLineAndNothingIsWritten() throws IOException {
        String taken =
                Run.CAR.replace("{\"name\": \"As bought\"},", "{\"name\": \"As bought\"}, {\"name\": \"Mine\"},");
        Run run = foundWhile(taken, "Mine");
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err())
                .isEqualTo(
                        "evenhand find: --save-as \"Mine\": nothing was saved: there is a set-up of this name by now;"
                                + " take another" + System.lineSeparator());
        assertThat(Files.readString(Path.of(car))).isEqualTo(taken);
        Run.car(folder);
        Run gone = foundWhile(Run.CAR.replace("\"As bought\"", "\"As found\""), "Mine");
        assertThat(gone.err())
                .contains("its base \"As bought\" is not in the file any more")
                .hasLineCount(1);
        Run.car(folder);
        Run broken = foundWhile(Run.CAR.replace("\"1380 kg\"", "\"1380\""), "Mine");
        assertThat(broken.err()).contains("the file is broken by now: ").hasLineCount(1);
        Run.car(folder);
        Run other = foundWhile(Run.CAR.replace("\"1380 kg\"", "\"1400 kg\""), "Mine");
        assertThat(other.status()).isEqualTo(Status.DONE);
        assertThat(other.err())
                .contains("\"As bought\" was changed in the file meanwhile")
                .hasLineCount(1);
    }

    @Test
    void whatWasFoundIsPrintedThoughItCannotBeSaved() throws IOException {
        String before = Files.readString(Path.of(car));
        Files.createDirectories(ScenarioFile.previous(Path.of(car)).resolve("in the way"));
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--save-as", "Mine"))));
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).contains("At 287.3 mm it is");
        assertThat(run.err()).contains("nothing was saved").hasLineCount(1);
        assertThat(Files.readString(Path.of(car))).isEqualTo(before);
    }

    @Test
    void aBarThatIsNotFittedIsLookedForFromZeroAndFitted() throws IOException {
        String[] bar = of("--change", "front.bar.rollStiffness", "--from", "0 N*m/deg", "--to", "300 N*m/deg");
        Run run = Run.of(find(join(
                bar,
                of("--aim", "roll gradient at most 8 deg/g at 0.2 g", "--grid", "10 N*m/deg", "--save-as", "Bar"))));
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out())
                .contains("With the front bar roll stiffness between 0 N*m/deg and 300 N*m/deg")
                .contains("the car has none now.");
        Setup saved = ScenarioReader.read(Path.of(car))
                .scenario()
                .orElseThrow()
                .setup("Bar")
                .orElseThrow();
        double stiffness = Unit.of("N*m/deg").fromSi(saved.car().front().barRollStiffness());
        assertThat(stiffness).isPositive();
        assertThat(stiffness / 10).isCloseTo(Math.rint(stiffness / 10), within(1e-9));
        JsonNode none = json(find(join(bar, of("--aim", "limit at least 0.1 g", "--save-as", "No bar", "--json"))));
        assertThat(none.get("value").asDouble()).isZero();
        assertThat(ScenarioReader.read(Path.of(car))
                        .scenario()
                        .orElseThrow()
                        .setup("No bar")
                        .orElseThrow()
                        .car()
                        .front()
                        .bar())
                .isEmpty();
    }

    @Test
    void aStepBehindAChangeIsThatChangesOwnAndOneBehindTheLastIsForTheRest() {
        String[] pivot = PIVOT_RANGE;
        String[] lowered = of("--change", "rear.lowered", "--from", "0 mm", "--to", "20 mm");
        String[] aim = of("--aim", "understeer at most 2.3 deg/g at 0.2 g", "--json");
        JsonNode own = json(find(join(pivot, of("--grid", "7 mm"), lowered, of("--grid", "3 mm"), aim)));
        assertThat(multiple(own, 0, 0.007)).isTrue();
        assertThat(multiple(own, 1, 0.003)).isTrue();
        JsonNode all = json(find(join(pivot, lowered, of("--grid", "7 mm"), aim)));
        assertThat(multiple(all, 0, 0.007)).isTrue();
        assertThat(multiple(all, 1, 0.007)).isTrue();
    }

    private static boolean multiple(JsonNode answer, int change, double step) {
        double count = answer.get("changes").get(change).get("value").asDouble() / step;
        return Math.abs(count - Math.rint(count)) < 1e-9;
    }

    @Test
    void neutralIsNoUndersteer() {
        for (String[] pair : List.of(
                of("neutral at 0.5 g", "understeer 0 deg/g at 0.5 g"),
                of("neutral near the limit", "understeer near the limit 0 deg/g"))) {
            Run brief = Run.of(find(join(PIVOT_RANGE, of("--aim", pair[0], "--json"))));
            Run whole = Run.of(find(join(PIVOT_RANGE, of("--aim", pair[1], "--json"))));
            assertThat(brief).isEqualTo(whole);
        }
    }

    @Test
    void aWriteProtectedFileIsToldBeforeTheSearchAndStaysAsItIs() throws IOException {
        String before = Files.readString(Path.of(car));
        assertThat(Path.of(car).toFile().setWritable(false)).isTrue();
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--save-as", "Pivot right"))));
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("evenhand find: --save-as \"Pivot right\": " + car + " is write-protected; ")
                .hasLineCount(1);
        assertThat(Files.readString(Path.of(car))).isEqualTo(before);
    }

    @Test
    void whatWasFoundIsSaidAlsoWhereItCannotBeSaved() throws IOException {
        Files.createDirectories(folder.resolve("mule.previous.json").resolve("in the way"));
        String before = Files.readString(Path.of(car));
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--save-as", "Pivot right"))));
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).contains("287.");
        assertThat(run.err())
                .contains("cannot write " + car, "which is as it was")
                .hasLineCount(1);
        assertThat(Files.readString(Path.of(car))).isEqualTo(before);
    }

    @Test
    void toleranceAndUnitOfWhatIsSavedAreThePersons() throws IOException {
        String inInches = Files.readString(Path.of(car)).replace("\"255 mm\"", "\"10 in ± 0.1 in\"");
        String file = Run.file(folder, "inches.json", inInches).toString();
        Run run = Run.of(
                join(of("find", file), PIVOT_RANGE, of("--aim", aim(), "--grid", "0.25 in", "--save-as", "Found")));
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(Files.readString(Path.of(file))).contains("\"11.25 in ± 0.1 in\"");
    }

    @Test
    void wordsNameTheReachFirstThenTheValueAndHowSharpItIs() {
        Run run = Run.of(find(join(PIVOT_RANGE, of("--aim", aim()))));
        assertThat(run.out())
                .containsSubsequence(
                        "With the rear lateral locator height between 200 mm and 340 mm",
                        "the car has 255 mm",
                        "At 287.3 mm it is",
                        "as asked.",
                        "There, 1 mm more moves it by")
                .doesNotContain(PIVOT);
        assertThat(run.lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void theSentenceOfTheSlopeTurnsRoundWithTheFigure() {
        String front = Run.of(find(join(SPRING_RANGE, of("--aim", "front share at least 1 % at 0.5 g"))))
                .out();
        assertThat(front).contains("The car as it stands does: at 60 N/mm").contains("1 % more moves it by +");
        String rear = Run.of(find(
                        "--change",
                        "rear.spring.rate",
                        "--from",
                        "20 N/mm",
                        "--to",
                        "40 N/mm",
                        "--aim",
                        "front share at least 1 % at 0.5 g"))
                .out();
        assertThat(rear).contains("1 % more moves it by −");
    }

    @Test
    void csvHasARowPerChangeInTheUnitsAskedFor() {
        List<String> one =
                Run.of(find(join(PIVOT_RANGE, of("--aim", aim(), "--csv")))).lines();
        assertThat(one).hasSize(2);
        assertThat(one.get(0))
                .isEqualTo(
                        "setup,change,value,valueUnit,figure,lateralAcceleration_g,unit,aim,status,achieved,lowest,highest,"
                                + "achievedLeft,achievedRight");
        assertThat(one.get(1)).startsWith("As bought," + PIVOT + ",287.3").contains(",mm,understeer,0.5,deg/g,");
        List<String> two = Run.of(
                        find(join(PIVOT_RANGE, SPRING_RANGE, of("--aim", aim(), "--csv", "--units", "imperial"))))
                .lines();
        assertThat(two).hasSize(3);
        assertThat(two.get(1)).contains(",in,");
        assertThat(two.get(2)).contains(",lbf/in,");
    }

    @Test
    void aLoadIsAboard() throws IOException {
        String loaded = Files.readString(Path.of(car))
                .replace(
                        "\"setups\": [",
                        "\"loadCases\": [{\"name\": \"Two behind\", \"added\": [{\"what\": \"two\", \"mass\": \"150 kg\","
                                + " \"behindFrontAxle\": \"2000 mm\", \"height\": \"620 mm\"}]}], \"setups\": [");
        String file = Run.file(folder, "loaded.json", loaded).toString();
        String[] asked =
                join(of("find", file), PIVOT_RANGE, of("--aim", "understeer at least -9 deg/g at 0.3 g", "--json"));
        double empty = json(asked).get("achieved").asDouble();
        JsonNode full = json(join(asked, of("--load", "Two behind")));
        assertThat(full.get("achieved").asDouble()).isLessThan(empty - 0.05);
        assertThat(Run.of(join(asked, of("--load", "Nobody"))).err()).contains("there is no load case \"Nobody\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--change rear.lateralLocator.hieght --from 200_mm --to 340_mm --aim limit_0.8_g|the nearest known key is height",
                "--change reer.x --from 200_mm --to 340_mm --aim limit_0.8_g|the nearest known key is rear",
                "--change rear.spring --from 200_mm --to 340_mm --aim limit_0.8_g|name one of its keys, for example rear.spring.rate",
                "--change rear.lateralLocator.kind --from 200_mm --to 340_mm --aim limit_0.8_g|names no single quantity",
                "--change front.bar.diameter --from 10_mm --to 20_mm --aim limit_0.8_g|belongs to a bar that is not fitted; such a bar is looked for by front.bar.rollStiffness, from zero",
                "--change front.bar.rollStiffness --from -1_N*m/deg --to 2_N*m/deg --aim limit_0.8_g|on any car: it must be at least 0 N*m/deg",
                "--grid 5_mm --from 200_mm --to 340_mm --aim limit_0.8_g|--change PATH is missing",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --grid 5_mm --grid 10_mm --aim limit_0.8_g|is a second step for rear.lateralLocator.height; leave out one of them",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --grid 5_N/mm --change rear.spring.rate --from 20_N/mm --to 40_N/mm --aim limit_0.8_g|is no step of a length, as rear.lateralLocator.height is",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --grid 5_mm --change rear.spring.rate --from 20_N/mm --to 40_N/mm --grid 5_mm --aim limit_0.8_g|is no step of a stiffness, as rear.spring.rate is",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim neutral|write \"neutral at 0.5 g\" or \"neutral near the limit\"",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim neutral_at_the_limit|write \"neutral at 0.5 g\" or \"neutral near the limit\"",
                "--change rear.lateralLocator.height --from 340_mm --to 200_mm --aim limit_0.8_g|ends before it begins",
                "--change rear.lateralLocator.height --from 200_mm --to 200_mm --aim limit_0.8_g|ends before it begins",
                "--change rear.lateralLocator.height --from -340_mm --to 200_mm --aim limit_0.8_g|on any car: it must be at least",
                "--change rear.lateralLocator.height --from 200 --to 340_mm --aim limit_0.8_g|needs a unit",
                "--change rear.lateralLocator.height --from 200_N --to 340_mm --aim limit_0.8_g|is a force",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_mm|is a length",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim front_first_3|\"front first\" has no number and no pace, it speaks of the limit; leave out \"3\"",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim front_first_at_0.5_g|leave out \"at 0.5 g\"",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim understeer_near_the_limit_3_%|\"understeer near the limit 3 deg/g\"",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim understeer_near_the_limit_3_deg/g_at_0.5_g|is judged at no pace; leave out \"at 0.5 g\"",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --keep front_first_3|--keep \"front first 3\": \"front first\" has no number",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limitt_0.8_g|did you mean \"limit\"?",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --keep limit_at_least_0.9_g|no car can meet both",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --keep understeer_at_most_1_deg/g_at_0.2_g --keep understeer_at_least_2_deg/g_at_0.2_g|no car can keep both",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --grid 5_N|is no step of a length, as rear.lateralLocator.height is: \"5 N\" is a force, but a length belongs here",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --grid 5|is no step of a length, as rear.lateralLocator.height is: needs a unit",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --grid 500_m|is more than can be",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --grid 5_mm_±_1_mm|takes no tolerance",
                "--change rear.lateralLocator.height --from 200_±_5_mm --to 340_mm --aim limit_0.8_g|takes no tolerance",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --grid 0_mm|must be above zero",
                "--change rear.lateralLocator.height --from 201_mm --to 204_mm --aim limit_0.8_g --grid 5_mm|no whole multiple",
                "--change rear.lateralLocator.height --from 200_mm --aim limit_0.8_g|--to",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm|--aim",
                "--change rear.lateralLocator.height --change front.spring.rate --from 200_mm --to 340_mm --aim limit_0.8_g|each --change needs its --from and its --to",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g|is named twice",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --setup Nobody|there is no set-up",
                "--change rear.lateralLocator.height --from 200_mm --to 340_mm --aim limit_0.8_g --json --csv|write one of them"
            })
    void everyMistakeIsOneLine(String words, String said) {
        String[] args = Stream.concat(
                        Stream.of("find", car),
                        Arrays.stream(words.split(" ", -1)).map(word -> word.replace('_', ' ')))
                .toArray(String[]::new);
        Run run = Run.of(args);
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("evenhand find: ").contains(said).hasLineCount(1);
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

    @Test
    void somebodyWhoWatchesSeesHowFarTheSearchIsAndItIsWipedAway() {
        for (String[] ranges : List.of(PIVOT_RANGE, join(PIVOT_RANGE, SPRING_RANGE))) {
            String[] words = find(join(ranges, of("--aim", aim())));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            Evenhand.run(Console.of(out, err, false, true, Map.of()), words);
            assertThat(err.toString(StandardCharsets.UTF_8))
                    .contains("looking for it: 90 %")
                    .endsWith("\r\u001b[K");
            assertThat(out.toString(StandardCharsets.UTF_8))
                    .isEqualTo(Run.of(words).out());
        }
    }
}
