package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.drawing.Item;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.words.Units;
import evenhand.words.loads.LoadsWords;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What links, brackets and mounts carry. */
class WhatBracketsCarryTest {
    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void everyDemoCarIsAnsweredWithItsCautions(String demo) throws Exception {
        Reply reply = Asks.demo(demo).in(Units.IMPERIAL).reply("loads");
        assertThat(Asks.all(reply)).doesNotContain("defect").doesNotContain("NaN");
        assertThat(Asks.all(reply)).contains(LoadsWords.CAUTIONS);
        assertThat(reply.charts()).isNotEmpty().noneMatch(Chart::isEmpty);
    }

    @Test
    void theMountsAreSaidLargeAndTheForcesOfTheChosenCaseDrawn() throws Exception {
        Reply reply = Asks.demo("sluice-tourer")
                .wish("loads/axle", "rear")
                .wish("loads/case", "Kerb strike, left")
                .reply("loads");
        assertThat(reply.headlines().get(0))
                .contains("Hardest worked: pivotPost, 54 % of its pin's yield in Kerb strike, left");
        assertThat(reply.drawings()).hasSize(3);
        List<String> arrows = arrows(reply);
        assertThat(arrows).contains("crank pivot 6.02 kN", "wheel left 6.21 kN", "1.00 kN");
        assertThat(reply.charts())
                .extracting(Chart::title)
                .containsExactly(
                        "Greatest force in each part of the rear axle",
                        "What each mount uses (below 100 % clears nothing)");
    }

    @Test
    void anotherCaseAndTheOtherAxleAreDrawnInTheSameScale() throws Exception {
        Asks asks = Asks.demo("sluice-tourer").wish("loads/axle", "rear").wish("loads/case", "Hung up");
        assertThat(arrows(asks.reply("loads")))
                .contains("1.00 kN")
                .anyMatch(words -> words.startsWith("damper left 1.19 kN"))
                .noneMatch(words -> words.startsWith("wheel"));
        assertThat(arrows(asks.wish("loads/axle", "front")
                        .wish("loads/case", "Pothole, left")
                        .reply("loads")))
                .anyMatch(words -> words.startsWith("strut left 8.85 kN"));
    }

    /** An arrow points where the force does: what the blow from the left does to the pivot goes to the right. */
    @Test
    void arrowsPointWhereForcesDo() throws Exception {
        Reply reply = Asks.demo("sluice-tourer")
                .wish("loads/axle", "rear")
                .wish("loads/case", "Kerb strike, left")
                .reply("loads");
        Item.Arrow pivot = reply.drawings().get(0).drawing().items().stream()
                .filter(item ->
                        item instanceof Item.Arrow arrow && arrow.words().startsWith("crank pivot"))
                .map(Item.Arrow.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(pivot.tipX()).isGreaterThan(pivot.x() + 0.3);
        assertThat(pivot.tipZ() - pivot.z()).isBetween(-0.1, 0.1);
    }

    @Test
    void aCarWithoutMountsSaysWhatToGive() throws Exception {
        Reply reply = Asks.demo("harbour-saloon").reply("loads");
        assertThat(reply.next().get(0).words()).contains("\"mounts\"");
        assertThat(reply.next().get(0).act()).contains(new LookAct.Ask(Question.FORM));
        assertThat(reply.drawings()).isEmpty();
    }

    private static List<String> arrows(Reply reply) {
        return reply.drawings().get(0).drawing().items().stream()
                .filter(Item.Arrow.class::isInstance)
                .map(item -> ((Item.Arrow) item).words())
                .toList();
    }
}
