package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.chart.Part;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.WhichCar;
import org.junit.jupiter.api.Test;

/** What was read on the road. */
class WhatTheRoadSaidTest {
    @Test
    void theVerdictIsLargeAndEachChannelIsDrawnBothWaysRoundWithItsErrors() throws Exception {
        Reply reply = Asks.demo("harbour-saloon").reply("road");
        assertThat(reply.headlines().get(0)).startsWith("The file and the road agree (χ²");
        assertThat(reply.charts()).noneMatch(Chart::isEmpty);
        assertThat(reply.charts().get(0).title()).startsWith("\"First circle\": steering wheel as read");
        Chart wheel = reply.charts().get(0);
        assertThat(wheel.parts().stream().filter(Part.Mark.class::isInstance)).hasSize(8);
        assertThat(wheel.parts().stream()
                        .filter(part ->
                                part instanceof Part.Line line && !line.label().isEmpty())
                        .map(part -> ((Part.Line) part).label()))
                .containsExactlyInAnyOrder(
                        "by the file, left", "corrected, left", "by the file, right", "corrected, right");
        assertThat(reply.charts().get(reply.charts().size() - 1).title()).startsWith("What moved");
        assertThat(reply.next().stream().flatMap(next -> next.act().stream()))
                .containsExactly(new TrialAct.ChooseCar(WhichCar.AS_TESTED), new LookAct.TurnTo(Look.Page.CIRCLE));
        assertThat(Asks.all(reply)).doesNotContain("NaN");
    }

    @Test
    void aFileWithoutReadingsSaysWhatToRead() throws Exception {
        Reply reply = Asks.demo("orchard-estate").reply("road");
        assertThat(reply.headlines().get(0)).startsWith("The file has no road test yet");
        assertThat(reply.next().get(0).act()).contains(new LookAct.TurnTo(Look.Page.CIRCLE));
    }
}
