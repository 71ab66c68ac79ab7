package evenhand.geometry;

import java.util.Optional;
import java.util.function.Supplier;

/** Something that takes its time to find: looked for when it is first asked for, by whichever thread asks first, and kept. */
final class Once<T> implements Supplier<T> {
    private Supplier<? extends T> search;
    private Optional<T> found = Optional.empty();

    Once(Supplier<? extends T> search) {
        this.search = search;
    }

    @Override
    public synchronized T get() {
        if (found.isEmpty()) {
            T is = search.get();
            found = Optional.of(is);
            search = () -> is; // what was needed to find it is let go
        }
        return found.get();
    }
}
