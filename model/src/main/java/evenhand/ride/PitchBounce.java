package evenhand.ride;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.InertiaEstimate;
import java.util.OptionalDouble;

/**
 * The sprung mass on the ride rates of both axles, tyres in series, undamped: its bounce and its pitch.
 *
 * <pre>  z'' + α·z + β·θ = 0     θ'' + β/k²·z + γ·θ = 0     λ = ω²: (α − λ)·(γ − λ) = β²/k²  </pre>
 * z up, θ nose up, α = (kf + kr)/ms, β = (kf·as − kr·bs)/ms, γ = (kf·as² + kr·bs²)/(ms·k²), ride rates of whole axles,
 * distances from the sprung centre of gravity. A mode turns about its centre at x = β/(α − λ) ahead of it. The pitch has its
 * centre nearer than k, the bounce farther away: their product is −k².
 *
 * <p>Source: Gillespie 1992 ch. 5.
 *
 * @param bounceFrequency Hz
 * @param pitchFrequency Hz
 * @param bounceCentre ahead of the sprung centre of gravity positive, m; none where the body bounces level
 * @param pitchCentre the same of pitch, m
 * @param pitchInertia of the sprung mass, kg·m²
 */
public record PitchBounce(
        double bounceFrequency,
        double pitchFrequency,
        OptionalDouble bounceCentre,
        double pitchCentre,
        double pitchInertia) {
    /** Of a car at its ride height, with its ride rates per wheel, N/m. */
    public static PitchBounce of(Car car, double frontRideRate, double rearRideRate) {
        Car.Sprung sprung = car.sprung();
        return of(
                sprung.mass(),
                InertiaEstimate.pitch(car),
                sprung.behindFront(),
                car.wheelbase() - sprung.behindFront(),
                2 * frontRideRate,
                2 * rearRideRate);
    }

    /**
     * Of a body by its numbers.
     *
     * @param mass sprung, kg
     * @param inertia in pitch, kg·m²
     * @param toFront centre of gravity to front axle, m
     * @param toRear to rear axle, m
     * @param frontRate ride rate of the whole front axle, N/m
     * @param rearRate of the rear axle
     */
    public static PitchBounce of(
            double mass, double inertia, double toFront, double toRear, double frontRate, double rearRate) {
        double square = inertia / mass;
        double alpha = (frontRate + rearRate) / mass;
        double beta = (frontRate * toFront - rearRate * toRear) / mass;
        double gamma = (frontRate * toFront * toFront + rearRate * toRear * toRear) / inertia;
        double half = (alpha - gamma) / 2;
        double apart = Math.sqrt(half * half + beta * beta / square);
        double away = half >= 0 ? half + apart : half - apart; // α − λ of the pitch
        double pitch = alpha - away;
        double bounce = gamma + away; // the sum of both is α + γ
        double pitchCentre = away == 0 ? 0 : beta / away;
        return new PitchBounce(
                Math.sqrt(bounce) / (2 * Math.PI),
                Math.sqrt(pitch) / (2 * Math.PI),
                pitchCentre == 0 ? OptionalDouble.empty() : OptionalDouble.of(-square / pitchCentre),
                pitchCentre,
                inertia);
    }

    /**
     * Speed at which the end that a bump reaches last comes into step with the other one after so many cycles of the
     * front: V = L/(N·(1/ff − 1/fr)), m/s. None where the rear is not the quicker one.
     *
     * <p>Source: Olley's rule as in Gillespie 1992 ch. 5.
     */
    public static OptionalDouble inStepSpeed(
            double wheelbase, double frontFrequency, double rearFrequency, double cycles) {
        double lag = cycles * (1 / frontFrequency - 1 / rearFrequency);
        return lag > 0 ? OptionalDouble.of(wheelbase / lag) : OptionalDouble.empty();
    }

    /** Part of a wave that lifts the middle between the axles: |cos(π·L/λ)|, λ its length, m. Gillespie 1992 ch. 5. */
    public static double bounceShare(double wheelbase, double waveLength) {
        return Math.abs(Math.cos(Math.PI * wheelbase / waveLength));
    }

    /** Part of a wave that tilts the line between the axles: |sin(π·L/λ)|. */
    public static double pitchShare(double wheelbase, double waveLength) {
        return Math.abs(Math.sin(Math.PI * wheelbase / waveLength));
    }

    /** The natural frequency of one end by itself on its ride rate, Hz, with the sprung mass that stands on it. */
    public static double endFrequency(Car car, End end, double rideRate) {
        Car.Sprung sprung = car.sprung();
        return Math.sqrt(2 * rideRate / (sprung.mass() * sprung.share(end))) / (2 * Math.PI);
    }
}
