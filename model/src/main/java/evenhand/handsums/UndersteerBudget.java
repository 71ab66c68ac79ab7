package evenhand.handsums;

/**
 * The understeer gradient as lateral acceleration tends to nothing, term by term, rad per m/s²; positive = understeer. Each
 * term is a method of its own; index f is front, r rear, and a dash is "per m/s² of lateral acceleration".
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
    static final UndersteerBudget NONE = new UndersteerBudget(0, 0, 0, 0, 0, 0);

    /** The understeer gradient, rad per m/s². */
    public double gradient() {
        return tyres + aligningTorque + camber + rollSteer + lateralForceSteer + aligningTorqueSteer;
    }

    /**
     * Tyres' part: each axle's load over its cornering stiffness, rad per m/s².
     *
     * <pre>  m_f/C_f − m_r/C_r  </pre>
     *
     * @param frontMass m_f, mass that stands on the front tyres, W_f/g, kg
     * @param frontCorneringStiffness C_f of both tyres, N/rad
     * @param rearMass m_r, kg
     * @param rearCorneringStiffness C_r, N/rad
     */
    static double ofTyres(
            double frontMass, double frontCorneringStiffness, double rearMass, double rearCorneringStiffness) {
        return frontMass / frontCorneringStiffness - rearMass / rearCorneringStiffness;
    }

    /**
     * Aligning torque's part: pneumatic trail moves the side forces backwards, so that the axles share them otherwise than
     * the weight, rad per m/s².
     *
     * <pre>  Y'_f/C_f − Y'_r/C_r − tyres  </pre>
     *
     * @param frontForce Y'_f, N per m/s²
     * @param frontCorneringStiffness C_f, N/rad
     * @param rearForce Y'_r, N per m/s²
     * @param rearCorneringStiffness C_r, N/rad
     * @param ofTyres see {@link #ofTyres}
     */
    static double ofAligningTorque(
            double frontForce,
            double frontCorneringStiffness,
            double rearForce,
            double rearCorneringStiffness,
            double ofTyres) {
        return frontForce / frontCorneringStiffness - rearForce / rearCorneringStiffness - ofTyres;
    }

    /**
     * Camber's part: wheels that lean out of the turn need more slip, rad per m/s².
     *
     * <pre>  (c_f·λ_f − c_r·λ_r)/ay  </pre>
     *
     * @param frontThrustRatio c_f, camber thrust over cornering stiffness
     * @param frontLean λ_f to the right in a left turn, rad
     * @param rearThrustRatio c_r
     * @param rearLean λ_r, rad
     * @param lateralAcceleration ay at which they lean so, m/s²
     */
    static double ofCamber(
            double frontThrustRatio,
            double frontLean,
            double rearThrustRatio,
            double rearLean,
            double lateralAcceleration) {
        return (frontThrustRatio * frontLean - rearThrustRatio * rearLean) / lateralAcceleration;
    }

    /**
     * Roll steer's part: of either axle towards understeer where its ratio is positive, rad per m/s².
     *
     * <pre>  (ε_f·φs_f + ε_r·φs_r)/ay  </pre>
     *
     * @param frontRatio ε_f, rad/rad
     * @param frontSuspensionRoll φs_f, rad
     * @param rearRatio ε_r, rad/rad
     * @param rearSuspensionRoll φs_r, rad
     * @param lateralAcceleration ay at which they roll so, m/s²
     */
    static double ofRollSteer(
            double frontRatio,
            double frontSuspensionRoll,
            double rearRatio,
            double rearSuspensionRoll,
            double lateralAcceleration) {
        return (frontRatio * frontSuspensionRoll + rearRatio * rearSuspensionRoll) / lateralAcceleration;
    }

    /**
     * Lateral force steer's part: give of links and bushes under side force, rad per m/s².
     *
     * <pre>  A_f·Y'_f + A_r·Y'_r  </pre>
     *
     * @param frontCompliance A_f, rad/N
     * @param frontForce Y'_f, N per m/s²
     * @param rearCompliance A_r, rad/N
     * @param rearForce Y'_r, N per m/s²
     */
    static double ofLateralForceSteer(
            double frontCompliance, double frontForce, double rearCompliance, double rearForce) {
        return frontCompliance * frontForce + rearCompliance * rearForce;
    }

    /**
     * Aligning torque steer's part: give of steering and links under the tyres' aligning torque, rad per m/s².
     *
     * <pre>  B_f·p_f·Y'_f + B_r·p_r·Y'_r  </pre>
     *
     * @param frontCompliance B_f, rad/(N·m)
     * @param frontTrail p_f, m
     * @param frontForce Y'_f, N per m/s²
     * @param rearCompliance B_r, rad/(N·m)
     * @param rearTrail p_r, m
     * @param rearForce Y'_r, N per m/s²
     */
    static double ofAligningTorqueSteer(
            double frontCompliance,
            double frontTrail,
            double frontForce,
            double rearCompliance,
            double rearTrail,
            double rearForce) {
        return frontCompliance * frontTrail * frontForce + rearCompliance * rearTrail * rearForce;
    }
}
