package evenhand.choice;

import static java.util.stream.Collectors.joining;

import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Catalogue.Difference;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is changed at once between two cars: a single value, or several that belong together.
 *
 * @param path of the value, or what the paths have in common
 * @param from as it was written in the first car
 * @param to as it is written in the other
 */
public record Change(String path, String from, String to, List<Difference> differences) {
    /** One perch moves the load of all four wheels: one of them by itself is a car that nobody can build. */
    private static final String SHIFTED_TOGETHER = "cornerWeights";

    public Change {
        differences = List.copyOf(differences);
    }

    /** The change of a single value. */
    public static Change of(Difference difference) {
        return of(difference.path(), List.of(difference));
    }

    private static Change of(String path, List<Difference> differences) {
        if (differences.size() == 1) {
            Difference only = differences.get(0);
            Optional<String> key = onlyKey(only.from().or(only::to))
                    .filter(k -> only.from().isEmpty() || only.to().isEmpty());
            String leaf = Path.join(only.path(), key.orElse(""));
            return new Change(leaf, text(only.from()), text(only.to()), differences);
        }
        return new Change(
                path,
                texts(path, differences, Difference::fromText),
                texts(path, differences, Difference::toText),
                differences);
    }

    private static String texts(String path, List<Difference> differences, Function<Difference, String> side) {
        String before = path.isEmpty() ? "" : path + ".";
        return differences.stream()
                .map(d -> (d.path().startsWith(before) ? d.path().substring(before.length()) : d.path()) + " "
                        + side.apply(d))
                .collect(joining("; "));
    }

    /** The key of an object with a single value: a bar that is added by its roll stiffness is one value more. */
    private static Optional<String> onlyKey(Optional<Entry> entry) {
        return entry.isPresent()
                        && entry.get() instanceof Entries entries
                        && entries.kind().isEmpty()
                        && entries.given().size() == 1
                ? Optional.of(entries.given().keySet().iterator().next())
                : Optional.empty();
    }

    private static String text(Optional<Entry> entry) {
        if (entry.isEmpty()) {
            return "none";
        }
        if (!(entry.get() instanceof Entries entries) || entries.kind().isPresent()) {
            return entry.get().text();
        }
        return entries.given().size() == 1
                ? text(Optional.of(entries.given().values().iterator().next()))
                : entries.given().entrySet().stream()
                        .map(value -> value.getKey() + " " + value.getValue().text())
                        .collect(joining("; "));
    }

    /** Several changes as one. */
    static Change together(List<Change> changes) {
        List<Difference> all = changes.stream()
                .flatMap(change -> change.differences().stream())
                .toList();
        return of(changes.stream().map(Change::path).collect(joining(", ")), all);
    }

    /** This change made to a car. */
    Entries on(Entries car) {
        Entries changed = car;
        for (Difference difference : differences) {
            changed = Catalogue.with(changed, difference);
        }
        return changed;
    }

    /**
     * The changes from one car to another. Values that make a car only together, such as corner weights and the mass that they
     * stand in for, count as one change, and so do corner weights among themselves; so do related values where there are more changes than {@link Shapley#MOST}.
     */
    public static List<Change> between(Entries from, Entries to) {
        List<Difference> differences = Catalogue.differences(from, to);
        List<Difference> alone = new ArrayList<>();
        List<Difference> together = new ArrayList<>();
        for (Difference difference : differences) {
            boolean first = builds(Catalogue.with(from, difference));
            boolean last =
                    builds(Catalogue.with(to, new Difference(difference.path(), difference.to(), difference.from())));
            (first && last ? alone : together).add(difference);
        }
        List<Change> changes = new ArrayList<>();
        if (!together.isEmpty()) {
            String paths = together.stream().map(Difference::path).collect(joining(", "));
            changes.add(of(paths, together));
        }
        int room = Shapley.MOST - changes.size();
        Map<String, List<Difference>> groups = grouped(alone, Integer.MAX_VALUE);
        for (int depth = 3; groups.size() > room && depth >= 0; depth--) {
            groups = grouped(alone, depth);
        }
        groups.forEach((path, group) -> changes.add(of(path, group)));
        return List.copyOf(changes);
    }

    private static boolean builds(Entries car) {
        return Catalogue.build(car).value().isPresent();
    }

    /** Differences by the first keys of their paths. */
    private static Map<String, List<Difference>> grouped(List<Difference> differences, int depth) {
        Map<String, List<Difference>> groups = new LinkedHashMap<>();
        for (Difference difference : differences) {
            String[] keys = difference.path().split("\\.", -1);
            int kept = keys[0].equals(SHIFTED_TOGETHER) ? 1 : depth;
            String path = String.join(".", List.of(keys).subList(0, Math.min(kept, keys.length)));
            groups.computeIfAbsent(path, key -> new ArrayList<>()).add(difference);
        }
        return groups;
    }
}
