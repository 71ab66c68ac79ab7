package evenhand.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.bump.BodyOverHump;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.ride.Ride;
import evenhand.ride.RoadClass;
import evenhand.suspension.AxleSuspension;
import evenhand.suspension.WheelDamper;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlatRideTest {
    private static BodyOverHump.Carried carried(Car car, End end) {
        double spring = AxleSuspension.of(car, end)
                .half()
                .slope(AxleSuspension.of(car, end).half().pieceAt(0));
        double tyre = car.axle(end).tyre().verticalRate();
        return new BodyOverHump.Carried(
                1 / (1 / spring + 1 / tyre),
                WheelDamper.of(car, end).orElseThrow().linearRate(0.1));
    }

    @Test
    void springAndTyreInSeriesAndTheDamperCarryTheBody() {
        int asked = 0;
        for (long seed = 0; seed < 40; seed++) {
            Car car = RoadCars.damped(seed).settled();
            if (!(Ride.of(car, RoadClass.B, 20) instanceof Ride ride)
                    || ride.front().standing().onStop()
                    || ride.rear().standing().onStop()) {
                continue;
            }
            List<BodyOverHump.Passage> found = FlatRide.over(car, ride);
            assertThat(found).hasSize(FlatRide.SPEEDS.size());
            BodyOverHump.Passage expected = BodyOverHump.over(
                            car, carried(car, End.FRONT), carried(car, End.REAR), 0.02, 1, List.of(80 / 3.6))
                    .get(0);
            BodyOverHump.Passage middle = found.get(5);
            assertThat(middle.speed()).isCloseTo(80 / 3.6, within(1e-9));
            assertThat(middle.peakAcceleration())
                    .as("car %d", seed)
                    .isCloseTo(expected.peakAcceleration(), within(1e-5 * expected.peakAcceleration()));
            assertThat(middle.bounceAfter()).isCloseTo(expected.bounceAfter(), within(1e-3 * expected.bounceAfter()));
            asked++;
        }
        assertThat(asked).isGreaterThan(20);
    }
}
