package evenhand.terminal.asked;

import evenhand.words.Units;
import picocli.CommandLine.Option;

/** Options that every command has. */
public final class UsualOptions {
    @Option(
            names = "--units",
            paramLabel = "metric|imperial",
            defaultValue = "metric",
            description = "Units of tables, words and CSV. Otherwise ${DEFAULT-VALUE}.")
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
