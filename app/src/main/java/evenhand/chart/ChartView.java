package evenhand.chart;

import evenhand.chart.ChartPainter.Painted;
import evenhand.look.FullSize;
import evenhand.look.Theme;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.Transparency;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/**
 * Shows a chart: with a cross-hair under the mouse or moved by the arrow keys (Shift for ten), zoom by dragging a rectangle,
 * by the wheel (once the chart was clicked, or with Ctrl) or by + and −, all of it again by a double click or Home, and a menu for keeping it. Knows no other view; what it
 * cannot do itself it asks for by a {@link ChartWish}. The painted chart is kept, so that moving the cross-hair costs little.
 */
public final class ChartView extends JComponent implements Accessible {
    private static final double WHEEL = 1.2;

    private transient Chart chart;
    private transient Theme theme;
    private transient Zoom zoom;
    private transient OptionalDouble marked = OptionalDouble.empty();
    private transient OptionalDouble hair = OptionalDouble.empty();
    private transient @Nullable Point mouse;
    private transient @Nullable Point dragFrom;
    private transient @Nullable Painted painted;
    private transient @Nullable BufferedImage kept;
    private transient Consumer<ChartWish> wishes;
    private boolean late;
    private final transient FullSize fullSize = new FullSize(this, () -> theme());

