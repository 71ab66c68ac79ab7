package evenhand.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.End;
import evenhand.car.LateralLocator.CarriedBy;
import evenhand.car.links.BarArm;
import evenhand.car.links.CarriedOn;
import evenhand.car.links.Dampers;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Mounts;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.PropShaft;
import evenhand.car.links.SideView;
import evenhand.car.links.Stance;
import evenhand.car.links.WheelLinks;
import evenhand.linkage.AxleState;
import evenhand.linkage.TravelAnswer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What the trade knows about links. Common practice, no source: only directions are tested. */
class TradeFactsOnLinksTest {
    private static final double UP = 0.05;
    private static final SideView ALONE = SideView.ofAxleAlone(SideView.BrakesAt.WHEELS);
    private static final Locator LEVEL = panhard(0.9, 0);

    private static Locator panhard(double across, double axleEndAbove) {
        return new Locator.PanhardPoints(
                new MiddlePoint(0, -across / 2, 0.28),
                new MiddlePoint(0, across / 2, 0.28 + axleEndAbove),
                PlainLinks.ROD);
    }

    private static LinkedLiveAxle live(double rise, Locator locator) {
        return PlainLinks.live(PlainLinks.trailing(0.5, rise), locator);
    }

    private static AxleState.LiveFigures up(LinkedAxle axle, double by) {
        return PlainLinks.heaved(axle, by).live().orElseThrow();
    }

    @Test
    void anAxleOnAWattsLinkageRollsAboutTheCranksPivotWhateverCarriesIt() {
        for (CarriedBy by : CarriedBy.values()) {
            for (double height : new double[] {0.25, 0.29, 0.33}) {
                Locator watt = new Locator.WattPoints(
                        by,
                        new MiddlePoint(0, 0, height),
                        0.06,
                        0.06,
                        0,
                        new Locator.WattRod(new MiddlePoint(0, 0.4, height + 0.06), PlainLinks.ROD),
                        new Locator.WattRod(new MiddlePoint(0, -0.4, height - 0.06), PlainLinks.ROD));
                assertThat(PlainLinks.rest(live(0, watt)).rest().rollCentreHeight())
                        .hasValueCloseTo(height, within(1e-9));
            }
        }
    }

    @Test
    void aPanhardRodShiftsTheAxleLeastWhereItIsLevelAndLong() {
        double level = Math.abs(up(live(0, LEVEL), UP).sideShift());
        for (double above : new double[] {-0.06, -0.03, 0.03, 0.06}) {
            LinkedAxle sloping = live(0, panhard(0.9, above));
            double most = Math.max(
                    Math.abs(up(sloping, UP).sideShift()),
                    Math.abs(up(sloping, -UP).sideShift()));
            assertThat(most).as("%s", above).isGreaterThan(level);
        }
        double half = Math.abs(up(live(0, panhard(0.45, 0)), UP).sideShift());
        assertThat(half).isCloseTo(2 * level, within(0.02 * level));
    }

    @Test
    void equalAndParallelLinksKeepThePinionsAngleAndShorterUpperOnesDoNot() {
        for (double by : new double[] {-UP, UP}) {
            assertThat(up(live(0.03, LEVEL), by).axlePitch()).isCloseTo(0, within(1e-4));
        }
        LinkedAxle shorter = PlainLinks.live(
                PlainLinks.threeLinks(
                        PlainLinks.trailing(0.5, 0).lowerLink().orElseThrow().left(),
                        PlainLinks.trailing(0.25, 0).middleLink().orElseThrow()),
                LEVEL);
        // the upper link, which turns further, draws the axle's top forwards
        assertThat(up(shorter, UP).axlePitch()).isLessThan(-0.005);
        assertThat(up(shorter, -UP).axlePitch()).isLessThan(-0.005);
    }

    @Test
    void twoJointsWithEqualAnglesLeaveNothing() {
        assertThat(leftOver(2, 2)).isCloseTo(0, within(1e-8));
        assertThat(leftOver(2, -2)).as("bent to one side").isCloseTo(0, within(1e-8));
        assertThat(leftOver(2, 1)).isGreaterThan(Math.toRadians(1.5));
        assertThat(leftOver(3, 1)).isGreaterThan(leftOver(2, 1));
    }

    private static double leftOver(double gearbox, double pinion) {
        PropShaft shaft = new PropShaft(
                new MiddlePoint(1.6, 0, 0.3),
                Math.toRadians(gearbox),
                0,
                Optional.empty(),
                new MiddlePoint(0.3, 0, 0.3),
                Math.toRadians(pinion),
                0);
        LinkedAxle axle = PlainLinks.live(PlainLinks.trailing(0.5, 0), Optional.of(LEVEL), ALONE, Optional.of(shaft));
        return up(axle, 0).shaft().orElseThrow().residualJointAngle();
    }

