package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenhand.answers.Progress;
import evenhand.chart.Chart;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.words.Units;
import evenhand.words.brakes.BrakeWords;
import evenhand.words.drive.DriveWords;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Which end locks first, and which wheel spins first. */
class StraightAheadTest {
    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void everyDemoCarIsAnsweredWithItsCautions(String demo) throws Exception {
        for (Units units : Units.values()) {
            for (String question : List.of("brakes", "drive")) {
                Reply reply = Asks.demo(demo).in(units).reply(question);
                assertThat(Asks.all(reply)).doesNotContain("defect").doesNotContain("NaN");
                assertThat(reply.charts()).noneMatch(Chart::isEmpty);
                if (!reply.charts().isEmpty()) {
                    assertThat(Asks.all(reply))
                            .contains(question.equals("brakes") ? BrakeWords.CAUTIONS : DriveWords.CAUTIONS);
                }
            }
        }
    }

    @Test
    void theVerdictIsLargeThatOfTheAdjustedSetUpFirst() throws Exception {
        Reply reply = Asks.demo("harbour-saloon").reply("brakes");
        assertThat(reply.headlines())
                .singleElement()
                .asString()
                .startsWith("\"Lowered\": The rear locks first: unsafe. On its own tyres the left rear wheel locks at");
        assertThat(reply.verdict().orElseThrow().lines().get(0).cells().get(0).text())
                .isEqualTo("rear");
        assertThat(reply.charts())
                .extracting(Chart::title)
                .containsExactly("How the brakes share their force", "What each end uses of the road");
        assertThat(Asks.row(reply.figures(), "At 0.3 g", "adhesion used in front"))
                .hasSize(2);
        assertThat(Asks.all(reply)).contains("As a yardstick, no approval: 71/320/EEC");
    }

    @Test
    void fieldsDecideWhatIsTold() throws Exception {
        Asks asks = Asks.demo("harbour-saloon")
                .wish("brakes/at", "0.5 g")
                .wish("brakes/friction", "0.2; 0.9")
                .wish("brakes/foot", "150 N")
                .wish("brakes/speed", "50 km/h")
                .wish("brakes/booster", "gives no help");
        Reply reply = asks.reply("brakes");
        assertThat(Asks.all(reply))
                .contains("On a road of friction 0.2 at", "the booster without help", "From 50 km/h it stops in")
                .doesNotContain("At 0.3 g");
        List<String> without = Asks.row(reply.figures(), "At 0.5 g", "force of the foot");
        List<String> with = Asks.row(
                asks.wish("brakes/booster", "helps").reply("brakes").figures(), "At 0.5 g", "force of the foot");
        assertThat(Double.parseDouble(without.get(0))).isGreaterThan(1.5 * Double.parseDouble(with.get(0)));
        Asks.row(reply.figures(), "Stop from 50 km/h", "with 150 N");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "at|5 g|A deceleration must lie between 0.001 g and 2 g, for example 0.3 g, 0.6 g, 0.9 g.",
                "at|hard|The deceleration \"hard\"",
                "at| , |Write a deceleration, for example",
                "friction|0|A friction must lie between 0.01 and 3",
                "foot|200 bar|The force of the foot \"200 bar\"",
                "speed|0 km/h|The speed must lie between 1 km/h and 400 km/h"
            })
    void whatCannotBeAskedIsSaid(String field, String text, String said) throws Exception {
        Reply reply = Asks.demo("harbour-saloon").wish("brakes/" + field, text).reply("brakes");
        assertThat(reply.headlines()).hasSize(1);
        assertThat(reply.headlines().get(0)).startsWith(said);
    }

    @Test
    void aCarWithoutBrakesSaysWhatToGiveAndWhere() throws Exception {
        Asks asks = Asks.demo("slipper-coupe");
        Reply reply = asks.reply("brakes");
        assertThat(reply.headlines())
                .containsExactly("Nothing is known of the brakes of this car: give what it has first.");
        assertThat(Asks.all(reply)).contains("brakes.frontShare", "\"The car itself\"");
        assertThat(reply.next().get(0).act()).contains(new LookAct.Ask(Question.FORM));
        asks.act(new EditAct.SetValue(Optional.empty(), "brakes.frontShare", "0.55", false, List.of()));
        assertThat(asks.reply("brakes").headlines().get(0)).contains("The rear locks first: unsafe.");
    }

    @Test
    void aCarWithoutEngineIsToldByGripAndSaysWhatToGive() throws Exception {
        Reply reply = Asks.demo("orchard-estate").reply("drive");
        assertThat(reply.headlines().get(0)).contains("Off the line grip allows", "the right rear wheel spins first");
        assertThat(reply.more().get(0).heading()).isEqualTo("What to give first");
        assertThat(reply.next().get(0).act()).contains(new LookAct.Ask(Question.FORM));
        assertThat(reply.charts())
                .extracting(Chart::title)
                .containsExactly("What grip allows off the line", "What the wheels carry off the line");
    }

    @Test
    void eachGearIsToldBesideTheLaunch() throws Exception {
        Reply reply = Asks.demo("quarry-special").wish("drive/speed", "60 km/h").reply("drive");
        assertThat(reply.charts()).hasSize(3);
        assertThat(Asks.row(reply.figures(), "Gear 1, at the engine's best torque", "limited by"))
                .containsOnly("grip");
        assertThat(Asks.row(reply.figures(), "Gear 4, at the engine's best torque", "engine at 60 km/h"))
                .containsOnly("2058");
        assertThat(Asks.row(reply.figures(), "Launch", "spins first")).containsOnly("right rear");
        assertThat(Asks.demo("quarry-special")
                        .wish("drive/speed", "fast")
                        .reply("drive")
                        .headlines()
                        .get(0))
                .startsWith("The speed ");
    }

    @Test
    void aReplyThatIsNoLongerWantedStops() {
        Progress stopped = new Progress() {
            @Override
            public void at(double share) {
                throw new AssertionError("nothing was done");
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        for (Question question : List.of(new WhichEndLocks(), new WhichWheelSpins())) {
            Question.Asked asked = ByHand.asked(question, ByHand.demo("harbour-saloon"), Map.of());
            assertThatThrownBy(() -> question.answer(asked, stopped)).isInstanceOf(CancellationException.class);
        }
    }
}
