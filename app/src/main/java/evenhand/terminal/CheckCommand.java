package evenhand.terminal;

import evenhand.forms.Contents;
import evenhand.forms.JsonForm;
import evenhand.quantity.Unseen;
import evenhand.scenario.Problem;
import evenhand.scenario.Reading;
import evenhand.scenario.RoadTests;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.scenario.Warning;
import evenhand.terminal.asked.Asked;
import evenhand.terminal.asked.InputFile;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.Status;
import evenhand.terminal.asked.UnitlessOptions;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SharedParts;
import evenhand.words.NotGiven;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code evenhand check}. */
@Command(
        name = "check",
        description = {
            "Reads scenario files and reports every problem, every value that is unlikely or probably a slip,"
                    + " and what was not given and is taken as none. Computes nothing.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand check scenarios/slipper-coupe.json",
            "  app/evenhand check scenarios/*.json --json",
            "",
            "Ends with 0 when every file can be read, warnings or not, and with 2 when there",
            "are problems."
        })
final class CheckCommand implements Asked {
    @Parameters(paramLabel = "FILE", arity = "1..*", description = "The scenario files. A - is standard input.")
    private List<String> files = new ArrayList<>();

    @Option(names = "--json", description = "Answers in JSON, for programs.")
    private boolean json;

    @Mixin
    private final UnitlessOptions usual = new UnitlessOptions();

    /** What was found in a file. */
    private record Checked(Path file, List<Problem> problems, List<Warning> warnings, List<Setup> setups) {
        /** Those in which something was taken as none. */
        private List<Setup> withAssumed() {
            return setups.stream().filter(setup -> !setup.assumed().isEmpty()).toList();
        }
    }

    /** Where in the file, and what; what is of the whole file has no place in it. */
    private record Remark(int line, int column, String where, String what) {
        static Remark of(Problem problem) {
            return new Remark(problem.line(), problem.column(), problem.where(), problem.what());
        }

        static Remark of(Warning warning) {
            return new Remark(warning.line(), warning.column(), warning.where(), warning.what());
        }

        private OptionalLong ifPlaced(int number) {
            return line > 0 ? OptionalLong.of(number) : OptionalLong.empty();
        }
    }

    private record Reply(List<Checked> files) {}

    private static final Contents<Remark> REMARK = Contents.of(Remark.class)
            .wholeIfAny("line", remark -> remark.ifPlaced(remark.line()))
            .wholeIfAny("column", remark -> remark.ifPlaced(remark.column()))
            .textIfAny("where", remark -> Optional.of(remark.where()).filter(where -> !where.isEmpty()))
            .text("what", Remark::what);

    private static final Contents<Reply> REPLY = Contents.of(Reply.class)
            .list(
                    "files",
                    Reply::files,
                    Contents.of(Checked.class)
                            .text("file", checked -> checked.file().toString())
                            .flag("ok", checked -> checked.problems().isEmpty())
                            .list(
                                    "problems",
                                    checked -> checked.problems().stream()
                                            .map(Remark::of)
                                            .toList(),
                                    REMARK)
                            .list(
                                    "warnings",
                                    checked -> checked.warnings().stream()
                                            .map(Remark::of)
                                            .toList(),
                                    REMARK)
                            .listIfAny(
                                    "setups",
                                    Checked::withAssumed,
                                    Contents.of(Setup.class)
                                            .text("name", Setup::name)
                                            .with(setup -> setup, SharedParts.ASSUMED)));

    @Override
    public Status run(Console console) throws Mistake {
        usual.units();
        InputFile.requireReadable(files);
        List<Checked> found = new ArrayList<>();
        boolean sound = true;
        for (String file : files) {
            Checked checked = check(OptionText.file(file), console);
            sound &= checked.problems().isEmpty();
            found.add(checked);
        }
        if (json) {
            console.answer(JsonForm.write("check", REPLY, new Reply(found)));
        } else {
            console.answer(inLines(found, console));
        }
        return sound ? Status.DONE : Status.WRONG;
    }

    private static Checked check(Path file, Console console) {
        Reading reading = InputFile.scenario(file, console);
        List<Problem> ofLogs = reading.scenario()
                .map(scenario -> RoadTests.of(scenario, List.of()).problems())
                .orElse(List.of());
        return new Checked(
                file,
                Stream.concat(reading.problems().stream(), ofLogs.stream()).toList(),
                reading.scenario().map(Scenario::warnings).orElse(List.of()),
                reading.scenario().map(Scenario::setups).orElse(List.of()));
    }

    /** A problem and a warning are each one line, for editors that jump to it; what was not given is a paragraph. */
    private static String inLines(List<Checked> found, Console console) {
        Page page = new Page(console);
        for (Checked checked : found) {
            checked.problems().forEach(problem -> page.line(Console.oneLine(problem.toString())));
            checked.warnings().forEach(warning -> page.line(Console.oneLine(warning.toString()) + " (warning)"));
            String file = Unseen.shown(checked.file().toString());
            NotGiven.inFull(checked.setups())
                    .ifPresent(none -> page.paragraph("", file + ": not given, taken as none: " + none));
            if (checked.problems().isEmpty()) {
                int warnings = checked.warnings().size();
                String with = warnings == 0 ? "" : ", with " + warnings + (warnings == 1 ? " warning" : " warnings");
                page.line(file + ": can be read" + with);
            }
        }
        return page.text();
    }
}
