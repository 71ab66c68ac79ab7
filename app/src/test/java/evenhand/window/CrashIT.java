package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.Demos;
import evenhand.window.desk.Drawer;
import evenhand.window.desk.SetupAct;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.swing.JButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a crash leaves. Another process works in a window of its own, and is killed. */
@OnScreen
@Timeout(300)
class CrashIT {
    private static final String TYPED = "typed just before the power went";

    @TempDir
    Path folder;

    /** The process that is killed: opens a file, changes it, then saves it again and again or only leaves it unsaved. */
    static final class Victim {
        private Victim() {}

        public static void main(String[] arguments) throws Exception {
            Path state = Path.of(arguments[0]);
            Path file = Path.of(arguments[1]);
            boolean saves = arguments[2].equals("saves");
            Hands hands = new Hands(state, Optional.of(file));
            for (int i = 0; ; i++) {
                hands.act(new SetupAct.SetNote("Lowered", (saves ? "saved " + i + " times " : "") + TYPED));
                if (saves) {
                    SwingUtilities.invokeAndWait(() -> hands.pane().cabinet().saveIn(file));
                } else {
                    Thread.sleep(200);
                }
            }
        }
    }

    private Process victim(Path file, String what) throws Exception {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Victim.class.getName(),
                        folder.resolve("state").toString(),
                        file.toString(),
                        what)
                .inheritIO()
                .start();
    }

    private Path car() throws Exception {
        Path file = folder.resolve("car.json");
        return Files.writeString(
                file, Demos.open("harbour-saloon").work().scenario().text());
    }

    private static void waitFor(String what, java.util.concurrent.Callable<Boolean> condition) throws Exception {
        for (int i = 0; i < 1200; i++) {
            if (condition.call()) {
                return;
            }
            Thread.sleep(50);
        }
        throw new AssertionError("has not come within a minute: " + what);
    }

    @Test
    void aWindowKilledWhileItSavesLeavesOneWholeFile() throws Exception {
        Path file = car();
        Process victim = victim(file, "saves");
        waitFor("saving", () -> Files.readString(file).contains("saved 5 times"));
        victim.destroyForcibly();
        victim.waitFor(30, TimeUnit.SECONDS);
        assertThat(Drawer.open(file)).isInstanceOf(Drawer.Opened.Sound.class);
        assertThat(Files.readString(file)).contains(TYPED);
        assertThat(Drawer.open(folder.resolve("car.previous.json"))).isInstanceOf(Drawer.Opened.Sound.class);
    }

    @Test
    void unsavedWorkOfAKilledWindowIsOfferedByTheNextAndOpened() throws Exception {
        Path file = car();
        String before = Files.readString(file);
        Process victim = victim(file, "leaves unsaved");
        waitFor("safekeeping", () -> kept().stream().anyMatch(text -> text.contains(TYPED)));
        victim.destroyForcibly();
        victim.waitFor(30, TimeUnit.SECONDS);
        assertThat(Files.readString(file)).isEqualTo(before);

        try (Hands hands = new Hands(folder.resolve("state"), Optional.empty())) {
            assertThat(Hands.see(() -> hands.pane().notice().text()))
                    .contains("Harbour saloon", "car.json", "today", "was kept");
            hands.click(hands.find(JButton.class, "notice take it up"));
            hands.answered();
            assertThat(hands.desk()
                            .work()
                            .scenario()
                            .setup("Lowered")
                            .orElseThrow()
                            .note())
                    .contains(TYPED);
            assertThat(hands.desk().unsaved()).isTrue();
            assertThat(hands.desk().filed().path()).contains(file.toAbsolutePath());
        }
        assertThat(kept()).isEmpty();
    }

    private List<String> kept() throws Exception {
        Path state = folder.resolve("state");
        if (!Files.isDirectory(state)) {
            return List.of();
        }
        try (var files = Files.list(state)) {
            return files.filter(file -> file.toString().endsWith(".unsaved"))
                    .map(file -> {
                        try {
                            return Files.readString(file);
                        } catch (java.io.IOException gone) {
                            return "";
                        }
                    })
                    .toList();
        }
    }
}
