package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Progress;
import evenhand.scenario.Demo;
import evenhand.scenario.Reading;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** One, two and eight set-ups beside one another, under plain and absurd names. */
class ManySetupsTest {
    private static final String LONG = "A name that nobody would write on a sheet, but somebody will ".repeat(9);
    private static final String LEFTWARDS = "העגלה השחורה عربة سوداء ".repeat(10);
    private static final String PICTURES = "🚗💨 Ærø —  ½ ".repeat(8) + "x".repeat(300);

    private static Findings findings(Scenario scenario, int count) {
        List<Setup> setups = scenario.setups().subList(0, count);
        return Findings.of(Reports.question(scenario, setups, Units.METRIC), Progress.NONE);
    }

    private static List<Section> beside(Paper paper) {
        return paper.sections().stream()
                .filter(section -> section.title().contains("side by side"))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 0", "2, 1, 1", "5, 1, 4", "8, 2, 7"})
    void everySetUpStandsBesideTheBaseOnce(int setups, int tables, int others) {
        Scenario scenario = Demo.read("harbour-saloon");
        Paper paper = Papers.of(findings(scenario, setups), Reader.ENGINEER);
        assertThat(beside(paper)).hasSize(tables);
        List<String> heads = beside(paper).stream()
                .flatMap(section -> section.blocks().stream())
                .flatMap(block -> block instanceof Block.Table table
                        ? table.columns().stream().skip(2)
                        : null)
                .map(Block.Column::head)
                .toList();
        assertThat(heads)
                .hasSize(others)
                .containsExactlyElementsOf(scenario.setups().subList(1, Math.max(1, setups)).stream()
                        .map(Setup::name)
                        .toList());
    }

    @Test
    void theTableBesideHasTheNumbersOfTheAnswers() {
        Findings findings = findings(Demo.read("harbour-saloon"), 2);
        Block.Table table = (Block.Table) beside(Papers.of(findings, Reader.ENGINEER)).get(0).blocks().stream()
                .filter(block -> block instanceof Block.Table)
                .findFirst()
                .orElseThrow();
        List<String> limit = table.rows().stream()
                .map(Block.Row::cells)
                .filter(cells -> cells.get(0).equals("limit"))
                .findFirst()
                .orElseThrow();
        double before = findings.base().turns().orElseThrow().limit().lateralAcceleration() / 9.80665;
        double now = findings.chosen().turns().orElseThrow().limit().lateralAcceleration() / 9.80665;
        assertThat(limit.get(1)).isEqualTo(String.format("%.3f g", before));
        assertThat(limit.get(2)).isEqualTo(String.format("%.3f (+%.3f)", now, now - before));
    }

    /** A demo car whose set-ups have these names in turn, each made its own by a number. */
    private static Scenario renamed(List<String> names) {
        Scenario demo = Demo.read("slipper-coupe");
        String text = demo.text();
        List<String> given = demo.setups().stream().map(Setup::name).toList();
        for (int i : IntStream.range(0, given.size()).toArray()) {
            text = text.replace('"' + given.get(i) + '"', '"' + names.get(i % names.size()) + i + '"');
        }
        Reading reading = ScenarioReader.read("absurd.json", text);
        assertThat(reading.problems()).isEmpty();
        return reading.scenario().orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void absurdNamesLeaveEveryPageWhole(PaperSize size) throws IOException {
        Scenario scenario = renamed(List.of(LONG, LEFTWARDS, PICTURES, "A"));
        Findings findings = findings(scenario, scenario.setups().size());
        List<Paper> papers = Papers.of(findings, Reader.all());
        byte[] pdf = PdfWriter.write(papers, size).bytes();
        PdfWriterTest.nothingOverflows(pdf, size);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isLessThan(35);
        }
        assertThat(Reports.text(pdf)).contains("somebody will").contains("no proof of strength");
        assertThat(HtmlWriter.write(papers).bytes()).isNotEmpty();
    }
}
