package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoadFileTest {
    private static final String SOUND = "# a lane\ndistance_m,height_m\n10.0,100.01\n10.5, 100.02\n\n11.0,100.00\n";

    @TempDir
    Path folder;

    private RoadReading read(String text) throws IOException {
        return RoadFile.read(Files.writeString(folder.resolve("lane.csv"), text));
    }

    private List<String> problems(String text) throws IOException {
        RoadReading reading = read(text);
        assertThat(reading.profile().isPresent()).isEqualTo(reading.problems().isEmpty());
        return reading.problems().stream()
                .map(problem ->
                        problem.toString().replace(folder.resolve("lane.csv").toString(), "lane.csv"))
                .toList();
    }

    @Test
    void aSoundRoadIsReadWithCommentsEmptyLinesAndBlanks() throws IOException {
        var profile = read(SOUND).profile().orElseThrow();
        assertThat(profile.start()).isEqualTo(10);
        assertThat(profile.spacing()).isCloseTo(0.5, within(1e-12));
        assertThat(profile.heights()).containsExactly(100.01, 100.02, 100.0);
        assertThat(read("\uFEFF" + SOUND.replace("\n", "\r\n")).profile()).contains(profile);
        assertThat(read(SOUND.strip()).profile()).contains(profile);
        assertThat(read(SOUND.replace("100.01", "−1.001e2").replace("100.", "-100."))
                        .problems())
                .isEmpty();
    }

    @Test
    void stepsThatAreRoundedAreEven() throws IOException {
        assertThat(read("distance_m,height_m\n0,0\n0.333,0\n0.667,0\n1.000,0\n")
                        .profile()
                        .orElseThrow()
                        .spacing())
                .isCloseTo(1.0 / 3, within(1e-12));
    }

    @Test
    void everyProblemHasItsPlaceAndItsRemedy() throws IOException {
        assertThat(problems(""))
                .containsExactly("lane.csv:1:1: header: is missing: the first line must be distance_m,height_m");
        assertThat(problems("x,y\n0,0\n1,0\n"))
                .containsExactly("lane.csv:1:1: header: is \"x,y\"; it must be distance_m,height_m, both in metres");
        assertThat(problems("distance_m,height_m\n"))
                .containsExactly(
                        "lane.csv:1:1: has no points; write a distance and a height in m on each line below the header");
        assertThat(problems("distance_m,height_m\n0,0\n"))
                .containsExactly("lane.csv:1:1: has one point, which is no road; write at least two");
        assertThat(problems("distance_m,height_m\n0,0\n0.25, bump\n0.5,NaN\n0.75,\n"))
                .containsExactly(
                        "lane.csv:3:7: height_m: is no number: \"bump\"; write metres with a decimal point and no unit,"
                                + " for example 0.25",
                        "lane.csv:4:5: height_m: is no number: \"NaN\"; write metres with a decimal point and no unit,"
                                + " for example 0.25",
                        "lane.csv:5:6: height_m: is empty: the road has a gap here; measure the point or close the gap"
                                + " with a straight line");
        assertThat(problems("distance_m,height_m\n0,0\n0,25;0,1\n0.5\n"))
                .containsExactly(
                        "lane.csv:3:1: has semicolons; write a distance and a height with one comma between them, and a"
                                + " point in decimals",
                        "lane.csv:4:1: has one value; write a distance and a height with one comma between them, and a"
                                + " point in decimals");
    }

    @Test
    void valuesInQuotationMarksAreReadAndThoseLeftOpenAreReported() throws IOException {
        assertThat(read(SOUND.replace("10.5, 100.02", "\"10.5\",\"100.02\"")).profile())
                .isEqualTo(read(SOUND).profile());
        assertThat(problems("distance_m,height_m\n0,0\n0.25,\"0\n0.5,0\n"))
                .singleElement()
                .asString()
                .startsWith("lane.csv:")
                .contains("has a quotation mark that is not closed");
        assertThat(problems("\"distance_m,height_m\n0,0\n0.25,0\n")).hasSize(1);
    }

    @Test
    void gapsAndUnevenStepsAreReportedOnceWhereTheyBegin() throws IOException {
        assertThat(problems("distance_m,height_m\n0,0\n0.25,0\n1.25,0\n2.25,0\n"))
                .containsExactly("lane.csv:4:1: distance_m: is 1.0 m beyond the point before, the first step is 0.25 m;"
                        + " the road has a gap here: measure the points between or fill them in");
        assertThat(problems("distance_m,height_m\n0,0\n0.25,0\n0.45,0\n0.7,0\n"))
                .containsExactly("lane.csv:4:1: distance_m: is 0.2 m beyond the point before, the first step is 0.25 m;"
                        + " steps must be even: measure at even steps, or write the distances with more digits");
        assertThat(problems("distance_m,height_m\n0,0\n0.25,0\n0.25,0\n"))
                .containsExactly("lane.csv:4:1: distance_m: does not rise; each point must lie beyond the one before");
    }

    @Test
    void aHeightThatCannotBeReadIsNoGapInTheRoad() throws IOException {
        assertThat(problems("distance_m,height_m\n0,0\n0.25,0\n0.5,bump\n0.75,0\n1,0\n"))
                .singleElement()
                .asString()
                .startsWith("lane.csv:4:5: height_m: is no number: \"bump\"");
        assertThat(problems("distance_m,height_m\n0,bump\n0.25,12\n0.5,12\n")).hasSize(1);
        assertThat(problems("distance_m,height_m\n0,0\n0.25,0\nx,0\n0.75,0\n")).hasSize(1);
        assertThat(problems("distance_m,height_m\n0,0\n0.25,0\n0.5,bump\n1,0\n"))
                .hasSize(2);
        assertThat(problems("distance_m,height_m\n0,0\n0.25,0\n0.5;0\n0.75,0\n"))
                .hasSize(1);
    }

    @Test
    void heightsThatNoRoadHasAreRefused() throws IOException {
        assertThat(problems("distance_m,height_m\n0,0\n0.25,12\n"))
                .containsExactly(
                        "lane.csv:3:6: height_m: jumps by more than 1 m from the point before; heights are in metres");
        assertThat(problems("distance_m,height_m\n0,1e200\n0.25,1e200\n")).hasSize(2);
        assertThat(problems("distance_m,height_m\n0,1e999\n0.25,0\n")).hasSize(1);
    }

    @Test
    void aRoadCutAfterAnyByteIsReadOrReported() throws IOException {
        for (int i = 0; i <= SOUND.length(); i++) {
            RoadReading reading = read(SOUND.substring(0, i));
            assertThat(reading.profile().isPresent())
                    .as("cut after %d", i)
                    .isEqualTo(reading.problems().isEmpty());
        }
    }

    @Test
    void whatIsNoRoadAtAllIsReported() throws IOException {
        assertThat(RoadFile.read(folder.resolve("nowhere.csv")).problems())
                .extracting(Problem::what)
                .containsExactly("is not there; look at the name and the folder");
        assertThat(RoadFile.read(folder).problems())
                .extracting(Problem::what)
                .containsExactly("is a folder; name a road profile file in it");
        Path bytes = Files.write(folder.resolve("bytes.csv"), new byte[] {(byte) 0xff, 0, 1, 2});
        assertThat(RoadFile.read(bytes).problems()).hasSize(1);
        Path huge = Files.write(
                folder.resolve("huge.csv"), " ".repeat((int) Source.LARGEST + 1).getBytes(StandardCharsets.UTF_8));
        assertThat(RoadFile.read(huge).problems())
                .extracting(Problem::what)
                .containsExactly("is larger than 20 MB, which no road profile is; look at the name");
        StringBuilder text = new StringBuilder("distance_m,height_m\n");
        for (int i = 0; i < 500; i++) {
            text.append(i).append(",x\n");
        }
        assertThat(read(text.toString()).problems()).hasSize(Problems.LISTED + 1);
    }
}
