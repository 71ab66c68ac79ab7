package evenhand.words.balance;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Balance;
import evenhand.answers.Trial;
import evenhand.car.End;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sentence of the verdict against the limits that it is of. */
class VerdictWordsTest {
    @ParameterizedTest
    @ValueSource(strings = {"harbour-saloon", "quarry-special", "slipper-coupe"})
    void itSaysOfBothWaysWhatEndGoesAndWhatIsLeftThere(String demo) {
        for (Setup setup : scenario(demo).setups()) {
            TurnAnswer left = turn(setup, Direction.LEFT);
            TurnAnswer right = turn(setup, Direction.RIGHT);
            if (left instanceof TurnAnswer.Turns turn && right instanceof TurnAnswer.Turns back) {
                says(turn, back);
            }
        }
    }

    private static Scenario scenario(String demo) {
        return ScenarioReader.read(Path.of("..", "scenarios", demo + ".json"))
                .scenario()
                .orElseThrow();
    }

    private static TurnAnswer turn(Setup setup, Direction way) {
        return Balance.of(setup.car().settled(), List.of(), Trial.USUAL_RADIUS, way)
                .turn();
    }

    private static void says(TurnAnswer.Turns turn, TurnAnswer.Turns back) {
        String said = VerdictWords.sentence(turn, back);
        assertThat(said).endsWith(".").doesNotContain("NaN", "null");
        for (Limit limit : List.of(turn.limit(), back.limit())) {
            VerdictWords.other(limit).ifPresent(end -> {
                assertThat(said)
                        .contains("the " + (end == End.FRONT ? "front" : "rear") + " still has")
                        .containsAnyOf(
                                end == End.FRONT ? new String[] {"The rear", "tail"} : new String[] {"The front"});
                if (OtherWay.differs(turn.limit(), back.limit()) || limit.equals(turn.limit())) {
                    assertThat(said).contains(VerdictWords.inHand(limit, end));
                }
            });
        }
    }
}
