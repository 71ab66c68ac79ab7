package evenhand.turn;

import static evenhand.turn.Equilibrium.ACCELERATION;

import evenhand.car.Weights;
import java.util.Arrays;

/**
 * The walk along a {@link Branch} from 0.02 g to its end, by arc length. Steps shrink where the tangent turns, so a stop or
 * a lifted wheel is met at its corner, and none jumps to another branch. On the way it notes where the car loses its hold.
 * One per branch; allocates nothing.
 */
final class BranchWalk {
    /** No car on tyres turns harder; only down-force or friction without end gets here. */
    private static final double ENDLESS = 20 * Weights.GRAVITY;

    private static final double FIRST_STEP = 0.15;
    private static final double SMALLEST_STEP = 1e-10;
    /** Where a wheel's side force is all but spent, √(1 − x²) keeps few digits: nearer is not more exact. */
    private static final double SMALLEST_STEP_AT_FRICTION = 1e-6;
    /**
     * Steps are halved down to this length until they hold no corner, so that a fold just behind one is seen; and below
     * it a turn of the tangent is a corner of the branch, not a bend.
     */
    private static final double CORNER = 2e-3;
    /** How far ahead the corner may lie that ends a walk which finds no next state. */
    private static final double AHEAD = 1e-6;
    /**
     * A step longer than this on which the acceleration was expected to stop rising or the hold to be lost, but is not, is
     * looked into.
     */
    private static final double GRAZING = 0.01;
    /** The same where the step holds a corner, behind which all may look well again. */
    private static final double GRAZING_AT_CORNER = 1e-7;
    /** Cosine between neighbouring tangents: less and the step is tried again at half its length. */
    private static final double BEND = 0.9;
    /** Cosines that let the next step grow. */
    private static final double STRAIGHT = 0.99;

    private static final double VERY_STRAIGHT = 0.999;
    /** Part of the tangent along the acceleration at which the fold is found: its square is the error of the limit. */
    private static final double FLAT = 1e-7;

    /** Arc length to which the loss of hold is closed in: some 1e-9 g. */
    private static final double CLOSE = 1e-8;

    /** How much wider the circles begin from which a first state is come to, and how many there are. */
    private static final double WIDEST = 16;

    private static final int CIRCLES = 32;

    private static final int MOST_ROUNDS = 100;

    private static final int MOST_STATES = 5_000;

    private final Branch branch;
    private final Newton newton;
    private final double largestStep;

    BranchWalk(Branch branch, double largestStep) {
        this.branch = branch;
        newton = branch.newton;
        this.largestStep = largestStep;
    }

    /** Follows the branch to its end, or to where the car loses its hold. */
    Branch.End follow(Branch.Until until) {
        newton.tolerance = Newton.TOLERANCE;
        Branch.End start = start();
        if (start != Branch.End.FOLD) {
            return start;
        }
        newton.tolerance = Newton.PASSING;
        Branch.End end = walk(until);
        // Limit and end are answers, not states that are only passed by.
        newton.tolerance = Newton.TOLERANCE;
        branch.polish(branch.limitAt());
        if (branch.losesHold()) {
            branch.polish(branch.count() - 1);
        }
        return end;
    }

    /** The first state, at 0.02 g; {@link Branch.End#FOLD} says that the walk can go on from there. */
    private Branch.End start() {
        Equilibrium equilibrium = branch.equilibrium;
        if (!(equilibrium.radius > equilibrium.cgToRear)) {
            return Branch.End.NO_START;
        }
        straightAhead(equilibrium, branch.state);
        newton.holdAcceleration();
        Newton.Outcome outcome = newton.correct(Branch.START);
        if (outcome != Newton.Outcome.FOUND) {
            outcome = fromWiderCircles();
        }
        if (outcome != Newton.Outcome.FOUND) {
            return outcome == Newton.Outcome.BEYOND_FRICTION ? Branch.End.NO_START_FOR_FRICTION : Branch.End.NO_START;
        }
        if (!branch.firstTangent()) {
            return Branch.End.NO_START;
        }
        branch.keep();
        return Branch.End.FOLD;
    }

    /** The car as geometry alone would lead it round the circle, on its springs as at rest. */
    private static void straightAhead(Equilibrium equilibrium, double[] state) {
        double radius = equilibrium.radius;
        double cgToRear = equilibrium.cgToRear;
        Arrays.fill(state, 0);
        state[Equilibrium.STEER] = Math.atan(equilibrium.wheelbase / Math.sqrt(radius * radius - cgToRear * cgToRear));
        state[Equilibrium.SIDESLIP] = Math.asin(cgToRear / radius);
        state[Equilibrium.DRIVE] = equilibrium.firstEffort();
        state[ACCELERATION] = Branch.START;
    }

