package evenhand.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NumbersTest {
    @Test
    void aNumberIsRoundedToItsDigitsAndHasATrueMinusSign() {
        assertThat(Numbers.fixed(-12.346, 2)).isEqualTo("−12.35");
        assertThat(Numbers.fixed(0.05, 3)).isEqualTo("0.050");
        assertThat(Numbers.fixed(1234.6, 0)).isEqualTo("1235");
    }

    @Test
    void whatRoundsToNothingHasNoSign() {
        assertThat(Numbers.fixed(-0.001, 2)).isEqualTo("0.00");
        assertThat(Numbers.signed(0.001, 2)).isEqualTo("0.00");
    }

    @Test
    void aPlainNumberHasNoZerosAtItsEnd() {
        assertThat(Numbers.plain(0.5, 3)).isEqualTo("0.5");
        assertThat(Numbers.plain(40, 1)).isEqualTo("40");
        assertThat(Numbers.plain(100, 0)).isEqualTo("100");
    }

    @Test
    void significantDigitsFollowTheSizeOfTheNumber() {
        assertThat(Numbers.significant(0.0123456, 4)).isEqualTo("0.01235");
        assertThat(Numbers.significant(210_123, 4)).isEqualTo("210123");
        assertThat(Numbers.significant(-0.6, 4)).isEqualTo("−0.6");
    }

    @Test
    void fixedAgreesWithTheFormatterOfTheLanguageToTheLastDigitOrOneBeside() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 10_000; i++) {
            double value = random.nextDouble(-1e5, 1e5);
            String ours = Numbers.fixed(value, 3).replace('−', '-');
            assertThat(Double.parseDouble(ours)).isCloseTo(value, within(0.00050001));
            assertThat(ours).hasSameSizeAs(String.format(Locale.ROOT, "%.3f", value));
        }
    }
}
