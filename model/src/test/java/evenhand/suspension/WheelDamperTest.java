package evenhand.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.RoadCars;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class WheelDamperTest {
    private static final Damper.Forces FORCES =
            new Damper.Forces(curve(0, 0, 0.1, 250, 0.3, 400), curve(0, 0, 0.05, 300, 0.1, 500, 0.6, 900));

    private static Curve curve(double... numbers) {
        List<Curve.Point> points = new java.util.ArrayList<>();
        for (int i = 0; i < numbers.length; i += 2) {
            points.add(new Curve.Point(numbers[i], numbers[i + 1]));
        }
        return new Curve(points);
    }

    private static Damper damper(OptionalDouble ratio, OptionalDouble lean, OptionalDouble base) {
        return new Damper(ratio, lean, base, Optional.of(FORCES), List.of(), Optional.empty());
    }

    private static Axle axle(boolean live) {
        Car car = LongStream.range(0, 1000)
                .mapToObj(RoadCars::any)
                .filter(one -> (one.rear() instanceof Axle.Live) == live)
                .findFirst()
                .orElseThrow();
        return car.rear();
    }

    @Test
    void theMotionRatioCountsTwiceOnceForSpeedAndOnceForForce() {
        WheelDamper damper = WheelDamper.of(
                axle(false), damper(OptionalDouble.of(0.5), OptionalDouble.empty(), OptionalDouble.empty()), FORCES);
        damper.at(0.4); // 0.2 m/s at the damper: 325 N
        assertThat(damper.force).isCloseTo(162.5, within(1e-12));
        assertThat(damper.rate).isCloseTo(0.25 * 750, within(1e-12));
        assertThat(damper.piece).isEqualTo(2);
        damper.at(-0.15); // 0.075 m/s in rebound: 400 N
        assertThat(damper.force).isCloseTo(-200, within(1e-12));
        assertThat(damper.rate).isCloseTo(0.25 * 4000, within(1e-12));
        assertThat(damper.piece).isEqualTo(-2);
    }

    @Test
    void theLastSlopeGoesOn() {
        WheelDamper damper = WheelDamper.of(
                axle(false), damper(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()), FORCES);
        damper.at(1.3);
        assertThat(damper.force).isCloseTo(400 + 750, within(1e-9));
        damper.at(-1.6);
        assertThat(damper.force).isCloseTo(-(900 + 800), within(1e-9));
    }

    @Test
    void theLinearRateIsTheMeanOfBumpAndReboundAtTheDamper() {
        WheelDamper damper = WheelDamper.of(
                axle(false), damper(OptionalDouble.of(0.8), OptionalDouble.empty(), OptionalDouble.empty()), FORCES);
        assertThat(damper.linearRate(0.1)).isCloseTo(0.64 * 3750, within(1e-9));
        assertThat(damper.bumpRate(0.1)).isCloseTo(0.64 * 2500, within(1e-9));
        assertThat(damper.reboundRate(0.05)).isCloseTo(0.64 * 6000, within(1e-9));
    }

    @Test
    void aLeaningDamperOfALiveAxleWorksByTheCosineAndAtAShorterArm() {
        Axle live = axle(true);
        double lean = Math.toRadians(30);
        WheelDamper damper = WheelDamper.of(
                live, damper(OptionalDouble.empty(), OptionalDouble.of(lean), OptionalDouble.of(0.9)), FORCES);
        assertThat(damper.motionRatio()).isCloseTo(Math.cos(lean), within(1e-15));
        assertThat(damper.rollArm(0.3) - damper.rollArm(0.2)).isCloseTo(-0.1 * Math.tan(lean), within(1e-15));
        WheelDamper upright = WheelDamper.of(
                live, damper(OptionalDouble.of(0.7), OptionalDouble.empty(), OptionalDouble.of(0.9)), FORCES);
        assertThat(upright.motionRatio()).isEqualTo(0.7);
        assertThat(upright.rollArm(0.3)).isEqualTo(0.45);
    }

    @Test
    void forceNeverFeedsTheMotionAndItsSlopeIsTheCentralDifference() {
        WheelDamper damper = WheelDamper.of(
                axle(false), damper(OptionalDouble.of(0.6), OptionalDouble.empty(), OptionalDouble.empty()), FORCES);
        for (double speed = -2; speed < 2; speed += 0.013) {
            damper.at(speed + 1e-6);
            double above = damper.force;
            int pieceAbove = damper.piece;
            damper.at(speed - 1e-6);
            double below = damper.force;
            int pieceBelow = damper.piece;
            damper.at(speed);
            assertThat(damper.force * speed).isGreaterThanOrEqualTo(0);
            if (pieceAbove == pieceBelow) {
                assertThat(damper.rate).isCloseTo((above - below) / 2e-6, within(1e-5));
            }
        }
    }

    @Test
    void aDamperWithoutCurvesIsNone() {
        assertThat(WheelDamper.of(RoadCars.any(1), End.FRONT)).isEmpty();
    }
}
