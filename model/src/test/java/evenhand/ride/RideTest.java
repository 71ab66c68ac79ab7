package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.junit.jupiter.api.Test;

class RideTest {
    private static final int CARS = 1500;
    private static final double SPEED = 80 / 3.6;

    private static Ride ride(Car car) {
        RideAnswer answer = Ride.of(car, RoadClass.B, SPEED);
        assertThat(answer).isInstanceOf(Ride.class);
        return (Ride) answer;
    }

    @Test
    void everyRandomCarHasAPlausibleRide() {
        int onStop = 0;
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.damped(seed).settled();
            Ride ride = ride(car);
            for (End end : End.values()) {
                AxleRide axle = ride.axle(end);
                if (axle.standing().onStop()) {
                    onStop++;
                    continue;
                }
                assertThat(axle.bodyFrequency()).as("car %d", seed).isBetween(0.8, 2.0);
                assertThat(axle.hopFrequency()).as("car %d", seed).isBetween(7.0, 20.0);
                assertThat(axle.dampingRatio().orElseThrow()).as("car %d", seed).isBetween(0.05, 0.8);
                assertThat(axle.comfort().orElseThrow()).as("car %d", seed).isBetween(0.1, 2.0);
                assertThat(axle.tyreLoadVariation().orElseThrow())
                        .as("car %d", seed)
                        .isBetween(0.02, 1.0);
            }
        }
        assertThat(onStop).isLessThan(CARS / 10);
    }

    @Test
    void theFrequencyIsWithinSixPerCentOfTheRuleOfStaticDeflection() {
        for (long seed = 0; seed < CARS; seed++) {
            AxleRide axle = ride(RoadCars.damped(seed).settled()).rear();
            if (!axle.standing().onStop()) {
                double rule = Math.sqrt(Weights.GRAVITY / axle.staticDeflection()) / (2 * Math.PI);
                // The tyre in series lowers it, by half its share of the give.
                double tyre = axle.rates().heave() / axle.rates().tyre();
                assertThat(axle.bodyFrequency() / rule).as("car %d", seed).isBetween(1 - 0.6 * tyre, 1.0);
            }
        }
    }

    @Test
    void rollRatesAreTheRollStiffnessOfTheHandSums() {
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.damped(seed).settled();
            if (HandSums.of(car, Weights.GRAVITY) instanceof HandSums.Found found) {
                WheelRates rates = WheelRates.of(car, End.REAR);
                double track = car.rear().track();
                double expected = found.sums().rear().suspensionRollStiffness();
                assertThat(rates.rollWithBar() * track * track / 2).isCloseTo(expected, within(1e-12 * expected));
                assertThat((rates.rollWithBar() - rates.roll()) * track * track / 2)
                        .isCloseTo(car.rear().barRollStiffness(), within(1e-9 * expected));
            }
        }
    }

    @Test
    void theMirrorImageRidesTheSame() {
        for (long seed = 0; seed < 300; seed++) {
            Car car = RoadCars.damped(seed).settled();
            Ride one = ride(car);
            Ride other = ride(car.mirrored());
            for (End end : End.values()) {
                assertThat(other.frequency(end)).isCloseTo(one.frequency(end), within(1e-12));
                assertThat(other.comfort(end).orElseThrow())
                        .isCloseTo(one.comfort(end).orElseThrow(), within(1e-12));
                assertThat(other.axle(end).standing().springLoad())
                        .isCloseTo(one.axle(end).standing().springLoad(), within(1e-9));
            }
        }
    }

    @Test
    void pitchAndBounceAreTheEigenvaluesOfTheHalfCar() {
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.damped(seed).settled();
            Ride ride = ride(car);
            Car.Sprung sprung = car.sprung();
            double a = sprung.behindFront();
            double b = car.wheelbase() - a;
            double kf = 2 * ride.front().rates().ride();
            double kr = 2 * ride.rear().rates().ride();
            PitchBounce found = ride.pitchBounce();
            double off = (kf * a - kr * b) / Math.sqrt(sprung.mass() * found.pitchInertia());
            double[] theirs = new EigenDecomposition(MatrixUtils.createRealMatrix(new double[][] {
                        {(kf + kr) / sprung.mass(), off}, {off, (kf * a * a + kr * b * b) / found.pitchInertia()}
                    }))
                    .getRealEigenvalues();
            double bounce = square(2 * Math.PI * found.bounceFrequency());
            double pitch = square(2 * Math.PI * found.pitchFrequency());
            double greater = Math.max(theirs[0], theirs[1]);
            assertThat(Math.max(bounce, pitch)).isCloseTo(greater, within(1e-10 * greater));
            assertThat(bounce + pitch).isCloseTo(theirs[0] + theirs[1], within(1e-10 * greater));
            // A mode turns about its centre: seen from there nothing of the springs' force is out of step.
            double k = Math.sqrt(found.pitchInertia() / sprung.mass());
            assertThat(Math.abs(found.pitchCentre())).isLessThanOrEqualTo(k * (1 + 1e-9));
            if (found.bounceCentre().isPresent()) {
                double x = found.bounceCentre().getAsDouble();
                assertThat(Math.abs(x)).isGreaterThanOrEqualTo(k * (1 - 1e-9));
                // Gravity of the mode: (α − λ)·x = β.
                double alpha = (kf + kr) / sprung.mass();
                double beta = (kf * a - kr * b) / sprung.mass();
                assertThat((alpha - bounce) * x).isCloseTo(beta, within(1e-6 * (alpha + Math.abs(beta))));
            }
        }
    }

    @Test
    void aLevelBodyBouncesLevel() {
        PitchBounce found = PitchBounce.of(1000, 1200, 1.2, 1.2, 40e3, 40e3);
        assertThat(found.bounceCentre()).isEmpty();
        assertThat(found.pitchCentre()).isZero();
        assertThat(found.bounceFrequency()).isCloseTo(Math.sqrt(80) / (2 * Math.PI), within(1e-12));
    }

    @Test
    void withoutDamperCurvesThereIsNoDampingAndNoAnswerOfTheRoad() {
        Ride ride = ride(RoadCars.any(3).settled());
        assertThat(ride.damping(End.FRONT)).isEmpty();
        assertThat(ride.comfort(End.REAR)).isEmpty();
        assertThat(ride.tyreLoadVariation(End.REAR)).isEmpty();
        assertThat(ride.frequency(End.FRONT)).isPositive();
    }

    @Test
    void aLiveAxleTrampsAndWheelsOfTheirOwnDoNot() {
        int live = 0;
        for (long seed = 0; seed < 400; seed++) {
            Car car = RoadCars.damped(seed).settled();
            AxleRide rear = ride(car).rear();
            if (car.rear() instanceof Axle.Live axle) {
                live++;
                AxleTramp tramp = rear.tramp().orElseThrow();
                assertThat(tramp.frequency()).isBetween(7.0, 25.0);
                assertThat(tramp.dampingRatio().orElseThrow()).isBetween(0.005, 0.8);
                assertThat(tramp.rollInertia()).isEqualTo(evenhand.car.InertiaEstimate.roll(axle));
            } else {
                assertThat(rear.tramp()).isEmpty();
            }
        }
        assertThat(live).isGreaterThan(100);
    }

    @Test
    void aRideCostsLittleGarbage() {
        Car car = RoadCars.damped(7).settled();
        com.sun.management.ThreadMXBean threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        QuarterCar quarterCar = ride(car).front().damped().orElseThrow().quarterCar();
        Transfer transfer = new Transfer(quarterCar);
        double sum = 0;
        for (int i = 0; i < 20_000; i++) {
            transfer.at(1 + i * 1e-3);
            sum += transfer.tyreDeflectionSquared * Weighting.WK.squared(1 + i * 1e-3);
        }
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < 20_000; i++) {
            transfer.at(1 + i * 1e-3);
            sum += transfer.tyreDeflectionSquared * Weighting.WK.squared(1 + i * 1e-3);
        }
        long bytes = threads.getCurrentThreadAllocatedBytes() - before;
        assertThat(sum).isPositive();
        assertThat(bytes).isLessThan(20_000); // less than a byte per frequency; none but the counting's own
    }

    @Test
    void theStandingCarCarriesItsWeight() {
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.damped(seed).settled();
            for (End end : End.values()) {
                Standing standing = Standing.of(car, end);
                Axle axle = car.axle(end);
                double sprung = car.axleLoad(end) / 2 - axle.unsprung().mass() * Weights.GRAVITY / 2;
                OptionalDouble stop = standing.stopLoadAtRest();
                double ratio = sprungAlongLine(axle);
                if (!standing.looseAtRest()) {
                    assertThat(standing.springLoad() * ratio + stop.orElse(0))
                            .as("car %d", seed)
                            .isCloseTo(sprung, within(1e-9 * sprung));
                }
                assertThat(standing.onStop()).isEqualTo(stop.orElse(0) > 0);
                assertThat(standing.looseInDroop().isPresent())
                        .isEqualTo(axle.stops().droop().isPresent());
            }
        }
    }

    @Test
    void springsThatLeanTooFarGiveWayAndTheRateThatIsLeftIsSaid() {
        // Lying at 60 deg over 0.12 m, along the line with a load of S/cos 60° each: k·cos² 60° − 2·S·sin² 60°/0.12 m.
        Car any = LiveAxleByHandTest.car();
        double load = (any.axleLoad(End.REAR) - any.rear().unsprung().mass() * Weights.GRAVITY) / 2;
        double left = 60e3 / 4 - 2 * load * 0.75 / 0.12;
        evenhand.car.Spring lying = new evenhand.car.Spring.Leaning(
                60e3,
                1.0,
                Math.toRadians(60),
                0.2,
                new evenhand.car.Spring.Lengths(
                        OptionalDouble.of(0.12), OptionalDouble.empty(), OptionalDouble.empty()));
        Car car = LiveAxleByHandTest.withRear(
                any, lying, any.rear().bar(), any.rear().damper());
        assertThat(left).isNegative();
        assertThat(Ride.of(car, RoadClass.B, SPEED))
                .isInstanceOfSatisfying(
                        RideAnswer.NoRide.class,
                        none -> assertThat(none.text())
                                .startsWith("at the rear the springs")
                                .contains(String.format(Locale.ROOT, "a wheel rate of %.1f N/mm", left / 1000)));
    }

    private static double sprungAlongLine(Axle axle) {
        if (axle.spring() instanceof evenhand.car.Spring.AtWheel wheel) {
            return wheel.motionRatio();
        }
        return axle.spring() instanceof evenhand.car.Spring.Leaning leaning ? Math.cos(leaning.lean()) : 1;
    }

    private static double square(double x) {
        return x * x;
    }
}
