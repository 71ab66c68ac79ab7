package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Progress;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class WorkerTest {
    /** Stands still unless work turns it, ns. */
    private final AtomicLong clock = new AtomicLong();

    @Test
    void theNewestQuestionIsAlwaysAnsweredAndOlderOnesThatWaitedAreForgotten() throws InterruptedException {
        List<Integer> answered = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch busy = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        CountDownLatch last = new CountDownLatch(1);
        try (Worker<Integer> worker = new Worker<>(
                "test",
                0,
                (question, progress) -> {
                    answered.add(question);
                    busy.countDown();
                    await(go);
                    if (question == 1000) {
                        last.countDown();
                    }
                },
                share -> {})) {
            worker.ask(0);
            busy.await();
            for (int i = 1; i <= 1000; i++) {
                worker.ask(i);
            }
            go.countDown();
            last.await();
        }
        assertThat(answered).containsExactly(0, 1000);
    }

    @Test
    void longWorkSeesThatItIsNoLongerWanted() throws InterruptedException {
        CountDownLatch busy = new CountDownLatch(1);
        CountDownLatch ended = new CountDownLatch(1);
        Worker<String> worker = new Worker<>(
                "test",
                0,
                (question, progress) -> {
                    busy.countDown();
                    while (!progress.isCancelled()) {
                        Thread.onSpinWait();
                    }
                    ended.countDown();
                },
                share -> {});
        worker.ask("long");
        busy.await();
        worker.cancel();
        assertThat(ended.await(30, TimeUnit.SECONDS)).isTrue();
        worker.close();
    }

    @Test
    void whoWaitsForCalmBeginsWithTheLastOfARush() throws InterruptedException {
        List<Integer> answered = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch last = new CountDownLatch(1);
        try (Worker<Integer> worker = new Worker<>(
                "test",
                100,
                (question, progress) -> {
                    answered.add(question);
                    if (question == 1000) {
                        last.countDown();
                    }
                },
                share -> {})) {
            for (int i = 1; i <= 1000; i++) {
                worker.ask(i);
            }
            last.await();
        }
        assertThat(answered).endsWith(1000).hasSizeLessThan(1000);
    }

    /** Work that takes so many tenths of a second, and looks at each whether it is still wanted. */
    private void take(int tenths, Progress progress) {
        for (int i = 0; i < tenths; i++) {
            clock.addAndGet(100_000_000);
            progress.goOn();
        }
    }

    /** Asks 0; each work asks the next number as it begins, as a drag does, and takes so long. What is finished of those. */
    private List<Integer> finished(int tenths, int asked) throws InterruptedException {
        List<Integer> finished = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch last = new CountDownLatch(1);
        AtomicReference<Worker<Integer>> self = new AtomicReference<>();
        try (Worker<Integer> worker = new Worker<>(
                "test",
                0,
                (question, progress) -> {
                    if (question < asked) {
                        self.get().ask(question + 1);
                    }
                    take(tenths, progress);
                    finished.add(question);
                    if (question == asked) {
                        last.countDown();
                    }
                },
                share -> {},
                clock::get)) {
            self.set(worker);
            worker.ask(0);
            last.await();
        }
        return finished;
    }

    @Test
    void shortWorkIsFinishedWhateverIsAskedMeanwhile() throws InterruptedException {
        assertThat(finished(3, 5)).containsExactly(0, 1, 2, 3, 4, 5);
    }

    @Test
    void longWorkIsGivenUpForSomethingNewerButNotForEver() throws InterruptedException {
        // A second of work: given up after 0.3 s, then after 0.6 s; the third may take 1.2 s.
        assertThat(finished(10, 8)).containsExactly(2, 5, 8);
        assertThat(finished(100, 2)).containsExactly(2);
    }

    @Test
    void whatIsAskedAgainWhileItIsWorkedOnIsGoneOnWith() throws InterruptedException {
        List<Integer> begun = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch finished = new CountDownLatch(1);
        AtomicReference<Worker<Integer>> self = new AtomicReference<>();
        try (Worker<Integer> worker = new Worker<>(
                "test",
                0,
                (question, progress) -> {
                    begun.add(question);
                    if (question == 1000) {
                        self.get().ask(1);
                        self.get().ask(1000); // there and back
                        take(50, progress);
                        self.get().ask(2);
                    } else {
                        finished.countDown();
                    }
                },
                share -> {},
                clock::get)) {
            self.set(worker);
            worker.ask(1000);
            finished.await();
        }
        assertThat(begun).containsExactly(1000, 2);
    }

    @Test
    void progressNeverGoesBackAndComesInStepsThatAreSeen() throws InterruptedException {
        List<Double> told = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch done = new CountDownLatch(1);
        try (Worker<Integer> worker = new Worker<>(
                "test",
                0,
                (question, progress) -> {
                    for (int i = 0; i < 10_000; i++) {
                        progress.at((i % 2 == 0 ? i : i - 500) / 10_000.0);
                    }
                    done.countDown();
                },
                told::add)) {
            worker.ask(1);
            done.await();
        }
        assertThat(told).isSorted().hasSizeBetween(90, 101);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
