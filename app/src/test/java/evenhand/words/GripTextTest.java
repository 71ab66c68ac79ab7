package evenhand.words;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Criterion;
import org.junit.jupiter.api.Test;

/** A ratio that grows beyond per cent. */
class GripTextTest {
    @Test
    void oneEndThatWorksTwiceAsHardIsToldByTimes() {
        assertThat(GripText.times(3.879)).contains("4.9 times");
        assertThat(GripText.times(1)).contains("2.0 times");
        assertThat(GripText.times(0.999)).isEmpty();
        assertThat(GripText.times(-0.8)).isEmpty();
    }

    @Test
    void onlyGripIsToldSo() {
        assertThat(GripText.times(Criterion.GRIP_BALANCE, 3)).contains("4.0 times");
        assertThat(GripText.times(Criterion.LIMIT, 3)).isEmpty();
    }
}
