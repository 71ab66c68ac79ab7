package evenhand.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class RoughnessIndexTest {
    private static MeasuredProfile measured(double start, double spacing, double length, DoubleUnaryOperator height) {
        List<Double> heights = new ArrayList<>();
        int steps = (int) Math.round(length / spacing);
        for (int i = 0; i <= steps; i++) {
            heights.add(height.applyAsDouble(i * spacing));
        }
        return new MeasuredProfile(start, spacing, heights);
    }

    @Test
    void aSineWaveRoadHasTheIndexOfTheReferenceCarsGain() {
        double amplitude = 0.002;
        for (double wavelength : new double[] {1.5, 2.4, 8, 15}) {
            double spacing = 0.01; // whole waves of each length
            RoughnessIndex index = RoughnessIndex.of(
                    measured(0, spacing, 12_000, x -> amplitude * Math.sin(2 * Math.PI * x / wavelength)));
            double inTyre = Math.PI * 0.25 / wavelength; // the mean slope over 250 mm
            double slope = 2 * Math.PI * amplitude / wavelength * Math.sin(inTyre) / inTyre;
            double expected = 2 / Math.PI * ReferenceCar.gain(wavelength) * slope;
            assertThat(index.whole()).isCloseTo(expected, within(1e-3 * expected)); // the start dies away
        }
    }

    @Test
    void theIndexDoesNotDependOnTheSpacingOfThePoints() {
        Profile road = RandomRoad.of(64e-6, 5, 1000);
        double fine = RoughnessIndex.of(measured(0, 0.05, 1000, road::height)).whole();
        double finest =
                RoughnessIndex.of(measured(0, 0.025, 1000, road::height)).whole();
        assertThat(fine).isCloseTo(finest, within(3e-3 * finest));
    }

    @Test
    void aLevelRoadAndAnEvenSlopeHaveNoRoughness() {
        assertThat(RoughnessIndex.of(measured(0, 0.25, 200, x -> 12)).whole()).isZero();
        assertThat(RoughnessIndex.of(measured(0, 0.25, 200, x -> 0.06 * x)).whole())
                .isCloseTo(0, within(1e-12));
    }

    @Test
    void aMadeUpRoadOfAClassHasAboutTheIndexToBeExpected() {
        for (double roughness : new double[] {16e-6, 256e-6}) {
            Profile road = RandomRoad.of(roughness, 11, 10_000);
            double index =
                    RoughnessIndex.of(measured(0, 0.05, 10_000, road::height)).whole();
            double expected = RoughnessIndex.expected(roughness);
            // without the shortest waves, which the tyre's 250 mm swallow, it must be a little less
            assertThat(index).isBetween(0.85 * expected, 1.0 * expected);
        }
    }

    @Test
    void segmentsAreFullHundredsOfMetresByTheDistancesOfTheFile() {
        for (double spacing : new double[] {0.05, 0.1, 0.25, 0.3}) {
            RoughnessIndex index = RoughnessIndex.of(measured(478, spacing, 300, x -> 0.002 * Math.sin(3 * x)));
            assertThat(index.segments()).as("points %f m apart", spacing).hasSize(3);
            assertThat(index.segments().get(2).from()).isEqualTo(678);
            assertThat(index.segments().get(2).to()).isEqualTo(778);
            double mean = index.segments().stream()
                    .mapToDouble(RoughnessIndex.Segment::index)
                    .average()
                    .orElseThrow();
            assertThat(mean).isCloseTo(index.whole(), within(2e-3 * index.whole()));
        }
        assertThat(RoughnessIndex.of(measured(0, 0.25, 99, Math::sin)).segments())
                .isEmpty();
    }

    @Test
    void tooShortOrTooCoarseAProfileIsRefused() {
        assertThatThrownBy(() -> RoughnessIndex.of(measured(0, 0.25, 10, Math::sin)))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("11 m");
        assertThatThrownBy(() -> RoughnessIndex.of(measured(0, 5, 100, Math::sin)))
                .isInstanceOf(InvalidValue.class);
    }
}
