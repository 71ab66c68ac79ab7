package evenhand.window;

import evenhand.window.desk.FormField;
import evenhand.window.desk.Grid;
import evenhand.window.desk.PointRow;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/**
 * The points of a link as a table: a line for each, its coordinates beside one another, what is wrong in it below. What is wrong
 * stays as it was typed.
 */
final class PointsPane extends JPanel {
    private final transient FormRow.Taker taker;
    private final transient Consumer<FormField> focused;
    private final JCheckBox right = new JCheckBox("show what differs on the right side");
    private transient Map<String, Line> lines = new LinkedHashMap<>();
    private transient List<Grid.Column> columns = List.of();
    private transient Grid grid = new Grid(Grid.Kind.OBJECTS, List.of(), List.of());
    private transient Units units = Units.METRIC;
    private transient List<String> built = List.of();

    /**
     * A table of points.
     *
     * @param path of the link
     * @param rightAsked is told whether what could differ on the right is to be shown
     * @param focused is told the field that gets the keys
     */
    PointsPane(String path, FormRow.Taker taker, Consumer<Boolean> rightAsked, Consumer<FormField> focused) {
        this.taker = taker;
        this.focused = focused;
        setOpaque(false);
        right.setName("right " + path);
        right.setFont(Looks.small());
        right.setOpaque(false);
        right.getAccessibleContext().setAccessibleName("show what differs on the right of " + ChangeWords.name(path));
        right.addActionListener(event -> rightAsked.accept(right.isSelected()));
    }

    /** One point. */
    private final class Line {
        private PointRow row;
        private final Map<String, JTextField> cells = new LinkedHashMap<>();
        /** What stands in the file, by cell. */
        private final Map<String, String> given = new LinkedHashMap<>();

        /** What is wrong, by cell. */
        private final Map<String, String> wrong = new LinkedHashMap<>();

        private final Words.Area trouble;

        Line(PointRow row) {
            this.row = row;
            trouble = Words.warning("trouble with " + row.label());
            trouble.setName("trouble " + row.path());
            trouble.setVisible(false);
            for (Grid.Column column : columns) {
                row.cell(column).ifPresent(field -> cells.put(column.key(), cell(column, field)));
            }
        }

        private JTextField cell(Grid.Column column, FormField field) {
            JTextField cell = new JTextField();
            cell.setName("field " + field.path());
            cell.getAccessibleContext().setAccessibleName(ChangeWords.name(field.path()));
            cell.getAccessibleContext().setAccessibleDescription(row.meaning() + ", " + field.meaning());
            cell.addActionListener(event -> typed(column));
            cell.addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent e) {
                    focused.accept(field);
                }

