package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.LookAct;
import java.awt.event.KeyEvent;
import javax.swing.JCheckBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** An entry of the shop's book put down by the keys alone. */
class BookIT extends AtTheWindow {
    private String text() {
        return hands.pane().bench().desk().work().scenario().text();
    }

    @Test
    void anEntryIsTypedTickedPutDownByEnterAndTakenBack() {
        Hands.see(() -> {
            hands.pane().cabinet().openDemo("quarry-special");
            return hands.pane().bench().act(new LookAct.Ask("shop"));
        });
        String before = Hands.see(this::text);
        JTextField date = hands.find(JTextField.class, "entry date");
        hands.type(date, "2030-02-30");
        Words.Area trouble = hands.find(Words.Area.class, "trouble with entry date");
        assertThat(Hands.see(() -> trouble.getText())).contains("is no day");
        hands.type(date, "2030-01-31");
        JTextField what = hands.find(JTextField.class, "entry text");
        Hands.until("the keys where something is missing", what::isFocusOwner);
        JCheckBox nuts = hands.find(JCheckBox.class, "torqued wheel nuts");
        Hands.see(nuts::requestFocusInWindow);
        Hands.until("the keys at what is ticked", nuts::isFocusOwner);
        hands.key(KeyEvent.VK_SPACE);
        Hands.until("ticked", nuts::isSelected);
        hands.type(what, "Nuts");
        Hands.until("it is put down", () -> text().contains("{\"date\": \"2030-01-31\", \"text\": \"Nuts\""));
        assertThat(Hands.see(this::text)).contains("\"torqued\": [\"wheel nuts\"]}");
        assertThat(Hands.see(() -> what.getText())).isEmpty();
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        Hands.until("undone", () -> text().equals(before));
    }
}