    /**
     * Where a locked axle scrubs so much in a tight bend that the first state is too far from geometry's, it is come to from
     * wider circles, each starting from the last. This allocates; it is rare.
     */
    private Newton.Outcome fromWiderCircles() {
        double radius = branch.equilibrium.radius;
        double[] state = new double[Equilibrium.COLUMNS];
        straightAhead(branch.equilibrium.onCircle(WIDEST * radius), state);
        Newton.Outcome outcome = Newton.Outcome.NO_PROGRESS;
        for (int i = 0; i <= CIRCLES; i++) {
            Equilibrium circle = branch.equilibrium.onCircle(radius * Math.pow(WIDEST, 1 - (double) i / CIRCLES));
            Newton onCircle = i < CIRCLES ? new Newton(circle) : newton;
            System.arraycopy(state, 0, onCircle.state, 0, state.length);
            onCircle.holdAcceleration();
            outcome = onCircle.correct(Branch.START);
            if (outcome != Newton.Outcome.FOUND) {
                return outcome;
            }
            System.arraycopy(onCircle.state, 0, state, 0, state.length);
        }
        return outcome;
    }

    private Branch.End walk(Branch.Until until) {
        if (branch.hold <= 0) {
            branch.markLimit();
            if (until == Branch.Until.LIMIT) {
                return Branch.End.LOST_HOLD;
            }
        }
        double length = Math.min(FIRST_STEP, largestStep);
        boolean cornerAhead = false;
        int steppedOverAt = -1;
        branch.equilibrium.at(branch.state);
        long pieces = branch.equilibrium.pieces();
        while (branch.count() < MOST_STATES) {
            int last = branch.count() - 1;
            if (branch.acceleration(last) > ENDLESS) {
                return Branch.End.ENDLESS;
            }
            Newton.Outcome outcome = branch.predictAndCorrect(last, length);
            boolean found = outcome == Newton.Outcome.FOUND && branch.turnTangent(last);
            if (!found || isElsewhere(last)) {
                boolean friction = outcome == Newton.Outcome.BEYOND_FRICTION;
                length /= friction ? 4 : 2;
                newton.tolerance = Newton.TOLERANCE; // the end may be near
                if (length < (friction ? SMALLEST_STEP_AT_FRICTION : SMALLEST_STEP)) {
                    double over = friction || last == steppedOverAt ? 0 : stepOver(last);
                    if (over == 0) {
                        return worn(last, friction);
                    }
                    steppedOverAt = last;
                    length = over;
                }
                continue;
            }
            double cosine = branch.cosine(last);
            boolean roundCorner = branch.equilibrium.pieces() != pieces;
            if ((cosine < BEND || roundCorner) && length > CORNER) {
                length /= 2;
                cornerAhead = roundCorner;
                continue;
            }
            if (branch.tangent[ACCELERATION] <= 0) {
                return foldBehind(last, length, until);
            }
            if (length > (roundCorner ? GRAZING_AT_CORNER : GRAZING) && mayHideAnEnd(last, length)) {
                length /= 2;
                continue;
            }
            if (branch.hold <= 0 && !branch.losesHold()) {
                length -= loseHold(last, length);
                if (until == Branch.Until.LIMIT) {
                    return Branch.End.LOST_HOLD;
                }
                length = Math.max(length, CORNER);
                branch.atState(branch.count() - 1);
                pieces = branch.equilibrium.pieces();
                continue;
            }
            pieces = branch.equilibrium.pieces();
            branch.keepBehind(length);
            if (roundCorner) {
                cornerAhead = false;
            }
            if (cosine > STRAIGHT && !cornerAhead) {
                length = Math.min((cosine > VERY_STRAIGHT ? 2.5 : 1.5) * length, largestStep);
            }
        }
        return Branch.End.GAVE_UP;
    }

    /**
     * No next state, however small the step: friction all spent, or a corner right ahead behind which the branch turns back,
     * which is a fold; else nothing explains it.
     */
    private Branch.End worn(int last, boolean friction) {
        if (friction) {
            return Branch.End.FRICTION_SPENT;
        }
        return branch.cornerWithin(last, AHEAD) ? Branch.End.FOLD : Branch.End.GAVE_UP;
    }

