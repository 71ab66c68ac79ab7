package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.report.SetupSheet.Group;
import evenhand.report.SetupSheet.Item;
import evenhand.scenario.Demo;
import evenhand.scenario.Reading;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The set-up sheet to build from, and the book that goes with it. */
class WorkshopPagesTest {
    static java.util.stream.Stream<String> demos() {
        return Demo.names();
    }

    private static Findings findings(Scenario scenario, String setup, Units units) {
        return Findings.of(
                Reports.question(scenario, List.of(scenario.setup(setup).orElseThrow()), units), done -> {});
    }

    private static SetupSheet sheet(Scenario scenario, Setup setup) {
        return SetupSheet.of(
                scenario.record(), setup, Optional.of(scenario.setups().get(0)), Units.METRIC);
    }

    private static Item item(SetupSheet sheet, String path) {
        return sheet.items().stream()
                .filter(one -> one.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static List<Block.Table> tables(Section section) {
        return section.blocks().stream()
                .flatMap(block -> block instanceof Block.Table table ? java.util.stream.Stream.of(table) : null)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyDemoCarFitsOnTwoPagesOfEitherPaper(String demo) throws IOException {
        Scenario scenario = Demo.read(demo);
        Setup last = scenario.setups().get(scenario.setups().size() - 1);
        Paper metric = Papers.of(findings(scenario, last.name(), Units.METRIC), Reader.WORKSHOP);
        Paper imperial = Papers.of(findings(scenario, last.name(), Units.IMPERIAL), Reader.WORKSHOP);
        for (byte[] pdf : List.of(
                PdfWriter.write(metric, PaperSize.A4).bytes(),
                PdfWriter.write(imperial, PaperSize.LETTER).bytes())) {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).isEqualTo(2);
            }
        }
        assertThat(metric.toString()).doesNotContain("NaN").doesNotContain("null");
    }

    @Test
    void aBoxHasRoomForAPenAndStandsOnlyWhereSomethingCanBeMeasured() {
        assertThat(TableLayout.BOX / 72 * 25.4).as("mm").isGreaterThanOrEqualTo(8);
        Scenario scenario = Demo.read("sluice-tourer");
        SetupSheet sheet = sheet(scenario, scenario.setup("Pinion turned down").orElseThrow());
        assertThat(sheet.items())
                .filteredOn(Item::measurable)
                .extracting(Item::path)
                .contains("rideHeights.frontLeft", "rear.links.lowerLink.length", "rear.damper.bottom.shim")
                .doesNotContain("front.spring.rate", "front.bar.rollStiffness", "rear.rollCentre.height");
        Section section = WorkshopPages.of(findings(scenario, "Pinion turned down", Units.METRIC))
                .get(0);
        Block.Row rates = tables(section).stream()
                .flatMap(table -> table.rows().stream())
                .filter(row -> row.cells().get(0).equals("spring rate"))
                .findFirst()
                .orElseThrow();
        assertThat(rates.boxes()).isEmpty();
    }

    @Test
    void aTurnedThreadIsMarkedWithItsTurnsAndWhatItWas() {
        Scenario scenario = Demo.read("sluice-tourer");
        SetupSheet sheet = sheet(scenario, scenario.setup("Pinion turned down").orElseThrow());
        Item link = sheet.of(Group.LINK).stream()
                .filter(one -> one.what().equals("drop link"))
                .findFirst()
                .orElseThrow();
        assertThat(link.value()).isEqualTo("106.1 mm, +4.00 turns");
        assertThat(link.before()).isEqualTo("100.1 mm");
        assertThat(item(sheet, "rear.propShaft.pinionSlope").changed()).isTrue();
        assertThat(item(sheet, "rear.links.lowerLink.length").changed()).isFalse();
    }

    @Test
    void whatNobodyWeighedIsNoNumber() {
        Scenario saloon = Demo.read("harbour-saloon");
        SetupSheet sheet = sheet(saloon, saloon.setups().get(1));
        assertThat(sheet.items())
                .filteredOn(
                        one -> one.what().equals("corner weight") || one.what().equals("cross weight"))
                .hasSize(5)
                .allSatisfy(one -> assertThat(one.value()).isEqualTo("not weighed"))
                .allSatisfy(one -> assertThat(one.tolerance()).isEmpty());
        Scenario quarry = Demo.read("quarry-special");
        SetupSheet weighed =
                sheet(quarry, quarry.setup("Scales set for the shaft").orElseThrow());
        assertThat(item(weighed, "cornerWeights.rearRight").told()).isEqualTo("299.5 kg, was 306.0");
        assertThat(item(weighed, "crossWeight").value()).isEqualTo("51.3 %");
    }

    /** A doubt of a measurement is none: the saloon's toe was measured to 0.03 deg, and is built to the usual 0.05. */
    @Test
    void toleranceIsThatOfTheFileOrAUsualOneAndSaysSo() {
        Scenario quarry = Demo.read("quarry-special");
        SetupSheet sheet = sheet(quarry, quarry.setups().get(1));
        assertThat(item(sheet, "front.toe").tolerance()).isEqualTo("±0.03");
        assertThat(item(sheet, "front.toe").usual()).isFalse();
        assertThat(item(sheet, "rear.toe").tolerance()).isEqualTo("±0.05");
        assertThat(item(sheet, "rear.toe").usual()).isTrue();
        assertThat(item(sheet, "rideHeights.rearLeft").tolerance()).isEqualTo("±3");
        assertThat(item(sheet, "rideHeights.rearLeft").usual()).isFalse();
        assertThat(item(sheet, "front.spring.rate").tolerance()).isEmpty();
        Scenario sluice = Demo.read("sluice-tourer");
        Item pivot = item(sheet(sluice, sluice.setups().get(1)), "rear.lateralLocator.pivot.up");
        assertThat(pivot.told()).isEqualTo("260 mm, was 290");
        assertThat(pivot.tolerance()).isEqualTo("±1");
        Item rod = item(sheet(sluice, sluice.setups().get(1)), "rear.links.upperRod.length");
        assertThat(rod.tolerance()).isEqualTo("±0.5");
        assertThat(rod.usual()).isFalse();
    }

    @Test
    void aSetUpWithoutAnAnswerGetsNothingToSign() {
        Reading soft = ScenarioReader.read(
                "soft.json",
                Demo.read("harbour-saloon")
                        .text()
                        .replaceAll("\"rate\": \"(68|22) N/mm", "\"rate\": \"2 N/mm")
                        .replaceAll("\"bar\": \\{[^}]*}", "\"bar\": {\"rollStiffness\": \"1 N*m/deg\"}"));
        Scenario scenario = soft.scenario().orElseThrow();
        Findings findings = findings(scenario, scenario.setups().get(0).name(), Units.METRIC);
        List<Section> sections = WorkshopPages.of(findings);
        assertThat(sections).hasSize(1);
        assertThat(sections.get(0).blocks())
                .hasSize(1)
                .allSatisfy(block -> assertThat(block).isInstanceOfSatisfying(Block.Text.class, text -> {
                    assertThat(text.tone()).isEqualTo(Block.Tone.WARNING);
                    assertThat(text.text()).contains("has no answer").contains("no sheet");
                }));
        assertThat(Papers.of(findings, Reader.HANDOVER).toString()).doesNotContain("signature");
    }

    @Test
    void theHandoverHasTheOwnersPageCautionsSheetAndBook() {
        Scenario scenario = Demo.read("quarry-special");
        Paper paper = Papers.of(findings(scenario, "Scales set for the shaft", Units.METRIC), Reader.HANDOVER);
        assertThat(paper.sections())
                .extracting(Section::title)
                .endsWith("Before you drive it", "Set-up sheet", "The book")
                .hasSizeGreaterThan(3);
        Section book = paper.sections().get(paper.sections().size() - 1);
        assertThat(tables(book).get(0).rows()).hasSize(5);
        assertThat(tables(book).get(0).rows().get(2).cells().get(3)).contains("CORRECTED by entry 4");
        assertThat(Reports.sentences(paper, "The book"))
                .contains("Later: check the torque of rear upper links again, at 61530 km (370 km to go).");
        Block.Table torques = tables(paper.sections().get(paper.sections().size() - 2)).stream()
                .filter(table -> table.columns().get(0).head().equals("What"))
                .findFirst()
                .orElseThrow();
        assertThat(torques.rows().get(0).cells()).containsExactly("rear upper links", "95 N·m", "", "500 km", "");
    }
}
