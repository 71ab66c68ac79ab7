package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.scenario.BookEntry;
import evenhand.scenario.Scenario;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import evenhand.turn.Wheel;
import evenhand.window.desk.Jotting.Part;
import evenhand.words.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Entries of the shop's book: as typed, checked, put down, taken back and put right. */
class JottingTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 12, 1);

    private static Jotting jotting(String text, String date, String distance) {
        return new Jotting(
                text,
                date,
                distance,
                Optional.of("Welded up"),
                List.of("rear upper links", "wheel nuts"),
                List.of(new Jotting.Paper("insurance", "2027-01-31"), new Jotting.Paper("", " ")),
                BookEntry.Measured.NOTHING,
                OptionalInt.empty());
    }

    private static EntryAct act(Bench bench, Jotting jotting, Units units) {
        Jotting.Checked checked = jotting.checked(scenario(bench).record().book(), units, TODAY);
        assertThat(checked).isInstanceOf(Jotting.Checked.Sound.class);
        return new EntryAct(((Jotting.Checked.Sound) checked).entry());
    }

    private static Map<Part, String> wrong(Bench bench, Jotting jotting) {
        return ((Jotting.Checked.Wrong) jotting.checked(scenario(bench).record().book(), Units.METRIC, TODAY)).by();
    }

    private static Scenario scenario(Bench bench) {
        return bench.desk().work().scenario();
    }

    @Test
    void anEntryIsWrittenAsTheCommandLineWritesItAndTakenBack(@TempDir Path folder) throws IOException {
        Bench bench = Desks.bench("quarry-special");
        String before = scenario(bench).text();
        Desks.done(bench, act(bench, jotting(" Links \"again\" ", "", "61600"), Units.METRIC));
        Path file = Files.copy(Desks.SCENARIOS.resolve("quarry-special.json"), folder.resolve("car.json"));
        Run run = Run.of(
                "log",
                file.toString(),
                "--add",
                "Links \"again\"",
                "--date",
                TODAY.toString(),
                "--distance",
                "61600 km",
                "--setup",
                "Welded up",
                "--torqued",
                "rear upper links",
                "--torqued",
                "wheel nuts",
                "--paper",
                "insurance=2027-01-31");
        assertThat(run.status()).as(run.err()).isEqualTo(Status.DONE);
        assertThat(scenario(bench).text()).isEqualTo(Files.readString(file)).isNotEqualTo(before);
        assertThat(bench.history().acts().get(0)).isEqualTo("put down: Links \"again\"");
        assertThat(bench.desk().unsaved()).isTrue();
        bench.undo();
        assertThat(scenario(bench).text()).isEqualTo(before);
        bench.redo();
        assertThat(scenario(bench).record().book().entries()).hasSize(6);
    }

    @Test
    void aBareDistanceIsInTheUnitThatIsChosenAndTheFirstEntryBeginsABook() {
        Bench bench = Desks.bench("slipper-coupe");
        Jotting first = new Jotting(
                "Came in",
                "2026-11-30",
                " 38000 ",
                Optional.empty(),
                List.of(),
                List.of(),
                BookEntry.Measured.NOTHING,
                OptionalInt.empty());
        Desks.done(bench, act(bench, first, Units.IMPERIAL));
        assertThat(scenario(bench).text())
                .contains("{\"date\": \"2026-11-30\", \"distance\": \"38000 mi\", \"text\": \"Came in\"}");
    }

    @Test
    void aCorrectionSaysAllThatTheEntryDidAndStandsInItsPlace() {
        Bench bench = Desks.bench("quarry-special");
        String before = scenario(bench).text();
        Jotting correcting = Jotting.correcting(scenario(bench).record().book(), 1, Units.METRIC);
        assertThat(correcting.distance()).isEqualTo("61020 km");
        assertThat(correcting.date()).isEmpty();
        Desks.done(bench, act(bench, correcting, Units.METRIC));
        List<BookEntry> entries = scenario(bench).record().book().entries();
        BookEntry last = entries.get(5);
        assertThat(last.corrects()).hasValue(1);
        assertThat(last.date()).isEqualTo(TODAY);
        assertThat(last.text()).isEqualTo(entries.get(0).text());
        assertThat(last.measured().cornerWeights().get(Wheel.FRONT_LEFT).text()).isEqualTo("348 kg");
        assertThat(scenario(bench).text())
                .as("what stands there is never altered")
                .startsWith(before.substring(0, before.indexOf("Wheel nuts checked again.")));
        assertThat(bench.history().acts().get(0)).endsWith("(corrects entry 1)");

        BookPage page = BookPage.of(scenario(bench).record(), Units.METRIC, TODAY, 50);
        assertThat(page.rows()).extracting(BookPage.Row::number).containsExactly(6, 5, 4, 3, 2, 1);
        assertThat(page.rows())
                .extracting(BookPage.Row::corrected)
                .endsWith(true)
                .startsWith(false, false, false, true);
        assertThat(Jotting.correcting(scenario(bench).record().book(), 3, Units.METRIC))
                .satisfies(all -> assertThat(all.measured().other()).containsKey("floor"))
                .satisfies(all ->
                        assertThat(all.papers()).containsExactly(new Jotting.Paper("road licence", "2027-03-31")));
        assertThat(Jotting.correcting(scenario(bench).record().book(), 1, Units.IMPERIAL)
                        .distance())
                .isEqualTo("37916 mi");
    }

    @Test
    void whatIsWrongIsToldOfTheFieldThatItIsIn() {
        Bench bench = Desks.bench("quarry-special");
        assertThat(wrong(bench, jotting(" ", "", ""))).containsOnlyKeys(Part.TEXT);
        assertThat(wrong(bench, jotting("x", "2026-02-30", "far")))
                .containsOnlyKeys(Part.DATE, Part.DISTANCE)
                .hasEntrySatisfying(Part.DATE, why -> assertThat(why).startsWith("is no day; write year"));
        assertThat(wrong(bench, jotting("x", "2026-10-05", "61159 km")))
                .hasEntrySatisfying(Part.DATE, why -> assertThat(why).startsWith("is before 2026-10-06"))
                .hasEntrySatisfying(Part.DISTANCE, why -> assertThat(why).startsWith("is less than 61160 km"));
        Jotting nameless = new Jotting(
                "x",
                "",
                "",
                Optional.empty(),
                List.of(),
                List.of(new Jotting.Paper("", "2027-01-01")),
                BookEntry.Measured.NOTHING,
                OptionalInt.empty());
        assertThat(wrong(bench, nameless)).containsOnlyKeys(Part.PAPERS);
        assertThat(bench.act(act(bench, jotting("bell \u0007", "", ""), Units.METRIC)))
                .as("what no file may hold")
                .hasValueSatisfying(why -> assertThat(why).contains("text"));
        assertThat(bench.undoable()).isEmpty();
    }

    @Test
    void theNewestFiftyOfALongBookAreShownAndWhatIsDue() {
        Bench bench = Desks.bench("sluice-tourer");
        LocalDate late = LocalDate.of(2026, 12, 25);
        BookPage page = BookPage.of(scenario(bench).record(), Units.METRIC, late, 2);
        assertThat(page.rows()).extracting(BookPage.Row::number).containsExactly(5, 4);
        assertThat(page.rows().get(0).when()).isEqualTo("2026-05-16, 118890 km");
        assertThat(page.older()).isEqualTo(3);
        assertThat(page.due().get(0)).isEqualTo(new BookPage.Due("Overdue: road licence held until 2026-12-20.", true));
        assertThat(page.due()).extracting(BookPage.Due::overdue).containsOnlyOnce(true);
        assertThat(BookPage.day(Optional.of("soon"), TODAY)).isEqualTo(TODAY);
        assertThat(BookPage.day(Optional.of(" 2026-12-25"), TODAY)).isEqualTo(late);
    }
}
