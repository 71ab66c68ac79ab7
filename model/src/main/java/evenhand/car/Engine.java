package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The engine.
 *
 * @param torque at full throttle
 * @param redLine rad/s, where it is known
 */
public record Engine(Torque torque, OptionalDouble redLine) {
    public Engine {
        require(
                redLine.orElse(Double.MAX_VALUE) >= torque.end(),
                "redLine",
                "lies below the last point of torque; take that point out, or raise the red line");
    }

    /** Torque over engine speed, straight lines through its points. */
    public record Torque(List<Point> points) {
        /** One point: engine speed, rad/s, and torque, N·m. */
        public record Point(double speed, double torque) {}

        public Torque {
            points = List.copyOf(points);
            require(!points.isEmpty(), "torque", "needs at least one point");
            require(points.get(0).speed() > 0, "torque", "must begin above standstill");
            for (int i = 0; i < points.size(); i++) {
                require(points.get(i).torque() > 0, "torque", "must be above zero at every point");
                require(
                        i == 0 || points.get(i).speed() > points.get(i - 1).speed(),
                        "torque",
                        "must have its points in rising order of engine speed");
            }
        }

        /** The point of the most torque; the lower speed where two have as much. */
        public Point best() {
            Point best = points.get(0);
            for (Point point : points) {
                best = point.torque() > best.torque() ? point : best;
            }
            return best;
        }

        private double end() {
            return points.get(points.size() - 1).speed();
        }
    }
}
