package evenhand.window.desk;

import evenhand.answers.Progress;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.DoubleConsumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * One thread that works on what is asked, with room for one that waits, the newest. Whoever asks is never held up.
 *
 * <p>Short work is always finished, so that answers follow a drag. Work that has gone on for a while is given up for something
 * newer that differs. Each time in a row that this happens the next may take twice as long, so that in the end something is
 * finished however often something newer is asked.
 *
 * @param <Q> what is asked
 */
public final class Worker<Q> implements AutoCloseable {
    /** Work that takes no longer than this is not given up for something newer. */
    private static final long PATIENCE = TimeUnit.MILLISECONDS.toNanos(300);

    /** Progress is passed on when it has grown by so much. */
    private static final double NOTICEABLE = 0.01;

    private final BiFunction<Q, Progress, Runnable> work;
    private final DoubleConsumer progress;
    private final LongSupplier clock;
    private final long calm;
    private final Object door = new Object();
    private @Nullable Q waiting;
    private @Nullable Q inHand;
    private boolean closed;
    private volatile boolean cancelled;
    private long patience = PATIENCE;

    /**
     * @param calm begins only when nothing more was asked for so long, ms
     * @param work done on the worker's own thread; may end by a {@link CancellationException} when it is no longer wanted
     * @param progress is told how much of it is done, from 0 to 1 and never less than before, by any thread
     */
    public Worker(String name, long calm, BiConsumer<Q, Progress> work, DoubleConsumer progress) {
        this(name, calm, work, progress, System::nanoTime);
    }

    /**
     * The same for work whose result is delivered: by then it is no longer in hand, so that who asks for it again after he had
     * something else gets it anew.
     *
     * @param work gives what delivers its result
     */
    static <Q> Worker<Q> delivering(
            String name, long calm, BiFunction<Q, Progress, Runnable> work, DoubleConsumer progress) {
        return new Worker<>(work, name, calm, progress, System::nanoTime);
    }

    /** @param clock ns */
    Worker(String name, long calm, BiConsumer<Q, Progress> work, DoubleConsumer progress, LongSupplier clock) {
        this(
                (question, watch) -> {
                    work.accept(question, watch);
                    return () -> {};
                },
                name,
                calm,
                progress,
                clock);
    }

    private Worker(
            BiFunction<Q, Progress, Runnable> work,
            String name,
            long calm,
            DoubleConsumer progress,
            LongSupplier clock) {
        this.calm = calm;
        this.work = work;
        this.progress = progress;
        this.clock = clock;
        Thread thread = new Thread(this::run, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** Asks; what waited before is forgotten. What is in hand already is not begun again. */
    public void ask(Q question) {
        synchronized (door) {
            waiting = question.equals(inHand) && !cancelled ? null : question;
            door.notifyAll();
        }
    }

    /** What is being worked on, and what waits, is no longer wanted. */
    public void cancel() {
        synchronized (door) {
            waiting = null;
            cancelled = true;
        }
    }

    @Override
    public void close() {
        synchronized (door) {
            closed = true;
            cancelled = true;
            door.notifyAll();
        }
    }

    private void run() {
        try {
            for (Q next = next(); next != null; next = next()) {
                Watch watch = new Watch();
                try {
                    Runnable delivery = work.apply(next, watch);
                    synchronized (door) {
                        inHand = null;
                    }
                    delivery.run();
                } catch (CancellationException stopped) {
                    // Nobody waits for it any more.
                }
                patience = watch.givenUp ? 2 * patience : PATIENCE;
            }
        } catch (InterruptedException stop) {
            close();
        }
    }

    /** Watches one piece of work. */
    private final class Watch implements Progress {
        private final long begun = clock.getAsLong();
        private volatile boolean givenUp;
        private double told = Double.NEGATIVE_INFINITY;

        @Override
        public boolean isCancelled() {
            if (!cancelled && clock.getAsLong() - begun > patience) {
                synchronized (door) {
                    givenUp = waiting != null;
                    cancelled |= givenUp;
                }
            }
            return cancelled;
        }

        @Override
        public synchronized void at(double share) {
            if (share >= told + NOTICEABLE) {
                told = share;
                progress.accept(share);
            }
        }
    }

    private @Nullable Q next() throws InterruptedException {
        synchronized (door) {
            inHand = null;
            while (!closed) {
                Q next = waiting;
                if (next == null) {
                    door.wait();
                } else if (stays(next)) {
                    waiting = null;
                    inHand = next;
                    cancelled = closed;
                    return closed ? null : next;
                }
            }
            return null;
        }
    }

    /** Whether a question is still the newest after a while. */
    private boolean stays(Q question) throws InterruptedException {
        long until = System.nanoTime() + calm * 1_000_000;
        for (long left = calm; left > 0 && !closed; left = (until - System.nanoTime()) / 1_000_000) {
            door.wait(left);
            if (!isWaiting(question)) {
                return false;
            }
        }
        return isWaiting(question);
    }

    @SuppressWarnings("ReferenceEquality") // the very same, not one that asks alike
    private boolean isWaiting(Q question) {
        return waiting == question;
    }
}
