package evenhand.words.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.doubt.Doubt;
import evenhand.doubt.Spread;
import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How a difference in doubt is said. */
class DoubtWordsTest {
    private static final Unit G = Unit.of("g");

    private static String apart(Judged judged, Unit unit, double low, double nominal, double high) {
        Spread spread = new Spread(
                judged,
                OptionalDouble.of(unit.toSi(nominal)),
                unit.toSi(low),
                unit.toSi(high),
                unit.toSi(nominal),
                unit.toSi(high - low) / 4,
                0,
                List.of());
        Doubt.Left left = new Doubt.Left(List.of(spread), 0, OptionalDouble.empty(), OptionalDouble.empty(), List.of());
        return DoubtWords.apart(
                        "Now",
                        "Before",
                        left,
                        new Doubt.Left(List.of(), 0, OptionalDouble.empty(), OptionalDouble.empty(), List.of()),
                        Units.METRIC)
                .get(0);
    }

    @Test
    void whatMayGoBothWaysIsSaidBothWays() {
        Judged limit = new Judged(Criterion.LIMIT, OptionalDouble.empty());
        assertThat(apart(limit, G, -0.013, -0.009, 0.019))
                .endsWith(
                        "it comes out 0.009 g less, and lies between 0.013 g less and 0.019 g more, nineteen times in twenty.");
        assertThat(apart(limit, G, -0.019, 0.009, 0.013))
                .endsWith(
                        "it comes out 0.009 g more, and lies between 0.019 g less and 0.013 g more, nineteen times in twenty.");
        assertThat(apart(limit, G, 0.002, 0.009, 0.013))
                .contains("between 0.002 and 0.013 g more, nineteen times in twenty");
    }

    @Test
    void theSlopeOfTheLeanIsToldApartFromTheLean() {
        Judged roll = new Judged(Criterion.ROLL_GRADIENT, OptionalDouble.of(G.toSi(0.5)));
        assertThat(apart(roll, Unit.of("deg/g"), 0.01, 0.02, 0.07))
                .startsWith(
                        "The roll gradient at 0.5 g, the lean that each further g adds, of \"Now\" is 0.02 deg/g more");
    }
}
