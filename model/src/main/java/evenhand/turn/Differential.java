package evenhand.turn;

import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.tyre.LateralLaw;
import evenhand.tyre.Tyre;

/**
 * How an axle's differential shares the drive force between its two wheels, with the slopes of the shares over what the
 * axle feels. An axle that is not driven keeps shares of zero. {@link #share} allocates nothing.
 *
 * <p>Open: halves. Locked: both wheels turn at one rim speed Vr, and each share grows with the slip of its own wheel until
 * its tyre's friction holds no more:
 * <pre>
 *   share_j = X̂_j·tanh(Cκ_j·(Vr/v_j − 1)/X̂_j),   Σ share_j = P
 *   X̂_j = longitudinalFrictionRatio·D_j + sign(share_j)·rollingResistance·Fz_j
 *   Cκ_j = longitudinalStiffness·Fz_j/Fz0, or the cornering stiffness K(Fz_j)
 * </pre>
 * v_j = V·cos β − ω·y_j. The saturating curve has the stiffness of the tyre at no slip and its friction at much, as every
 * measured curve of longitudinal force has (Pacejka 2012 ch. 1); the hyperbolic tangent is our choice of one between them.
 * Torque-biasing: as locked while both shares have the sense of P and their ratio stands within the bias ratio; otherwise
 * P·b/(1 + b) on the wheel whose locked share is the greater in the sense of P, and the rest on the other.
 */
final class Differential {
    private static final int UNKNOWNS = AxleInTurn.UNKNOWNS;
    private static final int MOST_STEPS = 60;
    /** What the shares may miss the drive force by, over what both tyres hold: rounding. */
    private static final double TOLERANCE = 1e-14;

    /** Shares of the drive force, N, and their slopes. */
    double leftShare;

    double rightShare;
    final double[] leftShareBy = new double[UNKNOWNS];
    final double[] rightShareBy = new double[UNKNOWNS];

    /** Which wheel of a torque-biasing differential has the greater fixed share: 4 left, 8 right, 0 none. */
    int piece;

    private final boolean driven;
    private final boolean open;
    private final boolean biased;
    private final double biasRatio;
    private final LateralLaw law;
    private final double stiffnessOverLoad; // 1, below zero: the cornering stiffness stands in

    private final WheelInTurn leftWheel;
    private final WheelInTurn rightWheel;
    private final Pull left;
    private final Pull right;

    Differential(Car car, End end, WheelInTurn leftWheel, WheelInTurn rightWheel) {
        this.leftWheel = leftWheel;
        this.rightWheel = rightWheel;
        left = new Pull(leftWheel);
        right = new Pull(rightWheel);
        driven = car.drive().axle() == end;
        Drive.Differential kind = car.drive().differential();
        open = kind instanceof Drive.Differential.Open;
        biased = kind instanceof Drive.Differential.TorqueBiasing;
        biasRatio = kind instanceof Drive.Differential.TorqueBiasing biasing ? biasing.biasRatio() : 1;
        Tyre tyre = car.axle(end).tyre();
        law = tyre.lateral();
        stiffnessOverLoad = tyre.longitudinalStiffness().isPresent()
                ? tyre.longitudinalStiffness().getAsDouble() / law.referenceLoad()
                : -1;
    }

    /** One wheel on the common shaft: its force at a rim speed, and the slopes of that. */
    private static final class Pull {
        double stiffness; // Cκ, N
        double stiffnessByLoad;
        double force; // N
        double byRimSpeed; // over u = Vr/V
        private double bySpeed;
        private double byStiffness;
        private double byMost;
        private boolean forwards;
        private final WheelInTurn wheel;

        Pull(WheelInTurn wheel) {
            this.wheel = wheel;
        }

        /** Sets force and slopes at u, the rim speed over the car's. */
        void at(double rimSpeed) {
            double slip = rimSpeed / wheel.turnSpeed - 1;
            forwards = slip >= 0;
            double most = wheel.mostDrive(forwards);
            if (!(stiffness > 0 && most > 0)) {
                force = 0;
                byRimSpeed = 0;
                bySpeed = 0;
                byStiffness = 0;
                byMost = 0;
                return;
            }
            double reach = stiffness * slip / most;
            double decay = Math.exp(-2 * Math.abs(reach));
            double tanh = (1 - decay) / (1 + decay);
            if (!forwards) {
                tanh = -tanh;
            }
            double slope = 4 * decay / ((1 + decay) * (1 + decay)); // 1 − tanh²
            force = most * tanh;
            byRimSpeed = stiffness / wheel.turnSpeed * slope;
            bySpeed = -rimSpeed / wheel.turnSpeed * byRimSpeed;
            byStiffness = slip * slope;
            byMost = tanh - reach * slope;
        }

