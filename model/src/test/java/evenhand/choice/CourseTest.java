package evenhand.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The course of curves whose hills, valleys and ends are known. */
class CourseTest {
    private static final Criterion ROLL = Criterion.ROLL_GRADIENT;

    private static Course course(double from, double to, DoubleFunction<OptionalDouble> figure, double... known) {
        Span span =
                new Span(Catalogue.adjustments(CatalogueTest.car()).iterator().next(), from, to);
        Course course = new Course(span, ROLL, figure);
        for (double value : known) {
            course.ask(value);
        }
        return course;
    }

    private static Course climbed(double from, double to, DoubleUnaryOperator figure, double... known) {
        Course course = course(from, to, at -> OptionalDouble.of(figure.applyAsDouble(at)), known);
        course.climbHills(1e-6, course::ask);
        return course;
    }

    @Test
    void theTopOfAHillIsFoundOnEitherSideOfTheHighestKnownPlace() {
        for (double top : new double[] {0.9, 1.1}) {
            Course hill = climbed(0, 2, x -> 5 - (x - top) * (x - top), 0, 1, 2);
            assertThat(hill.reach().highest()).isCloseTo(5, within(1e-9));
            Course valley = climbed(0, 2, x -> (x - top) * (x - top) - 5, 0, 1, 2);
            assertThat(valley.reach().lowest()).isCloseTo(-5, within(1e-9));
            assertThat(valley.reach().highest()).isCloseTo((1 + 0.1) * (1 + 0.1) - 5, within(1e-12));
        }
    }

    @Test
    void aValleyBetweenTwoEvenlyDeepPlacesAtTheEndOfTheRangeIsFoundToo() {
        assertThat(climbed(0, 2, x -> (x - 1.5) * (x - 1.5), 0, 1, 2).reach().lowest())
                .isCloseTo(0, within(1e-9));
        assertThat(climbed(0, 2, x -> (x - 0.5) * (x - 0.5), 0, 1, 2).reach().lowest())
                .isCloseTo(0, within(1e-9));
    }

    /** A sharp top, so that nearness of the place shows and not only of the height. */
    @Test
    void aTopIsFoundToTheAskedPartOfTheRange() {
        double top = 0.00371;
        Course hill = climbed(0, 0.01, x -> -Math.abs(x - top), 0.002, 0.004, 0.006);
        double nearest = hill.values().stream()
                .mapToDouble(value -> Math.abs(value - top))
                .min()
                .orElseThrow();
        assertThat(nearest).isLessThan(1e-7);
    }

    /** From its neighbours 0, 1, 2 a hill k·(x − 0.98)² falls by 0.96·k and 1.04·k: by 2·k together. */
    @Test
    void whatStandsOutByLessThanAThousandthOfWhatIsNoticeableIsNoHill() {
        double half = ROLL.noticeable() / 2000;
        Course seen = climbed(0, 2, x -> -1.1 * half * (x - 0.98) * (x - 0.98), 0, 1, 2);
        Course ripple = climbed(0, 2, x -> -0.9 * half * (x - 0.98) * (x - 0.98), 0, 1, 2);
        assertThat(seen.values()).hasSizeGreaterThan(3);
        assertThat(ripple.values()).hasSize(3);
    }

    @Test
    void whereAFigureBeginsAndCeasesIsClosedInOnFromTheSideThatHasIt() {
        Course course = course(
                0,
                10,
                at -> at <= 4.3 || at >= 7.2 ? OptionalDouble.of(at) : OptionalDouble.empty(),
                0,
                2,
                4,
                6,
                8,
                10);
        assertThat(course.ends()).hasSize(2);
        assertThat(course.ends().get(0)).isLessThanOrEqualTo(4.3).isCloseTo(4.3, within(1e-8));
        assertThat(course.ends().get(1)).isGreaterThanOrEqualTo(7.2).isCloseTo(7.2, within(1e-8));
    }

    /** Of a square, the corner nearest to a place outside is the lowest of a bowl about that place. */
    @Test
    void theWayDownEndsAtTheCornerOfTheBoundsOrAtTheBottom() {
        double[] from = {0, -0.5};
        double[] to = {1, 1};
        double[] corner = Valley.lowest(
                new double[] {0.4, 0.3}, from, to, at -> (at[0] - 3) * (at[0] - 3) + (at[1] + 1) * (at[1] + 1));
        assertThat(corner).containsExactly(new double[] {1, -0.5}, within(1e-5));
        double[] bottom = Valley.lowest(
                new double[] {0.4, 0.3},
                from,
                to,
                at -> (at[0] - 0.7) * (at[0] - 0.7) + (at[0] - 0.7) * (at[1] - 0.2) + (at[1] - 0.2) * (at[1] - 0.2));
        assertThat(bottom).containsExactly(new double[] {0.7, 0.2}, within(1e-4));
    }
}
