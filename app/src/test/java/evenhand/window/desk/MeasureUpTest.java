package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MeasureUpTest {
    private static final Map<String, String> ANSWERS = answers();

    private static Map<String, String> answers() {
        Map<String, String> answers = new HashMap<>();
        answers.put("cornerWeights.frontLeft", "290 kg");
        answers.put("cornerWeights.frontRight", "280 kg");
        answers.put("cornerWeights.rearLeft", "250 kg");
        answers.put("cornerWeights.rearRight", "245 kg");
        answers.put("mass", "1065 kg");
        answers.put("frontWeightFraction", "0.54");
        answers.put("wheelbase", "2435 mm");
        answers.put("cgHeight", "520 mm ± 30 mm");
        answers.put("roofHeight", "1360 mm ± 20 mm");
        answers.put("axleLift.liftedAxle", "rear");
        answers.put("axleLift.readings.rise", "400 mm");
        answers.put("axleLift.readings.otherAxleGain", "16 kg");
        for (String axle : List.of("front", "rear")) {
            answers.put(axle + ".layout", axle.equals("front") ? "independent" : "live axle");
            answers.put(axle + ".track", "1310 mm");
            answers.put(axle + ".unsprungMass", "80 kg ± 8 kg");
            answers.put(axle + ".rollCentre.height", "60 mm");
            answers.put(axle + ".rollCentre.perBump", "-1.2");
            answers.put(axle + ".lateralLocator.kind", "panhard");
            answers.put(axle + ".lateralLocator.height", "250 mm");
            answers.put(axle + ".spring.rate", "24 N/mm");
            answers.put(axle + ".spring.base", "1000 mm");
            answers.put(axle + ".tyre.size", "175/70R14");
            answers.put(axle + ".tyre.kind", "touring radial");
            answers.put(axle + ".tyre.pressure", "2.0 bar");
        }
        answers.put("drive.axle", "rear");
        return answers;
    }

    private static MeasureUp answered(MeasureUp start) {
        MeasureUp measured = start;
        // What hangs on a choice is asked once that is made.
        while (!measured.missing().isEmpty()) {
            FormField field = measured.missing().get(0);
            assertThat(ANSWERS).as("asked for").containsKey(field.path());
            measured = measured.with(field.path(), ANSWERS.get(field.path()));
        }
        return measured;
    }

    @Test
    void everyStepAnsweredMakesACarWhicheverWayItWasWeighed() {
        for (MeasureUp.Weighing weighing : MeasureUp.Weighing.values()) {
            for (MeasureUp.Height height : MeasureUp.Height.values()) {
                MeasureUp measured = answered(MeasureUp.NEW.weighed(weighing).lifted(height));
                assertThat(measured.missing()).isEmpty();
                assertThat(measured.read().problems()).isEmpty();
                Setup setup = measured.read().scenario().orElseThrow().setups().get(0);
                assertThat(setup.car().weights().mass()).isEqualTo(1065);
                assertThat(setup.car().cgHeight()).isBetween(0.4, 0.7);
            }
        }
    }

    @Test
    void onlyWhatCannotBeEstimatedIsAsked() {
        MeasureUp measured = answered(MeasureUp.NEW);
        for (MeasureUp.Step step : measured.steps()) {
            for (FormField field : step.fields()) {
                boolean decides =
                        field.path().equals("drive.axle") || field.path().equals(MeasureUp.TITLE);
                if (!decides) {
                    assertThat(measured.with(field.path(), "").read().scenario())
                            .as("without " + field.path())
                            .isEmpty();
                }
            }
        }
    }

    /** "front" and "cross-ply" stood there as if somebody had chosen them. */
    @Test
    void nothingIsChosenBeforeSomebodyChoosesAndWhatHangsOnAChoiceIsAskedAfterIt() {
        List<FormField> choices = MeasureUp.NEW.steps().stream()
                .flatMap(step -> step.fields().stream())
                .filter(field -> !field.choices().isEmpty())
                .toList();
        assertThat(choices)
                .extracting(FormField::path)
                .contains("axleLift.liftedAxle", "front.layout", "rear.layout", "front.tyre.kind", "drive.axle");
        assertThat(choices).allMatch(field -> field.given().isEmpty());
        List<String> before = missing(MeasureUp.NEW);
        assertThat(before).contains("rear.layout").doesNotContain("rear.rollCentre.height", "rear.spring.base");
        assertThat(missing(MeasureUp.NEW.with("rear.layout", "live axle")))
                .contains("rear.lateralLocator.kind", "rear.spring.base")
                .doesNotContain("rear.layout", "rear.lateralLocator.height");
        for (String path : before) {
            assertThat(MeasureUp.NEW.step(path)).as(path).isPresent();
        }
    }

    private static List<String> missing(MeasureUp measured) {
        return measured.missing().stream().map(FormField::path).toList();
    }

    private static String proposed(MeasureUp measured, String path) {
        return Guess.proposed(field(measured, path), measured).map(Guess::text).orElse("-");
    }

    @Test
    void whatFollowsFromSizeAndAxleIsProposedAndNeverTakenByItself() {
        MeasureUp measured = MeasureUp.NEW;
        for (String[] known : new String[][] {
            {"175R14", "tall radial"},
            {"185/65R15", "touring radial"},
            {"205/50ZR16", "performance radial"},
            {"6.00-15", "cross-ply"},
            {"round", "-"}
        }) {
            MeasureUp sized = measured.with("front.tyre.size", known[0]);
            assertThat(proposed(sized, "front.tyre.kind")).as(known[0]).isEqualTo(known[1]);
            assertThat(sized.draft().get("front.tyre.kind")).isEmpty();
        }
        MeasureUp front = measured.with("front.tyre.size", "6.00-15").with("front.tyre.pressure", "1.8 bar");
        assertThat(proposed(front, "rear.tyre.size")).isEqualTo("6.00-15");
        assertThat(proposed(front, "rear.tyre.pressure")).isEqualTo("1.8 bar");
        assertThat(proposed(measured, "drive.axle")).isEqualTo("-");
        assertThat(proposed(measured.with("rear.layout", "live axle"), "drive.axle"))
                .isEqualTo("rear");
        MeasureUp weighed = measured;
        for (String wheel : List.of("frontLeft", "frontRight", "rearLeft", "rearRight")) {
            weighed = weighed.with("cornerWeights." + wheel, wheel.startsWith("front") ? "300 kg" : "200 kg");
        }
        assertThat(proposed(weighed, "axleLift.liftedAxle")).isEqualTo("rear");
    }

    /** Somebody who has a tape, the papers and the sidewalls of the tyres gets a car, and knows what that leaves open. */
    @Test
    void whoKnowsNothingThatIsHardToMeasureGetsACarAndWhatItLeavesOpen() {
        for (Units units : List.of(Units.METRIC, Units.IMPERIAL)) {
            MeasureUp measured = MeasureUp.NEW;
            List<String> guessed = new ArrayList<>();
            while (!measured.missing().isEmpty()) {
                FormField field = measured.missing().get(0);
                if (field.path().startsWith("cornerWeights")) {
                    measured = measured.guessed(field, units);
                } else if (Guess.of(field, measured, units).isPresent()) {
                    Guess guess = Guess.of(field, measured, units).get();
                    double cost = guess.cost(field, measured, units).orElseThrow();
                    assertThat(cost).as(field.path() + " " + guess.text()).isBetween(1e-6, 0.5);
                    measured = measured.guessed(field, units);
                    guessed.add(field.path());
                } else {
                    measured = measured.with(field.path(), ANSWERS.get(field.path()));
                }
            }
            assertThat(guessed)
                    .contains(
                            "frontWeightFraction",
                            "front.unsprungMass",
                            "front.rollCentre.height",
                            "front.rollCentre.perBump",
                            "front.spring.rate",
                            "rear.lateralLocator.height",
                            "rear.spring.base",
                            "rear.spring.rate");
            assertThat(measured.read().problems()).isEmpty();
            assertThat(measured.height()).isEqualTo(MeasureUp.Height.GUESS);
            assertThat(measured.text()).contains("±");
        }
    }

    /** A guess that is twice as wide leaves about twice as much open. */
    @Test
    void aWiderGuessCostsMore() {
        MeasureUp measured = answered(MeasureUp.NEW);
        FormField rate = field(measured, "rear.spring.rate");
        double narrow = new Guess("24 N/mm ± 2 N/mm", "")
                .cost(rate, measured, Units.METRIC)
                .orElseThrow();
        double wide = new Guess("24 N/mm ± 4 N/mm", "")
                .cost(rate, measured, Units.METRIC)
                .orElseThrow();
        assertThat(wide / narrow).isBetween(1.7, 2.3);
    }

    @Test
    void whatIsWrongIsSaidAtItsFieldAndNothingTypedIsLost() {
        MeasureUp measured = answered(MeasureUp.NEW).with("front.track", "1310");
        FormField track = field(measured, "front.track");
        assertThat(measured.problem(track))
                .hasValueSatisfying(why -> assertThat(why).contains("needs a unit"));
        assertThat(track.given()).contains("1310");
        assertThat(measured.problem(field(measured, "rear.track"))).isEmpty();
    }

    /** 0.38 · 1360 mm = 517 mm; the spread of measured cars, 0.026 · 1360 = 35 mm, and 0.38 · 20 = 8 mm make 36 mm. */
    @Test
    void aRoofGivesAGuessWithItsToleranceInTheUnitThatWasTyped() {
        MeasureUp measured = answered(MeasureUp.NEW.lifted(MeasureUp.Height.ROOF));
        assertThat(measured.text()).contains("\"cgHeight\": \"517 mm ± 36 mm\"").doesNotContain("roof");
        assertThat(measured.with("roofHeight", "53.5 in").text()).contains("\"cgHeight\": \"20.3 in ± 1.4 in\"");
        assertThat(measured.with("roofHeight", "4 ft 5.5 in").text()).contains("\"20.3 in ± 1.4 in\"");
    }

    @Test
    void aRoofThatIsNoHeightIsRefusedAtItsField() {
        MeasureUp measured = answered(MeasureUp.NEW.lifted(MeasureUp.Height.ROOF));
        for (String wrong : List.of("1360", "tall", "1360 kg", "20 m", "5 mm")) {
            MeasureUp typed = measured.with("roofHeight", wrong);
            assertThat(typed.problem(field(typed, "roofHeight"))).as(wrong).isPresent();
            assertThat(field(typed, "roofHeight").given()).contains(wrong);
        }
        assertThat(measured.problem(field(measured, "roofHeight"))).isEmpty();
    }

    @Test
    void anAxleOfAnotherLayoutAsksForWhatItNeeds() {
        MeasureUp measured = MeasureUp.NEW.with("rear.layout", "independent");
        List<String> asked = measured.missing().stream().map(FormField::path).toList();
        assertThat(asked).contains("rear.rollCentre.height").doesNotContain("rear.lateralLocator.height");
    }

    private static FormField field(MeasureUp measured, String path) {
        return measured.steps().stream()
                .flatMap(step -> step.fields().stream())
                .filter(field -> field.path().equals(path))
                .findFirst()
                .orElseThrow();
    }
}
