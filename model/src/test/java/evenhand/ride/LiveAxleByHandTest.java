package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.InertiaEstimate;
import evenhand.car.RoadCars;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import evenhand.suspension.WheelDamper;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Tramp and the length of springs: numbers by hand, and by another route. */
class LiveAxleByHandTest {
    private static final double SPRING = 30e3;
    private static final double BASE = 1.0;
    private static final double BAR = 9_000; // N·m/rad
    private static final double RATIO = 0.9;

    /** The first random car whose rear axle is a live one. */
    static Car car() {
        for (long seed = 0; ; seed++) {
            Car car = RoadCars.damped(seed).settled();
            if (car.rear() instanceof Axle.Live) {
                return car;
            }
        }
    }

    static Car withRear(Car car, Spring spring, Optional<Bar> bar, Optional<Damper> damper) {
        return withRear(car, spring, bar, damper, Stops.NONE);
    }

    private static Car withRear(Car car, Spring spring, Optional<Bar> bar, Optional<Damper> damper, Stops stops) {
        Axle.Live rear = (Axle.Live) car.rear();
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                car.rollingResistance(),
                car.front(),
                new Axle.Live(
                        rear.track(),
                        rear.unsprung(),
                        rear.lateralLocator(),
                        spring,
                        bar,
                        stops,
                        damper,
                        0,
                        rear.alignment(),
                        rear.tyre(),
                        OptionalDouble.of(45)),
                car.drive(),
                car.pitchInertia(),
                car.seat());
    }

    private static Spring upright(double ratio, Spring.Lengths lengths) {
        return new Spring.Upright(SPRING, BASE, ratio, lengths);
    }

    private static AxleTramp tramp(Car car) {
        return ((Ride) Ride.of(car, RoadClass.B, 20)).rear().tramp().orElseThrow();
    }

    @Test
    void tyresSpringsAndBarHoldATrampingAxleInParallel() {
        Car car = withRear(
                car(), upright(1, Spring.Lengths.UNKNOWN), Optional.of(new Bar.Measured(BAR)), Optional.empty());
        double track = car.rear().track();
        // Two springs half a metre from the middle, two tyres half a track from it, and the bar.
        double stiffness = 2 * SPRING * 0.25 + BAR + 2 * car.rear().tyre().verticalRate() * track * track / 4;
        AxleTramp found = tramp(car);
        assertThat(found.frequency()).isCloseTo(Math.sqrt(stiffness / 45) / (2 * Math.PI), within(1e-9));
        assertThat(found.dampingRatio()).isEmpty();
        assertThat(found.rollInertia()).isEqualTo(45);
    }

    @Test
    void anyTrampIsThatOfTheMomentsOfItsSpringsTurnedALittle() {
        int live = 0;
        for (long seed = 0; seed < 300; seed++) {
            Car car = RoadCars.damped(seed).settled();
            if (!(car.rear() instanceof Axle.Live axle)) {
                continue;
            }
            live++;
            AxleSuspension suspension = AxleSuspension.of(car, End.REAR);
            double little = 1e-7;
            suspension.at(0, little, axle.geometry().rollCentreHeight());
            double right = suspension.moment;
            suspension.at(0, -little, axle.geometry().rollCentreHeight());
            double ofSprings = (right - suspension.moment) / (2 * little);
            double half = axle.track() / 2;
            double tyre = axle.tyre().verticalRate();
            double ofTyres = (tyre * half) * half - (-tyre * half) * half;
            double inertia = InertiaEstimate.roll(axle);
            double angular = Math.sqrt((ofSprings + ofTyres) / inertia);
            AxleTramp found = tramp(car);
            assertThat(found.frequency()).as("car %d", seed).isCloseTo(angular / (2 * Math.PI), within(1e-4 * angular));
            // An undamped swing loses ½·C·(ω·ψ)²·T of its energy ½·I·(ω·ψ)² in a cycle: 4π·ζ of it.
            WheelDamper damper = WheelDamper.of(car, End.REAR).orElseThrow();
            double arm = damper.rollArm(axle.geometry().rollCentreHeight());
            double force = damper.linearRate(AxleRide.USUAL_DAMPER_SPEED) * arm * angular; // at ψ = 1
            double lost = 2 * force * (arm * angular) / 2 * (2 * Math.PI / angular); // mean of cos² is a half, of both
            double energy = inertia * angular * angular / 2;
            assertThat(found.dampingRatio().orElseThrow())
                    .as("car %d", seed)
                    .isCloseTo(lost / energy / (4 * Math.PI), within(1e-5));
        }
        assertThat(live).isGreaterThan(100);
    }

    @Test
    void aSpringThatIsLongerThanNeededWantsItsPerchToGiveWayByThat() {
        double installed = 0.300;
        Car plain = car();
        double carried = (plain.axleLoad(End.REAR) - plain.rear().unsprung().mass() * Weights.GRAVITY) / 2;
        double alongLine = carried / RATIO;
        double needed = installed + alongLine / SPRING;
        for (double longer : new double[] {-0.012, 0, 0.017}) {
            Standing found = Standing.of(sprung(plain, installed, needed + longer), End.REAR);
            assertThat(found.springLoad()).isCloseTo(alongLine, within(1e-6));
            assertThat(found.requiredFreeLength().orElseThrow()).isCloseTo(needed, within(1e-9));
            double move = found.perchMove().orElseThrow();
            assertThat(move).isCloseTo(longer, within(1e-9));
            // With its perch gone away by that, the spring has just its room.
            Standing moved = Standing.of(sprung(plain, installed + move, needed + longer), End.REAR);
            assertThat(moved.perchMove().orElseThrow()).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void coilsHaveLeftWhatTheSpringIsLongerThanSolidWhenMetalMeets() {
        // 300 mm long at rest, nine tenths of 70 mm shorter at metal, 180 mm solid: 57 mm; and 7 mm too long for its
        // room.
        assertThat(atMetal(0.180)).isCloseTo(0.057, within(1e-12));
        assertThat(atMetal(0.244)).isCloseTo(-0.007, within(1e-12));
    }

    private static double atMetal(double solid) {
        Spring.Lengths lengths =
                new Spring.Lengths(OptionalDouble.of(0.300), OptionalDouble.empty(), OptionalDouble.of(solid));
        Stops stops = new Stops(
                Optional.empty(), Optional.empty(), Optional.of(new Stops.Metal(0.070, OptionalDouble.empty())));
        Car car = withRear(car(), upright(RATIO, lengths), Optional.empty(), Optional.empty(), stops);
        return Standing.of(car, End.REAR).coilBindMargin().orElseThrow();
    }

    @Test
    void whatIsLeftOnASpringInDroopIsItsLoadLessItsRateTimesHowFarItGrows() {
        Car plain = car();
        double carried = (plain.axleLoad(End.REAR) - plain.rear().unsprung().mass() * Weights.GRAVITY) / 2;
        for (double droop : new double[] {0.04, 0.09, 0.2}) {
            Stops stops = new Stops(
                    Optional.empty(),
                    Optional.of(new Stops.Droop(droop, 5e5, OptionalDouble.empty())),
                    Optional.empty());
            Car car =
                    withRear(plain, upright(RATIO, Spring.Lengths.UNKNOWN), Optional.empty(), Optional.empty(), stops);
            Standing found = Standing.of(car, End.REAR);
            double left = carried / RATIO - SPRING * (RATIO * droop); // the spring grows by nine tenths of the droop
            assertThat(found.preloadInDroop().orElseThrow()).as("%s m", droop).isCloseTo(left, within(1e-6));
            assertThat(found.looseInDroop()).contains(left < 0);
        }
    }

    private static Car sprung(Car car, double installed, double free) {
        Spring.Lengths lengths =
                new Spring.Lengths(OptionalDouble.of(installed), OptionalDouble.of(free), OptionalDouble.empty());
        return withRear(
                car, upright(RATIO, lengths), Optional.empty(), car.rear().damper());
    }
}
