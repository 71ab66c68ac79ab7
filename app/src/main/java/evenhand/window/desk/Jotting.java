package evenhand.window.desk;

import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.scenario.Book;
import evenhand.scenario.BookEntry;
import evenhand.scenario.NewEntry;
import evenhand.words.Units;
import evenhand.words.book.BookWords;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * What is noted for an entry of the book and not yet put down, as typed. Immutable.
 *
 * @param date today where it is empty
 * @param distance with its unit, or a bare number in the unit that is chosen
 * @param setup that the car was left in
 * @param torqued what was tightened, by the names of the torques
 * @param measured what stands on from the entry that is corrected
 * @param corrects number of the entry that it stands in place of
 */
public record Jotting(
        String text,
        String date,
        String distance,
        Optional<String> setup,
        List<String> torqued,
        List<Paper> papers,
        BookEntry.Measured measured,
        OptionalInt corrects) {
    private static final Pattern BARE = Pattern.compile("[\\d.,]+");

    /** A paper and its last day. */
    public record Paper(String what, String until) {
        private boolean isEmpty() {
            return what.isBlank() && until.isBlank();
        }
    }

    /** What can be wrong by itself. */
    public enum Part {
        TEXT,
        DATE,
        DISTANCE,
        PAPERS
    }

    /** What comes of looking it through. */
    public sealed interface Checked {
        record Sound(NewEntry entry) implements Checked {}

        /** @param by in a line each, what is wrong with which part */
        record Wrong(Map<Part, String> by) implements Checked {}
    }

    public Jotting {
        torqued = List.copyOf(torqued);
        papers = List.copyOf(papers);
    }

    /** Nothing noted yet, of a car that is left in a set-up. */
    public static Jotting empty(String setup) {
        return new Jotting(
                "", "", "", Optional.of(setup), List.of(), List.of(), BookEntry.Measured.NOTHING, OptionalInt.empty());
    }

    /** All that an entry says, to be put right: the new one stands in its place. The day is that of putting it right. */
    public static Jotting correcting(Book book, int number, Units units) {
        BookEntry entry = book.entries().get(number - 1);
        return new Jotting(
                entry.text().strip(),
                "",
                entry.distance().map(way -> said(way, units)).orElse(""),
                entry.setup(),
                entry.torqued(),
                entry.papers().stream()
                        .map(paper -> new Paper(paper.what(), paper.until().toString()))
                        .toList(),
                entry.measured(),
                OptionalInt.of(number));
    }

    /** In the words of the file where its unit is chosen, so that nothing of it is rounded. */
    private static String said(Quantity way, Units units) {
        Unit unit = units.of(Dimension.DISTANCE);
        return way.unit().equals(unit) ? way.text().strip() : BookWords.distance(way.si(), units);
    }

    /**
     * The entry that it makes behind the last of a book, or what is wrong with which part of it.
     *
     * @param today the day of an entry that says none
     */
    public Checked checked(Book book, Units units, LocalDate today) {
        Map<Part, String> wrong = new LinkedHashMap<>();
        if (text.isBlank()) {
            wrong.put(Part.TEXT, "is empty; say what was done");
        }
        LocalDate day = date.isBlank() ? today : day(date, Part.DATE, "", wrong).orElse(today);
        Optional<Quantity> way = distance.isBlank() ? Optional.empty() : way(units, wrong);
        Map<String, LocalDate> until = papers(wrong);
        if (text.isBlank()) {
            return new Checked.Wrong(wrong);
        }
        NewEntry entry = new NewEntry(day, way, text.strip(), setup, measured, torqued, until, corrects);
        entry.problems(book).forEach((member, what) -> wrong.putIfAbsent(part(member), what));
        return wrong.isEmpty() ? new Checked.Sound(entry) : new Checked.Wrong(wrong);
    }

    private static Part part(String member) {
        return switch (member) {
            case "date" -> Part.DATE;
            case "distance" -> Part.DISTANCE;
            default -> Part.TEXT;
        };
    }

    private static Optional<LocalDate> day(String typed, Part part, String before, Map<Part, String> wrong) {
        try {
            return Optional.of(NewEntry.day(typed));
        } catch (NewEntry.Refused none) {
            wrong.put(part, before + none.getMessage());
            return Optional.empty();
        }
    }

    private static Optional<LocalDate> paper(Paper paper, Map<Part, String> wrong) {
        if (paper.until().isBlank()) {
            wrong.put(Part.PAPERS, "\"" + paper.what().strip() + "\" needs its last day, for example 2027-03-31");
            return Optional.empty();
        }
        return day(paper.until(), Part.PAPERS, "the day of \"" + paper.what().strip() + "\" ", wrong);
    }

    private Optional<Quantity> way(Units units, Map<Part, String> wrong) {
        String bare = distance.strip();
        try {
            return Optional.of(NewEntry.way(
                    BARE.matcher(bare).matches()
                            ? bare + " " + units.of(Dimension.DISTANCE).symbol()
                            : bare));
        } catch (NewEntry.Refused none) {
            wrong.put(Part.DISTANCE, String.valueOf(none.getMessage()));
            return Optional.empty();
        }
    }

    private Map<String, LocalDate> papers(Map<Part, String> wrong) {
        Map<String, LocalDate> until = new LinkedHashMap<>();
        for (Paper paper : papers) {
            if (paper.isEmpty()) {
                continue;
            }
            if (paper.what().isBlank()) {
                wrong.put(Part.PAPERS, "a day without a name; say which paper it is");
            } else {
                paper(paper, wrong).ifPresent(day -> until.put(paper.what().strip(), day));
            }
        }
        return until;
    }
}
