package evenhand.bump;

import java.util.List;
import org.hipparchus.ode.events.ODEEventDetector;

/**
 * A body's end on its ride rate, tyres in series, with the equivalent damper between road and body: linear, without wheels,
 * so that it may neither lift nor strike.
 *
 * <pre>  F = k·(r − z) + c·(r' − z')  </pre>
 */
final class OnRideRate extends BodyEnd {
    private final double rate;
    private final double damping;

    /**
     * @param rate k of the whole axle, N/m
     * @param damping c of the whole axle, N·s/m
     */
    OnRideRate(double rate, double damping) {
        this.rate = rate;
        this.damping = damping;
    }

    @Override
    int states() {
        return 0;
    }

    @Override
    double push(double time, double[] state, double[] slope, int at, double body, double bodySpeed) {
        return rate * (road(time) - body) + damping * (roadRise(time) - bodySpeed);
    }

    @Override
    void settle(double time, double[] state, int at, double body, double bodySpeed) {
        // One straight line throughout.
    }

    @Override
    List<ODEEventDetector> corners(HalfCarInTime car, int at) {
        return List.of();
    }

    @Override
    double energy(double time, double[] state, int at, double body) {
        double pressed = road(time) - body;
        return rate * pressed * pressed / 2;
    }
}
