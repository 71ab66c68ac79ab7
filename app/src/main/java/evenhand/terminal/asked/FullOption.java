package evenhand.terminal.asked;

import picocli.CommandLine.Option;

/** Whether all figures are printed, or the verdict on one screen. */
public final class FullOption {
    @Option(names = "--full", description = "All figures in tables, instead of the verdict on one screen.")
    private boolean full;

    public boolean full() {
        return full;
    }
}
