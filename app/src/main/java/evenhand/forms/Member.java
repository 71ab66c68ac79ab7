package evenhand.forms;

import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BiFunction;
import java.util.function.Function;

/** One member of {@link Contents}. What it does not find in a part is left out there. */
sealed interface Member<T> {
    /** @param key with the unit that the number is in */
    record Value<T>(Function<Units, String> key, BiFunction<T, Units, OptionalDouble> reading) implements Member<T> {}

    record Whole<T>(String key, Function<T, OptionalLong> reading) implements Member<T> {}

    record Text<T>(String key, BiFunction<T, Units, Optional<String>> reading) implements Member<T> {}

    record Flag<T>(String key, Function<T, Optional<Boolean>> reading) implements Member<T> {}

    /** Numbers or texts one after another, or rows of numbers. */
    record Series<T, E>(String key, Function<T, Optional<List<E>>> reading) implements Member<T> {}

    /** @param key empty where its members stand among those around it */
    record Nested<T, P>(String key, Function<T, Optional<P>> reading, Contents<P> contents) implements Member<T> {}

    record Many<T, P>(String key, Function<T, Optional<List<P>>> reading, Contents<P> contents) implements Member<T> {}
}
