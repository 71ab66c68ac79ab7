package evenhand.terminal;

import evenhand.terminal.asked.Status;
import java.util.List;

/** Several commands one after the other in a process of their own, each an argument with its words in lines. */
public final class Runs {
    private Runs() {}

    public static void main(String[] commands) {
        for (String command : commands) {
            Run run = Run.of(command.lines().toArray(String[]::new));
            System.err.print(run.err());
            if (run.status() != Status.DONE) {
                System.exit(1);
            }
        }
    }

    /** The words of a command as one argument. */
    public static String argument(List<String> words) {
        return String.join("\n", words);
    }
}
