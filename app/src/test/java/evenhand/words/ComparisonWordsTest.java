package evenhand.words;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Trial;
import evenhand.choice.Comparison;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.turn.Direction;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a driver notices of a comparison. */
class ComparisonWordsTest {
    private static final Trial TRIAL =
            new Trial(List.of(Unit.of("g").toSi(0.2), Unit.of("g").toSi(0.5)), 40, Direction.LEFT);

    private static List<String> noticed(String demo, String from, String to, Optional<ComparisonWords.Lean> lean) {
        Scenario scenario = Demo.read(demo);
        return ComparisonWords.noticed(
                Comparison.of(
                        scenario.setup(from).orElseThrow().entries(),
                        scenario.setup(to).orElseThrow().entries(),
                        TRIAL),
                lean,
                Units.METRIC);
    }

    private static Optional<ComparisonWords.Lean> lean(double before, double now) {
        Unit deg = Unit.of("deg");
        return Optional.of(new ComparisonWords.Lean(deg.toSi(before), deg.toSi(now)));
    }

    @Test
    void eachSentenceTurnsRoundWithItsNumber() {
        List<String> forth = noticed("harbour-saloon", "As bought", "Pivot middle, rear bar added", lean(3.3, 2.8));
        List<String> back = noticed("harbour-saloon", "Pivot middle, rear bar added", "As bought", lean(2.8, 3.3));
        assertThat(forth)
                .anySatisfy(one -> assertThat(one).contains("understeers less, by 1.18 deg/g (4.38 to 3.20 deg/g)"))
                .anySatisfy(
                        one -> assertThat(one).contains("leans less (3.3 deg to 2.8 deg): by the front spring rate"))
                .anySatisfy(one -> assertThat(one).contains("corners faster"))
                .anySatisfy(one -> assertThat(one)
                        .contains("towards sliding")
                        .contains("by the rear bar roll stiffness first")
                        .contains("against it works the front spring rate"));
        assertThat(back)
                .hasSameSizeAs(forth)
                .anySatisfy(one -> assertThat(one).contains("understeers more, by 1.18 deg/g (3.20 to 4.38 deg/g)"))
                .anySatisfy(
                        one -> assertThat(one).contains("leans more (2.8 deg to 3.3 deg): by the front spring rate"))
                .anySatisfy(one -> assertThat(one).contains("corners slower"))
                .anySatisfy(one -> assertThat(one)
                        .contains("towards pushing")
                        .contains("by the rear bar roll stiffness first")
                        .contains("against it works the front spring rate"));
    }

    @Test
    void whoMakesTheLeanGrowLessIsNotNamedWhereItLeansMore() {
        assertThat(noticed("harbour-saloon", "As bought", "Pivot middle, rear bar added", lean(2.8, 3.3)))
                .contains("At 0.5 g the body leans more (2.8 deg to 3.3 deg).");
        assertThat(noticed("harbour-saloon", "As bought", "Pivot middle, rear bar added", lean(3.0, 3.0)))
                .contains("At 0.5 g the body leans as before, 3.0 deg.");
        assertThat(noticed("harbour-saloon", "As bought", "Pivot middle, rear bar added", Optional.empty()))
                .noneMatch(one -> one.contains("leans"));
    }

    @Test
    void whatNobodyFeelsIsNamedOnceAndWithoutCauses() {
        assertThat(noticed(
                        "slipper-coupe", "As the customer wished", "Stiffer rear springs, soft rubbers", lean(3, 2.8)))
                .contains("Hardly changed: limit.")
                .noneMatch(one -> one.contains("corners slower"));
    }
}
