package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import java.util.List;
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
}
