package evenhand.ride;

import java.util.ArrayList;
import java.util.List;

/** Comfort against grip over the damping of one axle, everything else as it is. */
public final class DampingSweep {
    private static final int POINTS = 24;
    /** From here to there, parts of the critical damping of the sprung mass on its wheel rate. */
    private static final double LEAST = 0.05;

    private static final double MOST = 1.2;

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
        List<Point> points = new ArrayList<>(POINTS);
        double critical = axle.undamped().criticalDampingRate();
        for (int i = 0; i < POINTS; i++) {
            double rate = critical * LEAST * Math.pow(MOST / LEAST, i / (POINTS - 1.0));
            QuarterCar car = axle.undamped().damped(rate);
            points.add(point(axle, car, car.modes(), RoadResponse.of(car, road, speed)));
        }
        return points;
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
