package evenhand.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;

/** The last place at which the front goes first, on ways where it is known. */
class LastFrontFirstTest {
    private static final Span RANGE =
            new Span(Catalogue.adjustments(CatalogueTest.car()).iterator().next(), 0, 10);

    /** Known at 0, 2, 4, 6, 8 and 10. */
    private static LastFrontFirst last(double found, double present, DoublePredicate does) {
        TreeMap<Double, Boolean> known = new TreeMap<>();
        for (int i = 0; i <= 10; i += 2) {
            known.put((double) i, does.test(i));
        }
        return new LastFrontFirst(known, found, present, does);
    }

    @Test
    void onTheWayFromThePresentCarItIsWhereTheFrontCeasesToGoFirst() {
        assertThat(last(10, 0, at -> at <= 3.7).value().orElseThrow())
                .isLessThanOrEqualTo(3.7)
                .isCloseTo(3.7, within(1e-5));
        assertThat(last(0, 10, at -> at >= 6.3).value().orElseThrow())
                .isGreaterThanOrEqualTo(6.3)
                .isCloseTo(6.3, within(1e-5));
        assertThat(last(0, 10, at -> false).value()).isEmpty();
    }

    /** From 7 to 8 it never does; 1.2 is farther off than 9.4, and the way from 9.4 down does not lead by 5. */
    @Test
    void offThatWayItIsTheNearestElsewhere() {
        DoublePredicate does = at -> at <= 1.2 || at >= 9.4;
        assertThat(last(7, 8, does).value().orElseThrow()).isCloseTo(9.4, within(1e-5));
        assertThat(last(3, 4, does).value().orElseThrow()).isCloseTo(1.2, within(1e-5));
        assertThat(last(7, 8, at -> at >= 9.4 || Math.abs(at - 5) < 0.2).value().orElseThrow())
                .isCloseTo(9.4, within(1e-5));
    }

    @Test
    void aWayThatDoesElsewhereTooIsLookedAtFirst() {
        // 2 is on the way from 0 to 9; 10 is nearer to 9, but not on it.
        assertThat(last(9, 0, at -> at <= 2.5 || at > 9.5).value().orElseThrow())
                .isCloseTo(2.5, within(1e-5));
    }

    @Test
    void inStepsItIsTheLastWholeOneAndWhereThatDoesNotTheOneBefore() {
        assertThat(last(10, 0, at -> at <= 3.7).step(RANGE, 0.5).orElseThrow()).isCloseTo(3.5, within(1e-12));
        assertThat(last(10, 0, at -> at <= 3.7 && Math.abs(at - 3.6) > 0.02)
                        .step(RANGE, 0.3)
                        .orElseThrow())
                .isCloseTo(3.3, within(1e-12));
        assertThat(last(0, 10, at -> at >= 6.3).step(RANGE, 0.4).orElseThrow()).isCloseTo(6.4, within(1e-12));
        assertThat(last(0, 10, at -> at >= 6.3 && Math.abs(at - 6.4) > 0.02)
                        .step(RANGE, 0.4)
                        .orElseThrow())
                .isCloseTo(6.8, within(1e-12));
    }

    @Test
    void whereNoneOfThreeStepsBackDoesThereIsNone() {
        assertThat(last(0, 10, at -> false).step(RANGE, 0.4)).isEqualTo(OptionalDouble.empty());
        assertThat(last(10, 0, at -> at == 2 || Math.abs(at - 2.015) < 0.005).step(RANGE, 3))
                .isEmpty();
    }
}
