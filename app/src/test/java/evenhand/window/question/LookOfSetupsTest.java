package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.look.SetupStyle;
import evenhand.scenario.Setup;
import evenhand.window.desk.Reply;
import evenhand.window.desk.SetupAct;
import evenhand.window.desk.TrialAct;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A set-up has one look wherever it is shown, and keeps it. */
class LookOfSetupsTest {
    private static Map<String, SetupStyle> styles(Reply reply) {
        Map<String, SetupStyle> styles = new HashMap<>();
        for (Chart chart : reply.charts()) {
            chart.setups().forEach(one -> {
                SetupStyle before = styles.putIfAbsent(one.name(), one.style());
                assertThat(before).as(chart.title()).isIn(null, one.style());
            });
        }
        return styles;
    }

    private static Map<String, SetupStyle> ofTheFile(List<Setup> setups) {
        Map<String, SetupStyle> styles = new HashMap<>();
        setups.forEach(setup -> styles.put(setup.name(), new SetupStyle(setup.look())));
        return styles;
    }

    @Test
    void chartsShowASetupAsTheFileHasItThoughOthersAreMovedHiddenAddedOrTakenAway() throws Exception {
        Asks asks = Asks.demo("harbour-saloon");
        Map<String, SetupStyle> first = ofTheFile(asks.work().scenario().setups());
        asks.act(new TrialAct.Show("Pivot middle", true));
        assertThat(first).containsAllEntriesOf(styles(asks.reply("which-end")));
        asks.act(new SetupAct.MoveSetup("As bought", 4));
        asks.act(new SetupAct.MoveSetup("Lowered", 0));
        asks.act(new TrialAct.Show("As bought", false));
        asks.act(new SetupAct.DuplicateSetup("Lowered", "Copy"));
        Map<String, SetupStyle> later = styles(asks.reply("which-end"));
        assertThat(later).containsKeys("Lowered", "Copy");
        assertThat(ofTheFile(asks.work().scenario().setups()))
                .containsAllEntriesOf(later)
                .containsAllEntriesOf(first);
        assertThat(later.get("Copy").index()).isEqualTo(first.size());
        for (String question : List.of("compare", "ride", "pivot")) {
            assertThat(ofTheFile(asks.work().scenario().setups())).containsAllEntriesOf(styles(asks.reply(question)));
        }
    }
}
