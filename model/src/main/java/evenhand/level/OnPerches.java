package evenhand.level;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Stops;
import evenhand.car.Weights;
import evenhand.linear.LinearSolve;
import evenhand.suspension.AxleSuspension;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The car at rest on perches that were turned: the balances of the steady turn at no speed, with springs that the perches press.
 *
 * <p>Unknowns of each axle: mean bump travel u, roll of the body over it φ and tilt of its tyres ψ; the suspension rolls by
 * {@code φ − ψ}. Plan positions do not move as the body comes up, so each axle carries what it carried and its tyres' mean
 * deflection stays.
 * <pre>
 *   springs and stops       F(u, φ − ψ) = F at rest
 *   body over the axle      M(u, φ − ψ) = ms_i·g·φ_i·(hs − u − z) + C·(φ_other − φ_i)
 *   axle                    ½·t²·k_tyre·ψ = M + g·ψ·(ms_i·z + mu_i·hu_i)
 * </pre>
 * M moment of springs, stops and bar against the roll, N·m; z roll centre, by its slope at rest; C chassis, N·m/rad; a rigid one
 * has one roll. Bars take part or are unhooked. Solved by Newton's method, its steps halved where a spring goes loose or a stop is
 * met; no answer where a wheel would lift or no balance is found.
 *
 * <p>Source: statics; the balances are those of the turn (Milliken &amp; Milliken 1995 ch. 18).
 */
final class OnPerches {
    private static final int TRAVEL = 0;
    private static final int ROLL = 1;
    private static final int TILT = 2;
    private static final int PER_AXLE = 3;
    private static final int UNKNOWNS = 2 * PER_AXLE;

    /** Rounding of a sum of forces, as a part of the weight. */
    private static final double CLOSE = 1e-12;

    private static final int MOST_STEPS = 60;
    private static final int MOST_HALVINGS = 30;

    private final Car car;
    private final boolean barsHooked;
    private final AxleSuspension[] suspensions = new AxleSuspension[2];
    private final double[] carried = new double[2]; // by an axle's springs and stops, N
    private final double[] restForce = new double[Wheel.values().length]; // along each spring, N
    private final double sprungHeight;
    private final double weight;
    private final double[] left = new double[UNKNOWNS];
    private final LinearSolve slopes = new LinearSolve(UNKNOWNS);

    /** A car at rest, its load aboard. */
    OnPerches(Car car, boolean barsHooked) {
        this.car = car;
        this.barsHooked = barsHooked;
        sprungHeight = car.sprung().height();
        weight = car.weights().mass() * Weights.GRAVITY;
        for (End end : End.values()) {
            AxleSuspension suspension = AxleSuspension.of(car, end);
            suspensions[end.ordinal()] = suspension;
            double rollCentre = car.axle(end).geometry().rollCentreHeight();
            suspension.at(0, 0, rollCentre);
            carried[end.ordinal()] = suspension.force;
            for (Side side : Side.values()) {
                restForce[Wheel.of(end, side).index()] = suspension.springForce(0, 0, rollCentre, side);
            }
        }
    }

    /**
     * How it stands.
     *
     * @param raised how far each perch was raised, m along its spring, in the order of {@link Wheel}
     */
    Optional<Posture> at(double[] raised) {
        for (End end : End.values()) {
            suspensions[end.ordinal()].raisePerches(
                    raised[Wheel.of(end, Side.LEFT).index()],
                    raised[Wheel.of(end, Side.RIGHT).index()]);
        }
        double[] state = new double[UNKNOWNS];
        double worst = balance(state);
        for (int step = 0; step < MOST_STEPS && worst > CLOSE * weight; step++) {
            if (slopes.factor() == 0) {
                return Optional.empty();
            }
            double[] move = left.clone();
            slopes.solve(move);
            double part = 1;
            double[] next = moved(state, move, part);
            double after = balance(next);
            for (int halving = 0; !(after < worst) && halving < MOST_HALVINGS; halving++) {
                part /= 2;
                next = moved(state, move, part);
                after = balance(next);
            }
            if (!(after < worst)) {
                break; // to the last digit
            }
            state = next;
            worst = after;
        }
        worst = balance(state);
        return worst < Math.sqrt(CLOSE) * weight ? posture(state) : Optional.empty();
    }

    private static double[] moved(double[] state, double[] move, double part) {
        double[] next = state.clone();
        for (int i = 0; i < next.length; i++) {
            next[i] -= part * move[i];
        }
        return next;
    }

    /** Sets what is left over in each balance and its slopes; the largest of it, N and N·m alike. */
    private double balance(double[] state) {
        Arrays.fill(slopes.matrix, 0);
        double stiffness = car.chassisTorsionalStiffness();
        boolean rigid = Double.isInfinite(stiffness);
        for (End end : End.values()) {
            axle(end, state);
        }
        int front = ROLL;
        int rear = PER_AXLE + ROLL;
        if (rigid) {
            left[front] += left[rear];
            for (int column = 0; column < UNKNOWNS; column++) {
                slopes.matrix[front * UNKNOWNS + column] += slopes.matrix[rear * UNKNOWNS + column];
                slopes.matrix[rear * UNKNOWNS + column] = 0;
            }
            left[rear] = weight * (state[rear] - state[front]);
            add(rear, rear, weight);
            add(rear, front, -weight);
        } else {
            double twist = stiffness * (state[rear] - state[front]);
            left[front] -= twist;
            left[rear] += twist;
            add(front, front, stiffness);
            add(front, rear, -stiffness);
            add(rear, rear, stiffness);
            add(rear, front, -stiffness);
        }
        double worst = 0;
        for (double each : left) {
            worst = Math.max(worst, Math.abs(each));
        }
        return worst;
    }

