package evenhand.bump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.geometry.LinkMotion;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.WheelPairMotion;
import evenhand.suspension.AxleSuspension;
import evenhand.suspension.DamperLines;
import evenhand.suspension.ForceLines;
import evenhand.suspension.WheelDamper;
import evenhand.turn.LinkedCars;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is followed in time on links known by points is the springs, stops and dampers of the turn. */
class OnLinksTest {
    private static final double ROLL = 0.02;
    private static final long CARS = 30;

    private interface AtEnd {
        void see(Car car, End end, long seed);
    }

    private static void everyAxle(AtEnd see) {
        int seen = 0;
        for (long seed = 0; seed < CARS; seed++) {
            Optional<Car> car = LinkedCars.damped(seed);
            if (car.isPresent()) {
                see.see(car.get(), End.FRONT, seed);
                see.see(car.get(), End.REAR, seed);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(15);
    }

    @Test
    void bothSidesTogetherCarryWhatTheAxleDoesInTheTurn() {
        everyAxle((car, end, seed) -> {
            AxleSuspension axle = AxleSuspension.of(car, end);
            ForceLines left = axle.side(Side.LEFT, ROLL, 0);
            ForceLines right = axle.side(Side.RIGHT, ROLL, 0);
            ForceLines half = axle.half();
            double metal = -axle.metalDeflection(0, ROLL, Side.RIGHT);
            for (double travel = -0.09; travel < Math.min(0.06, metal); travel += 0.011) {
                axle.at(travel, ROLL, 0);
                double close = 1e-9 * (1000 + Math.abs(axle.force));
                assertThat(left.force(travel) + right.force(travel))
                        .as("%s, seed %d, %.3f m", end, seed, travel)
                        .isCloseTo(axle.force, within(close));
                axle.at(travel, 0, 0);
                assertThat(2 * half.force(travel))
                        .as("%s, seed %d, %.3f m", end, seed, travel)
                        .isCloseTo(axle.force, within(close));
            }
        });
    }

    @Test
    void slopeAndWorkBelongToTheForceAndCornersAreWhereItBends() {
        int[] loose = {0};
        everyAxle((car, end, seed) -> {
            ForceLines lines = AxleSuspension.of(car, end).side(Side.LEFT, ROLL, 0);
            for (int piece = 0; piece < lines.pieces(); piece++) {
                double low = Math.max(lines.low(piece), -0.06);
                double high = Math.min(lines.high(piece), 0.06);
                LinkMotion motion = car.axle(end).motion().orElseThrow();
                if (high - low < 1e-3
                        || !motion.isFollowed(low - 0.02, ROLL)
                        || !motion.isFollowed(high + 0.02, ROLL)) {
                    continue;
                }
                double at = (low + high) / 2;
                double h = Math.min(1e-4, (high - low) / 4);
                assertThat(lines.slope(piece, at))
                        .as("%s, seed %d", end, seed)
                        .isCloseTo((lines.force(at + h) - lines.force(at - h)) / (2 * h), within(1e-4 * 30_000));
                double simpson = 0;
                double part = (high - low) / 40;
                for (int i = 0; i < 20; i++) {
                    double from = low + 2 * i * part;
                    double ends = lines.force(from) + lines.force(from + 2 * part);
                    simpson += (ends + 4 * lines.force(from + part)) / 3 * part;
                }
                assertThat(lines.work(low, high))
                        .as("%s, seed %d", end, seed)
                        .isCloseTo(simpson, within(1e-6 * Math.abs(simpson) + 1e-5));
                loose[0] += lines.low(piece) < -0.02
                                && lines.force(lines.low(piece) - 1e-4) == 0
                                && lines.force(lines.low(piece) + 1e-4) > 0
                        ? 1
                        : 0;
            }
        });
        assertThat(loose[0]).isGreaterThan(3);
    }

    @Test
    void aDamperPushesByTheLeverageThatItHasThere() {
        int[] guided = {0};
        everyAxle((car, end, seed) -> {
            Axle axle = car.axle(end);
            Optional<WheelDamper> atRest = WheelDamper.of(car, end);
            if (!axle.motion().orElseThrow().guidesDampers() || atRest.isEmpty()) {
                return;
            }
            guided[0]++;
            for (Side side : Side.values()) {
                DamperLines lines = WheelDamper.side(car, end, side, ROLL);
                for (double travel = -0.04; travel < 0.05; travel += 0.017) {
                    double ratio = (length(axle.motion().get(), side, travel - 1e-4)
                                    - length(axle.motion().get(), side, travel + 1e-4))
                            / 2e-4;
                    for (double speed : new double[] {-0.7, -0.03, 0.04, 0.5}) {
                        double felt = force(lines, travel, speed);
                        double rest = atRest.get().motionRatio();
                        atRest.get().at(speed * ratio / rest);
                        assertThat(felt)
                                .as("%s, seed %d, %s", end, seed, side)
                                .isCloseTo(atRest.get().force * ratio / rest, within(1e-6 * Math.abs(felt) + 1e-6));
                        double later = 1e-6;
                        double pull = 3;
                        int piece = lines.pieceAt(lines.over(travel, speed));
                        double after = lines.force(piece, travel + speed * later, speed + pull * later);
                        double before = lines.force(piece, travel - speed * later, speed - pull * later);
                        double rate = lines.forceRate(piece, travel, speed, pull);
                        assertThat(rate)
                                .as("%s, seed %d, %s", end, seed, side)
                                .isCloseTo((after - before) / (2 * later), within(1e-5 * Math.abs(rate) + 1e-2));
                    }
                }
            }
        });
        assertThat(guided[0]).isGreaterThan(15);
    }

    private static double force(DamperLines lines, double travel, double speed) {
        return lines.force(lines.pieceAt(lines.over(travel, speed)), travel, speed);
    }

    private static double length(LinkMotion motion, Side side, double travel) {
        if (motion instanceof LiveAxleMotion live) {
            LiveAxleMotion.Reading axle = live.reading();
            axle.at(travel, ROLL);
            axle.read(LiveAxleMotion.LEFT_DAMPER + side.index());
            return axle.value();
        }
        WheelPairMotion wheels = (WheelPairMotion) motion;
        WheelPairMotion.Reading wheel = wheels.reading(side == Side.LEFT);
        wheel.at(travel - side.sign() * wheels.made().track() / 2 * ROLL);
        wheel.read(WheelPairMotion.DAMPER);
        return wheel.value();
    }
}
