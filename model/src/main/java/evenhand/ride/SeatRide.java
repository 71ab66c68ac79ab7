package evenhand.ride;

/**
 * How a random road at a speed is felt where the driver's seat is bolted down, on a {@link HalfCar}.
 *
 * <pre>  a² = ∫ |X(f)|²·Wk(f)²·Gd(f/V)/V df  </pre>
 * over the frequencies that the road has at this speed, those of the axles' own figures. The integral runs over frequency by Gauss's
 * six points in panels that are never wider than their distance from the nearest {@link HalfCarPoles pole}, than
 * their place and the weighting allow, nor than a wave of the rear axle's lag, V/L; tests show 1e-6 of the value for any car and road. Where
 * the road's density has corners, panels end there.
 *
 * @param car on its wheels
 * @param behindFrontAxle of the seat, m
 * @param weightedAcceleration r.m.s. by {@link Weighting#WK}, m/s²
 */
public record SeatRide(HalfCar car, double behindFrontAxle, double weightedAcceleration) {
    private static final int PAIRS = 3;
    private static final double[] NODES = {0.2386191860831969, 0.6612093864662645, 0.932469514203152};
    private static final double[] WEIGHTS = {0.467913934572691, 0.3607615730481386, 0.1713244923791704};

    /** Width of a panel over its distance from a pole ahead, and from one behind. */
    private static final double TOWARDS = 0.7;

    private static final double AWAY = 1.2;

    /** Width over the frequency at which the panel begins: weighting and density bend there. */
    private static final double OF_ITS_PLACE = 0.6;

    /** A pole that rounding puts on the axis itself narrows a panel no further. */
    private static final double NARROWEST = 1e-9;

    /** What is left of a panel is taken with it where it is not more than this part of its place. */
    private static final double SLIVER = 1e-9;

    /**
     * Asks a half car.
     *
     * @param speed m/s, above zero
     * @throws IllegalArgumentException of a car without damping at an end, whose response grows without end
     */
    static SeatRide of(HalfCar car, double behindFrontAxle, Road road, double speed) {
        return of(car, car.front().modes(), car.rear().modes(), behindFrontAxle, road, speed);
    }

    /** The same where the modes of its ends by themselves are known. */
    static SeatRide of(HalfCar car, Modes front, Modes rear, double behindFrontAxle, Road road, double speed) {
        return new SeatRide(car, behindFrontAxle, felt(car, front, rear, behindFrontAxle, road, speed));
    }

    /** What is felt there on another road, r.m.s., m/s². */
    public double on(Road road, double speed) {
        return felt(car, car.front().modes(), car.rear().modes(), behindFrontAxle, road, speed);
    }

    private static double felt(HalfCar car, Modes front, Modes rear, double behindFrontAxle, Road road, double speed) {
        if (!(car.front().dampingRate() > 0 && car.rear().dampingRate() > 0 && speed > 0)) {
            throw new IllegalArgumentException("needs dampers at both ends and a speed above zero");
        }
        SeatTransfer seat = new SeatTransfer(car, behindFrontAxle);
        HalfCarPoles poles = new HalfCarPoles(car, front, rear);
        double lag = 2 * Math.PI * car.wheelbase() / speed;
        double widest = speed / car.wheelbase(); // a wave of the lag
        double end = road.highest() * speed;
        double[] corners = road.corners();
        int corner = 0;
        double from = road.lowest() * speed;
        double sum = 0;
        while (from < end) {
            while (corner < corners.length && corners[corner] * speed <= from) {
                corner++;
            }
            double stop = corner < corners.length ? Math.min(end, corners[corner] * speed) : end;
            double to = Math.min(stop, from + width(from, poles, widest));
            if (isSliver(to, stop)) {
                to = stop;
            }
            double middle = (from + to) / 2;
            double half = (to - from) / 2;
            double cos = Math.cos(lag * middle);
            double sin = Math.sin(lag * middle);
            double part = 0;
            for (int point = 0; point < PAIRS; point++) {
                double off = half * NODES[point];
                double cosOff = Math.cos(lag * off);
                double sinOff = Math.sin(lag * off);
                part += WEIGHTS[point]
                        * (at(seat, road, speed, middle - off, cos * cosOff + sin * sinOff, sin * cosOff - cos * sinOff)
                                + at(
                                        seat,
                                        road,
                                        speed,
                                        middle + off,
                                        cos * cosOff - sin * sinOff,
                                        sin * cosOff + cos * sinOff));
            }
            sum += half * part;
            from = to;
        }
        return Math.sqrt(sum / speed);
    }

    private static double at(SeatTransfer seat, Road road, double speed, double frequency, double cos, double sin) {
        seat.at(2 * Math.PI * frequency, cos, sin);
        return seat.accelerationSquared * Weighting.WK.squared(frequency) * road.density(frequency / speed);
    }

    private static boolean isSliver(double from, double to) {
        return to - from < SLIVER * to;
    }

    private static double width(double from, HalfCarPoles poles, double widest) {
        double width = Math.min(widest, OF_ITS_PLACE * from);
        for (int k = 0; k < poles.count; k++) {
            double off = poles.frequency[k] - from;
            double distance = Math.sqrt(off * off + poles.away[k] * poles.away[k]);
            width = Math.min(width, (off > 0 ? TOWARDS : AWAY) * distance);
        }
        return Math.max(width, NARROWEST * from);
    }
}
