package evenhand.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Comfort against grip over the damping of one axle, everything else as it is. */
public final class DampingSweep {
    private static final int POINTS = 24;
    /** From here to there, parts of the critical damping of the sprung mass on its wheel rate. */
    private static final double LEAST = 0.05;

    private static final double MOST = 1.2;

    /** Of the golden section: each try leaves this part of the bracket. */
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** A tenth of a per cent of the rate, from a bracket of two steps of the curve. */
    private static final int TRIES = 13;

    private DampingSweep() {}

    /**
     * One damper.
     *
     * @param dampingRate at the wheel, N·s/m
     * @param dampingRatio of the body
     * @param weightedAcceleration m/s²
     * @param tyreLoadVariation r.m.s. over rest
     */
    public record Point(
            double dampingRate, double dampingRatio, double weightedAcceleration, double tyreLoadVariation) {}

    /** The curve, damping rising by equal ratios. */
    public static List<Point> of(AxleRide axle, Road road, double speed) {
        return of(axle, road, speed, POINTS);
    }

    /** The same in so many points, two or more. */
    public static List<Point> of(AxleRide axle, Road road, double speed, int count) {
        List<Point> points = new ArrayList<>(count);
        double critical = axle.undamped().criticalDampingRate();
        for (int i = 0; i < count; i++) {
            points.add(at(axle, critical * LEAST * Math.pow(MOST / LEAST, i / (count - 1.0)), road, speed));
        }
        return points;
    }

    /** The damper of a rate at the wheel, N·s/m. */
    public static Point at(AxleRide axle, double rate, Road road, double speed) {
        QuarterCar car = axle.undamped().damped(rate);
        return point(axle, car, car.modes(), RoadResponse.of(car, road, speed));
    }

    /** The damper of the least weighted acceleration; none where the curve still falls at one of its ends. */
    public static Optional<Point> softest(AxleRide axle, Road road, double speed) {
        return least(axle, road, speed, Point::weightedAcceleration);
    }

    /** The damper of the least change of the tyre's load; none where the curve still falls at one of its ends. */
    public static Optional<Point> steadiest(AxleRide axle, Road road, double speed) {
        return least(axle, road, speed, Point::tyreLoadVariation);
    }

    /** By golden section over the logarithm of the rate, between the neighbours of the curve's lowest point. */
    private static Optional<Point> least(AxleRide axle, Road road, double speed, ToDoubleFunction<Point> figure) {
        List<Point> curve = of(axle, road, speed);
        int lowest = 0;
        for (int i = 1; i < POINTS; i++) {
            if (figure.applyAsDouble(curve.get(i)) < figure.applyAsDouble(curve.get(lowest))) {
                lowest = i;
            }
        }
        if (lowest == 0 || lowest == POINTS - 1) {
            return Optional.empty();
        }
        double low = Math.log(curve.get(lowest - 1).dampingRate());
        double high = Math.log(curve.get(lowest + 1).dampingRate());
        Point left = at(axle, Math.exp(high - GOLDEN * (high - low)), road, speed);
        Point right = at(axle, Math.exp(low + GOLDEN * (high - low)), road, speed);
        for (int i = 0; i < TRIES; i++) {
            if (figure.applyAsDouble(left) < figure.applyAsDouble(right)) {
                high = Math.log(right.dampingRate());
                right = left;
                left = at(axle, Math.exp(high - GOLDEN * (high - low)), road, speed);
            } else {
                low = Math.log(left.dampingRate());
                left = right;
                right = at(axle, Math.exp(low + GOLDEN * (high - low)), road, speed);
            }
        }
        return Optional.of(figure.applyAsDouble(left) < figure.applyAsDouble(right) ? left : right);
    }

    /** Where a damper that is there lies on it. */
    public static Point of(AxleRide axle, AxleRide.Damped damped) {
        return point(axle, damped.quarterCar(), damped.modes(), damped.road());
    }

    private static Point point(AxleRide axle, QuarterCar car, Modes modes, RoadResponse road) {
        return new Point(
                car.dampingRate(), modes.body().dampingRatio(), road.weightedAcceleration(), axle.loadVariation(road));
    }
}
