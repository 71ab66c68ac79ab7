package evenhand.answers;

import static evenhand.answers.Trials.aim;
import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.quantity.Unit;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AimTest {
    private static final Judged LIMIT = judged(Criterion.LIMIT);

    @Test
    void aBoundIsMetOnItsSideAndAnExactAimOnBoth() {
        double value = Unit.of("g").toSi(0.8);
        Aim most = aim(LIMIT, Aim.Sense.AT_MOST, 0.8);
        Aim least = aim(LIMIT, Aim.Sense.AT_LEAST, 0.8);
        Aim exactly = aim(LIMIT, Aim.Sense.EXACTLY, 0.8);
        assertThat(most.met(value - 1)).isTrue();
        assertThat(most.met(value + 1)).isFalse();
        assertThat(least.met(value + 1)).isTrue();
        assertThat(least.met(value - 1)).isFalse();
        assertThat(exactly.met(value)).isTrue();
        assertThat(exactly.met(value + 0.01)).isFalse();
        assertThat(exactly.nearlyMet(value + 0.01)).isTrue();
        assertThat(most.shortfall(value + 1)).isCloseTo(-1, within(1e-12));
        assertThat(least.shortfall(value + 1)).isZero();
    }

    @Test
    void aimsContradictWhereNoNumberMeetsBoth() {
        Aim most = aim(LIMIT, Aim.Sense.AT_MOST, 0.8);
        assertThat(most.contradicts(aim(LIMIT, Aim.Sense.AT_LEAST, 0.9))).isTrue();
        assertThat(aim(LIMIT, Aim.Sense.AT_LEAST, 0.9).contradicts(most)).isTrue();
        assertThat(most.contradicts(aim(LIMIT, Aim.Sense.AT_LEAST, 0.8))).isFalse();
        assertThat(most.contradicts(aim(LIMIT, Aim.Sense.AT_MOST, 0.7))).isFalse();
        assertThat(most.contradicts(aim(LIMIT, Aim.Sense.EXACTLY, 0.7))).isFalse();
        assertThat(most.contradicts(aim(LIMIT, Aim.Sense.EXACTLY, 0.81))).isTrue();
        assertThat(aim(LIMIT, Aim.Sense.EXACTLY, 0.7).contradicts(aim(LIMIT, Aim.Sense.EXACTLY, 0.71)))
                .isTrue();
        Aim brisk = aim(judged(Criterion.UNDERSTEER, 0.5), Aim.Sense.AT_MOST, 0);
        Aim gentle = aim(judged(Criterion.UNDERSTEER, 0.2), Aim.Sense.AT_LEAST, 1);
        assertThat(brisk.contradicts(gentle)).isFalse();
    }

    @Test
    void aFigureAndItsPaceGoTogether() {
        assertThatThrownBy(() -> new Judged(Criterion.LIMIT, OptionalDouble.of(5)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Judged(Criterion.UNDERSTEER, OptionalDouble.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Aim(LIMIT, Aim.Sense.EXACTLY, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