    private void axle(End end, double[] state) {
        Axle axle = car.axle(end);
        int at = end.ordinal() * PER_AXLE;
        double travel = state[at + TRAVEL];
        double roll = state[at + ROLL];
        double tilt = state[at + TILT];
        double centre = axle.geometry().rollCentreHeight(travel);
        double centreByTravel = axle.geometry().rollCentreByTravel();
        AxleSuspension suspension = suspensions[end.ordinal()];
        suspension.at(travel, roll - tilt, centre);
        double unhooked = barsHooked ? 0 : axle.barRollStiffness();
        double moment = suspension.moment - unhooked * (roll - tilt);
        double byTravel = suspension.momentByTravel + suspension.momentByRollCentre * centreByTravel;
        double byRoll = suspension.momentByRoll - unhooked;
        double hung = car.sprung().mass() * car.sprung().share(end) * Weights.GRAVITY;
        double arm = sprungHeight - travel - centre;
        double tyres = axle.track() * axle.track() / 2 * axle.tyre().verticalRate();
        double below = axle.unsprung().mass() * axle.unsprung().height() * Weights.GRAVITY;

        left[at + TRAVEL] = suspension.force - carried[end.ordinal()];
        add(at + TRAVEL, at + TRAVEL, suspension.forceByTravel + suspension.forceByRollCentre * centreByTravel);
        add(at + TRAVEL, at + ROLL, suspension.forceByRoll);
        add(at + TRAVEL, at + TILT, -suspension.forceByRoll);

        left[at + ROLL] = moment - hung * roll * arm;
        add(at + ROLL, at + TRAVEL, byTravel + hung * roll * (1 + centreByTravel));
        add(at + ROLL, at + ROLL, byRoll - hung * arm);
        add(at + ROLL, at + TILT, -byRoll);

        left[at + TILT] = tyres * tilt - moment - tilt * (hung * centre + below);
        add(at + TILT, at + TRAVEL, -byTravel - tilt * hung * centreByTravel);
        add(at + TILT, at + ROLL, -byRoll);
        add(at + TILT, at + TILT, tyres + byRoll - hung * centre - below);
    }

    private void add(int row, int column, double slope) {
        slopes.matrix[row * UNKNOWNS + column] += slope;
    }

    private Optional<Posture> posture(double[] state) {
        List<Posture.Corner> corners = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            Posture.Corner corner = corner(wheel, state);
            if (corner.load() <= 0) {
                return Optional.empty();
            }
            corners.add(corner);
        }
        return Optional.of(new Posture(corners, state[ROLL], state[PER_AXLE + ROLL]));
    }

    private Posture.Corner corner(Wheel wheel, double[] state) {
        End end = wheel.end();
        Axle axle = car.axle(end);
        int at = end.ordinal() * PER_AXLE;
        double travel = state[at + TRAVEL];
        double tilt = state[at + TILT];
        double suspensionRoll = state[at + ROLL] - tilt;
        double outwards = wheel.side().sign() * axle.track() / 2;
        AxleSuspension suspension = suspensions[end.ordinal()];
        double force =
                suspension.springForce(travel, suspensionRoll, axle.geometry().rollCentreHeight(travel), wheel.side());
        double load = car.staticLoad(end, wheel.side())
                - outwards * tilt * axle.tyre().verticalRate();
        double metal = -suspension.metalDeflection(travel, suspensionRoll, wheel.side());
        double bump = -suspension.bumpDeflection(travel, suspensionRoll, wheel.side());
        return new Posture.Corner(
                load,
                outwards * suspensionRoll - travel,
                force,
                coilMargin(wheel, force, metal),
                axle.stops().bump().isPresent() ? OptionalDouble.of(bump) : OptionalDouble.empty());
    }

    /**
     * What is left between the coils when metal meets, m: their length now less the solid one, less what the spring is pressed until
     * then. The installed length is that under the mean load of both sides.
     */
    private OptionalDouble coilMargin(Wheel wheel, double force, double toMetal) {
        Axle axle = car.axle(wheel.end());
        Optional<Stops.Metal> metal = axle.stops().metal();
        OptionalDouble installed = axle.spring().lengths().installed();
        OptionalDouble solid = axle.spring().lengths().solid();
        if (metal.isEmpty() || installed.isEmpty() || solid.isEmpty()) {
            return OptionalDouble.empty();
        }
        double mean = (restForce[wheel.index()] + restForce[wheel.mirrored().index()]) / 2;
        double length = installed.getAsDouble() - (force - mean) / axle.spring().rate();
        return OptionalDouble.of(
                length - solid.getAsDouble() - axle.geometry().springs().ratio() * toMetal);
    }
}
