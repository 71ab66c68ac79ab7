package evenhand.terminal.asked;

import evenhand.answers.Progress;
import evenhand.terminal.page.Console;

/** How far long work has come, on one line of the terminal that is wiped at the end; nothing where nobody watches. */
public final class ProgressLine implements Progress, AutoCloseable {
    private final Console console;
    private final String work;
    private int shown = -1;

    /** @param work what is done, such as "asking cars" */
    public ProgressLine(Console console, String work) {
        this.console = console;
        this.work = work;
    }

    @Override
    public synchronized void at(double share) {
        int part = (int) (100 * share);
        if (console.watched() && part > shown) {
            shown = part;
            console.progress(work + ": " + part + " %");
        }
    }

    /** Does something that writes to the same terminal, with the line wiped before it. */
    public synchronized void aside(Runnable writes) {
        wipe();
        writes.run();
    }

    @Override
    public synchronized void close() {
        wipe();
    }

    private void wipe() {
        if (shown >= 0) {
            console.progress("");
        }
    }
}
