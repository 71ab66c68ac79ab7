package evenhand.terminal;

import evenhand.answers.Trial;
import evenhand.report.CannotReport;
import evenhand.report.Delivery;
import evenhand.report.PaperSize;
import evenhand.report.Question;
import evenhand.report.ReportFile;
import evenhand.report.ShopPicture;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
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
            "Examples:",
            "  evenhand report coupe.json -o coupe.pdf",
            "  evenhand report coupe.json -o coupe.html --setup Lowered --date 2026-05-04",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer (the report says so",
            "and has the rest), and with 2 when the command line or a file is wrong."
        })
final class ReportCommand implements Asked {
    @Parameters(paramLabel = "FILE", description = "The scenario file.")
    @SuppressWarnings("NullAway.Init")
    private String file;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "OUT",
            description = "The file to write; its name ends in .pdf or .html, or in .csv for the sheet.")
    private Optional<String> output = Optional.empty();

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

    @Override
    public Status run(Console console) throws Mistake {
        if (output.isEmpty()) {
            throw new Mistake("-o: where to? Write for example -o report.pdf");
        }
        PaperSize size = size();
        Optional<LocalDate> day = date();
        var units = usual.units();
        Path scenarioFile = OptionText.file(file);
        Path out = OptionText.file(output.get());
        try {
            ReportFile target = ReportFile.of(out, force);
            Optional<Scenario> read = SoundScenario.read(scenarioFile, console);
            if (read.isEmpty()) {
                return Status.WRONG;
            }
            Scenario scenario = read.get();
            Setup before = base.isPresent()
                    ? SoundScenario.choose(scenario, List.of(base.get())).get(0)
                    : scenario.setups().get(0);
            Optional<ShopPicture> picture;
            try {
                picture = ShopPicture.of(scenario, scenarioFile);
            } catch (CannotReport e) {
                console.complain(String.valueOf(e.getMessage()));
                return Status.WRONG;
            }
            Question question = new Question(
                    scenario,
                    SoundScenario.choose(scenario, setups),
                    before,
                    trial().with(load.of(scenario)),
                    Question.USUAL_SAMPLES,
                    units,
                    picture,
                    day);
            return write(question, target, size, console);
        } catch (CannotReport e) {
            throw new Mistake(String.valueOf(e.getMessage()));
        }
    }

    private static Status write(Question question, ReportFile target, PaperSize size, Console console)
            throws CannotReport {
        Delivery delivery;
        try (ProgressLine progress = new ProgressLine(console, "asking " + question.samples() + " cars")) {
            delivery = Delivery.write(question, target, size, progress);
        }
        delivery.remarks().forEach(remark -> console.complain("evenhand report: " + remark));
        return delivery.complete() ? Status.DONE : Status.NO_ANSWER;
    }

    private static Trial trial() throws Mistake {
        return new Trial(OptionText.paces(List.of("0.2 g", "0.5 g")), OptionText.radius("40 m"), Direction.LEFT);
    }

    private PaperSize size() throws Mistake {
        return switch (paper.strip().toLowerCase(Locale.ROOT)) {
            case "a4" -> PaperSize.A4;
            case "letter" -> PaperSize.LETTER;
            default -> throw new Mistake("--paper \"" + paper + "\": write a4 or letter");
        };
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
