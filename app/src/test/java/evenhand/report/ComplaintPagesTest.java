package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page on what a driver complains of. */
class ComplaintPagesTest {
    private static Optional<Section> page(String demo, String complaint) {
        Scenario scenario = Demo.read(demo);
        int last = scenario.setups().size() - 1;
        Question question = Reports.question(scenario, List.of(scenario.setups().get(last)), Units.METRIC)
                .complaining(Optional.of(complaint).filter(words -> !words.isEmpty()));
        return Papers.of(Findings.of(question, done -> {}), Reader.OWNER).sections().stream()
                .filter(section -> section.title().startsWith("The complaint"))
                .findFirst();
    }

    private static <B extends Block> List<B> blocks(Section page, Class<B> kind) {
        return page.blocks().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private static String sentences(Section page) {
        return blocks(page, Block.Points.class).stream()
                .flatMap(points -> points.sentences().stream())
                .collect(Collectors.joining(" "));
    }

    @Test
    void whatHelpsIsToldEachWayRoundWithWhatItAlsoMoves() {
        Section page = page("quarry-special", "pushes briskly").orElseThrow();
        assertThat(page.title()).isEqualTo("The complaint: \"pushes briskly\"");
        assertThat(page.opensPage()).isTrue();
        assertThat(blocks(page, Block.Text.class)).extracting(Block.Text::text).contains("The sums show it.");
        List<Block.Table> tables = blocks(page, Block.Table.class);
        assertThat(tables.get(0).columns())
                .extracting(Block.Column::head)
                .containsExactly("judged by", "before", "now");
        assertThat(tables.get(0).rows())
                .extracting(row -> row.cells().get(0))
                .containsExactly("understeer at 0.5 g, turning left", "understeer at 0.5 g, turning right");
        assertThat(tables.get(1).columns())
                .extracting(Block.Column::head)
                .containsExactly("change", "turning left", "turning right", "with it moves", "mind");
        assertThat(tables.get(1).rows())
                .hasSizeBetween(1, 8)
                .allSatisfy(row -> assertThat(row.cells().get(1)).matches("−\\d.*deg/g"));
        assertThat(sentences(page)).contains("Change first: ");
    }

    @Test
    void aCarAlikeBothWaysHasOneColumn() {
        Section page = page("bakery-front-drive", "pushes at the limit").orElseThrow();
        assertThat(blocks(page, Block.Table.class).get(1).columns())
                .extracting(Block.Column::head)
                .containsExactly("change", "moves it by", "with it moves", "mind");
    }

    @Test
    void whatTheSumsDoNotShowIsSaidWithWhatToLookAtInstead() {
        Section page = page("bakery-front-drive", "slides at the limit").orElseThrow();
        assertThat(sentences(page))
                .contains("By the sums it does not slide near the limit")
                .contains("Look instead at");
        assertThat(blocks(page, Block.Table.class)).hasSize(1);
        assertThat(blocks(page, Block.Text.class)).extracting(Block.Text::text).doesNotContain("The sums show it.");
    }

    @Test
    void nobodyWhoDoesNotComplainGetsAPage() {
        assertThat(page("bakery-front-drive", "")).isEmpty();
    }
}
