package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** Readings written down at the side of the circle, by the keys alone. */
class CircleIT extends AtTheWindow {
    private String file() {
        return Hands.see(this::text);
    }

    private String text() {
        return hands.pane().bench().desk().work().scenario().text();
    }

    private void type(String field, String text) {
        hands.type(hands.find(JTextField.class, "reading " + field), text);
    }

    @Test
    void aReadingIsTypedFieldByFieldPutDownByEnterAndTakenBack() {
        Hands.see(() -> {
            hands.pane().turnTo(Look.Page.CIRCLE);
            return true;
        });
        String before = file();
        type("time", "47");
        JTextField wheel = hands.find(JTextField.class, "reading steeringWheel");
        Hands.until("the keys in the next field", wheel::isFocusOwner);
        type("steeringWheel", "171");
        Words.Area noted = hands.find(Words.Area.class, "what is said of the reading");
        Hands.until("what is said of it", () -> noted.getText().contains("read it again"));
        assertThat(Hands.see(() -> noted.getText())).contains("171.0");
        JLabel first = hands.find(JLabel.class, "fits roadTests[0].readings[0]");
        assertThat(Hands.see(first::getText))
                .as("those before are judged without it")
                .isEqualTo("fits");

        type("steeringWheel", "103");
        type("roll", "3x");
        JButton put = hands.find(JButton.class, "put it down");
        assertThat(Hands.see(put::isEnabled)).isFalse();
        Words.Area trouble = hands.find(Words.Area.class, "trouble with the reading");
        assertThat(Hands.see(() -> trouble.getText())).startsWith("lean: ");
        type("roll", "3.0");
        Hands.until("it is put down", () -> !text().equals(before));
        assertThat(file())
                .contains("{\"turn\": \"left\", \"laps\": 3, \"time\": \"47 s\", \"steeringWheel\": \"103 deg\","
                        + " \"roll\": \"3.0 deg\"}");
        assertThat(hands.find(JTextField.class, "reading time").getText()).isEmpty();
        hands.click(hands.find(JButton.class, "undo the reading"));
        Hands.until("undone", () -> text().equals(before));
    }

    @Test
    void aTestIsBegunOnACarThatHasNone() {
        Hands.see(() -> {
            hands.pane().cabinet().openDemo("orchard-estate");
            return hands.pane().bench().act(new LookAct.TurnTo(Look.Page.CIRCLE));
        });
        hands.click(hands.find(JButton.class, "begin the test"));
        Hands.until("the test", () -> text().contains("\"roadTests\""));
        assertThat(file()).contains("\"circle\": {\"radius\": \"30 m\"}");
        type("time", "60");
        type("roll", "1.5");
        Hands.until("the reading", () -> text().contains("\"roll\": \"1.5 deg\""));
    }
}
