package evenhand.window;

import com.formdev.flatlaf.FlatLightLaf;
import evenhand.look.Typeface;
import java.awt.AWTException;
import java.awt.BorderLayout;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;

/**
 * How long it takes from the start of Java until something stands in the window, beside a bare window of the same look and feel:
 * {@code mvn -q -Pframes -DskipTests package}, after the window was opened once from the launcher, which keeps its classes. Both are
 * started in turn, by the same Java with the same archive of classes.
 */
public final class FirstContent {
    private static final int ROUNDS = 7;

    /** Words have so many shades; an empty window has fewer. */
    private static final int SHADES = 6;

    private static final Rectangle LOOKED_AT = new Rectangle(0, 0, 500, 160);

    private FirstContent() {}

    public static void main(String[] arguments) throws Exception {
        if (arguments.length == 0) {
            sideBySide();
            return;
        }
        Thread eyes = new Thread(FirstContent::watch, "eyes");
        eyes.setDaemon(true);
        eyes.start();
        if (arguments[0].equals("bare")) {
            SwingUtilities.invokeAndWait(FirstContent::bare);
        } else {
            evenhand.start.Main.main(new String[] {"window"});
        }
    }

    private static void bare() {
        FlatLightLaf.setup();
        JFrame frame = new JFrame("bare");
        JLabel words = new JLabel("A window with a few words in it, and nothing else.");
        words.setFont(Typeface.plain(16));
        frame.add(words, BorderLayout.NORTH);
        frame.setSize(1280, 800);
        frame.setVisible(true);
    }

    private static void watch() {
        try {
            Robot robot = new Robot();
            while (shades(robot.createScreenCapture(LOOKED_AT)) < SHADES) {
                Thread.onSpinWait();
            }
            Instant start = ProcessHandle.current().info().startInstant().orElseThrow();
            System.out.println(Duration.between(start, Instant.now()).toMillis());
            Runtime.getRuntime().halt(0);
        } catch (AWTException noScreen) {
            throw new IllegalStateException(noScreen);
        }
    }

    private static int shades(BufferedImage seen) {
        Set<Integer> shades = new HashSet<>();
        for (int y = 0; y < seen.getHeight(); y += 2) {
            for (int x = 0; x < seen.getWidth(); x++) {
                shades.add(seen.getRGB(x, y));
            }
        }
        return shades.size();
    }

    private static void sideBySide() throws Exception {
        if (GraphicsEnvironment.isHeadless()) {
            System.out.println("There is no screen to look at.");
            return;
        }
        List<Long> bare = new ArrayList<>();
        List<Long> ours = new ArrayList<>();
        for (int i = 0; i < ROUNDS; i++) {
            bare.add(once("bare"));
            ours.add(once("ours"));
        }
        System.out.printf(
                "first content: a bare window %d ms, this one %d ms (medians of %d, %.2f times)%n",
                median(bare), median(ours), ROUNDS, (double) median(ours) / median(bare));
    }

    private static long median(List<Long> times) {
        return times.stream().sorted().skip(times.size() / 2).findFirst().orElseThrow();
    }

    private static long once(String which) throws Exception {
        Path state = Files.createTempDirectory("first-content");
        Path jar = Path.of("target", "evenhand.jar");
        ProcessBuilder starting = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Xshare:auto",
                "-XX:SharedArchiveFile=" + Path.of("target", "evenhand-window.jsa"),
                "-Duser.home=" + state,
                "-cp",
                jar + System.getProperty("path.separator") + Path.of("target", "test-classes"),
                FirstContent.class.getName(),
                which);
        starting.environment().put("XDG_STATE_HOME", state.toString());
        starting.redirectErrorStream(true);
        Process process = starting.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return Long.parseLong(said.strip().lines().reduce((first, last) -> last).orElseThrow());
    }
}
