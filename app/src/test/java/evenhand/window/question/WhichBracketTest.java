package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.catalogue.Catalogue;
import evenhand.chart.Chart;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Question.Field;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.words.Units;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A search among measured points, as the window asks it. */
class WhichBracketTest {
    private static final WhichBracket QUESTION = new WhichBracket();

    private static Asks tourer() throws Exception {
        return Asks.demo("sluice-tourer").act(new TrialAct.Activate("As measured"));
    }

    private static List<Field> fields(Map<String, String> wishes) {
        return QUESTION.fields(ByHand.asking(QUESTION, ByHand.demo("sluice-tourer"), wishes));
    }

    private static Field field(List<Field> fields, String words) {
        return fields.stream()
                .filter(field -> field.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static double cell(Reply reply, String heading, String words, int column) {
        return Double.parseDouble(
                Asks.row(reply.figures(), heading, words).get(column).replace('−', '-'));
    }

    /** 20 mm in 450 mm of slope: the roll steer is that of the lower links' side slope, so they have to be level. */
    @Test
    void aBracketMakesTheAxleSteerNoMoreAndWhatItDoesBesidesIsTold() throws Exception {
        Asks asks = tourer();
        Reply reply = asks.reply("brackets");
        assertThat(reply.headlines().get(0)).startsWith("\"As measured\": With the rear links lower link axle up");
        assertThat(reply.headlines().get(1)).contains("take 248 mm, which gives −0.07 %");
        assertThat(cell(reply, "Asked for", "roll steer", 0)).isEqualTo(-3.86);
        assertThat(cell(reply, "Asked for", "roll steer", 1)).isEqualTo(-0.07);
        assertThat(cell(reply, "Besides", "roll steer in bump", 2)).isPositive();
        assertThat(cell(reply, "Besides", "rear roll centre", 1))
                .as("the pivot is 290 mm up, and with no roll steer the axle rolls about it")
                .isCloseTo(290, within(0.3));
        assertThat(cell(reply, "Besides", "pinion slope", 2)).isZero();
        assertThat(reply.figures().toString()).doesNotContain("bump steer").doesNotContain("caster");
        Chart chart = reply.charts().get(0);
        assertThat(chart.title()).isEqualTo("What rear links lower link axle up can do");
        EditAct.SetValues take = (EditAct.SetValues) reply.next().get(0).act().orElseThrow();
        assertThat(take.texts()).containsExactly(Map.entry("rear.links.lowerLink.axle.up", "248 mm ± 2 mm"));
        asks.act(take);
        assertThat(Catalogue.number(asks.work().activeSetup().entries(), "rear.links.lowerLink.axle.up"))
                .hasValue(0.248);
    }

    @Test
    void eachFigureProposesWhatAShopReachesForFirst() {
        assertThat(fields(Map.of("figure", "pinion slope")).stream().map(Field::start))
                .containsSequence("rear torque arm", "longer");
        assertThat(fields(Map.of("figure", "bump steer")).stream().map(Field::start))
                .contains("0 deg/m")
                .containsSequence("front tie rod", "bracket: outer up");
        assertThat(fields(Map.of("figure", "rear roll centre")).stream().map(Field::start))
                .contains("265.8 mm")
                .containsSequence("rear lateral locator", "pivot up");
        List<Field> eyes = fields(Map.of("figure", "eye difference"));
        assertThat(field(eyes, "its").start()).isEqualTo("bottom shim");
        assertThat(field(eyes, "its").choices())
                .as("what is set before what is welded")
                .startsWith("top shim", "bottom shim")
                .contains("bracket: top ahead", "bracket: bottom tilt");
        assertThat(field(eyes, "change").choices())
                .contains("rear body height", "rear lower link", "rear prop shaft")
                .doesNotContain("front tie rod", "rear tyre");
        assertThat(field(eyes, "reach").choices())
                .contains("roll steer", "front roll steer", "rear roll centre", "front roll centre", "drop link lean")
                .doesNotContain("rear bump steer", "rear caster");
    }

    @Test
    void aFigureIsWantedAtTheEndOfTheTravelAndBesideOthers() throws Exception {
        Reply reply = tourer().wish("brackets/figure", "eye difference")
                .wish("brackets/place", "in bump")
                .wish("brackets/sense", "at least")
                .wish("brackets/value eye difference in bump, deg", "1")
                .wish("brackets/keeps", "roll steer at least -4 %")
                .reply("brackets");
        assertThat(cell(reply, "Asked for", "eye difference in bump", 1)).isBetween(1.0, 1.1);
        assertThat(cell(reply, "Asked for", "roll steer", 1)).isEqualTo(-3.86);
    }

    @Test
    void parallelBoltsCanDifferByNothing() throws Exception {
        Reply reply = Asks.demo(
                        "sluice-tourer",
                        text -> text.replace("\"bolt\": \"along\"", "\"bolt\": \"across\"")
                                .replace("\"tilt\": \"12 deg\", ", ""))
                .wish("brackets/figure", "eye difference")
                .wish("brackets/value eye difference, deg", "2 deg")
                .reply("brackets");
        assertThat(Asks.all(reply)).contains("parallel");
        assertThat(reply.next()).isEmpty();
    }

    @Test
    void whatIsWrongIsToldInOneSentence() throws Exception {
        assertThat(tourer().wish("brackets/value roll steer, %", "12 kg")
                        .reply("brackets")
                        .headlines())
                .singleElement()
                .asString()
                .startsWith("\"roll steer\": \"12 kg\" ");
        assertThat(tourer().wish("brackets/keeps", "anti-gravity 3 %")
                        .reply("brackets")
                        .headlines())
                .singleElement()
                .asString()
                .startsWith("\"keeping\": \"anti-gravity 3 %\" ");
    }

    @Test
    void aCarWithoutPointsIsToldWhatToMeasure() throws Exception {
        Asks saloon = Asks.demo("harbour-saloon");
        assertThat(QUESTION.fields(ByHand.asking(QUESTION, saloon.work(), Map.of())))
                .isEmpty();
        Reply reply = saloon.reply("brackets");
        assertThat(Asks.all(reply)).contains("plumb line");
        assertThat(reply.more()).extracting(Reply.Paragraph::heading).contains("What to measure, rear");
    }

    @Test
    void inchesAreTypedAndToldInInches() throws Exception {
        Reply reply = tourer().in(Units.IMPERIAL)
                .wish("brackets/figure", "rear roll centre")
                .wish("brackets/value rear roll centre, in", "12")
                .reply("brackets");
        assertThat(cell(reply, "Asked for", "rear roll centre", 1)).isCloseTo(12, within(0.02));
        assertThat(reply.headlines().get(1)).contains(" in");
    }
}
