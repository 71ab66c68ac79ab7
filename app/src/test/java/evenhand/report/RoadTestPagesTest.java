package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Trial;
import evenhand.roadtest.Findings;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import evenhand.words.Units;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The story that a demo car's two days on the circle tell, and its page. */
class RoadTestPagesTest {
    private static Findings found;

    @BeforeAll
    static void drive() throws Exception {
        Path file = Path.of("..", "scenarios", "tinkers-lane-roadster.json");
        Scenario scenario = ScenarioReader.read(file.toString(), Files.readString(file))
                .scenario()
                .orElseThrow();
        Question question = new Question(
                scenario,
                List.of(scenario.setups().get(0)),
                scenario.setups().get(0),
                Trial.usual(),
                true,
                16,
                Units.IMPERIAL,
                Optional.empty(),
                Optional.empty());
        found = RoadTestPages.ask(question, 8, scenario.setups().get(0)).orElseThrow();
    }

    /** The height of the weight was measured an inch and a half too low; one angle was called wrongly across a field. */
    @Test
    void theMismeasuredHeightIsTheFirstSuspectAndOneReadingDoesNotFit() {
        assertThat(found.agreement().agrees()).isTrue();
        assertThat(found.inputs().get(0).number().path()).isEqualTo("cgHeight");
        assertThat(found.inputs().get(0).suspect()).isTrue();
        assertThat(found.inputs().get(0).after()).isBetween(0.465, 0.485);
        assertThat(found.tests().stream().flatMap(test -> test.seen().stream()).filter(seen -> !seen.fits()))
                .singleElement()
                .satisfies(seen ->
                        assertThat(Math.toDegrees(seen.after().expected())).isBetween(68.0, 69.5));
        assertThat(found.repeats().drifts()).hasSize(2);
        assertThat(found.repeats().differences()).noneMatch(one -> one.isReal());
    }

    @Test
    void thePageTellsItInOrderWithACautionAndAChartOfEachChannel() {
        Section section = RoadTestPages.of(found, Units.IMPERIAL);
        List<String> texts = section.blocks().stream()
                .filter(Block.Text.class::isInstance)
                .map(block -> ((Block.Text) block).text())
                .toList();
        assertThat(texts.get(0)).startsWith("The file and the road agree");
        assertThat(texts.get(1)).startsWith("Read at the limit only on a closed course");
        List<String> points = section.blocks().stream()
                .filter(Block.Points.class::isInstance)
                .flatMap(block -> ((Block.Points) block).sentences().stream())
                .toList();
        assertThat(points.get(0)).startsWith("Measure again: cgHeight (the file has 17.8 in");
        assertThat(points)
                .anyMatch(point -> point.startsWith("This reading of “Saturday, softest” does not fit")
                        || point.startsWith("This reading of \"Saturday, softest\" does not fit"));
        assertThat(section.blocks().stream().filter(Block.Figures.class::isInstance))
                .hasSize(4);
        assertThat(section.blocks().stream().filter(Block.Table.class::isInstance))
                .hasSize(3);
    }
}
