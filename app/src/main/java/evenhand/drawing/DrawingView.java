package evenhand.drawing;

import evenhand.drawing.DrawingPainter.Painted;
import evenhand.look.Theme;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/**
 * Shows a drawing and lets its handles be pulled: by the mouse, or chosen by the left and right keys and moved by up and down (Shift
 * for ten steps, Alt for a tenth). It changes nothing itself: every pull is told, and the next drawing shows what came of it.
 */
public final class DrawingView extends JComponent implements Accessible {
    /** How near the mouse has to come, in sizes of type. */
    private static final double REACH = 1.3;

    private transient Drawing drawing;
    private transient Theme theme;
    private transient Detail detail;
    private transient Consumer<Pull> pulls;
    private transient @Nullable Painted painted;
    private transient @Nullable String chosen;
    private transient @Nullable String hovered;
    private transient @Nullable Grip grip;

    /** A handle that the mouse holds, as it was when it was taken. */
    private record Grip(Handle handle, double z, Scaling scaling) {}

    /**
     * Shows a drawing.
     *
     * @param pulls is told each pull of a handle
     */
    public DrawingView(Drawing drawing, Theme theme, Detail detail, Consumer<Pull> pulls) {
        this.drawing = drawing;
        this.theme = theme;
        this.detail = detail;
        this.pulls = pulls;
        setOpaque(true);
        setFocusable(true);
        Listener listener = new Listener();
        addMouseListener(listener);
        addMouseMotionListener(listener);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                if (chosen == null && !drawing().handles().isEmpty()) {
                    chosen = drawing().handles().get(0).path();
                }
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        keys();
    }

    /** Shows another drawing; a handle that is held stays held. */
    public void show(Drawing next, Theme nextTheme, Detail nextDetail) {
        drawing = next;
        theme = nextTheme;
        detail = nextDetail;
        repaint();
    }

    /** What is shown. */
    public Drawing drawing() {
        return drawing;
    }

    /** Where metres are on the screen, once it was painted. */
    public Optional<Scaling> scaling() {
        return Optional.ofNullable(painted).map(Painted::scaling);
    }

    @Override
    public Dimension getPreferredSize() {
        if (isPreferredSizeSet()) {
            return super.getPreferredSize();
        }
        double width = 44 * theme.size();
        double height = width * drawing.world().getHeight() / drawing.world().getWidth();
        return new Dimension((int) width, (int) (height + 4 * theme.size()));
    }

    @Override
    public Dimension getMinimumSize() {
        return isMinimumSizeSet()
                ? super.getMinimumSize()
                : new Dimension((int) (22 * theme.size()), (int) (14 * theme.size()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Rectangle2D area = new Rectangle2D.Double(0, 0, getWidth(), getHeight());
        Painted now = DrawingPainter.paint(drawing, theme, g, area);
        painted = now;
        held().ifPresent(handle -> DrawingPainter.held(g, theme, now.scaling(), handle, words(handle), area));
        g.dispose();
    }

    private Optional<Handle> held() {
        if (grip != null) {
            return drawing.handle(grip.handle().path());
        }
        if (hovered != null) {
            return drawing.handle(hovered);
        }
        return chosen != null && isFocusOwner() ? drawing.handle(chosen) : Optional.empty();
    }

    /** What it is and its value; its usual range where it has one. */
    private List<String> words(Handle handle) {
        List<String> words = new ArrayList<>();
        words.add(handle.words() + " " + detail.length(handle.value()));
        handle.usual()
                .ifPresent(range ->
                        words.add("usually " + detail.length(range.low()) + " to " + detail.length(range.high())));
        return words;
    }

    private void keys() {
        key(KeyEvent.VK_LEFT, 0, () -> choose(-1));
        key(KeyEvent.VK_RIGHT, 0, () -> choose(1));
        for (int up = -1; up <= 1; up += 2) {
            int code = up > 0 ? KeyEvent.VK_UP : KeyEvent.VK_DOWN;
            int way = up;
            key(code, 0, () -> step(way));
            key(code, InputEvent.SHIFT_DOWN_MASK, () -> step(10 * way));
            key(code, InputEvent.ALT_DOWN_MASK, () -> step(0.1 * way));
        }
        key(KeyEvent.VK_ESCAPE, 0, this::letGo);
    }

    private void key(int code, int modifiers, Runnable run) {
        KeyStroke stroke = KeyStroke.getKeyStroke(code, modifiers);
        getInputMap(WHEN_FOCUSED).put(stroke, stroke.toString());
        getActionMap().put(stroke.toString(), new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                run.run();
            }
        });
    }

    private void choose(int way) {
        List<Handle> handles = drawing.handles();
        if (handles.isEmpty()) {
            return;
        }
        String before = chosen;
        int index = 0;
        for (int i = 0; i < handles.size(); i++) {
            if (handles.get(i).path().equals(before)) {
                index = Math.floorMod(i + way, handles.size());
            }
        }
        chosen = handles.get(index).path();
        hovered = null;
        repaint();
    }

    private void step(double steps) {
        if (chosen != null) {
            drawing.handle(chosen)
                    .ifPresent(handle -> pulls.accept(new Pull(handle.path(), handle.stepped(steps), Pull.Phase.DONE)));
        }
    }

    /** Puts a handle that is held back to where it was taken. */
    private void letGo() {
        if (grip != null) {
            Handle handle = grip.handle();
            grip = null;
            pulls.accept(new Pull(handle.path(), handle.value(), Pull.Phase.DONE));
        }
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
            return accessibleName != null ? accessibleName : "Drawing: " + drawing.title();
        }

        @Override
        public String getAccessibleDescription() {
            return String.join("; ", held().map(DrawingView.this::words).orElseGet(drawing::words));
        }
    }

    private final class Listener extends MouseAdapter {
        private Optional<Handle> under(MouseEvent e) {
            return scaling()
                    .flatMap(scaling -> drawing.handleAt(
                            scaling.x(e.getX()), scaling.z(e.getY()), REACH * theme.size() / scaling.scale()));
        }

        @Override
        public void mouseMoved(MouseEvent e) {
            String path = under(e).map(Handle::path).orElse(null);
            setCursor(Cursor.getPredefinedCursor(path == null ? Cursor.DEFAULT_CURSOR : Cursor.N_RESIZE_CURSOR));
            if (path == null ? hovered != null : !path.equals(hovered)) {
                hovered = path;
                repaint();
            }
        }

        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            if (e.getButton() != MouseEvent.BUTTON1) {
                return;
            }
            under(e).ifPresent(handle -> {
                Scaling scaling = scaling().orElseThrow();
                chosen = handle.path();
                grip = new Grip(handle, scaling.z(e.getY()), scaling);
                pulls.accept(new Pull(handle.path(), handle.value(), Pull.Phase.BEGUN));
            });
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            pull(e, Pull.Phase.GOING_ON);
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            pull(e, Pull.Phase.DONE);
            grip = null;
            repaint();
        }

        @Override
        public void mouseExited(MouseEvent e) {
            if (grip == null) {
                hovered = null;
                repaint();
            }
        }

        private void pull(MouseEvent e, Pull.Phase phase) {
            if (grip != null) {
                double up = grip.scaling().z(e.getY()) - grip.z();
                pulls.accept(new Pull(grip.handle().path(), grip.handle().pulled(up), phase));
            }
        }
    }
}
