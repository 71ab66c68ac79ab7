package evenhand.terminal.roughness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoughnessCommandTest {
    @TempDir
    Path folder;

    private String road(double spacing, int points) {
        StringBuilder text = new StringBuilder("distance_m,height_m\n");
        for (int i = 0; i < points; i++) {
            double x = i * spacing;
            text.append(String.format(Locale.ROOT, "%.4f,%.6f%n", x, 0.004 * Math.sin(2 * Math.PI * x / 12)));
        }
        return Run.file(folder, "lane.csv", text.toString()).toString();
    }

    @Test
    void theAnswerHasTheWholeAndTheSegments() throws JsonProcessingException {
        Run run = Run.of("roughness", road(0.25, 1001), "--json");
        assertThat(run.status()).isEqualTo(Status.DONE);
        JsonNode answer = new JsonMapper().readTree(run.out());
        assertThat(answer.get("command").asText()).isEqualTo("roughness");
        double expected = 2 / Math.PI * 1.373892839 * 2 * Math.PI * 4 / 12; // gain of a wave of 12 m, 4 mm
        assertThat(answer.get("iri_m_per_km").asDouble()).isCloseTo(expected, within(0.03 * expected));
        assertThat(answer.get("segments")).hasSize(2);
        assertThat(answer.get("segments").get(1).get("from_m").asDouble()).isEqualTo(100);
        assertThat(answer.get("segments").get(1).get("to_m").asDouble()).isEqualTo(200);
        assertThat(answer.get("segments").get(1).get("iri_m_per_km").asDouble())
                .isCloseTo(expected, within(0.03 * expected));
    }

    @Test
    void theWordsSayWhatTheIndexMeansAndWhatIsLeftOut() {
        Run run = Run.of("roughness", road(0.25, 1001));
        assertThat(run.out())
                .contains("250 m of road, a point every 250 mm.")
                .contains("100 to 200")
                .contains("The International Roughness Index is")
                .contains("bands of common")
                .contains("The last 50 m make no full segment");
        assertThat(Run.of("roughness", road(0.25, 1001), "--units", "imperial").out())
                .contains("in/mi");
        assertThat(Run.of("roughness", road(0.6, 301)).out()).contains("short waves lie between them");
    }

    @Test
    void csvHasARowForTheWholeAndOnePerSegment() {
        Run run = Run.of("roughness", road(0.25, 1001), "--csv");
        assertThat(run.lines().get(0)).isEqualTo("part,from_m,to_m,iri_m_per_km");
        assertThat(run.lines().get(1)).startsWith("whole,0.0,250.0,");
        assertThat(run.lines()).hasSize(4);
    }

    @Test
    void aRoadThatSaysNothingIsRefusedInOneLine() {
        Run run = Run.of("roughness", road(0.25, 20));
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).contains("length must be 11 m or more");
        assertThat(Run.of("roughness", road(2, 100)).err()).contains("spacing must be 1 m or less");
        assertThat(Run.of("roughness", Run.file(folder, "x.csv", "hello\n").toString())
                        .err())
                .contains("x.csv:1:1: header: is \"hello\"");
    }
}
