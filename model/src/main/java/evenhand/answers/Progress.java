package evenhand.answers;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/**
 * Whoever waits for long work: he hears how far it has come, and may no longer want it. He is told and asked between two cars,
 * from any thread; what comes out does not depend on him.
 *
 * <p>Work that is no longer wanted gives no answer. It ends by a {@link CancellationException}, and only when none of its threads
 * works any more.
 */
@FunctionalInterface
public interface Progress {
    /** Nobody waits; the work is done all the same. */
    Progress NONE = share -> {};

    /** How much of it is done, from 0 to 1. */
    void at(double share);

    /** Whether the work is no longer wanted; once it is not, it stays so. */
    default boolean isCancelled() {
        return false;
    }

    /**
     * Goes on, if the work is still wanted.
     *
     * @throws CancellationException if it is not
     */
    default void goOn() {
        if (isCancelled()) {
            throw new CancellationException("no longer wanted");
        }
    }

    /** What a part of the work tells, which leads the whole from one share to another. */
    default Progress part(double from, double to) {
        Progress whole = this;
        return new Progress() {
            @Override
            public void at(double share) {
                whole.at(from + share * (to - from));
            }

            @Override
            public boolean isCancelled() {
                return whole.isCancelled();
            }
        };
    }

    /**
     * Does something with each of many things at once, and gathers what comes out in their order.
     *
     * @param work may itself end by a {@link CancellationException}
     * @throws CancellationException if it is no longer wanted, after the last thread has stopped
     */
    default <T, R> List<R> each(List<T> things, Function<? super T, ? extends R> work) {
        AtomicInteger done = new AtomicInteger();
        List<Optional<R>> all = things.parallelStream()
                .map(thing -> {
                    try {
                        goOn();
                        Optional<R> one = Optional.of(work.apply(thing));
                        at((double) done.incrementAndGet() / things.size());
                        return one;
                    } catch (CancellationException stopped) {
                        return Optional.<R>empty();
                    }
                })
                .toList();
        goOn();
        return all.stream()
                .map(one -> one.orElseThrow(() -> new CancellationException("no longer wanted")))
                .toList();
    }
}
