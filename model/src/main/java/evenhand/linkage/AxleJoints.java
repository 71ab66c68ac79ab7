package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.CarriedOn;
import java.util.List;
import java.util.Optional;

/**
 * Where the joints of an axle stand in one pose, for whoever asks what they carry. In the body's axes, m, {@link Place}.
 *
 * @param rods of a live axle
 * @param crank of a Watt's linkage
 * @param leaves left and right, or none
 */
public record AxleJoints(List<RodAt> rods, Optional<CrankAt> crank, List<LeafAt> leaves, SideAt left, SideAt right) {
    public AxleJoints {
        rods = List.copyOf(rods);
        leaves = List.copyOf(leaves);
    }

    public SideAt side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Which end of a rod, if any, is a pin of the bell-crank. */
    public enum Pin {
        NONE,
        BODY_END,
        AXLE_END
    }

    /**
     * A rod between two ball joints.
     *
     * @param name as in answers, such as {@code lowerLinkLeft}
     * @param body end on the body, or the pin of a crank that the body carries
     * @param moving end on the axle or upright, or the pin of a crank that the axle carries
     * @param rate along its line, N/m
     * @param stretch by how much it is longer than it was made, m
     */
    public record RodAt(String name, Place body, Place moving, double rate, double stretch, Pin pin) {}

    /**
     * A bell-crank.
     *
     * @param axis about which it turns, a unit vector
     * @param turn from where it was measured, right-handed about the axis, rad
     * @param onAxle whether the axle carries its pivot
     */
    public record CrankAt(Place pivot, Place axis, double turn, boolean onAxle) {}

    /**
     * A leaf.
     *
     * @param rearEye the shackle's lower end, of the links that stand for the leaf
     * @param shackle its upper pivot
     */
    public record LeafAt(Side side, Place frontEye, Place rearEye, Place shackle) {}

    /**
     * One side.
     *
     * @param carrier the axle, or this side's upright, as a part that goes where the wheel goes
     * @param centre of the wheel
     * @param contact of the tyre
     * @param arms of an independent wheel, the lower one first
     */
    public record SideAt(
            Side side,
            Frame carrier,
            Place centre,
            Place contact,
            List<ArmAt> arms,
            Optional<StrutAt> strut,
            Optional<RodAt> tieRod,
            Optional<LineAt> spring,
            Optional<LineAt> damper,
            Optional<BarLinkAt> bar) {
        public SideAt {
            arms = List.copyOf(arms);
        }
    }

    /**
     * An arm between two pivots on the body and a ball joint on the upright.
     *
     * @param is which of the parts that carry springs it is
     */
    public record ArmAt(CarriedOn is, Frame frame, Place front, Place rear, Place outer) {}

    /**
     * A strut, fixed to the upright, that slides through its top on the body.
     *
     * @param along from its top down, a unit vector
     * @param length from its top to its foot on the upright, m
     * @param ratio −d(length)/d(travel of the wheel)
     */
    public record StrutAt(Place top, Place along, double length, double ratio) {}

    /** A spring or damper between the body and a part. */
    public record LineAt(Place top, Place bottom, CarriedOn on) {
        /** m. */
        public double length() {
            return top.distanceTo(bottom);
        }
    }

    /**
     * The drop link of a bar.
     *
     * @param slope d(place of its lower end along the link, away from the arm) per own travel of the wheel, or with this wheel up by
     *     one and the other down by one of a live axle
     */
    public record BarLinkAt(Place armEnd, Place linkEnd, CarriedOn on, double slope) {}

    /** A rigid part: where it was measured and where it is now. */
    public static final class Frame {
        private final Place measured;
        private final Place now;
        private final double[] turn;

        Frame(Part part) {
            measured = new Place(part.measuredX, part.measuredY, part.measuredZ);
            now = new Place(part.x, part.y, part.z);
            turn = part.turn.clone();
        }

        /** Its own place of reference as it was measured: of a live axle the middle of the wheel centres. */
        public Place measured() {
            return measured;
        }

        /** Where a point of it is, that was measured at this place. */
        public Place place(Place point) {
            Place arm = direction(point.minus(measured));
            return now.plus(1, arm);
        }

        /** Where a direction of it points, that was measured so. */
        public Place direction(Place d) {
            return new Place(
                    turn[0] * d.x() + turn[1] * d.y() + turn[2] * d.z(),
                    turn[3] * d.x() + turn[4] * d.y() + turn[5] * d.z(),
                    turn[6] * d.x() + turn[7] * d.y() + turn[8] * d.z());
        }

        /** How a direction of the body looks from this part: as it would have been measured on it. */
        public Place seen(Place d) {
            return new Place(
                    turn[0] * d.x() + turn[3] * d.y() + turn[6] * d.z(),
                    turn[1] * d.x() + turn[4] * d.y() + turn[7] * d.z(),
                    turn[2] * d.x() + turn[5] * d.y() + turn[8] * d.z());
        }
    }
}
