package evenhand.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnseenTest {
    @ParameterizedTest
    @ValueSource(
            ints = {
                0x00, 0x1B, 0x7F, 0x85, 0x9B, // controls: a terminal takes 9B for the beginning of an order
                0xAD, 0x61C, 0x180E, 0x200B, 0x200C, 0x200D, 0x200E, 0x200F, // no width, or a mark of direction
                0x2028, 0x2029, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2060, 0x2064, 0x2066, 0x2067, 0x2068, 0x2069,
                0x115F, 0x3164, 0xFFA0, 0x34F, 0xFEFF, 0xFFF9, 0xFFFE, 0x1D173, 0xE0001, 0xE0041, 0xE0101
            })
    void whatNobodySeesIsFoundAndShownByItsNumber(int letter) {
        String text = "Low" + Character.toString(letter) + "er";
        assertThat(Unseen.first(text, false)).hasValue(3);
        assertThat(Unseen.shown(text)).startsWith("Low\\u").endsWith("er").doesNotContain(Character.toString(letter));
        assertThat(Unseen.first(Unseen.shown(text), false)).isEmpty();
    }

    /** Words that cannot be written otherwise: Persian, Hindi and Sinhala with joiners, pictographs, an old Japanese name. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Fußbüchse Ø 24 \u2013 30 \u00b0",
                "\u0646\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645",
                "\u0915\u094d\u200d\u0937",
                "\u0DC1\u0DCA\u200D\u0DBB\u0DD3",
                "\u2764\uFE0F",
                "\uD83D\uDC69\uD83C\uDFFD\u200D\uD83D\uDD27",
                "\u845B\uDB40\uDD00",
                "\u05d2\u05d1\u05d5\u05d4",
                "\u0600\u0661"
            })
    void whatAScriptCannotDoWithoutIsLetThrough(String text) {
        assertThat(Unseen.first(text, false)).isEmpty();
        assertThat(Unseen.shown(text)).isSameAs(text);
    }

    @Test
    void aJoinerThatJoinsNothingIsNotLetThrough() {
        assertThat(Unseen.first("As\u200dbought", false)).hasValue(2);
        assertThat(Unseen.first("\u200d", false)).hasValue(0);
        assertThat(Unseen.first("\u0646\u0645\u06cc\u200c", false)).hasValue(3);
        assertThat(Unseen.first("a\uFE0F\uFE0F", false)).hasValue(2);
    }

    @Test
    void linesAndTabsAreSeenWhereTheyMayStand() {
        assertThat(Unseen.first("a\n\tb", true)).isEmpty();
        assertThat(Unseen.first("a\n\tb", false)).hasValue(1);
        assertThat(Unseen.first("a\rb", true)).hasValue(1);
    }

    @Test
    void theWordsSayWhatItIsAndBehindWhat() {
        assertThat(Unseen.words("As bou\u202eght", 6))
                .isEqualTo("the invisible character U+202E (right-to-left override) behind \"As bou\"");
        assertThat(Unseen.words("\u0007", 0)).isEqualTo("a control character at its beginning");
        assertThat(Unseen.words("a\ud800", 1)).isEqualTo("half a character behind \"a\"");
    }
}
