package evenhand.terminal.book;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.scenario.ScenarioReader;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogCommandTest {
    private static final Path CROOKED = Path.of("../scenarios/quarry-special.json");

    @TempDir
    Path folder;

    private static Run log(Path file, String... words) {
        return Run.of(Stream.concat(Stream.of("log", file.toString()), Stream.of(words))
                .toArray(String[]::new));
    }

    private Path copy() throws IOException {
        return Files.copy(CROOKED, folder.resolve("car.json"));
    }

    @Test
    void theBookIsShownWithWhatIsDue() throws IOException {
        Run people = log(CROOKED, "--date", "2027-04-01");
        assertThat(people.status()).isEqualTo(Status.DONE);
        assertThat(people.out())
                .contains("Due, as of 2027-04-01")
                .contains("Overdue: road licence held until 2027-03-31.")
                .contains("Later: check the torque of rear upper links again, at 61530 km (370 km to go).")
                .contains("CORRECTED by entry 4")
                .doesNotContain("wheel nuts again");
        JsonNode json = JsonMapper.builder()
                .build()
                .readTree(log(CROOKED, "--json", "--date", "2026-12-01").out());
        assertThat(json.get("distance_km").asDouble()).isEqualTo(61_160);
        assertThat(json.at("/entries/2/correctedBy").asInt()).isEqualTo(4);
        assertThat(json.at("/entries/0/cornerWeights/frontLeft_kg").asDouble()).isEqualTo(348);
        assertThat(json.at("/due/0/until").asText()).isEqualTo("2027-03-31");
        String miles = log(CROOKED, "--csv", "--units", "imperial").out();
        assertThat(miles.lines()).hasSize(6);
        assertThat(miles).startsWith("entry,date,distance_mi,text,setup,corrects,correctedBy");
        assertThat(log(Path.of("../scenarios/slipper-coupe.json")).out()).contains("Nothing is in the book yet.");
    }

    @Test
    void anEntryIsAddedAndTheRestOfTheFileStaysAsItIs() throws IOException {
        Path file = copy();
        Run run = log(
                file,
                "--add",
                "Links torqued again",
                "--date",
                "2026-12-11",
                "--distance",
                "61600 km",
                "--setup",
                "Welded up",
                "--torqued",
                "rear upper links",
                "--paper",
                "insurance=2027-01-31",
                "--height",
                "rearLeft=14.25 in");
        assertThat(run.status()).as(run.err()).isEqualTo(Status.DONE);
        assertThat(run.out())
                .contains("6  2026-12-11  61600 km  Links torqued again")
                .doesNotContain("rear upper links again");
        List<String> before = new ArrayList<>(Files.readAllLines(CROOKED));
        List<String> after = new ArrayList<>(Files.readAllLines(file));
        after.removeAll(before);
        assertThat(after).hasSize(2); // the new entry, and the comma behind the one before it
        assertThat(Files.readString(folder.resolve("car.previous.json"))).isEqualTo(Files.readString(CROOKED));
        assertThat(ScenarioReader.read(file)
                        .scenario()
                        .orElseThrow()
                        .record()
                        .book()
                        .entries()
                        .get(5)
                        .measured()
                        .rideHeights())
                .hasSize(1);
    }

    @Test
    void levelTakesTheHeightsFromTheBook() {
        Run run = Run.of("level", CROOKED.toString());
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("heights of 4 corners asked for")
                .contains("Heights now are those that the book has of 2026-10-05.");
    }

    @Test
    void whatWouldBreakTheBookIsNotWritten() throws IOException {
        Path file = copy();
        String text = Files.readString(file);
        List<String[]> wrong = List.of(
                new String[] {"--add", "x", "--date", "2026-10-05"},
                new String[] {"--add", "x", "--distance", "61159 km"},
                new String[] {"--add", "x", "--distance", "61159"},
                new String[] {"--add", "x", "--corrects", "6"},
                new String[] {"--add", "x", "--corrects", "no"},
                new String[] {"--add", "x", "--setup", "Weld"},
                new String[] {"--add", "x", "--paper", "licence"},
                new String[] {"--add", "x", "--paper", "licence=soon"},
                new String[] {"--add", "x\u0007"},
                new String[] {"--add", " "},
                new String[] {"--distance", "62000 km"},
                new String[] {"--date", "2026-02-30"});
        for (String[] words : wrong) {
            Run run = log(file, words);
            assertThat(run.status()).as(String.join(" ", words)).isEqualTo(Status.WRONG);
            assertThat(run.err().lines()).as(String.join(" ", words)).hasSize(1);
            assertThat(Files.readString(file)).isEqualTo(text);
        }
    }

    @Test
    void namesThatTheFileDoesNotHaveAreWarnedOfOnce() throws IOException {
        Path file = copy();
        log(file, "--add", "a", "--date", "2026-12-11", "--torqued", "rear uper links");
        log(file, "--add", "b", "--date", "2026-12-12", "--torqued", "rear uper links");
        String checked = Run.of("check", file.toString()).out();
        assertThat(checked.split("rear uper links", -1)).hasSize(2);
        assertThat(checked).contains("log[5].torqued").contains("is \"rear upper links\" meant?");
    }
}
