package evenhand.car;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The brake forces of both axles: what the parts make of the force of the master cylinder's rod, or what a share leaves of a
 * wanted sum. Sets fields and allocates nothing. One per thread.
 *
 * <pre>
 *   p_f = F·(share)/A_f,  p_r = F·(1 − share)/A_r, beyond the knee of the valve  knee + slope·(p_r − knee)
 *   X_i = 2·c·(n·π/4·bore²)·max(0, p_i − threshold)·radius/loadedRadius
 * </pre>
 * F force of the rod behind the booster, N; p Pa; X force of both wheels of an axle on the road, N; one cylinder: both pressures are
 * F over its area. The knee is that at rest and {@code kneePerBump} times the rear axle's mean bump travel; it never falls below
 * zero. Each force is a straight line of F between its corners, so that a wanted sum is met exactly.
 *
 * <p>Source: Limpert, Brake Design and Safety, from memory; statics of fluids.
 */
public final class BrakeForces {
    /** Force of the rod, N; nothing where only a share is known. */
    public double rod;

    /** Brake forces on the road, N, positive, and their slopes over the rear axle's travel, N/m. */
    public double front;

    public double rear;
    public double frontByTravel;
    public double rearByTravel;

    /** Their slopes over the effort, set by {@link #apply} alone. */
    public double frontByEffort;

    public double rearByEffort;

    /** Pressures at the wheels, Pa. */
    public double frontPressure;

    public double rearPressure;

    private final boolean hasParts;
    private final double share;
    private final double frontPressureByForce;
    private final double rearPressureByForce;
    private final double frontByPressure; // N/Pa
    private final double rearByPressure;
    private final double frontThreshold;
    private final double rearThreshold;
    private final double kneeAtRest;
    private final double slope;
    private final double kneePerBump;
    private final double[] corners = new double[3]; // forces of the rod, N, rising

    // Of the travel at hand.
    private double knee;
    private double kneeByTravel;
    private double rearByRod;
    private double frontByRod;

    private BrakeForces(Optional<BrakeParts> parts, double share, double frontRadius, double rearRadius) {
        this.share = share;
        hasParts = parts.isPresent();
        if (parts.isEmpty()) {
            frontPressureByForce = 0;
            rearPressureByForce = 0;
            frontByPressure = 0;
            rearByPressure = 0;
            frontThreshold = 0;
            rearThreshold = 0;
            kneeAtRest = 0;
            slope = 1;
            kneePerBump = 0;
            return;
        }
        BrakeParts known = parts.get();
        frontPressureByForce = known.masterCylinder().frontPressureByForce();
        rearPressureByForce = known.masterCylinder().rearPressureByForce();
        frontByPressure = 2 * known.front().torqueByPressure() / frontRadius;
        rearByPressure = 2 * known.rear().torqueByPressure() / rearRadius;
        frontThreshold = known.front().thresholdPressure();
        rearThreshold = known.rear().thresholdPressure();
        Optional<BrakeParts.RearValve> valve = known.rearValve();
        kneeAtRest = valve.map(BrakeParts.RearValve::knee).orElse(Double.POSITIVE_INFINITY);
        slope = valve.map(BrakeParts.RearValve::slope).orElse(1.0);
        kneePerBump = valve.map(BrakeParts.RearValve::kneePerBump).orElse(0.0);
    }

    /** Those of a car: by its parts, or by the share that is given or estimated. */
    public static BrakeForces of(Car car) {
        return new BrakeForces(
                car.brakes().parts(),
                car.brakes().parts().isPresent() ? 0 : car.frontBrakeShare(),
                car.front().tyre().loadedRadius(),
                car.rear().tyre().loadedRadius());
    }

    /** Share of the front at a sum of forces, N, the rear axle at rest. */
    static double frontShare(BrakeParts parts, double frontRadius, double rearRadius, double sum) {
        BrakeForces forces = new BrakeForces(Optional.of(parts), 0, frontRadius, rearRadius);
        forces.reach(sum, 0);
        return forces.front / sum;
    }

    /** Whether the parts are known, and with them pressures and pedal. */
    public boolean hasParts() {
        return hasParts;
    }

    /** Sets forces that add up to a sum, N, at a travel of the rear axle, m. */
    public void reach(double sum, double rearTravel) {
        if (!hasParts) {
            front = share * sum;
            rear = sum - front;
            return;
        }
        standAt(rearTravel);
        if (!(sum > 0)) {
            press(0);
            return;
        }
        corners();
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        double reached = 0;
        for (int i = 0; i < corners.length && corners[i] < Double.POSITIVE_INFINITY; i++) {
            forces(corners[i]);
            if (front + rear >= sum) {
                high = corners[i];
                break;
            }
            low = corners[i];
            reached = front + rear;
        }
        lineAt(high < Double.POSITIVE_INFINITY ? (low + high) / 2 : 2 * low + 1);
        press(low + (sum - reached) / (frontByRod + rearByRod));
        // Along a held sum the rod follows the rear as the knee moves.
        double moved = rearByTravel / (frontByRod + rearByRod);
        rearByTravel -= rearByRod * moved;
        frontByTravel = -rearByTravel;
    }

