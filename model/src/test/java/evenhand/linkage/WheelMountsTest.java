package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Side;
import evenhand.car.links.BarArm;
import evenhand.car.links.CarriedOn;
import evenhand.car.links.Dampers;
import evenhand.car.links.Dampers.Bolt;
import evenhand.car.links.Dampers.Eye;
import evenhand.car.links.Mounts;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.SpringLine;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Springs, dampers and bars on a part that is moved by hand. */
class WheelMountsTest {
    private static final double LEAN = Math.toRadians(15);
    private static final Point BOTTOM = new Point(0, 0.5, 0.2);
    private static final Point TOP = new Point(0, 0.5 - 0.4 * Math.sin(LEAN), 0.2 + 0.4 * Math.cos(LEAN));

    private static WheelMounts damper(Part part, Side side, Eye top, Eye bottom) {
        WheelMounts mounts = new WheelMounts(
                new Mounts(
                        Optional.of(new SpringLine.AroundDamper(0.08)),
                        Optional.of(new Dampers(
                                new Dampers.BetweenEyes(Pair.alike(new Dampers.Ends(top, bottom, CarriedOn.AXLE))),
                                OptionalDouble.empty(),
                                OptionalDouble.empty())),
                        Optional.empty(),
                        List.of()),
                side,
                on -> part,
                Optional.empty());
        mounts.read();
        return mounts;
    }

    private static double eye(Bolt bolt, double tilt) {
        Part part = new Part(0, 0, 0.3);
        Eye eye = new Eye(TOP, bolt, tilt, 0);
        double left = damper(part, Side.LEFT, eye, Eye.across(BOTTOM)).upperEye();
        assertThat(damper(part, Side.RIGHT, eye, Eye.across(BOTTOM)).upperEye()).isCloseTo(left, within(1e-15));
        return left;
    }

    @Test
    void aDamperThatLeansInwardsTwistsItsEyesUnlessTheBracketTiltsWithIt() {
        assertThat(eye(Bolt.ACROSS, 0)).isCloseTo(LEAN, within(1e-12));
        assertThat(eye(Bolt.ACROSS, LEAN)).isCloseTo(0, within(1e-12));
        assertThat(eye(Bolt.ACROSS, -LEAN)).isCloseTo(2 * LEAN, within(1e-12));
        assertThat(eye(Bolt.ALONG, 0.2)).isCloseTo(Math.asin(Math.sin(0.2) * Math.cos(LEAN)), within(1e-12));
        assertThat(eye(Bolt.UPRIGHT, 0)).isCloseTo(LEAN, within(1e-12));
        assertThat(eye(Bolt.UPRIGHT, LEAN)).isCloseTo(0, within(1e-7));
        assertThat(eye(Bolt.UPRIGHT, -LEAN)).isCloseTo(2 * LEAN, within(1e-12));
    }

    @Test
    void theLowerBoltGoesWithItsPartAndTheUpperOneStays() {
        Part part = new Part(0, 0.5, 0.2);
        WheelMounts mounts = damper(part, Side.LEFT, Eye.across(TOP), Eye.across(BOTTOM));
        part.move(0, 0, 0, 0.1, 0, 0); // the left side goes up, about the lower eye
        mounts.read();
        assertThat(mounts.upperEye()).isCloseTo(LEAN, within(1e-12));
        assertThat(mounts.lowerEye()).isCloseTo(LEAN - 0.1, within(1e-12));
    }

    @Test
    void shimsMoveAnEyeAlongItsTiltedBolt() {
        Part part = new Part(0, 0, 0.3);
        double shim = 0.003;
        double plain =
                damper(part, Side.LEFT, Eye.across(TOP), Eye.across(BOTTOM)).damperLength();
        for (Side side : Side.values()) {
            double outwards = damper(part, side, Eye.across(TOP), new Eye(BOTTOM, Bolt.ACROSS, 0.1, shim))
                    .damperLength();
            double out = 0.5 + shim * Math.cos(0.1) - TOP.out();
            double up = 0.2 + shim * Math.sin(0.1) - TOP.up();
            assertThat(outwards).isCloseTo(Math.hypot(out, up), within(1e-12));
            double forwards = damper(part, side, Eye.across(TOP), new Eye(BOTTOM, Bolt.ALONG, 0, shim))
                    .damperLength();
            assertThat(forwards).isCloseTo(Math.hypot(plain, shim), within(1e-12));
            double higher = damper(part, side, Eye.across(TOP), new Eye(BOTTOM, Bolt.UPRIGHT, 0, shim))
                    .damperLength();
            assertThat(higher).isCloseTo(Math.hypot(0.4 * Math.sin(LEAN), 0.4 * Math.cos(LEAN) - shim), within(1e-12));
        }
        assertThat(damper(part, Side.LEFT, Eye.across(TOP), Eye.across(BOTTOM)).springLength())
                .isCloseTo(plain - 0.08, within(1e-12));
    }

    /** A trailing arm whose end goes up turns right-handed about y: positive; its end travels with an upright drop link. */
    @Test
    void theEndOfATrailingArmGoesUpByAPositiveTurn() {
        Part part = new Part(0, 0, 0.3);
        BarArm arm =
                new BarArm(new Point(0.25, 0.5, 0.3), new Point(0, 0.5, 0.3), new Point(0, 0.5, 0.2), CarriedOn.AXLE);
        WheelMounts mounts = new WheelMounts(
                new Mounts(Optional.empty(), Optional.empty(), Optional.of(Pair.alike(arm)), List.of()),
                Side.RIGHT,
                on -> part,
                Optional.empty());
        part.twist(0, 0, 0, 1, 0, 0, 0);
        mounts.read();
        assertThat(mounts.hasBar()).isTrue();
        assertThat(mounts.barTurn()).isZero();
        assertThat(mounts.barRatio(0)).isCloseTo(1, within(1e-12));
        part.move(0, 0, 0.02, 0, 0, 0);
        mounts.read();
        assertThat(mounts.hasBar()).isTrue();
        assertThat(mounts.barTurn()).isBetween(0.07, 0.09);
        part.move(0, 0, -0.6, 0, 0, 0);
        mounts.read();
        assertThat(mounts.hasBar()).isFalse();
    }
}
