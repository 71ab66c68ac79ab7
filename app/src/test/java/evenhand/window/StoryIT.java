package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.Desk;
import evenhand.window.desk.LookAct;
import evenhand.window.question.Questions;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** "The customer wants it 40 mm lower and neutral", from an empty start to an applied and saved answer. */
@OnScreen
@Timeout(300)
class StoryIT {
    /** Near neutral, rad per m/s²: 1 deg/g. */
    private static final double NEUTRAL = 0.0018;

    private static final int MOST_STEPS = 12;

    @TempDir
    Path folder;

    @Test
    void theCustomerWantsItFortyMillimetresLowerAndNeutral() throws Exception {
        try (Hands hands = new Hands(folder.resolve("state"), Optional.empty())) {
            // From an empty start: the menu, a demo car, all by keys.
            hands.key(KeyEvent.VK_ALT, KeyEvent.VK_F);
            hands.key(KeyEvent.VK_DOWN);
            hands.key(KeyEvent.VK_RIGHT);
            for (int i = 0; i < 4; i++) {
                hands.key(KeyEvent.VK_DOWN);
            }
            hands.key(KeyEvent.VK_ENTER);
            Hands.until(
                    "the roadster",
                    () -> hands.pane().bench().desk().work().scenario().title().contains("Tinkers"));
            hands.answered();

            // His wish, as a set-up of its own.
            hands.lines.add("Low and neutral");
            hands.click(hands.find(JButton.class, "set-up add"));
            hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_3);
            hands.answered();
            hands.type(hands.find(JTextField.class, "front.lowered"), "40 mm");
            hands.type(hands.find(JTextField.class, "rear.lowered"), "40 mm");
            hands.answered();
            assertThat(hands.desk().work().activeSetup().car().rear().lowered()).isEqualTo(0.04);
            double lowered = balance(hands);

            // What helps against it, one step at a time, as far as neutral.
            hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_4);
            hands.answered();
            String complaint = lowered > 0 ? "pushes at the limit" : "slides at the limit";
            JComboBox<?> combo = hands.find(JComboBox.class, "complaint");
            Hands.see(() -> {
                combo.setSelectedItem(complaint);
                return true;
            });
            hands.answered();
            for (int i = 0;
                    i < MOST_STEPS && Math.abs(balance(hands)) > NEUTRAL && balance(hands) > 0 == lowered > 0;
                    i++) {
                hands.click(hands.find(JButton.class, "do it"));
                hands.answered();
            }
            double done = balance(hands);
            // More than a third of it goes by steps that harm nothing; what would do more is refused.
            assertThat(done).isBetween(0.0, 0.6 * lowered);

            // Said, and saved.
            hands.act(new LookAct.Ask(Questions.ALL.get(2).key()));
            hands.answered();
            assertThat(Hands.see(() -> hands.pane().answer().said())).startsWith("\"Low and neutral\" against");
            Path file = folder.resolve("roadster.json");
            hands.files.add(file);
            hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
            Hands.until("saved", () -> !hands.pane().bench().desk().unsaved());
            assertThat(Files.readString(file)).contains("Low and neutral", "\"lowered\": \"40 mm\"");
        }
    }

    private static double balance(Hands hands) {
        hands.answered();
        Desk desk = hands.desk();
        return desk.replies()
                .turns()
                .orElseThrow()
                .setups()
                .get(desk.work().active())
                .turn()
                .orElseThrow()
                .limit()
                .nearUndersteer()
                .orElseThrow();
    }
}
