package evenhand.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final List<Integer> MANY = IntStream.range(0, 2000).boxed().toList();

    @Test
    void whatComesOutOfManyThingsStandsInTheirOrder() {
        assertThat(Progress.NONE.each(MANY, i -> i * i))
                .isEqualTo(MANY.stream().map(i -> i * i).toList());
        assertThat(Progress.NONE.<Integer, Integer>each(List.of(), i -> i)).isEmpty();
    }

    @Test
    void aPartLeadsTheWholeFromOneShareToAnother() {
        List<Double> told = Collections.synchronizedList(new ArrayList<>());
        Progress part = ((Progress) told::add).part(0.5, 0.75);
        part.at(0);
        part.part(0.5, 1).at(0.5);
        part.each(List.of("only"), only -> only);
        assertThat(told).containsExactly(0.5, 0.6875, 0.75);
        assertThat(told.get(2)).isCloseTo(0.75, within(1e-15));
    }

    @Test
    void workThatIsGivenUpEndsWhenItsLastThreadHasStopped() {
        AtomicBoolean unwanted = new AtomicBoolean();
        AtomicInteger working = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        Progress progress = new Progress() {
            @Override
            public void at(double share) {
                unwanted.set(true);
            }

            @Override
            public boolean isCancelled() {
                return unwanted.get();
            }
        };
        assertThatThrownBy(() -> progress.part(0, 1).each(MANY, i -> {
                    working.incrementAndGet();
                    for (int k = 0; k < 1_000_000 && !unwanted.get(); k++) {
                        Thread.onSpinWait();
                    }
                    working.decrementAndGet();
                    return done.incrementAndGet();
                }))
                .isInstanceOf(CancellationException.class);
        assertThat(working.get()).isZero();
        assertThat(done.get()).isLessThan(MANY.size() / 2);
    }

    @Test
    void aDefectInTheWorkIsNoCancelling() {
        assertThatThrownBy(() -> Progress.NONE.each(MANY, i -> 1 / (i - 7))).isInstanceOf(ArithmeticException.class);
    }
}
