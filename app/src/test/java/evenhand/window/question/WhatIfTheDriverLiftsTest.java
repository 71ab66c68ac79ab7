package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.window.desk.Reply;
import evenhand.words.balance.AlongWords;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lifting off, pressing on and braking in the bend. */
class WhatIfTheDriverLiftsTest {
    @Test
    void liftingOffIsToldAgainstTheSteadyTurnBothWaysRoundWithItsCaution() throws Exception {
        Reply reply = Asks.demo("harbour-saloon").reply("lift");
        assertThat(reply.headlines().get(0)).startsWith("Lifting off (slowed 0.20 g by the driven axle)");
        assertThat(reply.headlines().get(1))
                .startsWith("\"Lowered\": Turning left: At 0.5 g it tightens its line: it needs 0.90 deg less steer");
        assertThat(Asks.all(reply)).contains("Turning right: At 0.5 g it tightens", AlongWords.CAUTION);
        assertThat(reply.charts()).hasSize(2).noneMatch(Chart::isEmpty);
        List<String> now = Asks.row(reply.figures(), "At 0.5 g, turning left", "grip balance");
        List<String> steady = Asks.row(reply.figures(), "At 0.5 g, turning left", "the same, steady");
        assertThat(now).allMatch(cell -> cell.startsWith("−"));
        assertThat(steady).allMatch(cell -> cell.startsWith("+"));
    }

    @Test
    void pressingOnAndBrakingAreAskedForByWhatTheDriverDoes() throws Exception {
        Asks asks = Asks.demo("quarry-special").wish("lift/does", "presses on").wish("lift/by", "0.1 g");
        assertThat(asks.reply("lift").headlines().get(0)).startsWith("Pressing on (quicker by 0.10 g)");
        asks.wish("lift/does", "brakes").wish("lift/by", "0.3 g");
        Reply braking = asks.reply("lift");
        assertThat(braking.headlines().get(0)).startsWith("Braking in the bend (0.30 g, clutch down)");
        assertThat(Asks.all(braking)).contains("the rear goes first instead of the front");
    }

    @Test
    void aCarWhoseBendAloneSlowsItMoreHasNoAnswerAndSaysSo() throws Exception {
        Reply reply = Asks.demo("harbour-saloon")
                .wish("lift/does", "brakes")
                .wish("lift/by", "0.01 g")
                .reply("lift");
        assertThat(Asks.all(reply))
                .contains("no answer: coasting alone slows it by")
                .doesNotContain("NaN");
        assertThat(reply.charts()).allMatch(Chart::isEmpty);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5 g|A change of speed must lie between 0.001 g and 1 g, for example 0.2 g.",
                "much|The change of speed \"much\"",
                " , |Write a change of speed, for example 0.2 g."
            })
    void whatCannotBeAskedIsSaid(String text, String said) throws Exception {
        Reply reply = Asks.demo("harbour-saloon").wish("lift/by", text).reply("lift");
        assertThat(reply.headlines()).hasSize(1);
        assertThat(reply.headlines().get(0)).startsWith(said);
    }
}
