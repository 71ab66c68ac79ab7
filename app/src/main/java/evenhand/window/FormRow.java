package evenhand.window;

import evenhand.window.desk.FormField;
import evenhand.window.desk.Grid;
import evenhand.words.Units;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;

/** A field of a form: what was typed, what stands in for it, what it means, how it is measured, and what is wrong. */
final class FormRow extends JPanel {
    /** Takes what was typed; says why not where it cannot. An empty text takes the value out. */
    interface Taker {
        Optional<String> take(FormField field, String text);

        /** The same for the rows of a table. */
        default Optional<String> take(FormField field, Grid grid, List<List<String>> rows) {
            return take(field, grid.json(rows));
        }
    }

    /** Lines of what a field means are no longer than are read with ease, in sizes of type. */
    private static final double READABLE = 48;

    private final transient Taker taker;
    private final transient Consumer<FormField> focused;
    private transient FormField field;
    private final JLabel label;
    private final JComponent input;
    private final JLabel state = new JLabel();
    private final Words.Area told;
    private final Words.Area trouble;
    private final boolean showsDefaults;
    private String shown = "";

    /** A row of a form, in which a choice that was not made shows what is taken without. */
    FormRow(FormField field, String words, Taker taker, Consumer<FormField> focused) {
        this(field, words, true, taker, focused);
    }

    /** A row in which nothing is shown that was not given. */
    static FormRow asking(FormField field, String words, Taker taker, Consumer<FormField> focused) {
        return new FormRow(field, words, false, taker, focused);
    }

    private FormRow(FormField field, String words, boolean showsDefaults, Taker taker, Consumer<FormField> focused) {
        super(new MigLayout(
                "insets 2 0 2 0, gap 10 0, fillx, hidemode 3",
                "[" + Looks.em(13) + "!][" + Looks.em(13) + "!][grow,fill]",
                "[]"));
        this.field = field;
        this.taker = taker;
        this.focused = focused;
        this.showsDefaults = showsDefaults;
        setOpaque(false);
        state.setName("state of " + field.path());
        state.setFont(Looks.small());
        label = new JLabel(words);
        label.setToolTipText(field.path());
        told = Words.quiet("meaning of " + field.label());
        told.setFocusable(false); // Tab goes from field to field; the field tells its meaning itself
        trouble = Words.warning("trouble with " + field.label());
        trouble.setName("trouble " + field.path());
        input = input();
        input.setName("field " + field.path());
        input.getAccessibleContext().setAccessibleName(evenhand.words.ChangeWords.name(field.path()));
        input.getAccessibleContext().setAccessibleDescription(field.meaning());
        label.setLabelFor(input);
        add(label, "aligny top, gaptop 4");
        if (input instanceof GridPane) {
            add(input, "span 2, wrap");
        } else {
            add(input, "growx, aligny top");
            add(state, "wmin 0, aligny top, gaptop 4, wrap");
        }
        add(told, "skip 1, span 2, growx, wmin 60, wmax " + Looks.em(READABLE) + ", wrap");
        add(trouble, "skip 1, span 2, growx, wmin 60");
        trouble.setVisible(false);
    }

    FormField field() {
        return field;
    }

    /** Puts the keys into its field. */
    void focus() {
        input.requestFocusInWindow();
    }

    /** Whether something wrong was typed into it. */
    boolean isWrong() {
        return trouble.isVisible() || (input instanceof GridPane grid && grid.isWrong());
    }

    /** Whether the keys are in its field. */
    boolean hasKeys() {
        return input.isFocusOwner();
    }

    /** Whether it can show another field as well. */
    boolean fits(FormField other) {
        return field.path().equals(other.path())
                && field.choices().equals(other.choices())
                && field.slot().equals(other.slot());
    }

