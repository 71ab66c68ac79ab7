package evenhand.turn;

import static evenhand.turn.Equilibrium.ACCELERATION;
import static evenhand.turn.Equilibrium.COLUMNS;
import static evenhand.turn.Equilibrium.STEER;

import evenhand.car.Weights;
import java.util.Arrays;

/**
 * The branch of steady states from straight ahead to its fold. {@link BranchWalk} follows it by arc length and keeps each
 * state on the way with its tangent, so that any state between can be found again from its neighbours: by arc length
 * ({@link #atArc}) or at a wanted lateral acceleration ({@link #atAcceleration}).
 *
 * <p>Newton's method solves the balances together with one more row: the plane across the predicted step, or the wanted
 * acceleration. Nothing is allocated, save when more states must be kept than ever before. One per thread.
 *
 * <p><b>Hold.</b> How the steer goes with the bend at held speed, D = dδ/dκ: the wheelbase in a gentle turn, less with
 * oversteer, and where it is zero the car no longer stays in its bend by itself. Along a change of radius at constant speed
 * dac/dκ = ac/κ, so that with the tangent t of the branch and v, what the state moves per curvature with the tangent's plane
 * held, D = v_δ + (ac/κ − v_ac)·t_δ/t_ac. {@link #hold} is D·t_ac, which stays finite and smooth at the fold and has D's
 * sign up to there. Source: static stability with fixed wheel, Guiggiani 2018 ch. 6; Milliken &amp; Milliken 1995 ch. 6.
 *
 * <p>Source of the method: Allgower &amp; Georg, Numerical Continuation Methods (1990), ch. 2 and 6, from memory.
 */
final class Branch {
    /** Lateral acceleration at which the curve starts, m/s². */
    static final double START = 0.02 * Weights.GRAVITY;

    static final double LARGEST_STEP = 0.6;
    /** Cosine between neighbouring tangents above which the branch is taken to go on bending as it did. */
    private static final double STRAIGHT_ON = 0.98;

    /** How a walk ended. */
    enum End {
        /** The acceleration stopped rising. */
        FOLD,
        /** A driven wheel has spent all its friction on drive while the acceleration still rose. */
        FRICTION_SPENT,
        /** The car no longer stays in its bend by itself; the walk was to end there. */
        LOST_HOLD,
        /** No next state was found, and no corner or spent friction explains it. */
        GAVE_UP,
        NO_START,
        NO_START_FOR_FRICTION,
        ENDLESS
    }

    /** How far a walk goes. */
    enum Until {
        /** To the first of fold and lost hold: all that a driver meets. */
        LIMIT,
        /** To the fold, also past the limit, along states that only a driver who steers against them could hold. */
        FOLD
    }

    /** How far each unknown moves in a usual turn, which makes one length of them all. */
    private final double[] inverseScale2 = new double[COLUMNS];

    final Equilibrium equilibrium;
    final Newton newton;
    private final double[] predicted = new double[COLUMNS];
    private final double[] alongCurvature = new double[COLUMNS];

    /** The state that was found last, its tangent along the branch (unit arc length), and its hold D·t_ac. */
    final double[] state;

    final double[] tangent = new double[COLUMNS];
    double hold;

    /** Solution's derivative over the lateral acceleration, and D itself, m, set by {@link #derive}. */
    final double[] derivative = new double[COLUMNS];

    double steerByCurvature;

    private double[] states = new double[64 * COLUMNS];
    private double[] tangents = new double[64 * COLUMNS];
    private double[] holds = new double[64];
    private double[] lengths = new double[64]; // from each state to the next
    private int count;
    private int limitAt = -1;
    private int startSign;
    private final BranchWalk walk;

    Branch(Equilibrium equilibrium) {
        this(equilibrium, LARGEST_STEP);
    }

    /** With another longest step: what is found must not depend on it. */
    Branch(Equilibrium equilibrium, double largestStep) {
        this.equilibrium = equilibrium;
        newton = new Newton(equilibrium);
        state = newton.state;
        double[] scale = new double[COLUMNS];
        Arrays.fill(scale, 0.1); // angles, rad
        scale[Equilibrium.DRIVE] = 0.1 * equilibrium.weight;
        for (int i = Equilibrium.FRONT_LEFT_RISE; i <= Equilibrium.REAR_RIGHT_RISE; i++) {
            scale[i] = 0.03; // m
        }
        scale[Equilibrium.FRONT_HEAVE] = 0.05;
        scale[Equilibrium.REAR_HEAVE] = 0.05;
        scale[ACCELERATION] = 0.5 * Weights.GRAVITY;
        for (int i = 0; i < COLUMNS; i++) {
            inverseScale2[i] = 1 / (scale[i] * scale[i]);
        }
        walk = new BranchWalk(this, largestStep);
    }

    /** Follows the branch and keeps what it passes. */
    End follow(Until until) {
        count = 0;
        limitAt = -1;
        return walk.follow(until);
    }

    int count() {
        return count;
    }

    double length(int k) {
        return lengths[k];
    }

    double acceleration(int k) {
        return states[k * COLUMNS + ACCELERATION];
    }

