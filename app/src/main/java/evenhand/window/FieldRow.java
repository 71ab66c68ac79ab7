package evenhand.window;

import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The fields of the question that is asked. */
final class FieldRow extends JPanel {
    private static final int FEWEST_COLUMNS = 8;

    /** A field whose hint is longer may be narrower than it, in sizes of type. */
    private static final double MOST_NEEDED = 10;

    private final transient Bench bench;
    private transient List<Question.Field> shown = List.of();

    FieldRow(Bench bench) {
        super(new MigLayout("insets 0, gap 8 4, nogrid", "", ""));
        this.bench = bench;
        setOpaque(false);
        setVisible(false);
    }

    void show(Question question, Desk before, Desk now) {
        List<Question.Field> fields = question.fields(now.asking());
        boolean sameQuestion = before.look().question().equals(now.look().question());
        if (fields.equals(shown) && sameQuestion) {
            return;
        }
        if (sameQuestion && withoutHints(fields).equals(withoutHints(shown))) {
            fields.forEach(field -> named(field.key()).ifPresent(component -> hint(component, field)));
            shown = fields;
            return;
        }
        Optional<String> focused = Arrays.stream(getComponents())
                .filter(component -> sameQuestion && component.isFocusOwner())
                .map(Component::getName)
                .findFirst();
        shown = fields;
        removeAll();
        for (Question.Field field : fields) {
            String value = now.look().wish(field.key()).orElse(field.start());
            JLabel label = new JLabel(field.words());
            add(label, field.onNewLine() ? "newline" : "");
            if (field.choices().isEmpty()) {
                JTextField text = text(field, value, label);
                int words = text.getFontMetrics(text.getFont()).stringWidth(field.hint());
                add(text, "wmin " + Math.min(words + Looks.em(1.4), Looks.em(MOST_NEEDED)));
            } else {
                add(choice(field, value, label));
            }
        }
        setVisible(!fields.isEmpty());
        focused.flatMap(this::named).ifPresent(Component::requestFocusInWindow);
        revalidate();
        repaint();
    }

    private static List<Question.Field> withoutHints(List<Question.Field> fields) {
        return fields.stream()
                .map(field -> new Question.Field(
                        field.key(), field.words(), field.choices(), field.start(), "", field.onNewLine()))
                .toList();
    }

    private Optional<Component> named(String key) {
        return Arrays.stream(getComponents())
                .filter(component -> key.equals(component.getName()))
                .findFirst();
    }

    /** What an empty field stands for. */
    private static void hint(Component component, Question.Field field) {
        if (component instanceof JTextField text) {
            text.putClientProperty("JTextField.placeholderText", field.hint());
            text.repaint();
        }
    }

    private JComboBox<String> choice(Question.Field field, String value, JLabel label) {
        JComboBox<String> combo = new JComboBox<>(field.choices().toArray(new String[0]));
        combo.setSelectedItem(value);
        combo.setName(field.key());
        combo.getAccessibleContext().setAccessibleName(field.words());
        label.setLabelFor(combo);
        combo.addActionListener(
                event -> bench.act(new LookAct.Wish(field.key(), String.valueOf(combo.getSelectedItem()))));
        return combo;
    }

    private JTextField text(Question.Field field, String value, JLabel label) {
        int columns = Math.max(
                FEWEST_COLUMNS, Math.max(field.hint().length(), field.start().length()) * 3 / 4);
        JTextField text = new JTextField(value, columns);
        text.setName(field.key());
        hint(text, field);
        text.getAccessibleContext().setAccessibleName(field.words());
        label.setLabelFor(text);
        text.addActionListener(event -> bench.act(new LookAct.Wish(field.key(), text.getText())));
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                bench.act(new LookAct.Wish(field.key(), text.getText()));
            }
        });
        return text;
    }
}
