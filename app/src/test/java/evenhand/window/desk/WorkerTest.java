package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class WorkerTest {
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

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
