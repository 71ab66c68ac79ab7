package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.FormField;
import evenhand.window.desk.Look;
import evenhand.window.desk.MeasureUp;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Measuring a car up, under mouse and keys. */
class MeasureUpIT extends AtTheWindow {
    @BeforeEach
    void turnToMeasuringUp() {
        Hands.see(() -> {
            hands.pane().turnTo(Look.Page.MEASURING_UP);
            return true;
        });
    }

    private MeasureUp measured() {
        return Hands.see(() -> hands.pane().measure().measured());
    }

    private void next(int times) {
        for (int i = 0; i < times; i++) {
            hands.click(hands.find(JButton.class, "measure next"));
        }
    }

    /** The list said "front" though nothing was chosen, and choosing "front" changed nothing. */
    @Test
    void aListIsEmptyUntilSomethingIsChosenAndItsFirstWordCanBeChosen() {
        next(2);
        JComboBox<?> axle = hands.find(JComboBox.class, "field axleLift.liftedAxle");
        assertThat(Hands.see(() -> axle.getSelectedIndex())).isEqualTo(-1);
        Hands.see(axle::requestFocusInWindow);
        Hands.until("focus", axle::isFocusOwner);
        hands.key(KeyEvent.VK_DOWN);
        hands.key(KeyEvent.VK_ENTER);
        Hands.until(
                "the choice",
                () -> hands.pane()
                        .measure()
                        .measured()
                        .draft()
                        .get("axleLift.liftedAxle")
                        .isPresent());
        assertThat(measured().draft().get("axleLift.liftedAxle")).contains("front");
        assertThat(measured().missing()).extracting(FormField::path).doesNotContain("axleLift.liftedAxle");
    }

    /** "3 values are still to be measured", and no word of which. */
    @Test
    void whatIsMissingIsNamedAndLeadsToItsField() {
        JButton link = hands.find(JButton.class, "missing wheelbase");
        assertThat(Hands.see(link::getText)).isEqualTo("wheelbase");
        hands.click(link);
        JTextField field = hands.find(JTextField.class, "field wheelbase");
        Hands.until("the keys in it", field::isFocusOwner);
        hands.type(field, "2500 mm");
        Hands.until(
                "no link any more",
                () -> hands.pane().measure().measured().draft().get("wheelbase").isPresent());
        assertThat(Hands.see(link::isShowing)).isFalse();
    }

    /** "Weight – done" was said of a banana. */
    @Test
    void nonsenseIsToldAtItsFieldWheneverItsStepIsSeen() {
        next(1);
        hands.type(hands.find(JTextField.class, "field cornerWeights.frontLeft"), "banana");
        next(1);
        hands.click(hands.find(JButton.class, "measure before"));
        Words.Area trouble = hands.find(Words.Area.class, "trouble cornerWeights.frontLeft");
        assertThat(Hands.see(trouble::isVisible)).isTrue();
        assertThat(Hands.see(() -> trouble.getText())).contains("banana");
    }

    @Test
    void aValueThatNobodyKnowsIsEstimatedAndItsCostIsSaid() {
        next(3);
        JButton estimate = hands.find(JButton.class, "estimate front.unsprungMass");
        String words = Hands.see(estimate::getText);
        assertThat(words).startsWith("don't know: estimate ").contains(" kg ± ");
        Words.Area why = hands.find(Words.Area.class, "why front.unsprungMass");
        String said = Hands.see(() -> why.getText());
        assertThat(said)
                .contains("leaves the understeer near the limit open by about ±")
                .contains("deg/g");
        hands.click(estimate);
        assertThat(measured().draft().get("front.unsprungMass").orElseThrow())
                .isEqualTo(words.substring("don't know: estimate ".length()));
        Words.Area after = hands.find(Words.Area.class, "why front.unsprungMass");
        assertThat(Hands.see(() -> after.getText())).startsWith("estimated from ");
    }

    @Test
    void aTyresKindIsProposedFromItsSizeAndTakenByAButton() {
        next(5);
        hands.type(hands.find(JTextField.class, "field front.tyre.size"), "175/70R14");
        JButton take = hands.find(JButton.class, "propose front.tyre.kind");
        assertThat(Hands.see(take::getText)).isEqualTo("take touring radial");
        assertThat(measured().draft().get("front.tyre.kind")).isEmpty();
        hands.click(take);
        assertThat(measured().draft().get("front.tyre.kind")).contains("touring radial");
        JComboBox<?> kind = hands.find(JComboBox.class, "field front.tyre.kind");
        assertThat(Hands.see(() -> List.of(kind.getSelectedItem()))).hasToString("[touring radial]");
    }
}
