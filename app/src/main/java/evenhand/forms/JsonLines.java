package evenhand.forms;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import evenhand.quantity.Unseen;
import java.util.ArrayList;
import java.util.List;

/** The answers about several files, each on a line of its own (newline-delimited JSON). */
public final class JsonLines {
    private static final String SCENARIO = "\"scenario\"";

    private JsonLines() {}

    /** An answer that {@link JsonForm} has written, with the file that it is of behind the scenario. */
    public static String of(String file, String answer) {
        List<String> lines = new ArrayList<>();
        for (String line : answer.lines().toList()) { // within a text no line ends
            lines.add(line.strip());
            if (lines.size() == 4 && line.strip().startsWith(SCENARIO)) {
                lines.add("\"file\" : " + text(file) + ",");
            }
        }
        return String.join(" ", lines) + "\n";
    }

    /** That there is no answer about a file, for a reason and in these words. */
    public static String none(String command, String file, String reason, List<String> words) {
        return "{ \"evenhand\" : 1, \"command\" : " + text(command) + ", \"file\" : " + text(file)
                + ", \"noAnswer\" : { \"reason\" : " + text(reason) + ", \"text\" : " + text(String.join("\n", words))
                + " } }\n";
    }

    private static String text(String text) {
        return Unseen.shown('"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"', true);
    }
}
