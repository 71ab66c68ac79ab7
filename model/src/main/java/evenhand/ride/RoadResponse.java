package evenhand.ride;

import java.util.Arrays;

/**
 * What a random road does to a quarter car at a speed, as r.m.s. values.
 *
 * <pre>  x² = ∫ |X(f)|²·Gd(f/V)/V df  </pre>
 * over the frequencies that the road has at this speed. The integral runs over the logarithm of frequency, by Gauss's
 * eight points in panels that double in width away from both modes, so that a lightly damped one is met as closely as a
 * strong one; a rational integrand converges geometrically then: to 1e-8 of the value from a damping ratio of 0.001 on, as
 * tests show. Where the road's density has corners, panels end there.
 *
 * @param bodyAcceleration m/s²
 * @param weightedAcceleration by {@link Weighting#WK}, m/s²
 * @param suspensionTravel m
 * @param tyreDeflection m, from rest
 */
public record RoadResponse(
        double bodyAcceleration, double weightedAcceleration, double suspensionTravel, double tyreDeflection) {
    private static final double[] NODES = {
        0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
    };
    private static final double[] WEIGHTS = {
        0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
    };

    /** Widest panel, in the logarithm of frequency: the weighting curve bends within such a width. */
    private static final double WIDEST = 0.7;

    /** Doublings of a panel from the narrowest resonance to the widest panel. */
    private static final int MOST_DOUBLINGS = 24;

    /**
     * Asks a damped quarter car.
     *
     * @param speed m/s, above zero
     * @throws IllegalArgumentException of a car without damping, whose response grows without end
     */
    public static RoadResponse of(QuarterCar car, Road road, double speed) {
        if (!(car.dampingRate() > 0) || !(speed > 0)) {
            throw new IllegalArgumentException("needs a damper and a speed above zero");
        }
        double[] edges = edges(car.modes(), road, speed);
        Transfer transfer = new Transfer(car);
        double[] up = new double[NODES.length]; // of a panel's points over its middle
        double[] down = new double[NODES.length];
        double acceleration = 0;
        double weighted = 0;
        double travel = 0;
        double tyre = 0;
        for (int i = 0; i + 1 < edges.length; i++) {
            int parts = (int) Math.ceil((edges[i + 1] - edges[i]) / WIDEST);
            double half = parts == 0 ? 0 : (edges[i + 1] - edges[i]) / parts / 2;
            for (int pair = 0; pair < NODES.length && parts > 0; pair++) {
                up[pair] = Math.exp(half * NODES[pair]);
                down[pair] = 1 / up[pair];
            }
            for (int part = 0; part < parts; part++) {
                double middle = Math.exp(edges[i] + (2 * part + 1) * half);
                for (int point = 0; point < 2 * NODES.length; point++) {
                    int pair = point / 2;
                    double frequency = point % 2 == 0 ? middle * up[pair] : middle * down[pair];
                    transfer.at(frequency);
                    double share = half * WEIGHTS[pair] * frequency * road.density(frequency / speed) / speed;
                    double one = share * transfer.bodyAccelerationSquared;
                    acceleration += one;
                    weighted += one * Weighting.WK.squared(frequency);
                    travel += share * transfer.suspensionTravelSquared;
                    tyre += share * transfer.tyreDeflectionSquared;
                }
            }
        }
        return new RoadResponse(Math.sqrt(acceleration), Math.sqrt(weighted), Math.sqrt(travel), Math.sqrt(tyre));
    }

    /** Ends of the panels, logarithms of Hz, rising. */
    private static double[] edges(Modes modes, Road road, double speed) {
        double low = Math.log(road.lowest() * speed);
        double high = Math.log(road.highest() * speed);
        double[] corners = road.corners();
        double[] edges = new double[2 + corners.length + 2 * (2 * MOST_DOUBLINGS + 1)];
        int count = 0;
        edges[count++] = low;
        edges[count++] = high;
        for (double corner : corners) {
            double at = Math.log(corner * speed);
            if (at > low && at < high) {
                edges[count++] = at;
            }
        }
        for (int mode = 0; mode < 2; mode++) {
            Modes.Mode one = mode == 0 ? modes.body() : modes.hop();
            if (one.dampingRatio() >= 1) {
                continue; // smooth: its poles lie a quarter turn away
            }
            double centre = Math.log(one.frequency());
            double width = Math.asin(one.dampingRatio()); // distance of the pole in the logarithm of frequency
            if (centre > low && centre < high) {
                edges[count++] = centre;
            }
            for (int k = 0; k < MOST_DOUBLINGS && width < 2 * WIDEST; k++, width *= 2) {
                if (centre - width > low && centre - width < high) {
                    edges[count++] = centre - width;
                }
                if (centre + width > low && centre + width < high) {
                    edges[count++] = centre + width;
                }
            }
        }
        double[] rising = Arrays.copyOf(edges, count);
        Arrays.sort(rising);
        return rising;
    }
}
