package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.End;
import evenhand.car.LateralLocator.CarriedBy;
import evenhand.car.Side;
import evenhand.car.links.Arm;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Leaf;
import evenhand.car.links.Link;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.LinkedWheels;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddleLink;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Mounts;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.PropShaft;
import evenhand.car.links.Rod;
import evenhand.car.links.SideView;
import evenhand.car.links.Stance;
import evenhand.car.links.Strut;
import evenhand.car.links.TieRod;
import evenhand.car.links.TorqueArm;
import evenhand.car.links.WheelLinks;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Axles whose answers are printed in a book or follow from a line of school geometry; the source stands beside each. */
class PublishedGeometryTest {
    private static final Rod ROD = Rod.AS_MEASURED;
    private static final SideView CAR = new SideView(2.35, 0.46, 0.6, SideView.BrakesAt.WHEELS, true);
    private static final Stance REAR = new Stance(End.REAR, 1.4, 0, 0.3, 0, 0, 0);

    /**
     * Links as long as a file may have them, so that the axle rises straight and level but for a third of a millimetre
     * forwards: a rod of 300 mm seems 0.2 µm shorter across, which is what the tolerances here leave.
     */
    private static AxleLinks straight() {
        return new AxleLinks(
                Optional.of(Pair.alike(new Link(new Point(9.9, 0.5, 0.2), new Point(0, 0.5, 0.2), ROD))),
                Optional.empty(),
                Optional.of(new MiddleLink(new MiddlePoint(9.9, 0, 0.4), new MiddlePoint(0, 0, 0.4), ROD)),
                Optional.empty(),
                Optional.empty());
    }

    private static LinkedLiveAxle live(AxleLinks links, Locator locator) {
        return new LinkedLiveAxle(
                REAR, links, Optional.of(locator), Mounts.NONE, Optional.empty(), CAR, Optional.empty());
    }

    private static LiveAxleLinkage standing(LinkedLiveAxle axle) {
        return (LiveAxleLinkage) ((Assembly.Standing) Assembly.of(axle)).linkage();
    }

    private static Locator watt(CarriedBy by, double ahead, double up, double half, double upperRod, double lowerRod) {
        return new Locator.WattPoints(
                by,
                new MiddlePoint(ahead, 0, up),
                half,
                half,
                0,
                new Locator.WattRod(new MiddlePoint(ahead, upperRod, up + half), ROD),
                new Locator.WattRod(new MiddlePoint(ahead, -lowerRod, up - half), ROD));
    }

    /** Exact four-bar position solution (ge-watt-axle): rods 300 mm level, crank 120 mm between its ends, on the axle. */
    @Test
    void aWattsLinkageOnTheAxleShiftsItByTheFourBarsCurve() {
        LiveAxleLinkage axle = standing(live(straight(), watt(CarriedBy.AXLE, 0, 0.3, 0.06, 0.3, 0.3)));
        double[] heave = {-0.080, -0.050, -0.025, 0, 0.025, 0.050, 0.080};
        double[] shift = {
            -0.2744654359, -0.02483120208, -0.0007588451046, 0, 0.0007588451046, 0.02483120208, 0.2744654359
        };
        double[] crank = {10.43304786, 4.010204414, 0.9965017287, 0, 0.9965017287, 4.010204414, 10.43304786};
        for (int i = 0; i < heave.length; i++) {
            assertThat(axle.moveTo(heave[i], heave[i])).isTrue();
            assertThat(Math.abs(axle.sideShift() * 1000)).isCloseTo(Math.abs(shift[i]), within(1e-5));
            assertThat(Math.toDegrees(Math.abs(axle.crank().orElseThrow()))).isCloseTo(crank[i], within(2e-4));
        }
        // the axle up: the upper rod, which goes to the left, pulls the crank's top there, and in the plane, with
        // a = l + c·sin θ and e = c·(1 − cos θ), s = −u·e/a: the axle goes to the right
        axle.moveTo(0.08, 0.08);
        double up = axle.sideShift();
        double turned = axle.crank().orElseThrow();
        assertThat(turned).isNegative();
        assertThat(up).isCloseTo(-0.08 * 0.06 * (1 - Math.cos(turned)) / (0.3 + 0.06 * Math.sin(turned)), within(1e-7));
        axle.moveTo(-0.08, -0.08);
        assertThat(axle.sideShift()).isCloseTo(-up, within(1e-9));
    }

