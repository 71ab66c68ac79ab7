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

/** What check says of links that stand or move as few do: where, what, and how to mend it. */
class LinkChecksTest {
    private static final String TOURER = "../scenarios/sluice-tourer.json";

    @TempDir
    Path folder;

    private String checked(String from, String to) throws IOException {
        String text = Files.readString(Path.of(TOURER));
        assertThat(text).contains(from);
        Path car = Files.writeString(folder.resolve("car.json"), text.replace(from, to));
        Run run = Run.of("check", car.toString());
        return (run.out() + run.err()).replaceAll("\\s+", " ");
    }

    @Test
    void theDemoCarHasNothingOfThat() throws IOException {
        assertThat(checked("{", "{"))
                .doesNotContain("car.rear.propShaft")
                .doesNotContain("car.rear.damper")
                .doesNotContain("off level")
                .doesNotContain("than the points are drawn")
                .doesNotContain("binds");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                // at rest the gearbox's joint stands at 1.24 deg for 2.5 deg of slope, in bump it takes 2.1 deg more
                "\"gearboxSlope\": \"2.5 deg|\"gearboxSlope\": \"4.3 deg|car.rear.propShaft: has a joint at 3.0 deg at rest",
                "\"gearboxSlope\": \"2.5 deg|\"gearboxSlope\": \"4.2 deg|car.rear.propShaft: has a joint at 5.1 deg at 70 mm of bump,"
                        + " where most have 5 deg at most; turn the pinion by the links, or pack up the gearbox",
                "\"gearboxSlope\": \"2.5 deg|\"gearboxSlope\": \"-2.2 deg|car.rear.propShaft: has a joint at 3.5 deg at rest",
                "\"tilt\": \"12 deg\"|\"tilt\": \"-12 deg\"|car.rear.damper.bottom: is turned out of its eye by 26 deg at 70 mm of"
                        + " bump, where most eyes give 12 deg at most; tilt its bracket, or turn its bolt",
                "\"up\": \"560 mm ± 2 mm\", \"bolt\": \"along\"|\"up\": \"560 mm ± 2 mm\", \"bolt\": \"along\", \"tilt\": \"16 deg\"|"
                        + "car.rear.damper.top: is turned out of its eye by 1",
                "\"left\": \"420 mm ± 2 mm\", \"up\": \"350 mm|\"left\": \"420 mm ± 2 mm\", \"up\": \"440 mm|"
                        + "car.rear.lateralLocator.upperRod: stands 12 deg off level at rest",
                "\"freeLength\": \"364 mm\"|\"freeLength\": \"350 mm\"|car.rear.spring.freeLength: by it, the rate and the car's weight"
            })
    void whatIsBeyondUsualIsSaidWithItsPlaceAndItsRemedy(String from, String to, String said) throws IOException {
        assertThat(checked(from, to)).contains(said);
    }

    /** A short shaft from a gearbox that stands high: the axle comes nearer as it rises, and goes away as it falls. */
    @Test
    void aShaftThatSlidesFarIsSaidWithTheWay() throws IOException {
        assertThat(checked(
                        "\"ahead\": \"1620 mm ± 3 mm\", \"up\": \"345 mm",
                        "\"ahead\": \"960 mm ± 3 mm\", \"up\": \"645 mm"))
                .contains("car.rear.propShaft: is pushed together by 27 mm at 70 mm of bump, where most joints slide"
                        + " 20 mm at most; measure what it has left, or limit the travel")
                .contains("car.rear.propShaft: is drawn apart by 32 mm at 100 mm of droop"); // let down by 25 mm
    }

    @Test
    void aThirdPairOfLinksBinds() throws IOException {
        assertThat(
                        checked(
                                "\"torqueArm\": {",
                                "\"upperLink\": {\"body\": {\"ahead\": \"300 mm\", \"out\": \"450 mm\", \"up\": \"420 mm\"},"
                                        + " \"axle\": {\"ahead\": \"0 mm\", \"out\": \"150 mm\", \"up\": \"400 mm\"}}, \"torqueArm\": {"))
                .contains("car.rear.links: binds in roll: more links than the axle needs add ")
                .contains("N*m/deg to its roll stiffness; make parallel ones equal, or take one out");
    }
}