    private JComponent input() {
        if (!field.choices().isEmpty()) {
            JComboBox<String> combo = new JComboBox<>(field.choices().toArray(new String[0]));
            combo.setSelectedItem(null);
            combo.addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent e) {
                    focused.accept(field);
                }
            });
            combo.addActionListener(event -> {
                String word = combo.getSelectedItem() == null
                        ? ""
                        : combo.getSelectedItem().toString();
                if (!word.equals(shown)) {
                    take(word);
                }
            });
            return combo;
        }
        if (field.grid().isPresent()) {
            return new GridPane(field, rows -> taker.take(field, field.grid().orElseThrow(), rows));
        }
        JTextComponent text;
        if (field.hasLines()) {
            JTextArea area = new JTextArea(6, 10);
            area.setCaret(Words.still());
            area.setLineWrap(true);
            area.setWrapStyleWord(true);
            area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null); // Tab goes on, as everywhere
            area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
            area.setBorder(BorderFactory.createCompoundBorder(
                    UIManager.getBorder("TextField.border"), BorderFactory.createEmptyBorder()));
            text = area;
        } else {
            JTextField single = new JTextField();
            single.addActionListener(event -> typed(single));
            text = single;
        }
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                focused.accept(field);
                // Who goes from field to field by the keys sees where he is.
                if (e.getCause() == FocusEvent.Cause.TRAVERSAL_FORWARD
                        || e.getCause() == FocusEvent.Cause.TRAVERSAL_BACKWARD) {
                    scrollRectToVisible(new Rectangle(getSize()));
                }
            }

            @Override
            public void focusLost(FocusEvent e) {
                typed(text);
            }
        });
        return text;
    }

    private void typed(JTextComponent text) {
        if (!text.getText().strip().equals(shown.strip())) {
            take(text.getText());
        }
    }

    private void take(String text) {
        Optional<String> why = taker.take(field, text);
        say(why);
        if (why.isEmpty()) {
            shown = text;
        }
    }

    void say(Optional<String> why) {
        Words.put(trouble, why.map(words -> label.getText() + " " + words).orElse(""));
        trouble.setVisible(why.isPresent());
        input.putClientProperty("JComponent.outline", why.isPresent() ? "error" : null);
    }

    /** Shows the field as it is now; what is being typed, or was and is wrong, is left alone. */
    void show(FormField now, Units units, String origin) {
        show(now, units, origin, FormRows.Notes.NONE);
    }

    /** The same with what is said about it. */
    void show(FormField now, Units units, String origin, FormRows.Notes notes) {
        field = now;
        state(units, notes);
        // who measures sees what he has written; the car is seen in the units of show
        String text = showsDefaults ? now.given(units) : now.given().orElse("");
        if (input instanceof GridPane grid) {
            grid.show(now.grid().orElseThrow(), units);
        } else if (input instanceof JComboBox<?> combo) {
            shown = now.given()
                    .or(() -> now.choices().stream()
                            .findFirst()
                            .filter(first -> showsDefaults && now.slot().isPresent()))
                    .orElse("");
            if (trouble.isVisible()) {
                return;
            }
            combo.setSelectedItem(shown.isEmpty() ? null : shown);
        } else if (input instanceof JTextComponent area) {
            boolean untouched = area.getText().strip().equals(shown.strip());
            shown = text;
            if (untouched || (!area.isFocusOwner() && !trouble.isVisible())) {
                Words.put(area, text);
                say(Optional.empty());
            }
            area.putClientProperty("JTextField.placeholderText", standIn(units));
        }
        String none = now.given().isPresent() ? "" : notes.none().getOrDefault(now.path(), "");
        Words.put(told, words(now, units, none.isEmpty() ? origin : none));
        input.getAccessibleContext().setAccessibleDescription(told.getText());
    }

    /** What stands in the field while it is empty. */
    private String standIn(Units units) {
        String standIn = field.standIn(units);
        return standIn.isEmpty() && showsDefaults ? "not given" : standIn;
    }

    /** Where what stands in the field comes from, and what is unusual about it. */
    private void state(Units units, FormRows.Notes notes) {
        FormField.Standing standing = field.standing(notes.none().keySet());
        boolean unusual = notes.unusual().containsKey(field.path());
        String typed = field.typed(units);
        String words = switch (standing) {
            case GIVEN -> typed.isEmpty() ? "" : "typed " + typed;
            case ESTIMATED -> "estimated";
            case TAKEN_AS_NONE -> "missing, taken as none";
            case BLANK -> "";
        };
        state.setText(!showsDefaults ? "" : unusual ? "unusual" : words);
        state.setToolTipText(unusual ? notes.unusual().get(field.path()) : null);
        boolean marked = standing == FormField.Standing.ESTIMATED || standing == FormField.Standing.TAKEN_AS_NONE;
        state.setIcon(marked && showsDefaults && !unusual ? new FillMark(standing) : null);
        state.setForeground(unusual ? Looks.theme().warning() : Looks.theme().quiet());
    }

    private static String words(FormField field, Units units, String origin) {
        StringBuilder words = new StringBuilder(field.meaning());
        append(
                words,
                field.how().isEmpty()
                        ? ""
                        : "measured " + (field.how().startsWith("from ") ? "" : "by ") + field.how());
        String usual = field.usual(units);
        append(words, usual.isEmpty() ? "" : "usually " + usual);
        append(words, field.given().isEmpty() ? field.rule() : "");
        append(words, origin);
        return words.toString();
    }

    private static void append(StringBuilder words, String more) {
        if (!more.isEmpty()) {
            words.append(words.isEmpty() ? "" : "; ").append(more);
        }
    }
}
