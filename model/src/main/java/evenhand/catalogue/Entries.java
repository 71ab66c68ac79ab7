package evenhand.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * An object as a person gave it, by keys: immutable, and the same tree for reading, changing and comparing.
 *
 * @param kind the word that says its kind, for objects of several kinds
 * @param given in the person's order; the word of the kind is not among them
 */
public record Entries(Optional<String> kind, Map<String, Entry> given) implements Entry {
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
        return new Entries(kind, changed);
    }
}
