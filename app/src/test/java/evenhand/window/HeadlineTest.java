package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class HeadlineTest {
    private static final String LONG =
            "\"Lowered\": At its limit, 0.783 g, the front gives out first, by sideslip: it uses"
                    + " 98.8 % of its grip, the rear 83.9 %: limit balance +17.7 %, the front has less in hand.";
    private static final String OTHER = LONG.replace("Lowered", "As bought");

    /** What stands there in large type, and in plain type below, in a window so wide. */
    private static List<String> shown(int width, String... sentences) {
        Headline headline = new Headline();
        headline.say(List.of(sentences));
        headline.setSize(width, 100);
        headline.doLayout();
        assertThat(headline.said()).isEqualTo(String.join("\n", sentences));
        return Stream.of(headline.getComponents())
                .map(Words.Area.class::cast)
                .map(area -> area.isVisible() ? area.getText().replace('\u00a0', ' ') : "")
                .toList();
    }

    @Test
    void whatIsSaidIsLargeWhereItCanBeReadAtAGlance() {
        assertThat(shown(1500, LONG, OTHER)).containsExactly(LONG + "\n" + OTHER, "");
    }

    @Test
    void whatWouldTakeMoreThanThreeLinesIsSaidInPlainTypeBelow() {
        assertThat(shown(985, LONG, OTHER)).containsExactly(LONG, OTHER);
    }

    @Test
    void oneSentenceIsNeverParted() {
        assertThat(shown(300, LONG)).containsExactly(LONG, "");
    }

    @Test
    void aNumberStaysWithItsUnit() {
        assertThat(Words.unbroken("the hardest jolt is 0.48 g at the front; +30 % and 2 wheels"))
                .contains("0.48\u00a0g at", "+30\u00a0% and");
    }
}
