package evenhand.scenario;

import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.turn.Wheel;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * An entry that is to be written into a book, in the words that it is to stand there.
 *
 * @param distance with its unit
 * @param papers by name the last day
 */
public record NewEntry(
        LocalDate date,
        Optional<Quantity> distance,
        String text,
        Optional<String> setup,
        BookEntry.Measured measured,
        List<String> torqued,
        Map<String, LocalDate> papers,
        OptionalInt corrects) {
    public NewEntry {
        torqued = List.copyOf(torqued);
        papers = Collections.unmodifiableMap(new LinkedHashMap<>(papers));
    }

    /** Why it cannot be written, in a line. */
    public static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    /**
     * A day as somebody writes it.
     *
     * @throws Refused where it is none
     */
    public static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException e) {
            throw new Refused("is no day; write year, month and day, for example 2026-11-25");
        }
    }

    /**
     * A way as somebody writes it, with its unit.
     *
     * @throws Refused where it is none
     */
    public static Quantity way(String text) {
        try {
            return Quantity.parse(text.strip(), Dimension.DISTANCE);
        } catch (QuantityException e) {
            throw new Refused(e.message(Dimension.DISTANCE.example()));
        }
    }

    /** What would be wrong with it behind the last entry of a sound book, each by the member that it is about. */
    public Map<String, String> problems(Book book) {
        List<BookEntry> entries = new ArrayList<>(book.entries());
        entries.add(new BookEntry(date, distance, text, setup, measured, torqued, List.of(), corrects));
        String own = BookChecks.KEY + "[" + book.entries().size() + "].";
        Map<String, String> problems = new LinkedHashMap<>();
        BookChecks.of(new Book(entries), (path, what) -> {
            if (path.startsWith(own)) {
                problems.putIfAbsent(path.substring(own.length()), what);
            }
        });
        return problems;
    }

    /** As it stands in the file. */
    String json() {
        Map<String, String> members = new LinkedHashMap<>();
        members.put("date", ScenarioWriter.quoted(date.toString()));
        distance.ifPresent(way -> members.put("distance", quoted(way)));
        members.put("text", ScenarioWriter.quoted(text));
        setup.ifPresent(name -> members.put("setup", ScenarioWriter.quoted(name)));
        measuredJson().ifPresent(all -> members.put("measured", all));
        if (!torqued.isEmpty()) {
            members.put(
                    "torqued",
                    torqued.stream().map(ScenarioWriter::quoted).collect(Collectors.joining(", ", "[", "]")));
        }
        if (!papers.isEmpty()) {
            members.put(
                    "papers",
                    papers.entrySet().stream()
                            .map(paper -> "{\"what\": " + ScenarioWriter.quoted(paper.getKey()) + ", \"until\": "
                                    + ScenarioWriter.quoted(paper.getValue().toString()) + "}")
                            .collect(Collectors.joining(", ", "[", "]")));
        }
        corrects.ifPresent(number -> members.put("corrects", Integer.toString(number)));
        return object(members);
    }

    private Optional<String> measuredJson() {
        Map<String, String> members = new LinkedHashMap<>();
        corners(measured.rideHeights()).ifPresent(all -> members.put("rideHeights", all));
        corners(measured.cornerWeights()).ifPresent(all -> members.put("cornerWeights", all));
        if (!measured.other().isEmpty()) {
            Map<String, String> other = new LinkedHashMap<>();
            measured.other().forEach((what, value) -> other.put(what, ScenarioWriter.quoted(value)));
            members.put("other", object(other));
        }
        return members.isEmpty() ? Optional.empty() : Optional.of(object(members));
    }

    private static Optional<String> corners(Map<Wheel, Quantity> given) {
        Map<String, String> members = new LinkedHashMap<>();
        for (Wheel wheel : Wheel.values()) {
            Quantity value = given.get(wheel);
            if (value != null) {
                members.put(wheel.key(), quoted(value));
            }
        }
        return members.isEmpty() ? Optional.empty() : Optional.of(object(members));
    }

    private static String quoted(Quantity value) {
        return ScenarioWriter.quoted(value.text().strip());
    }

    private static String object(Map<String, String> members) {
        return members.entrySet().stream()
                .map(member -> ScenarioWriter.quoted(member.getKey()) + ": " + member.getValue())
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /** A scenario's text with it behind the last entry of its book; nothing else of it changes. */
    public String behind(String text) {
        return ScenarioWriter.addToBook(text, json());
    }

    /**
     * The same, looked through before and after.
     *
     * @throws Refused where the file would be broken by it, or is
     */
    public String in(String file, String text) {
        List<Problem> before = ScenarioReader.read(file, text).problems();
        if (!before.isEmpty()) {
            throw new Refused("the file has to be mended first: " + before.get(0));
        }
        String added = behind(text);
        List<Problem> problems = ScenarioReader.read(file, added).problems();
        if (!problems.isEmpty()) {
            String where = problems.get(0).where();
            throw new Refused(where.substring(where.lastIndexOf('.') + 1) + " "
                    + problems.get(0).what());
        }
        return added;
    }

    /** Writes it into a file as it stands by now, the version before kept beside it. */
    public void writeInto(Path file) throws IOException {
        ScenarioFile.change(file, now -> in(file.toString(), now));
    }
}
