package evenhand.advice;

import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.quantity.Unit;
import org.junit.jupiter.api.Test;

class JustFeltTest {
    private static double least(Judged judged, double now) {
        Unit unit = judged.criterion().unit();
        return unit.fromSi(JustFelt.least(judged, unit.toSi(now)));
    }

    @Test
    void aTenthOfWhatThereIsCanBeFeltAndNoLessOfANeutralCar() {
        Judged near = judged(Criterion.NEAR_UNDERSTEER);
        assertThat(least(near, 20)).isCloseTo(2, within(1e-9));
        assertThat(least(near, -20)).isCloseTo(2, within(1e-9));
        assertThat(least(near, 0.5)).isCloseTo(0.3, within(1e-9));
        assertThat(least(judged(Criterion.UNDERSTEER, 0.5), 0)).isCloseTo(0.3, within(1e-9));
        assertThat(least(judged(Criterion.SEAT_COMFORT), 0.6)).isCloseTo(0.06, within(1e-9));
        assertThat(least(judged(Criterion.LEAN, 0.5), 0.1)).isCloseTo(0.05, within(1e-9));
    }
}
