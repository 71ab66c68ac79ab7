package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Side;
import evenhand.car.links.LinkedAxles;
import evenhand.car.links.LinkedAxles.Kind;
import evenhand.geometry.Lever;
import evenhand.geometry.Linear;
import evenhand.geometry.LinkMotion;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.WheelPairMotion;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Axles followed once against the mechanism itself, on random axles of every kind. */
class MotionFitTest {
    private static final int AXLES = 6;
    private static final double BUMP = 0.09;
    private static final double DROOP = 0.09;
    private static final double WITHIN = 2e-8;

    private static Optional<AxleLinkage> standing(Kind kind, long seed) {
        return Assembly.of(LinkedAxles.of(kind, seed).down(0)) instanceof Assembly.Standing standing
                ? Optional.of(standing.linkage())
                : Optional.empty();
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void figuresAreThoseOfTheMechanismWhereverItReaches(Kind kind) {
        int followed = 0;
        for (long seed = 0; seed < AXLES; seed++) {
            Optional<AxleLinkage> axle = standing(kind, seed);
            if (axle.isEmpty()) {
                continue;
            }
            LinkMotion motion = MotionFit.of(axle.get(), BUMP, DROOP);
            SplittableRandom random = new SplittableRandom(seed);
            axle.get().rest();
            for (int i = 0; i < 25; i++) {
                double travel = -DROOP + (BUMP + DROOP) * random.nextDouble();
                double turn = Math.toRadians(16 * random.nextDouble() - 8);
                if (motion.reach().beyond(travel, turn) > 0
                        || !motion.isFollowed(travel, kind.isLive() ? turn : 2 * turn)) {
                    continue;
                }
                followed++;
                String which = kind + " " + seed + " at " + travel + ", " + turn;
                if (motion instanceof LiveAxleMotion live) {
                    sameAs(which, (LiveAxleLinkage) axle.get(), live.reading(), travel, turn);
                } else {
                    sameAs(which, (WheelPairLinkage) axle.get(), (WheelPairMotion) motion, travel, turn);
                }
            }
        }
        assertThat(followed).isGreaterThan(AXLES * 8);
    }

    private static void sameAs(
            String which, LiveAxleLinkage axle, LiveAxleMotion.Reading motion, double travel, double roll) {
        double half = axle.given().stance().track() / 2;
        assertThat(axle.moveTo(travel - half * roll, travel + half * roll))
                .as(which)
                .isTrue();
        motion.at(travel, roll);
        near(which, motion, LiveAxleMotion.ROLL_CENTRE, axle.heightOfRollCentre());
        near(which, motion, LiveAxleMotion.FORCE_LINE, axle.forceLineSlope());
        near(which, motion, LiveAxleMotion.STEER, axle.axleSteer());
        nearInSideView(which, motion, LiveAxleMotion.CONTACT_SIDE, axle.contactSideSlope());
        nearInSideView(which, motion, LiveAxleMotion.WHEEL_SIDE, axle.wheelSideSlope());
        nearInSideView(which, motion, LiveAxleMotion.CONTACT_TURN, axle.contactTurn());
        nearInSideView(which, motion, LiveAxleMotion.WHEEL_TURN, axle.wheelTurn());
        for (Side side : Side.values()) {
            if (axle.hasSprings()) {
                near(which, motion, LiveAxleMotion.LEFT_SPRING + side.index(), axle.springLength(side));
                assertThat(-motion.byTravel()).as(which).isCloseTo(axle.springRatio(side), within(10 * WITHIN));
                // The left spring is worked in roll as its wheel goes down: by t/2 per roll.
                assertThat(-motion.byRoll())
                        .as(which)
                        .isCloseTo(-side.sign() * half * axle.springRollRatio(side), within(10 * WITHIN));
            }
            if (axle.hasDampers()) {
                near(which, motion, LiveAxleMotion.LEFT_DAMPER + side.index(), axle.damperLength(side));
            }
        }
        if (axle.overConstrained()) {
            motion.read(LiveAxleMotion.BIND);
            double energy = axle.bindEnergy();
            assertThat(motion.value()).as(which).isCloseTo(energy, within(1e-5 * Math.max(1, energy)));
            double force = axle.bindForce();
            assertThat(motion.byTravel()).as(which).isCloseTo(force, within(1e-4 * Math.max(1, Math.abs(force))));
        }
    }

    /** Along these only drive and rolling resistance act: a tenth of other forces. */
    private static void nearInSideView(String which, LiveAxleMotion.Reading motion, int figure, double of) {
        motion.read(figure);
        assertThat(motion.value()).as(which + ", figure " + figure).isCloseTo(of, within(1e-6));
    }

    private static void near(String which, LiveAxleMotion.Reading motion, int figure, double of) {
        motion.read(figure);
        assertThat(motion.value()).as(which + ", figure " + figure).isCloseTo(of, within(WITHIN));
    }

    private static void sameAs(
            String which, WheelPairLinkage axle, WheelPairMotion motion, double travel, double turn) {
        for (Side side : Side.values()) {
            WheelLinkage wheel = axle.wheel(side);
            WheelPairMotion.Reading reading = motion.reading(side == Side.LEFT);
            double steer = axle.steered() ? turn * 2 : 0;
            assertThat(wheel.moveTo(travel, steer == 0 ? 0 : steer / axle.steerPerRack()))
                    .as(which)
                    .isTrue();
            reading.at(travel, steer);
            assertThat(reading.steer()).as(which).isCloseTo(wheel.steer(), within(WITHIN));
            assertThat(reading.camber()).as(which).isCloseTo(wheel.camber(), within(WITHIN));
            assertThat(reading.steerByTravel()).as(which).isCloseTo(wheel.steerByTravel(), within(1e-6));
            assertThat(reading.camberByTravel()).as(which).isCloseTo(wheel.camberByTravel(), within(1e-6));
            assertThat(wheel.moveTo(travel, 0)).as(which).isTrue();
            reading.at(travel);
            near(which, reading, WheelPairMotion.FORCE_LINE, wheel.forceLineSlope());
            reading.read(WheelPairMotion.WHEEL_SIDE);
            assertThat(reading.value()).as(which).isCloseTo(wheel.wheelSideSlope(), within(1e-6));
            reading.read(WheelPairMotion.CONTACT_SIDE);
            assertThat(reading.value()).as(which).isCloseTo(wheel.contactSideSlope(), within(1e-6));
            if (axle.hasSprings()) {
                near(which, reading, WheelPairMotion.SPRING, axle.springLength(side));
                assertThat(-reading.byTravel()).as(which).isCloseTo(axle.springRatio(side), within(10 * WITHIN));
            }
            if (axle.hasDampers()) {
                near(which, reading, WheelPairMotion.DAMPER, axle.damperLength(side));
            }
        }
    }

    private static void near(String which, WheelPairMotion.Reading motion, int figure, double of) {
        motion.read(figure);
        assertThat(motion.value()).as(which + ", figure " + figure).isCloseTo(of, within(WITHIN));
    }

    /** Two ways to the same rest: the body let down with the figures, and the linkage put together there. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void lettingTheBodyDownIsTheSameAxleFurtherUpItsTravel(Kind kind) {
        Lever springs = Lever.upright(1, 0.5);
        for (long seed = 0; seed < AXLES; seed++) {
            Optional<AxleLinkage> axle = standing(kind, seed);
            double down = 0.004 * (seed - 3);
            if (axle.isEmpty()
                    || !(Assembly.of(LinkedAxles.of(kind, seed).down(down)) instanceof Assembly.Standing lower)) {
                continue;
            }
            Linear motion = MotionFit.of(axle.get(), BUMP, DROOP).sunk(down, 0).atRest(springs, Optional.empty());
            lower.linkage().rest();
            AxleState state = lower.linkage().state();
            String which = kind + " " + seed;
            assertThat(motion.rollCentreHeight())
                    .as(which)
                    .isCloseTo(state.rollCentreHeight().orElseThrow(), within(WITHIN));
            assertThat(motion.rollCentreByTravel())
                    .as(which)
                    .isCloseTo(Travel.rollCentrePerBump(lower.linkage()).orElseThrow(), within(1e-5));
            assertThat(motion.rollSteer()).as(which).isCloseTo(state.rollSteer(), within(1e-6));
            if (!kind.isLive()) {
                assertThat(motion.rollCamber()).as(which).isCloseTo(state.rollCamber(), within(1e-6));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void aMirroredAxleMovesAsTheMirrorImage(Kind kind) {
        for (long seed = 0; seed < AXLES; seed++) {
            Optional<AxleLinkage> axle = standing(kind, seed);
            if (axle.isEmpty()
                    || !(Assembly.of(LinkedAxles.mirrored(LinkedAxles.of(kind, seed))
                                    .down(0))
                            instanceof Assembly.Standing other)) {
                continue;
            }
            LinkMotion seen = MotionFit.of(axle.get(), BUMP, DROOP).mirrored();
            String which = kind + " " + seed;
            other.linkage().rest();
            if (!seen.isFollowed(0.02, kind.isLive() ? 0.03 : 0.06)) {
                continue;
            }
            if (seen instanceof LiveAxleMotion live) {
                sameAs(which, (LiveAxleLinkage) other.linkage(), live.reading(), 0.02, 0.03);
            } else {
                sameAs(which, (WheelPairLinkage) other.linkage(), (WheelPairMotion) seen, 0.02, 0.03);
            }
        }
    }
}
