package evenhand.drawing;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.util.function.Consumer;
import javax.swing.Timer;

/**
 * Has a drawing glide to the next where the car comes to stand otherwise at once. One that comes while it still glides is shown
 * at once: a hand moves something, and the picture is not to lag behind it.
 */
final class Glide {
    /** How long it glides, ms. */
    static final int DURATION = 130;

    private static final int FRAME = 15;

    private final Consumer<Drawing> shows;
    private final Timer timer = new Timer(FRAME, event -> step());
    private Drawing from;
    private Drawing to;
    private long began;

    /** @param shows is told every drawing on the way, the last one itself */
    Glide(Drawing first, Consumer<Drawing> shows) {
        this.shows = shows;
        from = first;
        to = first;
    }

    /** Whether the system wants things to move. */
    static boolean isWanted() {
        if (GraphicsEnvironment.isHeadless()) {
            return false;
        }
        Object wish = Toolkit.getDefaultToolkit().getDesktopProperty("gnome.Gtk/EnableAnimations");
        return !Integer.valueOf(0).equals(wish) && !Boolean.FALSE.equals(wish);
    }

    /** Shows the next, smoothly if that is wanted and the two are of the same parts. */
    void show(Drawing next, boolean smoothly) {
        boolean hurried = timer.isRunning();
        timer.stop();
        from = to;
        to = next;
        if (smoothly && !hurried && from.isAlike(to)) {
            began = System.nanoTime();
            timer.start();
            shows.accept(at(0));
        } else {
            shows.accept(next);
        }
    }

    /** Shows at once what it glides to. */
    void end() {
        if (timer.isRunning()) {
            timer.stop();
            shows.accept(to);
        }
    }

    private void step() {
        double part = (System.nanoTime() - began) / 1e6 / DURATION;
        if (part >= 1) {
            timer.stop();
        }
        shows.accept(at(Math.min(1, part)));
    }

    /** After a part of the time: fast at first, gently at the end. */
    private Drawing at(double part) {
        return from.towards(to, 1 - (1 - part) * (1 - part));
    }
}
