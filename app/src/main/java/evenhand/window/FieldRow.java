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
import java.util.OptionalDouble;
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

    private static final double LEAST_TRACK = 12;
    private static final double MOST_TRACK = 34;

    /** Room for "+12.5 mm", so that nothing moves while the hand does. */
    private static final double PLACE = 6;

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
            slides(now);
            return;
        }
        if (sameQuestion && withoutHints(fields).equals(withoutHints(shown))) {
            fields.forEach(field -> named(field.key()).ifPresent(component -> hint(component, field)));
            shown = fields;
            slides(now);
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
            if (field.slide().isPresent()) {
                add(track(field, label), "growx, pushx, wmin " + LEAST_TRACK + "em, wmax " + MOST_TRACK + "em");
                JLabel place = new JLabel();
                place.setName(field.key() + " place");
                add(place, "wmin " + Looks.em(PLACE));
            } else if (field.choices().isEmpty()) {
                JTextField text = text(field, value, label);
                int words = text.getFontMetrics(text.getFont()).stringWidth(field.hint());
                add(text, "wmin " + Math.min(words + Looks.em(1.4), Looks.em(MOST_NEEDED)));
            } else {
                add(choice(field, value, label));
            }
        }
        slides(now);
        setVisible(!fields.isEmpty());
        focused.flatMap(this::named).ifPresent(Component::requestFocusInWindow);
        revalidate();
        repaint();
    }

    /** Whether a hand is on a track. */
    boolean isHeld() {
        return Arrays.stream(getComponents()).anyMatch(component -> component instanceof Track track && track.isHeld());
    }

    private Track track(Question.Field field, JLabel label) {
        Question.Slide slide = field.slide().orElseThrow();
        Track track =
                new Track(field.key(), (value, same) -> bench.act(new LookAct.Wish(field.key(), slide.text(value))));
        track.getAccessibleContext().setAccessibleName(field.words());
        label.setLabelFor(track);
        return track;
    }

    /** Tracks stand where the wishes say. */
    private void slides(Desk now) {
        for (Question.Field field : shown) {
            field.slide().ifPresent(slide -> {
                String value = now.look().wish(field.key()).orElse(field.start());
                String words = slide.shown(value);
                named(field.key())
                        .ifPresent(component -> ((Track) component)
                                .show(
                                        slide.low(),
                                        slide.high(),
                                        slide.number(value),
                                        slide.step(),
                                        Optional.empty(),
                                        OptionalDouble.of(0),
                                        words));
                named(field.key() + " place").ifPresent(component -> ((JLabel) component).setText(words));
            });
        }
    }

    private static List<Question.Field> withoutHints(List<Question.Field> fields) {
        return fields.stream().map(field -> field.hinting("")).toList();
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
