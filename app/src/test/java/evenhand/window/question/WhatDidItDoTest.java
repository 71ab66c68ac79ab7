package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhatDidItDoTest {
    @ParameterizedTest
    @CsvSource({"harbour-saloon", "slipper-coupe", "bakery-front-drive"})
    void headlineAndChartsBothLeadWithWhatIsNearTheLimit(String demo) throws Exception {
        Asks asks = Asks.demo(demo);
        String other = asks.work().scenario().setups().get(1).name();
        Reply reply = asks.act(new TrialAct.Activate(other)).reply("compare");
        List<String> headlines = reply.headlines();
        assertThat(headlines.get(0)).startsWith("\"" + other + "\" against ");
        assertThat(headlines.get(1)).startsWith("Near the limit ");
        assertThat(reply.charts().get(0).title()).contains("near the limit");
        assertThat(Asks.all(reply)).contains("At 0.5 g ");
    }

    @Test
    void whereSeveralAreComparedItIsSaidHowManyMoreThereAre() throws Exception {
        Asks asks = Asks.demo("harbour-saloon");
        assertThat(asks.reply("compare").headlines()).noneMatch(one -> one.contains("more"));
        asks.act(new TrialAct.Show("Pivot low", true));
        assertThat(asks.reply("compare").headlines()).contains("One more is compared below.");
        asks.act(new TrialAct.Show("Pivot high", true));
        Reply reply = asks.reply("compare");
        assertThat(reply.headlines()).contains("2 more are compared below.");
        assertThat(reply.more()).extracting(Reply.Paragraph::heading).contains("Lowered", "Pivot low", "Pivot high");
    }
}
