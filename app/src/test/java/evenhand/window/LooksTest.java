package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.JLabel;
import javax.swing.JToolTip;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicHTML;
import org.junit.jupiter.api.Test;

class LooksTest {
    /** A set-up of such a name fetched a picture from wherever it said. */
    @Test
    void aNameThatLooksLikeHtmlIsShownAsItIs() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Looks.set(false);
            JLabel label = new JLabel("<html><b>As bought");
            assertThat(label.getClientProperty(BasicHTML.propertyKey)).isNull();
            label.setText("<html><i>Lowered");
            assertThat(label.getClientProperty(BasicHTML.propertyKey)).isNull();
            JToolTip tip = new JToolTip();
            tip.setTipText("<html><b>As bought");
            assertThat(tip.getClientProperty(BasicHTML.propertyKey)).isNull();
        });
    }
}
