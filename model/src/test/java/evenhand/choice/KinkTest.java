package evenhand.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What counts as a kink of a figure, and how its edges are closed in on. */
class KinkTest {
    private static final double RIPPLE = 1e-6;

    /** On a range from 2 to 6, in which a look is at every hundredth. */
    private static boolean isKink(double place, DoubleUnaryOperator figure) {
        return Kink.isAt(place, 2, 6, RIPPLE, at -> OptionalDouble.of(figure.applyAsDouble(at)));
    }

    @Test
    void aSlopeThatChangesAtOnceIsAKink() {
        assertThat(isKink(3, x -> Math.abs(x - 3))).isTrue();
        assertThat(isKink(3, x -> 5 + Math.max(0, 3 - x))).isTrue();
        assertThat(isKink(3, x -> x < 3 ? 0 : 1)).isTrue();
        assertThat(isKink(2, x -> Math.abs(x - 2.02)))
                .as("near the range's beginning")
                .isTrue();
        assertThat(isKink(6, x -> Math.abs(x - 5.98))).as("near its end").isTrue();
    }

    @Test
    void whatIsStraightOrBendsEvenlyIsNone() {
        assertThat(isKink(3, x -> 4)).isFalse();
        assertThat(isKink(3, x -> 7 - 40 * x)).isFalse();
        assertThat(isKink(3, x -> x * x)).isFalse();
        assertThat(isKink(3, x -> (x - 3) * (x - 3)))
                .as("at the bottom, where there is no slope")
                .isFalse();
        assertThat(isKink(3, x -> Math.sin(5 * x))).isFalse();
    }

    @Test
    void itIsSeenFourLooksToEitherSideButNotAtTheLastOfThem() {
        for (int side : new int[] {-1, 1}) {
            assertThat(isKink(3, x -> Math.abs(x - 3 - side * 0.03))).isTrue();
            assertThat(isKink(3, x -> Math.abs(x - 3 - side * 0.041))).isFalse();
        }
    }

    @Test
    void aBendThatIsSmallAgainstSlopeUsualBendOrRippleIsNone() {
        assertThat(isKink(3, x -> 10 * x + 0.09 * 10 * Math.max(0, x - 3))).isFalse();
        assertThat(isKink(3, x -> 10 * x + 0.13 * 10 * Math.max(0, x - 3))).isTrue();
        // second differences of a parabola q·x² are 2·q·h², and a kink by s adds s·h, with h = 0.01
        assertThat(isKink(3, x -> (x - 3) * (x - 3) + 0.02 * 6.5 * Math.max(0, x - 3)))
                .isFalse();
        assertThat(isKink(3, x -> (x - 3) * (x - 3) + 0.02 * 7.5 * Math.max(0, x - 3)))
                .isTrue();
        assertThat(isKink(3, x -> 0.9e-4 * Math.max(0, x - 3))).isFalse();
        assertThat(isKink(3, x -> 1.1e-4 * Math.max(0, x - 3))).isTrue();
    }

    @Test
    void whereAFigureIsKnownAtTooFewPlacesNoneIsSeen() {
        assertThat(Kink.isAt(
                        3,
                        2,
                        6,
                        RIPPLE,
                        at -> at < 2.985 ? OptionalDouble.of(Math.abs(at - 2.97)) : OptionalDouble.empty()))
                .isFalse();
        assertThat(Kink.isAt(
                        3,
                        2,
                        6,
                        RIPPLE,
                        at -> at < 3.005 ? OptionalDouble.of(Math.abs(at - 2.98)) : OptionalDouble.empty()))
                .isTrue();
    }

    @Test
    void anEdgeIsHalvedBetweenAValueThatDoesAndOneThatDoesNot() {
        Edge edge = Edge.between(1, 9, 10, at -> at < 4.3);
        assertThat(edge.inside()).isLessThan(4.3).isCloseTo(4.3, within(8 / 1024.0));
        assertThat(edge.outside()).isGreaterThanOrEqualTo(4.3);
        assertThat(edge.outside() - edge.inside()).isCloseTo(8 / 1024.0, within(1e-12));
        Edge down = Edge.between(9, 1, 3, at -> at > 4.3);
        assertThat(down).isEqualTo(new Edge(5, 4));
    }
}