    /**
     * A state that lies on a corner to within rounding is seen from either side in turn, and the steps from it wear out. The
     * shortest longer step that lands beyond; zero where there is none.
     */
    private double stepOver(int last) {
        for (double length = 10 * SMALLEST_STEP; length <= CORNER; length *= 10) {
            if (branch.atArc(last, length) && !isElsewhere(last)) {
                return length;
            }
        }
        return 0;
    }

    /** The tangent still rises, but the acceleration has fallen: that state is of another branch. */
    private boolean isElsewhere(int last) {
        return branch.tangent[ACCELERATION] > 0 && branch.state[ACCELERATION] < branch.acceleration(last);
    }

    /** Whether acceleration or hold were falling so fast that they should have passed zero by the end of the step. */
    private boolean mayHideAnEnd(int last, double length) {
        if (last == 0) {
            return false;
        }
        double steps = length / branch.length(last - 1);
        double rise = branch.rise(last) + (branch.rise(last) - branch.rise(last - 1)) * steps;
        double hold = branch.hold(last) + (branch.hold(last) - branch.hold(last - 1)) * steps;
        return rise < 0 || (hold < 0 && branch.hold > 0 && !branch.losesHold());
    }

    private Branch.End foldBehind(int last, double length, Branch.Until until) {
        fold(last, length, branch.tangent[ACCELERATION]);
        if (!branch.losesHold() && branch.count() - 1 > last && branch.hold(last + 1) <= 0) {
            double toFold = branch.length(last);
            branch.dropLast();
            double toLimit = loseHold(last, toFold);
            if (until == Branch.Until.LIMIT) {
                return Branch.End.LOST_HOLD;
            }
            int limit = branch.count() - 1;
            fold(limit, length - toLimit, -branch.rise(limit));
        }
        return Branch.End.FOLD;
    }

    /** What passes from above to below zero along the branch where it ends. */
    private enum Ending {
        FOLD,
        LOST_HOLD
    }

    private double left(Ending ending) {
        return ending == Ending.FOLD ? branch.tangent[ACCELERATION] : branch.hold;
    }

    /**
     * Finds the fold behind state k, where the acceleration's part of the tangent passes through zero, and keeps it.
     *
     * @param slopeAtLength that part at a length beyond the fold
     */
    private void fold(int k, double length, double slopeAtLength) {
        closeIn(Ending.FOLD, k, branch.rise(k), length, slopeAtLength);
    }

    /**
     * Finds where the hold is lost within a length behind state k, the corner included at which it jumps, keeps the last state
     * that still holds, and marks it as the limit.
     *
     * @return how far behind state k it lies
     */
    private double loseHold(int k, double length) {
        double low = closeIn(Ending.LOST_HOLD, k, branch.hold(k), length, branch.hold);
        branch.markLimit();
        return low;
    }

    /**
     * Closes in on an ending behind state k by false position, halving the weight of an end that stays (the Illinois rule),
     * and halving the bracket where no state is found; keeps the last state before it.
     *
     * @return how far behind state k it lies
     */
    private double closeIn(Ending ending, int k, double atK, double length, double atLength) {
        double close = ending == Ending.FOLD ? SMALLEST_STEP : CLOSE;
        double low = 0;
        double lowLeft = atK;
        double high = length;
        double highLeft = atLength;
        boolean lowStayed = false;
        boolean highStayed = false;
        for (int i = 0; i < MOST_ROUNDS && high - low > close; i++) {
            boolean halve = i % 5 == 4;
            double found = halve ? (low + high) / 2 : low + (high - low) * lowLeft / (lowLeft - highLeft);
            found = Math.min(Math.max(found, low + (high - low) * 1e-3), high - (high - low) * 1e-3);
            if (!branch.atArc(k, found) || isElsewhere(k)) {
                high = found;
                highLeft = -lowLeft;
                continue;
            }
            double left = left(ending);
            if (ending == Ending.FOLD && Math.abs(left) < FLAT) {
                low = found;
                break;
            }
            if (left > 0) {
                low = found;
                lowLeft = left;
                highLeft = highStayed ? highLeft / 2 : highLeft;
                highStayed = true;
                lowStayed = false;
            } else {
                high = found;
                highLeft = left;
                lowLeft = lowStayed ? lowLeft / 2 : lowLeft;
                lowStayed = true;
                highStayed = false;
            }
        }
        if (low > 0 && branch.atArc(k, low)) {
            branch.keepBehind(low);
        }
        return low;
    }
}
