package evenhand.handsums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import org.junit.jupiter.api.Test;

class HandSumsTest {
    @Test
    void loadTransfersCarryTheWholeOverturningMomentToRounding() {
        for (long seed = 0; seed < 5_000; seed++) {
            Car car = RoadCars.any(seed).settled();
            HandSums sums = ((HandSums.Found) HandSums.of(car, 0.6 * Weights.GRAVITY)).sums();
            double moment = sums.overturningMoment(car);
            assertThat(sums.momentOfLoadTransfers(car)).as("seed %d", seed).isCloseTo(moment, within(1e-12 * moment));
        }
    }

    @Test
    void theFourPartsOfAnAxlesMomentAddUpToItsLoadTransferTimesItsTrack() {
        for (long seed = 0; seed < 1_000; seed++) {
            Car car = RoadCars.any(seed).settled();
            HandSums sums = ((HandSums.Found) HandSums.of(car, 0.6 * Weights.GRAVITY)).sums();
            double front = sums.front().lateralLoadTransfer() * car.front().track();
            double rear = sums.rear().lateralLoadTransfer() * car.rear().track();
            assertThat(sums.front().moment()).as("seed %d", seed).isCloseTo(front, within(1e-12 * Math.abs(front)));
            assertThat(sums.rear().moment()).as("seed %d", seed).isCloseTo(rear, within(1e-12 * Math.abs(rear)));
            assertThat(sums.rear().leaningMoment()).isNotZero();
        }
    }

    @Test
    void everyFigureGrowsInProportionToTheLateralAcceleration() {
        for (long seed = 0; seed < 500; seed++) {
            Car car = RoadCars.any(seed).settled();
            HandSums one = ((HandSums.Found) HandSums.of(car, 2)).sums();
            HandSums two = ((HandSums.Found) HandSums.of(car, 4)).sums();
            assertThat(two.rollAngle()).isCloseTo(2 * one.rollAngle(), within(1e-12));
            assertThat(two.budget().gradient()).isCloseTo(one.budget().gradient(), within(1e-12));
            assertThat(two.frontLoadTransferShare()).isCloseTo(one.frontLoadTransferShare(), within(1e-12));
        }
    }
}
