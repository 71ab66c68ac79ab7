package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.Reply;
import org.junit.jupiter.api.Test;

class HowHighThePivotTest {
    /** Where links are measured there is no height in the file: the question met a defect. */
    @Test
    void aPivotGivenByItsPointIsMovedByThatPoint() throws Exception {
        Reply reply = Asks.demo("sluice-tourer").wish("pivot/axle", "rear").reply("pivot");
        assertThat(Asks.all(reply)).doesNotContain("defect").contains("the rear pivot");
        assertThat(reply.charts()).hasSize(4);
    }

    @Test
    void whereLinksAloneDecideItThatIsSaid() throws Exception {
        Reply reply = Asks.demo("sluice-tourer").wish("pivot/axle", "front").reply("pivot");
        assertThat(Asks.all(reply)).contains("Measured links decide what the front axle rolls about");
    }
}
