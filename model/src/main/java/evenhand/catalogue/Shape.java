package evenhand.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** An object of the file: the slots it has and what is built from them. */
public sealed interface Shape<T> {
    /** Its name, in camelCase, unique. */
    String name();

    /** The object proper, for an entry of this shape. */
    Plain<? extends T> plain(Entries entries);

    /** An object of one kind. Slots that another stands in from come before it. */
    record Plain<T>(String name, List<Slot<?>> slots, Function<Values, ? extends T> builder) implements Shape<T> {
        @Override
        public Plain<T> plain(Entries entries) {
            return this;
        }

        public Optional<Slot<?>> slot(String key) {
            for (Slot<?> slot : slots) { // no stream: asked for every number of every car
                if (slot.key().equals(key)) {
                    return Optional.of(slot);
                }
            }
            return Optional.empty();
        }
    }

    /** An object of several kinds; a word under {@code key} says which. */
    record Kinds<T>(String name, String key, String meaning, Map<String, Plain<? extends T>> kinds)
            implements Shape<T> {
        @Override
        public Plain<? extends T> plain(Entries entries) {
            Plain<? extends T> plain = kinds.get(entries.kind().orElse(""));
            if (plain == null) {
                throw new IllegalArgumentException("an entry of " + name + " without its kind");
            }
            return plain;
        }
    }

    /**
     * An object whose keys are names of the person's own, each with an object of one shape under it.
     *
     * @param meaning of each
     */
    record ByName<T>(String name, Shape<T> each, String meaning) implements Shape<Map<String, T>> {
        /** The object with the names that it has. */
        @Override
        public Plain<Map<String, T>> plain(Entries entries) {
            List<Slot<T>> slots =
                    entries.given().keySet().stream().map(this::named).toList();
            return new Plain<>(name, List.copyOf(slots), values -> {
                Map<String, T> byName = new LinkedHashMap<>();
                slots.forEach(slot -> byName.put(slot.key(), values.of(slot)));
                return Collections.unmodifiableMap(byName);
            });
        }

        /** Names that a path can hold: without dots and brackets, and without blanks at their ends. */
        public static final String PATTERN = "^[^\\s.\\[\\]]([^.\\[\\]]*[^\\s.\\[\\]])?$";

        /** What stands under a name. */
        public Slot<T> named(String own) {
            return Slot.group(own, each).means(meaning);
        }

        /** What is wrong with a name that is to be a step of a path; empty where nothing is. */
        public static Optional<String> fault(String name) {
            if (name.isBlank()) {
                return Optional.of("is no name; give it one");
            }
            return !name.matches(PATTERN)
                    ? Optional.of(
                            "is no name that a path can hold; write it without dots, brackets or blanks at its ends,"
                                    + " for example \"springTower\"")
                    : Optional.empty();
        }
    }

    static <T> Shape<T> shape(String name, Function<Values, ? extends T> builder, Slot<?>... slots) {
        return new Plain<>(name, List.of(slots), builder);
    }

    /** One of several kinds. */
    record Kind<T>(String word, Shape<? extends T> shape) {}

    static <T> Kind<T> as(String word, Shape<? extends T> shape) {
        return new Kind<>(word, shape);
    }

    @SafeVarargs
    static <T> Shape<T> kinds(String name, String key, String meaning, Kind<T>... kinds) {
        Map<String, Plain<? extends T>> byWord = new LinkedHashMap<>();
        for (Kind<T> kind : kinds) {
            if (!(kind.shape() instanceof Plain<? extends T> plain)) {
                throw new IllegalArgumentException("a kind has no kinds of its own: " + kind.word());
            }
            byWord.put(kind.word(), plain);
        }
        return new Kinds<>(name, key, meaning, byWord);
    }
}
