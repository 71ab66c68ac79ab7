package evenhand.turn;

import static evenhand.turn.Equilibrium.ACCELERATION;
import static evenhand.turn.Equilibrium.COLUMNS;

import evenhand.car.Weights;
import java.util.Arrays;

/**
 * The branch of steady states from straight ahead to its fold, followed by arc length.
 *
 * <p>Each state on the way is kept with its tangent, so that any state between can be found again from its neighbours:
 * by arc length ({@link #atArc}) or at a wanted lateral acceleration ({@link #atAcceleration}). Newton's method solves
 * the balances together with one more row: the plane across the predicted step, or the wanted acceleration. Steps shrink
 * where the tangent turns, so a stop or a lifted wheel is met at its corner, and none jumps to another branch.
 *
 * <p>Nothing is allocated on the way, save when more states must be kept than ever before. One per thread.
 *
 * <p>Source of the method: Allgower &amp; Georg, Numerical Continuation Methods (1990), ch. 2 and 6, from memory.
 */
final class Branch {
    /** Lateral acceleration at which the curve starts, m/s². */
    static final double START = 0.02 * Weights.GRAVITY;

    /** No car on tyres turns harder; only down-force or friction without end gets here. */
    private static final double ENDLESS = 20 * Weights.GRAVITY;

    private static final double FIRST_STEP = 0.15;
    static final double LARGEST_STEP = 0.6;
    private static final double SMALLEST_STEP = 1e-10;
    /** Where a wheel's side force is all but spent, √(1 − x²) keeps few digits: nearer is not more exact. */
    private static final double SMALLEST_STEP_AT_FRICTION = 1e-6;
    /**
     * Steps are halved down to this length until they hold no corner, so that a fold just behind one is seen; and below
     * it a turn of the tangent is a corner of the branch, not a bend.
     */
    private static final double CORNER = 2e-3;
    /** A step longer than this on which the acceleration was expected to stop rising, but rises, is looked into. */
    private static final double GRAZING = 0.01;
    /** Cosine between neighbouring tangents: less and the step is tried again at half its length. */
    private static final double BEND = 0.9;
    /** Cosines that let the next step grow. */
    private static final double STRAIGHT = 0.99;

    private static final double VERY_STRAIGHT = 0.999;
    /** Part of the tangent along the acceleration at which the fold is found: its square is the error of the limit. */
    private static final double FLAT = 1e-7;

    private static final int MOST_STATES = 5_000;

    /** How far each unknown moves in a usual turn, which makes one length of them all. */
    private final double[] inverseScale2 = new double[COLUMNS];

    private final Equilibrium equilibrium;
    private final Newton newton;
    private final double[] predicted = new double[COLUMNS];

    /** The state that was found last, and its tangent along the branch (unit arc length). */
    final double[] state;

    final double[] tangent = new double[COLUMNS];

    /** Solution's derivative over the lateral acceleration, set by {@link #derive}. */
    final double[] derivative = new double[COLUMNS];

    private double[] states = new double[64 * COLUMNS];
    private double[] tangents = new double[64 * COLUMNS];
    private double[] lengths = new double[64]; // from each state to the next
    private int count;
    private int startSign;

    /** How a walk ended. */
    enum End {
        FOLD,
        /** A driven wheel has spent all its friction on drive while the acceleration still rose. */
        FRICTION_SPENT,
        NO_START,
        NO_START_FOR_FRICTION,
        ENDLESS
    }

    private final double largestStep;

    Branch(Equilibrium equilibrium) {
        this(equilibrium, LARGEST_STEP);
    }

