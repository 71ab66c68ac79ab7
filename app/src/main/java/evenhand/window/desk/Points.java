package evenhand.window.desk;

import evenhand.catalogue.Entry;
import evenhand.scenario.ScenarioWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The points of a curve as they are typed: a line each, "20 mm: 1500 N". */
public final class Points {
    private Points() {}

    static String text(Entry.Drawn drawn) {
        StringBuilder text = new StringBuilder();
        for (Entry.Drawn.Point point : drawn.points()) {
            text.append(text.isEmpty() ? "" : "\n")
                    .append(point.at().text())
                    .append(": ")
                    .append(point.force().text());
        }
        return text.toString();
    }

    /** The points as the file writes them; nothing where a line is no pair. */
    public static Optional<String> json(String text) {
        List<String> pairs = new ArrayList<>();
        for (String line : text.strip().split("\\R", -1)) {
            String[] sides = line.split(":", -1);
            if (sides.length != 2 || sides[0].isBlank() || sides[1].isBlank()) {
                return Optional.empty();
            }
            pairs.add("[" + ScenarioWriter.quoted(sides[0].strip()) + ", " + ScenarioWriter.quoted(sides[1].strip())
                    + "]");
        }
        return Optional.of("[" + String.join(", ", pairs) + "]");
    }
}
