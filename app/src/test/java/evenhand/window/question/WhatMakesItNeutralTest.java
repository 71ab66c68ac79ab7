package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.chart.Part;
import evenhand.forms.Table;
import evenhand.scenario.AimReading;
import evenhand.scenario.Setup;
import evenhand.window.desk.Act;
import evenhand.window.desk.Bench;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Question.Field;
import evenhand.window.desk.Reply;
import evenhand.window.desk.Work;
import evenhand.words.Numbers;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhatMakesItNeutralTest {
    private static final WhatMakesItNeutral QUESTION = new WhatMakesItNeutral();
    private static final String PIVOT = "rear lateral locator height";
    private static final Work HARBOUR = ByHand.demo("harbour-saloon");

    private static Reply answer(Map<String, String> wishes) {
        return ByHand.answer(QUESTION, HARBOUR, wishes);
    }

    private static List<Field> fields(Map<String, String> wishes) {
        return QUESTION.fields(ByHand.asking(QUESTION, HARBOUR, wishes));
    }

    private static Field field(List<Field> fields, String key) {
        return fields.stream()
                .filter(field -> field.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static final Judged UNDERSTEER =
            AimReading.read("understeer 0 deg/g at 0.5 g").judged();

    /** deg/g at 0.5 g. */
    private static double understeer(Setup setup) {
        Answers answers = HARBOUR.usualTrial().ask(setup.car());
        return Criterion.UNDERSTEER.unit().fromSi(UNDERSTEER.si(answers).orElseThrow());
    }

    /** Somewhat less than the car has now. */
    private static final double WANTED = Math.round(10 * understeer(HARBOUR.activeSetup()) - 1) / 10.0;

    /** deg/g */
    private static final double NOTICEABLE = Criterion.UNDERSTEER.unit().fromSi(Criterion.UNDERSTEER.noticeable());

    private static final String AIM = "understeer " + WANTED + " deg/g at 0.5 g";

    private static List<String> cells(Reply reply, String words) {
        return reply.figures().lines().stream()
                .filter(line -> line instanceof Table.Row row && row.words().equals(words))
                .map(line -> ((Table.Row) line).cells())
                .findFirst()
                .orElseThrow();
    }

    /** As the terminal's search from zero; taking it fits the bar. */
    @Test
    void aBarThatIsNotFittedIsOfferedFromZeroAndFittedWhereItIsTaken() {
        String bar = "rear bar roll stiffness, not fitted";
        assertThat(HARBOUR.activeSetup().car().rear().bar()).isEmpty();
        List<Field> fields = fields(Map.of("change", bar));
        assertThat(fields.get(0).choices()).contains(bar).doesNotContain("front bar roll stiffness, not fitted");
        assertThat(fields.get(0).start()).isEqualTo("rear spring rate");
        assertThat(fields.get(1).hint()).isEqualTo("0 N·m/deg");
        assertThat(fields.get(2).hint()).isEqualTo("200 N·m/deg");
        Reply reply = answer(Map.of("change", bar, "aim", AIM));
        assertThat(reply.headlines().get(0)).contains("the car has none now");
        Act take = reply.next().get(0).act().orElseThrow();
        Bench bench = new Bench(ByHand.desk(HARBOUR), asking -> {});
        bench.act(take);
        Setup fitted = bench.desk().work().activeSetup();
        assertThat(fitted.car().rear().barRollStiffness()).isPositive();
        assertThat(understeer(fitted)).isCloseTo(WANTED, within(NOTICEABLE));
        Act add = reply.next().get(1).act().orElseThrow();
        Bench other = new Bench(ByHand.desk(HARBOUR), asking -> {});
        other.act(add);
        assertThat(other.desk().work().activeSetup().car().rear().bar()).isPresent();
    }

    /** Lengths of rods and shims are among what may change; what the car has no links for is said in a sentence. */
    @Test
    void theLinksOfACarMeasuredByPointsCanBeAskedFor() {
        Work tourer = ByHand.demo("sluice-tourer");
        Map<String, String> wishes = Map.of(
                "change",
                "rear links torque arm longer",
                "from rear.links.torqueArm.longer",
                "-10 mm",
                "to rear.links.torqueArm.longer",
                "10 mm",
                "grid",
                "1 mm",
                "aim",
                "pinion slope at most 0.5 deg");
        assertThat(QUESTION.fields(ByHand.asking(QUESTION, tourer, wishes))
                        .get(0)
                        .choices())
                .contains("rear damper bottom shim", "front links tie rod longer", "rear lateral locator pivot up");
        Reply reply = ByHand.answer(QUESTION, tourer, wishes);
        assertThat(reply.headlines().get(1)).contains("of the steps that can be built take 8 mm");
        assertThat(cells(reply, "pinion slope").get(0)).isEqualTo("1.00");
        assertThat(cells(reply, "pinion slope").get(1)).isEqualTo("0.50");
        assertThat(answer(Map.of("aim", "pinion slope 0 deg")).headlines().get(0))
                .isEqualTo(
                        "\"so that\": \"pinion slope 0 deg\" cannot be asked: this car has no such figure: it needs a"
                                + " live axle on links with a \"propShaft\", by points in car.rear or car.front, as in"
                                + " scenarios/sluice-tourer.json.");
    }

    @Test
    void oneChangeIsAllThatIsAskedAtFirstAndSaysWhichRangeItSearches() {
        List<Field> fields = fields(Map.of("change", PIVOT));
        assertThat(fields)
                .extracting(Field::words)
                .containsExactly("change", "from", "to", "and", "so that", "keeping", "in steps of");
        double now = HARBOUR.activeSetup().car().rear().geometry().rollCentreHeight();
        double from = Double.parseDouble(fields.get(1).hint().replace(" mm", "")) / 1000;
        double to = Double.parseDouble(fields.get(2).hint().replace(" mm", "")) / 1000;
        assertThat((from + to) / 2).isCloseTo(now, within(0.003)); // both ends are round
        assertThat(from * 1000 % 5).isCloseTo(0, within(1e-9));
        Reply reply = answer(Map.of("change", PIVOT, "aim", "understeer 1 deg/g at 0.5 g"));
        assertThat(reply.headlines().get(0))
                .contains("between " + fields.get(1).hint() + " and "
                        + fields.get(2).hint());
    }

    @Test
    void andAddsAChangeWithItsOwnRangeAndOffersWhatIsNotChosenYet() {
        List<Field> two = fields(Map.of("change", PIVOT, "and 1", "rear spring rate"));
        assertThat(two)
                .extracting(Field::words)
                .containsExactly(
                        "change", "from", "to", "and", "from", "to", "and", "so that", "keeping", "in steps of");
        assertThat(field(two, "and 1").choices()).contains("rear spring rate").doesNotContain(PIVOT);
        assertThat(field(two, "and 2").choices()).doesNotContain(PIVOT, "rear spring rate");
        List<Field> three = fields(Map.of("change", PIVOT, "and 1", "rear spring rate", "and 2", "front spring rate"));
        assertThat(three).extracting(Field::words).containsSequence("and", "from", "to", "so that");
        // A second change that has become the first is none.
        assertThat(fields(Map.of("change", PIVOT, "and 1", PIVOT))).hasSize(7);
    }

    @Test
    void severalChangesMeetTheAimAndAreOneActToUndo() {
        Map<String, String> wishes = Map.of("change", PIVOT, "and 1", "rear spring rate", "aim", AIM);
        Reply reply = answer(wishes);
        assertThat(String.join(" ", reply.headlines())).contains(PIVOT, "rear spring rate", "as asked");
        List<Part.Bar> bars = reply.charts().get(0).bars();
        assertThat(bars).hasSize(2).allSatisfy(bar -> {
            assertThat(bar.from()).isCloseTo(50, within(3.0)); // the usual range is about as wide to either side
            assertThat(bar.to()).isBetween(0.0, 100.0);
        });
        Act act = reply.next().get(0).act().orElseThrow();
        Bench bench = new Bench(ByHand.desk(HARBOUR), asking -> {});
        assertThat(bench.act(act)).isEmpty();
        Setup changed = bench.desk().work().activeSetup();
        assertThat(understeer(changed)).isCloseTo(WANTED, within(NOTICEABLE));
        assertThat(changed.car().rear().geometry().rollCentreHeight())
                .isNotEqualTo(HARBOUR.activeSetup().car().rear().geometry().rollCentreHeight());
        assertThat(cells(reply, "understeer at 0.5 g").get(1)).isEqualTo(Numbers.fixed(WANTED, 2));
        bench.undo();
        assertThat(bench.desk().work()).isEqualTo(HARBOUR);
        assertThat(bench.undoable()).isEmpty();
    }

    @Test
    void whatWasFoundMayBeASetupOfItsOwn() {
        Reply reply = answer(Map.of("change", PIVOT, "aim", AIM));
        Bench bench = new Bench(ByHand.desk(HARBOUR), asking -> {});
        assertThat(bench.act(reply.next().get(1).act().orElseThrow())).isEmpty();
        Setup added = bench.desk().work().activeSetup();
        assertThat(added.basedOn()).isEqualTo(Optional.of(HARBOUR.active()));
        assertThat(understeer(added)).isCloseTo(WANTED, within(NOTICEABLE));
    }

    @Test
    void whatIsOfferedIsWhatAShopCanSet() {
        Reply reply = answer(Map.of("change", PIVOT, "aim", AIM));
        EditAct.SetValues act = (EditAct.SetValues) reply.next().get(0).act().orElseThrow();
        assertThat(act.texts().values()).singleElement().asString().matches("\\d+ mm( ± .*)?");
        assertThat(reply.headlines().get(1)).contains("of the steps that can be built");
    }

    @Test
    void besideAJumpPastTheAimAStepClearOfTheJumpIsTaken() {
        Work coupe = ByHand.demo("slipper-coupe");
        Reply reply = ByHand.answer(
                QUESTION,
                coupe,
                Map.of(
                        "change",
                        "rear lowered",
                        "from rear.lowered",
                        "-10 mm",
                        "aim",
                        "understeer 1.66 deg/g at 0.6 g"));
        List<String> jumps = reply.more().get(0).sentences().stream()
                .filter(sentence -> sentence.contains("jumps past the aim"))
                .toList();
        assertThat(jumps).isNotEmpty().allMatch(sentence -> sentence.contains("something touches or lifts there"));
        assertThat(reply.next().get(0).words()).startsWith("take the nearest, rear lowered");
        EditAct.SetValues act = (EditAct.SetValues) reply.next().get(0).act().orElseThrow();
        double taken = Double.parseDouble(act.texts().get("rear.lowered").replaceAll(" mm.*", ""));
        for (String jump : jumps) {
            double at = Double.parseDouble(
                    jump.replaceAll("At (\\S+) mm the understeer.*", "$1").replace('−', '-'));
            assertThat(Math.abs(taken - at))
                    .as("a tape's tolerance away from " + at)
                    .isGreaterThan(1.9);
        }
    }

    @Test
    void whatIsToBeKeptIsKeptAndCostsMoreChange() {
        Map<String, String> wishes = new HashMap<>(Map.of("change", PIVOT, "and 1", "front spring rate", "aim", AIM));
        Reply free = answer(wishes);
        double roll = Double.parseDouble(cells(free, "roll gradient at 0.5 g").get(1));
        wishes.put("keeps", "roll gradient at most " + (roll - 0.03) + " deg/g at 0.5 g");
        Reply keeping = answer(wishes);
        assertThat(keeping.more().get(0).sentences()).anyMatch(sentence -> sentence.startsWith("Kept: roll gradient"));
        assertThat(Double.parseDouble(cells(keeping, "roll gradient at 0.5 g").get(1)))
                .isLessThan(roll - 0.02);
        assertThat(cells(keeping, "understeer at 0.5 g").get(1)).isEqualTo(Numbers.fixed(WANTED, 2));
        assertThat(moved(keeping)).isGreaterThan(moved(free));
    }

    private static double moved(Reply reply) {
        return reply.charts().get(0).bars().stream()
                .mapToDouble(bar -> (bar.to() - bar.from()) * (bar.to() - bar.from()))
                .sum();
    }

    @ParameterizedTest
    @CsvSource({"rear spring rate, nothing else", "rear spring rate, " + PIVOT})
    void anAimOutOfReachIsSaidAndTheNearestIsOffered(String first, String second) {
        Reply reply = answer(Map.of("change", first, "and 1", second, "aim", "limit balance -60 %"));
        assertThat(reply.headlines().get(1)).startsWith("No").contains("-60 %".replace('-', '−'), "the nearest is");
        assertThat(reply.next().get(0).words()).startsWith("take the nearest");
    }

    @Test
    void stepsHoldForTheChangesOfTheirDimension() {
        Reply reply = answer(Map.of("change", PIVOT, "and 1", "rear spring rate", "aim", AIM, "grid", "5 mm; 1 N/mm"));
        EditAct.SetValues act = (EditAct.SetValues) reply.next().get(0).act().orElseThrow();
        assertThat(act.texts().values()).isNotEmpty().allMatch(text -> text.matches("\\d*[05] mm.*|\\d+ N/mm.*"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from rear.lateralLocator.height | 240 | \"from\" of the rear lateral locator height: \"240\" needs a unit",
                "to rear.lateralLocator.height | 3 N | \"to\" of the rear lateral locator height: \"3 N\" is a force",
                "to rear.lateralLocator.height | 100 mm | \"from\" and \"to\" of the rear lateral locator height",
                "from rear.lateralLocator.height | -2000 mm | \"from\" and \"to\": the rear lateral locator height cannot be",
                "aim | understeer | \"so that\": \"understeer\" needs a value",
                "keeps | roll | \"keeping\": \"roll\" begins with no known figure",
                "keeps | understeer near the limit at least 5 deg/g | \"keeping\": \"understeer near the limit at least 5 deg/g\" contradicts",
                "grid | 3 kg | \"in steps of\": \"3 kg\" is no step of a length",
            })
    void whatCannotBeReadIsSaidWithTheNameOfItsField(String key, String text, String said) {
        Reply reply = answer(Map.of("change", PIVOT, key, text));
        assertThat(reply.headlines()).hasSize(1);
        assertThat(reply.headlines().get(0)).contains(said).endsWith(".");
        assertThat(reply.next()).isEmpty();
    }
}
