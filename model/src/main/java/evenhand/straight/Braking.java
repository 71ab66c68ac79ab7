package evenhand.straight;

import evenhand.car.BrakeForces;
import evenhand.car.BrakeParts;
import evenhand.car.Brakes;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import java.util.function.Predicate;

/**
 * What a car answers when it brakes straight ahead: loads, brake forces and pedal at a deceleration, which wheel locks first, where
 * the ends change places, how it stands against the rules for passenger cars, and how long it takes to stop.
 *
 * <p>States come from {@link StraightAhead}. First lock and crossings are looked for in {@link EvenSteps}. A
 * car is asked by the deceleration z·g, so that a booster's end and a valve's knee are no corners on the way. Without the parts of
 * the brakes, pressures, pedal and stops are not known.
 *
 * <p>Sources: UN R13-H and 71/320/EEC (adhesion, order of locking); Gillespie 1992 ch. 3; Mitschke &amp; Wallentowitz (stopping
 * distance), from memory.
 */
public final class Braking {
    /** Furthest that a first lock is looked for, g. */
    public static final double FURTHEST_LOCK = 2;
    /** Furthest that a change of places is looked for, g. */
    public static final double FURTHEST_CROSSING = 1.5;

    /** Steps of the search per g. */
    private static final int STEPS = 200;
    /** Furthest that the rules are held against what the ends use, g, and steps of the search from place to place there. */
    private static final double FURTHEST_RULED = 1.2;

    private static final int STEPS_RULED = 2;
    /** Where the search begins, g: right at rest nothing is used. */
    private static final double BEGIN = 1e-6;
    /** Time in which a held pedal's deceleration is there, s. */
    private static final double BUILD_UP = 0.2;
    /** The tyres' own friction instead of a given one. */
    private static final double OWN = Double.NaN;

    /** One axle at a deceleration: load, force of both brakes and the one that uses as much as the whole car does, N. */
    public record OfAxle(
            double load, double force, double idealForce, OptionalDouble adhesion, OptionalDouble pressure) {}

    /**
     * One deceleration.
     *
     * @param deceleration m/s²
     * @param rodForce behind the booster, N, where the parts are known
     * @param pedalForce N, as asked with its booster or without
     * @param frontHeave m, up positive
     * @param pitch rad, nose down positive
     * @param antiDive share of the load transfer that the front links carry
     * @param antiLift the same of the rear links
     * @param windUp of the rear leaves, rad, nose of the axle up positive
     */
    public record Row(
            double deceleration,
            OfAxle front,
            OfAxle rear,
            OptionalDouble rodForce,
            OptionalDouble pedalForce,
            OptionalDouble pedalForceNoBooster,
            double frontHeave,
            double rearHeave,
            double pitch,
            double antiDive,
            double antiLift,
            OptionalDouble windUp) {
        /** k_f/k_r − 1: positive where the front uses more and locks first; none where the rear does not brake. */
        public OptionalDouble brakeBalance() {
            return front.adhesion.isPresent() && rear.adhesion.orElse(0) > 0
                    ? OptionalDouble.of(front.adhesion.getAsDouble() / rear.adhesion.getAsDouble() - 1)
                    : OptionalDouble.empty();
        }
    }

    /** The wheel that locks first, and at which deceleration, m/s². */
    public record Locks(Wheel wheel, double deceleration) {
        public End axle() {
            return wheel.end();
        }
    }

    /**
     * First lock at a friction.
     *
     * @param friction of the road; the tyres' own where none
     * @param locks none up to {@link #FURTHEST_LOCK}
     */
    public record Lock(OptionalDouble friction, Optional<Locks> locks) {
        /** Deceleration over friction. */
        public OptionalDouble efficiency() {
            return friction.isPresent() && locks.isPresent()
                    ? OptionalDouble.of(locks.get().deceleration() / Weights.GRAVITY / friction.getAsDouble())
                    : OptionalDouble.empty();
        }
    }

    /**
     * Where both ends use as much.
     *
     * @param deceleration m/s²
     * @param rearAfter whether the rear uses more beyond it
     */
    public record Crossing(double deceleration, boolean rearAfter) {}

    /**
     * A stop at a held pedal.
     *
     * @param deceleration m/s²; that of the first lock of the tyres where the pedal asks for more
     * @param distance m; none where the brakes do not bite
     */
    public record Stop(double pedalForce, double deceleration, boolean locks, OptionalDouble distance) {}