    double hold(int k) {
        return holds[k];
    }

    /** Part of the tangent of a kept state along the acceleration. */
    double rise(int k) {
        return tangents[k * COLUMNS + ACCELERATION];
    }

    /** The kept state of the limit: the last one that holds its bend, or the end. */
    int limitAt() {
        return limitAt >= 0 ? limitAt : count - 1;
    }

    /** Whether the car loses its hold before the end of the branch. */
    boolean losesHold() {
        return limitAt >= 0;
    }

    /** Lateral acceleration of the limit, m/s². */
    double limit() {
        return acceleration(limitAt());
    }

    /** Lateral acceleration at the end of what was followed, m/s². */
    double end() {
        return acceleration(count - 1);
    }

    /** The kept state at hand is the last that holds its bend. */
    void markLimit() {
        limitAt = count - 1;
    }

    /** Keeps the state at hand. */
    void keep() {
        if (count == lengths.length) {
            states = Arrays.copyOf(states, 2 * states.length);
            tangents = Arrays.copyOf(tangents, 2 * tangents.length);
            holds = Arrays.copyOf(holds, 2 * holds.length);
            lengths = Arrays.copyOf(lengths, 2 * lengths.length);
        }
        System.arraycopy(state, 0, states, count * COLUMNS, COLUMNS);
        System.arraycopy(tangent, 0, tangents, count * COLUMNS, COLUMNS);
        holds[count] = hold;
        count++;
    }

    /** Keeps the state at hand, which lies an arc length behind the last one. */
    void keepBehind(double length) {
        lengths[count - 1] = length;
        keep();
    }

    /** Takes the last kept state back. */
    void dropLast() {
        count--;
    }

    /** Solves a kept state again to the tolerance in force, in its place. */
    void polish(int k) {
        if (k > 0 && predictAndCorrect(k, 0) == Newton.Outcome.FOUND) {
            System.arraycopy(state, 0, states, k * COLUMNS, COLUMNS);
        }
    }

    /**
     * Sets the tangent at the first state; false where the branch is singular there. The sign of its determinant tells the
     * sense of the branch from there on.
     */
    boolean firstTangent() {
        newton.holdAcceleration();
        startSign = newton.factor();
        if (startSign == 0) {
            return false;
        }
        newton.along(1, tangent);
        return normalise() && setHold();
    }

    /** Finds the state at an arc length behind state k; false where there is none. */
    boolean atArc(int k, double length) {
        if (length == 0) {
            System.arraycopy(states, k * COLUMNS, state, 0, COLUMNS);
            System.arraycopy(tangents, k * COLUMNS, tangent, 0, COLUMNS);
            hold = holds[k];
            return equilibrium.at(state);
        }
        return predictAndCorrect(k, length) == Newton.Outcome.FOUND && turnTangent(k);
    }

    /** Sets the state to one that was kept. */
    void atState(int k) {
        atArc(k, 0);
    }

    /** Goes an arc length from state k along its tangent, and from there to the balances in the plane across it. */
    Newton.Outcome predictAndCorrect(int k, double length) {
        newton.holdAcross(tangents, k * COLUMNS, inverseScale2);
        predict(k, length);
        double target = 0;
        for (int i = 0; i < COLUMNS; i++) {
            target += newton.border[i] * predicted[i];
        }
        bend(k, length);
        System.arraycopy(predicted, 0, state, 0, COLUMNS);
        return newton.correct(target);
    }

    private void predict(int k, double length) {
        int at = k * COLUMNS;
        for (int i = 0; i < COLUMNS; i++) {
            predicted[i] = states[at + i] + length * tangents[at + i];
        }
    }

    /**
     * Bends what was predicted along the tangent as the branch bends there: between two kept states by the cubic through
     * both, behind the last as it bent before. It only saves steps of Newton's method; round a corner it is left straight.
     */
    private void bend(int k, double length) {
        if (k + 1 < count && length <= lengths[k]) {
            for (int i = 0; i < COLUMNS; i++) {
                predicted[i] = cubic(k, length, i);
            }
        } else if (k > 0 && cosineToPrevious(k) > STRAIGHT_ON) {
            double half = length * length / (2 * lengths[k - 1]);
            int at = k * COLUMNS;
            for (int i = 0; i < COLUMNS; i++) {
                predicted[i] += half * (tangents[at + i] - tangents[at - COLUMNS + i]);
            }
        }
    }

    private double cosineToPrevious(int k) {
        double sum = 0;
        for (int i = 0; i < COLUMNS; i++) {
            sum += tangents[k * COLUMNS + i] * tangents[(k - 1) * COLUMNS + i] * inverseScale2[i];
        }
        return sum;
    }

    /** Whether a spring, stop, contact or differential turns a corner within an arc length behind state k. */
    boolean cornerWithin(int k, double length) {
        atState(k);
        long pieces = equilibrium.pieces();
        predict(k, length);
        return !equilibrium.at(predicted) || equilibrium.pieces() != pieces;
    }

