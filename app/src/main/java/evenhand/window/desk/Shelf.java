package evenhand.window.desk;

import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What a person has done with the list of set-ups to see less of it.
 *
 * @param hidden names of those that were put aside
 * @param pinned names of those that stay at the top of the list, and are shown
 */
public record Shelf(Set<String> hidden, Set<String> pinned) {
    public static final Shelf EMPTY = new Shelf(Set.of(), Set.of());

    public Shelf {
        hidden = Collections.unmodifiableSet(new TreeSet<>(hidden));
        pinned = Collections.unmodifiableSet(new TreeSet<>(pinned));
    }

    Shelf hiding(String name, boolean aside) {
        return new Shelf(with(hidden, name, aside), with(pinned, name, !aside && pinned.contains(name)));
    }

    Shelf pinning(String name, boolean top) {
        return new Shelf(with(hidden, name, !top && hidden.contains(name)), with(pinned, name, top));
    }

    Shelf renamed(String from, String to) {
        UnaryOperator<String> next = name -> name.equals(from) ? to : name;
        return new Shelf(
                hidden.stream().map(next).collect(Collectors.toSet()),
                pinned.stream().map(next).collect(Collectors.toSet()));
    }

    /** Of set-ups of these names alone. */
    Shelf among(Collection<String> names) {
        return new Shelf(
                hidden.stream().filter(names::contains).collect(Collectors.toSet()),
                pinned.stream().filter(names::contains).collect(Collectors.toSet()));
    }

    private static Set<String> with(Set<String> names, String name, boolean in) {
        Set<String> next = new TreeSet<>(names);
        if (in) {
            next.add(name);
        } else {
            next.remove(name);
        }
        return next;
    }
}
