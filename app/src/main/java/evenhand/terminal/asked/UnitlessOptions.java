package evenhand.terminal.asked;

import evenhand.words.Units;
import picocli.CommandLine.Option;

/** The options that every command has, for those whose answers have no units to choose. */
public final class UnitlessOptions {
    @Option(
            names = "--units",
            paramLabel = "metric|imperial",
            defaultValue = "metric",
            description = "Taken as by every command; changes nothing in what this one writes.")
    private String units = "metric";

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    @SuppressWarnings("UnusedVariable") // the parser answers it
    private boolean help;

    public Units units() throws Mistake {
        return OptionText.units(units);
    }
}
