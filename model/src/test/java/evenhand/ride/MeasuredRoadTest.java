package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MeasuredRoadTest {
    private static final QuarterCar CAR = new QuarterCar(280, 40, 22e3, 200e3, 1600);

    /** Waves of random phase with the density of a class. */
    private static List<Double> road(RoadClass road, double length, double spacing, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double step = 1 / (1.7 * length);
        int waves = (int) (1.9 / step);
        double[] phases = random.doubles(waves).map(x -> 2 * Math.PI * x).toArray();
        List<Double> heights = new ArrayList<>();
        for (double x = 0; x < length; x += spacing) {
            double height = 0;
            for (int i = 1; i < waves; i++) {
                double n = i * step;
                if (n >= road.lowest()) {
                    height += Math.sqrt(2 * road.density(n) * step) * Math.cos(2 * Math.PI * n * x + phases[i]);
                }
            }
            heights.add(height);
        }
        return heights;
    }

    @Test
    void aLongRoadOfAClassShakesAsItsClass() {
        MeasuredRoad measured = MeasuredRoad.of(0.25, road(RoadClass.C, 1500, 0.25, 5));
        RoadResponse found = RoadResponse.of(CAR, measured, 22);
        RoadResponse ofClass = RoadResponse.of(CAR, RoadClass.C, 22);
        assertThat(measured.nearestClass()).isEqualTo(RoadClass.C);
        // Forty stretches of road have so much chance in them; waves above 2 cycle/m count little.
        assertThat(found.weightedAcceleration() / ofClass.weightedAcceleration())
                .isBetween(0.88, 1.12);
        assertThat(found.tyreDeflection() / ofClass.tyreDeflection()).isBetween(0.88, 1.12);
        assertThat(found.suspensionTravel() / ofClass.suspensionTravel()).isBetween(0.85, 1.15);
    }

    @Test
    void aSingleWaveShakesAsItsTransferSays() {
        double n = 0.11;
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < 8193; i++) {
            heights.add(0.01 * Math.sin(2 * Math.PI * n * i * 0.2) + 0.001 * i); // on a slope, which does not count
        }
        RoadResponse found = RoadResponse.of(CAR, MeasuredRoad.of(0.2, heights), 20);
        Transfer transfer = new Transfer(CAR);
        transfer.at(20 * n);
        double expected = 0.01 / Math.sqrt(2) * transfer.tyreDeflection();
        assertThat(found.tyreDeflection()).isCloseTo(expected, within(0.01 * expected));
    }

    @Test
    void aFlatRoadDoesNotShake() {
        MeasuredRoad flat = MeasuredRoad.of(0.1, Collections.nCopies(500, 0.3));
        assertThat(RoadResponse.of(CAR, flat, 20).bodyAcceleration()).isZero();
        assertThat(flat.nearestClass()).isEqualTo(RoadClass.A);
    }

    @Test
    void tooShortARoadIsRefused() {
        assertThatThrownBy(() -> MeasuredRoad.of(0.25, Collections.nCopies(128, 0.0)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(MeasuredRoad.of(0.25, Collections.nCopies(129, 0.0)).lowest())
                .isPositive();
    }
}
