package evenhand.ride;

import evenhand.car.Car;
import evenhand.car.InertiaEstimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The body over one hump, front wheels first and rear wheels L/V later: a half car on its ride rates, tyres in series, with
 * the equivalent dampers between road and body, linear, so that it may neither lift nor strike. What it is for is
 * flat ride: how little the body is left pitching once both axles are over it.
 *
 * <p>Steps of Runge and Kutta, fourth order, fine against the quickest mode and the hump. Source: the equations of
 * {@link PitchBounce} with damping and road added; flat ride after Olley, as in Gillespie 1992 ch. 5.
 */
public final class BodyOverHump {
    /** Length of time that is followed after the rear wheels are over, s. */
    private static final double AFTER = 2.5;

    private static final double STEPS_PER_CYCLE = 60;
    private static final int LEAST_STEPS_OVER_HUMP = 24;

    private final double mass;
    private final double inertia;
    private final double toFront;
    private final double toRear;
    private final double frontRate;
    private final double rearRate;
    private final double frontDamping;
    private final double rearDamping;
    private final double wheelbase;
    private final double quickest; // Hz

    /** z, z', θ, θ' and their slopes in one place. */
    private final double[] state = new double[4];

    private final double[] slope = new double[4];
    private final double[] trial = new double[4];
    private final double[] sum = new double[4];

    /**
     * What one speed gives.
     *
     * @param speed m/s
     * @param peakAcceleration greatest size of the acceleration of the sprung centre of gravity, m/s²
     * @param pitchOver greatest pitch while it passes, nose up or down, rad
     * @param pitchAfter pitch that is left when the rear wheels are over, from nose up to nose down, rad
     * @param bounceAfter up and down of the sprung centre of gravity that is left then, from top to bottom, m
     * @param pitchOverBounce how much the body goes against itself at the axles for each part that it goes together:
     *     pitch that is left times half the wheelbase, over bounce that is left
     */
    public record Passage(
            double speed,
            double peakAcceleration,
            double pitchOver,
            double pitchAfter,
            double bounceAfter,
            double pitchOverBounce) {}

    private BodyOverHump(Car car, Ride ride) {
        Car.Sprung sprung = car.sprung();
        mass = sprung.mass();
        inertia = InertiaEstimate.pitch(car);
        toFront = sprung.behindFront();
        toRear = car.wheelbase() - toFront;
        wheelbase = car.wheelbase();
        frontRate = 2 * ride.front().rates().ride();
        rearRate = 2 * ride.rear().rates().ride();
        frontDamping = damping(ride.front());
        rearDamping = damping(ride.rear());
        quickest = Math.max(
                ride.pitchBounce().bounceFrequency(), ride.pitchBounce().pitchFrequency());
    }

    private static double damping(AxleRide axle) {
        return axle.damped()
                .map(damped -> 2 * damped.quarterCar().dampingRate())
                .orElse(0.0);
    }

    /**
     * Passages over a hump h·sin(π·x/l) at each speed.
     *
     * @param car settled at its ride height, whose ride this is
     * @param height m
     * @param length m
     * @param speeds m/s
     */
    public static List<Passage> over(Car car, Ride ride, double height, double length, List<Double> speeds) {
        BodyOverHump body = new BodyOverHump(car, ride);
        List<Passage> passages = new ArrayList<>(speeds.size());
        for (double speed : speeds) {
            passages.add(body.pass(height, length, speed));
        }
        return passages;
    }

    private Passage pass(double height, double length, double speed) {
        double over = (wheelbase + length) / speed;
        double coarse = 1 / (STEPS_PER_CYCLE * quickest);
        double fine = Math.min(coarse, length / speed / LEAST_STEPS_OVER_HUMP);
        int passing = (int) Math.ceil(over / fine);
        fine = over / passing;
        Arrays.fill(state, 0);
        double peak = 0;
        double pitchOver = 0;
        double noseUp = Double.NEGATIVE_INFINITY;
        double noseDown = Double.POSITIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        double bottom = Double.POSITIVE_INFINITY;
        int steps = passing + (int) Math.ceil(AFTER / coarse);
        for (int i = 0; i < steps; i++) {
            double step = i < passing ? fine : coarse;
            double time = i < passing ? i * fine : over + (i - passing) * coarse;
            slopeAt(state, time, height, length, speed);
            peak = Math.max(peak, Math.abs(slope[1]));
            add(1.0 / 6, 0.5, step, true);
            slopeAt(trial, time + step / 2, height, length, speed);
            add(2.0 / 6, 0.5, step, false);
            slopeAt(trial, time + step / 2, height, length, speed);
            add(2.0 / 6, 1, step, false);
            slopeAt(trial, time + step, height, length, speed);
            add(1.0 / 6, 0, step, false);
            for (int j = 0; j < 4; j++) {
                state[j] += step * sum[j];
            }
            if (i < passing) {
                pitchOver = Math.max(pitchOver, Math.abs(state[2]));
            } else {
                noseUp = Math.max(noseUp, state[2]);
                noseDown = Math.min(noseDown, state[2]);
                top = Math.max(top, state[0]);
                bottom = Math.min(bottom, state[0]);
            }
        }
        double pitchAfter = noseUp - noseDown;
        double bounceAfter = top - bottom;
        return new Passage(speed, peak, pitchOver, pitchAfter, bounceAfter, pitchAfter * wheelbase / 2 / bounceAfter);
    }

    private void add(double weight, double part, double step, boolean first) {
        for (int j = 0; j < 4; j++) {
            sum[j] = (first ? 0 : sum[j]) + weight * slope[j];
            trial[j] = state[j] + part * step * slope[j];
        }
    }

    private void slopeAt(double[] at, double time, double height, double length, double speed) {
        double front = frontRate * (road(time * speed, height, length) - at[0] - toFront * at[2])
                + frontDamping * (speed * grade(time * speed, height, length) - at[1] - toFront * at[3]);
        double behind = time * speed - wheelbase;
        double rear = rearRate * (road(behind, height, length) - at[0] + toRear * at[2])
                + rearDamping * (speed * grade(behind, height, length) - at[1] + toRear * at[3]);
        slope[0] = at[1];
        slope[1] = (front + rear) / mass;
        slope[2] = at[3];
        slope[3] = (toFront * front - toRear * rear) / inertia;
    }

    private static double road(double x, double height, double length) {
        return x <= 0 || x >= length ? 0 : height * Math.sin(Math.PI * x / length);
    }

    private static double grade(double x, double height, double length) {
        return x <= 0 || x >= length ? 0 : height * Math.PI / length * Math.cos(Math.PI * x / length);
    }
}
