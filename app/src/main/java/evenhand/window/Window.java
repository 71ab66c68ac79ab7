package evenhand.window;

import evenhand.window.desk.Demos;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Memory;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.StateFolder;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.AWTError;
import java.awt.Dimension;
import java.awt.Frame;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** The window on the screen. */
public final class Window {
    private static final Dimension USUAL = new Dimension(1280, 800);
    private static final Dimension LEAST = new Dimension(1024, 700);

    private final JFrame frame = new JFrame("Evenhand");
    private final CountDownLatch closed = new CountDownLatch(1);
    private final Room room;
    private final MainPane pane;

    /** How it stood before it had the whole screen. */
    private int ordinary = Frame.NORMAL;

    /**
     * Opens the window and waits until it is closed.
     *
     * @param units to be shown; those of last time where none are wanted
     * @param report writes the reports
     * @return why it cannot be opened; empty after it was closed
     */
    public static Optional<String> open(Optional<Path> file, Optional<Units> units, ReportWriter report) {
        Optional<String> why = noDisplay();
        if (why.isPresent()) {
            return why;
        }
        Path folder = StateFolder.of(
                System.getenv(), Path.of(System.getProperty("user.home")), System.getProperty("os.name"));
        CountDownLatch[] closed = new CountDownLatch[1];
        try {
            SwingUtilities.invokeAndWait(() -> {
                Window window = new Window(folder, units, Optional.empty(), report);
                closed[0] = window.closed;
                window.begin(file);
            });
            closed[0].await();
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        } catch (java.lang.reflect.InvocationTargetException defect) {
            throw new IllegalStateException("the window cannot be made", defect.getCause());
        }
        return Optional.empty();
    }

    private static Optional<String> noDisplay() {
        try {
            if (!GraphicsEnvironment.isHeadless()) {
                GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
                return Optional.empty();
            }
        } catch (AWTError | HeadlessException | LinkageError none) {
            // Said below: the reason is the same for whoever reads it.
        }
        return Optional.of("there is no display to open a window on; in a terminal ask with the other commands,"
                + " for example \"evenhand balance FILE\"");
    }

    /** @param asker asks the person; dialogs where none is given */
    Window(Path folder, Optional<Units> units, Optional<Asker> asker, ReportWriter report) {
        Look look = new Memory(folder).look(Questions.ALL.get(0).key(), units);
        room = Room.with(Demos.NAMES.get(0), look, folder, asker.orElseGet(() -> new Dialogs(frame)), report);
        pane = room.pane();
        frame.setJMenuBar(Menus.bar(pane, Questions.ALL, this::print, this::close));
        frame.setContentPane(pane);
        frame.setMinimumSize(LEAST);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent e) {
                close();
            }

            @Override
            public void windowActivated(WindowEvent e) {
                pane.cabinet().lookOutside();
            }
        });
        frame.setTransferHandler(new Dropped(pane));
        pane.bench().add((before, now) -> {
            boolean forTheOwner = now.look().page() == Look.Page.CUSTOMER;
            if (forTheOwner != (before.look().page() == Look.Page.CUSTOMER)) {
                fullScreen(forTheOwner);
            }
            frame.setTitle(now.name());
            frame.getRootPane()
                    .putClientProperty("Window.documentModified", now.unsaved()); // where the system marks it
        });
    }

    /** Shows the window with a file, or with what there is to begin with. */
    void begin(Optional<Path> file) {
        pane.begin(file);
        Rectangle screen = frame.getGraphicsConfiguration().getBounds();
        frame.setSize(
                Math.min(screen.width, Math.max(USUAL.width, Looks.em(98))),
                Math.min(screen.height, Math.max(USUAL.height, Looks.em(61))));
        frame.setLocationRelativeTo(null);
        frame.setVisible(true);
        SwingUtilities.invokeLater(pane.bench()::ask);
        if (file.isPresent()) {
            pane.adjust().knobs().stream()
                    .findFirst()
                    .ifPresent(knob -> knob.track().requestFocusInWindow());
        }
    }

    /** The whole screen for the page that the owner of the car is shown, as far as the desktop gives it. */
    private void fullScreen(boolean whole) {
        frame.getJMenuBar().setVisible(!whole);
        GraphicsDevice screen = frame.getGraphicsConfiguration().getDevice();
        if (screen.isFullScreenSupported()) {
            screen.setFullScreenWindow(whole ? frame : null);
        } else {
            ordinary = whole ? frame.getExtendedState() : ordinary;
            frame.setExtendedState(whole ? Frame.MAXIMIZED_BOTH : ordinary);
        }
        frame.validate();
    }

    MainPane pane() {
        return pane;
    }

    JFrame frame() {
        return frame;
    }

    private void print() {
        boolean dark = pane.bench().desk().look().dark();
        pane.bench().act(new LookAct.ShowDark(false)); // paper is white
        frame.validate();
        Optional<String> why = Printing.print(pane.answer());
        pane.bench().act(new LookAct.ShowDark(dark));
        why.ifPresent(words -> pane.notice().say(words));
    }

    /** Closes the window unless something would be lost that the person wants to keep. */
    void close() {
        if (pane.cabinet().mayLeave()) {
            room.close();
            frame.dispose();
            closed.countDown();
        }
    }
}
