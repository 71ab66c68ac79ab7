package evenhand.words.lowering;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.choice.Change;
import evenhand.lowering.Need;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.words.Units;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CostWordsTest {
    private static final Need TO_STOP = Need.ALL.stream()
            .filter(need -> need.key().equals("rearBumpTravelToStop"))
            .findFirst()
            .orElseThrow();
    private static final Need FIRST_STOP = Need.ALL.stream()
            .filter(need -> need.key().equals("firstStop"))
            .findFirst()
            .orElseThrow();

    /** Of the slipper coupé: the rear bump stop's gap, among others. */
    private static List<Change> changes() {
        Scenario scenario = Demo.read("slipper-coupe");
        return Change.between(
                scenario.setups().get(0).entries(), scenario.setups().get(1).entries());
    }

    private static OptionalDouble mm(double mm) {
        return OptionalDouble.of(mm / 1000);
    }

    private static List<String> said(Need need, OptionalDouble before, OptionalDouble now, OptionalDouble without) {
        CostWords.Without one = new CostWords.Without(changes().get(0), without);
        return CostWords.of(List.of(new CostWords.Cost(need, before, now, List.of(one))), Units.METRIC);
    }

    @Test
    void whatWasShortAndIsNotTellsTheChangeThatMendedIt() {
        assertThat(said(TO_STOP, mm(13), mm(32), mm(14)))
                .containsExactly("The rear bump travel to the stop was 13 mm, where at least 25 mm is wanted; now it is"
                        + " 32 mm, by the change of the rear bump stop gap above all: without it, it would be 14 mm.");
    }

    @Test
    void turnedRoundItIsThePriceOfTheChange() {
        assertThat(said(TO_STOP, mm(32), mm(13), mm(31)))
                .containsExactly(
                        "The rear bump travel to the stop is 13 mm, and at least 25 mm is wanted, or it sits on"
                                + " its rubbers on any rough road; that is the price of the change of the rear bump stop gap:"
                                + " without it, it would be 31 mm.");
    }

    @Test
    void aChangeThatDoesNotHelpIsNotPraised() {
        assertThat(said(TO_STOP, mm(13), mm(32), mm(40)).get(0))
                .endsWith("now it is 32 mm.")
                .doesNotContain("without");
        assertThat(said(TO_STOP, mm(32), mm(13), mm(10)).get(0)).doesNotContain("price");
    }

    @Test
    void whatStaysShortIsSaidSo() {
        assertThat(said(TO_STOP, mm(13), mm(13), mm(13)).get(0)).contains("is 13 mm as before");
        assertThat(said(TO_STOP, mm(13), mm(20), mm(13)).get(0)).contains("is still short, 20 mm after 13 mm");
    }

    @Test
    void whatNeverFallsShortIsSilentUnlessAChangeKeepsItSo() {
        assertThat(said(TO_STOP, mm(40), mm(32), mm(30))).isEmpty();
        assertThat(said(TO_STOP, mm(40), mm(32), mm(9)))
                .containsExactly("The change of the rear bump stop gap keeps the rear bump travel to the stop at 32 mm:"
                        + " without it, it would be 9 mm, where at least 25 mm is wanted.");
    }

    @Test
    void aStopThatIsNotTouchedAtAllIsTheBest() {
        OptionalDouble touched = OptionalDouble.of(0.3 * 9.80665);
        assertThat(said(FIRST_STOP, touched, OptionalDouble.empty(), touched).get(0))
                .contains("was 0.30 g")
                .contains("now it is beyond the limit")
                .contains("without it, it would be 0.30 g");
        assertThat(said(FIRST_STOP, OptionalDouble.empty(), touched, OptionalDouble.empty())
                        .get(0))
                .contains("is 0.30 g")
                .contains("price")
                .contains("would be beyond the limit");
    }
}
