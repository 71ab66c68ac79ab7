package evenhand.window;

import evenhand.scenario.Setup;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Desk;
import evenhand.window.desk.TrialAct;
import java.awt.event.MouseEvent;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;

/**
 * Measures what a drag costs on each demo car: {@code mvn -q -Pframes -DskipTests package}. Two times are told. A <b>frame</b>
 * is what the event thread does for one step of the mouse: the act, every view, painting. The <b>answer</b> is the time from
 * that step until all visible answers are those of the new value, and painted.
 */
public final class FrameTimes {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int WARM = 300;
    private static final int STEPS = 600;
    private static final int MOST = 8;

    private FrameTimes() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of("target", "frames-state"));
        try (Hands hands = new Hands(folder, Optional.empty())) {
            List<String> demos = arguments.length == 0 ? Demos.NAMES : List.of(arguments);
            for (String demo : demos) {
                Hands.see(() -> {
                    hands.pane().cabinet().openDemo(demo);
                    return true;
                });
                hands.answered();
                measure(hands, demo);
                int ticked = tickAll(hands);
                hands.answered();
                measure(hands, demo + ", " + ticked + " ticked");
            }
        }
        System.exit(0);
    }

    /** Ticks as many set-ups as there are, eight at most. */
    private static int tickAll(Hands hands) {
        List<String> names = hands.desk().work().scenario().setups().stream()
                .map(Setup::name)
                .limit(MOST)
                .toList();
        names.forEach(name -> hands.act(new TrialAct.Show(name, true)));
        return names.size();
    }

    private static void measure(Hands hands, String demo) throws Exception {
        Track track = Hands.see(() -> hands.pane().adjust().knobs().get(0).track());
        double[] frames = new double[STEPS];
        double[] work = new double[STEPS];
        double[] answers = new double[STEPS];
        mouse(track, MouseEvent.MOUSE_PRESSED, Hands.see(() -> track.xOf(track.value())));
        int width = Hands.see(track::getWidth);
        for (int i = -WARM; i < STEPS; i++) {
            int x = width / 4 + Math.abs(Math.floorMod(i, width) - width / 2);
            long start = System.nanoTime();
            Frame frame = mouse(track, MouseEvent.MOUSE_DRAGGED, x);
            boolean[] late = {true};
            while (late[0]) {
                SwingUtilities.invokeAndWait(() -> {
                    Desk desk = hands.pane().bench().desk();
                    late[0] = desk.replies().replyLate(desk.asking());
                });
            }
            SwingUtilities.invokeAndWait(FrameTimes::paint);
            if (i >= 0) {
                frames[i] = frame.wall();
                work[i] = frame.work();
                answers[i] = (System.nanoTime() - start) / 1e6;
            }
        }
        mouse(track, MouseEvent.MOUSE_RELEASED, width / 2);
        System.out.printf(
                "%-32s frame: median %5.1f ms, 99th %5.1f ms (work of the processor: %5.1f, %5.1f)"
                        + "   answer: median %5.1f ms, 99th %5.1f ms%n",
                demo,
                part(frames, 0.5),
                part(frames, 0.99),
                part(work, 0.5),
                part(work, 0.99),
                part(answers, 0.5),
                part(answers, 0.99));
    }

    private static void paint() {
        RepaintManager.currentManager(null).paintDirtyRegions();
    }

    /** What a step of the mouse took on the event thread: by the clock, and of the processor, ms. */
    private record Frame(double wall, double work) {}

    private static Frame mouse(Track track, int id, int x) throws Exception {
        CountDownLatch done = new CountDownLatch(1);
        Frame[] frame = new Frame[1];
        SwingUtilities.invokeLater(() -> {
            long start = System.nanoTime();
            long busy = THREADS.getCurrentThreadCpuTime();
            track.dispatchEvent(new MouseEvent(
                    track, id, System.currentTimeMillis(), 0, x, track.getHeight() / 2, 1, false, MouseEvent.BUTTON1));
            paint();
            frame[0] = new Frame((System.nanoTime() - start) / 1e6, (THREADS.getCurrentThreadCpuTime() - busy) / 1e6);
            done.countDown();
        });
        done.await();
        return frame[0];
    }

    private static double part(double[] times, double part) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1, Math.round(part * (sorted.length - 1)))];
    }
}