    /** With another longest step: what is found must not depend on it. */
    Branch(Equilibrium equilibrium, double largestStep) {
        this.equilibrium = equilibrium;
        this.largestStep = largestStep;
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

    /** Lateral acceleration at the end, m/s². */
    double limit() {
        return acceleration(count - 1);
    }

    /** Follows the branch to its end and keeps what it passes. */
    End follow(double wheelbase, double cgToRear) {
        count = 0;
        newton.tolerance = Newton.TOLERANCE;
        End start = start(wheelbase, cgToRear);
        if (start != End.FOLD) {
            return start;
        }
        newton.tolerance = Newton.PASSING;
        End end = walk();
        newton.tolerance = Newton.TOLERANCE;
        polishEnd();
        return end;
    }

    /** The last state is an answer, not one that is only passed by. */
    private void polishEnd() {
        int last = count - 1;
        if (last > 0 && predictAndCorrect(last, 0) == Newton.Outcome.FOUND) {
            System.arraycopy(state, 0, states, last * COLUMNS, COLUMNS);
        }
    }

    private End walk() {
        double length = Math.min(FIRST_STEP, largestStep);
        boolean friction = false;
        boolean cornerAhead = false;
        equilibrium.at(state);
        long pieces = equilibrium.pieces();
        while (count < MOST_STATES) {
            int last = count - 1;
            if (acceleration(last) > ENDLESS) {
                return End.ENDLESS;
            }
            Newton.Outcome outcome = predictAndCorrect(last, length);
            if (outcome != Newton.Outcome.FOUND || !turnTangent(last)) {
                friction = outcome == Newton.Outcome.BEYOND_FRICTION;
                length /= friction ? 4 : 2;
                newton.tolerance = Newton.TOLERANCE; // the end may be near
                if (length < (friction ? SMALLEST_STEP_AT_FRICTION : SMALLEST_STEP)) {
                    // A corner behind which the acceleration falls, or friction all spent: the last state is the end.
                    return friction ? End.FRICTION_SPENT : End.FOLD;
                }
                continue;
            }
            double cosine = dot(tangent, tangents, last * COLUMNS);
            boolean roundCorner = equilibrium.pieces() != pieces;
            if ((cosine < BEND || roundCorner) && length > CORNER) {
                length /= 2;
                cornerAhead = roundCorner;
                continue;
            }
            pieces = equilibrium.pieces();
            if (tangent[ACCELERATION] <= 0) {
                fold(last, length);
                return End.FOLD;
            }
            if (length > GRAZING && expectedRise(last, length) < 0) {
                length /= 2; // two folds may lie close together in this step
                continue;
            }
            lengths[last] = length;
            keep();
            if (roundCorner) {
                cornerAhead = false;
            }
            if (cosine > STRAIGHT && !cornerAhead) {
                length = Math.min((cosine > VERY_STRAIGHT ? 2.5 : 1.5) * length, largestStep);
            }
        }
        return End.FOLD;
    }

    /** What the acceleration's part of the tangent would be a length behind the last state, did it go on as before. */
    private double expectedRise(int last, double length) {
        double here = tangents[last * COLUMNS + ACCELERATION];
        if (last == 0) {
            return here;
        }
        double before = tangents[(last - 1) * COLUMNS + ACCELERATION];
        return here + (here - before) * length / lengths[last - 1];
    }

    private End start(double wheelbase, double cgToRear) {
        double radius = equilibrium.radius;
        if (!(radius > cgToRear)) {
            return End.NO_START;
        }
        Arrays.fill(state, 0);
        state[Equilibrium.STEER] = Math.atan(wheelbase / Math.sqrt(radius * radius - cgToRear * cgToRear));
        state[Equilibrium.SIDESLIP] = Math.asin(cgToRear / radius);
        state[ACCELERATION] = START;
        newton.holdAcceleration();
        Newton.Outcome outcome = newton.correct(START);
        if (outcome != Newton.Outcome.FOUND) {
            return outcome == Newton.Outcome.BEYOND_FRICTION ? End.NO_START_FOR_FRICTION : End.NO_START;
        }
        newton.holdAcceleration();
        startSign = newton.factor();
        if (startSign == 0) {
            return End.NO_START;
        }
        newton.along(1, tangent);
        normalise();
        keep();
        return End.FOLD;
    }

    private void keep() {
        if (count == lengths.length) {
            states = Arrays.copyOf(states, 2 * states.length);
            tangents = Arrays.copyOf(tangents, 2 * tangents.length);
            lengths = Arrays.copyOf(lengths, 2 * lengths.length);
        }
        System.arraycopy(state, 0, states, count * COLUMNS, COLUMNS);
        System.arraycopy(tangent, 0, tangents, count * COLUMNS, COLUMNS);
        count++;
    }

    /**
     * Finds the fold behind state k, where the acceleration's part of the tangent passes through zero, by false position
     * with halving; a corner there is closed in on by halving alone.
     */
    private void fold(int k, double length) {
        double low = 0;
        double lowSlope = tangents[k * COLUMNS + ACCELERATION];
        double high = length;
        double highSlope = tangent[ACCELERATION];
        double found = length;
        for (int i = 0; i < 100 && high - low > SMALLEST_STEP; i++) {
            found = i % 3 == 2 ? (low + high) / 2 : low + (high - low) * lowSlope / (lowSlope - highSlope);
            found = Math.min(Math.max(found, low + (high - low) * 1e-3), high - (high - low) * 1e-3);
            if (predictAndCorrect(k, found) != Newton.Outcome.FOUND || !turnTangent(k)) {
                high = found;
                highSlope = -lowSlope;
                continue;
            }
            double slope = tangent[ACCELERATION];
            if (Math.abs(slope) < FLAT) {
                low = found;
                break;
            }
            if (slope > 0) {
                low = found;
                lowSlope = slope;
            } else {
                high = found;
                highSlope = slope;
            }
        }
        if (low > 0 && predictAndCorrect(k, low) == Newton.Outcome.FOUND && turnTangent(k)) {
            lengths[k] = low;
            keep();
        }
    }

    /** Finds the state at an arc length behind state k; false where there is none. */
    boolean atArc(int k, double length) {
        if (length == 0) {
            System.arraycopy(states, k * COLUMNS, state, 0, COLUMNS);
            System.arraycopy(tangents, k * COLUMNS, tangent, 0, COLUMNS);
            return equilibrium.at(state);
        }
        return predictAndCorrect(k, length) == Newton.Outcome.FOUND && turnTangent(k);
    }

    /** Sets the state to one that was kept. */
    void atState(int k) {
        atArc(k, 0);
    }

    private Newton.Outcome predictAndCorrect(int k, double length) {
        int at = k * COLUMNS;
        newton.holdAcross(tangents, at, inverseScale2);
        double target = 0;
        for (int i = 0; i < COLUMNS; i++) {
            predicted[i] = states[at + i] + length * tangents[at + i];
            target += newton.border[i] * predicted[i];
            state[i] = predicted[i];
        }
        return newton.correct(target);
    }

    /**
     * Sets the tangent at the state just found; false where the branch is singular. Its sense is that of the way from
     * straight ahead: the determinant with the tangent as its last row keeps its sign along a branch, round corners too,
     * where the angle between neighbours may pass ninety degrees.
     */
    private boolean turnTangent(int k) {
        newton.holdAcross(tangents, k * COLUMNS, inverseScale2);
        int sign = newton.factor();
        if (sign == 0) {
            return false;
        }
        newton.along(sign * startSign, tangent);
        return normalise();
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

    private double dot(double[] one, double[] other, int at) {
        double sum = 0;
        for (int i = 0; i < COLUMNS; i++) {
            sum += one[i] * other[at + i] * inverseScale2[i];
        }
        return sum;
    }

    /**
     * Sets the state at a lateral acceleration and its {@link #derivative} there.
     *
     * @return false where it lies beyond the limit
     */
    boolean atAcceleration(double acceleration) {
        if (acceleration < START * (1 - 1e-9) || acceleration > limit()) {
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

    /** Sets the derivative over lateral acceleration at the state just found; returns the sign of the determinant. */
    private int derive() {
        newton.holdAcceleration();
        int sign = newton.factor();
        if (sign != 0) {
            newton.along(1, derivative);
        }
        return sign;
    }
}
