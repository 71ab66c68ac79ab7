package evenhand.turn;

import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.tyre.LateralLaw;
import evenhand.tyre.Tyre;

/**
 * How the drive force is shared between the two wheels of an axle by its differential, and the slopes of the shares.
 * Side 0 is left. An axle that is not driven keeps shares of zero. {@link #at} allocates nothing.
 */
final class DriveShares {
    final boolean driven;
    final double[] share = new double[2]; // N
    final double[] shareByDrive = new double[2];
    final double[] shareBySideslip = new double[2];
    final double[] shareByLeftLoad = new double[2];
    final double[] shareByRightLoad = new double[2];

    /** Which wheel of a torque-biasing differential has the greater fixed share: 4 left, 8 right, 0 none. */
    int piece;

    private final boolean open;
    private final boolean biased;
    private final double biasRatio;
    private final LateralLaw law;
    private final double driveStiffnessOverLoad; // 1, below zero: the cornering stiffness stands in

    DriveShares(Car car, End end) {
        driven = car.drive().axle() == end;
        Drive.Differential differential = car.drive().differential();
        open = differential instanceof Drive.Differential.Open;
        biased = differential instanceof Drive.Differential.TorqueBiasing;
        biasRatio = differential instanceof Drive.Differential.TorqueBiasing biasing ? biasing.biasRatio() : 1;
        Tyre tyre = car.axle(end).tyre();
        law = tyre.lateral();
        driveStiffnessOverLoad = tyre.longitudinalStiffness().isPresent()
                ? tyre.longitudinalStiffness().getAsDouble() / law.referenceLoad()
                : -1;
    }

    /**
     * Shares the drive force between the wheels. A locked axle turns at one rim speed Vr: share_j = Cκ_j·(Vr/v_j − 1)
     * with Vr from their sum, which leaves share_L = (Cκ_L/n_L·P + Cκ_L·Cκ_R·(1/n_L − 1/n_R))/(Cκ_L/n_L + Cκ_R/n_R).
     *
     * @param drive P, N
     * @param sinSideslip sin β
     * @param turnSpeed n, speed of each wheel over the car's
     * @param load of each tyre, N
     */
    void at(double drive, double sinSideslip, double[] turnSpeed, double[] load) {
        piece = 0;
        if (!driven) {
            return;
        }
        double left = driveStiffness(load[0]);
        double right = driveStiffness(load[1]);
        if (open || (left == 0 && right == 0)) {
            fixedShares(drive, 0.5);
            return;
        }
        double perLeft = 1 / turnSpeed[0];
        double perRight = 1 / turnSpeed[1];
        double skew = perLeft - perRight;
        double sum = left * perLeft + right * perRight;
        double ofLeft = (left * perLeft * drive + left * right * skew) / sum;
        double ofRight = drive - ofLeft;
        if (biased) {
            double sense = drive < 0 ? -1 : 1;
            double greater = Math.max(sense * ofLeft, sense * ofRight);
            double lesser = Math.min(sense * ofLeft, sense * ofRight);
            if (lesser <= 0 || greater > biasRatio * lesser) {
                double most = biasRatio / (1 + biasRatio);
                boolean onLeft = sense * ofLeft >= sense * ofRight;
                piece = onLeft ? 4 : 8;
                fixedShares(drive, onLeft ? most : 1 - most);
                return;
            }
        }
        share[0] = ofLeft;
        share[1] = ofRight;
        shareByDrive[0] = left * perLeft / sum;
        double byLeft = (perLeft * drive + right * skew - ofLeft * perLeft) / sum;
        double byRight = (left * skew - ofLeft * perRight) / sum;
        double bySpeedLeft = left * perLeft * perLeft * (ofLeft - drive - right) / sum;
        double bySpeedRight = right * perRight * perRight * (ofLeft + left) / sum;
        shareBySideslip[0] = -(bySpeedLeft + bySpeedRight) * sinSideslip;
        shareByLeftLoad[0] = byLeft * driveStiffnessByLoad(load[0]);
        shareByRightLoad[0] = byRight * driveStiffnessByLoad(load[1]);
        shareByDrive[1] = 1 - shareByDrive[0];
        shareBySideslip[1] = -shareBySideslip[0];
        shareByLeftLoad[1] = -shareByLeftLoad[0];
        shareByRightLoad[1] = -shareByRightLoad[0];
    }

    private void fixedShares(double drive, double leftPart) {
        for (int side = 0; side < 2; side++) {
            double part = side == 0 ? leftPart : 1 - leftPart;
            share[side] = part * drive;
            shareByDrive[side] = part;
            shareBySideslip[side] = 0;
            shareByLeftLoad[side] = 0;
            shareByRightLoad[side] = 0;
        }
    }

    private double driveStiffness(double wheelLoad) {
        return driveStiffnessOverLoad >= 0 ? driveStiffnessOverLoad * wheelLoad : law.corneringStiffness(wheelLoad);
    }

    private double driveStiffnessByLoad(double wheelLoad) {
        if (wheelLoad <= 0) {
            return 0;
        }
        return driveStiffnessOverLoad >= 0 ? driveStiffnessOverLoad : law.corneringStiffnessByLoad(wheelLoad);
    }
}
