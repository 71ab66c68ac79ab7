package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ManualTest {
    @Test
    void everyCommandHasAPageAndIsCompleted(@TempDir Path folder) throws IOException {
        Manual.main(new String[] {folder.toString()});
        String bash = Files.readString(folder.resolve("completions/evenhand.bash"));
        String fish = Files.readString(folder.resolve("completions/evenhand.fish"));
        assertThat(Files.readString(folder.resolve("completions/evenhand.zsh")))
                .startsWith("#compdef evenhand\n")
                .endsWith(bash);
        for (String command : Evenhand.commands().getSubcommands().keySet()) {
            assertThat(Files.readString(folder.resolve("man1/evenhand-" + command + ".1")))
                    .contains(
                            ".SH NAME\nevenhand\\-" + command + " \\- ", ".SH SYNOPSIS", "--help".replace("-", "\\-"));
            assertThat(bash).contains("_picocli_evenhand_" + command);
            assertThat(fish)
                    .contains(" -a " + command + " -d '", "'__fish_seen_subcommand_from " + command + "' -l units");
        }
        try (Stream<Path> pages = Files.list(folder.resolve("man1"))) {
            assertThat(pages)
                    .hasSize(Evenhand.commands().getSubcommands().size() + 1)
                    .allSatisfy(page -> {
                        String text = Files.readString(page);
                        assertThat(text)
                                .doesNotContain("${", "%%", "app/evenhand", "\n'")
                                .endsWith("\n");
                        assertThat(text.lines().filter(line -> line.startsWith(".")))
                                .allMatch(line -> line.matches("\\.(TH|SH|TP|PP|nf|fi)( .*)?"));
                    });
        }
    }

    /** A page is text for man, whose marks are a backslash, and a point or an apostrophe at the beginning of a line. */
    @Test
    void whatManWouldObeyIsSetAsText(@TempDir Path folder) throws IOException {
        Manual.main(new String[] {folder.toString()});
        assertThat(Files.readString(folder.resolve("man1/evenhand-balance.1")))
                .contains("\\-\\-setup \"As bought\" \\e\n")
                .contains("\\fB\\-\\-turn left|right|both\\fR\n");
    }
}
