package evenhand.linkage;

import evenhand.car.links.Clearance;
import java.util.Optional;

/**
 * A gap in the present pose: distance from a point to a point, a line or a plane, in the coordinates that are given, those of
 * the part that carries what is to be kept away from. Of a plane it is positive on the side where the point is at rest.
 */
final class Gap {
    final Clearance given;
    private final Optional<Part> fromPart;
    private final Place from;
    private final Optional<Part> toPart;
    private final double sideAtRest;
    private final double axisX; // 1 where the coordinate counts
    private final double axisY;
    private final double axisZ;
    private final Place to;
    double least = Double.POSITIVE_INFINITY;

    /** Made with the axle at rest; an absent part is the body. */
    Gap(Clearance given, Optional<Part> fromPart, Optional<Part> toPart) {
        this.given = given;
        this.fromPart = fromPart;
        this.toPart = toPart;
        from = Place.of(given.from().at());
        Clearance.To target = given.to();
        axisX = target.ahead().isPresent() ? 1 : 0;
        axisY = target.left().isPresent() ? 1 : 0;
        axisZ = target.up().isPresent() ? 1 : 0;
        to = new Place(
                target.ahead().orElse(0), target.left().orElse(0), target.up().orElse(0));
        boolean plane = axisX + axisY + axisZ == 1;
        sideAtRest = plane ? (offset() < 0 ? -1 : 1) : 0;
    }

    /** Sum of the offsets along the coordinates that count: the signed distance from a plane. */
    private double offset() {
        return read(true);
    }

    private double read(boolean signed) {
        double x = from.x();
        double y = from.y();
        double z = from.z();
        if (fromPart.isPresent()) {
            Part part = fromPart.get();
            x = part.placeX(from.x(), from.y(), from.z());
            y = part.placeY(from.x(), from.y(), from.z());
            z = part.placeZ(from.x(), from.y(), from.z());
        }
        if (toPart.isPresent()) {
            Part part = toPart.get();
            double mx = part.measuredXAt(x, y, z);
            double my = part.measuredYAt(x, y, z);
            double mz = part.measuredZAt(x, y, z);
            x = mx;
            y = my;
            z = mz;
        }
        double dx = axisX * (x - to.x());
        double dy = axisY * (y - to.y());
        double dz = axisZ * (z - to.z());
        return signed ? dx + dy + dz : Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** The gap, less the radius, m. */
    double gap() {
        return (sideAtRest == 0 ? read(false) : sideAtRest * read(true)) - given.radius();
    }

    /** Keeps the least gap. */
    void look() {
        least = Math.min(least, gap());
    }
}
