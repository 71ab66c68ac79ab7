package evenhand.window;

import evenhand.window.desk.Act;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Look;
import evenhand.words.Units;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Hands on a real window: mouse, keys, and eyes. Answers to what the window asks are laid ready before. */
final class Hands implements AutoCloseable, Asker {
    private static final long PATIENCE = 60_000;

    /** After so long a click that nobody took is made again, ms. */
    private static final long CLICK = 3_000;

    private final Robot robot;
    private final Window window;
    Unsaved unsaved = Unsaved.DISCARD;
    Changed changed = Changed.BACK;
    final Deque<Path> files = new ArrayDeque<>();
    final Deque<String> lines = new ArrayDeque<>();
    /** Questions that were asked for a line, each with what stood there at first. */
    final List<String> askedLines = new ArrayList<>();

    Hands(Path folder, Optional<Path> file) throws Exception {
        this(folder, file, Optional.empty());
    }

    Hands(Path folder, Optional<Path> file, Optional<Units> units) throws Exception {
        robot = robot();
        Window[] made = new Window[1];
        SwingUtilities.invokeAndWait(() -> {
            made[0] = new Window(folder, units, Optional.of(this), new evenhand.start.JobReport());
            made[0].begin(file);
            made[0].pane().turnTo(Look.Page.ANSWER);
        });
        window = made[0];
        until("the window is on the screen", () -> window.frame().isShowing());
        answered();
    }

    private static Robot robot() throws AWTException {
        Robot robot = new Robot();
        robot.setAutoDelay(5);
        return robot;
    }

    MainPane pane() {
        return window.pane();
    }

    Window window() {
        return window;
    }

    Desk desk() {
        return see(() -> pane().bench().desk());
    }

    Optional<String> act(Act act) {
        return see(() -> pane().bench().act(act));
    }

    /** Looks at something on the event thread. */
    static <T> T see(Callable<T> look) {
        Object[] seen = new Object[1];
        Exception[] thrown = new Exception[1];
        try {
            SwingUtilities.invokeAndWait(() -> {
                try {
                    seen[0] = look.call();
                } catch (Exception e) {
                    thrown[0] = e;
                }
            });
        } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
            throw new AssertionError(e);
        }
        if (thrown[0] != null) {
            throw new AssertionError(thrown[0]);
        }
        @SuppressWarnings("unchecked") // it is what the look gave
        T result = (T) seen[0];
        return result;
    }

    private static boolean comes(BooleanSupplier condition, long within) {
        long end = System.currentTimeMillis() + within;
        while (!see(condition::getAsBoolean)) {
            if (System.currentTimeMillis() > end) {
                return false;
            }
            try {
                Thread.sleep(15);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
        return true;
    }

    static void until(String what, BooleanSupplier condition) {
        if (!comes(condition, PATIENCE)) {
            throw new AssertionError("has not come within a minute: " + what);
        }
    }

    /** Waits until the answer on the screen is the newest. */
    void answered() {
        until("the answer", () -> {
            Desk desk = pane().bench().desk();
            return !desk.replies().replyLate(desk.asking());
        });
    }

    /** The component of a name that is showing. */
    <C extends JComponent> C find(Class<C> kind, String name) {
        Component[] found = new Component[1];
        until(name, () -> {
            found[0] = find(window.frame().getContentPane(), kind, name);
            return found[0] != null;
        });
        return kind.cast(found[0]);
    }

    private static Component find(Container in, Class<?> kind, String name) {
        for (Component component : in.getComponents()) {
            if (kind.isInstance(component) && name.equals(component.getName()) && component.isShowing()) {
                return component;
            }
            Component below = component instanceof Container container ? find(container, kind, name) : null;
            if (below != null) {
                return below;
            }
        }
        return null;
    }

    /** Where a place of a component is on the screen, once the page is laid out and scrolled there: a click must not miss. */
    private Point place(JComponent component, int x, int y) {
        Point[] place = {new Point()};
        until("a place to click in " + component.getName(), () -> {
            Point before = place[0];
            place[0] = scrolled(component, x, y);
            return place[0].equals(before) && isAt(component, before);
        });
        return place[0];
    }

    private static Point scrolled(JComponent component, int x, int y) {
        Rectangle wanted = new Rectangle(component.getX() + x - 4, component.getY() + y - 4, 8, 8);
        ((JComponent) component.getParent()).scrollRectToVisible(wanted); // a text field would scroll its text
        Point on = component.getLocationOnScreen();
        return new Point(on.x + x, on.y + y);
    }

    private boolean isAt(Component component, Point place) {
        Point inside = new Point(place);
        SwingUtilities.convertPointFromScreen(inside, window.frame());
        Component there = SwingUtilities.getDeepestComponentAt(window.frame(), inside.x, inside.y);
        return there != null && SwingUtilities.isDescendingFrom(there, component);
    }

    void click(JComponent component) {
        click(component, see(component::getWidth) / 2, see(component::getHeight) / 2);
    }

    void click(JComponent component, int x, int y) {
        Point place = place(component, x, y);
        robot.mouseMove(place.x, place.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    void hover(JComponent component, int x, int y) {
        Point place = place(component, x, y);
        robot.mouseMove(place.x - 1, place.y);
        robot.mouseMove(place.x, place.y);
        robot.waitForIdle();
    }

    /** Drags from one place of a component to another, in small steps. */
    void drag(JComponent component, int fromX, int fromY, int toX, int toY) {
        Point from = place(component, fromX, fromY);
        robot.mouseMove(from.x, from.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        int steps = 20;
        for (int i = 1; i <= steps; i++) {
            robot.mouseMove(from.x + (toX - fromX) * i / steps, from.y + (toY - fromY) * i / steps);
        }
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    void key(int... codes) {
        press(codes);
        robot.waitForIdle();
    }

    private void press(int... codes) {
        for (int code : codes) {
            robot.keyPress(code);
        }
        for (int i = codes.length - 1; i >= 0; i--) {
            robot.keyRelease(codes[i]);
        }
    }

    /** Clicks into a field, replaces what stands there, and presses Enter. */
    void type(JComponent field, String text) {
        click(field);
        // On a busy machine the field may still have been on its way to its place.
        for (int again = 0; again < 3 && !comes(field::isFocusOwner, CLICK); again++) {
            click(field);
        }
        until("focus in " + field.getName(), field::isFocusOwner);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int code = switch (c) {
                case '/' -> KeyEvent.VK_SLASH;
                case '.' -> KeyEvent.VK_PERIOD;
                case '-' -> KeyEvent.VK_MINUS;
                case ' ' -> KeyEvent.VK_SPACE;
                default -> KeyEvent.getExtendedKeyCodeForChar(c);
            };
            if (Character.isUpperCase(c)) {
                press(KeyEvent.VK_SHIFT, code);
            } else {
                press(code);
            }
        }
        key(KeyEvent.VK_ENTER);
    }

    @Override
    public Unsaved unsaved(String title) {
        return unsaved;
    }

    @Override
    public Changed changedOutside(String file) {
        return changed;
    }

    @Override
    public Optional<Path> toOpen(Optional<Path> near) {
        return Optional.ofNullable(files.poll());
    }

    @Override
    public Optional<Path> toSave(Path proposed) {
        return Optional.ofNullable(files.poll());
    }

    @Override
    public Optional<String> line(String question, String start) {
        askedLines.add(question + ": " + start);
        return Optional.ofNullable(lines.poll());
    }

    @Override
    public void close() {
        see(() -> {
            unsaved = Unsaved.DISCARD;
            window.close();
            return true;
        });
    }
}
