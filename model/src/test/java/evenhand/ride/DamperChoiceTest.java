package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DamperChoiceTest {
    private static final int CARS = 200;
    private static final double SPEED = 80 / 3.6;

    private static Ride ride(Car car) {
        return (Ride) Ride.of(car, RoadClass.C, SPEED);
    }

    @Test
    void noDamperOfTheSweepIsSofterThanTheSoftestOrSteadierThanTheSteadiest() {
        int inside = 0;
        for (long seed = 0; seed < CARS; seed++) {
            Ride ride = ride(RoadCars.damped(seed).settled());
            for (End end : End.values()) {
                AxleRide axle = ride.axle(end);
                List<DampingSweep.Point> fine = DampingSweep.of(axle, RoadClass.C, SPEED, 200);
                Optional<DampingSweep.Point> softest = DampingSweep.softest(axle, RoadClass.C, SPEED);
                Optional<DampingSweep.Point> steadiest = DampingSweep.steadiest(axle, RoadClass.C, SPEED);
                if (softest.isPresent() && steadiest.isPresent()) {
                    inside++;
                    assertThat(fine).as("car %d", seed).allSatisfy(point -> {
                        assertThat(point.weightedAcceleration())
                                .isGreaterThan(softest.get().weightedAcceleration() * (1 - 1e-6));
                        assertThat(point.tyreLoadVariation())
                                .isGreaterThan(steadiest.get().tyreLoadVariation() * (1 - 1e-6));
                    });
                    // Comfort asks for less damping than grip: the trade that the question is about.
                    assertThat(softest.get().dampingRate())
                            .isLessThan(steadiest.get().dampingRate());
                }
            }
        }
        assertThat(inside).isGreaterThan(CARS);
    }

    @Test
    void theDamperThatIsThereIsTheOnlyChoiceWhereNoSettingHasAName() {
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.damped(seed).settled();
            Ride ride = ride(car);
            for (End end : End.values()) {
                AxleRide axle = ride.axle(end);
                DamperChoice choice = DamperChoice.of(car, axle, RoadClass.C, SPEED);
                assertThat(choice.settings()).as("car %d", seed).hasSize(1);
                DamperChoice.Fitted only = choice.now().orElseThrow();
                assertThat(only.name()).isEmpty();
                assertThat(choice.forComfort()).contains(only);
                assertThat(choice.forGrip()).contains(only);
                assertThat(choice.firmer()).isEmpty();
                assertThat(choice.lessFirm()).isEmpty();
                assertThat(only.bodyRatio()).isCloseTo(axle.dampingRatio().orElseThrow(), within(1e-12));
                assertThat(only.bySpeed().mean()).isCloseTo(only.bodyRatio(), within(1e-12));
                assertThat(only.bodyRatio())
                        .isBetween(
                                Math.min(only.bySpeed().bump(), only.bySpeed().rebound()),
                                Math.max(only.bySpeed().bump(), only.bySpeed().rebound()));
            }
        }
    }
}
