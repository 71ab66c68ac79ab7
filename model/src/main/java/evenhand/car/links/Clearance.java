package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import java.util.OptionalDouble;

/**
 * A gap that is watched through the travel.
 *
 * @param from a point of one part
 * @param to what it must keep away from: a point, a line or a plane, by the coordinates that are given
 * @param radius taken off the distance, m
 * @param least gap that is wanted, m
 */
public record Clearance(String name, From from, To to, double radius, double least) {
    public Clearance {
        require(!name.isBlank(), "name", "must not be blank");
        require(radius >= 0, "radius", "must not be below zero");
        require(Double.isFinite(least), "least", "must be a finite length");
        require(from.on() != to.on(), "to", "stands on the same part as \"from\", from which it never moves");
    }

    /** A point, given as it was measured. */
    public record From(Part on, MiddlePoint at) {}

    /** A point, a line along the axis of the coordinate that is not given, or a plane square to the one that is. */
    public record To(Part on, OptionalDouble ahead, OptionalDouble left, OptionalDouble up) {
        public To {
            require(
                    ahead.isPresent() || left.isPresent() || up.isPresent(),
                    "up",
                    "needs at least one of \"ahead\", \"left\" and \"up\"");
        }
    }

    /** The part that carries an end of the gap. */
    public enum Part {
        BODY("body"),
        AXLE("axle"),
        LEFT_WHEEL("left wheel"),
        RIGHT_WHEEL("right wheel");

        private final String key;

        Part(String key) {
            this.key = key;
        }

        /** Name in files and sentences. */
        public String key() {
            return key;
        }
    }
}
