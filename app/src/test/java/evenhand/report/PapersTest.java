package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.turn.TurnRow;
import evenhand.words.Edition;
import evenhand.words.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PapersTest {
    static Stream<String> demos() {
        return Demo.names();
    }

    private static int pages(Paper paper, PaperSize size) throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfWriter.write(paper, size).bytes())) {
            return document.getNumberOfPages();
        }
    }

    private static List<Chart> charts(Paper paper) {
        return paper.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .flatMap(block -> block instanceof Block.Figures figures ? figures.figures().stream() : Stream.empty())
                .flatMap(figure -> figure instanceof Block.Plot plot ? Stream.of(plot.chart()) : Stream.empty())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyDemoCarHasAWholeReport(String demo) throws IOException {
        Findings findings = Reports.demo(demo, Units.METRIC);
        List<Paper> papers = Papers.of(findings, Reader.all());
        assertThat(papers.stream().flatMap(paper -> paper.sections().stream()))
                .extracting(section -> section.title().replaceAll(":.*", ""))
                .contains(
                        "What you asked, and the answer",
                        "What you got",
                        "What to feel for on the first drive",
                        "What the words mean",
                        "How it goes round a bend now",
                        "Stance, and what it costs",
                        "Ride and comfort",
                        "How sure this is",
                        "Before you drive it",
                        "Set-up sheet",
                        "The working",
                        "What was estimated",
                        "What went in, and what was estimated",
                        "What this was made from");
        assertThat(pages(papers.get(0), PaperSize.LETTER)).as("of the owner").isLessThanOrEqualTo(3);
        assertThat(papers.toString()).contains("Worked out by Evenhand ");
        assertThat(papers.toString())
                .doesNotContain("NaN")
                .doesNotContain("Infinity")
                .doesNotContain("null");
        assertThat(papers.stream().flatMap(paper -> charts(paper).stream()))
                .isNotEmpty()
                .allSatisfy(chart -> assertThat(chart.isEmpty()).isFalse());
    }

    @Test
    void theBarsOfTheReportAreTheNumbersOfTheAnswers() {
        Findings findings = Reports.demo("harbour-saloon", Units.METRIC);
        Chart chart = charts(Papers.of(findings, Reader.ENGINEER)).stream()
                .filter(one -> one.title().equals("Which end works harder"))
                .findFirst()
                .orElseThrow();
        assertThat(chart.bars()).hasSize(6);
        TurnRow limit = findings.chosen().turns().orElseThrow().limit().row();
        assertThat(chart.bars().get(5).to()).isEqualTo(100 * (limit.frontGripUsed() - limit.rearGripUsed()));
        assertThat(chart.bars().get(5).name()).isEqualTo(findings.chosen().name());
    }

    @Test
    void turnedRoundTheSentencesSayTheOpposite() {
        Findings there = Reports.demo("harbour-saloon", Units.METRIC);
        Findings again = Reports.turnedRound("harbour-saloon");
        Paper forth = Papers.of(there, Reader.ENGINEER);
        Paper back = Papers.of(again, Reader.ENGINEER);
        assertThat(Reports.sentences(forth, "What was changed"))
                .anySatisfy(sentence ->
                        assertThat(sentence).contains("leans less (3.3 deg to 2.8 deg): by the front spring rate"))
                .anySatisfy(sentence ->
                        assertThat(sentence).contains("understeers less").contains("4.38 to 3.20"));
        assertThat(Reports.sentences(back, "What was changed"))
                .anySatisfy(sentence ->
                        assertThat(sentence).contains("leans more (2.8 deg to 3.3 deg): by the front spring rate"))
                .anySatisfy(sentence ->
                        assertThat(sentence).contains("understeers more").contains("3.20 to 4.38"));
        assertThat(Reports.sentences(forth, "What each changes"))
                .anySatisfy(sentence -> assertThat(sentence).contains("adds less lean"));
        assertThat(Reports.sentences(back, "What each changes"))
                .anySatisfy(sentence -> assertThat(sentence).contains("adds more lean"));
        assertThat(Reports.sentences(forth, "Stance"))
                .anySatisfy(sentence ->
                        assertThat(sentence).contains("weight sits 30 mm lower").contains("longer, 430 mm"));
        assertThat(Reports.sentences(back, "Stance"))
                .anySatisfy(sentence -> assertThat(sentence)
                        .contains("weight sits 30 mm higher")
                        .contains("shorter, 426 mm"));
    }

    @Test
    void whatIsChangedIsNamedAndWhatMovesWithTheBodyIsSaid() {
        for (String demo : List.of("harbour-saloon", "quarry-special")) {
            Findings findings = Reports.demo(demo, Units.METRIC);
            assertThat(CarPages.changes(findings).toString()).doesNotContain("other value");
            assertThat(Papers.of(findings, Reader.WORKSHOP).toString().contains("What hangs on the body has moved"))
                    .as(demo)
                    .isEqualTo(demo.equals("harbour-saloon"));
        }
    }

    @Test
    void theInspectorCanTellFileProgramSeedAndSources() throws Exception {
        Findings findings = Reports.demo("harbour-saloon", Units.METRIC);
        String digest = HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256")
                        .digest(Files.readAllBytes(Path.of("../scenarios/harbour-saloon.json"))));
        assertThat(Papers.of(findings, Reader.INSPECTOR).toString())
                .contains(digest)
                .contains("Evenhand " + Edition.words())
                .contains("[drawn at random, nothing]")
                .contains("Gillespie 1992 ch. 6");
        assertThat(Papers.of(findings, Reader.ENGINEER).toString())
                .contains("[drawn at random, for the doubt, 48 cars, seed 1]")
                .contains("[front spring rate, 84 N/mm, ±4.2 N/mm, given with its tolerance]")
                .contains("[rear camber, 0 deg, , as is usual: not given]")
                .contains("estimated from the wheelbase");
    }

    @Test
    void aSingleSetUpIsReportedWithoutAComparison() {
        Scenario scenario = Demo.read("harbour-saloon");
        Findings findings =
                Findings.of(Reports.question(scenario, List.of(scenario.setups().get(0)), Units.METRIC), done -> {});
        assertThat(findings.compares()).isFalse();
        assertThat(Papers.of(findings, Reader.all()).stream().flatMap(paper -> paper.sections().stream()))
                .extracting(Section::title)
                .noneMatch(title -> title.contains("changed"))
                .noneMatch(title -> title.contains("side by side"));
    }

    @Test
    void theSheetMarksWhatIsChangedAndOnlyThat() {
        Scenario scenario = Demo.read("harbour-saloon");
        SetupSheet sheet = SetupSheet.of(
                scenario.setup("Pivot middle, rear bar added").orElseThrow(),
                java.util.Optional.of(scenario.setups().get(0)),
                Units.METRIC);
        assertThat(sheet.items().stream().filter(SetupSheet.Item::changed).map(SetupSheet.Item::path))
                .contains(
                        "front.lowered",
                        "rear.lowered",
                        "rear.spring.rate",
                        "rear.lateralLocator.height",
                        "rear.bar.rollStiffness")
                .doesNotContain("front.track", "front.tyre.size", "rear.tyre.pressure");
        SetupSheet.Item pivot = sheet.items().stream()
                .filter(item -> item.path().equals("rear.lateralLocator.height"))
                .findFirst()
                .orElseThrow();
        assertThat(pivot.value()).isEqualTo("216 mm"); // lowered by 30 mm with the body
        assertThat(pivot.before()).isEqualTo("246 mm");
        assertThat(sheet.freeWords()).extracting(SetupSheet.Note::head).containsExactly("rear bar", "re-torque");
    }

    @Test
    void inInchesAndPoundsNoMillimetreIsLeft() {
        Scenario scenario = Demo.read("harbour-saloon");
        SetupSheet sheet = SetupSheet.of(scenario.setups().get(1), java.util.Optional.empty(), Units.IMPERIAL);
        assertThat(sheet.items().stream()
                        .filter(item -> !item.path().endsWith("curve"))) // a curve is quoted as written
                .noneMatch(item -> item.value().matches(".* (mm|kg|N|bar|N/mm)"))
                .anyMatch(item -> item.value().endsWith(" in"))
                .anyMatch(item -> item.value().endsWith(" psi"));
    }

    @Test
    void aSheetWithoutASetUpBeforeMarksNothing() {
        Scenario scenario = Demo.read("harbour-saloon");
        SetupSheet sheet = SetupSheet.of(
                scenario.setups().get(0),
                java.util.Optional.of(scenario.setups().get(0)),
                Units.METRIC);
        assertThat(sheet.items()).noneMatch(SetupSheet.Item::changed);
    }
}
