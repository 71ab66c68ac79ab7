package evenhand.terminal;

import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.quantity.Unseen;
import evenhand.report.CannotReport;
import evenhand.report.Delivery;
import evenhand.report.PaperSize;
import evenhand.report.Question;
import evenhand.report.ReportFile;
import evenhand.report.ShopPicture;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Asked;
import evenhand.terminal.asked.InputFile;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ProgressLine;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.Status;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.words.Units;
import evenhand.words.effects.Complaint;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code evenhand report}. */
@Command(
        name = "report",
        sortOptions = false,
        description = {
            "The customer's report and the set-up sheet, as PDF or HTML; the sheet alone as CSV.",
            "",
            "The set-up that is handed over is the last one named, or the last of the file. It is compared with the one"
                    + " before, --base, or the first of the file; all that are named stand side by side.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand report scenarios/slipper-coupe.json -o coupe.pdf",
            "  app/evenhand report scenarios/harbour-saloon.json -o saloon.html \\",
            "      --setup \"Pivot high\" --date 2026-05-04",
            "  app/evenhand report scenarios/bakery-front-drive.json -o bakery.pdf \\",
            "      --complaint \"pushes at the limit\"",
            "  app/evenhand report scenarios/slipper-coupe.json \\",
            "      scenarios/harbour-saloon.json -o .",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer (the report says so",
            "and has the rest), and with 2 when the command line or a file is wrong."
        })
final class ReportCommand implements Asked {
    @Parameters(
            paramLabel = "FILE",
            arity = "1..*",
            description = "The scenario file; of several each gets its own. A - is standard input.")
    private List<String> files = new ArrayList<>();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "OUT",
            description =
                    "The file to write; its name ends in .pdf or .html, or in .csv for the sheet. For several files"
                            + " a folder: each report is named after its file.")
    private Optional<String> output = Optional.empty();

    @Option(names = "--as", paramLabel = "pdf|html|csv", description = "What goes to a folder. Otherwise pdf.")
    private Optional<String> as = Optional.empty();

    @Option(
            names = "--setup",
            paramLabel = "NAME",
            description = "This set-up; may be given more than once. Otherwise all of the file.")
    private List<String> setups = new ArrayList<>();

    @Option(
            names = "--base",
            paramLabel = "NAME",
            description = "The set-up that the others are compared with. Otherwise the first of the file.")
    private Optional<String> base = Optional.empty();

    @Option(
            names = "--complaint",
            paramLabel = "WORDS",
            description =
                    "Adds a page on what a driver complains of in the set-up that is handed over: whether the sums"
                            + " show it, and the best single changes with what else they move, both ways round. Write "
                            + Complaint.KNOWN + ".")
    private Optional<String> complaint = Optional.empty();

    @Option(
            names = "--turn",
            paramLabel = "left|right|both",
            defaultValue = "both",
            description = "Which way it turns. The figures are those of a turn to the left where both are asked.")
    private String turn = "both";

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            defaultValue = "a4",
            description = "Size of the sheets. Otherwise ${DEFAULT-VALUE}.")
    private String paper = "a4";

    @Option(
            names = "--date",
            paramLabel = "DATE",
            description = "A date to print, such as 2026-05-04. Otherwise none: the same file gives the same report.")
    private Optional<String> date = Optional.empty();

    @Option(names = "--force", description = "Writes over a file that is there already.")
    private boolean force;

    @Mixin
    private final LoadOption load = new LoadOption();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    /** All that does not differ from file to file. */
    private record Order(PaperSize size, Optional<LocalDate> date, Units units) {}

    @Override
    public Status run(Console console) throws Mistake {
        if (output.isEmpty()) {
            throw new Mistake("-o: where to? Write for example -o report.pdf");
        }
        InputFile.requireReadable(files);
        Order order = new Order(OptionText.paper(paper), date(), usual.units());
        Path out = OptionText.file(output.get());
        if (files.size() == 1 && as.isEmpty()) {
            return write(OptionText.file(files.get(0)), out, order, "", console);
        }
        if (!Files.isDirectory(out)) {
            throw new Mistake(
                    "-o " + out + ": is no folder; several files, or those --as a kind, go to a folder that is there");
        }
        String ending = ending();
        Status worst = Status.DONE;
        for (int i = 0; i < files.size(); i++) {
            Path file = OptionText.file(files.get(i));
            String which = files.size() == 1
                    ? ""
                    : (i + 1) + " of " + files.size() + ", " + Unseen.shown(String.valueOf(file.getFileName())) + ", ";
            Status status;
            try {
                status = write(file, out.resolve(stem(file) + ending), order, which, console);
            } catch (Mistake mistake) {
                console.complain("evenhand report: " + mistake.getMessage());
                status = Status.WRONG;
            }
            worst = worst.compareTo(status) < 0 ? status : worst;
        }
        return worst;
    }

    /** What a report's name in a folder ends in. */
    private String ending() throws Mistake {
        String kind = as.orElse("pdf").strip().toLowerCase(Locale.ROOT);
        if (!List.of("pdf", "html", "csv").contains(kind)) {
            throw new Mistake("--as \"" + as.orElse("") + "\": write pdf, html or csv");
        }
        return "." + kind;
    }

    /** The name that a file's report has, without ending. */
    private static String stem(Path file) {
        if (InputFile.isStandard(file)) {
            return "report";
        }
        String name = file.getFileName().toString();
        return name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
    }

    private Status write(Path file, Path out, Order order, String which, Console console) throws Mistake {
        try {
            ReportFile target = ReportFile.of(out, force);
            Optional<Scenario> read = SoundScenario.read(file, console);
            if (read.isEmpty()) {
                return Status.WRONG;
            }
            Scenario scenario = read.get();
            Setup before = SoundScenario.one(scenario, base);
            Ways ways = OptionText.ways(turn);
            Optional<ShopPicture> picture;
            try {
                picture = ShopPicture.of(scenario, file);
            } catch (CannotReport e) {
                console.complain(String.valueOf(e.getMessage()));
                return Status.WRONG;
            }
            Question question = new Question(
                            scenario,
                            SoundScenario.choose(scenario, setups),
                            before,
                            Trial.usual().turning(ways.first()).with(load.of(scenario)),
                            ways.isBoth(),
                            Question.USUAL_SAMPLES,
                            order.units(),
                            picture,
                            order.date())
                    .complaining(complaint);
            known(question);
            return write(question, target, order.size(), which, console);
        } catch (CannotReport e) {
            throw new Mistake(String.valueOf(e.getMessage()));
        }
    }

    private static Status write(Question question, ReportFile target, PaperSize size, String which, Console console)
            throws CannotReport {
        Delivery delivery;
        try (ProgressLine progress = new ProgressLine(console, which + "asking " + question.samples() + " cars")) {
            delivery = Delivery.write(question, target, size, progress);
        }
        delivery.remarks().forEach(remark -> console.complain("evenhand report: " + remark));
        return delivery.complete() ? Status.DONE : Status.NO_ANSWER;
    }

    /** Whether what is complained of is understood; before the long work. */
    private static void known(Question question) throws Mistake {
        if (question.complaint().isPresent()) {
            Setup setup = question.base();
            String words = question.complaint().get();
            if (Complaint.of(words, setup.car(), question.trial().ask(setup.car()), question.trial())
                    .isEmpty()) {
                throw new Mistake("--complaint \"" + words + "\": write " + Complaint.KNOWN);
            }
        }
    }

    private Optional<LocalDate> date() throws Mistake {
        if (date.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(date.get().strip()));
        } catch (DateTimeParseException e) {
            throw new Mistake("--date \"" + date.get() + "\": write year, month and day, for example 2026-05-04");
        }
    }
}
