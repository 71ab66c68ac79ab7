package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.terminal.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What check says of points that were measured wrongly. */
class PointChecksTest {
    private static final String TOURER = "../scenarios/sluice-tourer.json";
    private static final String LOWER_LINK =
            "\"axle\": {\"ahead\": \"0 mm ± 2 mm\", \"out\": \"500 mm ± 2 mm\", \"up\": \"230 mm ± 2 mm\"}";

    @TempDir
    Path folder;

    private Run check(String from, String to) throws IOException {
        String text = Files.readString(Path.of(TOURER));
        assertThat(text).contains(from);
        return Run.of(
                "check",
                Files.writeString(folder.resolve("car.json"), text.replace(from, to))
                        .toString());
    }

    @ParameterizedTest
    @CsvSource({"227.9 mm, true", "228.1 mm, false", "231.9 mm, false", "232.1 mm, true"})
    void aSideThatDiffersByMoreThanItsToleranceIsSaidWithTheMirroredValue(String up, boolean said) throws IOException {
        Run run = check(LOWER_LINK, LOWER_LINK + ", \"right\": {\"axle\": {\"up\": \"" + up + " ± 2 mm\"}}");
        String warning = "car.rear.links.lowerLink.right.axle.up: is 2.1 mm ";
        if (said) {
            assertThat(run.err() + run.out()).contains(warning).contains("mirrored it would be 230 mm");
        } else {
            assertThat(run.err() + run.out()).doesNotContain("lowerLink.right.axle.up");
        }
    }

    @Test
    void aPointOutsideTheTyreOrOnTheMiddleIsAskedAbout() throws IOException {
        assertThat(checked("1010 mm")).contains("lowerLink.axle.out: stands outside the tyre, whose middle is 700 mm");
        assertThat(checked("700 mm")).doesNotContain("lowerLink.axle.out: stands");
        assertThat(checked("4 mm")).contains("lowerLink.axle.out: stands on the middle of the car");
    }

    private String checked(String out) throws IOException {
        Run run = check(LOWER_LINK, LOWER_LINK.replace("500 mm", out));
        return run.err() + run.out();
    }
}
