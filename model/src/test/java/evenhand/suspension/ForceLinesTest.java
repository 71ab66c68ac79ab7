package evenhand.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Side;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The lines that are followed in time are the springs and stops of the turn. */
class ForceLinesTest {
    @Test
    void bothSidesTogetherCarryWhatTheAxleDoesInTheTurn() {
        for (long seed = 0; seed < 1_000; seed++) {
            Car car = RoadCars.any(seed).settled();
            SplittableRandom random = new SplittableRandom(seed);
            for (End end : End.values()) {
                AxleSuspension axle = AxleSuspension.of(car, end);
                double roll = 0.12 * (random.nextDouble() - 0.5);
                double rollCentre = car.axle(end).geometry().rollCentreHeight() + 0.1 * (random.nextDouble() - 0.5);
                ForceLines left = axle.side(Side.LEFT, roll, rollCentre);
                ForceLines right = axle.side(Side.RIGHT, roll, rollCentre);
                for (int i = 0; i < 20; i++) {
                    double travel = 0.3 * (random.nextDouble() - 0.5);
                    axle.at(travel, roll, rollCentre);
                    assertThat(left.force(travel) + right.force(travel))
                            .as("seed %d, %s", seed, end)
                            .isCloseTo(axle.force, within(1e-8 * (1000 + Math.abs(axle.force))));
                }
            }
        }
    }

    @Test
    void halfTheAxleCarriesHalfOfItInHeave() {
        for (long seed = 0; seed < 300; seed++) {
            Car car = RoadCars.plain(seed);
            for (End end : End.values()) {
                AxleSuspension axle = AxleSuspension.of(car, end);
                for (double travel = -0.2; travel < 0.2; travel += 0.013) {
                    axle.at(travel, 0, 0.1);
                    assertThat(axle.half().force(travel)).isCloseTo(axle.force / 2, within(1e-7));
                }
            }
        }
    }

    @Test
    void workIsTheIntegralOfTheForce() {
        Car car = RoadCars.any(5).settled();
        ForceLines lines = AxleSuspension.of(car, End.REAR).half();
        double sum = 0;
        double from = -0.15;
        double step = 1e-6;
        for (int i = 0; i < 300_000; i++) {
            sum += lines.force(from + (i + 0.5) * step) * step;
        }
        assertThat(lines.work(from, from + 0.3)).isCloseTo(sum, within(1e-6 * Math.abs(sum)));
        assertThat(lines.work(from + 0.3, from)).isCloseTo(-sum, within(1e-6 * Math.abs(sum)));
    }

    @Test
    void piecesEndWhereTheForceBends() {
        ForceLines lines = ForceLines.of(v -> Math.max(0, v - 1) + Math.max(0, 3 * (v - 2)), 2, 1, Double.NaN, 1);
        assertThat(lines.pieces()).isEqualTo(3);
        assertThat(lines.high(0)).isEqualTo(1);
        assertThat(lines.low(2)).isEqualTo(2);
        assertThat(lines.slope(2)).isCloseTo(4, within(1e-12));
        assertThat(lines.pieceAt(1.5)).isEqualTo(1);
        assertThat(lines.placeOf(5).orElseThrow()).isCloseTo(3, within(1e-12));
        assertThat(lines.placeOf(-1)).isEmpty();
        assertThat(ForceLines.none().force(7)).isZero();
    }

    @Test
    void aForceThatOnlyACornerHasIsFoundThere() {
        // Beside the flat part only the slanting one can tell where.
        ForceLines rising = ForceLines.of(v -> Math.max(0, v - 1), 1);
        assertThat(rising.placeOf(0).orElseThrow()).isCloseTo(1, within(1e-12));
        ForceLines ending = ForceLines.of(v -> Math.min(v, 2), 2);
        assertThat(ending.placeOf(2).orElseThrow()).isCloseTo(2, within(1e-12));
        assertThat(ending.placeOf(2.001)).isEmpty();
    }

    @Test
    void aDampersLinesAreTheDamper() {
        Car car = RoadCars.damped(3);
        for (End end : End.values()) {
            WheelDamper damper = WheelDamper.of(car, end).orElseThrow();
            ForceLines lines = damper.lines();
            for (double speed = -3; speed < 3; speed += 0.0317) {
                damper.at(speed);
                assertThat(lines.force(speed)).isCloseTo(damper.force, within(1e-9 * (1 + Math.abs(damper.force))));
            }
        }
    }
}
