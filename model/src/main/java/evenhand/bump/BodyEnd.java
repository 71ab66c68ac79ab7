package evenhand.bump;

import evenhand.road.Piece;
import java.util.List;
import org.hipparchus.ode.events.ODEEventDetector;

/**
 * What carries the body above one axle, both its wheels together: a force between road and body, with what moves by itself
 * in between. Up positive, from balance.
 */
abstract class BodyEnd {
    /** The road under the wheels: the smooth stretch that they are on, and where along it a time is. */
    private Piece road = new Piece.Line(0, 1, 0, 0);

    private double speed;
    private double behind; // m that the event is met later than time 0

    /** How many numbers its own state has. */
    abstract int states();

    /**
     * The force on the body, and how its own state changes, N.
     *
     * @param state of the whole car, its own from {@code at}
     * @param slope to be filled in from there
     * @param body height of the body above it, m
     * @param bodySpeed m/s
     */
    abstract double push(double time, double[] state, double[] slope, int at, double body, double bodySpeed);

    /** The pieces of its laws that hold at a state from which the next step begins. */
    abstract void settle(double time, double[] state, int at, double body, double bodySpeed);

    /** What ends a step: where its laws bend. */
    abstract List<ODEEventDetector> corners(HalfCarInTime car, int at);

    /** Energy above rest on the road as it is, J, without that of the body's motion. */
    abstract double energy(double time, double[] state, int at, double body);

    /** Onto another smooth stretch of road. */
    final void enter(Piece piece, double drivingSpeed, double metLater) {
        road = piece;
        speed = drivingSpeed;
        behind = metLater;
    }

    final double road(double time) {
        return road.height(time * speed - behind);
    }

    /** Rise of the road under the wheel, m/s. */
    final double roadRise(double time) {
        return road.slope(time * speed - behind) * speed;
    }
}
