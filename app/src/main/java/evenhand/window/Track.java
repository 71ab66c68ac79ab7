package evenhand.window;

import evenhand.catalogue.Range;
import evenhand.look.Theme;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleValue;
import javax.swing.JComponent;

/**
 * A track with a handle: drag it, or move it by the arrow keys (Shift for ten steps, Alt for a tenth). The usual range is
 * shaded, the value of the base set-up a tick, and the pace or whatever else stands out a second one.
 */
final class Track extends JComponent implements Accessible {
    private static final int DIAMETER = 15;

    /** Told where the handle is moved to; {@code same} while one gesture goes on. */
    interface Moved {
        void to(double value, boolean same);
    }

    private final transient Moved moved;
    private double low;
    private double high = 1;
    private double value;
    private double step = 0.01;
    private transient Optional<Range> usual = Optional.empty();
    private transient OptionalDouble base = OptionalDouble.empty();
    private boolean dragging;
    private boolean keyDown;
    private String said = "";

    Track(String name, Moved moved) {
        this.moved = moved;
        setName(name);
        setFocusable(true);
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        getAccessibleContext().setAccessibleName(name);
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
        addKeyListener(new Keys());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                keyDown = false;
                repaint();
            }
        });
    }

    /**
     * Where everything stands; tells nobody.
     *
     * @param words the value as it is said
     */
    void show(
            double low,
            double high,
            double value,
            double step,
            Optional<Range> usual,
            OptionalDouble base,
            String words) {
        // While the handle is held, the ends stay where they are under the hand.
        if (!dragging) {
            this.low = low;
            this.high = high;
        }
        this.value = value;
        this.step = step;
        this.usual = usual;
        this.base = base;
        this.said = words;
        repaint();
    }

    double value() {
        return value;
    }

    /** Whether a hand is on it. */
    boolean isHeld() {
        return dragging || keyDown;
    }

    private double px(double at) {
        double room = getWidth() - DIAMETER - 4;
        double part = high > low ? (at - low) / (high - low) : 0;
        return 2 + DIAMETER / 2.0 + Math.max(0, Math.min(1, part)) * room;
    }

    /** The place of a value, for tests. */
    int xOf(double at) {
        return (int) Math.round(px(at));
    }

    private double valueAt(int x, boolean fine) {
        double room = Math.max(1, getWidth() - DIAMETER - 4);
        double at = low + Math.max(0, Math.min(1, (x - 2 - DIAMETER / 2.0) / room)) * (high - low);
        double grain = fine ? step / 10 : step;
        return Math.round(at / grain) * grain;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Looks.em(10), Math.max(22, Looks.em(1.6)));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Looks.em(5), getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Theme theme = Looks.theme();
        double middle = getHeight() / 2.0;
        g.setColor(theme.grid());
        g.fill(new RoundRectangle2D.Double(px(low), middle - 2, px(high) - px(low), 4, 4, 4));
        if (usual.isPresent()) {
            double from = px(Math.max(low, usual.get().low()));
            double to = px(Math.min(high, usual.get().high()));
            g.setColor(theme.mixed(theme.quiet(), 0.55));
            g.fill(new RoundRectangle2D.Double(from, middle - 2, Math.max(0, to - from), 4, 4, 4));
        }
        if (base.isPresent()) {
            g.setColor(theme.ink());
            g.setStroke(new BasicStroke(2));
            double at = px(base.getAsDouble());
            g.draw(new Line2D.Double(at, middle - 8, at, middle + 8));
        }
        double x = px(value);
        Ellipse2D handle = new Ellipse2D.Double(x - DIAMETER / 2.0, middle - DIAMETER / 2.0, DIAMETER, DIAMETER);
        g.setColor(isEnabled() ? theme.setups().get(0) : theme.grid());
        g.fill(handle);
        if (isFocusOwner()) {
            g.setColor(theme.ink());
            g.setStroke(new BasicStroke(2));
            g.draw(new Ellipse2D.Double(
                    x - DIAMETER / 2.0 - 2, middle - DIAMETER / 2.0 - 2, DIAMETER + 4, DIAMETER + 4));
        }
        g.dispose();
    }

    private void move(double to, boolean same) {
        double cut = Math.max(low, Math.min(high, to));
        if (cut != value) {
            moved.to(cut, same);
        }
    }

    private final class Hand extends MouseAdapter {
        private boolean first;

        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            if (isEnabled() && e.getButton() == MouseEvent.BUTTON1) {
                dragging = true;
                first = true;
                // Taking hold of the handle moves nothing; a press beside it brings it there.
                if (Math.abs(e.getX() - px(value)) > DIAMETER) {
                    drag(e);
                }
            }
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            if (dragging) {
                drag(e);
            }
        }

        private void drag(MouseEvent e) {
            double to = valueAt(e.getX(), e.isAltDown());
            if (to != value) {
                boolean same = !first;
                first = false;
                move(to, same);
            }
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            dragging = false;
            repaint();
        }
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent e) {
            int way = switch (e.getKeyCode()) {
                case KeyEvent.VK_RIGHT, KeyEvent.VK_UP -> 1;
                case KeyEvent.VK_LEFT, KeyEvent.VK_DOWN -> -1;
                default -> 0;
            };
            if (way == 0 || !isEnabled() || (e.getModifiersEx() & InputEvent.CTRL_DOWN_MASK) != 0) {
                return;
            }
            e.consume();
            double by = e.isShiftDown() ? 10 * step : e.isAltDown() ? step / 10 : step;
            double grain = e.isAltDown() ? step / 10 : step;
            // A key that is held down is one gesture.
            boolean same = keyDown;
            keyDown = true;
            move(Math.round((value + way * by) / grain) * grain, same);
        }

        @Override
        public void keyReleased(KeyEvent e) {
            keyDown = false;
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleTrack();
        }
        return accessibleContext;
    }

    private final class AccessibleTrack extends AccessibleJComponent implements AccessibleValue {
        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.SLIDER;
        }

        @Override
        public String getAccessibleDescription() {
            return said;
        }

        @Override
        public AccessibleValue getAccessibleValue() {
            return this;
        }

        @Override
        public Number getCurrentAccessibleValue() {
            return value;
        }

        @Override
        public boolean setCurrentAccessibleValue(Number next) {
            move(next.doubleValue(), false);
            return true;
        }

        @Override
        public Number getMinimumAccessibleValue() {
            return low;
        }

        @Override
        public Number getMaximumAccessibleValue() {
            return high;
        }
    }
}
