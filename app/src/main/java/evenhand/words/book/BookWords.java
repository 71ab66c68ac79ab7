package evenhand.words.book;

import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.scenario.Book;
import evenhand.scenario.BookEntry;
import evenhand.turn.Wheel;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What stands in the book of a car, and what is due, in sentences. */
public final class BookWords {
    /** What is said of a book without entries. */
    public static final String NOTHING_YET = "Nothing is in the book yet.";

    /** The same, with how the first entry is made. */
    public static final String EMPTY =
            NOTHING_YET + " `log --add \"what was done\" --distance \"48210 km\"` makes the first entry.";

    private BookWords() {}

    /** What is due, a sentence each, the most urgent first. */
    public static List<String> due(List<Book.Due> all, Units units) {
        return all.stream().map(due -> due(due, units)).toList();
    }

    /** "Overdue: re-check rear upper links, since 49100 km (110 km ago)." */
    public static String due(Book.Due due, Units units) {
        String what = due.what();
        if (due.until().isPresent()) {
            return switch (due.urgency()) {
                case OVERDUE ->
                    "Overdue: " + what + " held until " + due.until().get() + ".";
                case SOON -> "Soon: " + what + " holds until " + due.until().get() + ".";
                default -> "Later: " + what + " holds until " + due.until().get() + ".";
            };
        }
        return switch (due.urgency()) {
            case NEVER_DONE -> "Never in the book: " + what + " tightened to its torque.";
            case UNKNOWN ->
                "Nobody can say when: " + what + " was tightened (entry " + due.entry()
                        + "), but no distance was written.";
            default -> {
                double toGo = due.toGo().orElseThrow();
                String at = distance(due.atDistance().orElseThrow(), units);
                yield switch (due.urgency()) {
                    case OVERDUE ->
                        "Overdue: check the torque of " + what + " again, since " + at + " (" + distance(-toGo, units)
                                + " ago).";
                    case SOON ->
                        "Soon: check the torque of " + what + " again, at " + at + " (" + distance(toGo, units)
                                + " to go).";
                    default ->
                        "Later: check the torque of " + what + " again, at " + at + " (" + distance(toGo, units)
                                + " to go).";
                };
            }
        };
    }

    /** All that an entry says besides day and distance. */
    public static String entry(BookEntry entry, int number, Map<Integer, Integer> corrections) {
        StringBuilder text = new StringBuilder(entry.text().strip());
        List<String> more = new ArrayList<>();
        entry.setup().ifPresent(setup -> more.add("set-up \"" + setup + "\""));
        if (!entry.torqued().isEmpty()) {
            more.add("torqued: " + String.join(", ", entry.torqued()));
        }
        heights("heights", entry.measured().rideHeights()).ifPresent(more::add);
        heights("scales", entry.measured().cornerWeights()).ifPresent(more::add);
        entry.measured().other().forEach((what, value) -> more.add(what + ": " + value));
        entry.papers().forEach(paper -> more.add(paper.what() + " until " + paper.until()));
        if (entry.corrects().isPresent()) {
            more.add("corrects entry " + entry.corrects().getAsInt());
        }
        Integer by = corrections.get(number);
        if (by != null) {
            more.add("CORRECTED by entry " + by);
        }
        if (!more.isEmpty()) {
            text.append(" (").append(String.join("; ", more)).append(')');
        }
        return text.toString();
    }

    private static Optional<String> heights(String what, Map<Wheel, Quantity> given) {
        List<String> all = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            Quantity value = given.get(wheel);
            if (value != null) {
                all.add(wheel.words() + " " + value.text().strip());
            }
        }
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(what + ": " + all.stream().collect(Collectors.joining(", ")));
    }

    /** A way that a car has run: "48210 km". */
    public static String distance(double metres, Units units) {
        Unit unit = units.of(Dimension.DISTANCE);
        return Numbers.fixed(unit.fromSi(metres), 0) + " " + unit.symbol();
    }
}
