package evenhand.terminal.roughness;

import evenhand.quantity.InvalidValue;
import evenhand.road.MeasuredProfile;
import evenhand.road.RoughnessIndex;
import evenhand.scenario.RoadReading;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.InputFile;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code evenhand roughness}. */
@Command(
        name = "roughness",
        sortOptions = false,
        description = {
            "How rough a measured road is: its International Roughness Index, whole and by 100 m.",
            "",
            "The file is a CSV with the header distance_m,height_m, then a distance and a height in"
                    + " metres a line, at even steps of 300 mm or less. Lines that begin with # are"
                    + " comments.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand roughness validation/data/road-profile-quarter-metre.csv",
            "  app/evenhand roughness validation/data/road-profile-quarter-metre.csv --json",
            "",
            "Ends with 0 when done and with 2 when the command line or the file is wrong."
        })
public final class RoughnessCommand implements AskedInForms {
    @Parameters(
            paramLabel = "FILE.csv",
            arity = "1..*",
            description = "The measured profile; of several each is answered by itself. A - is standard input.")
    private List<String> files = new ArrayList<>();

    @Mixin
    private final FormOptions forms = new FormOptions();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    @Override
    public FormOptions forms() {
        return forms;
    }

    @Override
    public UsualOptions usual() {
        return usual;
    }

    @Override
    public Answer answer(Console console) throws Mistake {
        String file = files.get(0);
        RoadReading reading = InputFile.road(OptionText.file(file), console);
        reading.problems().forEach(problem -> console.complain(problem.toString()));
        if (reading.profile().isEmpty()) {
            return Answer.NONE;
        }
        MeasuredProfile profile = reading.profile().get();
        RoughnessIndex found;
        try {
            found = RoughnessIndex.of(profile);
        } catch (InvalidValue e) {
            console.complain(file + ": " + e.component() + " " + e.getMessage());
            return Answer.NONE;
        }
        return new RoughnessReply(file, profile, found);
    }
}
