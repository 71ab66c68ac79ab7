package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.report.Block.Text;
import evenhand.report.Block.Tone;
import evenhand.words.Units;
import evenhand.words.loads.LoadsWords;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LoadPagesTest {
    private static final String TITLE = "What brackets and mounts carry";

    @Test
    void aCarWithMountsHasAPageThatOpensWithItsCautionsAndDrawsTheWorstCase() {
        Paper paper = Papers.of(Reports.demo("sluice-tourer", Units.METRIC), Reader.INSPECTOR);
        Section page = paper.sections().stream()
                .filter(section -> section.title().equals(TITLE))
                .findFirst()
                .orElseThrow();
        assertThat(page.opensPage()).isTrue();
        Text first = (Text) page.blocks().get(0);
        assertThat(first.tone()).isEqualTo(Tone.WARNING);
        assertThat(first.text()).contains(LoadsWords.CAUTIONS);
        assertThat(Reports.sentences(paper, TITLE))
                .anyMatch(sentence -> sentence.startsWith("Hardest worked: pivotPost, 55 % of its pin's yield"));
        List<String> pictures = page.blocks().stream()
                .flatMap(block -> block instanceof Block.Figures figures ? figures.figures().stream() : Stream.empty())
                .map(Block.Figure::title)
                .toList();
        assertThat(pictures)
                .contains(
                        "The rear links from behind, Pothole, left",
                        "What each mount uses (below 100 % clears nothing)",
                        "Greatest force in each part of the rear axle")
                .doesNotContain("Greatest force in each part of the front axle");
    }

    @Test
    void aCarWithoutMountsHasNone() {
        assertThat(Papers.of(Reports.demo("orchard-estate", Units.METRIC), Reader.INSPECTOR)
                        .sections())
                .noneMatch(section -> section.title().equals(TITLE));
    }
}
