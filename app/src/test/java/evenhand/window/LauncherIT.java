package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The launcher, without a screen. */
@Timeout(300)
class LauncherIT {
    private record Ended(int status, String out, String err) {}

    private static Ended run(String... arguments) throws IOException, InterruptedException {
        Path launcher = Path.of("evenhand").toAbsolutePath();
        assumeThat(Files.isExecutable(launcher) && Files.exists(Path.of("target/evenhand.jar")))
                .isTrue();
        List<String> command = new ArrayList<>(List.of("sh", launcher.toString()));
        command.addAll(List.of(arguments));
        Path out = Files.createTempFile("launcher", ".out");
        Path err = Files.createTempFile("launcher", ".err");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        // The tests' own Java brings a screen with it.
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        Process process = builder.start();
        assertThat(process.waitFor(200, TimeUnit.SECONDS)).isTrue();
        Ended ended = new Ended(process.exitValue(), read(out), read(err));
        Files.delete(out);
        Files.delete(err);
        return ended;
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    @Test
    void withoutADisplayTheWindowSaysSoInALineAndEndsWithTwo() throws Exception {
        for (String[] arguments : new String[][] {{}, {"window"}, {"window", "../scenarios/harbour-saloon.json"}}) {
            Ended ended = run(arguments);
            assertThat(ended.status()).isEqualTo(2);
            assertThat(ended.out()).isEmpty();
            assertThat(ended.err().strip().lines())
                    .singleElement()
                    .asString()
                    .contains("there is no display", "balance FILE");
        }
    }

    @Test
    void theHelpOfTheWindowNeedsNoDisplay() throws Exception {
        Ended ended = run("window", "--help");
        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("evenhand window scenarios/slipper-coupe.json", "--units");
    }
}
