package evenhand.terminal.book;

import evenhand.quantity.Quantity;
import evenhand.scenario.BookEntry;
import evenhand.scenario.NewEntry;
import evenhand.scenario.Scenario;
import evenhand.scenario.WholeFile;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.EachFile;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.FullOption;
import evenhand.terminal.asked.HeightOption;
import evenhand.terminal.asked.InputFile;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import java.io.IOException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code evenhand log}. */
@Command(
        name = "log",
        sortOptions = false,
        description = {
            "The book of a car: what was done to it, and what is due.",
            "",
            "Shows the entries under \"log\" of the file, which papers run out, and which torques are to be checked again"
                    + " after how many more kilometres. With --add writes one more entry behind the last; nothing else of"
                    + " the file changes, and the version before is kept beside it. An entry is never altered: what was wrong is"
                    + " put right by a new one with --corrects, which then stands in its place.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand log scenarios/quarry-special.json --date 2026-12-01",
            "  app/evenhand log scenarios/quarry-special.json --json",
            "  app/evenhand log FILE --add \"Rear upper links torqued again\" \\",
            "      --distance \"61240 km\" --torqued \"rear upper links\"",
            "",
            "Ends with 0 when done, and with 2 when the command line or the file is wrong, or",
            "nothing can be written."
        })
public final class LogCommand implements AskedInForms {
    @Parameters(paramLabel = "FILE", arity = "1..*", description = EachFile.SCENARIOS)
    private List<String> files = new ArrayList<>();

    @Option(names = "--add", paramLabel = "TEXT", description = "Writes an entry: what was done, in your own words.")
    private Optional<String> add = Optional.empty();

    @Option(
            names = "--date",
            paramLabel = "DATE",
            description = "The day of the entry, or the day for which is said what is due, such as 2026-11-25."
                    + " Otherwise today.")
    private Optional<String> date = Optional.empty();

    @Option(
            names = "--distance",
            paramLabel = "DISTANCE",
            description = "The way that the car had run, such as \"48210 km\" or \"29956 mi\".")
    private Optional<String> distance = Optional.empty();

    @Option(names = "--setup", paramLabel = "NAME", description = "The set-up that the car was left in.")
    private Optional<String> setup = Optional.empty();

    @Option(
            names = "--torqued",
            paramLabel = "WHAT",
            description = "What was tightened, by the name of the file's torque; may be given more than once.")
    private List<String> torqued = new ArrayList<>();

    @Option(
            names = "--paper",
            paramLabel = "WHAT=DATE",
            description = "A paper that was given or renewed, and the last day that it holds on, for example"
                    + " \"road licence=2027-03-31\"; may be given more than once.")
    private List<String> papers = new ArrayList<>();

    @Mixin
    private final HeightOption heights = new HeightOption();

    @Option(
            names = "--corrects",
            paramLabel = "NUMBER",
            description = "The number of the entry that this one puts right and stands in place of.")
    private Optional<String> corrects = Optional.empty();

    @Mixin
    private final FullOption full = new FullOption();

    @Mixin
    private final FormOptions forms = new FormOptions();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    @Override
    public FormOptions forms() {
        return forms;
    }

    @Override
    public void ofSeveral() throws Mistake {
        if (add.isPresent()) {
            throw new Mistake("--add: an entry goes into one file; name that alone");
        }
    }

    @Override
    public UsualOptions usual() {
        return usual;
    }

    @Override
    public Answer answer(Console console) throws Mistake {
        LocalDate day = date.isPresent() ? day("--date", date.get()) : LocalDate.now(ZoneId.systemDefault());
        Optional<NewEntry> entry = add.isPresent() ? Optional.of(entry(day)) : onlyShown();
        Path path = OptionText.file(files.get(0));
        if (entry.isPresent() && InputFile.isStandard(path)) {
            throw new Mistake("--add: an entry goes into a file; standard input is none");
        }
        Optional<Scenario> read = SoundScenario.read(path, console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        if (entry.isEmpty()) {
            return new LogReply(read.get(), day, full.full());
        }
        if (setup.isPresent()) {
            SoundScenario.one(read.get(), setup);
        }
        try {
            entry.get().writeInto(path);
        } catch (NewEntry.Refused e) {
            throw new Mistake("nothing was written: " + e.getMessage());
        } catch (IOException | SecurityException | ReadOnlyFileSystemException e) {
            throw new Mistake("nothing was written: cannot write " + path + " (" + WholeFile.why(e)
                    + "), which is as it was; copy it to where you may write");
        }
        Optional<Scenario> written = SoundScenario.read(path, console);
        return written.isPresent() ? new LogReply(written.get(), day, full.full()) : Answer.NONE;
    }

    /** Nothing that belongs to an entry may stand without one. */
    private Optional<NewEntry> onlyShown() throws Mistake {
        boolean given = distance.isPresent()
                || setup.isPresent()
                || !torqued.isEmpty()
                || !papers.isEmpty()
                || corrects.isPresent()
                || !heights.heights().isEmpty();
        if (given) {
            throw new Mistake("what belongs to an entry needs the entry: write --add \"what was done\" as well");
        }
        return Optional.empty();
    }

    private NewEntry entry(LocalDate day) throws Mistake {
        if (add.orElseThrow().isBlank()) {
            throw new Mistake("--add \"\": is empty; say what was done");
        }
        Map<String, LocalDate> until = new LinkedHashMap<>();
        for (String paper : papers) {
            int sign = paper.lastIndexOf('=');
            if (sign <= 0) {
                throw new Mistake("--paper \"" + paper + "\": write what it is, = and its last day, for example"
                        + " \"road licence=2027-03-31\"");
            }
            until.put(paper.substring(0, sign).strip(), day("--paper", paper.substring(sign + 1)));
        }
        return new NewEntry(
                day,
                distance.isPresent() ? Optional.of(way(distance.get())) : Optional.empty(),
                add.orElseThrow().strip(),
                setup,
                new BookEntry.Measured(heights.heights(), Map.of(), Map.of()),
                torqued,
                until,
                corrects.isPresent()
                        ? OptionalInt.of((int) OptionText.whole("--corrects", corrects.get(), 1, Integer.MAX_VALUE))
                        : OptionalInt.empty());
    }

    private static Quantity way(String text) throws Mistake {
        try {
            return NewEntry.way(text);
        } catch (NewEntry.Refused e) {
            throw new Mistake("--distance \"" + text + "\": " + e.getMessage());
        }
    }

    private static LocalDate day(String option, String text) throws Mistake {
        try {
            return NewEntry.day(text);
        } catch (NewEntry.Refused e) {
            throw new Mistake(option + " \"" + text + "\": " + e.getMessage());
        }
    }
}
