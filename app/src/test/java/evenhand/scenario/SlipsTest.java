package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlipsTest {
    private static final String CAR = """
            {"evenhand": 1, "title": "A car", "car": {
              "mass": "1100 kg", "frontWeightFraction": 0.53, "wheelbase": "2500 mm", "cgHeight": "500 mm",
              "front": {"layout": "independent", "track": "1420 mm", "unsprungMass": "75 kg",
                "rollCentre": {"height": "50 mm", "perBump": -1.3},
                "spring": {"rate": "60 N/mm", "motionRatio": 0.6, "installedLength": "250 mm", "solidLength": "140 mm"},
                "bar": {"diameter": "20 mm", "armLength": "250 mm", "activeLength": "900 mm", "linkRatio": 0.7},
                "bumpStop": {"gap": "40 mm", "curve": [["0 mm", "0 N"], ["20 mm", "1500 N"]]},
                "damper": {"motionRatio": 0.65, "bump": [["0 m/s", "0 N"], ["0.2 m/s", "800 N"]],
                  "rebound": [["0 m/s", "0 N"], ["0.2 m/s", "1600 N"]],
                  "settings": [{"name": "hard", "bump": [["0 m/s", "0 N"], ["0.2 m/s", "900 N"]],
                    "rebound": [["0 m/s", "0 N"], ["0.2 m/s", "1800 N"]]}]},
                "tyre": {"size": "185/65R15", "kind": "touring radial", "pressure": "2.0 bar", "rimWidth": "6 in"}},
              "rear": {"layout": "live axle", "track": "1400 mm", "unsprungMass": "120 kg",
                "lateralLocator": {"kind": "watt", "height": "255 mm"},
                "spring": {"rate": "28 N/mm", "base": "1000 mm", "lean": "15 deg", "lowerMountHeight": "200 mm"},
                "damper": {"lean": "20 deg"}, "metalStop": {"gap": "80 mm"},
                "tyre": {"size": "185/65R15", "kind": "touring radial", "pressure": "2.0 bar"}}}}
            """;

    private static List<String> warnings(String text) {
        Reading reading = ScenarioReader.read("car.json", text);
        assertThat(reading.problems()).isEmpty();
        return reading.scenario().orElseThrow().warnings().stream()
                .map(warning -> warning.where() + ": " + warning.what())
                .toList();
    }

    @Test
    void aSoundCarIsWarnedOfNothing() {
        assertThat(warnings(CAR)).isEmpty();
    }

    /** Each value stands on the other side of its bound by a little; what was there is on the right side by as little. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"motionRatio\": 0.6, | 1.0 | 1.61 | car.front.spring.motionRatio | more than 1: is it upside down? 0.62",
                "\"motionRatio\": 0.65, | 1.0 | 1.25 | car.front.damper.motionRatio | is it upside down? 0.8",
                "\"linkRatio\": 0.7 | 1.0 | 1.4 | car.front.bar.linkRatio | is it upside down? 0.71",
                "\"wheelbase\": \"2500 mm\" | \"1800 mm\" | \"1499 mm\" | car.wheelbase | shorter than any road car's",
                "\"gap\": \"40 mm\" | \"5 mm\" | \"4.9 mm\" | car.front.bumpStop.gap | is 4.9 mm: it would touch as soon",
                "\"gap\": \"80 mm\" | \"5 mm\" | \"0.08 mm\" | car.rear.metalStop.gap | the unit right?",
                "\"solidLength\": \"140 mm\" | \"229 mm\" | \"238 mm\" | car.front.spring.solidLength | is only 12 mm less than",
                "\"unsprungMass\": \"120 kg\" | \"70 kg\" | \"60 kg\" | car.rear.unsprungMass | little for a live axle",
                "\"lean\": \"15 deg\" | \"35 deg\" | \"55 deg\" | car.rear.spring.lean | If from level, it is 35 deg",
                "\"lean\": \"20 deg\" | \"35 deg\" | \"36 deg\" | car.rear.damper.lean | is it measured from upright?",
                "\"0.2 m/s\", \"800 N\" | \"0.2 m/s\", \"5.9 kN\" | \"20 mm/s\", \"800 N\" | car.front.damper.bump | gives 4 kN at 0.1 m/s",
                "\"0.2 m/s\", \"1800 N\" | \"0.2 m/s\", \"5.9 kN\" | \"0.2 m/s\", \"9 kN\" | car.front.damper.settings[0].rebound | 4.5 kN"
            })
    void whatIsProbablyASlipIsSaidToBeOne(String given, String right, String wrong, String where, String what) {
        assertThat(CAR).contains(given);
        int value = given.startsWith("\"0.2") ? 0 : given.indexOf(':') + 2;
        String comma = given.endsWith(",") ? "," : "";
        assertThat(warnings(CAR.replace(given, given.substring(0, value) + right + comma)))
                .noneMatch(warning -> warning.startsWith(where) && warning.contains("?"));
        assertThat(warnings(CAR.replace(given, given.substring(0, value) + wrong + comma)))
                .filteredOn(warning -> warning.startsWith(where + ": "))
                .singleElement()
                .asString()
                .contains(what);
    }

    @Test
    void aRimBesideAMeasuredStiffnessHasNoEffect() {
        String measured =
                CAR.replace("\"rimWidth\": \"6 in\"", "\"rimWidth\": \"6 in\", \"corneringStiffness\": \"700 N/deg\"");
        assertThat(warnings(measured)).singleElement().asString().startsWith("car.front.tyre.rimWidth: has no effect");
    }

    @Test
    void aWordOfTheTradeIsOneProblemAndItsKeyIsNotMissingAsWell() {
        Reading reading = ScenarioReader.read(
                "car.json", CAR.replace("\"mass\"", "\"weight\"").replace("\"cgHeight\"", "\"cg\""));
        assertThat(reading.problems())
                .extracting(problem -> problem.where() + ": " + problem.what())
                .containsExactly(
                        "car.weight: is unknown here; the nearest known key is \"mass\"",
                        "car.cg: is unknown here; the nearest known key is \"cgHeight\"");
    }
}
