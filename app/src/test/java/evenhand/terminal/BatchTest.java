package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several files, and one that comes in by standard input. */
class BatchTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String PROFILE = "../validation/data/road-profile-quarter-metre.csv";
    private static final String FIND = "find|--change|rear.spring.rate|--from|20 N/mm|--to|40 N/mm";

    @TempDir
    Path folder;

    private String mule;
    private String other;
    private String broken;

    @BeforeEach
    void write() {
        mule = Run.car(folder).toString();
        other = Run.file(
                        folder,
                        "other, \"green\".json",
                        Run.CAR.replace("blue", "green").replace("1380 kg", "1280 kg"))
                .toString();
        broken = Run.file(folder, "broken.json", Run.CAR.replace("\"2660 mm\"", "2660"))
                .toString();
    }

    private static Run run(String command, List<String> files, String... options) {
        List<String> words = new ArrayList<>(List.of(command.split("\\|", -1)));
        words.addAll(1, files);
        words.addAll(List.of(options));
        return Run.of(words.toArray(String[]::new));
    }

    /** Told of both, and told apart: no command leaves out the second. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "balance",
                "compare",
                "effects",
                "ride",
                "lower",
                "bump|--over|step 20 mm",
                "doubt",
                "brakes",
                "drive",
                "loads",
                "travel",
                "roadtest",
                "roughness",
                "check|--json",
                "report|--as|csv|-o|.",
                FIND + "|--aim|roll gradient 6 deg/g at 0.4 g",
            })
    void everyCommandLooksAtEachFile(String command) {
        String second = Run.file(folder, "second.json", "{").toString();
        Run run = run(command, List.of(broken, second));
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out() + run.err()).contains("broken.json", "second.json");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ride", "balance", "loads|--in|Standing", "roadtest", "travel"})
    void eachFileIsAnsweredAsIfItHadBeenNamedAlone(String command) throws IOException {
        List<String> files = List.of(other, mule);
        List<Run> alone = files.stream()
                .map(file -> run(command, List.of(file), "--json"))
                .toList();
        Run both = run(command, files, "--json");
        assertThat(both.status())
                .isEqualTo(alone.stream().map(Run::status).max(Enum::compareTo).orElseThrow());
        if (both.status() == Status.WRONG) {
            assertThat(both.out()).isEmpty();
            assertThat(both.err()).isEqualTo(alone.get(0).err());
            return;
        }
        assertThat(both.lines()).hasSize(2);
        for (int i = 0; i < 2; i++) {
            ObjectNode line = (ObjectNode) JSON.readTree(both.lines().get(i));
            assertThat(line.remove("file").textValue()).isEqualTo(files.get(i));
            if (alone.get(i).out().isEmpty()) {
                assertThat(line.at("/noAnswer/reason").textValue()).isEqualTo("nothingToAnswer");
                assertThat(line.at("/noAnswer/text").textValue())
                        .isEqualTo(alone.get(i).err().strip());
            } else {
                assertThat(line).isEqualTo(JSON.readTree(alone.get(i).out()));
            }
        }
    }

    @Test
    void peopleReadTheNamesOfTheFilesAsHeadings() {
        String first = Run.of("ride", mule).out();
        String second = Run.of("ride", other).out();
        assertThat(run("ride", List.of(mule, other)).out())
                .isEqualTo("== " + mule + "\n\n" + first + "\n== " + other + "\n\n" + second);
    }

    @Test
    void aTableHasTheFileInItsFirstColumnAndItsHeadOnce() {
        Run run = run("ride", List.of(mule, other), "--csv");
        List<String> alone = Run.of("ride", mule, "--csv").lines();
        assertThat(run.lines().get(0)).isEqualTo("file," + alone.get(0));
        assertThat(run.lines().get(1)).isEqualTo(mule + "," + alone.get(1));
        assertThat(run.lines()).filteredOn(line -> line.startsWith("file,")).hasSize(1);
        assertThat(run.lines()).anyMatch(line -> line.startsWith('"' + other.replace("\"", "\"\"") + '"' + ","));
    }

    /** In their order, though the answer of the first takes longest. */
    @Test
    void whatIsWrongWithAFileIsToldOfItAndTheOthersAreAnswered() throws IOException {
        Run run = run("ride", List.of(mule, broken, other), "--json");
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err().lines().toList())
                .satisfiesExactly(
                        line -> assertThat(line).startsWith(broken + ":6:67: ").contains("wheelbase"));
        assertThat(run.lines()).hasSize(3);
        assertThat(JSON.readTree(run.lines().get(1)).at("/noAnswer/reason").textValue())
                .isEqualTo("wrong");
        assertThat(JSON.readTree(run.lines().get(2)).get("scenario").textValue())
                .contains("green");
    }

    @Test
    void aLineThatNamesNoFileGetsItsName() {
        String one = Run.file(folder, "one.json", Run.CAR.replace("Flatter, stiffer", "Flat"))
                .toString();
        Run run = run("balance", List.of(mule, one), "--setup", "Flat", "--csv");
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err())
                .startsWith("evenhand balance: " + mule + ": there is no set-up \"Flat\"")
                .containsOnlyOnce("\n");
    }

    @Test
    void whatIsWrongWithTheCommandLineIsToldOnce() {
        for (String form : List.of("--json", "--csv")) {
            Run run = run("balance", List.of(mule, other), "--pace", "0.5", form);
            assertThat(run.status()).isEqualTo(Status.WRONG);
            assertThat(run.out()).isEmpty();
            assertThat(run.err()).isEqualTo("evenhand balance: --pace \"0.5\": needs a unit, for example \"0.5 g\"\n");
        }
    }

    @Test
    void wordsThatLackTheirQuotesAreNoFiles() {
        Run run = Run.of("effects", mule, "--complaint", "pushes", "at", "the", "limit");
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err())
                .isEqualTo("evenhand effects: \"at\" is one thing too many, or a file that is not there; words that"
                        + " belong together stand in quotes\n");
    }

    @Test
    void progressIsShownToWhomWatchesAndWipedBeforeAnAnswer() {
        ByteArrayOutputStream both = new ByteArrayOutputStream();
        Evenhand.run(Console.of(both, both, false, true, Map.of()), "ride", mule, other);
        String seen = both.toString(StandardCharsets.UTF_8);
        assertThat(seen).contains("answering 2 files: 50 %");
        assertThat(Stream.of(seen.split("\n", -1)).filter(line -> line.contains("== ")))
                .hasSize(2)
                .allMatch(line -> line.matches("(?s)(.*\r\u001b\\[K)?== .*"));
        assertThat(seen).doesNotContain("asking");
    }

    @Test
    void whoeverStopsReadingEndsItQuietly() {
        OutputStream gone = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("Broken pipe");
            }
        };
        Run run = Run.into(gone, "balance", mule, other);
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.err()).isEmpty();
    }

    @Test
    void whatWasFoundIsSavedInEachFile() throws IOException {
        Run run = run(FIND + "|--aim|front frequency at least 0.1 Hz|--save-as|Found", List.of(mule, other));
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isEqualTo(Status.DONE);
        for (String file : List.of(mule, other)) {
            assertThat(Files.readString(Path.of(file))).contains("\"Found\"");
            assertThat(run.out().replaceAll("\\s+", " ")).contains("in " + file.replaceAll("\\s+", " "));
        }
    }

    @Test
    void oneSheetIsForOneCar() {
        Run run = Run.of(
                "roadtest", mule, other, "--card", folder.resolve("card.pdf").toString());
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).isEqualTo("evenhand roadtest: --card: writes one sheet for one car; name one file\n");
        assertThat(folder.resolve("card.pdf")).doesNotExist();
    }

    @Test
    void aDashIsStandardInput() throws IOException {
        assertThat(fed(Run.CAR, "ride", "-", "--csv").out())
                .isEqualTo(Run.of("ride", mule, "--csv").out());
        assertThat(fed(Run.CAR, "check", "-").out()).contains("-: can be read");
        assertThat(fed(Files.readString(Path.of(PROFILE)), "roughness", "-", "--csv")
                        .out())
                .isEqualTo(Run.of("roughness", PROFILE, "--csv").out());
        Run both = fed(Run.CAR, "ride", other, "-", "--csv", "--setup", "As bought");
        assertThat(both.err()).isEmpty();
        assertThat(both.lines()).last().asString().startsWith("-,As bought,");
        Run report = fed(Run.CAR, "report", "-", "--as", "csv", "-o", folder.toString());
        assertThat(report.err()).isEmpty();
        assertThat(folder.resolve("report.csv")).isNotEmptyFile();
    }

    @Test
    void whatIsWrongWithStandardInputIsToldInALine() {
        assertThat(fed("", "balance", "-").err()).startsWith("-:1:1: is empty").containsOnlyOnce("\n");
        assertThat(fed("", "roughness", "-").err()).startsWith("-:1:1: ").containsOnlyOnce("\n");
        for (String command : List.of("balance", "check", "report|-o|.")) {
            Run twice = run(command, List.of("-", "-"));
            assertThat(twice.status()).isEqualTo(Status.WRONG);
            assertThat(twice.err())
                    .endsWith(": \"-\": standard input can be read once; name it once\n")
                    .containsOnlyOnce("\n");
        }
        Run saving = fed(
                Run.CAR,
                (FIND.replace("find|", "find|-|") + "|--aim|limit at least 0.1 g|--save-as|Found").split("\\|", -1));
        assertThat(saving.status()).isEqualTo(Status.WRONG);
        assertThat(saving.err())
                .isEqualTo("evenhand find: --save-as \"Found\": standard input cannot be written to; name the file, or"
                        + " leave it out\n");
    }

    private static Run fed(String in, String... words) {
        Run.Kept kept = Run.kept();
        Console console = kept.console().reading(new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)));
        return new Run(Evenhand.run(console, words), kept.out(), kept.err());
    }
}
