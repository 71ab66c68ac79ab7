package evenhand.window.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Files of the running windows, one of each, named after its process.
 *
 * @param ending of their names
 * @param process number of this process
 */
record ProcessFiles(Path folder, String ending, long process) {
    /** That of this process, whether it is there or not. */
    Path own() {
        return folder.resolve(process + ending);
    }

    /** Those of other processes. */
    List<Path> others(boolean living) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> file.getFileName().toString().endsWith(ending) && !file.equals(own()))
                    .filter(file -> lives(file) == living)
                    .toList();
        } catch (IOException none) {
            return List.of();
        }
    }

    private boolean lives(Path file) {
        String name = file.getFileName().toString();
        try {
            long other = Long.parseLong(name.substring(0, name.length() - ending.length()));
            return ProcessHandle.of(other).map(ProcessHandle::isAlive).orElse(false);
        } catch (NumberFormatException foreign) {
            return false;
        }
    }

    /** Takes one away; where it stays, it is found again. */
    static void drop(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            // Whoever looks for it next has the same choice.
        }
    }
}