                @Override
                public void focusLost(FocusEvent e) {
                    typed(column);
                }
            });
            return cell;
        }

        private void typed(Grid.Column column) {
            JTextField cell = Objects.requireNonNull(cells.get(column.key()));
            String was = given.getOrDefault(column.key(), "");
            if (cell.getText().strip().equals(was.strip())) {
                say(column, Optional.empty());
                return;
            }
            String text = grid.complete(columns.indexOf(column), cell.getText(), units);
            Optional<String> why = taker.take(row.cell(column).orElseThrow(), text);
            say(column, why);
            if (why.isEmpty()) {
                given.put(column.key(), text);
                cell.setText(text);
            }
        }

        private void say(Grid.Column column, Optional<String> why) {
            why.ifPresentOrElse(
                    words -> wrong.put(column.key(), column.label() + " " + words), () -> wrong.remove(column.key()));
            Words.put(trouble, String.join("; ", wrong.values()));
            trouble.setVisible(!wrong.isEmpty());
            cells.forEach((key, cell) ->
                    cell.putClientProperty("JComponent.outline", wrong.containsKey(key) ? "error" : null));
        }

        /** Shows the point as it is now; what is being typed, or was and is wrong, is left alone. */
        void show(PointRow now) {
            row = now;
            for (Grid.Column column : columns) {
                JTextField cell = cells.get(column.key());
                Optional<FormField> field = now.cell(column);
                if (cell == null || field.isEmpty()) {
                    continue;
                }
                String text = field.get().given().orElse("");
                boolean untouched = cell.getText()
                        .strip()
                        .equals(given.getOrDefault(column.key(), "").strip());
                given.put(column.key(), text);
                if (untouched || (!cell.isFocusOwner() && !wrong.containsKey(column.key()))) {
                    Words.put(cell, text);
                    if (wrong.containsKey(column.key())) {
                        say(column, Optional.empty());
                    }
                }
                cell.putClientProperty("JTextField.placeholderText", field.get().standIn(units));
            }
        }
    }

    /**
     * Shows the table as it is now.
     *
     * @param mayDiffer whether more could differ on the right than does
     * @param shown whether that is shown
     */
    void show(List<PointRow> rows, boolean mayDiffer, boolean shown, Units shownUnits) {
        units = shownUnits;
        columns = PointRow.columns(rows);
        grid = new Grid(
                Grid.Kind.OBJECTS,
                columns,
                rows.stream()
                        .map(row -> columns.stream()
                                .map(column -> row.cell(column)
                                        .flatMap(FormField::given)
                                        .orElse(""))
                                .toList())
                        .toList());
        Map<String, Line> next = new LinkedHashMap<>();
        for (PointRow row : rows) {
            Line old = lines.get(row.path());
            next.put(row.path(), old != null && old.cells.size() == row.cells().size() ? old : new Line(row));
        }
        lines = next;
        right.setSelected(shown);
        right.setVisible(mayDiffer || shown);
        rows.forEach(row -> Objects.requireNonNull(next.get(row.path())).show(row));
        List<String> wanted = new ArrayList<>(heads());
        rows.forEach(row -> wanted.add(row.path() + row.cells().size()));
        wanted.add(String.valueOf(right.isVisible()));
        if (!wanted.equals(built)) {
            built = wanted;
            build(rows);
        }
    }

    private List<String> heads() {
        List<String> heads = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            heads.add(grid.head(i, units));
        }
        return heads;
    }

    private void build(List<PointRow> rows) {
        Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        removeAll();
        StringBuilder widths = new StringBuilder("[" + Looks.em(8) + "!]10");
        columns.forEach(column -> widths.append("[").append(Looks.em(8.8)).append("!]10"));
        setLayout(new MigLayout("insets 2 0 2 0, gap 0 2, fillx, hidemode 3", widths + "[grow,fill]", ""));
        add(new JLabel());
        List<String> heads = heads();
        for (int i = 0; i < heads.size(); i++) {
            JLabel head = new JLabel(heads.get(i));
            head.setFont(Looks.small());
            head.setForeground(Looks.theme().quiet());
            head.setToolTipText(columns.get(i).meaning());
            add(head);
        }
        add(new JLabel(), "wrap");
        for (PointRow row : rows) {
            Line line = Objects.requireNonNull(lines.get(row.path()));
            JLabel label = new JLabel(row.label());
            label.setToolTipText(row.path());
            add(label);
            for (Grid.Column column : columns) {
                JTextField cell = line.cells.get(column.key());
                add(cell == null ? new JLabel() : cell, "growx");
                if (cell != null && label.getLabelFor() == null) {
                    label.setLabelFor(cell);
                }
            }
            Words.Area meaning = Words.quiet("meaning of " + row.label());
            meaning.setFocusable(false); // Tab goes from cell to cell; a cell tells its meaning itself
            meaning.setText(row.meaning());
            add(new JLabel(), "wrap");
            add(meaning, "skip 1, span, growx, wmin 60, gapbottom 4, wrap");
            add(line.trouble, "skip 1, span, growx, wmin 60, wrap");
        }
        add(right, "skip 1, span");
        if (focus != null && focus.getParent() == this) {
            focus.requestFocusInWindow();
        }
        revalidate();
        repaint();
    }

    /** Whether something wrong was typed into one of its cells. */
    boolean isWrong() {
        return lines.values().stream().anyMatch(line -> !line.wrong.isEmpty());
    }
}
