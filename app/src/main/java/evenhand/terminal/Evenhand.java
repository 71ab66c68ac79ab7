package evenhand.terminal;

import evenhand.catalogue.Nearest;
import evenhand.terminal.asked.Asked;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.EachFile;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.Status;
import evenhand.terminal.balance.BalanceCommand;
import evenhand.terminal.book.LogCommand;
import evenhand.terminal.brakes.BrakesCommand;
import evenhand.terminal.bump.BumpCommand;
import evenhand.terminal.compare.CompareCommand;
import evenhand.terminal.doubt.DoubtCommand;
import evenhand.terminal.drive.DriveCommand;
import evenhand.terminal.effects.EffectsCommand;
import evenhand.terminal.find.FindCommand;
import evenhand.terminal.level.LevelCommand;
import evenhand.terminal.loads.LoadsCommand;
import evenhand.terminal.lower.LowerCommand;
import evenhand.terminal.page.Console;
import evenhand.terminal.ride.RideCommand;
import evenhand.terminal.roadtest.RoadTestCommand;
import evenhand.terminal.roughness.RoughnessCommand;
import evenhand.terminal.travel.TravelCommand;
import evenhand.words.Edition;
import evenhand.words.Units;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program as it is called from a shell. */
@Command(
        name = "evenhand",
        description = {
            "Handling balance of a road car, worked out from what was measured on it.",
            "",
            "A scenario file holds one car and its set-ups. Of several files a command answers each by itself, in"
                    + " JSON on a line of its own, in CSV in one table. A file named - is standard input.",
            "Without a command the window opens.",
            ""
        },
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand check scenarios/harbour-saloon.json",
            "  app/evenhand balance scenarios/harbour-saloon.json --setup \"As bought\" \\",
            "      --pace \"0.3 g\"",
            "  app/evenhand ride scenarios/*.json --json > answers.ndjson",
            "  app/evenhand balance --help",
            "",
            "Results are estimates from a simplified model. Have changes to steering,",
            "suspension or structure checked by a qualified engineer, and test at the limit",
            "on a closed course only."
        })
public final class Evenhand {
    private static final int JAVA_OF_ALWAYS_A_CONSOLE = 22;
    private static final Opener NO_WINDOW = (file, units) -> Optional.of("there is no window here");

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    @SuppressWarnings("UnusedVariable") // the parser answers it
    private boolean help;

    @Option(
            names = "--version",
            versionHelp = true,
            description = "Shows the version, and the commit that it was built of.")
    @SuppressWarnings("UnusedVariable") // the parser answers it
    private boolean version;

    private Evenhand() {}

    /**
     * Opens the window, with a file if one is named and in units if some are wanted, and waits until it is closed; says why not
     * where it cannot.
     */
    public interface Opener {
        Optional<String> open(Optional<Path> file, Optional<Units> units);
    }

    /** @param window opens the window where the command line asks for it */
    public static void main(Opener window, String[] args) {
        Console console = Console.of(
                        new FileOutputStream(FileDescriptor.out),
                        new FileOutputStream(FileDescriptor.err),
                        onTerminal(),
                        isWatched(),
                        System.getenv())
                .reading(new FileInputStream(FileDescriptor.in));
        System.exit(run(window, console, args).code());
    }

