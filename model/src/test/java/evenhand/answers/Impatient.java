package evenhand.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/** Someone who waits for long work, looks at the clock so many times, and then does not want it any more. */
public final class Impatient implements Progress {
    private final int patience;
    private final AtomicInteger looks = new AtomicInteger();
    private double highest;

    private Impatient(int patience) {
        this.patience = patience;
    }

    @Override
    public boolean isCancelled() {
        return looks.incrementAndGet() > patience;
    }

    @Override
    public synchronized void at(double share) {
        assertThat(share).isBetween(0.0, 1 + 1e-9);
        highest = Math.max(highest, share);
    }

    private synchronized double highest() {
        return highest;
    }

    /**
     * Long work can be watched and stopped: watched it gives the same as with nobody waiting and comes to its end; given up early,
     * in the middle or late it gives nothing, and no thread goes on with it.
     */
    public static void mayStop(Function<Progress, ?> work) throws InterruptedException {
        Object answer = work.apply(NONE);
        Impatient patient = new Impatient(Integer.MAX_VALUE);
        assertThat(work.apply(patient)).isEqualTo(answer);
        assertThat(patient.highest()).isGreaterThan(0.8);
        int all = patient.looks.get();
        for (int patience : new int[] {0, 1, all / 3, all - 2}) {
            Impatient gone = new Impatient(patience);
            assertThatThrownBy(() -> work.apply(gone))
                    .as("given up after %d of %d looks", patience, all)
                    .isInstanceOf(CancellationException.class);
            int looks = gone.looks.get();
            Thread.sleep(50);
            assertThat(gone.looks.get()).isEqualTo(looks);
        }
    }
}
