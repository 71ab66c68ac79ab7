package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Balance;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Entries;
import evenhand.doubt.SlopeDoubt;
import evenhand.doubt.Tolerance;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import evenhand.window.desk.Afterthought;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The verdict of the first question against the turns themselves. */
class LimitVerdictTest {
    private static final double G = 9.80665;

    private static Limit limit(Setup setup, Direction way) {
        Balance balance = Balance.of(setup.car().settled(), List.of(), Trial.USUAL_RADIUS, way);
        return ((TurnAnswer.Turns) balance.turn()).limit();
    }

    @Test
    void everySetUpHasItsEndItsPaceAndWhatTheOtherEndHasInHandBothWays() throws Exception {
        Asks asks = Asks.demo("harbour-saloon");
        Verdict verdict = asks.reply("which-end").verdict().orElseThrow();
        assertThat(verdict.columns().stream().map(Verdict.Column::words))
                .containsExactly("lets go first, turning left", "lets go first, turning right", "near limit, deg/g");
        assertThat(verdict.lines().stream().map(Verdict.Line::setup)).containsExactly("As bought", "Lowered");
        for (Verdict.Line line : verdict.lines()) {
            Setup setup = asks.work().scenario().setup(line.setup()).orElseThrow();
            for (Direction way : Direction.values()) {
                Limit limit = limit(setup, way);
                Verdict.Cell cell = line.cells().get(way == Direction.LEFT ? 0 : 1);
                assertThat(cell.text().replace('\u00a0', ' '))
                        .isEqualTo(String.format(Locale.ROOT, "front, %.2f g", limit.lateralAcceleration() / G));
                assertThat(cell.left().orElseThrow().part())
                        .isCloseTo(1 - limit.row().rearGripUsed(), within(1e-12));
                assertThat(cell.warning()).isFalse();
                assertThat(cell.doubt()).isEmpty();
            }
        }
        assertThat(verdict.sure()).isEmpty();
    }

    @Test
    void aTailThatGoesFirstOneWayIsWarnedOfBeforeAllElse() throws Exception {
        Asks asks = Asks.demo("harbour-saloon");
        for (Setup setup : asks.work().scenario().setups()) {
            asks.act(new TrialAct.Show(setup.name(), true));
        }
        Verdict verdict = asks.reply("which-end").verdict().orElseThrow();
        int split = 0;
        for (Verdict.Line line : verdict.lines()) {
            Setup setup = asks.work().scenario().setup(line.setup()).orElseThrow();
            boolean left = limit(setup, Direction.LEFT).frontFirst();
            boolean right = limit(setup, Direction.RIGHT).frontFirst();
            assertThat(line.cells().get(0).warning()).isEqualTo(!left);
            assertThat(line.cells().get(1).warning()).isEqualTo(!right);
            assertThat(verdict.warnings().stream()
                            .anyMatch(
                                    words -> words.contains(line.setup() + "”") || words.contains(line.setup() + "\"")))
                    .as(line.setup())
                    .isEqualTo(left != right);
            split += left != right ? 1 : 0;
        }
        assertThat(split).as("set-ups of two minds").isPositive();
    }

    @Test
    void whatFollowsSaysHowSureItIsWhyAndWhatToDo() throws Exception {
        Asks asks = Asks.demo("harbour-saloon");
        Reply reply = asks.reply("which-end");
        Afterthought after = asks.after("which-end");
        Verdict sure = after.verdict().orElseThrow();
        assertThat(sure.lines().stream().map(Verdict.Line::setup).toList())
                .isEqualTo(reply.verdict().orElseThrow().lines().stream()
                        .map(Verdict.Line::setup)
                        .toList());
        assertThat(sure.sure().orElseThrow()).contains("first-order");

        List<Entries> cars = List.of("As bought", "Lowered").stream()
                .map(name -> asks.work().scenario().setup(name).orElseThrow().entries())
                .toList();
        Judged limit = new Judged(Criterion.LIMIT, OptionalDouble.empty());
        SlopeDoubt doubt = SlopeDoubt.of(
                cars,
                Trial.usual().turning(Direction.RIGHT),
                List.of(limit),
                Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                Progress.NONE);
        assertThat(sure.lines().get(1).cells().get(1).doubt().orElseThrow())
                .isEqualTo(String.format(
                        Locale.ROOT, "± %.2f", doubt.of(1, limit).orElseThrow().halfWidth() / G));

        assertThat(after.because()).singleElement().asString().contains("front lowered", "near the limit");
        assertThat(after.next()).hasSize(3).allSatisfy(next -> {
            assertThat(next.act()).isPresent();
            assertThat(next.words())
                    .startsWith(next.brief().substring(0, next.brief().indexOf(':')));
        });
    }

    @Test
    void theBaseAloneIsExplainedByWhatItIsMadeOf() throws Exception {
        Asks asks = Asks.demo("harbour-saloon")
                .act(new TrialAct.Activate("As bought"))
                .act(new TrialAct.Show("Lowered", false));
        assertThat(asks.after("which-end").because()).singleElement().asString().contains("understeer comes from");
    }

    /** Where the tail already comes round one way, steps that loosen it further were offered by one click. */
    @Test
    void nothingThatLoosensTheTailIsOfferedWhereItGoesFirst() throws Exception {
        Asks asks = Asks.demo("harbour-saloon").act(new TrialAct.Activate("Pivot middle, rear bar added"));
        assertThat(asks.after("which-end").next())
                .allSatisfy(next -> assertThat(next.brief()).doesNotContain(": −"));
    }

    @Test
    void aPaceBeyondTheLimitIsSaid() throws Exception {
        Asks asks = Asks.demo("harbour-saloon").act(new TrialAct.ChoosePace(1.2 * G, false));
        assertThat(asks.reply("which-end").verdict().orElseThrow().warnings().get(0))
                .contains("does not reach", "1.2", "0.783");
    }
}
