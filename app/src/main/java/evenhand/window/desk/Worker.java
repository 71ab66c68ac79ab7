package evenhand.window.desk;

import java.util.function.BiConsumer;
import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;

/**
 * One thread that works on what is asked, with room for one that waits, the newest. Whoever asks is never held up.
 *
 * @param <Q> what is asked
 */
public final class Worker<Q> implements AutoCloseable {
    private final BiConsumer<Q, Progress> work;
    private final DoubleConsumer progress;
    private final long calm;
    private final Object door = new Object();
    private @Nullable Q waiting;
    private boolean closed;
    private volatile boolean cancelled;

    /**
     * @param calm begins only when nothing more was asked for so long, ms
     * @param work done on the worker's own thread
     * @param progress is told how much of it is done, on that thread
     */
    public Worker(String name, long calm, BiConsumer<Q, Progress> work, DoubleConsumer progress) {
        this.calm = calm;
        this.work = work;
        this.progress = progress;
        Thread thread = new Thread(this::run, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** Asks; what waited before is forgotten. */
    public void ask(Q question) {
        synchronized (door) {
            waiting = question;
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
        Progress told = new Progress() {
            @Override
            public boolean isCancelled() {
                return cancelled;
            }

            @Override
            public void at(double share) {
                progress.accept(share);
            }
        };
        try {
            for (Q next = next(); next != null; next = next()) {
                work.accept(next, told);
            }
        } catch (InterruptedException stop) {
            close();
        }
    }

    private @Nullable Q next() throws InterruptedException {
        synchronized (door) {
            while (!closed) {
                Q next = waiting;
                if (next == null) {
                    door.wait();
                } else if (stays(next)) {
                    waiting = null;
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
