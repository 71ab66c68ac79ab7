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

    private static final int LENGTH = 256; // points of a stretch, of four times as many
    private static final double SPACING = 0.1;
    private static final double STEP = 1 / (LENGTH * SPACING); // between lines

    /** Heights of a wave that fits so many times into a stretch, on a road that rises by so much in each step. */
    private static MeasuredRoad wave(double amplitude, int times, double rise) {
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i <= 4 * LENGTH; i++) {
            heights.add(amplitude * Math.cos(2 * Math.PI * times * i / LENGTH + 0.4) + rise * i);
        }
        return MeasuredRoad.of(SPACING, heights);
    }

    /** What a step between points makes of a wave of a line: slope over height. */
    private static double slope(double line) {
        return 2 * Math.sin(Math.PI * line / LENGTH) / SPACING;
    }

    @Test
    void aWaveThatFitsIntoAStretchStandsInThreeLinesOfHannsWindow() {
        // Hann's window puts a half of the amplitude into a wave's own line and a quarter into each neighbour: as
        // powers
        // four to one to one, and by all of them half of the amplitude's square, a²/2.
        double amplitude = 0.003;
        int line = 21;
        MeasuredRoad road = wave(amplitude, line, 0.002);
        double most = amplitude * amplitude / 2 / 1.5 / STEP;
        assertThat(road.density(line * STEP)).isCloseTo(most, within(1e-9 * most));
        for (int beside : new int[] {line - 1, line + 1}) {
            double density = most / 4 * Math.pow(slope(line) / slope(beside), 2);
            assertThat(road.density(beside * STEP)).isCloseTo(density, within(1e-9 * density));
        }
        assertThat(road.density((line + 2) * STEP)).isLessThan(1e-12 * most);
        // Half way between two lines the slope has the mean of both.
        double middle = most * 0.625 * Math.pow(slope(line) / slope(line + 0.5), 2);
        assertThat(road.density((line + 0.5) * STEP)).isCloseTo(middle, within(1e-9 * middle));
        // What rises all along is no wave.
        assertThat(road.density(road.lowest())).isLessThan(1e-12 * most);
    }

    @Test
    void aWaveThatDoesNotFitLeaksNextToNothingFarAway() {
        // Hann's window begins and ends at nothing: ten lines away a wave between two lines is down to 1/(10.5·10.5²·π)
        // or so.
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i <= 4 * LENGTH; i++) {
            heights.add(0.003 * Math.cos(2 * Math.PI * 20.5 * i / LENGTH + 0.4));
        }
        MeasuredRoad road = MeasuredRoad.of(SPACING, heights);
        assertThat(road.density(31 * STEP)).isLessThan(1e-5 * road.density(20 * STEP));
    }

    @Test
    void theShortestWaveGoesUpAndDownFromPointToPoint() {
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i <= 4 * LENGTH; i++) {
            heights.add(i % 2 == 0 ? 0.002 : -0.002);
        }
        MeasuredRoad road = MeasuredRoad.of(SPACING, heights);
        assertThat(road.highest()).isCloseTo(1 / (2 * SPACING), within(1e-12));
        // Its power is a², twice that of a longer wave, and has no mirror image: two thirds in its line, a third
        // beside.
        double most = 0.002 * 0.002 * 2 / 3 / STEP;
        assertThat(road.density(road.highest())).isCloseTo(most, within(1e-9 * most));
        double beside = most / 2 * Math.pow(slope(LENGTH / 2) / slope(LENGTH / 2 - 1), 2);
        assertThat(road.density(road.highest() - STEP)).isCloseTo(beside, within(1e-9 * beside));
    }

    @Test
    void theLongestWaveIsAStretchAndEveryLineBetweenIsACorner() {
        MeasuredRoad road = wave(0.001, 9, 0);
        assertThat(road.lowest()).isCloseTo(STEP, within(1e-15));
        double[] corners = road.corners();
        assertThat(corners).hasSize(LENGTH / 2 - 2);
        for (int i = 0; i < corners.length; i++) {
            assertThat(corners[i]).isCloseTo((2 + i) * STEP, within(1e-12));
        }
        assertThat(corners[corners.length - 1]).isLessThan(road.highest());
    }

    @Test
    void stretchesAreTheLongestPowerOfTwoThatLeavesSevenOfThem() {
        for (int[] pair : new int[][] {{128, 32}, {255, 32}, {256, 64}, {1023, 128}, {1024, 256}}) {
            MeasuredRoad road = MeasuredRoad.of(0.25, Collections.nCopies(pair[0] + 1, 0.0));
            assertThat(road.lowest()).isCloseTo(1 / (pair[1] * 0.25), within(1e-15));
        }
    }

    @Test
    void theNearestClassIsTheOneWhoseSlopesVaryAsMuchBetweenTheWavesThatCount() {
        // A wave of amplitude a and n cycle/m has slopes of mean square (2π·n·a)²/2; a class has the density of slopes
        // (2π·n0)²·Gd(n0) over 0.05 to 0.5 cycle/m, here lines 2 to 12 of 1/25.6 m. Classes part at twice their mean.
        double band = 11 * STEP;
        for (int line : new int[] {4, 6, 9}) {
            double n = line * STEP;
            for (RoadClass road : List.of(RoadClass.A, RoadClass.B, RoadClass.C, RoadClass.G)) {
                double parting = Math.sqrt(2 * 2 * road.roughness() * band) * 0.1 / n;
                assertThat(wave(0.98 * parting, line, 0).nearestClass()).isEqualTo(road);
                RoadClass rougher = RoadClass.values()[road.ordinal() + 1];
                assertThat(wave(1.02 * parting, line, 0).nearestClass()).isEqualTo(rougher);
            }
        }
        // Points 1.25 m apart know no waves above 0.4 cycle/m, line 16 of 1/40 m; lines 2 to 15 count, whose end is
        // left out.
        double parting = Math.sqrt(2 * 2 * RoadClass.B.roughness() * 14 / 40) * 0.1 / 0.1;
        for (double part : new double[] {0.96, 1.04}) {
            List<Double> heights = new ArrayList<>();
            for (int i = 0; i <= 128; i++) {
                heights.add(part * parting * Math.cos(2 * Math.PI * 4 * i / 32));
            }
            assertThat(MeasuredRoad.of(1.25, heights).nearestClass()).isEqualTo(part < 1 ? RoadClass.B : RoadClass.C);
        }
        assertThat(wave(0.05, 40, 0).nearestClass()).isEqualTo(RoadClass.A); // 1.6 cycle/m: the tyre swallows it
    }
}
