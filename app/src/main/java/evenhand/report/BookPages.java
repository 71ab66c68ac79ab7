package evenhand.report;

import evenhand.quantity.Quantity;
import evenhand.report.Block.Column;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Points;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.scenario.Book;
import evenhand.scenario.BookEntry;
import evenhand.scenario.Scenario;
import evenhand.words.Units;
import evenhand.words.book.BookWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The book of a car, and what is due of it. */
final class BookPages {
    private BookPages() {}

    static Section of(Scenario scenario, Optional<LocalDate> date, Units units) {
        Book book = scenario.record().book();
        List<Block> blocks = new ArrayList<>();
        if (book.entries().isEmpty()) {
            blocks.add(Text.plain("Nothing was written into it."));
        } else {
            blocks.add(entries(book, units));
        }
        // No clock: the same file gives the same paper.
        Optional<LocalDate> on =
                date.or(() -> book.entries().stream().map(BookEntry::date).max(LocalDate::compareTo));
        on.ifPresent(day -> {
            List<String> due = BookWords.due(book.due(scenario.record().torques(), day), units);
            if (!due.isEmpty()) {
                blocks.add(new Heading("Due, as of " + day));
                blocks.add(new Points(due));
            }
        });
        return new Section("The book", false, blocks);
    }

    private static Table entries(Book book, Units units) {
        Map<Integer, Integer> corrections = book.corrections();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < book.entries().size(); i++) {
            BookEntry entry = book.entries().get(i);
            rows.add(Row.of(
                    Integer.toString(i + 1),
                    entry.date().toString(),
                    entry.distance()
                            .map(Quantity::si)
                            .map(way -> BookWords.distance(way, units))
                            .orElse(""),
                    BookWords.entry(entry, i + 1, corrections)));
        }
        return new Table(
                List.of(
                        Column.number("entry", 0.7),
                        Column.words("day", 1.3),
                        Column.number("distance", 1.3),
                        Column.words("what was done", 9)),
                rows);
    }
}
