package evenhand.bump;

import evenhand.car.Car;
import evenhand.car.InertiaEstimate;
import evenhand.road.Piece;
import evenhand.road.Profile;
import java.util.List;
import java.util.TreeSet;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/**
 * The body on both its axles, seen from the side, driven over a road in time: front wheels first, rear wheels L/V later. What
 * carries it is a {@link BodyEnd} at each axle.
 *
 * <pre>
 *  ms·(bs·zf'' + as·zr'')/L = Ff + Fr     I·(zr'' − zf'')/L = bs·Fr − as·Ff
 * </pre>
 * zf, zr the body above its axles, m, up positive from balance; as, bs from the sprung centre of gravity to the axles.
 * Integrated by the library's Dormand and Prince 5(4). Its event detection ends a step wherever a law bends, and the
 * ends of the road's smooth stretches under either axle are ends of steps too, so that no step sees a bend.
 *
 * <p>Source: Gillespie 1992 ch. 5.
 */
final class HalfCarInTime implements OrdinaryDifferentialEquation {
    private static final int FRONT = 0;
    private static final int REAR = 1;
    private static final int FRONT_SPEED = 2;
    private static final int REAR_SPEED = 3;
    private static final int OF_BODY = 4;

    /** Error of a step in places, m, and in speeds over it, 1/s: a wheel's hop. */
    private static final double TOLERANCE = 1e-8;

    private static final double SPEED_SCALE = 60;

    private static final double LEAST_STEP = 1e-13;
    private static final double LONGEST_STEP = 0.1;

    /** Beyond, something is too stiff or the road too long to be followed. */
    private static final int MOST_EVALUATIONS = 50_000_000;

    /** After so many evaluations it is asked whether to go on. */
    private static final int ASKING = 4096;

    /** Ends of stretches under both axles that lie closer are one, s. */
    private static final double SAME_TIME = 1e-9;

    /** Places that are seen lie at least so far apart, as a part of the time between them. */
    private static final double APART = 0.05;

    /** Sees the car within each step, at its ends, and at even times or half way between them. */
    interface Watch {
        /** A step begins: nothing bends until the next one does. */
        void begin();

        /**
         * @param front place of the body above the front axle, m, and so on
         * @param frontPull its acceleration, m/s²
         */
        void see(double time, double front, double rear, double frontPull, double rearPull);
    }

    private final double mass;
    private final double inertia;
    private final double toFront;
    private final double toRear;
    private final BodyEnd front;
    private final BodyEnd rear;
    private final Runnable goOn;
    private final ODEIntegrator integrator;
    private final double[] slope;
    private double sampling = Series.FINEST;
    private int asked;
    private double[] state;
    private double time;

    /**
     * @param car settled at its ride height
     * @param goOn asked again and again on the way; what it throws ends the drive
     */
    HalfCarInTime(Car car, BodyEnd front, BodyEnd rear, Runnable goOn) {
        Car.Sprung sprung = car.sprung();
        mass = sprung.mass();
        inertia = InertiaEstimate.pitch(car);
        toFront = sprung.behindFront();
        toRear = car.wheelbase() - toFront;
        this.front = front;
        this.rear = rear;
        this.goOn = goOn;
        int dimension = OF_BODY + front.states() + rear.states();
        slope = new double[dimension];
        state = new double[dimension];
        integrator = new DormandPrince54Integrator(LEAST_STEP, LONGEST_STEP, allowed(dimension), new double[dimension]);
        integrator.setMaxEvaluations(MOST_EVALUATIONS);
        front.corners(this, OF_BODY).forEach(integrator::addEventDetector);
        rear.corners(this, OF_BODY + front.states()).forEach(integrator::addEventDetector);
    }

    /** Errors that a step may have: of the body two places and two speeds, then of each wheel place and speed. */
    private static double[] allowed(int dimension) {
        double[] allowed = new double[dimension];
        for (int i = 0; i < dimension; i++) {
            boolean speed = i < OF_BODY ? i >= FRONT_SPEED : i % 2 == 1;
            allowed[i] = speed ? SPEED_SCALE * TOLERANCE : TOLERANCE;
        }
        return allowed;
    }

    /** Sees it at multiples of a time, s. */
    void watch(Watch watch, double every) {
        sampling = every;
        integrator.clearStepHandlers();
        integrator.addStepHandler(step -> see(step, watch));
    }

