package evenhand.window;

import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import evenhand.scenario.Setup;
import evenhand.window.desk.Arrangement;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.SetupAct;
import evenhand.window.desk.TrialAct;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** The set-ups, each with its colour, line and marker; a tick shows it, a click makes it the one that is adjusted. */
final class SetupList extends JList<String> implements Bench.View {
    private static final double WIDTH = 2.6;
    private static final double TICK = 1.7;
    private static final String KEYS =
            "Space shows or hides in the answers, F2 renames, Delete deletes, a drag or Alt with up and down moves";

    private final transient Bench bench;
    private final DefaultListModel<String> model = new DefaultListModel<>();
    private final transient SetupDrag drag;
    private String meant = "";

    /** What is done to a set-up from outside the list. */
    interface Wishes {
        void rename(String name);

        void delete(String name);
    }

    SetupList(Bench bench, Wishes wishes) {
        this.bench = bench;
        setModel(model);
        drag = new SetupDrag(this, this::place);
        if (!GraphicsEnvironment.isHeadless()) {
            setDragEnabled(true); // a drag then turns to no other set-up
        }
        addMouseListener(drag);
        addMouseMotionListener(drag);
        setName("set-ups");
        getAccessibleContext().setAccessibleName("set-ups");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new Cell());
        setToolTipText(KEYS);
        addListSelectionListener(event -> {
            String name = getSelectedValue();
            if (name != null
                    && !event.getValueIsAdjusting()
                    && !name.equals(bench.desk().work().active())) {
                bench.act(new TrialAct.Activate(name));
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                int index = locationToIndex(e.getPoint());
                if (index >= 0
                        && getCellBounds(index, index).contains(e.getPoint())
                        && e.getButton() == MouseEvent.BUTTON1) {
                    if (e.getClickCount() == 2) {
                        wishes.rename(model.get(index));
                    } else {
                        drag.hold(index, e);
                    }
                }
            }
        });
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent e) {
                String name = getSelectedValue();
                if (name == null) {
                    return;
                }
                switch (e.getKeyCode()) {
                    case KeyEvent.VK_ESCAPE -> {
                        if (!drag.cancel()) {
                            return;
                        }
                    }
                    case KeyEvent.VK_SPACE -> toggle(name);
                    case KeyEvent.VK_F2 -> wishes.rename(name);
                    case KeyEvent.VK_DELETE -> wishes.delete(name);
                    case KeyEvent.VK_UP, KeyEvent.VK_DOWN -> {
                        if (!e.isAltDown()) {
                            return;
                        }
                        move(name, e.getKeyCode() == KeyEvent.VK_UP ? -1 : 1);
                    }
                    default -> {
                        return;
                    }
                }
                e.consume();
            }
        });
    }

    /** A click on a tick is for the tick alone: it makes no other set-up the active one. */
    @Override
    protected void processMouseEvent(MouseEvent e) {
        int index = locationToIndex(e.getPoint());
        boolean onTick = index >= 0
                && e.getX() < 10 + Looks.em(TICK)
                && getCellBounds(index, index).contains(e.getPoint())
                && SwingUtilities.isLeftMouseButton(e);
        if (!onTick || e.getID() == MouseEvent.MOUSE_ENTERED || e.getID() == MouseEvent.MOUSE_EXITED) {
            super.processMouseEvent(e);
        } else if (e.getID() == MouseEvent.MOUSE_PRESSED) {
            requestFocusInWindow();
            toggle(model.get(index));
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Looks.surface());
        setTransferHandler(null); // a file dropped here is for the window
    }

    /** A name that is too long ends in dots. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        drag.paint((Graphics2D) g);
    }

    private void toggle(String name) {
        bench.act(new TrialAct.Show(name, !bench.desk().work().chosen().contains(name)));
    }

    void move(String name, int by) {
        int to = model.indexOf(name) + by;
        if (to >= 0 && to < model.size()) {
            place(name, to);
        }
    }

    /** Moves one to a place of the list without it: in the file it then stands behind the one before it here. */
    private void place(String name, int to) {
        List<String> others = new ArrayList<>(java.util.Collections.list(model.elements()));
        others.remove(name);
        List<String> file = new ArrayList<>(bench.desk().work().scenario().setups().stream()
                .map(Setup::name)
                .toList());
        file.remove(name);
        int place = to == 0 ? file.indexOf(others.get(0)) : file.indexOf(others.get(to - 1)) + 1;
        bench.act(new SetupAct.MoveSetup(name, place));
    }

    /** The one that a menu beside the pointer is of, or beside the list where a key has called it. */
    String meant() {
        return meant;
    }

    @Override
    public @Nullable Point getPopupLocation(@Nullable MouseEvent e) {
        int index = e == null ? -1 : locationToIndex(e.getPoint());
        meant = index >= 0 ? model.get(index) : bench.desk().work().active();
        return e == null ? null : e.getPoint();
    }

    @Override
    public void show(Desk before, Desk now) {
        boolean all = now.look().arrangement().isOpened(Arrangement.HIDDEN);
        List<String> names = now.work().listed().stream()
                .map(Setup::name)
                .filter(name -> all || !now.work().shelf().hidden().contains(name))
                .toList();
        if (!names.equals(java.util.Collections.list(model.elements()))) {
            model.clear();
            model.addAll(names);
            setVisibleRowCount(names.size());
            revalidate();
        }
        if (!now.work().active().equals(getSelectedValue())) {
            setSelectedValue(now.work().active(), true);
        }
        if (!before.work().equals(now.work()) || !before.look().isDressedAs(now.look())) {
            repaint();
        }
    }

    private int look(String name) {
        return bench.desk().work().scenario().setup(name).map(Setup::look).orElse(0);
    }

    /** A row; the marks are drawn, so that they are those of the charts. */
    private final class Cell extends DefaultListCellRenderer {
        /** Signs of what it is, at the end of the row. */
        private transient List<Glyph> marks = List.of();

        @Override
        protected void paintComponent(Graphics g) {
            super.paintComponent(g);
            int x = getWidth() - 4;
            for (Glyph mark : marks) {
                x -= mark.getIconWidth();
                mark.paintIcon(this, g, x, (getHeight() - mark.getIconHeight()) / 2);
            }
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            String setup = String.valueOf(value);
            boolean active = setup.equals(bench.desk().work().active());
            boolean shown = active || bench.desk().work().chosen().contains(setup);
            boolean base = setup.equals(bench.desk().work().base());
            boolean pinned = bench.desk().work().shelf().pinned().contains(setup);
            boolean aside = bench.desk().work().shelf().hidden().contains(setup);
            JLabel label = (JLabel) super.getListCellRendererComponent(list, setup, index, selected, focus);
            label.setFont(active ? Looks.strong() : Looks.body());
            if (aside && !selected) {
                label.setForeground(Looks.theme().quiet());
            }
            // A long name may be cut.
            label.setToolTipText("\"" + setup + "\"" + (base ? ", the base that the others are compared with" : "")
                    + (pinned ? ", pinned" : "") + (aside ? ", hidden" : "") + ": " + KEYS);
            label.setIcon(new Sample(new SetupStyle(look(setup)), Optional.of(shown)));
            label.setIconTextGap(6);
            marks = Stream.of(
                            base ? Optional.of(Glyph.BASE) : Optional.<Glyph>empty(),
                            pinned ? Optional.of(Glyph.PIN) : Optional.<Glyph>empty(),
                            aside ? Optional.of(Glyph.HIDE) : Optional.<Glyph>empty())
                    .flatMap(Optional::stream)
                    .toList();
            label.setBorder(BorderFactory.createEmptyBorder(0, 10, 0, 4 + marks.size() * Glyph.BASE.getIconWidth()));
            label.getAccessibleContext()
                    .setAccessibleName(setup
                            + (shown ? ", shown" : ", hidden")
                            + (base ? ", the base" : "")
                            + (pinned ? ", pinned" : "")
                            + (aside ? ", left out of the list" : ""));
            return label;
        }
    }

    /**
     * The line of a set-up, with its marker.
     *
     * @param ticked whether a tick stands before it; none where nothing is to be ticked
     */
    record Sample(SetupStyle style, Optional<Boolean> ticked) implements Icon {
        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            Theme theme = Looks.theme();
            double middle = y + getIconHeight() / 2.0;
            double from = x;
            if (ticked.isPresent()) {
                tick(g, theme, x, middle, ticked.get());
                from += Looks.em(TICK);
            }
            double width = Looks.em(WIDTH);
            g.setColor(theme.background());
            g.fill(new RoundRectangle2D.Double(from - 3, y, width + 6, getIconHeight(), 6, 6));
            g.setColor(theme.colour(style));
            g.setStroke(style.stroke(2.2));
            g.draw(new Line2D.Double(from, middle, from + width, middle));
            g.fill(style.marker().at(from + width / 2, middle, 9));
            g.dispose();
        }

        private static void tick(Graphics2D g, Theme theme, double x, double middle, boolean ticked) {
            double side = Looks.em(1.05);
            double top = middle - side / 2;
            g.setColor(theme.background());
            g.fill(new RoundRectangle2D.Double(x, top, side, side, 4, 4));
            g.setColor(theme.quiet());
            g.setStroke(new BasicStroke(1.2f));
            g.draw(new RoundRectangle2D.Double(x, top, side, side, 4, 4));
            if (ticked) {
                g.setColor(theme.ink());
                g.setStroke(new BasicStroke(2, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                g.draw(new Line2D.Double(x + 0.22 * side, middle, x + 0.42 * side, top + 0.74 * side));
                g.draw(new Line2D.Double(x + 0.42 * side, top + 0.74 * side, x + 0.8 * side, top + 0.26 * side));
            }
        }

        @Override
        public int getIconWidth() {
            return Looks.em(WIDTH) + (ticked.isPresent() ? Looks.em(TICK) : 0);
        }

        @Override
        public int getIconHeight() {
            return Looks.em(1.3);
        }
    }
}
