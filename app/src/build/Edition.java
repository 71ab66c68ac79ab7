import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Writes down which edition is being built: {@code java Edition.java ROOT VERSION FILE}. The commit is left out where there is no
 * repository, as in an unpacked archive, or no git. What is written depends on nothing else, so that the same commit gives the same
 * bytes.
 */
final class Edition {
    private Edition() {}

    public static void main(String[] args) throws IOException {
        File root = new File(args[0]);
        StringBuilder text = new StringBuilder("version=" + args[1] + "\n");
        // A repository around an unpacked archive is another's.
        if (new File(root, ".git").exists()) {
            git(root, "rev-parse", "--short=12", "HEAD").filter(name -> !name.isEmpty()).ifPresent(name -> {
                text.append("commit=").append(name).append('\n');
                git(root, "--no-optional-locks", "status", "--porcelain", "--untracked-files=no")
                        .filter(changes -> !changes.isEmpty())
                        .ifPresent(changes -> text.append("changed=true\n"));
            });
        }
        Path file = Path.of(args[2]);
        Files.createDirectories(file.toAbsolutePath().getParent());
        if (!Files.exists(file) || !Files.readString(file).equals(text.toString())) {
            Files.writeString(file, text);
        }
    }

    /** What git says; nothing where it cannot. */
    private static Optional<String> git(File folder, String... words) {
        String[] command = new String[words.length + 1];
        command[0] = "git";
        System.arraycopy(words, 0, command, 1, words.length);
        try {
            Process git = new ProcessBuilder(command)
                    .directory(folder)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String said = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return git.waitFor() == 0 ? Optional.of(said.strip()) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
