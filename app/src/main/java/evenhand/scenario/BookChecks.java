package evenhand.scenario;

import evenhand.catalogue.Nearest;
import evenhand.quantity.Quantity;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;

/** What is wrong with the entries of a book beside one another. */
final class BookChecks {
    static final String KEY = "log";

    private BookChecks() {}

    /** Names in the book that the file does not have, each once: a set-up that went is no mistake, a slip is. */
    static void slips(ShopRecord record, List<String> setups, BiConsumer<String, String> warn) {
        List<String> torques = record.torques().stream().map(Torque::what).toList();
        Set<String> seen = new HashSet<>();
        List<BookEntry> entries = record.book().entries();
        for (int i = 0; i < entries.size(); i++) {
            String path = KEY + "[" + i + "]";
            entries.get(i).setup().ifPresent(name -> slip(path + ".setup", "set-up", name, setups, seen, warn));
            for (String what : entries.get(i).torqued()) {
                slip(path + ".torqued", "torque", what, torques, seen, warn);
            }
        }
    }

    private static void slip(
            String path,
            String kind,
            String name,
            List<String> known,
            Set<String> seen,
            BiConsumer<String, String> warn) {
        if (!known.contains(name) && seen.add(kind + name)) {
            String nearest = Nearest.to(name, known);
            warn.accept(
                    path,
                    "names the " + kind + " \"" + JsonReader.shown(name) + "\", which the file does not have"
                            + (Nearest.isSlip(name, nearest)
                                    ? "; is \"" + JsonReader.shown(nearest) + "\" meant?"
                                    : ""));
        }
    }

    /** Reports each by its path. An entry that is corrected, and what corrects it, tell of another day and way than their place. */
    static void of(Book book, BiConsumer<String, String> report) {
        Map<Integer, Integer> corrections = book.corrections();
        Optional<LocalDate> before = Optional.empty();
        Optional<Quantity> farthest = Optional.empty();
        for (int i = 0; i < book.entries().size(); i++) {
            BookEntry entry = book.entries().get(i);
            String path = KEY + "[" + i + "]";
            if (entry.corrects().isPresent()) {
                int corrected = entry.corrects().getAsInt();
                if (corrected < 1 || corrected > i) {
                    report.accept(
                            path + ".corrects",
                            i == 0
                                    ? "corrects an entry before it, and there is none; take it out"
                                    : "must be the number of an entry before it, from 1 to " + i);
                }
            }
            if (corrections.containsKey(i + 1)) {
                continue;
            }
            if (before.isPresent() && entry.date().isBefore(before.get())) {
                report.accept(
                        path + ".date",
                        "is before " + before.get()
                                + ", the day of an entry above it; entries stand in the order in which"
                                + " they were written: put the right day, or put right what is wrong by an entry with"
                                + " \"corrects\"");
            } else {
                before = Optional.of(entry.date());
            }
            if (entry.corrects().isEmpty() && entry.distance().isPresent()) {
                Quantity distance = entry.distance().get();
                if (farthest.isPresent() && distance.si() < farthest.get().si()) {
                    report.accept(
                            path + ".distance",
                            "is less than " + farthest.get().text()
                                    + ", which the car had run by an entry above it; where that one is wrong, add an entry"
                                    + " with \"corrects\"");
                } else {
                    farthest = Optional.of(distance);
                }
            }
        }
    }
}
