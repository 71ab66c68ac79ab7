package evenhand.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TypefaceTest {
    private static final FontRenderContext CONTEXT = new FontRenderContext(new AffineTransform(), true, true);

    @Test
    void digitsAreAllOfOneWidthInBothWeights() {
        for (Font font : new Font[] {Typeface.plain(12), Typeface.strong(12)}) {
            double zero = font.getStringBounds("0", CONTEXT).getWidth();
            assertThat(Stream.of("1", "2", "3", "4", "5", "6", "7", "8", "9"))
                    .allSatisfy(digit -> assertThat(
                                    font.getStringBounds(digit, CONTEXT).getWidth())
                            .isEqualTo(zero));
        }
    }

    @Test
    void everySignOfPicturesIsInIt() {
        assertThat(Typeface.plain(12).canDisplayUpTo("− ± · ² ° … × µ ½ é ß ø")).isEqualTo(-1);
        assertThat(Typeface.strong(12).canDisplayUpTo("− ± · ² ° … × µ ½ é ß ø"))
                .isEqualTo(-1);
    }

    @Test
    void namesInOtherScriptsFallBackOnTheMachinesFonts() {
        boolean known = java.util.Arrays.stream(java.awt.GraphicsEnvironment.getLocalGraphicsEnvironment()
                        .getAllFonts())
                .anyMatch(font -> font.canDisplay('ש'));
        assertThat(Typeface.plain(12).canDisplay('ש')).isEqualTo(known);
        assertThat(Typeface.strong(12).canDisplay('ש')).isEqualTo(known);
    }

    @Test
    void bothWeightsAreOfTheFamilyThatComesWithTheProgram() {
        assertThat(Typeface.plain(12).getFamily()).isEqualTo(Typeface.FAMILY);
        assertThat(Typeface.strong(12).getFamily()).isEqualTo(Typeface.FAMILY);
        assertThat(Typeface.strong(12).getStringBounds("weight", CONTEXT).getWidth())
                .isGreaterThan(
                        Typeface.plain(12).getStringBounds("weight", CONTEXT).getWidth());
    }
}
