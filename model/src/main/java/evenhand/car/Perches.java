package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.OptionalDouble;

/**
 * The screwed perches that an axle's springs stand on.
 *
 * @param pitch how far a turn moves a perch along its spring, m
 */
public record Perches(double pitch, Room left, Room right) {
    /**
     * Thread that is left at one corner, m along the spring, each where it was measured.
     *
     * @param raises by which the perch can still raise the body
     * @param lowers by which it can still let it down
     */
    public record Room(OptionalDouble raises, OptionalDouble lowers) {
        public static final Room UNKNOWN = new Room(OptionalDouble.empty(), OptionalDouble.empty());

        public Room {
            require(raises.orElse(0) >= 0, "raises", "must not be below zero");
            require(lowers.orElse(0) >= 0, "lowers", "must not be below zero");
        }
    }

    public Perches {
        require(pitch > 0, "pitch", "must be above zero");
    }

    /** Thread left on one side. */
    public Room room(Side side) {
        return side == Side.LEFT ? left : right;
    }
}
