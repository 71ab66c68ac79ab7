package evenhand.linkage;

import evenhand.car.Side;
import java.util.Optional;

/** How a link lies at rest, rad, told in the views that suit the direction in which it is longest. */
public sealed interface LinkSlopes permits LinkSlopes.Along, LinkSlopes.Across, LinkSlopes.Upright {
    /** Along the car: in side view front end up positive; in plan front end further out, of a single link further left. */
    record Along(double sideSlope, double planSlope) implements LinkSlopes {}

    /** Across the car: from the rear left end up positive; in plan left end ahead positive. */
    record Across(double rearSlope, double planSlope) implements LinkSlopes {}

    /** Upright: top forwards positive, top to the left positive. */
    record Upright(double leanForward, double leanLeft) implements LinkSlopes {}

    /** Slopes of a line between both ends; of which side the link is, if it is one of a pair. */
    static LinkSlopes of(Place line, Optional<Side> side) {
        double x = Math.abs(line.x());
        double y = Math.abs(line.y());
        double z = Math.abs(line.z());
        if (x >= y && x >= z) {
            double sign = Math.signum(line.x());
            double out = side.map(Side::sign).orElse(1.0);
            return new Along(Math.atan2(sign * line.z(), x), Math.atan2(out * sign * line.y(), x));
        }
        if (y >= z) {
            double sign = Math.signum(line.y());
            return new Across(Math.atan2(sign * line.z(), y), Math.atan2(sign * line.x(), y));
        }
        double sign = Math.signum(line.z());
        return new Upright(Math.atan2(sign * line.x(), z), Math.atan2(sign * line.y(), z));
    }
}