        /** Slope over one of the axle's unknowns at a held rim speed. */
        double by(int unknown, int riseColumn, double sinSideslip) {
            double slope = byMost * wheel.mostDriveByLean() * wheel.leanBy[unknown];
            if (unknown == riseColumn) {
                slope += (byStiffness * stiffnessByLoad + byMost * wheel.mostDriveByLoad(forwards)) * wheel.loadByRise;
            } else if (unknown == AxleInTurn.SIDESLIP) {
                slope -= bySpeed * sinSideslip;
            } else if (unknown == AxleInTurn.CURVATURE) {
                slope -= bySpeed * wheel.y;
            }
            return slope;
        }
    }

    /**
     * Shares the drive force between the wheels, whose tyres have been asked for their friction.
     *
     * @param drive P, N
     * @param sinSideslip sin β
     * @return false where the tyres cannot carry it: there is no such state
     */
    boolean share(double drive, double sinSideslip) {
        piece = 0;
        if (!driven) {
            return true;
        }
        if (open || (leftWheel.load <= 0 && rightWheel.load <= 0)) {
            fixedShares(drive, 0.5);
            return true;
        }
        if (!lockedShares(drive)) {
            return false;
        }
        if (biased && !withinBias(drive)) {
            boolean onLeft = drive < 0 ? left.force <= right.force : left.force >= right.force;
            double most = biasRatio / (1 + biasRatio);
            piece = onLeft ? 4 : 8;
            fixedShares(drive, onLeft ? most : 1 - most);
            return true;
        }
        double sum = left.byRimSpeed + right.byRimSpeed;
        if (!(sum > 0)) {
            return false;
        }
        double leftPart = left.byRimSpeed / sum;
        leftShare = left.force + leftPart * (drive - left.force - right.force);
        rightShare = drive - leftShare;
        for (int i = 0; i < UNKNOWNS; i++) {
            double by = (1 - leftPart) * left.by(i, AxleInTurn.LEFT_RISE, sinSideslip)
                    - leftPart * right.by(i, AxleInTurn.RIGHT_RISE, sinSideslip);
            leftShareBy[i] = by;
            rightShareBy[i] = -by;
        }
        leftShareBy[AxleInTurn.DRIVE] = leftPart;
        rightShareBy[AxleInTurn.DRIVE] = 1 - leftPart;
        return true;
    }

    /** Whether both shares have the sense of the drive force and their ratio stands within the bias ratio. */
    private boolean withinBias(double drive) {
        double sense = drive < 0 ? -1 : 1;
        double greater = Math.max(sense * left.force, sense * right.force);
        double lesser = Math.min(sense * left.force, sense * right.force);
        return lesser > 0 && greater <= biasRatio * lesser;
    }

    /**
     * Finds the common rim speed at which both wheels together carry the drive force, by Newton's method between bounds.
     * It starts where wheels that never saturate would turn; their sum is then too small, and what is left closes in from
     * there. False where both tyres together do not hold so much.
     */
    private boolean lockedShares(double drive) {
        boolean forwards = drive >= 0;
        double most = Math.max(0, leftWheel.mostDrive(forwards)) + Math.max(0, rightWheel.mostDrive(forwards));
        if (!(Math.abs(drive) < most)) {
            return false;
        }
        stiffness(left);
        stiffness(right);
        double perSpeed = left.stiffness / leftWheel.turnSpeed + right.stiffness / rightWheel.turnSpeed;
        if (!(perSpeed > 0)) {
            return false;
        }
        double speed = (drive + left.stiffness + right.stiffness) / perSpeed;
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS; step++) {
            left.at(speed);
            right.at(speed);
            double over = left.force + right.force - drive;
            if (Math.abs(over) <= TOLERANCE * most) {
                return true;
            }
            if (over > 0) {
                high = speed;
            } else {
                low = speed;
            }
            double next = speed - over / (left.byRimSpeed + right.byRimSpeed);
            if (!(next > low && next < high)) {
                if (Double.isInfinite(low) || Double.isInfinite(high)) {
                    return false; // so far out that the tyres' curves are flat
                }
                next = (low + high) / 2;
            }
            if (next == speed) {
                return true;
            }
            speed = next;
        }
        return Math.abs(left.force + right.force - drive) <= 1e3 * TOLERANCE * most;
    }

    /** Longitudinal stiffness Cκ of a wheel's tyre at its load, N. */
    private void stiffness(Pull pull) {
        double load = pull.wheel.load;
        if (load <= 0) {
            pull.stiffness = 0;
            pull.stiffnessByLoad = 0;
        } else if (stiffnessOverLoad >= 0) {
            pull.stiffness = stiffnessOverLoad * load;
            pull.stiffnessByLoad = stiffnessOverLoad;
        } else {
            pull.stiffness = law.corneringStiffness(load);
            pull.stiffnessByLoad = law.corneringStiffnessByLoad(load);
        }
    }

    private void fixedShares(double drive, double leftPart) {
        for (int i = 0; i < UNKNOWNS; i++) {
            leftShareBy[i] = 0;
            rightShareBy[i] = 0;
        }
        leftShare = leftPart * drive;
        rightShare = (1 - leftPart) * drive;
        leftShareBy[AxleInTurn.DRIVE] = leftPart;
        rightShareBy[AxleInTurn.DRIVE] = 1 - leftPart;
    }
}
