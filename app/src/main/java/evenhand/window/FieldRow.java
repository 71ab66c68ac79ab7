package evenhand.window;

import evenhand.window.desk.Act;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Question;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The fields of the question that is asked. */
final class FieldRow extends JPanel {
    private final transient Bench bench;
    private transient List<Question.Field> shown = List.of();

    FieldRow(Bench bench) {
        super(new MigLayout("insets 0, gap 8 4", "", ""));
        this.bench = bench;
        setOpaque(false);
        setVisible(false);
    }

    void show(Question question, Desk before, Desk now) {
        List<Question.Field> fields = question.fields(now.work());
        boolean sameQuestion = before.look().question().equals(now.look().question());
        if (fields.equals(shown) && sameQuestion) {
            return;
        }
        shown = fields;
        removeAll();
        for (Question.Field field : fields) {
            String value = now.look().wish(field.key()).orElse(field.start());
            JLabel label = new JLabel(field.words());
            add(label);
            if (field.choices().isEmpty()) {
                add(text(field, value, label));
            } else {
                add(choice(field, value, label));
            }
        }
        setVisible(!fields.isEmpty());
        revalidate();
        repaint();
    }

    private JComboBox<String> choice(Question.Field field, String value, JLabel label) {
        JComboBox<String> combo = new JComboBox<>(field.choices().toArray(new String[0]));
        combo.setSelectedItem(value);
        combo.setName(field.key());
        combo.getAccessibleContext().setAccessibleName(field.words());
        label.setLabelFor(combo);
        combo.addActionListener(event -> bench.act(new Act.Wish(field.key(), String.valueOf(combo.getSelectedItem()))));
        return combo;
    }

    private JTextField text(Question.Field field, String value, JLabel label) {
        JTextField text = new JTextField(value, 14);
        text.setName(field.key());
        text.putClientProperty("JTextField.placeholderText", field.start().isEmpty() ? "as usual" : field.start());
        text.getAccessibleContext().setAccessibleName(field.words());
        label.setLabelFor(text);
        text.addActionListener(event -> bench.act(new Act.Wish(field.key(), text.getText())));
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                bench.act(new Act.Wish(field.key(), text.getText()));
            }
        });
        return text;
    }
}
