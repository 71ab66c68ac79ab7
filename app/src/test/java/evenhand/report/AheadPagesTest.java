package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.report.Block.Text;
import evenhand.report.Block.Tone;
import evenhand.words.Units;
import evenhand.words.balance.AlongWords;
import evenhand.words.brakes.BrakeWords;
import evenhand.words.drive.DriveWords;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AheadPagesTest {
    private static List<Section> straightAhead(Paper paper) {
        return paper.sections().stream()
                .filter(section -> section.title().startsWith("Braking"))
                .toList();
    }

    private static List<String> charts(Section section) {
        return section.blocks().stream()
                .flatMap(block -> block instanceof Block.Figures figures ? figures.figures().stream() : Stream.empty())
                .map(Block.Figure::title)
                .toList();
    }

    private static List<String> loud(Section section) {
        return section.blocks().stream()
                .flatMap(block -> block instanceof Text text && text.tone() == Tone.WARNING
                        ? Stream.of(text.text())
                        : Stream.empty())
                .toList();
    }

    @Test
    void aCarWithBrakesAndEngineHasAPageWithChartsYardstickAndCautions() {
        Paper paper = Papers.of(Reports.demo("harbour-saloon", Units.METRIC), Reader.ENGINEER);
        Section page = straightAhead(paper).get(0);
        assertThat(page.title()).isEqualTo("Braking and driving");
        assertThat(page.opensPage()).isTrue();
        assertThat(charts(page))
                .containsExactly(
                        "How the brakes share their force",
                        "What each end uses of the road",
                        "What the wheels carry off the line",
                        "What each gear gives");
        List<String> loud = loud(page);
        assertThat(loud.get(0)).startsWith("Now: The rear locks first: unsafe.");
        assertThat(loud.get(1)).contains(BrakeWords.CAUTIONS);
        assertThat(loud.get(2)).contains(DriveWords.CAUTIONS);
        assertThat(loud.get(3)).isEqualTo(AlongWords.CAUTION);
        assertThat(Reports.sentences(paper, "Braking"))
                .anyMatch(sentence -> sentence.startsWith("At 0.5 g it tightens its line: it needs 0.9"));
        assertThat(Reports.sentences(paper, "Braking"))
                .anyMatch(sentence -> sentence.startsWith("Before: The rear locks first"))
                .filteredOn(sentence -> sentence.startsWith("As a yardstick, no approval: 71/320/EEC"))
                .hasSize(1);
    }

    @Test
    void withoutEngineItIsOfBrakesAloneAndWithoutBrakesThereIsNone() {
        Section brakes = straightAhead(Papers.of(Reports.demo("orchard-estate", Units.IMPERIAL), Reader.ENGINEER))
                .get(0);
        assertThat(brakes.title()).isEqualTo("Braking");
        assertThat(charts(brakes)).hasSize(2);
        assertThat(loud(brakes)).hasSize(1);
        assertThat(straightAhead(Papers.of(Reports.demo("slipper-coupe", Units.METRIC), Reader.ENGINEER)))
                .isEmpty();
    }
}
