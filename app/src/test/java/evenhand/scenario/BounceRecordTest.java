package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.roadtest.Observation;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a bounced end did, written down over time in a file of its own. */
class BounceRecordTest {
    private static final String READ = "\"frequency\": \"1.32 Hz ± 0.05 Hz\", \"nextSwing\": \"0.23 ± 0.05\"";

    @TempDir
    Path folder;

    private RoadTests tests(String bounce) throws Exception {
        String text = Files.readString(Path.of("..", "scenarios", "harbour-saloon.json"));
        assertThat(text).contains(READ);
        Path file = Files.writeString(folder.resolve("car.json"), text.replace(READ, bounce));
        Reading reading = ScenarioReader.read(file.toString(), Files.readString(file));
        assertThat(reading.problems()).isEmpty();
        return RoadTests.of(reading.scenario().orElseThrow(), List.of());
    }

    private void write(String header, DoubleUnaryOperator values) throws Exception {
        StringBuilder csv = new StringBuilder("# invented\n").append(header).append('\n');
        for (int i = 0; i < 300; i++) {
            csv.append(String.format(Locale.ROOT, "%.2f,%.4f%n", i / 100.0, values.applyAsDouble(i / 100.0)));
        }
        Files.writeString(folder.resolve("front.csv"), csv);
    }

    /** Half a second held down, then 1.25 swings a second that lose three quarters of their height each. */
    @Test
    void aRecordStandsForFrequencyAndNextSwing() throws Exception {
        double omega = 2 * Math.PI * 1.25;
        double lambda = Math.log(4) * 1.25;
        write(
                "time_s,height_mm",
                t -> t < 0.5
                        ? 300
                        : 352
                                - 52
                                        * Math.exp(-lambda * (t - 0.5))
                                        * (Math.cos(omega * (t - 0.5)) + lambda / omega * Math.sin(omega * (t - 0.5))));
        RoadTests tests = tests("\"record\": \"front.csv\"");
        assertThat(tests.problems()).isEmpty();
        List<Observation.Bounce> front = tests.tests().get(0).observations().stream()
                .filter(one -> one instanceof Observation.Bounce bounce && bounce.axle() == evenhand.car.End.FRONT)
                .map(Observation.Bounce.class::cast)
                .toList();
        assertThat(front).hasSize(2);
        assertThat(front.get(0).measured().value()).isCloseTo(1.25, within(1e-3));
        assertThat(front.get(1).measured().value()).isCloseTo(0.25, within(2e-3));
    }

    @Test
    void whatDoesNotSwingIsLeftOutAndSaid() throws Exception {
        write("time_s,acceleration_g", t -> 0.001 * ((int) (t * 100) % 7));
        assertThat(tests("\"record\": \"front.csv\"").silent())
                .singleElement()
                .asString()
                .startsWith("\"front.csv\" of \"First circle\" shows no swing that dies out");
    }

    @Test
    void aRecordThatIsMissingOrOfADriveIsToldWithItsPlace() throws Exception {
        assertThat(tests("\"record\": \"front.csv\"").problems().get(0).toString())
                .contains("front.csv");
        write("time_s,roll_deg", t -> 1);
        assertThat(tests("\"record\": \"front.csv\"").silent()).hasSize(1);
    }
}
