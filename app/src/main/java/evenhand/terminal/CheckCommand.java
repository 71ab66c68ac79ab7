package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.scenario.Problem;
import evenhand.scenario.Reading;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.Warning;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code evenhand check}. */
@Command(
        name = "check",
        description = {"Reads scenario files and reports every problem and every unlikely value. Computes nothing.", ""
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
    @Parameters(paramLabel = "FILE", arity = "1..*", description = "The scenario files.")
    private List<String> files = new ArrayList<>();

    @Option(names = "--json", description = "Answers in JSON, for programs.")
    private boolean json;

    @Mixin
    private final UnitlessOptions usual = new UnitlessOptions();

    /** What was found in a file. */
    private record Checked(Path file, List<Problem> problems, List<Warning> warnings) {}

    @Override
    public Status run(Console console) throws Mistake {
        usual.units();
        List<Checked> found = new ArrayList<>();
        boolean sound = true;
        for (String file : files) {
            Checked checked = check(OptionText.file(file));
            sound &= checked.problems().isEmpty();
            found.add(checked);
        }
        if (json) {
            console.answer(inJson(found));
        } else {
            console.answer(inLines(found));
        }
        return sound ? Status.DONE : Status.WRONG;
    }

    private static Checked check(Path file) {
        Reading reading = ScenarioReader.read(file);
        return new Checked(
                file,
                reading.problems(),
                reading.scenario().map(Scenario::warnings).orElse(List.of()));
    }

    private static String inLines(List<Checked> found) {
        StringBuilder text = new StringBuilder();
        for (Checked checked : found) {
            for (Problem problem : checked.problems()) {
                text.append(Console.oneLine(problem.toString())).append('\n');
            }
            for (Warning warning : checked.warnings()) {
                text.append(Console.oneLine(warning.toString())).append(" (warning)\n");
            }
            if (checked.problems().isEmpty()) {
                int warnings = checked.warnings().size();
                text.append(checked.file()).append(": can be read");
                if (warnings > 0) {
                    text.append(", with ").append(warnings).append(warnings == 1 ? " warning" : " warnings");
                }
                text.append('\n');
            }
        }
        return text.toString();
    }

    private static byte[] inJson(List<Checked> found) {
        return JsonText.of("check", json -> {
            json.writeArrayFieldStart("files");
            for (Checked checked : found) {
                json.writeStartObject();
                json.writeStringField("file", checked.file().toString());
                json.writeBooleanField("ok", checked.problems().isEmpty());
                json.writeArrayFieldStart("problems");
                for (Problem problem : checked.problems()) {
                    place(json, problem.line(), problem.column(), problem.where(), problem.what());
                }
                json.writeEndArray();
                json.writeArrayFieldStart("warnings");
                for (Warning warning : checked.warnings()) {
                    place(json, warning.line(), warning.column(), warning.where(), warning.what());
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    /** A problem or warning; one of the whole file has no place in it. */
    private static void place(JsonGenerator json, int line, int column, String where, String what) throws IOException {
        json.writeStartObject();
        if (line > 0) {
            json.writeNumberField("line", line);
            json.writeNumberField("column", column);
        }
        if (!where.isEmpty()) {
            json.writeStringField("where", where);
        }
        json.writeStringField("what", what);
        json.writeEndObject();
    }
}
