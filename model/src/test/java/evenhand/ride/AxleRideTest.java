package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import org.junit.jupiter.api.Test;

/** The figures of one axle by the forces and masses that they stand for. */
class AxleRideTest {
    private static final double SPEED = 20;

    private static Ride ride(Car car) {
        return (Ride) Ride.of(car, RoadClass.B, SPEED);
    }

    @Test
    void oneWheelOverABumpFeelsTheForceThatItsSideOfTheAxleGains() {
        // A wheel goes up by h and the other one stays: the axle by h/2, and it rolls by h/t against the body. What
        // both
        // sides gain and what moment they give tell the one from the other.
        int asked = 0;
        for (long seed = 0; seed < 60; seed++) {
            Car car = RoadCars.damped(seed).settled();
            for (End end : End.values()) {
                Axle axle = car.axle(end);
                AxleSuspension suspension = AxleSuspension.of(car, end);
                double track = axle.track();
                double h = 1e-5;
                suspension.at(0, 0, axle.geometry().rollCentreHeight());
                double atRest = suspension.force;
                suspension.at(h / 2, h / track, axle.geometry().rollCentreHeight()); // the right one
                double moment = suspension.moment - axle.barRollStiffness() * h / track;
                double right = (suspension.force - atRest) / 2 + moment / track;
                WheelRates rates = WheelRates.of(car, end);
                assertThat(rates.oneWheel()).as("car %d", seed).isCloseTo(right / h, within(1e-6 * rates.oneWheel()));
                asked++;
            }
        }
        assertThat(asked).isEqualTo(120);
    }

    @Test
    void springAndTyreInSeriesGiveWhatBothGive() {
        for (long seed = 0; seed < 30; seed++) {
            Car car = RoadCars.damped(seed).settled();
            WheelRates rates = WheelRates.of(car, End.FRONT);
            AxleSuspension suspension = AxleSuspension.of(car, End.FRONT);
            double load = 100; // N on each wheel more
            double give = load / (suspension.half().slope(suspension.half().pieceAt(0)))
                    + load / car.front().tyre().verticalRate();
            assertThat(rates.ride()).as("car %d", seed).isCloseTo(load / give, within(1e-9 * rates.ride()));
        }
    }

    @Test
    void theMassesOfAWheelAreHalfOfWhatStandsOnTheAxleAndHalfOfWhatBelongsToIt() {
        for (long seed = 0; seed < 30; seed++) {
            Car car = RoadCars.damped(seed).settled();
            for (End end : End.values()) {
                AxleRide axle = ride(car).axle(end);
                double onAxle = car.axleLoad(end) / 9.80665;
                double unsprung = car.axle(end).unsprung().mass();
                assertThat(axle.undamped().unsprungMass()).isCloseTo(unsprung / 2, within(1e-12));
                assertThat(axle.undamped().sprungMass()).isCloseTo((onAxle - unsprung) / 2, within(1e-9));
                assertThat(axle.staticLoad()).isCloseTo(onAxle * 9.80665 / 2, within(1e-9));
                // The weight of that mass on that spring.
                assertThat(axle.staticDeflection() * axle.rates().heave())
                        .isCloseTo((onAxle - unsprung) * Weights.GRAVITY / 2, within(1e-6));
            }
        }
    }

    @Test
    void dampersInRollAreWorthTheSquareOfHowFarTheyMoveAgainstTheWheels() {
        // A live axle rolls by ψ: the wheels go up and down by t/2·ψ, the dampers by e·ψ.
        int inboard = 0;
        for (long seed = 0; seed < 200; seed++) {
            Car car = RoadCars.damped(seed).settled();
            AxleRide.Damped damped = ride(car).rear().damped().orElseThrow();
            if (!(car.rear() instanceof Axle.Live axle)) {
                assertThat(damped.rollShare()).as("car %d", seed).isCloseTo(1, within(1e-12));
                continue;
            }
            double lean = axle.damper().orElseThrow().lean().orElse(0);
            if (lean > 0) {
                continue;
            }
            double psi = 0.01;
            double wheels = axle.track() / 2 * psi;
            double dampers = axle.damper().get().base().orElseThrow() / 2 * psi;
            double share = dampers / wheels;
            assertThat(damped.rollShare()).as("car %d", seed).isCloseTo(share * share, within(1e-12));
            inboard++;
        }
        assertThat(inboard).isGreaterThan(20);
    }

    @Test
    void theTyresLoadVariesByItsDeflectionOnItsRateOverWhatItCarries() {
        Car car = RoadCars.damped(3).settled();
        AxleRide axle = ride(car).front();
        RoadResponse road = axle.damped().orElseThrow().road();
        double varies = road.tyreDeflection() * car.front().tyre().verticalRate(); // N, r.m.s.
        assertThat(axle.tyreLoadVariation().orElseThrow() * car.axleLoad(End.FRONT) / 2)
                .isCloseTo(varies, within(1e-9 * varies));
    }
}
