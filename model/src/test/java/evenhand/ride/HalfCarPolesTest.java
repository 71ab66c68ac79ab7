package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The steps by which the poles of a half car are found. That they are its poles stands in {@link SeatRideTest}. */
class HalfCarPolesTest {
    private static HalfCar any(SplittableRandom random) {
        return SeatRideTest.any(random);
    }

    private static HalfCarPoles of(HalfCar car) {
        return new HalfCarPoles(car, car.front().modes(), car.rear().modes());
    }

    /** Poles as closely as they can be told. */
    private static HalfCarPoles settled(HalfCar car) {
        HalfCarPoles poles = of(car);
        for (int step = 0; step < 6; step++) {
            for (int k = 0; k < poles.count; k++) {
                poles.improve(k);
            }
        }
        return poles;
    }

    /** How far a step from so far beside a pole leaves it away from there. */
    private static double left(HalfCarPoles poles, int k, double re, double im) {
        double x = poles.real[k];
        double y = poles.imaginary[k];
        poles.real[k] = x + re;
        poles.imaginary[k] = y + im;
        poles.improve(k);
        double left = Math.hypot(poles.real[k] - x, poles.imaginary[k] - y);
        poles.real[k] = x;
        poles.imaginary[k] = y;
        return left;
    }

    @Test
    void aStepClosesInByTheCubeOfWhatIsLeftFromEverySide() {
        // With P' = P·Σ 1/(s − s_j) over all eight roots, what Aberth's step leaves out is its own conjugate's error
        // alone:
        // a step from s + d ends within |d|³/(2·Im s)² of s, nearly.
        SplittableRandom random = new SplittableRandom(51);
        int asked = 0;
        for (int i = 0; i < 60; i++) {
            HalfCarPoles poles = settled(any(random));
            if (poles.count < 4) {
                continue; // a root that creeps is not among those that the step knows of
            }
            for (int k = 0; k < 4; k++) {
                double y = poles.imaginary[k];
                double d = 0.02 * y;
                double cube = d * d * d / (4 * y * y);
                for (double turn = 0; turn < 6; turn += 0.7) {
                    assertThat(left(poles, k, d * Math.cos(turn), d * Math.sin(turn)))
                            .as("car %d, pole %d, from %.1f", i, k, turn)
                            .isCloseTo(cube, within(0.1 * cube));
                }
                asked++;
            }
        }
        assertThat(asked).isGreaterThan(150);
    }

    @Test
    void aStepIsNearEnoughWhenItMovedByLessThanATenthOfTheDistanceFromTheAxis() {
        SplittableRandom random = new SplittableRandom(52);
        for (int i = 0; i < 60; i++) {
            HalfCarPoles poles = settled(any(random));
            for (int k = 0; k < poles.count; k++) {
                double x = poles.real[k];
                double y = poles.imaginary[k];
                if (poles.count < 4 || -x > 0.5 * y) {
                    continue;
                }
                // Back to the pole, so much the real part and so much the imaginary one, in units of the distance.
                assertThat(near(poles, k, 0.04, 0.04)).as("car %d", i).isTrue();
                assertThat(near(poles, k, -0.04, 0.04)).isTrue();
                assertThat(near(poles, k, 0.06, 0.06)).isFalse();
                assertThat(near(poles, k, -0.06, 0.06)).isFalse();
                assertThat(poles.real[k]).isEqualTo(x);
                assertThat(poles.imaginary[k]).isEqualTo(y);
            }
        }
    }

    private static boolean near(HalfCarPoles poles, int k, double re, double im) {
        double x = poles.real[k];
        double y = poles.imaginary[k];
        poles.real[k] = x * (1 + re);
        poles.imaginary[k] = y + im * x;
        boolean near = poles.improve(k);
        poles.real[k] = x;
        poles.imaginary[k] = y;
        return near;
    }

    @Test
    void whereTheEndsMoveByThemselvesThePolesAreThoseOfTheTwoQuarterCars() {
        SplittableRandom random = new SplittableRandom(53);
        for (int i = 0; i < 60; i++) {
            HalfCar one = any(random);
            HalfCar apart = new HalfCar(
                    one.mass(),
                    one.mass() * one.toFront() * one.toRear(),
                    one.toFront(),
                    one.toRear(),
                    one.front(),
                    one.rear());
            HalfCarPoles poles = settled(apart);
            Modes.Mode[] modes = {
                one.front().modes().body(), one.front().modes().hop(),
                one.rear().modes().body(), one.rear().modes().hop()
            };
            int k = 0;
            for (Modes.Mode mode : modes) {
                if (mode.dampingRatio() < 1) {
                    double w = mode.angularFrequency();
                    double zeta = mode.dampingRatio();
                    assertThat(poles.real[k]).as("car %d, pole %d", i, k).isCloseTo(-zeta * w, within(1e-6 * w));
                    assertThat(poles.imaginary[k]).isCloseTo(w * Math.sqrt(1 - zeta * zeta), within(1e-6 * w));
                    k++;
                }
            }
            assertThat(poles.count).isEqualTo(k);
        }
    }
}