    /**
     * What is asked.
     *
     * @param decelerations m/s²
     * @param pedalForces N
     * @param speed from which it stops, m/s
     * @param boosted whether the booster works
     */
    public record Asked(
            List<Double> decelerations,
            List<Double> frictions,
            List<Double> pedalForces,
            double speed,
            boolean boosted) {
        /** What is asked lies between these: m/s². */
        public static final double LEAST_DECELERATION = 0.001 * Weights.GRAVITY;

        public static final double MOST_DECELERATION = 2 * Weights.GRAVITY;
        public static final double LEAST_FRICTION = 0.01;
        public static final double MOST_FRICTION = 3;
        /** N. */
        public static final double LEAST_PEDAL = 1;

        public static final double MOST_PEDAL = 5000;

        public Asked {
            decelerations = List.copyOf(decelerations);
            frictions = List.copyOf(frictions);
            pedalForces = List.copyOf(pedalForces);
        }
    }

    /**
     * The answer.
     *
     * @param rows at what was asked and every 0.05 g to 1.2 g, rising
     * @param locks in the order of the frictions, the tyres' own last
     * @param rearFirst whether the rear uses more from the first touch of the pedal on
     * @param stops where the parts are known
     */
    public record Answer(
            List<Row> rows,
            List<Lock> locks,
            List<Crossing> crossings,
            boolean rearFirst,
            List<BrakeRule> rules,
            List<Stop> stops) {
        /** Deceleration beyond which the rear goes first, m/s²: zero where it always does. */
        public OptionalDouble rearLocksAbove() {
            return rearLocksAbove(crossings, rearFirst);
        }

        private static OptionalDouble rearLocksAbove(List<Crossing> crossings, boolean rearFirst) {
            return rearFirst
                    ? OptionalDouble.of(0)
                    : crossings.stream()
                            .filter(Crossing::rearAfter)
                            .mapToDouble(Crossing::deceleration)
                            .findFirst();
        }

        /** The one at the tyres' own friction. */
        public Lock own() {
            return locks.get(locks.size() - 1);
        }

        /** The row at a deceleration, m/s². */
        public Optional<Row> at(double deceleration) {
            return rows.stream()
                    .filter(row -> Math.abs(row.deceleration() - deceleration) < SAME * Weights.GRAVITY)
                    .findFirst();
        }
    }

    /** Decelerations nearer than this, in g, are one. */
    private static final double SAME = 1e-9;

    private final Car car;
    private final StraightAhead ahead;
    private final Optional<BrakeParts> parts;
    private final double mass;
    private final EvenSteps steps;

    /** @param car at rest, its {@code lowered} carried out */
    public Braking(Car car) {
        this.car = car;
        ahead = new StraightAhead(car);
        steps = new EvenSteps(ahead, STEPS, ahead::brakeAt);
        parts = car.brakes().parts();
        mass = car.weights().mass();
    }

    /**
     * A car as read with its front share written down where a rear valve feels the axle: that of the parts at 0.5 g, the knee at
     * that state's travel. Any other car as it is, for its parts know their share by themselves.
     *
     * @param standing the same car at rest
     */
    public static Car shared(Car car, Car standing) {
        boolean feels = standing.brakes()
                .parts()
                .flatMap(BrakeParts::rearValve)
                .filter(valve -> valve.kneePerBump() > 0)
                .isPresent();
        Optional<Row> row = feels ? new Braking(standing).row(0.5 * Weights.GRAVITY, true) : Optional.empty();
        return row.isPresent()
                ? car.braked(new Brakes(OptionalDouble.of(row.get().front().force()
                        / (row.get().front().force() + row.get().rear().force()))))
                : car;
    }

    /** Answers all that is asked. */
    public Answer answer(Asked asked) {
        List<Row> rows = new ArrayList<>();
        ahead.rest();
        for (double g : places(asked)) {
            row(g * Weights.GRAVITY, asked.boosted()).ifPresent(rows::add);
        }
        List<Lock> locks = new ArrayList<>();
        asked.frictions().forEach(friction -> locks.add(firstLock(OptionalDouble.of(friction))));
        Lock own = firstLock(OptionalDouble.empty());
        locks.add(own);
        List<Stop> stops = new ArrayList<>();
        if (parts.isPresent()) {
            asked.pedalForces().forEach(pedal -> stops.add(stop(pedal, asked, own)));
        }
        return new Answer(rows, locks, crossings(), rearFirst(), BrakeRule.all(curve()), stops);
    }

