package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.WhichCar;
import org.junit.jupiter.api.Test;

/** Every question asks the car as measured, or as its road tests have corrected it, and says which. */
class AsTestedTest {
    private static final String WHICH_END = "which-end";

    private static TrialAct choose(WhichCar which) {
        return new TrialAct.ChooseCar(which);
    }

    @Test
    void anAnswerOfTheCorrectedCarIsAnotherOneAndWearsItsTests() throws Exception {
        Reply measured = Asks.demo("harbour-saloon").reply(WHICH_END);
        Reply tested =
                Asks.demo("harbour-saloon").act(choose(WhichCar.AS_TESTED)).reply(WHICH_END);
        assertThat(measured.tested()).isEmpty();
        assertThat(tested.tested()).hasValueSatisfying(by -> {
            assertThat(by.tests()).containsExactly("First circle");
            assertThat(by.agrees()).isTrue();
        });
        assertThat(tested.figures()).isNotEqualTo(measured.figures());
    }

    /** What the road said is about the file, whichever car the others are asked of. */
    @Test
    void readingsAreSetBesideTheFileInAnyCase() throws Exception {
        Reply tested =
                Asks.demo("harbour-saloon").act(choose(WhichCar.AS_TESTED)).reply(Question.ROAD);
        assertThat(tested.tested()).isEmpty();
        assertThat(tested.headlines())
                .isEqualTo(Asks.demo("harbour-saloon").reply(Question.ROAD).headlines());
    }

    @Test
    void whereFileAndRoadDisagreeTheCarIsRefusedAndThenTakenAllTheSame() throws Exception {
        Asks asks = Asks.demo(
                        "harbour-saloon",
                        text -> text.replace("\"steeringWheel\": \"101 deg", "\"steeringWheel\": \"171 deg"))
                .act(choose(WhichCar.AS_TESTED));
        Reply refused = asks.reply(WHICH_END);
        assertThat(refused.headlines())
                .singleElement()
                .asString()
                .startsWith(
                        "The car cannot be asked as tested: the file and the road do not agree by \"First circle\"");
        Reply forced = asks.act(refused.next().get(0).act().orElseThrow()).reply(WHICH_END);
        assertThat(forced.tested())
                .hasValueSatisfying(by -> assertThat(by.agrees()).isFalse());
        assertThat(forced.figures()).isNotEqualTo(refused.figures());
    }

    /** The last road test taken out of the file leaves nothing to be corrected by. */
    @Test
    void aFileWithoutRoadTestsIsAskedAsMeasured() throws Exception {
        Asks asks = Asks.demo("harbour-saloon").act(choose(WhichCar.AS_TESTED));
        assertThat(asks.work().which()).isEqualTo(WhichCar.AS_TESTED);
        Reply none = Asks.demo("orchard-estate").act(choose(WhichCar.AS_TESTED)).reply(WHICH_END);
        assertThat(none.headlines()).singleElement().asString().contains("no road test with a reading");
    }
}
