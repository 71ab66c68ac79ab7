package evenhand.linkage;

import evenhand.car.Side;
import java.util.List;
import java.util.Optional;

/**
 * An axle in one pose, as lines between points, to be drawn. In the body's axes, m, {@link Place}: the body stands still, the
 * wheels move.
 *
 * @param wheels left and right
 * @param forceLines along which a side force moves nothing: one of a live axle, one of each wheel else
 * @param rollCentre where it is in rear view; absent where force lines do not cross
 */
public record AxleLines(List<Line> lines, List<Wheel> wheels, List<ForceLine> forceLines, Optional<Place> rollCentre) {
    public AxleLines {
        lines = List.copyOf(lines);
        wheels = List.copyOf(wheels);
        forceLines = List.copyOf(forceLines);
    }

    /** What a line stands for. */
    public enum Kind {
        /** A rod between two joints. */
        ROD(true),
        /** From a pivot of an arm to its ball joint. */
        ARM(true),
        /** From the axle to the front end of an arm that is part of it. */
        TORQUE_ARM(true),
        /** Half a bell-crank, from its pivot to a pin. */
        CRANK(true),
        /** Half a leaf as the link that stands for it, from its eye to its hinge at a quarter of the half; keeps its length in side view. */
        LEAF(false),
        /** What of a leaf goes with the axle, between both hinges. */
        SEAT(true),
        SHACKLE(false),
        /** From the top on the body to the bottom on the upright, sliding. */
        STRUT(false),
        /** From joint to joint of an upright, and to the wheel's centre. */
        UPRIGHT(true),
        /** Between the wheel centres of a live axle. */
        TUBE(true),
        /** From a joint on a live axle to its tube. */
        BRACKET(true),
        /** Between the tie rods' inner ends, or the arm on which one swings. */
        RACK(true),
        SPRING(false),
        DAMPER(false),
        /** The part of an anti-roll bar that lies across the car. */
        BAR(true),
        BAR_ARM(true),
        BAR_LINK(true),
        /** The last piece of a propeller shaft, which slides. */
        SHAFT(false),
        /** What turns in line with the gearbox or stays where it is, and the pinion's own shaft. */
        SHAFT_END(true);

        private final boolean rigid;

        Kind(boolean rigid) {
            this.rigid = rigid;
        }

        /** Whether it keeps its length in every pose; a rod of an axle that more rods hold than can give a little. */
        public boolean isRigid() {
            return rigid;
        }
    }

    /**
     * A line.
     *
     * @param name as in limits and lists of links: {@code lowerLinkLeft}, {@code damperRight}
     * @param hangs whether {@code from} is a place on the body, or on its rack
     */
    public record Line(Kind kind, String name, Place from, Place to, boolean hangs) {
        /** m. */
        public double length() {
            return from.distanceTo(to);
        }
    }

    /**
     * A wheel.
     *
     * @param spin direction of its axle, outwards
     */
    public record Wheel(Side side, Place centre, Place contact, Place spin) {}

    /** A line in rear view through a place, dz/dy. */
    public record ForceLine(Place through, double slope) {}

    static String on(Side side, String name) {
        return name + (side == Side.LEFT ? "Left" : "Right");
    }
}