    /** The same with unequal rods (ge-watt-unequal): 280 mm above, to the left, 320 mm below. */
    @Test
    void unequalRodsBendTheCurveToOneSide() {
        LiveAxleLinkage axle = standing(live(straight(), watt(CarriedBy.AXLE, 0, 0.3, 0.06, 0.28, 0.32)));
        axle.moveTo(-0.05, -0.05);
        double down = axle.sideShift() * 1000;
        axle.moveTo(0.05, 0.05);
        double up = axle.sideShift() * 1000;
        assertThat(Math.min(Math.abs(down), Math.abs(up))).isCloseTo(0.2598747338, within(1e-5));
        assertThat(Math.max(Math.abs(down), Math.abs(up))).isCloseTo(0.3102384561, within(1e-5));
        assertThat(down * up).isPositive();
    }

    /** Exact geometry of a rod (ge-panhard-shift), length 1000 mm, level and with its axle end 40 mm above its body end. */
    @Test
    void aPanhardRodShiftsTheAxleOnAnArc() {
        double[] travel = {-0.06, -0.03, 0.03, 0.06};
        double[] level = {1.801622923, 0.4501012956, 0.4501012956, 1.801622923};
        double[] sloping = {-0.6003002523, -0.7503190062, 1.652688369, 4.212242637};
        for (int i = 0; i < travel.length; i++) {
            assertThat(shiftOfPanhard(0, travel[i])).isCloseTo(level[i], within(3e-5));
            assertThat(shiftOfPanhard(0.04, travel[i])).isCloseTo(sloping[i], within(3e-5));
        }
    }

    /** Shift towards the body end, on the right, mm. */
    private static double shiftOfPanhard(double above, double travel) {
        double flat = Math.sqrt(1 - above * above);
        LiveAxleLinkage axle = standing(live(
                straight(),
                new Locator.PanhardPoints(
                        new MiddlePoint(0, -flat / 2, 0.25), new MiddlePoint(0, flat / 2, 0.25 + above), ROD)));
        axle.moveTo(travel, travel);
        return -axle.sideShift() * 1000;
    }

    /** Dixon 2009; Milliken & Milliken 1995 ch. 17 (ge-panhard-roll-centre): where the rod crosses the middle plane. */
    @Test
    void theAxleRollsAboutWhereThePanhardRodCrossesTheMiddle() {
        LiveAxleLinkage axle = standing(live(
                straight(),
                new Locator.PanhardPoints(new MiddlePoint(0, 0.55, 0.26), new MiddlePoint(0, -0.45, 0.22), ROD)));
        assertThat(axle.heightOfRollCentre()).isCloseTo(0.238, within(1e-9));
        assertThat(axle.forceLineSlope()).isCloseTo(0.04, within(1e-9));
    }

    /** A rod behind the axle on links with roll steer: pivot's height less its distance behind times roll steer. */
    @Test
    void aPivotBehindTheAxleIsNotTheRollCentreWhereTheAxleSteersInRoll() {
        for (double bodyUp : new double[] {0.18, 0.2, 0.225}) {
            AxleLinks links = new AxleLinks(
                    Optional.of(Pair.alike(new Link(new Point(0.52, 0.5, bodyUp), new Point(0, 0.5, 0.2), ROD))),
                    Optional.empty(),
                    Optional.of(new MiddleLink(new MiddlePoint(0.4, 0, 0.42), new MiddlePoint(0, 0, 0.42), ROD)),
                    Optional.empty(),
                    Optional.empty());
            LiveAxleLinkage behind = standing(live(links, watt(CarriedBy.BODY, -0.14, 0.285, 0.06, 0.4, 0.4)));
            assertThat(behind.heightOfRollCentre()).isCloseTo(0.285 + -0.14 * behind.rollSteer(), within(1e-9));
            LiveAxleLinkage inPlane = standing(live(links, watt(CarriedBy.BODY, 0, 0.285, 0.06, 0.4, 0.4)));
            assertThat(inPlane.heightOfRollCentre()).isCloseTo(0.285, within(1e-9));
            // Gillespie 1992 ch. 7: roll steer of straight trailing links is their side slope; body end low: understeer
            assertThat(behind.rollSteer()).isCloseTo((0.2 - bodyUp) / 0.52, within(1e-9));
        }
    }

