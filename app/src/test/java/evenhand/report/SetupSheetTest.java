package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.words.Units;
import org.junit.jupiter.api.Test;

/** Lines of the set-up sheet that a fabricator works by. */
class SetupSheetTest {
    @Test
    void aPerchHasOneLineBesideTheLettingDown() {
        Scenario scenario = Demo.read("harbour-saloon");
        SetupSheet sheet = SetupSheet.of(
                scenario.setup("Pivot middle, rear bar added").orElseThrow(),
                scenario.setup("As bought"),
                Units.METRIC);
        assertThat(sheet.items())
                .filteredOn(item -> item.what().startsWith("perch"))
                .hasSize(2)
                .allSatisfy(item -> {
                    assertThat(item.what()).isEqualTo("perch, besides letting down");
                    assertThat(item.value()).isEqualTo("as it is");
                });
        assertThat(sheet.items())
                .filteredOn(item -> item.what().equals("body let down by its perches"))
                .extracting(SetupSheet.Item::value)
                .containsOnly("30 mm");
    }
}
