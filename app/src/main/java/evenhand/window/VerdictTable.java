package evenhand.window;

import evenhand.look.SetupStyle;
import evenhand.look.Typeface;
import evenhand.window.desk.Bench;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.Verdict;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import org.jspecify.annotations.Nullable;

/** A line for each set-up that is shown, the active one marked; choosing a line makes it the active one. */
final class VerdictTable extends JPanel {
    private static final double ROW = 1.75;
    private static final double NAME = 16;
    private static final double LEAST_NAME = 8;

    /** A number with its doubt. */
    private static final double DOUBTED = 10;

    private static final double MOST_AMOUNT = 12;

    /** Part of the quiet ink behind the active line. */
    private static final double ACTIVE = 0.2;

    /** Left and right of what stands in a cell, px. */
    private static final int PAD = 8;

    private final transient Bench bench;
    private final Model model = new Model();
    private final JTable table = new JTable(model) {
        @Override
        protected JTableHeader createDefaultTableHeader() {
            return new Head(this);
        }

        @Override
        public @Nullable String getToolTipText(MouseEvent event) {
            Component cell = cellUnder(event);
            return cell == null ? null : cell.getAccessibleContext().getAccessibleName();
        }

        private @Nullable Component cellUnder(MouseEvent event) {
            int row = rowAtPoint(event.getPoint());
            int column = columnAtPoint(event.getPoint());
            return row < 0 || column < 0 ? null : prepareRenderer(getCellRenderer(row, column), row, column);
        }

        @Override
        public void updateUI() {
            super.updateUI();
            setRowHeight(Looks.em(ROW));
            setShowGrid(false);
            setBackground(Looks.theme().background());
        }
    };
    private final VerdictCell cell = new VerdictCell();
    private boolean late;
    private boolean showing;

    VerdictTable(Bench bench) {
        super(new BorderLayout());
        this.bench = bench;
        setOpaque(false);
        table.setName("verdict");
        table.getAccessibleContext().setAccessibleName("verdict, a line for each set-up");
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getTableHeader().setReorderingAllowed(false);
        table.getTableHeader().setResizingAllowed(false);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_ALL_COLUMNS);
        table.setIntercellSpacing(new java.awt.Dimension(0, 0));
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        table.getSelectionModel().addListSelectionListener(event -> choose());
        add(table.getTableHeader(), BorderLayout.NORTH);
        add(table, BorderLayout.CENTER);
    }

    private void choose() {
        int row = table.getSelectedRow();
        if (!showing && row >= 0) {
            bench.act(new TrialAct.Activate(model.lines.get(row).setup()));
        }
    }

    void show(Verdict verdict, String active) {
        showing = true;
        late = false;
        boolean sameColumns = model.columns.equals(verdict.columns());
        boolean sameLines = model.lines.size() == verdict.lines().size();
        model.columns = verdict.columns();
        model.lines = verdict.lines();
        cell.measure(verdict, getFontMetrics(Typeface.plain(Looks.size())), getFontMetrics(Looks.small()));
        if (!sameColumns) {
            model.fireTableStructureChanged();
            columns();
        } else if (!sameLines) {
            model.fireTableDataChanged();
        }
        model.active = model.lines.stream().map(Verdict.Line::setup).toList().indexOf(active);
        table.getSelectionModel().setSelectionInterval(model.active, model.active);
        showing = false;
        if (!sameColumns || !sameLines) {
            revalidate();
        }
        repaint();
    }

    void showLate() {
        late = true;
        repaint();
    }

    private void columns() {
        for (int i = 0; i < table.getColumnCount(); i++) {
            TableColumn column = table.getColumnModel().getColumn(i);
            boolean amount = i > 0 && model.columns.get(i - 1).kind() != Verdict.Kind.WORDS;
            column.setCellRenderer(i == 0 ? new Name() : cells());
            column.setHeaderRenderer(new HeadCell(amount));
            if (i == 0) {
                column.setMinWidth(Looks.em(LEAST_NAME));
                column.setPreferredWidth(Looks.em(NAME));
                column.setMaxWidth(Looks.em(1.5 * NAME));
                continue;
            }
            Verdict.Column said = model.columns.get(i - 1);
            int least = getFontMetrics(Looks.small()).stringWidth(said.words()) + 2 * PAD;
            column.setMinWidth(
                    said.kind() == Verdict.Kind.NUMBER_WITH_DOUBT ? Math.max(least, Looks.em(DOUBTED)) : least);
            column.setPreferredWidth(said.kind() == Verdict.Kind.WORDS ? Looks.em(2 * NAME) : Looks.em(DOUBTED));
            if (said.kind() != Verdict.Kind.WORDS) {
                column.setMaxWidth(Looks.em(MOST_AMOUNT));
            }
        }
    }

    /** The active line is marked as it is in the list of set-ups. */
    private Color behind(int row) {
        return row == model.active && model.lines.size() > 1
                ? Looks.theme().mixed(Looks.theme().quiet(), ACTIVE)
                : Looks.theme().background();
    }

    private TableCellRenderer cells() {
        return (owner, value, selected, focus, row, column) -> cell.of(
                (Verdict.Cell) value,
                model.columns.get(column - 1).kind(),
                late,
                behind(row),
                Looks.theme().ink());
    }

    private static final class Model extends AbstractTableModel {
        private transient List<Verdict.Column> columns = List.of();
        private transient List<Verdict.Line> lines = List.of();
        private int active = -1;

        @Override
        public int getRowCount() {
            return lines.size();
        }

        @Override
        public int getColumnCount() {
            return columns.size() + 1;
        }

        @Override
        public String getColumnName(int column) {
            return column == 0 ? "" : columns.get(column - 1).words();
        }

        @Override
        public Object getValueAt(int row, int column) {
            Verdict.Line line = lines.get(row);
            return column == 0 ? line : line.cells().get(column - 1);
        }
    }

    /** The heads say what their words mean. */
    private final class Head extends JTableHeader {
        Head(JTable owner) {
            super(owner.getColumnModel());
        }

        @Override
        public @Nullable String getToolTipText(MouseEvent event) {
            int column = columnAtPoint(event.getPoint());
            return column < 1
                    ? null
                    : Words.wrapped(model.columns.get(column - 1).meaning());
        }
    }

    private static final class HeadCell extends DefaultTableCellRenderer {
        HeadCell(boolean amount) {
            setHorizontalAlignment(amount ? SwingConstants.RIGHT : SwingConstants.LEFT);
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable owner, Object value, boolean selected, boolean focus, int row, int column) {
            JLabel label = (JLabel) super.getTableCellRendererComponent(owner, value, false, false, row, column);
            label.setFont(Looks.small());
            label.setForeground(Looks.theme().quiet());
            label.setBackground(Looks.theme().background());
            label.setBorder(BorderFactory.createEmptyBorder(2, PAD, 2, PAD));
            return label;
        }
    }

    private final class Name extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable owner, Object value, boolean selected, boolean focus, int row, int column) {
            Verdict.Line line = (Verdict.Line) value;
            JLabel label = (JLabel) super.getTableCellRendererComponent(owner, line.setup(), false, focus, row, column);
            label.setFont(row == model.active ? Looks.strong() : Typeface.plain(Looks.size()));
            label.setBackground(behind(row));
            label.setIcon(new SetupList.Sample(new SetupStyle(line.look()), Optional.empty()));
            label.setBorder(BorderFactory.createEmptyBorder(0, PAD, 0, PAD));
            label.setForeground(late ? Looks.theme().quiet() : Looks.theme().ink());
            return label;
        }
    }
}