    /** What is asked and every 0.05 g to 1.2 g, in g, rising. */
    private static List<Double> places(Asked asked) {
        List<Double> places = new ArrayList<>();
        for (int i = 1; i <= 24; i++) {
            places.add(i / 20.0);
        }
        for (double deceleration : asked.decelerations()) {
            double g = deceleration / Weights.GRAVITY;
            if (places.stream().noneMatch(place -> Math.abs(place - g) < SAME)) {
                places.add(g);
            }
        }
        places.sort(Double::compare);
        return places;
    }

    /** The state at a deceleration, m/s²; nothing where there is none. */
    public Optional<Row> row(double deceleration, boolean boosted) {
        if (!ahead.brakeAt(deceleration)) {
            return Optional.empty();
        }
        BrakeForces forces = ahead.brakes;
        double transfer = mass * deceleration * car.cgHeight() / car.wheelbase();
        OptionalDouble rod = parts.isPresent() ? OptionalDouble.of(forces.rod) : OptionalDouble.empty();
        double share = deceleration / Weights.GRAVITY;
        return Optional.of(new Row(
                deceleration,
                ofAxle(ahead.front, forces.front, share, forces.frontPressure),
                ofAxle(ahead.rear, forces.rear, share, forces.rearPressure),
                rod,
                pedal(forces.rod, boosted),
                pedal(forces.rod, false),
                ahead.heave(End.FRONT),
                ahead.heave(End.REAR),
                ahead.pitch(),
                ahead.front.liftOfBrakes() / transfer + 0.0,
                -ahead.rear.liftOfBrakes() / transfer + 0.0,
                windUp(forces.rear)));
    }

    private OfAxle ofAxle(AxleAlong axle, double force, double share, double pressure) {
        double load = axle.loads();
        return new OfAxle(
                load,
                force,
                share * load,
                load > 0 ? OptionalDouble.of(force / load) : OptionalDouble.empty(),
                parts.isPresent() ? OptionalDouble.of(pressure) : OptionalDouble.empty());
    }

    private OptionalDouble pedal(double rod, boolean boosted) {
        return parts.isPresent()
                ? OptionalDouble.of(BrakeForces.pedalForce(parts.get(), rod, boosted))
                : OptionalDouble.empty();
    }

    /** Wind-up of the rear leaves: moment of the ground's forces about the axle over their stiffness; braking turns it nose down. */
    private OptionalDouble windUp(double rearForce) {
        OptionalDouble stiffness = car.rear().reaction().windUpStiffness();
        return stiffness.isPresent()
                ? OptionalDouble.of(-rearForce * car.rear().tyre().loadedRadius() / stiffness.getAsDouble())
                : stiffness;
    }

    /** The least deceleration at which a wheel reaches its friction, N of it left to none. */
    public Lock firstLock(OptionalDouble friction) {
        double mu = friction.orElse(OWN);
        OptionalDouble found = first(FURTHEST_LOCK, () -> left(mu));
        if (found.isEmpty()) {
            return new Lock(friction, Optional.empty());
        }
        double front = ahead.leastLeft(End.FRONT, mu);
        double rear = ahead.leastLeft(End.REAR, mu);
        End end = front <= rear ? End.FRONT : End.REAR;
        return new Lock(friction, Optional.of(new Locks(Wheel.of(end, ahead.nearer(end)), found.getAsDouble())));
    }

    private double left(double friction) {
        return Math.min(ahead.leastLeft(End.FRONT, friction), ahead.leastLeft(End.REAR, friction));
    }

    /** The first deceleration, m/s², at which nothing is left of something that there is some of at rest, up to so many g. */
    private OptionalDouble first(double furthest, DoubleSupplier left) {
        double ofLow = Double.NaN;
        for (int i = 1; steps.at(i) <= furthest; i++) {
            if (!steps.reach(i)) {
                return OptionalDouble.empty();
            }
            double ofHigh = left.getAsDouble();
            if (ofHigh <= 0) {
                return OptionalDouble.of(
                        steps.closeIn(steps.at(i - 1), ofLow, steps.at(i), ofHigh, left) * Weights.GRAVITY);
            }
            ofLow = ofHigh;
        }
        return OptionalDouble.empty();
    }

    /** How much more the front uses than the rear, times both loads, N²: X_f·N_r − X_r·N_f. */
    private double frontLead() {
        return ahead.brakes.front * ahead.rear.loads() - ahead.brakes.rear * ahead.front.loads();
    }

