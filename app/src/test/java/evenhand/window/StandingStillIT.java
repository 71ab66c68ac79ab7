package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.SetupAct;
import evenhand.window.question.Questions;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** What stays where it is though something else happens: pages, keys, and what was said of a move that is undone. */
class StandingStillIT extends AtTheWindow {
    private static int top(JComponent in) {
        return Hands.see(() -> {
            JScrollPane scroll = (JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, in);
            return scroll.getVerticalScrollBar().getValue();
        });
    }

    private static String text(JLabel label) {
        return Hands.see(label::getText);
    }

    private static String owner() {
        return Hands.see(() -> {
            Component owner =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return owner == null ? "nobody" : String.valueOf(owner.getName());
        });
    }

    private void press(int code, int times) {
        for (int i = 0; i < times; i++) {
            hands.key(code);
        }
    }

    /** The story of the job is a long text; its caret pulled the page down to it. */
    @Test
    void thePageOfTheCarBeginsAtItsTopAndTabGoesDownFieldByField() {
        hands.act(new LookAct.Ask(Question.FORM));
        hands.answered();
        JTextField search = hands.find(JTextField.class, "search");
        JTextField first = hands.find(JTextField.class, "field mass");
        assertThat(top(first)).isZero();
        Hands.see(search::requestFocusInWindow);
        Hands.until("focus", search::isFocusOwner);
        press(KeyEvent.VK_TAB, 6);
        assertThat(owner()).startsWith("field ");
        assertThat(top(first)).as("after a few fields").isLessThan(300);
        int before = top(first);
        JTextField mass = hands.find(JTextField.class, "field wheelbase");
        hands.type(mass, "2560 mm");
        hands.answered();
        int there = top(first);
        hands.key(KeyEvent.VK_TAB);
        hands.answered();
        assertThat(Math.abs(top(first) - there)).as("a field further").isLessThan(200);
        assertThat(there - before).isLessThan(600);
    }

    /** Whoever goes through the fields by the keys always sees the one he is in. */
    @Test
    void theFieldWithTheKeysIsInSight() {
        hands.act(new LookAct.Ask(Question.FORM));
        hands.answered();
        JTextField search = hands.find(JTextField.class, "search");
        JTextField first = hands.find(JTextField.class, "field mass");
        Hands.see(search::requestFocusInWindow);
        Hands.until("focus", search::isFocusOwner);
        for (int i = 0; i < 25; i++) {
            hands.key(KeyEvent.VK_TAB);
            Component owner = Hands.see(
                    () -> KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
            if (owner instanceof JTextField field
                    && String.valueOf(field.getName()).startsWith("field ")) {
                assertThat(Hands.see(() -> field.getVisibleRect().height))
                        .as(field.getName())
                        .isEqualTo(Hands.see(field::getHeight));
            }
        }
        assertThat(top(first)).as("25 fields take more than a page").isPositive();
    }

    @Test
    void theSideBarStaysAtItsTopThoughTheNoteIsLong() {
        hands.act(new SetupAct.SetNote("Lowered", "a long note of many words ".repeat(60)));
        hands.click(hands.find(JToggleButton.class, "note of the set-up"));
        JTextArea note = hands.find(JTextArea.class, "note");
        Hands.until("the note", () -> note.getText().length() > 1000);
        assertThat(top(note)).isZero();
        hands.act(new evenhand.window.desk.TrialAct.Activate("As bought"));
        hands.act(new evenhand.window.desk.TrialAct.Activate("Lowered"));
        assertThat(top(note)).isZero();
    }

    /** The keys went on to "undo", and a space then undid work. */
    @Test
    void afterAQuestionIsChosenASpaceUndoesNothing() {
        Track track = hands.find(Track.class, "rear lateral locator height, track");
        Hands.see(track::requestFocusInWindow);
        Hands.until("focus", track::isFocusOwner);
        hands.key(KeyEvent.VK_RIGHT);
        hands.answered();
        String text = hands.desk().work().scenario().text();
        JList<?> questions = hands.find(JList.class, "questions");
        for (int asked : new int[] {2, 4, 1, 0}) {
            int row = asked + 1; // below the head of the first group
            int y = Hands.see(() -> (int) questions.getCellBounds(row, row).getCenterY());
            hands.click(questions, 40, y);
            hands.answered();
            assertThat(hands.desk().look().question())
                    .isEqualTo(Questions.ALL.get(asked).key());
            assertThat(owner()).isEqualTo("questions");
            hands.key(KeyEvent.VK_SPACE);
            assertThat(hands.desk().work().scenario().text()).isEqualTo(text);
        }
        // By the menu's keys, out of a track that goes away with its question.
        Track other = hands.find(Track.class, "rear lateral locator height, track");
        Hands.see(other::requestFocusInWindow);
        Hands.until("focus", other::isFocusOwner);
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_3);
        hands.answered();
        assertThat(owner()).isEqualTo("questions");
        hands.key(KeyEvent.VK_SPACE);
        assertThat(hands.desk().work().scenario().text()).isEqualTo(text);
    }

    @Test
    void whatAMoveDidIsNoLongerSaidOnceItIsUndone() {
        Track track = hands.find(Track.class, "rear lateral locator height, track");
        JLabel effect = hands.find(JLabel.class, "rear.lateralLocator.height effect");
        int from = Hands.see(() -> track.xOf(track.value()));
        hands.drag(track, from, 8, from + 20, 8);
        hands.answered();
        Hands.until(
                "its effect",
                () -> effect.getToolTipText() != null && effect.getToolTipText().contains("understeer"));
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertThat(text(effect)).isBlank();
        hands.answered();
        assertThat(text(effect)).isBlank();
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
        hands.answered();
        hands.act(new evenhand.window.desk.EditAct.SetValue(
                Optional.of(hands.desk().work().active()), "rear.spring.rate", "31 N/mm"));
        hands.answered();
        assertThat(text(effect)).isBlank();
    }
}
