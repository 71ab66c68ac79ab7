package evenhand.words.owner;

import evenhand.catalogue.Catalogue.Difference;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.words.ChangeWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What was changed about a car, part by part, in one system of units. */
public final class ChangedWords {
    /** What one can take into one's hand or read off the part, the most telling first; the rest follows from the part. */
    private static final List<String> TELLING = List.of(
            "size",
            "kind",
            "rate",
            "rollStiffness",
            "diameter",
            "biasRatio",
            "height",
            "lowered",
            "gap",
            "setting",
            "pressure",
            "camber",
            "toe",
            "longer",
            "up",
            "out");

    /** So many values of one part are read. */
    private static final int MOST = 3;

    private static final int DIGITS = 4;

    private ChangedWords() {}

    /** What is changed: "rear spring", "front ride height". */
    public static String part(String path) {
        if (path.endsWith(".lowered")) {
            return path.substring(0, path.indexOf('.')) + " ride height";
        }
        if (path.contains(",")) {
            return "several parts together";
        }
        return ChangeWords.name(path);
    }

    /** "rate 25 → 32 N/mm", a line for each value that is worth one. */
    public static List<String> values(String part, List<Difference> differences, Units units) {
        Map<String, Sides> all = new LinkedHashMap<>();
        for (Difference difference : differences) {
            leaves(difference.path(), difference.from(), all, true);
            leaves(difference.path(), difference.to(), all, false);
        }
        List<Map.Entry<String, Sides>> changed = all.entrySet().stream()
                .filter(one -> !one.getValue()
                        .said(one.getValue().from, units)
                        .equals(one.getValue().said(one.getValue().to, units)))
                .toList();
        List<Map.Entry<String, Sides>> telling = changed.stream()
                .filter(one -> TELLING.contains(key(one.getKey())))
                .sorted(Comparator.comparingInt(one -> TELLING.indexOf(key(one.getKey()))))
                .limit(MOST)
                .toList();
        Set<String> lines = new LinkedHashSet<>();
        for (Map.Entry<String, Sides> one :
                telling.isEmpty() ? changed.stream().limit(MOST).toList() : telling) {
            lines.add(line(part, one.getKey(), one.getValue(), units));
        }
        return List.copyOf(lines);
    }

    private static void leaves(String path, Optional<Entry> entry, Map<String, Sides> all, boolean before) {
        if (entry.isPresent() && entry.get() instanceof Entries group) {
            group.kind()
                    .ifPresent(kind -> all.computeIfAbsent(path + ".kind", any -> new Sides())
                            .set(new Entry.Word(kind), before));
            group.given().forEach((key, one) -> leaves(path + "." + key, Optional.of(one), all, before));
            return;
        }
        if (entry.isPresent()) {
            all.computeIfAbsent(path, any -> new Sides()).set(entry.get(), before);
        }
    }

    /** A value before and after. */
    private static final class Sides {
        private Optional<Entry> from = Optional.empty();
        private Optional<Entry> to = Optional.empty();

        void set(Entry entry, boolean before) {
            if (before) {
                from = Optional.of(entry);
            } else {
                to = Optional.of(entry);
            }
        }

        String said(Optional<Entry> entry, Units units) {
            return entry.map(one -> one instanceof Entry.Measured measured
                            ? shown(measured.quantity(), units)
                            : InPrint.given(one.text()))
                    .orElse(ChangeWords.NONE);
        }
    }

    private static String key(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    private static String line(String part, String path, Sides sides, Units units) {
        String from = sides.said(sides.from, units);
        String to = sides.said(sides.to, units);
        if (path.endsWith(".lowered")) {
            return lowered(sides, units);
        }
        String leaf = path.startsWith(part + ".") ? ChangeWords.name(path.substring(part.length() + 1)) : "";
        String head = leaf.isEmpty() ? "" : leaf + " ";
        if (sides.to.orElse(null) instanceof Entry.Drawn || sides.from.orElse(null) instanceof Entry.Drawn) {
            return "another " + (leaf.isEmpty() ? "curve" : leaf);
        }
        return head + shortened(from, to) + " → " + to;
    }

    private static String lowered(Sides sides, Units units) {
        double from = sides.from.orElse(null) instanceof Entry.Measured one
                ? one.quantity().si()
                : 0;
        double to = sides.to.orElse(null) instanceof Entry.Measured one
                ? one.quantity().si()
                : 0;
        double down = to - from;
        return length(Math.abs(down), units) + (down < 0 ? " higher" : " lower");
    }

    private static String length(double metres, Units units) {
        Unit unit = units.of(Dimension.LENGTH);
        return Numbers.plain(unit.fromSi(metres), units == Units.METRIC ? 1 : 2) + " " + unit.symbol();
    }

    /** Without its unit where the other has the same. */
    private static String shortened(String from, String to) {
        int space = to.indexOf(' ');
        String unit = space < 0 ? "" : to.substring(space);
        return !unit.isEmpty() && from.matches("[−0-9.]+" + java.util.regex.Pattern.quote(unit))
                ? from.substring(0, from.length() - unit.length())
                : from;
    }

    private static String shown(Quantity quantity, Units units) {
        Dimension dimension = quantity.dimension();
        Unit unit = dimension == Dimension.RATIO ? dimension.metric() : units.of(dimension);
        String symbol = InPrint.symbol(unit);
        return Numbers.significant(unit.fromSi(quantity.si()), DIGITS) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /** The notes of the steps that led from one set-up to the other, in their order. */
    public static List<String> steps(List<String> notes) {
        List<String> steps = new ArrayList<>();
        for (String note : notes) {
            steps.add(note.endsWith(".") || note.endsWith("!") || note.endsWith("?") ? note : note + ".");
        }
        return steps;
    }
}
