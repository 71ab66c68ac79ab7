package evenhand.window;

import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A line that has something to say, with what can be done about it; it waits, and blocks nothing. */
final class Notice extends JPanel {
    private final Words.Area words = Words.plain("notice");
    private final JPanel buttons = new JPanel(new MigLayout("insets 0, gap 6", "", ""));

    /** A button of a notice. */
    record Choice(String words, Runnable action) {}

    Notice() {
        super(new MigLayout("insets 8 16 8 16, fillx", "[grow,fill][pref!]", ""));
        setName("notice line");
        buttons.setOpaque(false);
        add(words, "wmin 100");
        add(buttons, "aligny top");
        setVisible(false);
    }

    /** Says something; "dismiss" is always among the choices. */
    void say(String text, Choice... choices) {
        words.setText(text);
        buttons.removeAll();
        for (Choice choice : choices) {
            add(choice);
        }
        add(new Choice("dismiss", () -> {}));
        setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, Looks.theme().grid()));
        setVisible(true);
        revalidate();
    }

    /** Says something besides what is said already. */
    void also(String text, Choice... choices) {
        if (!isVisible()) {
            say(text, choices);
            return;
        }
        words.setText(words.getText() + "\n" + text);
        int at = buttons.getComponentCount() - 1; // before "dismiss"
        for (Choice choice : choices) {
            buttons.add(button(choice), at);
            at++;
        }
        revalidate();
    }

    private void add(Choice choice) {
        buttons.add(button(choice));
    }

    private JButton button(Choice choice) {
        JButton button = new JButton(choice.words());
        button.setName("notice " + choice.words());
        button.addActionListener(event -> {
            setVisible(false);
            choice.action().run();
        });
        return button;
    }

    String text() {
        return isVisible() ? words.getText() : "";
    }

    void hush() {
        setVisible(false);
    }
}