    private static LinkedAxle with(Mounts mounts) {
        return new LinkedLiveAxle(
                new Stance(End.REAR, PlainLinks.TRACK, 0, PlainLinks.RADIUS, 0, 0, 0),
                PlainLinks.trailing(0.5, 0),
                Optional.of(new Locator.Ideal(0.3, -1)),
                mounts,
                Optional.empty(),
                ALONE,
                Optional.empty());
    }

    @Test
    void dampersThatLeanAlikeTurnTheirEyesAlikeAndMostAtTheEndsOfTheTravel() {
        Dampers.Ends ends = new Dampers.Ends(
                new Dampers.Eye(new Point(0, 0.35, 0.55), Dampers.Bolt.ALONG, 0, 0),
                new Dampers.Eye(new Point(-0.1, 0.45, 0.22), Dampers.Bolt.ALONG, Math.toRadians(16), 0),
                CarriedOn.AXLE);
        LinkedAxle axle = with(new Mounts(
                Optional.empty(),
                Optional.of(new Dampers(
                        new Dampers.BetweenEyes(Pair.alike(ends)), OptionalDouble.empty(), OptionalDouble.empty())),
                Optional.empty(),
                List.of()));
        for (double by : new double[] {-UP, 0, UP}) {
            AxleState row = PlainLinks.heaved(axle, by);
            assertThat(row.left().upperEye().orElseThrow())
                    .isCloseTo(row.right().upperEye().orElseThrow(), within(1e-12));
            assertThat(row.left().lowerEye().orElseThrow())
                    .isCloseTo(row.right().lowerEye().orElseThrow(), within(1e-12));
        }
        // the damper leans ahead by atan(1/3.3); a bolt along the car goes with the axle, so the eye turns with the
        // lean alone
        double rest = PlainLinks.heaved(axle, 0).left().upperEye().orElseThrow();
        assertThat(PlainLinks.heaved(axle, UP).left().upperEye().orElseThrow()).isGreaterThan(rest);
    }

    @Test
    void anUprightDropLinkHoldsTheBarsLeverageAtRideHeight() {
        double upright = Math.abs(leverage(0.002, 0) - leverage(-0.002, 0));
        double leaning = Math.abs(leverage(0.002, 0.08) - leverage(-0.002, 0.08));
        assertThat(upright).isLessThan(0.1 * leaning);
    }

    /** Of a bar whose arm is level at rest and whose drop link leans back by so much. */
    private static double leverage(double up, double back) {
        BarArm arm = new BarArm(
                new Point(0.25, 0.45, 0.4), new Point(0, 0.45, 0.4), new Point(-back, 0.45, 0.25), CarriedOn.AXLE);
        LinkedAxle axle = new LinkedLiveAxle(
                new Stance(End.REAR, PlainLinks.TRACK, 0, PlainLinks.RADIUS, 0, 0, 0),
                PlainLinks.swingingTo(0, up),
                Optional.of(new Locator.Ideal(0.3, -1)),
                new Mounts(Optional.empty(), Optional.empty(), Optional.of(Pair.alike(arm)), List.of()),
                Optional.empty(),
                ALONE,
                Optional.empty());
        return PlainLinks.heaved(axle, up).left().barRatio().orElseThrow();
    }

    @Test
    void linksLowerAtTheBodyThanAtTheAxleGiveRollUndersteer() {
        assertThat(PlainLinks.rest(live(-0.03, LEVEL)).rest().rollSteer()).isPositive();
        assertThat(PlainLinks.rest(live(0.03, LEVEL)).rest().rollSteer()).isNegative();
        // the right side down: the rear axle of a car in a left turn steers to the left
        assertThat(PlainLinks.rolled(live(-0.03, LEVEL), Math.toRadians(3))
                        .live()
                        .orElseThrow()
                        .axleSteer())
                .isPositive();
    }

    @Test
    void aWishboneCarThatIsLoweredCanLoseMoreOfItsRollCentreThanOfItsHeight() {
        TravelAnswer.Followed rest = PlainLinks.rest(PlainLinks.wheels(
                new WheelLinks.DoubleWishbone(
                        Pair.alike(PlainLinks.arm(new double[] {0.35, 0.2}, new double[] {0.68, 0.18})),
                        Pair.alike(PlainLinks.arm(new double[] {0.42, 0.45}, new double[] {0.64, 0.48})),
                        PlainLinks.tieRod(new double[] {0.35, 0.2}, new double[] {0.68, 0.18})),
                0.7));
        assertThat(rest.rollCentrePerBump().orElseThrow()).isLessThan(-1);
    }
}
