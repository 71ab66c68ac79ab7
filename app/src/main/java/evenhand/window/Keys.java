package evenhand.window;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys that do something while a part of the window, or something in it, has them. */
final class Keys {
    private Keys() {}

    /** @param stroke as {@link KeyStroke#getKeyStroke(String)} reads it */
    static void bind(JComponent part, String stroke, Runnable action) {
        part.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), stroke);
        part.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                action.run();
            }
        });
    }
}
