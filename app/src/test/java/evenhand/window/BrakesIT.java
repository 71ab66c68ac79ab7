package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.window.desk.LookAct;
import java.awt.event.KeyEvent;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** The first demo car braked at the window: its fields, and a smaller rear cylinder that makes it safe. */
class BrakesIT extends AtTheWindow {
    @Test
    void aSmallerRearCylinderMakesTheFrontLockFirst() {
        hands.act(new LookAct.Ask("brakes"));
        hands.answered();
        String active = hands.desk().work().active();
        assertThat(said()).startsWith("\"" + active + "\": The rear locks first: unsafe.");

        hands.type(hands.find(JTextField.class, "friction"), "0.4");
        hands.answered();
        assertThat(all()).contains("On a road of friction 0.4 at");
        hands.type(hands.find(JTextField.class, "friction"), "ice");
        hands.answered();
        assertThat(said()).startsWith("The friction \"ice\"");
        hands.type(hands.find(JTextField.class, "friction"), "0.4");
        hands.answered();

        JComboBox<?> booster = hands.find(JComboBox.class, "booster");
        Hands.see(booster::requestFocusInWindow);
        Hands.until("focus", booster::isFocusOwner);
        hands.key(KeyEvent.VK_DOWN);
        hands.answered();
        assertThat(all()).contains("the booster without help");

        hands.type(hands.find(JTextField.class, "brakes.rear.bore"), "15 mm");
        hands.answered();
        assertThat(said()).startsWith("\"" + active + "\": The front locks first");
        assertThat(all()).contains("Brakes are work for qualified people.");
        Chart forces = Hands.see(() -> hands.pane().answer().charts().get(0).chart());
        assertThat(forces.lines())
                .anyMatch(
                        line -> line.label().startsWith(active) && line.ending().startsWith("front locks at"));
    }

    private String said() {
        return Hands.see(() -> hands.pane().answer().said());
    }

    /** All sentences of the answer. */
    private String all() {
        return hands.desk().replies().reply().orElseThrow().reply().more().toString();
    }
}