    /** Whether a person sees the answer. From Java 22 on a console is there even where its output goes to a file. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean onTerminal() {
        java.io.Console console = System.console();
        if (console == null || Runtime.version().feature() < JAVA_OF_ALWAYS_A_CONSOLE) {
            return console != null;
        }
        try {
            return Boolean.TRUE.equals(
                    java.io.Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    /** Whether standard error is a terminal: Java does not tell, the system does where it has such a folder. */
    private static boolean isWatched() {
        try {
            String target = Files.readSymbolicLink(Path.of("/proc/self/fd/2")).toString();
            return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }

    /** Runs one command line. Whatever happens, it ends in a status, and never in a stack trace. */
    static Status run(Opener window, Console console, String... args) {
        try {
            return runCommand(window, console, args);
        } catch (Console.ReaderGone e) {
            return Status.DONE;
        } catch (UncheckedIOException e) {
            Throwable cause = e.getCause();
            console.complain("evenhand: cannot write the answer: " + (cause == null ? e : cause).getMessage());
            return Status.WRONG;
        } catch (RuntimeException | Error e) {
            return defect(console, e);
        }
    }

    private static Status defect(Console console, Throwable e) {
        StackTraceElement[] trace = e.getStackTrace();
        console.complain("evenhand: internal error, please report it together with the file: " + e
                + (trace.length == 0 ? "" : " at " + trace[0]));
        return Status.DEFECT;
    }

    /** The same where there is no window to be opened. */
    public static Status run(Console console, String... args) {
        return run(NO_WINDOW, console, args);
    }

    /** All commands, to tell of them. */
    static CommandLine commands() {
        return commands(NO_WINDOW);
    }

    private static CommandLine commands(Opener window) {
        return new CommandLine(new Evenhand())
                .addSubcommand(new BalanceCommand())
                .addSubcommand(new CompareCommand())
                .addSubcommand(new EffectsCommand())
                .addSubcommand(new FindCommand())
                .addSubcommand(new DoubtCommand())
                .addSubcommand(new RoadTestCommand())
                .addSubcommand(new RideCommand())
                .addSubcommand(new BumpCommand())
                .addSubcommand(new RoughnessCommand())
                .addSubcommand(new LowerCommand())
                .addSubcommand(new LevelCommand())
                .addSubcommand(new TravelCommand())
                .addSubcommand(new BrakesCommand())
                .addSubcommand(new DriveCommand())
                .addSubcommand(new LoadsCommand())
                .addSubcommand(new LogCommand())
                .addSubcommand(new ReportCommand())
                .addSubcommand(new CheckCommand())
                .addSubcommand(new WindowCommand(window))
                .addSubcommand(new SchemaCommand())
                .setExpandAtFiles(false); // a file's name may begin with @
    }

    /** A command line in its parts, or nothing after it was told what is wrong with it. */
    private static Optional<ParseResult> parsed(Opener window, Console console, String... args) {
        CommandLine line = commands(window);
        ParseResult parsed;
        try {
            parsed = line.parseArgs(args.length == 0 ? new String[] {"window"} : args);
        } catch (ParameterException e) {
            console.complain(complaint(e, List.of(args)));
            return Optional.empty();
        }
        while (parsed.hasSubcommand()) {
            parsed = parsed.subcommand();
        }
        return Optional.of(parsed);
    }

    private static Status runCommand(Opener window, Console console, String... args) {
        Optional<ParseResult> found = parsed(window, console, args);
        if (found.isEmpty()) {
            return Status.WRONG;
        }
        ParseResult parsed = found.get();
        CommandSpec spec = parsed.commandSpec();
        if (parsed.isVersionHelpRequested()) {
            console.answer("evenhand " + Edition.words() + "\n");
            return Status.DONE;
        }
        if (parsed.isUsageHelpRequested() || !(spec.userObject() instanceof Asked command)) {
            Ansi colours = console.colour() ? Ansi.ON : Ansi.OFF;
            console.answer(spec.commandLine()
                    .getUsageMessage(Help.defaultColorScheme(colours))
                    .replace("app/evenhand", System.getProperty("evenhand.called", "app/evenhand")));
            return Status.DONE;
        }
        try {
            if (command instanceof EachFile each) {
                List<String> files = files(spec);
                if (files.size() > 1) {
                    each.ofSeveral();
                    return new Batch(spec.qualifiedName(), files, each.forms().form(), console)
                            .run((file, aside) -> about(file, aside, args));
                }
            }
            return command.run(console);
        } catch (Mistake e) {
            return mistaken(spec, e, console);
        }
    }

    private static Status mistaken(CommandSpec spec, Mistake e, Console console) {
        console.complain(spec.qualifiedName() + ": " + e.getMessage());
        return Status.WRONG;
    }

    /** The names of the files that a command was given. */
    private static List<String> files(CommandSpec spec) {
        return spec.positionalParameters().get(0).getValue();
    }

    /** A command line as if it named this file alone; a command of its own, for others run beside it. */
    private static Status about(String file, Console console, String... args) {
        try {
            CommandSpec spec = parsed(NO_WINDOW, console, args).orElseThrow().commandSpec();
            spec.positionalParameters().get(0).setValue(List.of(file));
            try {
                return ((Asked) spec.userObject()).run(console);
            } catch (Mistake e) {
                return mistaken(spec, e, console);
            }
        } catch (RuntimeException | Error e) {
            return defect(console, e);
        }
    }

    /** The command of a command line, where it asks for an answer that has several forms. */
    static Optional<AskedInForms> inForms(Console console, String... args) {
        return parsed(NO_WINDOW, console, args)
                .map(parsed -> parsed.commandSpec().userObject())
                .filter(AskedInForms.class::isInstance)
                .map(AskedInForms.class::cast);
    }

    /** What is wrong with a command line, in one line. A word that is not known goes first: what is missing may be it, mistyped. */
    private static String complaint(ParameterException e, List<String> typed) {
        CommandSpec spec = e.getCommandLine().getCommandSpec();
        List<String> unknown = e.getCommandLine().getUnmatchedArguments();
        String said = String.valueOf(e.getMessage());
        if (e instanceof UnmatchedArgumentException unmatched) {
            said = notKnown(unmatched);
        } else if (unknown.stream().anyMatch(word -> word.startsWith("-"))) {
            said = notKnown(new UnmatchedArgumentException(
                    e.getCommandLine(),
                    unknown.stream().filter(word -> word.startsWith("-")).toList()));
        } else if (e instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            ArgSpec what = missing.getMissing().get(0);
            if (!(what instanceof OptionSpec option)) {
                said = "which file? Write its name after the command";
            } else if (typed.stream().anyMatch(word -> isOption(word, option))) {
                said = option.longestName() + " needs a value, " + option.paramLabel();
            } else {
                said = option.longestName() + " " + option.paramLabel() + " is missing";
            }
        } else if (e instanceof OverwrittenOptionException twice
                && twice.getOverwritten() instanceof OptionSpec option) {
            said = option.longestName() + " is there twice; leave out one";
        } else if (e.getArgSpec() instanceof OptionSpec option && option.arity().max() == 0) {
            said = option.longestName() + " takes no value; leave out what is behind it";
        }
        return spec.qualifiedName() + ": " + said + " (\"" + spec.qualifiedName() + " --help\" says what there is)";
    }

    private static boolean isOption(String word, OptionSpec option) {
        return List.of(option.names()).contains(word.replaceFirst("=.*", ""));
    }

    private static String notKnown(UnmatchedArgumentException unmatched) {
        String first = unmatched.getUnmatched().get(0);
        if (!first.startsWith("-") && unmatched.getCommandLine().getParent() != null) {
            return "\"" + first + "\" is one thing too many";
        }
        String meant = unmatched.getSuggestions().stream()
                .filter(known -> Nearest.isSlip(first, known))
                .findFirst()
                .map(known -> "; did you mean \"" + known + "\"?")
                .orElse("");
        return "there is no " + (first.startsWith("-") ? "option" : "command") + " \"" + first + "\"" + meant;
    }
}
