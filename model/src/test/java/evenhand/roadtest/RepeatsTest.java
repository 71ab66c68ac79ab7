package evenhand.roadtest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RepeatsTest {
    private static Repeats.Seen seen(String test, String setup, double measured) {
        return new Repeats.Seen(
                test, setup, new Gradient(Gradient.Figure.UNDERSTEER, Optional.empty(), measured, 0.03, 0, 0, 6));
    }

    /** Pooled: A has 1.0, 1.2, 1.4 (Σ 0.08), B 2.0, 2.2 (Σ 0.02), with 2 + 1 degrees of freedom. */
    @Test
    void theSpreadIsPooledAndADifferenceIsRealBeyondStudentsT() {
        Repeats found = Repeats.of(List.of(
                seen("1", "A", 1.0),
                seen("2", "A", 1.2),
                seen("3", "A", 1.4),
                seen("4", "B", 2.0),
                seen("5", "B", 2.2)));
        double square = 0.1 / 3;
        assertThat(found.spreads()).hasSize(2);
        assertThat(found.spreads().get(0).spread()).isCloseTo(Math.sqrt(square), within(1e-12));
        assertThat(found.spreads().get(0).tests()).containsExactly("1", "2", "3");
        assertThat(found.spreads().get(1).degrees()).isEqualTo(3);
        Repeats.Difference one = found.differences().get(0);
        double error = Math.sqrt(square / 3 + 0.03 * 0.03 / 3 + square / 2 + 0.03 * 0.03 / 2);
        assertThat(one.difference()).isCloseTo(0.9, within(1e-12));
        assertThat(one.standardError()).isCloseTo(error, within(1e-12));
        assertThat(one.needed().orElseThrow())
                .isCloseTo(3.182446 * error, within(1e-6)); // t, 3 degrees, two-sided 95 %
        assertThat(one.isReal()).isTrue();
        Repeats near = Repeats.of(List.of(seen("1", "A", 1.0), seen("2", "A", 1.4), seen("3", "B", 1.9)));
        assertThat(near.differences().get(0).isReal()).isFalse();
    }

    @Test
    void withoutRepeatsNothingIsReal() {
        Repeats found = Repeats.of(List.of(seen("1", "A", 1.0), seen("2", "B", 9.0)));
        assertThat(found.spreads()).isEmpty();
        assertThat(found.differences().get(0).needed()).isEmpty();
        assertThat(found.differences().get(0).isReal()).isFalse();
        assertThat(found.drifts()).isEmpty();
    }

    @Test
    void theFirstSetUpDrivenAgainAtTheEndTellsTheDriftAndStandsByItsMean() {
        Repeats found = Repeats.of(List.of(seen("1", "A", 1.0), seen("2", "B", 2.0), seen("3", "A", 1.3)));
        assertThat(found.drifts()).hasSize(1);
        assertThat(found.drifts().get(0).drift()).isCloseTo(0.3, within(1e-12));
        assertThat(found.differences().get(0).difference()).isCloseTo(2.0 - 1.15, within(1e-12));
        assertThat(Repeats.of(List.of(seen("1", "A", 1.0), seen("2", "A", 2.0), seen("3", "A", 1.3)))
                        .drifts())
                .isEmpty();
    }
}
