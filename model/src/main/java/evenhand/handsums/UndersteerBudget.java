package evenhand.handsums;

/**
 * The understeer gradient as lateral acceleration tends to nothing, term by term, rad per m/s²; positive = understeer.
 *
 * <p>Source: Gillespie 1992 ch. 6; Bundorf &amp; Leffert 1976.
 *
 * @param tyres axle loads over cornering stiffnesses
 * @param aligningTorque pneumatic trail moving the axles' forces
 * @param camber lean of the wheels
 * @param rollSteer suspension roll
 * @param lateralForceSteer give under side force
 * @param aligningTorqueSteer give under aligning torque
 */
public record UndersteerBudget(
        double tyres,
        double aligningTorque,
        double camber,
        double rollSteer,
        double lateralForceSteer,
        double aligningTorqueSteer) {
    /** The understeer gradient, rad per m/s². */
    public double gradient() {
        return tyres + aligningTorque + camber + rollSteer + lateralForceSteer + aligningTorqueSteer;
    }
}
