package evenhand.validation;

import evenhand.car.End;
import evenhand.car.links.Arm;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Link;
import evenhand.car.links.LinkedAxle;
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
import evenhand.car.links.TieRod;
import evenhand.car.links.WheelLinks;
import evenhand.linkage.AxleState;
import evenhand.linkage.Ranges;
import evenhand.linkage.Travel;
import evenhand.linkage.TravelAnswer;
import java.util.List;
import java.util.Optional;

/** Axles on links with nothing on them but what a textbook's figure has, and what {@code travel} answers of them. */
final class PlainLinks {
    static final Rod ROD = Rod.AS_MEASURED;

    static final double TRACK = 1.4;
    static final double RADIUS = 0.3;

    /** Half of the distance between the ends of an arm's axis, m. */
    static final double HALF_AXIS = 0.15;

    /** How far behind the axle's line a tie rod stands, m. */
    static final double BEHIND = -0.12;

    private static final double ABOVE = 0.45;

    /** As long as a file may have them, m: what moves sideways by centimetres then goes fore and aft by hundredths of one. */
    private static final double LONG = 8;

    private static final SideView CAR = new SideView(2.35, 0.46, 0.6, SideView.BrakesAt.WHEELS, true);

    private PlainLinks() {}

    /**
     * Three parallel links of one length on which the axle, without turning, gets just there: the middle line of where it
     * stands and where it gets to is where their body ends may be.
     *
     * @param ahead m
     * @param up m
     */
    static AxleLinks swingingTo(double ahead, double up) {
        double way = Math.hypot(ahead, up);
        double side = up < 0 ? -1 : 1;
        double run = way == 0 ? LONG : ahead / 2 + side * LONG * up / way;
        double rise = way == 0 ? 0 : up / 2 - side * LONG * ahead / way;
        return trailing(run, rise);
    }

    /** Two links as high as the wheels' centres, half a metre out, and one above, parallel and of one length. */
    static AxleLinks trailing(double run, double rise) {
        return threeLinks(
                new Link(new Point(run, 0.5, RADIUS + rise), new Point(0, 0.5, RADIUS), ROD),
                new MiddleLink(new MiddlePoint(run, 0, ABOVE + rise), new MiddlePoint(0, 0, ABOVE), ROD));
    }

    static AxleLinks threeLinks(Link lower, MiddleLink middle) {
        return new AxleLinks(
                Optional.of(Pair.alike(lower)),
                Optional.empty(),
                Optional.of(middle),
                Optional.empty(),
                Optional.empty());
    }

    static LinkedLiveAxle live(AxleLinks links, Locator locator) {
        return live(links, Optional.of(locator), CAR, Optional.empty());
    }

    static LinkedLiveAxle live(
            AxleLinks links, Optional<Locator> locator, SideView car, Optional<PropShaft> propShaft) {
        Stance stance = new Stance(End.REAR, TRACK, 0, RADIUS, 0, 0, 0);
        return new LinkedLiveAxle(stance, links, locator, Mounts.NONE, propShaft, car, Optional.empty());
    }

    static LinkedWheels wheels(WheelLinks links, double contactOut, SideView car) {
        Stance stance = new Stance(End.FRONT, 2 * contactOut, 0, RADIUS, 0, 0, 0);
        return new LinkedWheels(stance, links, Mounts.NONE, car, Optional.empty());
    }

    static LinkedWheels wheels(WheelLinks links, double contactOut) {
        return wheels(links, contactOut, CAR);
    }

    /** An arm that turns about a line along the car; its ends in rear view, out and up. */
    static Arm arm(double[] inner, double[] outer) {
        return new Arm(
                new Point(HALF_AXIS, inner[0], inner[1]),
                new Point(-HALF_AXIS, inner[0], inner[1]),
                new Point(0, outer[0], outer[1]));
    }

    /** A tie rod behind the axle's line that lies across the car; its ends in rear view. */
    static Pair<TieRod> tieRod(double[] inner, double[] outer) {
        return Pair.alike(new TieRod(
                new Point(BEHIND, inner[0], inner[1]), new Point(BEHIND, outer[0], outer[1]), ROD, Optional.empty()));
    }

    static TravelAnswer.Followed rest(LinkedAxle axle) {
        return followed(axle, new Ranges(0, 0, 0, 0, 1));
    }

    /** The row of heave with both wheels up by so much. */
    static AxleState heaved(LinkedAxle axle, double up) {
        if (up == 0) {
            return rest(axle).rest();
        }
        List<AxleState> rows =
                followed(axle, new Ranges(up, -up, 0, 0, Math.abs(up))).heave();
        AxleState row = up > 0 ? rows.get(rows.size() - 1) : rows.get(0);
        if (Math.abs(row.leftTravel() - up) > 1e-12) {
            throw new IllegalStateException("the links do not reach " + up);
        }
        return row;
    }

    /** The row of roll with the right side of the body down by so much, rad. */
    static AxleState rolled(LinkedAxle axle, double roll) {
        List<AxleState> rows =
                followed(axle, new Ranges(0, 0, Math.abs(roll), 0, 1)).roll();
        return roll > 0 ? rows.get(rows.size() - 1) : rows.get(0);
    }

    private static TravelAnswer.Followed followed(LinkedAxle axle, Ranges ranges) {
        TravelAnswer answer = Travel.of(axle, ranges);
        if (answer instanceof TravelAnswer.Followed followed) {
            return followed;
        }
        throw new IllegalStateException("the axle does not stand: " + answer);
    }
}
