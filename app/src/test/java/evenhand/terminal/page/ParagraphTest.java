package evenhand.terminal.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ParagraphTest {
    @Test
    void aNumberStaysWithItsUnitAtEveryWidth() {
        String words = "It takes 99.0 % of it (+0.26 deg/g), 1000 N and 0.5 kg*m^2 (12 deg) at 0.840 g, 5 wheels.";
        for (int width = 1; width < 100; width++) {
            assertThat(String.join(" ", Paragraph.lines(words, width))).isEqualTo(words);
            assertThat(Paragraph.lines(words, width))
                    .anyMatch(line -> line.contains("99.0 %"))
                    .anyMatch(line -> line.contains("(+0.26 deg/g),"))
                    .anyMatch(line -> line.contains("1000 N"))
                    .anyMatch(line -> line.contains("0.5 kg*m^2"))
                    .anyMatch(line -> line.contains("(12 deg)"))
                    .anyMatch(line -> line.contains("0.840 g,"));
        }
        assertThat(Paragraph.lines(words, 1)).contains("5", "wheels.");
    }

    @Test
    void whatIsNoUnitMayBePartedFromANumber() {
        assertThat(Paragraph.lines("gear 2 of 5", 6)).containsExactly("gear 2", "of 5");
    }
}
