package evenhand.terminal.book;

import evenhand.answers.Figure;
import evenhand.car.LoadCase;
import evenhand.forms.Contents;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.scenario.Book;
import evenhand.scenario.BookEntry;
import evenhand.scenario.Scenario;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.turn.Wheel;
import evenhand.words.Units;
import evenhand.words.book.BookWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What {@code log} answers.
 *
 * @param on the day for which is said what is due
 * @param full whether all entries are shown to people, and not only the last
 */
record LogReply(Scenario scenario, LocalDate on, boolean full) implements Reply {
    /** So many of the last entries are shown where nobody asks for all. */
    private static final int LAST = 20;

    /** An entry with its number and who corrects it. */
    private record Numbered(int number, BookEntry entry, Optional<Integer> correctedBy) {
        private OptionalDouble distance() {
            return entry.distance().map(Quantity::si).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
        }
    }

    /** What was measured at the corners. */
    private record Corners(Map<Wheel, Quantity> of) {}

    private static final Contents<Book.Due> DUE = Contents.of(Book.Due.class)
            .text("what", Book.Due::what)
            .text("urgency", due -> key(due.urgency()))
            .wholeIfAny("entry", due -> due.entry() > 0 ? OptionalLong.of(due.entry()) : OptionalLong.empty())
            .textIfAny("until", due -> due.until().map(LocalDate::toString))
            .figure(way("atDistance", Book.Due::atDistance))
            .figure(way("toGo", Book.Due::toGo));

    private static final Contents<BookEntry.Paper> PAPER = Contents.of(BookEntry.Paper.class)
            .text("what", BookEntry.Paper::what)
            .text("until", paper -> paper.until().toString());

    private static final Contents<Numbered> ENTRY = Contents.of(Numbered.class)
            .whole("entry", Numbered::number)
            .text("date", one -> one.entry().date().toString())
            .figure(way("distance", Numbered::distance))
            .text("text", one -> one.entry().text())
            .textIfAny("setup", one -> one.entry().setup())
            .wholeIfAny(
                    "corrects",
                    one -> one.entry().corrects().isPresent()
                            ? OptionalLong.of(one.entry().corrects().getAsInt())
                            : OptionalLong.empty())
            .wholeIfAny(
                    "correctedBy",
                    one -> one.correctedBy().map(OptionalLong::of).orElseGet(OptionalLong::empty));

    private static final Contents<Corners> HEIGHTS = corners("_m");
    private static final Contents<Corners> SCALES = corners("_kg");

    private static final Contents<Numbered> WHOLE_ENTRY = Contents.of(Numbered.class)
            .with(one -> one, ENTRY)
            .partIfAny("rideHeights", one -> corners(one.entry().measured().rideHeights()), HEIGHTS)
            .partIfAny("cornerWeights", one -> corners(one.entry().measured().cornerWeights()), SCALES)
            .textsIfAny("torqued", one -> one.entry().torqued())
            .listIfAny("papers", one -> one.entry().papers(), PAPER);

    private static final Contents<LogReply> REPLY = Contents.of(LogReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .text("on", reply -> reply.on().toString())
            .figure(way("distance", reply -> reply.scenario().record().book().distance()))
            .list("due", LogReply::due, DUE)
            .list("entries", LogReply::numbered, WHOLE_ENTRY);

    private static <T> Figure<T> way(String name, Function<T, OptionalDouble> reading) {
        return Figure.ofOptional(name, name, Dimension.DISTANCE, "km", 0, reading);
    }

    private static Contents<Corners> corners(String unit) {
        Contents<Corners> contents = Contents.of(Corners.class);
        for (Wheel wheel : Wheel.values()) {
            contents = contents.numberIfAny(wheel.key() + unit, corners -> {
                Quantity value = corners.of().get(wheel);
                return value == null ? OptionalDouble.empty() : OptionalDouble.of(value.si());
            });
        }
        return contents;
    }

    private static Optional<Corners> corners(Map<Wheel, Quantity> given) {
        return given.isEmpty() ? Optional.empty() : Optional.of(new Corners(given));
    }

    private static String key(Book.Urgency urgency) {
        return switch (urgency) {
            case NEVER_DONE -> "neverDone";
            default -> urgency.name().toLowerCase(Locale.ROOT);
        };
    }

    private List<Book.Due> due() {
        return scenario.record().book().due(scenario.record().torques(), on);
    }

    private List<Numbered> numbered() {
        Book book = scenario.record().book();
        Map<Integer, Integer> corrections = book.corrections();
        List<Numbered> all = new ArrayList<>();
        for (int i = 0; i < book.entries().size(); i++) {
            all.add(new Numbered(i + 1, book.entries().get(i), Optional.ofNullable(corrections.get(i + 1))));
        }
        return all;
    }

    @Override
    public Optional<LoadCase> load() {
        return Optional.empty();
    }

    @Override
    public List<SetupAnswer> setups() {
        return List.of();
    }

    @Override
    public Written written() {
        return Written.of("log", REPLY, this, Written.Csv.of(ENTRY, this::numbered), this::page);
    }

    private String page(Console console, Units units) {
        Page page = new Page(console);
        page.title(scenario.title());
        Book book = scenario.record().book();
        List<Book.Due> due = due();
        if (!due.isEmpty()) {
            page.heading("Due, as of " + on);
            BookWords.due(due, units).forEach(line -> page.paragraph("  ", line));
        }
        page.heading("The book");
        if (book.entries().isEmpty()) {
            page.paragraph("  ", BookWords.EMPTY);
            return page.text();
        }
        Map<Integer, Integer> corrections = book.corrections();
        int first = full ? 0 : Math.max(0, book.entries().size() - LAST);
        if (first > 0) {
            page.paragraph("  ", "Entries 1 to " + first + " are shown by --full.");
        }
        for (int i = first; i < book.entries().size(); i++) {
            BookEntry entry = book.entries().get(i);
            String head = Stream.of(
                            Optional.of(Integer.toString(i + 1)),
                            Optional.of(entry.date().toString()),
                            entry.distance().map(way -> BookWords.distance(way.si(), units)))
                    .flatMap(Optional::stream)
                    .reduce((one, other) -> one + "  " + other)
                    .orElse("");
            page.paragraph("  ", head + "  " + Console.oneLine(BookWords.entry(entry, i + 1, corrections)));
        }
        return page.text();
    }
}
