package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import java.util.OptionalDouble;

/**
 * The dampers of an axle.
 *
 * @param line between which points they work
 * @param closedLength between the eyes when it is closed, m, where known
 * @param openLength when it is open, m, where known
 */
public record Dampers(Line line, OptionalDouble closedLength, OptionalDouble openLength) {
    public Dampers {
        require(closedLength.orElse(1) > 0, "closedLength", "must be above zero");
        require(openLength.orElse(1) > 0, "openLength", "must be above zero");
        require(
                closedLength.orElse(0) < openLength.orElse(Double.MAX_VALUE),
                "openLength",
                "must be more than closedLength");
    }

    /** Where dampers work. */
    public sealed interface Line permits BetweenEyes, AroundStrut {}

    /** Dampers with eyes of their own. */
    public record BetweenEyes(Pair<Ends> ends) implements Line {}

    /** Dampers that are the struts: no eyes, no eye angles. */
    public record AroundStrut() implements Line {}

    /** Both eyes of one damper: top on the body, bottom on a moving part. */
    public record Ends(Eye top, Eye bottom, CarriedOn on) {
        public Ends {
            require(bottom.at().up() < top.at().up(), "bottom", "must stand below the top");
            require(
                    top.at().distanceTo(bottom.at()) >= Rod.SHORTEST,
                    "bottom",
                    "must stand at least 10 mm from the top");
        }
    }

    /**
     * An eye, or a stud, of a damper.
     *
     * @param tilt rad: outer end up of a bolt across, front end up of one along, top inwards of an upright stud
     * @param shim how far shims move the eye along its bolt as it is tilted, m: outwards, forwards, up
     */
    public record Eye(Point at, Bolt bolt, double tilt, double shim) {
        public Eye {
            require(Math.abs(tilt) < Math.PI / 2, "tilt", "must be less than 90 deg");
            require(Math.abs(shim) < 0.2, "shim", "must be less than 200 mm");
        }

        /** An eye on a level bolt across the car, without shims. */
        public static Eye across(Point at) {
            return new Eye(at, Bolt.ACROSS, 0, 0);
        }
    }

    /** Which way the bolt of an eye lies. */
    public enum Bolt {
        ACROSS("across"),
        ALONG("along"),
        UPRIGHT("upright");

        private final String key;

        Bolt(String key) {
            this.key = key;
        }

        /** Name in files and sentences. */
        public String key() {
            return key;
        }
    }
}
