package evenhand.window;

import evenhand.look.Typeface;
import evenhand.window.desk.Figures;
import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;

/** Figures side by side: numbers right-aligned, digits of one width, the unit beside the words. */
final class FiguresTable extends JPanel {
    private static final int FIXED = 2;

    private final Model model = new Model();
    private final JTable table = new JTable(model) {
        @Override
        public void updateUI() {
            super.updateUI();
            setRowHeight(Looks.em(1.75));
        }
    };
    private boolean late;

    FiguresTable() {
        super(new BorderLayout());
        setOpaque(false);
        table.setName("figures");
        table.getAccessibleContext().setAccessibleName("figures side by side");
        table.setShowVerticalLines(false);
        table.setFillsViewportHeight(true);
        table.setRowHeight(Looks.em(1.75));
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_SUBSEQUENT_COLUMNS);
        table.setDefaultRenderer(Object.class, new Cell());
        add(table.getTableHeader(), BorderLayout.NORTH);
        add(table, BorderLayout.CENTER);
    }

    void show(Figures figures) {
        late = false;
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
            columns();
        } else if (!sameRows) {
            model.fireTableDataChanged();
            revalidate();
        } else {
            table.repaint();
        }
    }

    void showLate() {
        late = true;
        repaint();
    }

    /** What is shown, for tests. */
    Figures figures() {
        return model.figures;
    }

    private void columns() {
        for (int i = 0; i < table.getColumnCount(); i++) {
            TableColumn column = table.getColumnModel().getColumn(i);
            column.setPreferredWidth(
                    i == 0 ? Looks.em(21) : i == 1 ? Looks.em(5) : Math.max(Looks.em(9), headWidth(i)));
            DefaultTableCellRenderer head = new DefaultTableCellRenderer();
            head.setHorizontalAlignment(i < FIXED ? SwingConstants.LEFT : SwingConstants.RIGHT);
            head.setFont(Looks.strong());
            head.setBorder(BorderFactory.createEmptyBorder(4, 8, 4, 8));
            column.setHeaderRenderer((t, value, selected, focus, row, index) -> {
                Component cell = head.getTableCellRendererComponent(t, value, false, false, row, index);
                cell.setFont(Looks.strong());
                return cell;
            });
        }
        revalidate();
    }

    private int headWidth(int column) {
        String head = model.getColumnName(column);
        return Math.min(Looks.em(18), getFontMetrics(Looks.strong()).stringWidth(head) + Looks.em(2));
    }

    private static final class Model extends AbstractTableModel {
        private transient Figures figures = Figures.NONE;

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
            Figures.Line line = figures.lines().get(row);
            if (!(line instanceof Figures.Row own)) {
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
            boolean heading = model.figures.lines().get(row) instanceof Figures.Heading;
            label.setHorizontalAlignment(column < FIXED ? SwingConstants.LEFT : SwingConstants.RIGHT);
            label.setFont(heading ? Looks.strong() : Typeface.plain(Looks.size()));
            label.setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 8));
            if (!selected) {
                label.setBackground(Looks.theme().background());
                boolean quiet = late || heading || column == 1;
                label.setForeground(
                        quiet ? Looks.theme().quiet() : Looks.theme().ink());
            }
            return label;
        }
    }
}
