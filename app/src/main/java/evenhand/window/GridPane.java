package evenhand.window;

import evenhand.window.desk.FormField;
import evenhand.window.desk.Grid;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * A table of cells, a line each with what is wrong in it below; the empty line at the end takes another. What is wrong, or not
 * whole yet, stays as it was typed.
 */
final class GridPane extends JPanel {
    private final transient Function<List<List<String>>, Optional<String>> taker;
    private final String path;
    private final String name;
    private transient Grid grid;
    private transient Units units = Units.METRIC;
    private transient List<Line> lines = new ArrayList<>();
    private transient Line next;
    private transient List<Line> built = List.of();
    private final List<String> heads = new ArrayList<>();

    /** @param taker takes other rows; says why not where it cannot */
    GridPane(FormField field, Function<List<List<String>>, Optional<String>> taker) {
        this.taker = taker;
        path = field.path();
        name = ChangeWords.name(path);
        grid = field.grid().orElseThrow();
        next = new Line();
        setOpaque(false);
        StringBuilder widths = new StringBuilder();
        for (Grid.Column column : grid.columns()) {
            widths.append("[").append(width(column)).append("::]"); // wider where the head needs it
        }
        setLayout(new MigLayout("insets 0, gap 4 2, hidemode 3", widths + "[]", ""));
        build();
    }

    private int width(Grid.Column column) {
        boolean many = grid.columns().size() > 2;
        return Looks.em(column.dimension().isPresent() ? (many ? 7 : 9) : many ? 10 : 15);
    }

    /** A row as it is given, or the one that is to be added. */
    private final class Line {
        private List<String> given;
        private final List<JTextField> cells = new ArrayList<>();
        private final JButton remove = new JButton("remove");
        private final Words.Area trouble = Words.warning("trouble with a row of " + name);

