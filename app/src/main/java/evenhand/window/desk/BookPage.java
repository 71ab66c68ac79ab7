package evenhand.window.desk;

import evenhand.scenario.Book;
import evenhand.scenario.BookEntry;
import evenhand.scenario.NewEntry;
import evenhand.scenario.ShopRecord;
import evenhand.words.Units;
import evenhand.words.book.BookWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The shop's book as it is shown: what is due, and the entries, the newest first.
 *
 * @param on the day for which is said what is due
 * @param older so many entries are before those that are shown
 */
public record BookPage(LocalDate on, List<Due> due, List<Row> rows, int older) {
    /** Key of the field in which the day stands. */
    public static final String DAY = "on";

    /** So many entries are shown at first, and so many more each time that older ones are asked for. */
    public static final int MOST = 50;

    /** @param overdue whether its day or its way is past */
    public record Due(String words, boolean overdue) {}

    /**
     * An entry.
     *
     * @param number by which another names it
     * @param corrected whether another stands in its place
     */
    public record Row(int number, String when, String words, boolean corrected) {}

    public BookPage {
        due = List.copyOf(due);
        rows = List.copyOf(rows);
    }

    /** @param most so many of the last entries are shown */
    public static BookPage of(ShopRecord record, Units units, LocalDate on, int most) {
        Book book = record.book();
        List<Due> due = book.due(record.torques(), on).stream()
                .map(one -> new Due(BookWords.due(one, units), one.urgency() == Book.Urgency.OVERDUE))
                .toList();
        Map<Integer, Integer> corrections = book.corrections();
        int older = Math.max(0, book.entries().size() - most);
        List<Row> rows = new ArrayList<>();
        for (int number = book.entries().size(); number > older; number--) {
            BookEntry entry = book.entries().get(number - 1);
            String way = entry.distance()
                    .map(own -> ", " + BookWords.distance(own.si(), units))
                    .orElse("");
            rows.add(new Row(
                    number,
                    entry.date() + way,
                    BookWords.entry(entry, number, corrections),
                    corrections.containsKey(number)));
        }
        return new BookPage(on, due, rows, older);
    }

    /** The day that stands in the question's field; today where it is none. */
    public static LocalDate day(Optional<String> wished, LocalDate today) {
        if (wished.isEmpty() || wished.get().isBlank()) {
            return today;
        }
        try {
            return NewEntry.day(wished.get());
        } catch (NewEntry.Refused none) {
            return today;
        }
    }
}