    /** Sets what the rod's force makes, N, at a travel of the rear axle, m. Asked only where parts are known. */
    public void press(double rodForce, double rearTravel) {
        standAt(rearTravel);
        press(rodForce);
    }

    private void press(double rodForce) {
        forces(rodForce);
        frontByTravel = 0;
    }

    /**
     * Sets what an effort makes: a force of the rod where the parts are known, else a sum of both axles' forces, N. Below zero
     * it goes on along its first line, so that a search may pass there.
     *
     * @param rearTravel m
     */
    public void apply(double effort, double rearTravel) {
        if (!hasParts) {
            front = share * effort;
            rear = effort - front;
            frontByEffort = share;
            rearByEffort = 1 - share;
            return;
        }
        standAt(rearTravel);
        lineAt(effort);
        frontByTravel = 0;
        frontByEffort = frontByRod;
        rearByEffort = rearByRod;
    }

    /** Whether there is a force at an end. */
    public boolean frontBites() {
        return front > 0;
    }

    public boolean rearBites() {
        return rear > 0;
    }

    /** Whether the valve holds the rear back. */
    public boolean isHeld() {
        return hasParts && rod * rearPressureByForce > knee;
    }

    private void standAt(double rearTravel) {
        double here = kneeAtRest + (kneePerBump == 0 ? 0 : kneePerBump * rearTravel);
        knee = Math.max(0, here);
        kneeByTravel = here > 0 ? kneePerBump : 0;
    }

    /** Where the straight lines meet: each end begins to bite, the valve begins to hold back. */
    private void corners() {
        double biting = frontThreshold / frontPressureByForce;
        double atKnee = knee / rearPressureByForce;
        double before = rearThreshold <= knee || slope == 0 ? rearThreshold : knee + (rearThreshold - knee) / slope;
        double rearBiting =
                rearThreshold > knee && slope == 0 ? Double.POSITIVE_INFINITY : before / rearPressureByForce;
        corners[0] = Math.min(biting, Math.min(atKnee, rearBiting));
        corners[2] = Math.max(biting, Math.max(atKnee, rearBiting));
        corners[1] = middle(biting, atKnee, rearBiting);
    }

    private static double middle(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }

    private void forces(double rodForce) {
        rod = rodForce;
        frontPressure = rodForce * frontPressureByForce;
        double before = rodForce * rearPressureByForce;
        boolean held = before > knee;
        rearPressure = held ? knee + slope * (before - knee) : before;
        front = frontByPressure * Math.max(0, frontPressure - frontThreshold);
        rear = rearByPressure * Math.max(0, rearPressure - rearThreshold);
        rearByTravel = held && rearPressure > rearThreshold ? rearByPressure * (1 - slope) * kneeByTravel : 0;
    }

    /** Slopes over the rod's force, between corners. */
    private void lineAt(double rodForce) {
        forces(rodForce);
        frontByRod = front > 0 ? frontByPressure * frontPressureByForce : 0;
        boolean held = rodForce * rearPressureByForce > knee;
        rearByRod = rear > 0 ? rearByPressure * rearPressureByForce * (held ? slope : 1) : 0;
    }

    /**
     * Force of the foot that gives the rod behind the booster its force.
     *
     * <pre>  booster out = gain·in up to runOut, beyond it one for one;  in = pedal·ratio·efficiency  </pre>
     *
     * @param rodForce N
     * @param boosted whether the booster works
     */
    public static double pedalForce(BrakeParts parts, double rodForce, boolean boosted) {
        double in = rodForce;
        if (boosted && parts.booster().isPresent()) {
            BrakeParts.Booster booster = parts.booster().get();
            double full = booster.gain() * booster.runOut();
            in = rodForce <= full ? rodForce / booster.gain() : booster.runOut() + (rodForce - full);
        }
        return in / (parts.pedal().ratio() * parts.pedal().efficiency());
    }

    /** The other way: force of the rod behind the booster, N, at a force of the foot, N. */
    public static double rodForce(BrakeParts parts, double pedalForce, boolean boosted) {
        double in = pedalForce * parts.pedal().ratio() * parts.pedal().efficiency();
        if (!boosted || parts.booster().isEmpty()) {
            return in;
        }
        BrakeParts.Booster booster = parts.booster().get();
        return in <= booster.runOut()
                ? booster.gain() * in
                : booster.gain() * booster.runOut() + (in - booster.runOut());
    }

    /** The share of the front where there is a force; nothing without one. */
    public OptionalDouble frontShare() {
        return front + rear > 0 ? OptionalDouble.of(front / (front + rear)) : OptionalDouble.empty();
    }
}
