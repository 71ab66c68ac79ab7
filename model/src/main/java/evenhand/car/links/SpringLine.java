package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

/** The line along which each spring of an axle works. */
public sealed interface SpringLine permits SpringLine.BetweenPoints, SpringLine.AroundDamper, SpringLine.AroundStrut {
    /** Springs between seats of their own. */
    record BetweenPoints(Pair<Ends> ends) implements SpringLine {}

    /** Both seats of one spring: top on the body, bottom on a moving part. */
    record Ends(Point top, Point bottom, CarriedOn on) {
        public Ends {
            require(bottom.up() < top.up(), "bottom", "must stand below the top");
            require(top.distanceTo(bottom) >= Rod.SHORTEST, "bottom", "must stand at least 10 mm from the top");
        }
    }

    /** Coils around the dampers; {@code fittings} is what the damper is longer than its coil, m. */
    record AroundDamper(double fittings) implements SpringLine {
        public AroundDamper {
            require(Double.isFinite(fittings), "fittings", "must be a finite length");
        }
    }

    /** Coils around the struts; {@code fittings} is what the strut is longer than its coil, m. */
    record AroundStrut(double fittings) implements SpringLine {
        public AroundStrut {
            require(Double.isFinite(fittings), "fittings", "must be a finite length");
        }
    }
}
