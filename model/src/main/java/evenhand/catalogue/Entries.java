package evenhand.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * An object as a person gave it, by keys: immutable, and the same tree for reading, changing and comparing.
 *
 * <p>The entries of a car may go with what its numbers are off by. Whoever takes the entries of a car so takes that very car: it is
 * built, changed, searched and doubted as it is.
 *
 * @param kind the word that says its kind, for objects of several kinds
 * @param given in the person's order; the word of the kind is not among them
 * @param off what the numbers of a whole car are instead of what stands here; nothing of its parts
 */
public record Entries(Optional<String> kind, Map<String, Entry> given, Deviation off) implements Entry {
    /** With numbers that are what they are said to be. */
    public Entries(Optional<String> kind, Map<String, Entry> given) {
        this(kind, given, Deviation.NONE);
    }

    public Entries {
        given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
    }

    @Override
    public String text() {
        return kind.orElseGet(() -> given.size() + " values");
    }

    public Optional<Entry> get(String key) {
        return Optional.ofNullable(given.get(key));
    }

    /** These entries with one of them put in its place, or taken away. */
    public Entries with(String key, Optional<Entry> entry) {
        Map<String, Entry> changed = new LinkedHashMap<>(given);
        entry.ifPresentOrElse(e -> changed.put(key, e), () -> changed.remove(key));
        return new Entries(kind, changed, off);
    }

    /** The same car with its numbers off by something else. */
    public Entries off(Deviation other) {
        return new Entries(kind, given, other);
    }
}
