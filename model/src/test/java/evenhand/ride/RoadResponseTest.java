package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RoadResponseTest {
    /** A road of the waviness of the classes, as wide as it is asked for. */
    private record Wide(double roughness, double lowest, double highest) implements Road {
        @Override
        public double density(double n) {
            return roughness * 0.01 / (n * n);
        }

        @Override
        public double[] corners() {
            return new double[0];
        }
    }

    @Test
    void onARoadWithoutEndsTheVariancesAreTheClosedFormsOfWhiteNoise() {
        SplittableRandom random = new SplittableRandom(21);
        for (int i = 0; i < 300; i++) {
            QuarterCar car = QuarterCarTest.any(random);
            double speed = 5 + 35 * random.nextDouble();
            RoadResponse found = RoadResponse.of(car, new Wide(256e-6, 1e-9, 1e9), speed);
            double r = 2 * Math.PI * Math.PI * 0.01 * 256e-6 * speed;
            double ms = car.sprungMass();
            double mu = car.unsprungMass();
            double ks = car.wheelRate();
            double kt = car.tyreRate();
            double c = car.dampingRate();
            double both = ms + mu;
            double acceleration = r / 2 * (both * ks * ks / (c * ms * ms) + kt * c / (ms * ms));
            double travel = r * both / (2 * c);
            double tyre = r
                    / 2
                    * (both * both * both * ks * ks / (c * kt * kt * ms * ms)
                            - 2 * both * mu * ks / (c * kt * ms)
                            + mu / c
                            + c * both * both / (kt * ms * ms));
            variance(found.bodyAcceleration(), acceleration);
            variance(found.suspensionTravel(), travel);
            variance(found.tyreDeflection(), tyre);
        }
    }

    private static void variance(double own, double expected) {
        assertThat(own * own).isCloseTo(expected, within(2e-8 * expected));
    }

    @Test
    void theBandOfTheClassesIsMetByAFarFinerGrid() {
        SplittableRandom random = new SplittableRandom(22);
        for (int i = 0; i < 30; i++) {
            QuarterCar car = QuarterCarTest.any(random);
            double speed = 5 + 35 * random.nextDouble();
            RoadResponse found = RoadResponse.of(car, RoadClass.C, speed);
            double[] sums = new double[4];
            Transfer transfer = new Transfer(car);
            int parts = 400_000;
            double low = Math.log(RoadClass.C.lowest() * speed);
            double step = (Math.log(RoadClass.C.highest() * speed) - low) / parts;
            for (int k = 0; k < parts; k++) {
                double f = Math.exp(low + (k + 0.5) * step);
                double share = step * f * RoadClass.C.density(f / speed) / speed;
                transfer.at(f);
                sums[0] += share * transfer.bodyAccelerationSquared;
                sums[1] += share * transfer.bodyAccelerationSquared * Weighting.WK.squared(f);
                sums[2] += share * transfer.suspensionTravelSquared;
                sums[3] += share * transfer.tyreDeflectionSquared;
            }
            double[] own = {
                found.bodyAcceleration(), found.weightedAcceleration(), found.suspensionTravel(), found.tyreDeflection()
            };
            for (int j = 0; j < own.length; j++) {
                double theirs = Math.sqrt(sums[j]);
                assertThat(own[j]).as("car %d, answer %d", i, j).isCloseTo(theirs, within(1e-8 * theirs));
            }
        }
    }

    @Test
    void aRougherClassIsTwiceAsRoughInEveryAnswer() {
        QuarterCar car = new QuarterCar(300, 40, 20e3, 200e3, 1500);
        RoadResponse b = RoadResponse.of(car, RoadClass.B, 22);
        RoadResponse c = RoadResponse.of(car, RoadClass.C, 22);
        assertThat(c.weightedAcceleration() / b.weightedAcceleration()).isCloseTo(2, within(1e-12));
        assertThat(c.tyreDeflection() / b.tyreDeflection()).isCloseTo(2, within(1e-12));
    }

    @Test
    void aCarWithoutDamperOrSpeedIsRefused() {
        QuarterCar car = new QuarterCar(300, 40, 20e3, 200e3, 0);
        assertThatThrownBy(() -> RoadResponse.of(car, RoadClass.B, 22)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RoadResponse.of(car.damped(1000), RoadClass.B, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void thereIsABestDamperForComfortAndAFirmerOneForGrip() {
        QuarterCar car = new QuarterCar(317.5, 45.4, 22000, 192000, 1);
        Road wide = new Wide(256e-6, 1e-9, 1e9);
        double comfort = best(car, wide, true);
        double grip = best(car, wide, false);
        assertThat(comfort).isCloseTo(956.4572216, within(15.0));
        assertThat(grip).isCloseTo(2416.472766, within(30.0));
    }

    private static double best(QuarterCar car, Road road, boolean acceleration) {
        double best = Double.POSITIVE_INFINITY;
        double at = 0;
        for (double c = 500; c < 4000; c *= 1.01) {
            RoadResponse response = RoadResponse.of(car.damped(c), road, 20);
            double value = acceleration ? response.bodyAcceleration() : response.tyreDeflection();
            if (value < best) {
                best = value;
                at = c;
            }
        }
        return at;
    }

    /** A road that knows no waves beside its own, and does not want to be asked for them. */
    private record Narrow(double lowest, double highest) implements Road {
        @Override
        public double density(double n) {
            assertThat(n).isBetween(lowest * (1 - 1e-9), highest * (1 + 1e-9));
            return 1e-6 / (n * n);
        }

        @Override
        public double[] corners() {
            return new double[] {lowest / 3, lowest * 1.4, highest * 3};
        }
    }

    @Test
    void whereverTheModesLieOnlyTheRoadsOwnWavesShake() {
        // Bands that end beside, upon and between the modes of 1.2 and 11 Hz, and one that lies far off.
        Transfer transfer = new Transfer(CAR);
        double speed = 20;
        for (double low : new double[] {0.3, 0.9, 1.1, 1.3, 2, 5, 9, 10.5, 12, 20}) {
            for (double ratio : new double[] {1.3, 2, 8}) {
                RoadResponse found = RoadResponse.of(CAR, new Narrow(low / speed, ratio * low / speed), speed);
                double sum = 0;
                int parts = 20_000;
                double step = Math.log(ratio) / parts;
                for (int k = 0; k < parts; k++) {
                    double f = low * Math.exp((k + 0.5) * step);
                    transfer.at(f);
                    sum += step * f * 1e-6 / (f / speed * f / speed) / speed * transfer.bodyAccelerationSquared;
                }
                assertThat(found.bodyAcceleration())
                        .as("%s to %s Hz", low, low * ratio)
                        .isCloseTo(Math.sqrt(sum), within(1e-7 * Math.sqrt(sum)));
            }
        }
    }

    @Test
    void aResonanceJustBesideTheRoadsWavesIsStillMet() {
        // 1.254 Hz with a ratio of 0.002, and waves from 1.258 Hz on: the response falls from its peak within a few
        // mHz.
        QuarterCar car = CAR.damped(10);
        Transfer transfer = new Transfer(car);
        double speed = 20;
        double low = 1.258;
        RoadResponse found = RoadResponse.of(car, new Narrow(low / speed, 2 * low / speed), speed);
        double sum = 0;
        int parts = 100_000;
        double step = Math.log(2) / parts;
        for (int k = 0; k < parts; k++) {
            double f = low * Math.exp((k + 0.5) * step);
            transfer.at(f);
            sum += step * f * 1e-6 / (f / speed * f / speed) / speed * transfer.bodyAccelerationSquared;
        }
        assertThat(found.bodyAcceleration()).isCloseTo(Math.sqrt(sum), within(1e-5 * Math.sqrt(sum)));
    }

    private static final QuarterCar CAR = new QuarterCar(317.5, 45.4, 22000, 192000, 1200);

    @Test
    void aClassEndsAtTheUpperLimitThatTheStandardGives() {
        // ISO 8608:2016: in 1e-6 m³ at 0.1 cycle/m A to 32, B to 128, C to 512 and so on, four times as much for each.
        double limit = 32e-6;
        for (RoadClass road : RoadClass.values()) {
            assertThat(road.upperLimit()).as("class %s", road).isCloseTo(limit, within(1e-12));
            limit *= 4;
        }
    }
}
