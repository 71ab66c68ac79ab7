package evenhand.window.desk;

import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A road test of the file as the list of what was put down.
 *
 * @param place among the road tests of the file
 * @param rows in the order in which the study has their observations
 */
public record Sheet(int place, String name, List<Row> rows) {
    private static final List<String> CHANNELS = List.of("steeringWheel", "roll", "sideslip", "frequency", "nextSwing");

    /**
     * A reading.
     *
     * @param path where it stands in the file
     * @param words what was read, in a line
     * @param observations how many the study makes of it
     */
    public record Row(String path, String words, int observations) {}

    public Sheet {
        rows = List.copyOf(rows);
    }

    /** That of a test of the file. */
    public static Sheet of(Scenario scenario, int place) {
        Entries test = ((Entry.Listed) scenario.given().get("roadTests").orElseThrow())
                .items()
                .get(place);
        List<Row> rows = new ArrayList<>();
        for (Noted.Kind kind : Noted.Kind.values()) {
            if (test.get(kind.list()).orElse(null) instanceof Entry.Listed list) {
                for (int i = 0; i < list.items().size(); i++) {
                    String path = "roadTests[" + place + "]." + kind.list() + "[" + i + "]";
                    rows.add(row(kind, path, list.items().get(i)));
                }
            }
        }
        return new Sheet(place, scenario.roadTests().get(place).name(), rows);
    }

    private static Row row(Noted.Kind kind, String path, Entries given) {
        String words = given.given().entrySet().stream()
                .map(entry ->
                        Noted.label(kind, entry.getKey()) + entry.getValue().text())
                .collect(Collectors.joining(", "));
        int channels =
                (int) given.given().keySet().stream().filter(CHANNELS::contains).count();
        return new Row(path, words, kind == Noted.Kind.LIMIT ? 1 : channels);
    }

    /** The text of a scenario with a reading behind the last of its kind. */
    public String with(String text, Noted noted) {
        String list = "roadTests[" + place + "]." + noted.kind().list();
        long last =
                rows.stream().filter(row -> row.path().startsWith(list + "[")).count();
        return ScenarioWriter.setInFile(text, list + "[" + last + "]", noted.json());
    }
}
