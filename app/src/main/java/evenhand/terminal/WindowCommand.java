package evenhand.terminal;

import evenhand.terminal.asked.Asked;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import evenhand.words.Units;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code evenhand window}, and {@code evenhand} alone. */
@Command(
        name = "window",
        sortOptions = false,
        description = {
            "The desktop window: move an adjustment, watch the balance follow. It opens with a file, with the one"
                    + " of last time, or with a demo car.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand",
            "  app/evenhand window scenarios/slipper-coupe.json",
            "  app/evenhand window scenarios/slipper-coupe.json --units imperial",
            "",
            "Ends with 0 when the window was closed, and with 2 when there is no display to",
            "open it on or the command line is wrong."
        })
final class WindowCommand implements Asked {
    @Parameters(paramLabel = "FILE", arity = "0..1", description = "The scenario file.")
    private Optional<String> file = Optional.empty();

    @Option(
            names = "--units",
            paramLabel = "metric|imperial",
            description = "Units that the window opens in. Otherwise those of last time, at first metric.")
    private Optional<String> units = Optional.empty();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    @SuppressWarnings("UnusedVariable") // the parser answers it
    private boolean help;

    private final Evenhand.Opener opener;

    WindowCommand(Evenhand.Opener opener) {
        this.opener = opener;
    }

    @Override
    public Status run(Console console) throws Mistake {
        Optional<Units> wanted = units.isPresent() ? Optional.of(OptionText.units(units.get())) : Optional.empty();
        Optional<Path> path = file.isPresent() ? Optional.of(OptionText.file(file.get())) : Optional.empty();
        Optional<String> why = opener.open(path, wanted);
        if (why.isPresent()) {
            throw new Mistake(why.get());
        }
        return Status.DONE;
    }
}