    /** Gillespie 1992 ch. 6-7, Milliken & Milliken 1995 ch. 17 (ge-roll-steer-arms): φ·tan i, oversteer with the body end up. */
    @Test
    void trailingArmsSteerByTheirSlope() {
        double[] angle = {0, 5, -5, 8};
        double[] firstOrder = {0, 0.3499546541, -0.3499546541, 0.5621633388};
        for (int i = 0; i < angle.length; i++) {
            double slope = Math.toRadians(angle[i]);
            AxleLinks links = new AxleLinks(
                    Optional.of(Pair.alike(new Link(
                            new Point(0.5 * Math.cos(slope), 0.5, 0.3 + 0.5 * Math.sin(slope)),
                            new Point(0, 0.5, 0.3),
                            ROD))),
                    Optional.empty(),
                    Optional.of(new MiddleLink(
                            new MiddlePoint(0.5 * Math.cos(slope), 0, 0.45 + 0.5 * Math.sin(slope)),
                            new MiddlePoint(0, 0, 0.45),
                            ROD)),
                    Optional.empty(),
                    Optional.empty());
            LiveAxleLinkage axle = standing(live(links, new Locator.Ideal(0.3, 0)));
            assertThat(-axle.rollSteer() * 4).isCloseTo(firstOrder[i], within(1e-8));
        }
    }

    /** Barton & Fieldhouse 2018 p. 197; Gillespie 1992 ch. 7 (ge-side-view-four-link): (z/x)/(h/L) of the instant centre. */
    @Test
    void antiSquatIsTheSlopeToTheInstantCentre() {
        AxleLinks links = new AxleLinks(
                Optional.of(Pair.alike(new Link(new Point(0.65, 0.5, 0.27), new Point(0.05, 0.5, 0.22), ROD))),
                Optional.empty(),
                Optional.of(new MiddleLink(new MiddlePoint(0.4, 0, 0.38), new MiddlePoint(-0.02, 0, 0.42), ROD)),
                Optional.empty(),
                Optional.empty());
        AxleState rest = standing(live(links, new Locator.Ideal(0.25, -0.5))).state();
        assertThat(rest.antiSquat().orElseThrow()).isCloseTo(1.399203282, within(1e-8));
        AxleState.LiveFigures whole = rest.live().orElseThrow();
        assertThat(whole.swingArm().orElseThrow()).isCloseTo(1.132666667, within(1e-8));
        assertThat(whole.swingCentreHeight().orElseThrow()).isCloseTo(0.3102222222, within(1e-8));
        assertThat(rest.antiLift().orElseThrow()).isCloseTo(0.4 * 1.399203282, within(1e-8));
    }

