package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The lines of a verdict say of each set-up what its figures say. */
class LinesTest {
    private static List<String> column(Verdict verdict, String opening) {
        for (int i = 0; i < verdict.columns().size(); i++) {
            if (verdict.columns().get(i).words().startsWith(opening)) {
                int place = i;
                return verdict.lines().stream()
                        .map(line -> line.cells().get(place).text())
                        .toList();
            }
        }
        throw new AssertionError("no column " + opening + " in " + verdict);
    }

    @Test
    void howItRides() throws Exception {
        Reply reply = Asks.demo("harbour-saloon")
                .act(new TrialAct.Show("Lowered, firmer springs", true))
                .reply("ride");
        Verdict verdict = reply.verdict().orElseThrow();
        assertThat(verdict.lines().stream().map(Verdict.Line::setup).toList())
                .isEqualTo(reply.figures().columns());
        assertThat(column(verdict, "front swings")).isEqualTo(Asks.row(reply.figures(), "Front", "body frequency"));
        assertThat(column(verdict, "rear damping"))
                .isEqualTo(Asks.row(reply.figures(), "Rear", "damping ratio of the body"));
        assertThat(verdict.columns())
                .allSatisfy(one -> assertThat(one.meaning()).isNotBlank());
    }

    @Test
    void aRearThatLocksFirstIsMarked() throws Exception {
        Verdict verdict = Asks.demo("harbour-saloon").reply("brakes").verdict().orElseThrow();
        assertThat(column(verdict, "locks first")).containsOnly("rear");
        assertThat(verdict.lines().get(0).cells().get(0).warning()).isTrue();
    }

    @Test
    void oneSetUpAloneNeedsNoLines() throws Exception {
        assertThat(Asks.demo("harbour-saloon")
                        .act(new TrialAct.Activate("As bought"))
                        .act(new TrialAct.Show("Lowered", false))
                        .reply("ride")
                        .verdict())
                .isEmpty();
    }
}
