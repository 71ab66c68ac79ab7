package evenhand.catalogue;

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