    /** Dixon 2009; Milliken & Milliken 1995 ch. 17 (ge-roll-axis-links): the axis through both points where links converge. */
    @Test
    void convergingLinksGiveTheRollAxis() {
        // lower links towards (2.0, 0, 0.1), upper ones towards (-0.05, 0, 0.4)
        Point lowerAxle = new Point(0, 0.5, 0.2);
        Point lowerBody = new Point(0.6, 0.35, 0.17);
        Point upperAxle = new Point(-0.02, 0.06, 0.4);
        Point upperBody = new Point(0.27, 0.64, 0.4);
        AxleLinks links = new AxleLinks(
                Optional.of(Pair.alike(new Link(lowerBody, lowerAxle, ROD))),
                Optional.of(Pair.alike(new Link(upperBody, upperAxle, ROD))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        LiveAxleLinkage axle = standing(new LinkedLiveAxle(
                REAR, links, Optional.empty(), Mounts.NONE, Optional.empty(), CAR, Optional.empty()));
        assertThat(axle.heightOfRollCentre()).isCloseTo(0.3926829268, within(1e-9));
        assertThat(axle.rollSteer()).isCloseTo(0.1463414634, within(1e-9));
    }

    /** A torque arm of 910 mm turns the pinion by asin-like 3.78 deg per 60 mm, whatever its drop link's length. */
    @Test
    void theDropLinksLengthDoesNotChangeHowATorqueArmTurnsThePinion() {
        for (double link : new double[] {0.05, 0.1, 0.2}) {
            AxleLinks links = new AxleLinks(
                    Optional.of(Pair.alike(new Link(new Point(0.5, 0.5, 0.3), new Point(0, 0.5, 0.3), ROD))),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(
                            new TorqueArm(new MiddlePoint(0.91, 0, 0.3 + link), new MiddlePoint(0.91, 0, 0.3), ROD)),
                    Optional.empty());
            LiveAxleLinkage axle = standing(live(links, new Locator.Ideal(0.28, -1)));
            axle.moveTo(0.06, 0.06);
            assertThat(Math.toDegrees(axle.axlePitch())).isCloseTo(-3.78, within(0.01));
        }
    }

    /**
     * A short Watt's linkage, rods 100 mm, half its crank 14 mm, stops with the crank turned far over. In the plane both rods
     * ask (a + s)² + (u + e)² = l² and (a − s)² + (u − e)² = l² with a = l + c·sin θ, e = c·(1 − cos θ); so
     * u²·(1 + e²/a²) = l² − a² − e², whose greatest u over θ is the end.
     */
    @Test
    void aShortWattStopsWithItsCrankOverCentre() {
        double furthest = 0;
        double turned = 0;
        for (double angle = 0; angle > -Math.PI / 2; angle -= 1e-4) {
            double a = 0.1 + 0.014 * Math.sin(angle);
            double e = 0.014 * (1 - Math.cos(angle));
            double u = Math.sqrt(Math.max(0, (0.01 - a * a - e * e) / (1 + e * e / (a * a))));
            if (u > furthest) {
                furthest = u;
                turned = -angle;
            }
        }
        TravelAnswer.Followed answer = (TravelAnswer.Followed)
                Travel.of(live(straight(), watt(CarriedBy.BODY, 0, 0.3, 0.014, 0.1, 0.1)), Ranges.USUAL);
        double end = furthest;
        for (TravelLimit.Motion motion : new TravelLimit.Motion[] {TravelLimit.Motion.BUMP, TravelLimit.Motion.DROOP}) {
            TravelLimit limit = answer.limits().stream()
                    .filter(l -> l.motion() == motion)
                    .findFirst()
                    .orElseThrow();
            assertThat(limit.kind()).isEqualTo(TravelLimit.Kind.CRANK_OVER_CENTRE);
            assertThat(limit.at()).isCloseTo(end, within(1e-6));
            assertThat(Math.abs(limit.crank().orElseThrow())).isCloseTo(turned, within(3e-3));
            assertThat(Math.toDegrees(turned)).isBetween(75.0, 85.0);
        }
        assertThat(answer.heave())
                .hasSize(9)
                .allSatisfy(row -> assertThat(row.leftTravel()).isLessThan(end));
    }

    private static LinkedWheels wheels(WheelLinks links, double track) {
        return new LinkedWheels(
                new Stance(End.FRONT, track, 0, 0.3, 0, 0, 0), links, Mounts.NONE, CAR, Optional.empty());
    }

    private static Arm arm(double innerOut, double innerUp, double outerOut, double outerUp) {
        return new Arm(
                new Point(0.15, innerOut, innerUp),
                new Point(-0.15, innerOut, innerUp),
                new Point(0, outerOut, outerUp));
    }

    private static WheelLinkage left(LinkedWheels wheels) {
        return ((WheelPairLinkage) ((Assembly.Standing) Assembly.of(wheels)).linkage()).wheel(Side.LEFT);
    }

    private static LinkedWheels wishbones(double innerUp) {
        return wheels(
                new WheelLinks.DoubleWishbone(
                        Pair.alike(arm(0.35, 0.2, 0.7, 0.18)),
                        Pair.alike(arm(0.42, 0.48, 0.66, 0.5)),
                        Pair.alike(new TieRod(
                                new Point(-0.12, 0.3614924224, innerUp),
                                new Point(-0.12, 0.69, 0.235),
                                ROD,
                                Optional.empty()))),
                1.42);
    }

    /** Blundell & Harty 2004 eqs. 4.32-4.43 (ge-wishbone-roll-centre, ge-bump-steer-line). */
    @Test
    void aDoubleWishboneRollsAboutWhereItsInstantCentreSays() {
        WheelPairLinkage pair = (WheelPairLinkage) ((Assembly.Standing) Assembly.of(wishbones(0.2459696895))).linkage();
        WheelLinkage left = pair.wheel(Side.LEFT);
        assertThat(left.steerByTravel()).isCloseTo(0, within(1e-9));
        assertThat(pair.rollCentreHeight().orElseThrow()).isCloseTo(0.09568003519, within(1e-9));
        assertThat(left.forceLineSlope() * 0.71).isCloseTo(0.09568003519, within(1e-9));
        assertThat(Math.toDegrees(left.camberByTravel()) * 0.1).isCloseTo(-2.478518213, within(1e-7));
        // Reimpell et al. 2001 ch. 3: 10 mm too high inboard moves the arm end by 0.03038 mm per mm of bump
        double wrong = left(wishbones(0.2559696895)).steerByTravel();
        assertThat(Math.abs(wrong) * 0.12).isCloseTo(0.0303789, within(3e-3));
    }

    /** Blundell & Harty 2004 fig. 4.30; Reimpell et al. 2001 (ge-strut-roll-centre), axis through top and ball joint. */
    @Test
    void aStrutRollsAboutWhereItsInstantCentreSays() {
        double lower = (210.0 - 190) / (340 - 690); // the rod's line through the instant centre: no bump steer
        assertThat(lower).isNegative();
        double centreY = -2.008040886;
        double centreZ = 0.3441737649;
        double innerY = 0.33;
        double outerY = 0.66;
        double outerZ = 0.24;
        double innerZ = outerZ + (centreZ - outerZ) * (innerY - outerY) / (centreY - outerY);
        LinkedWheels wheels = wheels(
                new WheelLinks.StrutAndArm(
                        Pair.alike(arm(0.34, 0.21, 0.69, 0.19)),
                        Pair.alike(new Strut(new Point(0, 0.56, 0.85), new Point(0, 0.69, 0.19))),
                        Pair.alike(new TieRod(
                                new Point(-0.12, innerY, innerZ),
                                new Point(-0.12, outerY, outerZ),
                                ROD,
                                Optional.empty()))),
                1.41);
        WheelPairLinkage pair = (WheelPairLinkage) ((Assembly.Standing) Assembly.of(wheels)).linkage();
        assertThat(pair.rollCentreHeight().orElseThrow()).isCloseTo(0.08943562389, within(1e-8));
        assertThat(pair.wheel(Side.LEFT).kingpin()).isCloseTo(Math.atan2(0.13, 0.66), within(1e-12));
        assertThat(pair.wheel(Side.LEFT).caster()).isCloseTo(0, within(1e-12));
    }

    /** A builder's note (ge-anti-dive): 60 % of the brakes in front, h 600 mm, L 2550 mm, a quarter wanted: 5.6 deg. */
    @Test
    void antiDiveIsTheFrontsShareTimesTheSlope() {
        SideView car = new SideView(2.55, 0.6, 0.6, SideView.BrakesAt.WHEELS, false);
        double slope = -Math.tan(Math.toRadians(5.6)); // centre behind the front axle and above the ground
        assertThat(SideForces.antiDive(End.FRONT, car, slope, 0).orElseThrow()).isCloseTo(0.25, within(2e-3));
        assertThat(SideForces.antiDive(End.REAR, car, slope, 0)).isEmpty();
    }

    /** Two joints in one plane leave √|β1² − β2²| (ge-two-joint-residual); SAE manual AE-7. */
    @Test
    void twoJointsLeaveWhatTheyDoNotCancel() {
        double[] first = {5, 4, 3};
        double[] second = {5, 2, 2.5};
        double[] left = {0, 3.464101615, 1.658312395};
        for (int i = 0; i < first.length; i++) {
            AxleState.ShaftFigures shaft = shaft(first[i], second[i], 0);
            assertThat(Math.toDegrees(shaft.residualJointAngle())).isCloseTo(left[i], within(1e-6));
            assertThat(Math.toDegrees(shaft.jointAngles().get(0))).isCloseTo(first[i], within(1e-9));
            assertThat(Math.toDegrees(shaft.jointAngles().get(1))).isCloseTo(second[i], within(1e-9));
        }
        // planes square to each other add up: √(β1² + β2²)
        AxleState.ShaftFigures square = shaft(2, 0, 1);
        assertThat(Math.toDegrees(square.residualJointAngle())).isCloseTo(Math.sqrt(5), within(1e-4));
        // tan β·sin β = 0.125 at 20.04 deg (ge-hooke-125)
        assertThat(shaft(20.0404005, 0, 0).speedFluctuation()).isCloseTo(0.125, within(1e-8));
    }

    private static AxleState.ShaftFigures shaft(double gearbox, double pinion, double pinionPlan) {
        PropShaft given = new PropShaft(
                new MiddlePoint(1.6, 0, 0.3),
                Math.toRadians(gearbox),
                0,
                Optional.empty(),
                new MiddlePoint(0.3, 0, 0.3),
                Math.toRadians(pinion),
                Math.toRadians(pinionPlan));
        return new ShaftLine(given, new Part(0, 0, 0.3)).figures();
    }

    /** Exact distance (ge-prop-plunge): 1200 mm long, its rear end 50 mm lower, 60 mm up and 4 mm back. */
    @Test
    void aShaftPlungesByTheChangeOfItsLength() {
        Part axle = new Part(0, 0, 0.3);
        double run = Math.sqrt(1.2 * 1.2 - 0.05 * 0.05);
        ShaftLine shaft = new ShaftLine(
                new PropShaft(
                        new MiddlePoint(0.3 + run, 0, 0.35),
                        0,
                        0,
                        Optional.empty(),
                        new MiddlePoint(0.3, 0, 0.3),
                        0,
                        0),
                axle);
        assertThat(shaft.figures().plunge()).isZero();
        axle.move(-0.004, 0, 0.06, 0, 0, 0);
        double far = Math.hypot(run + 0.004, 0.01);
        assertThat(shaft.figures().plunge()).isCloseTo(1.2 - far, within(1e-15));
        assertThat(Math.abs(shaft.figures().plunge())).isCloseTo(0.002999444325, within(1e-8));
    }

    /** SAE HS-788: each half a link of ¾ of its length; level equal halves with an upright long shackle do not pitch. */
    @Test
    void levelLeavesMoveTheSeatOnAnArcOfThreeQuartersOfTheFrontHalf() {
        Leaf leaf = new Leaf(
                new Point(0.55, 0.5, 0.3),
                new Point(-0.55, 0.5, 0.3),
                new Point(-0.55, 0.5, 4.9),
                new Point(0, 0.5, 0.3));
        LiveAxleLinkage axle = standing(live(
                new AxleLinks(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Pair.alike(leaf))),
                new Locator.Ideal(0.3, -1)));
        axle.moveTo(0.02, 0.02);
        double radius = 0.75 * 0.55;
        // the hinge goes on that arc; the small pitch that is left turns it about the seat
        assertThat(axle.foreAft()).isCloseTo(-(0 - (radius - Math.sqrt(radius * radius - 0.0004))), within(5e-5));
        assertThat(Math.abs(axle.axlePitch())).isLessThan(Math.toRadians(0.1));
        assertThat(OptionalDouble.of(axle.worstError()).orElseThrow()).isLessThan(1e-12);
    }
}
