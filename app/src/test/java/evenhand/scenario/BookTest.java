package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What counts in a book, and what comes due. */
class BookTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Path CROOKED = Path.of("../scenarios/quarry-special.json");

    private static Quantity km(double way) {
        try {
            return Quantity.parse(way + " km", Dimension.DISTANCE);
        } catch (QuantityException e) {
            throw new AssertionError(e);
        }
    }

    private static BookEntry entry(double way, OptionalInt corrects, List<BookEntry.Paper> papers, String... torqued) {
        return new BookEntry(
                DAY,
                Optional.of(km(way)),
                "done",
                Optional.empty(),
                BookEntry.Measured.NOTHING,
                List.of(torqued),
                papers,
                corrects);
    }

    private static BookEntry at(double way, String... torqued) {
        return entry(way, OptionalInt.empty(), List.of(), torqued);
    }

    private static Torque links() throws QuantityException {
        return new Torque("links", Quantity.parse("95 N*m", Dimension.MOMENT), Optional.of(km(500)));
    }

    private static Book.Urgency urgency(BookEntry... entries) throws QuantityException {
        return new Book(List.of(entries)).due(List.of(links()), DAY).get(0).urgency();
    }

    @Test
    void aTorqueIsCheckedAgainOnceItsWayIsRun() throws QuantityException {
        assertThat(urgency(at(1000))).isEqualTo(Book.Urgency.NEVER_DONE);
        assertThat(urgency(at(1000, "links"), at(1399))).isEqualTo(Book.Urgency.LATER);
        assertThat(urgency(at(1000, "links"), at(1400))).isEqualTo(Book.Urgency.SOON);
        assertThat(urgency(at(1000, "links"), at(1500))).isEqualTo(Book.Urgency.OVERDUE);
        // tightened again before most of the way is run, the way begins again
        assertThat(urgency(at(1000, "links"), at(1300, "links"), at(1500))).isEqualTo(Book.Urgency.LATER);
        Book checked = new Book(List.of(at(1000, "links"), at(1400, "links"), at(9000)));
        assertThat(checked.due(List.of(links()), DAY)).isEmpty();
    }

    @Test
    void aCorrectionStandsInThePlaceOfWhatItCorrects() throws QuantityException {
        BookEntry misread = at(84_000, "links");
        BookEntry corrected = entry(48_000, OptionalInt.of(1), List.of(), "links");
        Book book = new Book(List.of(misread, corrected, at(48_450)));
        assertThat(book.distance()).hasValue(48_450e3);
        Book.Due due = book.due(List.of(links()), DAY).get(0);
        assertThat(due.urgency()).isEqualTo(Book.Urgency.SOON);
        assertThat(due.entry()).isEqualTo(2);
        assertThat(due.toGo()).hasValue(50e3);
        List<String> wrong = new ArrayList<>();
        BookChecks.of(book, (path, what) -> wrong.add(path));
        assertThat(wrong).isEmpty();
        BookChecks.of(new Book(List.of(misread, at(48_450))), (path, what) -> wrong.add(path));
        assertThat(wrong).containsExactly("log[1].distance");
    }

    @Test
    void aPaperIsDueByItsLatestEntry() {
        BookEntry.Paper old = new BookEntry.Paper("licence", DAY.minusDays(1));
        BookEntry.Paper renewed = new BookEntry.Paper("licence", DAY.plusDays(30));
        BookEntry.Paper later = new BookEntry.Paper("insurance", DAY.plusDays(31));
        Book first = new Book(List.of(entry(1, OptionalInt.empty(), List.of(old, later))));
        assertThat(first.due(List.of(), DAY))
                .extracting(Book.Due::urgency)
                .containsExactly(Book.Urgency.OVERDUE, Book.Urgency.LATER);
        assertThat(first.due(List.of(), DAY.minusDays(1)).get(0).urgency())
                .as("it holds on its last day")
                .isEqualTo(Book.Urgency.SOON);
        Book then = new Book(List.of(
                entry(1, OptionalInt.empty(), List.of(old, later)), entry(2, OptionalInt.empty(), List.of(renewed))));
        assertThat(then.due(List.of(), DAY))
                .extracting(Book.Due::urgency)
                .containsExactly(Book.Urgency.SOON, Book.Urgency.LATER);
    }

    @Test
    void anEntryIsWrittenBehindTheLastAndNothingElseChanges() throws IOException {
        String text = Files.readString(CROOKED);
        NewEntry entry = new NewEntry(
                NewEntry.day("2026-12-24"),
                Optional.of(NewEntry.way("39000 mi")),
                "Said \"hm\" and drove on",
                Optional.of("Welded up"),
                BookEntry.Measured.NOTHING,
                List.of("strut tops"),
                Map.of(),
                OptionalInt.empty());
        String added = entry.in("q.json", text);
        int at = text.lastIndexOf("Wheel nuts checked again.");
        int end = text.indexOf('}', at) + 1;
        assertThat(added)
                .startsWith(text.substring(0, end) + ",\n    {\"date\": \"2026-12-24\"")
                .endsWith(text.substring(end));
        BookEntry last = ScenarioReader.read("q.json", added)
                .scenario()
                .orElseThrow()
                .record()
                .book()
                .entries()
                .get(5);
        assertThat(last.text()).isEqualTo("Said \"hm\" and drove on");
        assertThat(last.torqued()).containsExactly("strut tops");
        String none = Files.readString(Path.of("../scenarios/slipper-coupe.json"));
        String first = entry.in("s.json", none.replace("As the customer wished", "Welded up"));
        assertThat(ScenarioReader.read("s.json", first).problems()).isEmpty();
        assertThat(first).contains("\"log\": [\n    {\"date\"");
    }
}
