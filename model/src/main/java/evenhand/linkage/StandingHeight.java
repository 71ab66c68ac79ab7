package evenhand.linkage;

import evenhand.car.Curve;
import evenhand.car.Side;
import evenhand.car.Stops;
import evenhand.car.links.Carried;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The heave at which springs and stops, as they are given and where they are drawn, carry an axle's static load.
 *
 * <pre>  Σ_j rate·max(0, ℓ0 − ℓ_j(u))·(−∂ℓ_j/∂u) + stops(u) = load </pre>
 * ℓ0 free length, ℓ length of the coil, u heave from rest. Positive where the car stands lower than it is drawn. Bind of the
 * links counts nothing, nor does metal on metal.
 */
final class StandingHeight {
    /** Farther away it is not looked for, m. */
    private static final double FARTHEST = 0.060;

    private static final double LOOK = 5e-3;
    private static final double CLOSE = 1e-11;

    private final AxleLinkage axle;
    private final Carried carried;

    private StandingHeight(AxleLinkage axle, Carried carried) {
        this.axle = axle;
        this.carried = carried;
    }

    /** Absent where it is farther than 60 mm away or beyond the links' reach. */
    static OptionalDouble of(AxleLinkage axle, Carried carried) {
        axle.rest();
        OptionalDouble found = new StandingHeight(axle, carried).find();
        axle.rest();
        return found;
    }

    private OptionalDouble find() {
        double over = excess(0);
        if (over == 0) {
            return OptionalDouble.of(0);
        }
        double way = over > 0 ? -1 : 1; // too much force: it stands higher
        double near = 0;
        while (near < FARTHEST) {
            double far = Math.min(FARTHEST, near + LOOK);
            if (!axle.moveTo(way * far, way * far)) {
                return OptionalDouble.empty();
            }
            if (excess(way * far) * over <= 0) {
                return OptionalDouble.of(way * between(way, near, far, over));
            }
            near = far;
        }
        return OptionalDouble.empty();
    }

    private double between(double way, double from, double to, double over) {
        double near = from;
        double far = to;
        while (far - near > CLOSE) {
            double middle = (near + far) / 2;
            axle.moveTo(way * middle, way * middle);
            if (excess(way * middle) * over > 0) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return (near + far) / 2;
    }

    /** Force of springs and stops less the load, N, in the present pose. */
    private double excess(double heave) {
        double force = 2 * stops(carried.stops(), heave);
        for (Side side : Side.values()) {
            double pressed = Math.max(0, carried.freeLength() - axle.springLength(side));
            force += carried.rate() * pressed * axle.springRatio(side);
        }
        return force - carried.load();
    }

    /** Force of the stops of one side, upwards on the body, N. */
    private static double stops(Stops stops, double travel) {
        double force = 0;
        if (stops.bump().isPresent()) {
            Stops.Bump bump = stops.bump().get();
            force += force(bump.curve(), travel - bump.gap());
        }
        if (stops.droop().isPresent()) {
            Stops.Droop droop = stops.droop().get();
            force += droop.rate() * Math.min(0, travel + droop.travel());
        }
        return force;
    }

    /** Straight lines between the curve's points, the last slope going on. */
    private static double force(Curve curve, double deflection) {
        if (deflection <= 0) {
            return 0;
        }
        List<Curve.Point> points = curve.points();
        int piece = 1;
        while (piece < points.size() - 1 && deflection > points.get(piece).at()) {
            piece++;
        }
        Curve.Point low = points.get(piece - 1);
        Curve.Point high = points.get(piece);
        return low.force() + (high.force() - low.force()) * (deflection - low.at()) / (high.at() - low.at());
    }
}
