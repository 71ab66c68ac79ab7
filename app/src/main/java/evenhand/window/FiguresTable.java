package evenhand.window;

import evenhand.forms.Table;
import evenhand.window.desk.Desk;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.FontMetrics;
import java.awt.Insets;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;

/**
 * Figures side by side: numbers right-aligned, digits of one width, the unit beside the words. A switch in the head puts the difference
 * from the base set-up beside each of the others.
 */
final class FiguresTable extends JPanel {
    private static final int FIXED = 2;

    /** Left and right of what stands in a cell, px. */
    private static final int PAD = 8;

    private final Model model = new Model();
    private final JTable table = new JTable(model) {
        @Override
        public void updateUI() {
            super.updateUI();
            setRowHeight(Looks.em(1.75));
        }
    };
    private final JToggleButton differences = new JToggleButton("and differences");
    private Table own = Table.NONE;
    private String base = "";
    private boolean late;

    FiguresTable() {
        this(wanted -> {});
    }

    /** @param wish is told whether differences are wanted */
    FiguresTable(Consumer<Boolean> wish) {
        super(new BorderLayout());
        setOpaque(false);
        setVisible(false); // until there are any
        table.setName("figures");
        table.getAccessibleContext().setAccessibleName("figures side by side");
        table.setShowVerticalLines(false);
        table.setFillsViewportHeight(true);
        table.setRowHeight(Looks.em(1.75));
        table.getTableHeader().setReorderingAllowed(false);
        differences.setName("differences");
        differences.putClientProperty("JButton.buttonType", "borderless");
        differences.setFont(Looks.small());
        differences.setMargin(new Insets(0, 4, 0, 4));
        differences.addActionListener(event -> wish.accept(differences.isSelected()));
        table.getTableHeader().setLayout(new FlowLayout(FlowLayout.LEADING, 4, 2));
        table.getTableHeader().add(differences);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_SUBSEQUENT_COLUMNS);
        table.setDefaultRenderer(Object.class, new Cell());
        add(table.getTableHeader(), BorderLayout.NORTH);
        add(table, BorderLayout.CENTER);
    }

    /** How the figures of the answer are shown from now on. */
    void show(Desk now) {
        boolean wanted = now.look().arrangement().differences();
        if (wanted != differences.isSelected() || !base.equals(now.work().base())) {
            differences.setSelected(wanted);
            base = now.work().base();
            lay();
        }
    }

    void show(Table figures) {
        own = figures;
        late = false;
        lay();
    }

    private void lay() {
        boolean compares = own.compares(base);
        differences.setVisible(compares);
        differences.setToolTipText("how much each differs from “" + base + "”");
        show(own, compares && differences.isSelected());
    }

    private void show(Table plain, boolean withDifferences) {
        Table figures = withDifferences ? plain.withDifferences(base) : plain;
        if (figures.equals(model.figures)) {
            repaint();
            return;
        }
        boolean sameColumns = figures.columns().equals(model.figures.columns());
        boolean sameRows = figures.lines().size() == model.figures.lines().size();
        model.figures = figures;
        setVisible(!figures.lines().isEmpty());
        if (!sameColumns) {
            model.fireTableStructureChanged();
            heads();
        } else if (!sameRows) {
            model.fireTableDataChanged();
        }
        widths(!sameColumns || !sameRows);
        table.repaint();
    }

    void showLate() {
        late = true;
        repaint();
    }

    /** What is shown, for tests. */
    Table figures() {
        return model.figures;
    }

    private void heads() {
        for (int i = 0; i < table.getColumnCount(); i++) {
            TableColumn column = table.getColumnModel().getColumn(i);
            DefaultTableCellRenderer head = new DefaultTableCellRenderer();
            head.setHorizontalAlignment(i < FIXED ? SwingConstants.LEFT : SwingConstants.RIGHT);
            head.setBorder(BorderFactory.createEmptyBorder(4, PAD, 4, PAD));
            column.setHeaderRenderer((t, value, selected, focus, row, index) -> {
                JLabel cell = (JLabel) head.getTableCellRendererComponent(t, value, false, false, row, index);
                boolean beside = isDifference(index);
                cell.setFont(beside ? Looks.small() : Looks.strong());
                cell.setForeground(
                        beside ? Looks.theme().quiet() : Looks.theme().ink());
                cell.setToolTipText(cell.getText().isEmpty() ? null : cell.getText());
                return cell;
            });
        }
    }

    /**
     * Every column has at least what its cells need; where there is room it has more. While values move, columns grow and do not
     * shrink.
     */
    private void widths(boolean anew) {
        boolean units = model.figures.lines().stream()
                .anyMatch(line -> line instanceof Table.Row row && !row.unit().isEmpty());
        for (int i = 0; i < table.getColumnCount(); i++) {
            TableColumn column = table.getColumnModel().getColumn(i);
            int head = headNeeds(i);
            int needed = Math.max(cellsNeed(i), Math.min(head, Looks.em(9)));
            int wished = i == 0
                    ? Math.max(Looks.em(21), headingsNeed())
                    : i == 1 ? Looks.em(units ? 5 : 0) : Math.max(Looks.em(isDifference(i) ? 6 : 9), head);
            // Words and long names of set-ups give way first: they can be read elsewhere.
            int least = i == 0 ? Math.min(needed, Looks.em(12)) : needed;
            if (anew || least > column.getMinWidth()) {
                column.setMinWidth(least);
                column.setPreferredWidth(Math.max(needed, wished));
            }
        }
        revalidate();
    }

    private boolean isDifference(int column) {
        return column >= FIXED && model.getColumnName(column).equals(Table.DIFFERENCE) && differences.isSelected();
    }

    private int cellsNeed(int column) {
        FontMetrics metrics = getFontMetrics(Looks.body());
        int needed = 0;
        for (int row = 0; row < model.getRowCount(); row++) {
            if (model.figures.lines().get(row) instanceof Table.Row) {
                needed = Math.max(needed, metrics.stringWidth(String.valueOf(model.getValueAt(row, column))));
            }
        }
        return needed + 2 * PAD;
    }

    private int headingsNeed() {
        FontMetrics metrics = getFontMetrics(Looks.strong());
        int needed = 0;
        for (Table.Line line : model.figures.lines()) {
            if (line instanceof Table.Heading) {
                needed = Math.max(needed, metrics.stringWidth(line.words()));
            }
        }
        return Math.min(Looks.em(32), needed + 2 * PAD);
    }

    private int headNeeds(int column) {
        return Math.min(
                Looks.em(18), getFontMetrics(Looks.strong()).stringWidth(model.getColumnName(column)) + 2 * PAD);
    }

    private static final class Model extends AbstractTableModel {
        private transient Table figures = Table.NONE;

        @Override
        public int getRowCount() {
            return figures.lines().size();
        }

        @Override
        public int getColumnCount() {
            return FIXED + figures.columns().size();
        }

        @Override
        public String getColumnName(int column) {
            return column < FIXED ? "" : figures.columns().get(column - FIXED);
        }

        @Override
        public Object getValueAt(int row, int column) {
            Table.Line line = figures.lines().get(row);
            if (!(line instanceof Table.Row own)) {
                return column == 0 ? line.words() : "";
            }
            if (column < FIXED) {
                return column == 0 ? own.words() : own.unit();
            }
            int cell = column - FIXED;
            return cell < own.cells().size() ? own.cells().get(cell) : "";
        }
    }

    private final class Cell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable owner, Object value, boolean selected, boolean focus, int row, int column) {
            JLabel label = (JLabel) super.getTableCellRendererComponent(owner, value, selected, focus, row, column);
            boolean heading = model.figures.lines().get(row) instanceof Table.Heading;
            label.setHorizontalAlignment(column < FIXED ? SwingConstants.LEFT : SwingConstants.RIGHT);
            label.setFont(heading ? Looks.strong() : Looks.body());
            label.setBorder(BorderFactory.createEmptyBorder(0, PAD, 0, PAD));
            if (!selected) {
                label.setBackground(Looks.theme().background());
                boolean quiet = late || heading || column == 1 || isDifference(column);
                label.setForeground(
                        quiet ? Looks.theme().quiet() : Looks.theme().ink());
            }
            return label;
        }
    }
}
