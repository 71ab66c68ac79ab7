package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

/**
 * How an axle's wheels stand and give. Positive steer values mean understeer at either end.
 *
 * @param camber per wheel, rad, negative = top inwards
 * @param toe per wheel, rad, positive = in
 * @param rollSteer steer per suspension roll, rad/rad
 * @param lateralForceSteer steer per side force of the axle, rad/N
 * @param aligningTorqueSteer steer per aligning torque of the axle, rad/(N·m)
 */
public record Alignment(
        double camber, double toe, double rollSteer, double lateralForceSteer, double aligningTorqueSteer) {
    public Alignment {
        require(Math.abs(camber) < Math.toRadians(30), "camber", "must be less than 30 deg");
        require(Math.abs(toe) < Math.toRadians(10), "toe", "must be less than 10 deg");
        require(Math.abs(rollSteer) <= 2, "rollSteer", "must lie between -2 and 2");
        require(Double.isFinite(lateralForceSteer), "lateralForceSteer", "must be finite");
        require(Double.isFinite(aligningTorqueSteer), "aligningTorqueSteer", "must be finite");
    }

    /** The same give, the wheels standing otherwise. */
    Alignment leaning(double itsCamber, double itsToe, double itsRollSteer) {
        return new Alignment(itsCamber, itsToe, itsRollSteer, lateralForceSteer, aligningTorqueSteer);
    }
}
