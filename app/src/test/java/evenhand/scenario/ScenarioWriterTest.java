package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScenarioWriterTest {
    @Test
    void oneValueChangesAndNothingElse() {
        String text = "\uFEFF" + Samples.text().replace("\n", "\r\n");
        String edited = ScenarioWriter.set(text, Optional.empty(), "rear.lateralLocator.height", "10.5 in");
        assertThat(edited).isEqualTo(text.replace("\"255 mm\"", "\"10.5 in\""));
        assertThat(ScenarioWriter.set(edited, Optional.empty(), "rear.lateralLocator.height", "255 mm"))
                .isEqualTo(text);
    }

    @Test
    void aChangeOfASetupIsPutIntoItsChanges() {
        String edited = ScenarioWriter.set(Samples.text(), Optional.of("As bought"), "front.rollSteer", "0.05");
        assertThat(edited)
                .isEqualTo(Samples.text()
                        .replace(
                                "{\"name\": \"As bought\"}",
                                "{\"name\": \"As bought\", \"changes\": {\"front\": {\"rollSteer\": 0.05}}}"));
        assertThat(Samples.read(edited)
                        .setups()
                        .get(0)
                        .car()
                        .front()
                        .alignment()
                        .rollSteer())
                .isEqualTo(0.05);
    }

    @Test
    void anAddedSetupReadsBack() {
        String edited = ScenarioWriter.addSetup(
                Samples.text(),
                "Found \"it\"",
                Optional.of("Pivot 20 mm up"),
                Optional.empty(),
                Map.of("rear.spring.rate", "30 N/mm", "rear.lateralLocator.height", "290 mm"));
        Setup found = Samples.read(edited).setup("Found \"it\"").orElseThrow();
        assertThat(found.car().rear().spring().rate()).isEqualTo(30_000);
        assertThat(found.car().rear().geometry().rollCentreHeight()).isEqualTo(0.29);
        assertThat(edited).contains("    {\"name\": \"Pivot up, soft bar\"");
    }

    private static final String LISTS = """
            {"car": {"readings": [
              {"rise": "300 mm", "gain": "12 kg"},
              {"rise": "450 mm"}
            ]}, "setups": [{"name": "Low", "changes": {"front": {"list": [1]}}}]}
            """;

    @Test
    void aPathLeadsIntoAListAndBehindItsLast() {
        assertThat(ScenarioWriter.set(LISTS, Optional.empty(), "readings[0].gain", "13 kg"))
                .isEqualTo(LISTS.replace("12 kg", "13 kg"));
        assertThat(ScenarioWriter.set(LISTS, Optional.empty(), "readings[1].gain", "19 kg"))
                .isEqualTo(LISTS.replace("\"450 mm\"", "\"450 mm\", \"gain\": \"19 kg\""));
        assertThat(ScenarioWriter.setJson(LISTS, Optional.empty(), "readings[2]", "{}"))
                .isEqualTo(LISTS.replace("\"450 mm\"}", "\"450 mm\"},\n  {}"));
        assertThat(ScenarioWriter.setInFile(LISTS, "loads[0].name", "\"four\""))
                .contains("\"loads\": [{\"name\": \"four\"}]");
        assertThatThrownBy(() -> ScenarioWriter.setJson(LISTS, Optional.empty(), "readings[3]", "{}"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ScenarioWriter.setInFile(LISTS, "loads[1]", "{}"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anItemIsTakenOutOfItsListWhichStaysThoughNothingIsLeft() {
        String one = ScenarioWriter.remove(LISTS, "readings[0]");
        assertThat(one).isEqualTo(LISTS.replace("{\"rise\": \"300 mm\", \"gain\": \"12 kg\"},\n  ", ""));
        assertThat(ScenarioWriter.remove(one, "readings[0]")).contains("\"readings\": []");
        assertThat(ScenarioWriter.remove(one, "readings[1]")).isEqualTo(one);
        assertThat(ScenarioWriter.isChanged(LISTS, "Low", "front.list")).isTrue();
        assertThat(ScenarioWriter.isChanged(LISTS, "Low", "front.other")).isFalse();
        assertThat(SetupsWriter.takeBack(LISTS, "Low", "front.list[0]")).contains("{\"list\": []}");
    }

    @Test
    void whatWasFormattedReadsBackTheSame() {
        String formatted = ScenarioWriter.format(Samples.text());
        assertThat(Samples.read(formatted).setups().get(2).car())
                .isEqualTo(Samples.everyKey().setups().get(2).car());
        assertThat(ScenarioWriter.format(formatted)).isEqualTo(formatted);
    }

    @Test
    void savingKeepsThePreviousVersionAndLeavesNothingElse(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("car.json");
        ScenarioFile.save(file, "one");
        ScenarioFile.save(file, "two");
        assertThat(file).hasContent("two");
        assertThat(folder.resolve("car.previous.json")).hasContent("one");
        try (var all = Files.list(folder)) {
            assertThat(all).hasSize(2);
        }
    }
}
