package evenhand.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.geometry.LiveAxleMotion;
import evenhand.suspension.AxleSuspension;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is asked of springs on links one at a time, against the sums that the balances hold. */
class SpringsOnLinksTest {
    @Test
    void loadsAndRatesOfSingleSpringsAddUpToTheForceOfTheAxle() {
        int asked = 0;
        for (long seed = 0; seed < 25; seed++) {
            Optional<Car> car = LinkedCars.any(seed);
            if (car.isEmpty()) {
                continue;
            }
            for (End end : End.values()) {
                Axle axle = car.get().axle(end);
                AxleSuspension springs = AxleSuspension.of(car.get(), end);
                boolean binds = axle.motion().orElseThrow() instanceof LiveAxleMotion live
                        && live.made().binds();
                for (Side side : Side.values()) {
                    assertThat(springs.springLoad(0, 0, 0, side))
                            .as("%s, seed %d", end, seed)
                            .isCloseTo(springs.springLoadAtRest(side), within(1e-8));
                }
                springs.at(0, 0, 0);
                if (binds) {
                    continue;
                }
                asked++;
                assertThat(2 * springs.heaveRate())
                        .as("%s, seed %d", end, seed)
                        .isCloseTo(springs.forceByTravel, within(1e-6 * springs.forceByTravel));
                springs.at(0.011, 0.013, 0);
                double both = springs.springLoad(0.011, 0.013, 0, Side.LEFT)
                        + springs.springLoad(0.011, 0.013, 0, Side.RIGHT);
                assertThat(both).as("%s, seed %d", end, seed).isCloseTo(springs.force, within(1e-6 * springs.force));
                // The left spring is let out as the right side goes down.
                assertThat(springs.springLoad(0, 0.03, 0, Side.LEFT)).isLessThan(springs.springLoadAtRest(Side.LEFT));
            }
        }
        assertThat(asked).isGreaterThan(25);
    }
}
