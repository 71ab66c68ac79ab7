package evenhand.window;

import evenhand.look.Typeface;
import evenhand.window.desk.Bench;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;

/** What was done, in words, the latest first: Enter or a click on a line goes there, whether back or forth. */
final class HistoryList extends JList<String> {
    private static final int MOST_ROWS = 16;

    private final transient Bench bench;
    private final transient Bench.History history;

    HistoryList(Bench bench) {
        this.bench = bench;
        history = bench.history();
        setListData(history.acts().toArray(new String[0]));
        setName("history");
        getAccessibleContext().setAccessibleName("what was done, the latest first; Enter goes there");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setVisibleRowCount(Math.min(MOST_ROWS, history.acts().size()));
        setFixedCellWidth(Looks.em(34));
        setCellRenderer(new Line());
        setSelectedIndex(history.now());
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "go there");
        getActionMap().put("go there", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                go();
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent e) {
                int line = locationToIndex(e.getPoint());
                if (line >= 0 && getCellBounds(line, line).contains(e.getPoint())) {
                    setSelectedIndex(line);
                    go();
                }
            }
        });
    }

    /** Shows it over the window, below a place of a component. */
    static void show(Bench bench, Component by, int x, int y) {
        HistoryList list = new HistoryList(bench);
        JPopupMenu popup = new JPopupMenu();
        popup.setName("history popup");
        JScrollPane scroll = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        popup.add(Words.head("Go back to"));
        popup.add(scroll);
        popup.show(by, x, y);
        list.ensureIndexIsVisible(list.getSelectedIndex());
        SwingUtilities.invokeLater(list::requestFocusInWindow);
    }

    private void go() {
        int back = getSelectedIndex() - history.now();
        if (SwingUtilities.getAncestorOfClass(JPopupMenu.class, this) instanceof JPopupMenu popup) {
            popup.setVisible(false);
        }
        if (back != 0) {
            bench.go(back);
        }
    }

    /** What stands in a line: whether it is the work as it is, or was taken back, is told in words. */
    String said(int line) {
        String act = history.acts().get(line);
        return line == history.now() ? "now: " + act : line < history.now() ? act + " (taken back)" : act;
    }

    private final class Line extends DefaultListCellRenderer {
        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            String said = said(index);
            JLabel label = (JLabel) super.getListCellRendererComponent(list, said, index, selected, focus);
            label.setToolTipText(said);
            label.setBorder(BorderFactory.createEmptyBorder(3, 8, 3, 8));
            label.setFont(index == history.now() ? Looks.strong() : Typeface.plain(Looks.size()));
            if (index < history.now() && !selected) {
                label.setForeground(Looks.theme().quiet());
            }
            return label;
        }
    }
}