    /** Whether the rear uses more from the first touch of the pedal on. */
    public boolean rearFirst() {
        ahead.rest();
        return ahead.brakeAt(BEGIN * Weights.GRAVITY) && frontLead() < 0;
    }

    /** Decelerations up to {@link #FURTHEST_CROSSING} at which both ends use as much. */
    public List<Crossing> crossings() {
        return crossings(crossing -> false);
    }

    /** The same up to and with the first one that is looked for. */
    private List<Crossing> crossings(Predicate<Crossing> lookedFor) {
        List<Crossing> crossings = new ArrayList<>();
        ahead.rest();
        if (!ahead.brakeAt(BEGIN * Weights.GRAVITY)) {
            return crossings;
        }
        double low = BEGIN;
        double lead = frontLead();
        for (int i = 1; steps.at(i) <= FURTHEST_CROSSING; i++) {
            if (!steps.reach(i)) {
                return crossings;
            }
            double high = steps.at(i);
            double next = frontLead();
            if (lead != 0 && next != 0 && lead < 0 != next < 0) {
                boolean rearAfter = next < 0;
                double sign = rearAfter ? 1 : -1;
                double at = steps.closeIn(low, sign * lead, high, sign * next, () -> sign * frontLead());
                Crossing crossing = new Crossing(at * Weights.GRAVITY, rearAfter);
                crossings.add(crossing);
                if (lookedFor.test(crossing)) {
                    return crossings;
                }
            }
            low = high;
            lead = next != 0 ? next : lead;
        }
        return crossings;
    }

    /** Deceleration beyond which the rear goes first, m/s²: zero where it always does, none up to {@link #FURTHEST_CROSSING}. */
    public OptionalDouble rearLocksAbove() {
        return rearFirst()
                ? Answer.rearLocksAbove(List.of(), true)
                : Answer.rearLocksAbove(crossings(Crossing::rearAfter), false);
    }

    /** Adhesion used at 0.01 to 1.2 g by 0.01 g, as far as there are states. */
    private List<BrakeRule.Used> curve() {
        List<BrakeRule.Used> curve = new ArrayList<>();
        for (int i = 1; steps.at(i) <= FURTHEST_RULED; i++) {
            if (!steps.reach(i) || !(ahead.front.loads() > 0) || !(ahead.rear.loads() > 0)) {
                return curve;
            }
            if (i % STEPS_RULED == 0) {
                curve.add(new BrakeRule.Used(
                        steps.at(i), ahead.brakes.front / ahead.front.loads(), ahead.brakes.rear / ahead.rear.loads()));
            }
        }
        return curve;
    }

    private Stop stop(double pedalForce, Asked asked, Lock own) {
        double rod = BrakeForces.rodForce(parts.orElseThrow(), pedalForce, asked.boosted());
        if (own.locks().isPresent()) {
            double most = own.locks().get().deceleration();
            ahead.rest();
            if (ahead.brakeAt(most) && rod > ahead.brakes.rod) {
                return new Stop(pedalForce, most, true, OptionalDouble.of(distance(asked.speed(), most)));
            }
        }
        ahead.rest();
        double deceleration = ahead.press(rod) ? -ahead.acceleration() + 0.0 : 0;
        return new Stop(
                pedalForce,
                deceleration,
                false,
                deceleration > 0 ? OptionalDouble.of(distance(asked.speed(), deceleration)) : OptionalDouble.empty());
    }

    /**
     * Way to a stop, m, the deceleration built up evenly in τ = 0.2 s, without the driver's own reaction.
     *
     * <pre>
     *   s = V·τ/2 + V²/(2a) − a·τ²/24;  where it stands before that: t = √(2Vτ/a), s = V·t − a·t³/(6τ)
     * </pre>
     *
     * <p>Source: Mitschke &amp; Wallentowitz, from memory; integrated here.
     *
     * @param speed V, m/s
     * @param deceleration a, m/s²
     */
    public static double distance(double speed, double deceleration) {
        double time = Math.sqrt(2 * speed * BUILD_UP / deceleration);
        return time < BUILD_UP
                ? speed * time - deceleration * time * time * time / (6 * BUILD_UP)
                : speed * BUILD_UP / 2 + speed * speed / (2 * deceleration) - deceleration * BUILD_UP * BUILD_UP / 24;
    }
}