    /**
     * Sets tangent and hold at the state just found; false where the branch is singular. The tangent's sense is that of the
     * way from straight ahead: the determinant with the tangent as its last row keeps its sign along a branch, round corners
     * too, where the angle between neighbours may pass ninety degrees.
     */
    boolean turnTangent(int k) {
        newton.holdAcross(tangents, k * COLUMNS, inverseScale2);
        int sign = newton.factor();
        if (sign == 0) {
            return false;
        }
        newton.along(sign * startSign, tangent);
        return normalise() && setHold();
    }

    private boolean setHold() {
        newton.alongCurvature(alongCurvature);
        double byCurvature = state[ACCELERATION] * equilibrium.radius - alongCurvature[ACCELERATION];
        hold = alongCurvature[STEER] * tangent[ACCELERATION] + byCurvature * tangent[STEER];
        return !Double.isNaN(hold);
    }

    private boolean normalise() {
        double square = dot(tangent, tangent, 0);
        if (!(square > 0) || square == Double.POSITIVE_INFINITY) {
            return false;
        }
        double factor = 1 / Math.sqrt(square);
        for (int i = 0; i < COLUMNS; i++) {
            tangent[i] *= factor;
        }
        return true;
    }

    /** Cosine between the tangent at hand and that of a kept state. */
    double cosine(int k) {
        return dot(tangent, tangents, k * COLUMNS);
    }

    private double dot(double[] one, double[] other, int at) {
        double sum = 0;
        for (int i = 0; i < COLUMNS; i++) {
            sum += one[i] * other[at + i] * inverseScale2[i];
        }
        return sum;
    }

    /**
     * Sets the state at a lateral acceleration and its {@link #derive} there.
     *
     * @return false where it lies beyond the end of what was followed
     */
    boolean atAcceleration(double acceleration) {
        if (acceleration < START * (1 - 1e-9) || acceleration > end()) {
            return false;
        }
        int k = interval(acceleration);
        double length = arcTo(k, acceleration);
        interpolate(k, length);
        state[ACCELERATION] = acceleration;
        newton.holdAcceleration();
        if (newton.correct(acceleration) == Newton.Outcome.FOUND && derive() == startSign) {
            return true;
        }
        return byArc(k, acceleration) && derive() != 0;
    }

    /** Finds the state at an acceleration from one nearby, without a branch; false where it does not come to it. */
    boolean from(double[] nearby, double acceleration) {
        System.arraycopy(nearby, 0, state, 0, COLUMNS);
        state[ACCELERATION] = acceleration;
        newton.holdAcceleration();
        return newton.correct(acceleration) == Newton.Outcome.FOUND;
    }

    /** Goes from the first state back to a gentler acceleration than the curve starts with; false where it cannot. */
    boolean back(double acceleration) {
        atState(0);
        derive();
        for (int i = 0; i < COLUMNS; i++) {
            state[i] += (acceleration - START) * derivative[i];
        }
        newton.holdAcceleration();
        return newton.correct(acceleration) == Newton.Outcome.FOUND && derive() == startSign;
    }

    /** The kept state behind which the acceleration lies. */
    private int interval(double acceleration) {
        int low = 0;
        int high = count - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (acceleration(middle) <= acceleration) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Arc length behind state k at which the cubic through both ends and their tangents has the acceleration. */
    private double arcTo(int k, double acceleration) {
        double low = 0;
        double high = lengths[k];
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            if (cubic(k, middle, ACCELERATION) < acceleration) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private void interpolate(int k, double length) {
        for (int i = 0; i < COLUMNS; i++) {
            state[i] = cubic(k, length, i);
        }
    }

    private double cubic(int k, double length, int i) {
        double h = lengths[k];
        double s = length / h;
        int from = k * COLUMNS + i;
        int to = from + COLUMNS;
        double s2 = s * s;
        double s3 = s2 * s;
        return (2 * s3 - 3 * s2 + 1) * states[from]
                + (s3 - 2 * s2 + s) * h * tangents[from]
                + (3 * s2 - 2 * s3) * states[to]
                + (s3 - s2) * h * tangents[to];
    }

    /** Closes in on the acceleration along the arc, where Newton's method at constant acceleration finds no way. */
    private boolean byArc(int k, double acceleration) {
        double low = 0;
        double high = lengths[k];
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (!atArc(k, middle) || state[ACCELERATION] > acceleration) {
                high = middle;
            } else {
                low = middle;
            }
            if (Math.abs(state[ACCELERATION] - acceleration) < 1e-12 * Weights.GRAVITY) {
                break;
            }
        }
        return atArc(k, low);
    }

    /**
     * Sets the derivative over lateral acceleration, dx/d(ac), and D = v_δ + ac/κ·dδ/d(ac) at the state just found; returns
     * the sign of the determinant, zero where there is no derivative.
     */
    int derive() {
        newton.holdAcceleration();
        int sign = newton.factor();
        if (sign != 0) {
            newton.along(1, derivative);
            newton.alongCurvature(alongCurvature);
            steerByCurvature = alongCurvature[STEER] + state[ACCELERATION] * equilibrium.radius * derivative[STEER];
        }
        return sign;
    }
}
