package evenhand.scenario;

import evenhand.quantity.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;

/**
 * The book of a car: what was done to it, day by day, and what comes due of it. What an entry says counts until a later one corrects
 * it, which then stands in its place.
 *
 * @param entries in the order that they were written in; the first is number 1
 */
public record Book(List<BookEntry> entries) {
    public static final Book EMPTY = new Book(List.of());

    /** A paper is soon due within so many days. */
    private static final long SOON_DAYS = 30;

    /** A torque is soon due within this part of the way to its re-check. */
    private static final double SOON_WAY = 0.2;

    /** Tightened again after this part of the way, that was the re-check. */
    private static final double RECHECKED = 0.8;

    public Book {
        entries = List.copyOf(entries);
    }

    /** How urgent something is. */
    public enum Urgency {
        /** Past its day, or further than its way. */
        OVERDUE,
        SOON,
        LATER,
        /** Nothing in the book says that it was done. */
        NEVER_DONE,
        /** No distance says when. */
        UNKNOWN
    }

    /**
     * Something that is to be done again.
     *
     * @param what torque or paper
     * @param entry number of the entry that it comes from, 0 of none
     * @param until last day of a paper
     * @param atDistance at which a torque is to be checked again, m
     * @param toGo until then, m; below zero it is past
     */
    public record Due(
            String what,
            Urgency urgency,
            int entry,
            Optional<LocalDate> until,
            OptionalDouble atDistance,
            OptionalDouble toGo) {}

    /** Number of the entry that corrects another, the last where there are several. */
    public OptionalInt correctedBy(int number) {
        Integer by = corrections().get(number);
        return by == null ? OptionalInt.empty() : OptionalInt.of(by);
    }

    /** Who is corrected, and by whom. */
    public Map<Integer, Integer> corrections() {
        Map<Integer, Integer> by = new HashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).corrects().isPresent()) {
                by.put(entries.get(i).corrects().getAsInt(), i + 1);
            }
        }
        return by;
    }

    /** The greatest distance of what counts, m. */
    public OptionalDouble distance() {
        Map<Integer, Integer> corrections = corrections();
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < entries.size(); i++) {
            if (!corrections.containsKey(i + 1)) {
                greatest = Math.max(
                        greatest, entries.get(i).distance().map(Quantity::si).orElse(greatest));
            }
        }
        return Double.isFinite(greatest) ? OptionalDouble.of(greatest) : OptionalDouble.empty();
    }

    /** The latest entry that counts in which this was measured; nothing where none has it. */
    public Optional<BookEntry> lastMeasured(Predicate<BookEntry.Measured> which) {
        Map<Integer, Integer> corrections = corrections();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (!corrections.containsKey(i + 1) && which.test(entries.get(i).measured())) {
                return Optional.of(entries.get(i));
            }
        }
        return Optional.empty();
    }

    /**
     * What is to be done again, as it stands on a day, the most urgent first: each paper by its latest entry, and each torque that has a
     * way to its re-check.
     */
    public List<Due> due(List<Torque> torques, LocalDate on) {
        List<Due> all = new ArrayList<>(papers(on));
        for (Torque torque : torques) {
            recheck(torque).ifPresent(all::add);
        }
        all.sort((one, other) -> one.urgency().compareTo(other.urgency()));
        return all;
    }

    private List<Due> papers(LocalDate on) {
        Map<Integer, Integer> corrections = corrections();
        Map<String, Due> latest = new LinkedHashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            if (corrections.containsKey(i + 1)) {
                continue;
            }
            for (BookEntry.Paper paper : entries.get(i).papers()) {
                Urgency urgency = paper.until().isBefore(on)
                        ? Urgency.OVERDUE
                        : paper.until().minusDays(SOON_DAYS).isAfter(on) ? Urgency.LATER : Urgency.SOON;
                latest.put(
                        paper.what(),
                        new Due(
                                paper.what(),
                                urgency,
                                i + 1,
                                Optional.of(paper.until()),
                                OptionalDouble.empty(),
                                OptionalDouble.empty()));
            }
        }
        return List.copyOf(latest.values());
    }

    /** Nothing where it was tightened again after most of the way: that was its re-check. */
    private Optional<Due> recheck(Torque torque) {
        if (torque.recheckAfter().isEmpty()) {
            return Optional.empty();
        }
        double way = torque.recheckAfter().get().si();
        Map<Integer, Integer> corrections = corrections();
        int last = 0;
        OptionalDouble at = OptionalDouble.empty();
        boolean rechecked = false;
        for (int i = 0; i < entries.size(); i++) {
            BookEntry entry = entries.get(i);
            if (corrections.containsKey(i + 1) || !entry.torqued().contains(torque.what())) {
                continue;
            }
            OptionalDouble here = entry.distance().isPresent()
                    ? OptionalDouble.of(entry.distance().get().si())
                    : OptionalDouble.empty();
            rechecked = last > 0
                    && at.isPresent()
                    && here.isPresent()
                    && here.getAsDouble() - at.getAsDouble() >= RECHECKED * way;
            last = i + 1;
            at = here;
        }
        if (rechecked) {
            return Optional.empty();
        }
        if (last == 0) {
            return Optional.of(due(torque, Urgency.NEVER_DONE, 0, OptionalDouble.empty(), OptionalDouble.empty()));
        }
        OptionalDouble now = distance();
        if (at.isEmpty() || now.isEmpty()) {
            return Optional.of(due(torque, Urgency.UNKNOWN, last, OptionalDouble.empty(), OptionalDouble.empty()));
        }
        double then = at.getAsDouble() + way;
        double toGo = then - now.getAsDouble();
        Urgency urgency = toGo <= 0 ? Urgency.OVERDUE : toGo <= SOON_WAY * way ? Urgency.SOON : Urgency.LATER;
        return Optional.of(due(torque, urgency, last, OptionalDouble.of(then), OptionalDouble.of(toGo)));
    }

    private static Due due(Torque torque, Urgency urgency, int entry, OptionalDouble at, OptionalDouble toGo) {
        return new Due(torque.what(), urgency, entry, Optional.empty(), at, toGo);
    }
}