    private void see(ODEStateInterpolator step, Watch watch) {
        double from = step.getPreviousState().getTime();
        double to = step.getCurrentState().getTime();
        watch.begin();
        see(step, from, watch);
        double close = close(from, to);
        long tick = (long) Math.floor((from + close) / sampling) + 1;
        if (tick * sampling >= to - close) {
            see(step, (from + to) / 2, watch);
        }
        for (; tick * sampling < to - close; tick++) {
            see(step, tick * sampling, watch);
        }
        see(step, to, watch);
    }

    /** What is nearer to an end of a step is seen there, s. */
    private double close(double from, double to) {
        return APART * Math.min(sampling, to - from);
    }

    private void see(ODEStateInterpolator step, double at, Watch watch) {
        ODEStateAndDerivative there = step.getInterpolatedState(at);
        double[] places = there.getPrimaryState();
        double[] rates = computeDerivatives(at, places);
        watch.see(at, places[FRONT], places[REAR], rates[FRONT_SPEED], rates[REAR_SPEED]);
    }

    /**
     * Over a road from balance, until the rear wheels are over it.
     *
     * @return whether it could be followed
     */
    boolean over(Profile underFront, Profile underRear, double speed) {
        double wheelbase = toFront + toRear;
        TreeSet<Double> ends = new TreeSet<>();
        ends.add(wheelbase / speed);
        underFront.pieces().forEach(piece -> ends.add(piece.to() / speed));
        underRear.pieces().forEach(piece -> ends.add((piece.to() + wheelbase) / speed));
        try {
            for (double end : ends) {
                if (end - time > SAME_TIME) {
                    double middle = (time + end) / 2 * speed;
                    front.enter(under(underFront, middle), speed, 0);
                    rear.enter(under(underRear, middle - wheelbase), speed, wheelbase);
                    until(end);
                }
            }
            front.enter(behind(underFront), speed, 0);
            rear.enter(behind(underRear), speed, wheelbase);
            return true;
        } catch (MathRuntimeException tooStiff) {
            return false;
        }
    }

    /** On from there on the level, to a time, s; whether it could be followed. */
    boolean onTo(double end) {
        try {
            until(end);
            return true;
        } catch (MathRuntimeException tooStiff) {
            return false;
        }
    }

    private void until(double end) {
        front.settle(time, state, OF_BODY, state[FRONT], state[FRONT_SPEED]);
        rear.settle(time, state, OF_BODY + front.states(), state[REAR], state[REAR_SPEED]);
        ODEStateAndDerivative there = integrator.integrate(this, new ODEState(time, state), end);
        state = there.getPrimaryState();
        time = end;
    }

    private static Piece under(Profile road, double x) {
        if (x < 0) {
            return new Piece.Line(-1, 0, 0, 0);
        }
        List<Piece> pieces = road.pieces();
        int low = 0;
        int high = pieces.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (x < pieces.get(middle).to()) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low < pieces.size() ? pieces.get(low) : behind(road);
    }

    private static Piece behind(Profile road) {
        return new Piece.Line(road.length(), Double.MAX_VALUE, road.after(), 0);
    }

    double time() {
        return time;
    }

    /** Energy above rest on the road behind the event, J. */
    double energy() {
        double together = (toRear * state[FRONT_SPEED] + toFront * state[REAR_SPEED]) / (toFront + toRear);
        double against = (state[REAR_SPEED] - state[FRONT_SPEED]) / (toFront + toRear);
        return (mass * together * together + inertia * against * against) / 2
                + front.energy(time, state, OF_BODY, state[FRONT])
                + rear.energy(time, state, OF_BODY + front.states(), state[REAR]);
    }

    double body(BodyEnd end, double[] at) {
        return at[end == front ? FRONT : REAR];
    }

    double bodySpeed(BodyEnd end, double[] at) {
        return at[end == front ? FRONT_SPEED : REAR_SPEED];
    }

    @Override
    public int getDimension() {
        return slope.length;
    }

    /** The library copies what this gives, so it is one array for all. */
    @Override
    public double[] computeDerivatives(double at, double[] y) {
        if (++asked % ASKING == 1) {
            goOn.run();
        }
        double atFront = front.push(at, y, slope, OF_BODY, y[FRONT], y[FRONT_SPEED]);
        double atRear = rear.push(at, y, slope, OF_BODY + front.states(), y[REAR], y[REAR_SPEED]);
        double together = (atFront + atRear) / mass; // of the centre of gravity
        double against = (toRear * atRear - toFront * atFront) / inertia; // tail up
        slope[FRONT] = y[FRONT_SPEED];
        slope[REAR] = y[REAR_SPEED];
        slope[FRONT_SPEED] = together - toFront * against;
        slope[REAR_SPEED] = together + toRear * against;
        return slope;
    }
}
