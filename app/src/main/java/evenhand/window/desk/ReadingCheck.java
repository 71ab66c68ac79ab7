package evenhand.window.desk;

import evenhand.answers.Progress;
import evenhand.doubt.Tolerance;
import evenhand.roadtest.Findings;
import evenhand.roadtest.Study;
import evenhand.scenario.Reading;
import evenhand.scenario.RoadTests;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import evenhand.words.Units;
import evenhand.words.roadtest.RoadTestWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether readings of a test fit each other and the file, while they are written down.
 *
 * @param misfits paths of readings that do not fit the others
 * @param noted what is said of the reading that is not yet put down
 * @param whole what is said of all of them
 */
public record ReadingCheck(List<String> misfits, List<String> noted, String whole) {
    private static final String NO_ANSWER =
            "The set-up that was driven does not turn by the file, or its end does not swing.";

    public ReadingCheck {
        misfits = List.copyOf(misfits);
        noted = List.copyOf(noted);
    }

    private static ReadingCheck only(String why) {
        return new ReadingCheck(List.of(), List.of(), why);
    }

    /**
     * What is asked.
     *
     * @param noted what would be put down next, where it is whole
     */
    public record Question(Scenario scenario, Sheet sheet, Optional<Noted> noted) {}

    /** Sets the readings beside the file: those put down among each other, and what is noted with them. */
    public static ReadingCheck of(Question question, Progress progress) {
        Scenario scenario = question.scenario();
        Sheet sheet = question.sheet();
        List<String> misfits = new ArrayList<>();
        String whole = "Nothing is put down yet.";
        if (!sheet.rows().isEmpty()) {
            Optional<Study.Check> check = check(scenario, sheet, progress);
            if (check.isEmpty()) {
                return only(NO_ANSWER);
            }
            whole = RoadTestWords.soFar(check.get().agreement());
            seen(check.get(), sheet).forEach((path, seen) -> {
                if (seen.stream().anyMatch(one -> !one.fits())) {
                    misfits.add(path);
                }
            });
        }
        return new ReadingCheck(
                misfits,
                question.noted()
                        .map(noted -> beside(scenario, sheet, noted, progress))
                        .orElse(List.of()),
                whole);
    }

    /** What is said of a reading that would be put down next. */
    private static List<String> beside(Scenario scenario, Sheet sheet, Noted noted, Progress progress) {
        Reading reading = ScenarioReader.again(scenario, sheet.with(scenario.text(), noted));
        if (reading.scenario().isEmpty()) {
            return List.of(reading.problems().get(0).what() + ".");
        }
        Scenario next = reading.scenario().get();
        Sheet longer = Sheet.of(next, sheet.place());
        List<String> before = sheet.rows().stream().map(Sheet.Row::path).toList();
        RoadTestWords words = new RoadTestWords(Units.METRIC);
        return check(next, longer, progress)
                .map(check -> seen(check, longer).entrySet().stream()
                        .filter(row -> !before.contains(row.getKey()))
                        .flatMap(row -> row.getValue().stream().map(words::beside))
                        .toList())
                .orElse(List.of(NO_ANSWER));
    }

    private static Optional<Study.Check> check(Scenario scenario, Sheet sheet, Progress progress) {
        return Study.check(RoadTests.of(scenario, List.of(sheet.name()))
                .asked(scenario.setups(), Optional.empty(), 1, 1, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, progress));
    }

    /** What the study saw of each row, in the order of the file; what logs say comes behind. */
    private static Map<String, List<Findings.Seen>> seen(Study.Check check, Sheet sheet) {
        Map<String, List<Findings.Seen>> all = new LinkedHashMap<>();
        List<Findings.Seen> seen = check.tests().get(0).seen();
        int first = 0;
        for (Sheet.Row row : sheet.rows()) {
            all.put(row.path(), seen.subList(first, first + row.observations()));
            first += row.observations();
        }
        return all;
    }
}
