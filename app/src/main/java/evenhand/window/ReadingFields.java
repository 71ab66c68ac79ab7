package evenhand.window;

import evenhand.window.desk.Noted;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/** The fields of one reading, large, with the unit behind each; Enter goes on to the next, and from the last on. */
final class ReadingFields extends JPanel {
    private final transient Runnable typed;
    private final transient Runnable done;
    private final JPanel inputs = new JPanel(new MigLayout("insets 0, gap 16 4", "", ""));
    private final transient List<JRadioButton> kinds = new ArrayList<>();
    private final transient List<JTextField> texts = new ArrayList<>();
    private transient Noted noted = Noted.NOTHING;
    private boolean showing;

    /**
     * @param typed is told of every change
     * @param done is told of Enter in the last field
     */
    ReadingFields(Runnable typed, Runnable done) {
        super(new MigLayout("insets 0, gap 0 8, wrap 1", "[grow,fill]", ""));
        this.typed = typed;
        this.done = done;
        setOpaque(false);
        inputs.setOpaque(false);
        JPanel row = new JPanel(new MigLayout("insets 0, gap 12", "", ""));
        row.setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        for (Noted.Kind kind : Noted.Kind.values()) {
            JRadioButton button = new JRadioButton(kind.words(), kind == noted.kind());
            button.setName("kind " + kind.words());
            button.setOpaque(false);
            button.addActionListener(event -> {
                show(noted.as(kind));
                focusFirst();
            });
            group.add(button);
            kinds.add(button);
            row.add(button);
        }
        add(row);
        add(inputs);
        lay();
    }

    Noted noted() {
        return noted;
    }

    /** What is wrong with a field, in a line. */
    Optional<String> trouble() {
        return noted.kind().fields().stream()
                .flatMap(field -> noted.problem(field).map(why -> field.words() + ": " + why).stream())
                .findFirst();
    }

    void show(Noted next) {
        boolean other = next.kind() != noted.kind();
        noted = next;
        if (other) {
            kinds.get(next.kind().ordinal()).setSelected(true);
            lay();
        }
        showing = true;
        List<Noted.Field> typedOnes = next.kind().fields().stream()
                .filter(field -> field.choices().isEmpty())
                .toList();
        for (int i = 0; i < texts.size(); i++) {
            texts.get(i).setText(next.text(typedOnes.get(i)));
        }
        showing = false;
        typed.run();
    }

    /** The first field in which nothing stands. */
    void focusFirst() {
        texts.stream()
                .filter(text -> text.getText().isBlank())
                .findFirst()
                .or(() -> texts.stream().findFirst())
                .ifPresent(JComponent::requestFocusInWindow);
    }

    private void lay() {
        inputs.removeAll();
        texts.clear();
        for (Noted.Field field : noted.kind().fields()) {
            JPanel one = new JPanel(new MigLayout("insets 0, gap 4 0", "[][]", ""));
            one.setOpaque(false);
            JComponent input = field.choices().isEmpty() ? text(field) : choice(field);
            input.setName("reading " + field.key());
            input.setFont(large());
            input.getAccessibleContext()
                    .setAccessibleName(field.words() + (field.unit().isEmpty() ? "" : ", " + field.unit()));
            JLabel label = new JLabel(field.words());
            label.setLabelFor(input);
            JLabel unit = new JLabel(field.unit());
            unit.setFont(large());
            one.add(label, "span 2, wrap");
            one.add(input);
            one.add(unit);
            inputs.add(one);
        }
        inputs.revalidate();
        inputs.repaint();
    }

    private static Font large() {
        return Looks.headline();
    }

    private JTextField text(Noted.Field field) {
        JTextField text = new JTextField(noted.text(field), field.key().equals("laps") ? 3 : 7);
        int place = texts.size();
        texts.add(text);
        text.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                take(field, text.getText());
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                take(field, text.getText());
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // Plain text has no look of its own.
            }
        });
        text.addActionListener(event -> {
            if (place + 1 < texts.size()) {
                texts.get(place + 1).requestFocusInWindow();
                texts.get(place + 1).selectAll();
            } else {
                done.run();
            }
        });
        return text;
    }

    private JComboBox<String> choice(Noted.Field field) {
        JComboBox<String> box = new JComboBox<>(field.choices().toArray(new String[0]));
        box.setSelectedItem(noted.text(field));
        box.addActionListener(event -> take(field, String.valueOf(box.getSelectedItem())));
        return box;
    }

    private void take(Noted.Field field, String text) {
        if (!showing) {
            noted = noted.with(field.key(), text);
            typed.run();
        }
    }
}
