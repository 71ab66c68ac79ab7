package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;

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
        assertThat(found.car().rear().rollCentreHeight()).isEqualTo(0.29);
        assertThat(edited).contains("    {\"name\": \"Pivot up, soft bar\"");
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
