package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.List;

/**
 * A measured curve: straight lines through its points, the last slope going on. Of a stop, force (N) over deflection
 * (m); of a damper, force (N) over speed (m/s).
 */
public record Curve(List<Point> points) {
    /** A curve without force. */
    public static final Curve NO_FORCE = new Curve(List.of(new Point(0, 0), new Point(1, 0)));

    /** One point of a curve, SI. */
    public record Point(double at, double force) {}

    public Curve {
        points = List.copyOf(points);
        require(points.size() >= 2, "curve", "needs at least two points");
        Point first = points.get(0);
        require(first.at() == 0 && first.force() == 0, "curve", "must begin at zero deflection and zero force");
        for (int i = 1; i < points.size(); i++) {
            require(points.get(i).at() > points.get(i - 1).at(), "curve", "must have its points in rising order");
            require(
                    points.get(i).force() >= points.get(i - 1).force(),
                    "curve",
                    "must not lose force on the way: every force at least that of the point before");
        }
    }

    /** Deflection of the last point. */
    public double end() {
        return points.get(points.size() - 1).at();
    }
}
