package evenhand.report;

import java.util.Optional;
import java.util.function.Supplier;

/** An answer that is worked out when it is first asked for, and then kept. For one thread. */
final class Once<T> implements Supplier<T> {
    private final Supplier<T> working;
    private Optional<T> kept = Optional.empty();

    Once(Supplier<T> working) {
        this.working = working;
    }

    @Override
    public T get() {
        if (kept.isEmpty()) {
            kept = Optional.of(working.get());
        }
        return kept.get();
    }

    /** What is known already; nothing is worked out. */
    Optional<T> known() {
        return kept;
    }
}