    /**
     * Shows a chart.
     *
     * @param wishes is told what the person wants done with the chart
     */
    public ChartView(Chart chart, Theme theme, Consumer<ChartWish> wishes) {
        this.chart = chart;
        this.theme = theme;
        this.wishes = wishes;
        zoom = Zoom.all(chart);
        setFocusable(true);
        setOpaque(true);
        Listener listener = new Listener();
        addMouseListener(listener);
        addMouseMotionListener(listener);
        addMouseWheelListener(listener);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                hair = OptionalDouble.empty();
                repaint();
            }
        });
        keys();
    }

    /**
     * Shows another chart of the same axes without drawing them in: they hold what was shown and what is shown now, so that nothing
     * jumps under a hand that moves a value.
     */
    public void showSteady(Chart next, Theme nextTheme) {
        show(hasAxesOf(next) ? next.wideAs(chart) : next, nextTheme);
    }

    /** Shows another chart. What was looked at stays, if it is of the same axes. */
    public void show(Chart next, Theme nextTheme) {
        if (!hasAxesOf(next) || !zoom.isPart(chart)) {
            zoom = Zoom.all(next);
        }
        chart = next;
        theme = nextTheme;
        late = false;
        changed();
    }

    private boolean hasAxesOf(Chart next) {
        return next.across().title().equals(chart.across().title())
                && next.up().title().equals(chart.up().title());
    }

    /** Dims what is shown, because newer numbers are being worked out; {@link #show} ends it. */
    public void showLate() {
        late = true;
        repaint();
    }

    /** Marks a place on the axis across by a line, such as the pace that was chosen; none takes it away. */
    public void mark(OptionalDouble place) {
        marked = place;
        repaint();
    }

    /** What is shown, for tests and exports. */
    public Chart chart() {
        return chart;
    }

    /** The button that shows it at full size. */
    public FullSize fullSize() {
        return fullSize;
    }

    private Theme theme() {
        return theme;
    }

    @Override
    public void doLayout() {
        fullSize.layOut();
    }

    public Zoom zoom() {
        return zoom;
    }

    /** The values under the cross-hair, if there is one. */
    public @Nullable CrossHair crossHair() {
        return hair.isPresent() && chart.up() instanceof Axis.Measure ? CrossHair.at(chart, hair.getAsDouble()) : null;
    }

    @Override
    public Dimension getPreferredSize() {
        if (isPreferredSizeSet()) {
            return super.getPreferredSize();
        }
        double em = theme.size();
        double height = chart.up() instanceof Axis.Rows rows
                ? 9 * em + 2.2 * em * rows.rows().size()
                : 26 * em;
        return new Dimension((int) (48 * em), (int) height);
    }

    @Override
    public Dimension getMinimumSize() {
        return isMinimumSizeSet()
                ? super.getMinimumSize()
                : new Dimension((int) (20 * theme.size()), (int) (leastHeight() * theme.size()));
    }

    /** In sizes of type: rows can be told apart, and keys and notes leave room for the curves. */
    private double leastHeight() {
        if (chart.up() instanceof Axis.Rows rows) {
            return Math.max(
                    14, 8 + 1.35 * rows.rows().size() + 1.3 * chart.notes().size());
        }
        return 13
                + 0.6 * Math.max(0, chart.setups().size() - 2)
                + 1.3 * chart.notes().size();
    }

    private void changed() {
        kept = null;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Rectangle2D area = new Rectangle2D.Double(0, 0, getWidth(), getHeight());
        AffineTransform transform = g.getTransform();
        double scale = transform.getScaleX();
        int width = (int) Math.ceil(getWidth() * scale);
        int height = (int) Math.ceil(getHeight() * scale);
        if (width <= 0 || height <= 0) {
            g.dispose();
            return;
        }
        BufferedImage image = kept;
        Painted now = painted;
        if (image == null || now == null || image.getWidth() != width || image.getHeight() != height) {
            image = g.getDeviceConfiguration() == null
                    ? new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB)
                    : g.getDeviceConfiguration().createCompatibleImage(width, height, Transparency.OPAQUE);
            Graphics2D into = image.createGraphics();
            into.scale(scale, scale);
            now = ChartPainter.paint(chart, zoom, theme, into, area, fullSize.room());
            into.dispose();
            kept = image;
            painted = now;
        }
        g.setTransform(new AffineTransform(1, 0, 0, 1, transform.getTranslateX(), transform.getTranslateY()));
        g.drawImage(image, 0, 0, null);
        g.setTransform(transform);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        over(g, now, area);
        g.dispose();
    }

    private void over(Graphics2D g, Painted now, Rectangle2D area) {
        Rectangle2D plot = now.plot();
        if (marked.isPresent() && zoom.across().holds(marked.getAsDouble())) {
            double x = now.x().px(marked.getAsDouble());
            g.setColor(theme.ink());
            g.setStroke(new BasicStroke((float) (theme.size() / 6)));
            g.draw(new Line2D.Double(x, plot.getMaxY() - theme.size() / 2, x, plot.getMaxY() + theme.size() / 2));
            g.setStroke(new BasicStroke(1));
            g.draw(new Line2D.Double(x, plot.getY(), x, plot.getMaxY()));
        }
        if (late) {
            Composite before = g.getComposite();
            g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, 0.5f));
            g.setColor(theme.background());
            g.fill(area);
            g.setComposite(before);
        }
        CrossHair values = crossHair();
        if (values != null) {
            HairPainter.curves(g, theme, now, values, area);
        } else if (mouse != null && chart.up() instanceof Axis.Rows && plot.contains(mouse)) {
            HairPainter.row(
                    g, theme, CrossHair.row(chart, now.y().value(mouse.getY())), mouse.getX(), mouse.getY(), area);
        }
        if (dragFrom != null && mouse != null) {
            Color ink = theme.ink();
            g.setColor(ink);
            g.setStroke(new BasicStroke(1));
            g.draw(new Rectangle2D.Double(
                    Math.min(dragFrom.x, mouse.x),
                    Math.min(dragFrom.y, mouse.y),
                    Math.abs(dragFrom.x - mouse.x),
                    Math.abs(dragFrom.y - mouse.y)));
        }
        if (isFocusOwner()) {
            g.setColor(theme.quiet());
            g.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 2}, 0));
            g.draw(new Rectangle2D.Double(1.5, 1.5, getWidth() - 3.0, getHeight() - 3.0));
        }
    }

    private void keys() {
        key("LEFT", 0, () -> moveHair(-1));
        key("RIGHT", 0, () -> moveHair(1));
        key("LEFT", InputEvent.SHIFT_DOWN_MASK, () -> moveHair(-10));
        key("RIGHT", InputEvent.SHIFT_DOWN_MASK, () -> moveHair(10));
        for (int code : new int[] {KeyEvent.VK_PLUS, KeyEvent.VK_ADD, KeyEvent.VK_EQUALS}) {
            key(KeyStroke.getKeyStroke(code, 0), () -> zoomAtHair(1.5));
        }
        for (int code : new int[] {KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT}) {
            key(KeyStroke.getKeyStroke(code, 0), () -> zoomAtHair(1 / 1.5));
        }
        key("HOME", 0, this::showAll);
        key("ESCAPE", 0, () -> {
            if (!fullSize.back()) {
                hair = OptionalDouble.empty();
                repaint();
            }
        });
        key("CONTEXT_MENU", 0, () -> menu().show(this, getWidth() / 2, getHeight() / 2));
        key("F10", InputEvent.SHIFT_DOWN_MASK, () -> menu().show(this, getWidth() / 2, getHeight() / 2));
        key("C", getToolkitMask(), () -> wish(ChartWish.Kind.COPY));
    }

    private static int getToolkitMask() {
        return java.awt.GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : java.awt.Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }

    private void key(String name, int modifiers, Runnable run) {
        KeyStroke plain = KeyStroke.getKeyStroke(name);
        key(KeyStroke.getKeyStroke(plain.getKeyCode(), modifiers), run);
    }

    private void key(KeyStroke stroke, Runnable run) {
        getInputMap(WHEN_FOCUSED).put(stroke, stroke.toString());
        getActionMap().put(stroke.toString(), new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                run.run();
            }
        });
    }

    private void moveHair(int steps) {
        Span span = zoom.across();
        double from = hair.orElse(marked.orElse((span.low() + span.high()) / 2));
        double next = from + steps * span.width() / 200;
        hair = OptionalDouble.of(Math.max(span.low(), Math.min(span.high(), next)));
        repaint();
    }

    private void zoomAtHair(double factor) {
        Span across = zoom.across();
        Span up = zoom.up();
        double x = hair.orElse((across.low() + across.high()) / 2);
        zoom = zoom.by(factor, x, (up.low() + up.high()) / 2, chart);
        changed();
    }

    /** Looks at all of the chart again. */
    public void showAll() {
        zoom = Zoom.all(chart);
        changed();
    }

    private void wish(ChartWish.Kind kind) {
        wishes.accept(new ChartWish(kind, chart, zoom));
    }

    /** The menu of what can be done with the chart. */
    JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        for (ChartWish.Kind kind : ChartWish.Kind.values()) {
            JMenuItem item = new JMenuItem(kind.words());
            item.addActionListener(e -> wish(kind));
            menu.add(item);
        }
        menu.addSeparator();
        JMenuItem all = new JMenuItem("Show all of it");
        all.setEnabled(zoom.isPart(chart));
        all.addActionListener(e -> showAll());
        menu.add(all);
        return menu;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Described();
        }
        return accessibleContext;
    }

    /** Says what is shown to who does not see it. */
    private final class Described extends AccessibleJComponent {
        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }

        @Override
        public String getAccessibleName() {
            return accessibleName != null ? accessibleName : "Chart: " + chart.title();
        }

        @Override
        public String getAccessibleDescription() {
            CrossHair values = crossHair();
            return values == null
                    ? chart.across().title() + "; " + chart.up().title()
                    : values.place() + ": "
                            + String.join(
                                    "; ",
                                    values.values().stream()
                                            .map(CrossHair.Value::words)
                                            .toList());
        }
    }

    private final class Listener extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            if (e.isPopupTrigger()) {
                menu().show(ChartView.this, e.getX(), e.getY());
            } else if (e.getButton() == MouseEvent.BUTTON1 && e.getClickCount() == 2) {
                showAll();
            } else if (e.getButton() == MouseEvent.BUTTON1
                    && painted != null
                    && painted.plot().contains(e.getPoint())) {
                dragFrom = e.getPoint();
            }
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            if (e.isPopupTrigger()) {
                menu().show(ChartView.this, e.getX(), e.getY());
            } else if (dragFrom != null && painted != null && dragFrom.distance(e.getPoint()) > 6) {
                zoom = zoom.to(
                        painted.x().value(dragFrom.x),
                        painted.y().value(dragFrom.y),
                        painted.x().value(e.getX()),
                        painted.y().value(e.getY()),
                        chart);
                changed();
            }
            dragFrom = null;
            repaint();
        }

        @Override
        public void mouseMoved(MouseEvent e) {
            mouse = e.getPoint();
            boolean inside = painted != null && painted.plot().contains(mouse);
            hair = inside && painted != null
                    ? OptionalDouble.of(painted.x().value(mouse.getX()))
                    : OptionalDouble.empty();
            repaint();
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            mouseMoved(e);
        }

        @Override
        public void mouseExited(MouseEvent e) {
            mouse = null;
            hair = OptionalDouble.empty();
            repaint();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent e) {
            boolean meant = e.isControlDown() || isFocusOwner(); // else it scrolls what the chart stands in
            if (meant && painted != null && painted.plot().contains(e.getPoint())) {
                double factor = Math.pow(WHEEL, -e.getPreciseWheelRotation());
                zoom = zoom.by(factor, painted.x().value(e.getX()), painted.y().value(e.getY()), chart);
                changed();
            } else if (getParent() != null) {
                getParent().dispatchEvent(javax.swing.SwingUtilities.convertMouseEvent(ChartView.this, e, getParent()));
            }
        }
    }
}