        Line() {
            given = grid.columns().stream().map(column -> "").toList();
            for (int i = 0; i < given.size(); i++) {
                int column = i;
                JTextField cell = new JTextField();
                cell.addActionListener(event -> {
                    if (typed(column) && this != next) {
                        SwingUtilities.invokeLater(() -> next.cells.get(0).requestFocusInWindow());
                    }
                });
                cell.addFocusListener(new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent e) {
                        typed(column);
                    }
                });
                cells.add(cell);
            }
            remove.setFont(Looks.small());
            remove.addActionListener(event -> remove());
            trouble.setVisible(false);
        }

        List<String> texts() {
            return cells.stream().map(cell -> cell.getText().strip()).toList();
        }

        /** Takes a cell over; whether it was the last of a row that was added by it. */
        private boolean typed(int column) {
            JTextField cell = cells.get(column);
            if (cell.getText().strip().equals(given.get(column).strip())) {
                say(column, Optional.empty());
                return false;
            }
            Grid.Column head = grid.columns().get(column);
            String text = grid.complete(column, cell.getText(), units);
            boolean adds = this == next;
            Optional<String> wrong = adds && text.isEmpty() ? Optional.empty() : head.problem(text);
            say(column, wrong);
            if (wrong.isPresent()) {
                return false;
            }
            cell.setText(text);
            if (adds && !isWhole()) {
                return false;
            }
            List<String> before = given;
            List<String> now = new ArrayList<>(given);
            now.set(column, text);
            given = adds ? texts() : now;
            if (adds) {
                lines.add(this);
                next = new Line();
            }
            Optional<String> why = taker.apply(rows());
            if (why.isPresent()) {
                if (adds) {
                    lines.remove(this);
                    next = this;
                }
                given = before;
                say(column, why);
            }
            return adds && why.isEmpty();
        }

        private boolean isWhole() {
            for (int i = 0; i < cells.size(); i++) {
                if (grid.columns().get(i).problem(cells.get(i).getText()).isPresent()) {
                    return false;
                }
            }
            return true;
        }

        private void remove() {
            List<Line> before = new ArrayList<>(lines);
            lines.remove(this);
            Optional<String> why = taker.apply(rows());
            if (why.isPresent()) {
                lines = before;
                say(-1, why);
            }
        }

        private void say(int column, Optional<String> why) {
            String head = column < 0 ? "" : grid.columns().get(column).label() + " ";
            Words.put(trouble, why.map(words -> head + words).orElse(""));
            trouble.setVisible(why.isPresent());
            for (int i = 0; i < cells.size(); i++) {
                cells.get(i).putClientProperty("JComponent.outline", why.isPresent() && i == column ? "error" : null);
            }
        }

        /** Shows other texts; what is being typed, or was and is wrong, is left alone. */
        void show(List<String> now) {
            for (int i = 0; i < cells.size(); i++) {
                JTextField cell = cells.get(i);
                boolean untouched = cell.getText().strip().equals(given.get(i).strip());
                if ((untouched || (!cell.isFocusOwner() && !trouble.isVisible()))
                        && !cell.getText().equals(now.get(i))) {
                    cell.setText(now.get(i));
                }
            }
            given = now;
        }

        void name(int row, boolean last) {
            for (int i = 0; i < cells.size(); i++) {
                Grid.Column column = grid.columns().get(i);
                JTextField cell = cells.get(i);
                cell.setName("field " + path + "[" + row + "]." + column.key());
                cell.getAccessibleContext()
                        .setAccessibleName(
                                name + ", " + (last ? "new row" : "row " + (row + 1)) + ", " + grid.head(i, units));
                cell.getAccessibleContext().setAccessibleDescription(column.meaning());
                cell.setToolTipText(column.meaning());
                cell.putClientProperty("JTextField.placeholderText", last && i == 0 ? "add one" : null);
            }
            remove.setName("remove " + path + "[" + row + "]");
            remove.getAccessibleContext().setAccessibleName("remove row " + (row + 1) + " of " + name);
            remove.setVisible(!last);
            trouble.setName("trouble " + path + "[" + row + "]");
        }
    }

    private List<List<String>> rows() {
        return lines.stream().map(line -> line.given).toList();
    }

    /** Shows the table as it is now, each row by the line that it had. */
    void show(Grid now, Units shown) {
        grid = now;
        units = shown;
        List<Line> left = new ArrayList<>(lines);
        List<Optional<Line>> found = new ArrayList<>();
        for (List<String> row : now.rows()) {
            Optional<Line> same =
                    left.stream().filter(line -> line.given.equals(row)).findFirst();
            same.ifPresent(left::remove);
            found.add(same);
        }
        boolean changedOnly = now.rows().size() == lines.size();
        List<Line> placed = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            Line line = found.get(i).orElseGet(() -> changedOnly && !left.isEmpty() ? left.remove(0) : new Line());
            line.show(now.rows().get(i));
            placed.add(line);
        }
        lines = placed;
        boolean moved = !lines.equals(built) || next.cells.get(0).getParent() == null;
        if (moved || !headsOf(now, shown).equals(heads)) {
            build();
        }
    }

    private static List<String> headsOf(Grid grid, Units units) {
        List<String> heads = new ArrayList<>();
        for (int i = 0; i < grid.columns().size(); i++) {
            heads.add(grid.head(i, units));
        }
        return heads;
    }

    private void build() {
        built = List.copyOf(lines);
        Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        removeAll();
        heads.clear();
        for (int i = 0; i < grid.columns().size(); i++) {
            JLabel head = new JLabel(grid.head(i, units));
            heads.add(head.getText());
            head.setFont(Looks.small());
            head.setForeground(Looks.theme().quiet());
            head.setToolTipText(grid.columns().get(i).meaning());
            add(head);
        }
        add(new JLabel(), "wrap");
        for (int i = 0; i <= lines.size(); i++) {
            boolean last = i == lines.size();
            Line line = last ? next : lines.get(i);
            line.name(i, last);
            line.cells.forEach(cell -> add(cell, "growx"));
            add(line.remove, "wrap");
            add(line.trouble, "span, growx, wmin 60, wrap");
        }
        if (focus != null && focus.getParent() == this) {
            focus.requestFocusInWindow();
        }
        revalidate();
        repaint();
    }

    /** Whether something wrong, or a row that is not whole, was typed into one of its lines. */
    boolean isWrong() {
        return lines.stream().anyMatch(line -> line.trouble.isVisible())
                || next.cells.stream().anyMatch(cell -> !cell.getText().isBlank());
    }
}
