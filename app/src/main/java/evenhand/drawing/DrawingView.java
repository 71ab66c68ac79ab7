package evenhand.drawing;

import evenhand.drawing.DrawingPainter.Painted;
import evenhand.drawing.Handle.Direction;
import evenhand.look.FullSize;
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
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/**
 * Shows a drawing and lets its handles be pulled: by the mouse, or moved by the arrow keys (Shift for ten steps, Alt for a tenth) and
 * chosen by Page Up and Page Down, or by the left and right keys where a handle only goes up and down. It changes nothing itself:
 * every pull is told, and the next drawing shows what came of it.
 */
public final class DrawingView extends JComponent implements Accessible {
    /** How near the mouse has to come, in sizes of type. */
    private static final double REACH = 1.3;

    private transient Drawing drawing;
    private transient Theme theme;
    private transient Detail detail;
    private transient Function<Pull, Optional<String>> pulls;
    private transient @Nullable Painted painted;
    private transient @Nullable String chosen;
    private transient @Nullable String hovered;
    private transient @Nullable Grip grip;
    private transient String refused = "";
    private transient Map<String, Point2D> ways = Map.of();
    private final transient FullSize fullSize = new FullSize(this, () -> theme());
    private final transient Glide glide;

    /** The figures as they stood when the handle was chosen or taken. */
    private transient List<Drawing.Reading> before = List.of();

    /** A handle that the mouse holds, as it was when it was taken. */
    private record Grip(Handle handle, double x, double z, Scaling scaling, Rectangle2D world) {}

    /**
     * Shows a drawing.
     *
     * @param pulls is told each pull of a handle; says why not where that cannot be
     */
    public DrawingView(Drawing drawing, Theme theme, Detail detail, Function<Pull, Optional<String>> pulls) {
        this.drawing = drawing;
        this.theme = theme;
        this.detail = detail;
        this.pulls = pulls;
        glide = new Glide(drawing, this::put);
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
                before = drawing().readings();
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
        theme = nextTheme;
        detail = nextDetail;
        // Nothing but the car moves under the hand.
        glide.show(grip == null ? next : next.in(grip.world()), grip == null && isShowing() && Glide.isWanted());
    }

    private void put(Drawing next) {
        drawing = next;
        repaint();
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
        Painted now = DrawingPainter.paint(drawing, theme, g, area, fullSize.room(), ways);
        painted = now;
        ways = now.ways();
        held().ifPresent(handle -> HandPainter.held(g, theme, now.scaling(), handle, words(handle), refused, area));
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

    /** What it is and its value; its usual range where it has one; the figures that it has moved. */
    private List<String> words(Handle handle) {
        List<String> words = new ArrayList<>();
        words.add(handle.words()
                + (handle.isPoint() ? ": " : " ")
                + handle.ways().stream()
                        .map(way -> (handle.isPoint() ? way.key() + " " : "") + detail.length(way.value()))
                        .collect(Collectors.joining(", ")));
        handle.ways().stream()
                .flatMap(way -> way.usual().stream())
                .forEach(range ->
                        words.add("usually " + detail.length(range.low()) + " to " + detail.length(range.high())));
        if (handle.path().equals(chosen)) {
            words.addAll(drawing.changesSince(before));
        }
        return words;
    }

    private void keys() {
        key(KeyEvent.VK_PAGE_UP, 0, () -> choose(-1));
        key(KeyEvent.VK_PAGE_DOWN, 0, () -> choose(1));
        arrow(KeyEvent.VK_UP, Direction.UP, 1);
        arrow(KeyEvent.VK_DOWN, Direction.UP, -1);
        arrow(KeyEvent.VK_RIGHT, Direction.ACROSS, 1);
        arrow(KeyEvent.VK_LEFT, Direction.ACROSS, -1);
        key(KeyEvent.VK_ESCAPE, 0, this::letGo);
    }

    private void arrow(int code, Direction direction, int way) {
        key(code, 0, () -> step(direction, way));
        key(code, InputEvent.SHIFT_DOWN_MASK, () -> step(direction, 10 * way));
        key(code, InputEvent.ALT_DOWN_MASK, () -> step(direction, 0.1 * way));
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
        int index = 0;
        for (int i = 0; i < handles.size(); i++) {
            if (handles.get(i).path().equals(chosen)) {
                index = Math.floorMod(i + way, handles.size());
            }
        }
        chosen = handles.get(index).path();
        hovered = null;
        refused = "";
        before = drawing.readings();
        repaint();
    }

    private void step(Direction direction, double steps) {
        Optional<Handle> handle = chosen == null ? Optional.empty() : drawing.handle(chosen);
        if (handle.isEmpty() || handle.get().way(direction).isEmpty()) {
            if (direction == Direction.ACROSS) {
                choose(steps > 0 ? 1 : -1);
            }
            return;
        }
        hovered = null;
        tell(new Pull(handle.get().path(), handle.get().stepped(direction, steps), Pull.Phase.DONE));
    }

    private void tell(Pull pull) {
        refused = pulls.apply(pull).orElse("");
        repaint();
    }

    /** Puts a handle that is held back to where it was taken. */
    private void letGo() {
        if (grip == null) {
            fullSize.back();
        } else {
            Handle handle = grip.handle();
            grip = null;
            tell(new Pull(handle.path(), handle.values(), Pull.Phase.DONE));
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
            List<String> said =
                    new ArrayList<>(held().map(DrawingView.this::words).orElseGet(drawing::words));
            if (!refused.isEmpty()) {
                said.add(refused);
            }
            return String.join("; ", said);
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
            boolean bothWays = under(e).map(handle -> handle.ways().size() > 1).orElse(false);
            setCursor(Cursor.getPredefinedCursor(
                    path == null ? Cursor.DEFAULT_CURSOR : bothWays ? Cursor.MOVE_CURSOR : Cursor.N_RESIZE_CURSOR));
            if (path == null ? hovered != null : !path.equals(hovered)) {
                hovered = path;
                repaint();
            }
        }

        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            glide.end();
            if (e.getButton() != MouseEvent.BUTTON1) {
                return;
            }
            under(e).ifPresent(handle -> {
                Scaling scaling = scaling().orElseThrow();
                chosen = handle.path();
                before = drawing.readings();
                grip = new Grip(handle, scaling.x(e.getX()), scaling.z(e.getY()), scaling, drawing.world());
                tell(new Pull(handle.path(), handle.values(), Pull.Phase.BEGUN));
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
                double across = grip.scaling().x(e.getX()) - grip.x();
                double up = grip.scaling().z(e.getY()) - grip.z();
                tell(new Pull(grip.handle().path(), grip.handle().pulled(across, up), phase));
            }
        }
    }
}
