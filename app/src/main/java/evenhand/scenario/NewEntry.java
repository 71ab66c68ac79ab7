package evenhand.scenario;

import evenhand.quantity.Quantity;
import evenhand.turn.Wheel;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * An entry that is to be written into a book, in the words that it is to stand there.
 *
 * @param date as 2026-11-25
 * @param distance with its unit
 * @param rideHeights as they were measured
 * @param papers by name the last day
 */
public record NewEntry(
        String date,
        Optional<String> distance,
        String text,
        Optional<String> setup,
        Map<Wheel, Quantity> rideHeights,
        List<String> torqued,
        Map<String, String> papers,
        OptionalInt corrects) {
    /** Why it cannot be written, in a line. */
    public static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    /** As it stands in the file. */
    String json() {
        Map<String, String> members = new LinkedHashMap<>();
        members.put("date", ScenarioWriter.quoted(date));
        distance.ifPresent(way -> members.put("distance", ScenarioWriter.quoted(way)));
        members.put("text", ScenarioWriter.quoted(text));
        setup.ifPresent(name -> members.put("setup", ScenarioWriter.quoted(name)));
        if (!rideHeights.isEmpty()) {
            List<String> heights = new ArrayList<>();
            for (Wheel wheel : Wheel.values()) {
                Quantity height = rideHeights.get(wheel);
                if (height != null) {
                    heights.add(ScenarioWriter.quoted(wheel.key()) + ": "
                            + ScenarioWriter.quoted(height.text().strip()));
                }
            }
            members.put("measured", "{\"rideHeights\": {" + String.join(", ", heights) + "}}");
        }
        if (!torqued.isEmpty()) {
            members.put(
                    "torqued",
                    torqued.stream().map(ScenarioWriter::quoted).collect(Collectors.joining(", ", "[", "]")));
        }
        if (!papers.isEmpty()) {
            members.put(
                    "papers",
                    papers.entrySet().stream()
                            .map(paper -> "{\"what\": " + ScenarioWriter.quoted(paper.getKey()) + ", \"until\": "
                                    + ScenarioWriter.quoted(paper.getValue()) + "}")
                            .collect(Collectors.joining(", ", "[", "]")));
        }
        corrects.ifPresent(number -> members.put("corrects", Integer.toString(number)));
        return members.entrySet().stream()
                .map(member -> ScenarioWriter.quoted(member.getKey()) + ": " + member.getValue())
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /**
     * A scenario's text with it.
     *
     * @throws Refused where the file would be broken by it, or is
     */
    public String in(String file, String text) {
        List<Problem> before = ScenarioReader.read(file, text).problems();
        if (!before.isEmpty()) {
            throw new Refused("the file has to be mended first: " + before.get(0));
        }
        String added = ScenarioWriter.addToBook(text, json());
        List<Problem> problems = ScenarioReader.read(file, added).problems();
        if (!problems.isEmpty()) {
            String where = problems.get(0).where();
            throw new Refused(where.substring(where.lastIndexOf('.') + 1) + " "
                    + problems.get(0).what());
        }
        return added;
    }

    /** Writes it into a file as it stands by now, the version before kept beside it. */
    public void writeInto(Path file) throws IOException {
        ScenarioFile.change(file, now -> in(file.toString(), now));
    }
}
