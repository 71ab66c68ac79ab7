package evenhand.bump;

import evenhand.suspension.DamperLines;
import evenhand.suspension.ForceLines;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.events.ODEEventDetector;

/**
 * A body's end on both wheels of an axle, each a {@link WheelStation} with all that bends: springs with their stops, dampers
 * by their curves, tyres that may leave the road. Its own state is place and speed of the wheels.
 *
 * <pre>
 *  F = 2·(S(u) + D(u') − S(travel))     u = travel + w − z
 *  m_u·w'' = T(r − w) − T(0) − F/2      T = max(0, held + k·(r − w))
 * </pre>
 * A step stays on the straight pieces on which it begins; where one ends is a {@link CornerDetector corner}.
 */
final class OnWheels extends BodyEnd {
    /** A corner is passed when it is passed by so much, m or m/s: what is less is rounding. */
    private static final double PASSED = 1e-12;

    /** What a wheel does at most, m/s and m/s², to know how long a corner need not be looked for. */
    private static final double FASTEST_TRAVEL = 5;

    private static final double HARDEST_PULL = 500;

    private final WheelStation station;
    private final ForceLines spring;
    private final DamperLines damper;
    private final double springAtRest;
    private final double tyreAtRest;

    private int springPiece;
    private int damperPiece;
    private boolean onGround;

    OnWheels(WheelStation station) {
        this.station = station;
        spring = station.suspension();
        damper = station.damper();
        springAtRest = spring.force(station.travel());
        tyreAtRest = Math.max(0, station.tyreHeld());
    }

    @Override
    int states() {
        return 2;
    }

    @Override
    double push(double time, double[] state, double[] slope, int at, double body, double bodySpeed) {
        double travel = station.travel() + state[at] - body;
        double closing = state[at + 1] - bodySpeed;
        double push = spring.force(springPiece, travel) + damper.force(damperPiece, travel, closing) - springAtRest;
        double tyre = onGround ? station.tyreHeld() + station.tyreRate() * (road(time) - state[at]) : 0;
        slope[at] = state[at + 1];
        slope[at + 1] = (tyre - tyreAtRest - push) / station.wheelMass();
        return 2 * push;
    }

    @Override
    void settle(double time, double[] state, int at, double body, double bodySpeed) {
        double travel = station.travel() + state[at] - body;
        springPiece = spring.pieceAt(before(travel));
        damperPiece = damper.pieceAt(before(damper.over(travel, state[at + 1] - bodySpeed)));
        onGround = pressed(time, state, at) > 0;
    }

    /** How far a tyre is pressed in, m; below zero its distance from the road. */
    private double pressed(double time, double[] state, int at) {
        return road(time) - state[at] + station.tyreHeld() / station.tyreRate();
    }

    /** Each corner by itself: two that are passed within one look are both found. */
    @Override
    List<ODEEventDetector> corners(HalfCarInTime car, int at) {
        List<ODEEventDetector> corners = new ArrayList<>();
        for (int piece = 0; piece + 1 < spring.pieces(); piece++) {
            int below = piece;
            double corner = passed(spring.high(piece));
            corners.add(new CornerDetector(
                    FASTEST_TRAVEL,
                    (time, state) -> travel(car, state, at) - corner,
                    above -> springPiece = above ? below + 1 : below));
        }
        for (int piece = 0; piece + 1 < damper.pieces(); piece++) {
            int below = piece;
            double corner = passed(damper.end(piece));
            corners.add(new CornerDetector(
                    HARDEST_PULL,
                    (time, state) -> damper.over(travel(car, state, at), closing(car, state, at)) - corner,
                    above -> damperPiece = above ? below + 1 : below));
        }
        corners.add(new CornerDetector(
                FASTEST_TRAVEL, (time, state) -> pressed(time, state, at), above -> onGround = above));
        return corners;
    }

    /** Where a piece is left upwards, or come to from above. */
    private static double passed(double end) {
        return end + PASSED;
    }

    private double travel(HalfCarInTime car, double[] state, int at) {
        return station.travel() + state[at] - car.body(this, state);
    }

    private double closing(HalfCarInTime car, double[] state, int at) {
        return state[at + 1] - car.bodySpeed(this, state);
    }

    /** A corner is passed by a little before it counts, for at rest nothing moves off it. */
    private static double before(double place) {
        return place - PASSED;
    }

    @Override
    double energy(double time, double[] state, int at, double body) {
        double wheel = state[at];
        double pressed = pressed(time, state, at);
        double held = Math.max(0, station.tyreHeld() / station.tyreRate());
        return station.wheelMass() * state[at + 1] * state[at + 1]
                + 2
                        * (spring.work(station.travel(), station.travel() + wheel - body)
                                - springAtRest * (wheel - body)
                                + tyreAtRest * (wheel - road(time))
                                + station.tyreRate() / 2 * (square(Math.max(0, pressed)) - square(held)));
    }

    private static double square(double x) {
        return x * x;
    }
}
