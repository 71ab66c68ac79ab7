package evenhand.words.owner;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No word is stronger than its doubt, and no digit finer. */
class SurenessTest {
    private static final Unit DEG_PER_G = Unit.of("deg/g");
    private static final double HALF_G = 0.5 * 9.80665;
    private static final Judged PUSH = new Judged(Criterion.UNDERSTEER, OptionalDouble.of(HALF_G));

    private static OptionalDouble si(double value) {
        return OptionalDouble.of(DEG_PER_G.toSi(value));
    }

    /** Push at half a g, each figure and the difference in doubt by so much, deg/g. */
    private static Known push(double before, double now, double doubt) {
        return new Known(PUSH, si(before), si(now), si(doubt), si(doubt), si(doubt));
    }

    @ParameterizedTest
    @CsvSource({
        "6.0, 4.4, 0.4, 'It pushes less, by 1.6 ± 0.4 deg/g.'",
        "4.4, 6.0, 0.4, 'It pushes more, by 1.6 ± 0.4 deg/g.'",
        "6.0, 4.4, 2.0, 'It probably pushes less, by 1.6 ± 2.0 deg/g.'",
        "6.0, 4.4, 4.0, Whether it pushes less is open.",
        "4.40, 4.42, 0.4, As before."
    })
    void aDifferenceIsSaidAsSurelyAsItIs(double before, double now, double doubt, String said) {
        assertThat(AskedWords.figure(push(before, now, doubt), Optional.empty(), Units.METRIC))
                .isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "4.0, 0.5, Met.",
        "4.7, 0.5, Probably met.",
        "4.9, 0.5, Met by so little that it is open.",
        "5.1, 0.5, 'Missed by so little that it is open, but nearer than before.'",
        "5.3, 0.5, 'Probably not met, but nearer than before.'",
        "5.8, 0.1, 'Not met, but nearer than before.'",
        "6.5, 0.1, 'Not met, and further off than before.'",
        "6.01, 0.1, 'Not met, about as before.'"
    })
    void aWishIsMetAsSurelyAsItIs(double now, double doubt, String said) {
        Aim atMostFive = new Aim(PUSH, Aim.Sense.AT_MOST, DEG_PER_G.toSi(5));
        assertThat(AskedWords.figure(push(6, now, doubt), Optional.of(atMostFive), Units.METRIC))
                .isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "1.337, 0.888, 1.3 ± 0.9 deg/g",
        "14.32, 3.4, 14 ± 3 deg/g",
        "14.32, 2.6, 14.3 ± 2.6 deg/g",
        "1.337, 0.0911, 1.34 ± 0.09 deg/g",
        "1.337, 0.0, 1.34 deg/g",
        "-0.4, 12.3, '0 ± 12 deg/g'"
    })
    void digitsGoAsFarAsTheDoubtLeavesThemAMeaning(double value, double doubt, String shown) {
        assertThat(Rounded.value(Criterion.UNDERSTEER, si(value).getAsDouble(), si(doubt), Units.METRIC))
                .isEqualTo(shown);
    }

    @Test
    void whatTheSumsCannotTellTheDoubtOfIsOpen() {
        assertThat(Sureness.of(5, OptionalDouble.empty())).isEqualTo(Sureness.OPEN);
        assertThat(Sureness.SURE.and(Sureness.LIKELY)).isEqualTo(Sureness.LIKELY);
    }
}
