package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.End;
import evenhand.car.LateralLocator.CarriedBy;
import evenhand.car.Side;
import evenhand.car.links.Arm;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Link;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.LinkedWheels;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddleLink;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Mounts;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.Rod;
import evenhand.car.links.SideView;
import evenhand.car.links.Stance;
import evenhand.car.links.Strut;
import evenhand.car.links.TieRod;
import evenhand.car.links.TorqueArm;
import evenhand.car.links.WheelLinks;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Axles whose answers follow from a line of school geometry. Published figures stand in {@code validation/checks/geometry.json}. */
class LinkageByHandTest {
    private static final Rod ROD = Rod.AS_MEASURED;
    private static final SideView CAR = new SideView(2.35, 0.46, 0.6, SideView.BrakesAt.WHEELS, true);
    private static final Stance REAR = new Stance(End.REAR, 1.4, 0, 0.3, 0, 0, 0);

    /**
     * Links as long as a file may have them, so that the axle rises straight and level but for a tenth of a millimetre
     * forwards: a rod of 100 mm seems 0.1 µm shorter across, which is what the tolerances here leave.
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

    /** From the ball joint to the top: 130 mm inwards and 660 mm up, or so much rearwards. */
    @Test
    void aStrutTurnsAboutTheLineFromBallJointToTop() {
        WheelLinkage upright = strut(new Point(0, 0.56, 0.85));
        assertThat(upright.kingpin()).isCloseTo(Math.atan2(0.13, 0.66), within(1e-12));
        assertThat(upright.caster()).isCloseTo(0, within(1e-12));
        assertThat(strut(new Point(-0.05, 0.56, 0.85)).caster()).isCloseTo(Math.atan2(0.05, 0.66), within(1e-12));
    }

    private static WheelLinkage strut(Point top) {
        Point ball = new Point(0, 0.69, 0.19);
        WheelLinks links = new WheelLinks.StrutAndArm(
                Pair.alike(new Arm(new Point(0.15, 0.34, 0.21), new Point(-0.15, 0.34, 0.21), ball)),
                Pair.alike(new Strut(top, ball)),
                Pair.alike(
                        new TieRod(new Point(-0.12, 0.34, 0.21), new Point(-0.12, 0.69, 0.19), ROD, Optional.empty())));
        LinkedWheels wheels = new LinkedWheels(
                new Stance(End.FRONT, 1.41, 0, 0.3, 0, 0, 0), links, Mounts.NONE, CAR, Optional.empty());
        return ((WheelPairLinkage) ((Assembly.Standing) Assembly.of(wheels)).linkage()).wheel(Side.LEFT);
    }
}
