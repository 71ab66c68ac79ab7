package evenhand.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Heights that work, as they are said. */
class LowestWordsTest {
    @Test
    void aHeightIsNeverSaidLowerThanItWorks() {
        assertThat(LowestWords.down(0.01957, Units.METRIC)).isEqualTo("19.5 mm down");
        assertThat(LowestWords.down(-0.01501, Units.METRIC)).isEqualTo("15.1 mm up");
        assertThat(LowestWords.down(0.01957, Units.IMPERIAL)).isEqualTo("0.77 in down");
    }

    @Test
    void aWholeMillimetreStaysOne() {
        assertThat(LowestWords.down(0.028, Units.METRIC)).isEqualTo("28 mm down");
        assertThat(LowestWords.down(0.028 - 1e-15, Units.METRIC)).isEqualTo("28 mm down");
        assertThat(LowestWords.down(-0.014, Units.METRIC)).isEqualTo("14 mm up");
    }
}
