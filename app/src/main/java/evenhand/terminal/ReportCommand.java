package evenhand.terminal;

import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Unseen;
import evenhand.report.CannotReport;
import evenhand.report.Delivery;
import evenhand.report.PaperSize;
import evenhand.report.Question;
import evenhand.report.Reader;
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
import evenhand.terminal.asked.TestedOption;
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
            "Papers of a job, each for its reader, as PDF or HTML. For the owner three pages: what was asked and what he got, what"
                    + " was changed and what it costs, what to feel for on the first drive, pictures, how sure it is, what the"
                    + " words mean. For the engineer how the car behaves, the set-ups side by side, braking and driving, the"
                    + " sums worked through. For the inspector what was changed, what mounts carry, sources and cautions. For the"
                    + " workshop the set-up sheet on two pages, with tolerances, torques and boxes for the pen. For the handover"
                    + " what was asked and what he got, the cautions, the sheet and the book. The set-up sheet alone as CSV.",
            "",
            "What was asked stands in the file beside \"story\": \"asked\": [{\"text\": \"It pushes wide.\","
                    + " \"judge\": \"understeer at 0.5 g\"}]; a judge is a figure or an aim, \"turning left\", a road, an event of it"
                    + " or a load case.",
            "",
            "The set-up that is handed over is the last one named, or the last of the file. It is compared with the one"
                    + " before, --base, or the first of the file; all that are named stand side by side.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand report scenarios/slipper-coupe.json -o coupe.pdf",
            "  app/evenhand report scenarios/sluice-tourer.json -o tourer.pdf \\",
            "      --for owner,engineer",
            "  app/evenhand report scenarios/quarry-special.json -o sheet.pdf \\",
            "      --for workshop --setup \"Scales set for the shaft\"",
            "  app/evenhand report scenarios/quarry-special.json -o book.pdf \\",
            "      --for handover --date 2026-12-01",
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
                    "The file to write; its name ends in .pdf or .html, or in .csv for the sheet. Or a folder, as it"
                            + " must be for several files: each paper is named after its file, and after its reader"
                            + " where he is not the owner.")
    private Optional<String> output = Optional.empty();

    @Option(
            names = "--for",
            paramLabel = "READER",
            description =
                    "Whom it is for: owner, engineer, inspector, workshop or handover; several with commas between them, bound into one"
                            + " file, or into a folder each in its own. Otherwise owner.")
    private Optional<String> reader = Optional.empty();

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

    @Option(
            names = "--force",
            description =
                    "Writes over a file that is there already; with --tested also where the file and the road do not"
                            + " agree.")
    private boolean force;

    @Mixin
    private final TestedOption tested = new TestedOption();

    @Mixin
    private final LoadOption load = new LoadOption();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    /** All that does not differ from file to file. */
    private record Order(List<Reader> readers, PaperSize size, Optional<LocalDate> date, Units units) {
        Order of(Reader one) {
            return new Order(List.of(one), size, date, units);
        }
    }

    @Override
    public Status run(Console console) throws Mistake {
        if (output.isEmpty()) {
            throw new Mistake("-o: where to? Write for example -o report.pdf");
        }
        InputFile.requireReadable(files);
        Order order = new Order(readers(), OptionText.paper(paper), date(), usual.units());
        Path out = OptionText.file(output.get());
        if (files.size() == 1 && as.isEmpty() && (order.readers().size() == 1 || !Files.isDirectory(out))) {
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
            for (Reader one : order.readers()) {
                Status status;
                try {
                    status = write(file, out.resolve(stem(file, one) + ending), order.of(one), which, console);
                } catch (Mistake mistake) {
                    console.complain("evenhand report: " + mistake.getMessage());
                    status = Status.WRONG;
                }
                worst = worst.compareTo(status) < 0 ? status : worst;
            }
        }
        return worst;
    }

    /** Whom it is for, each once, in the order given. */
    private List<Reader> readers() throws Mistake {
        List<Reader> readers = new ArrayList<>();
        for (String word : reader.orElse(Reader.OWNER.word()).split(",", -1)) {
            String said = word.strip().toLowerCase(Locale.ROOT);
            Reader one = Reader.of(said)
                    .orElseThrow(() -> new Mistake("--for \"" + word.strip() + "\": write " + Reader.known()
                            + ", or several with commas between them"));
            if (!readers.contains(one)) {
                readers.add(one);
            }
        }
        return readers;
    }

    /** What a report's name in a folder ends in. */
    private String ending() throws Mistake {
        String kind = as.orElse("pdf").strip().toLowerCase(Locale.ROOT);
        if (!List.of("pdf", "html", "csv").contains(kind)) {
            throw new Mistake("--as \"" + as.orElse("") + "\": write pdf, html or csv");
        }
        return "." + kind;
    }

    /** The name that a file's paper has in a folder, without ending. */
    private static String stem(Path file, Reader reader) {
        String name = InputFile.isStandard(file) ? "report" : file.getFileName().toString();
        String job = name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
        return reader == Reader.OWNER ? job : job + "-" + reader.word();
    }

    private Status write(Path file, Path out, Order order, String which, Console console) throws Mistake {
        try {
            ReportFile target = ReportFile.of(out, force);
            if (target.kind() == ReportFile.Kind.CSV && reader.isPresent()) {
                throw new Mistake(
                        out + ": .csv holds the set-up sheet alone; leave --for away, or write .pdf or .html");
            }
            Optional<Scenario> sound = SoundScenario.read(file, console);
            Optional<Scenario> read = sound.isPresent()
                    ? tested.of(sound.get(), Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, force, console)
                    : sound;
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
            return write(question, order, target, which, console);
        } catch (CannotReport e) {
            throw new Mistake(String.valueOf(e.getMessage()));
        }
    }

    private static Status write(Question question, Order order, ReportFile target, String which, Console console)
            throws CannotReport {
        Delivery delivery;
        try (ProgressLine progress = new ProgressLine(console, which + "asking " + question.samples() + " cars")) {
            delivery = Delivery.write(question, order.readers(), target, order.size(), progress);
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
