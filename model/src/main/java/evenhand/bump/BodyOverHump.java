package evenhand.bump;

import evenhand.car.Car;
import evenhand.road.Profile;
import java.util.ArrayList;
import java.util.List;

/**
 * The body over one hump, front wheels first and rear wheels L/V later: a {@link HalfCarInTime} on its {@link OnRideRate ride
 * rates}, linear, so that it may neither lift nor strike. What it is for is flat ride: how little the body is left
 * pitching once both axles are over it.
 *
 * <p>Source: flat ride after Olley, as in Gillespie 1992 ch. 5.
 */
public final class BodyOverHump {
    /** Length of time that is followed after the rear wheels are over, s. */
    private static final double AFTER = 2.5;

    /** Seen so often, s: a body swings some thirty times as slowly. */
    private static final double SEEN_EVERY = 2e-2;

    /**
     * What carries the body over one axle.
     *
     * @param rideRate of one wheel, N/m
     * @param damping equivalent rate at one wheel, N·s/m; zero without dampers
     */
    public record Carried(double rideRate, double damping) {}

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

    private BodyOverHump() {}

    /**
     * Passages over a hump h·sin(π·x/l) at each speed.
     *
     * @param car settled at its ride height
     * @param height m
     * @param length m
     * @param speeds m/s
     */
    public static List<Passage> over(
            Car car, Carried front, Carried rear, double height, double length, List<Double> speeds) {
        Profile hump = Profile.hump(height, length);
        List<Passage> passages = new ArrayList<>(speeds.size());
        for (double speed : speeds) {
            passages.add(pass(car, front, rear, hump, speed));
        }
        return passages;
    }

    private static Passage pass(Car car, Carried front, Carried rear, Profile hump, double speed) {
        HalfCarInTime half = new HalfCarInTime(car, end(front), end(rear), () -> {});
        Seen over = new Seen(car);
        half.watch(over, SEEN_EVERY);
        boolean overIt = half.over(hump, hump, speed);
        Seen after = new Seen(car);
        half.watch(after, SEEN_EVERY);
        boolean behindIt = half.onTo(half.time() + AFTER);
        if (!overIt || !behindIt) {
            throw new IllegalStateException("a linear body cannot be too stiff to be followed");
        }
        double pitchAfter = after.pitch.highest - after.pitch.lowest;
        double bounceAfter = after.bounce.highest - after.bounce.lowest;
        return new Passage(
                speed,
                Math.max(over.pull.greatest(), after.pull.greatest()),
                over.pitch.greatest(),
                pitchAfter,
                bounceAfter,
                pitchAfter * car.wheelbase() / 2 / bounceAfter);
    }

    private static OnRideRate end(Carried axle) {
        return new OnRideRate(2 * axle.rideRate(), 2 * axle.damping());
    }

    /** Pitch, nose up, and heave of the sprung centre of gravity. */
    private static final class Seen implements HalfCarInTime.Watch {
        private final Crest pitch = new Crest();
        private final Crest bounce = new Crest();
        private final Crest pull = new Crest();
        private final double wheelbase;
        private final double rearPart;

        Seen(Car car) {
            wheelbase = car.wheelbase();
            rearPart = car.sprung().rearShare();
        }

        @Override
        public void begin() {
            pitch.begin();
            bounce.begin();
            pull.begin();
        }

        @Override
        public void see(double time, double front, double rear, double frontPull, double rearPull) {
            pitch.see(time, (front - rear) / wheelbase);
            bounce.see(time, front + (rear - front) * rearPart);
            pull.see(time, frontPull + (rearPull - frontPull) * rearPart);
        }
    }
}
