package evenhand.turn;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The car in balance at one lateral acceleration. SI; angles to the left positive, roll with the right side down
 * positive; in a right turn angles and side forces change sign.
 *
 * @param lateralAcceleration ac = V²/R, m/s²
 * @param speed V, m/s
 * @param steer reference steer δ, rad
 * @param ackermannSteer atan(L/√(R² − b²)), rad
 * @param understeerGradient dδ/d(ac) at constant radius, rad per m/s²; no value at the limit itself
 * @param rollGradient tangent of the shown roll, rad per m/s²
 * @param hold how the steer goes with the bend at held speed, dδ/dκ over the wheelbase: 1 is neutral, more is understeer,
 *     and at zero the car no longer stays in its bend by itself; no value at the fold
 * @param sideslip β, rad
 * @param roll of the body at the sprung centre of gravity, rad
 * @param frontRoll rad
 * @param rearRoll rad
 * @param frontHeave ζ, m, up positive
 * @param rearHeave m
 * @param frontRollCentreHeight m
 * @param rearRollCentreHeight m
 * @param frontLoadTransfer (outer − inner)/2 less its value at rest, N
 * @param rearLoadTransfer N
 * @param frontGripUsed side force over what the loads allow
 * @param rearGripUsed side force over what the loads allow
 * @param driveForce P, N
 * @param airDrag N
 * @param wheels front left, front right, rear left, rear right
 * @param changing what changes the speed, where it does not stay
 */
public record TurnRow(
        double lateralAcceleration,
        double speed,
        double steer,
        double ackermannSteer,
        OptionalDouble understeerGradient,
        OptionalDouble rollGradient,
        OptionalDouble hold,
        double sideslip,
        double roll,
        double frontRoll,
        double rearRoll,
        double frontHeave,
        double rearHeave,
        double frontRollCentreHeight,
        double rearRollCentreHeight,
        double frontLoadTransfer,
        double rearLoadTransfer,
        double frontGripUsed,
        double rearGripUsed,
        double driveForce,
        double airDrag,
        List<WheelState> wheels,
        Optional<Changing> changing) {
    /**
     * A speed that changes at that moment.
     *
     * @param acceleration al along the path, forwards positive, m/s²
     * @param brakeForce of all brakes, N
     */
    public record Changing(double acceleration, double brakeForce) {}

    public TurnRow {
        wheels = List.copyOf(wheels);
    }

    /** Share of the front axle in the load transfer of both. */
    public double frontLoadTransferShare() {
        return frontLoadTransfer / (frontLoadTransfer + rearLoadTransfer);
    }

    /** Grip used at the front over grip used at the rear, less one: positive = the front has less in hand. */
    public double gripBalance() {
        return frontGripUsed / rearGripUsed - 1;
    }

    public WheelState wheel(Wheel wheel) {
        return wheels.get(wheel.index());
    }

    /** The mirror image: a left turn's row as that of the mirrored car's right turn. */
    TurnRow mirrored() {
        return new TurnRow(
                lateralAcceleration,
                speed,
                -steer,
                -ackermannSteer,
                understeerGradient,
                rollGradient,
                hold,
                -sideslip,
                -roll,
                -frontRoll,
                -rearRoll,
                frontHeave,
                rearHeave,
                frontRollCentreHeight,
                rearRollCentreHeight,
                frontLoadTransfer,
                rearLoadTransfer,
                frontGripUsed,
                rearGripUsed,
                driveForce,
                airDrag,
                List.of(
                        wheels.get(1).mirrored(),
                        wheels.get(0).mirrored(),
                        wheels.get(3).mirrored(),
                        wheels.get(2).mirrored()),
                changing);
    }
}
