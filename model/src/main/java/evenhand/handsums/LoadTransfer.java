package evenhand.handsums;

/**
 * Lateral load transfer of an axle and the side forces and moments that make it, one method each.
 *
 * <p>Axes ISO 8855: in a left turn lateral acceleration and side forces are positive, to the left; moments turn the right
 * side down and count positive; what the outer, right wheel gains is positive. Heights above the ground. Source: Milliken
 * &amp; Milliken 1995 ch. 18; Gillespie 1992 ch. 6.
 */
public final class LoadTransfer {
    private LoadTransfer() {}

    /**
     * Lateral load transfer of an axle, front or rear: what its outer wheel gains and its inner one loses, N. The tilt of
     * the axle on its tyres says it all: elastic, geometric and unsprung moment have made it, and the lean with it.
     *
     * <pre>  ΔFz = Kz·ψ/t  </pre>
     *
     * @param tyreRollStiffness Kz, N·m/rad
     * @param tyreTilt ψ, rad
     * @param track t, m
     */
    public static double lateralLoadTransfer(double tyreRollStiffness, double tyreTilt, double track) {
        return tyreRollStiffness * tyreTilt / track;
    }

    /**
     * Share of the front axle in the lateral load transfer of both.
     *
     * <pre>  ΔFz_f/(ΔFz_f + ΔFz_r)  </pre>
     *
     * @param front lateral load transfer of the front axle, N
     * @param rear the same of the rear axle, N
     */
    public static double frontShare(double front, double rear) {
        return front / (front + rear);
    }

    /**
     * Side force of the front tyres in a steady turn, N: moments about the point where the rear force acts, which lies a
     * pneumatic trail behind its axle as the front one does behind its own.
     *
     * <pre>  Y_f = m·ay·(b + p_r)/(L − p_f + p_r)  </pre>
     *
     * @param mass m of the car, kg
     * @param lateralAcceleration ay, m/s²
     * @param wheelbase L, m
     * @param cgAheadOfRear b, m
     * @param frontTrail p_f, pneumatic trail of the front tyres, m
     * @param rearTrail p_r, m
     */
    public static double frontSideForce(
            double mass,
            double lateralAcceleration,
            double wheelbase,
            double cgAheadOfRear,
            double frontTrail,
            double rearTrail) {
        return mass * lateralAcceleration * (cgAheadOfRear + rearTrail) / (wheelbase - frontTrail + rearTrail);
    }

    /**
     * Link force: the side force that the links of an axle hand on to the body, N.
     *
     * <pre>  N = Y − mu·ay  </pre>
     *
     * @param sideForce Y of the tyres, N
     * @param unsprungMass mu, kg
     * @param lateralAcceleration ay, m/s²
     */
    public static double linkForce(double sideForce, double unsprungMass, double lateralAcceleration) {
        return sideForce - unsprungMass * lateralAcceleration;
    }

    /**
     * Geometric moment of an axle: what its links carry at the roll centre, past the springs, N·m about the ground.
     *
     * <pre>  N·z  </pre>
     *
     * @param linkForce N, in newtons
     * @param rollCentre z, m
     */
    public static double geometricMoment(double linkForce, double rollCentre) {
        return linkForce * rollCentre;
    }

    /**
     * Unsprung moment of an axle: its own mass at its own height, N·m about the ground.
     *
     * <pre>  mu·ay·hu  </pre>
     *
     * @param unsprungMass mu, kg
     * @param lateralAcceleration ay, m/s²
     * @param unsprungHeight hu, m
     */
    public static double unsprungMoment(double unsprungMass, double lateralAcceleration, double unsprungHeight) {
        return unsprungMass * lateralAcceleration * unsprungHeight;
    }

    /**
     * Elastic moment of an axle: its part of the roll moment that goes through springs and bar, N·m.
     *
     * <pre>  M = k·(φ − G/Kt)  </pre>
     *
     * @param rollStiffness k of suspension and tyres in series, N·m/rad
     * @param rollAngle φ of the body, rad
     * @param momentPastSprings G, geometric and unsprung, N·m
     * @param tyresLeft Kt, see {@link RollStiffness#tyreRollStiffnessLeft}, N·m/rad
     */
    public static double elasticMoment(
            double rollStiffness, double rollAngle, double momentPastSprings, double tyresLeft) {
        return rollStiffness * (rollAngle - momentPastSprings / tyresLeft);
    }

    /**
     * Overturning moment of the body about the roll axis: each axle's link force at its arm, N·m; the lean comes on top.
     *
     * <pre>  E = N_f·(hs − z_f) + N_r·(hs − z_r)  </pre>
     *
     * @param frontLinkForce N_f, in newtons
     * @param frontRollCentre z_f, m
     * @param rearLinkForce N_r, in newtons
     * @param rearRollCentre z_r, m
     * @param sprungHeight hs, m
     */
    public static double overturningMomentAboutRollAxis(
            double frontLinkForce,
            double frontRollCentre,
            double rearLinkForce,
            double rearRollCentre,
            double sprungHeight) {
        return frontLinkForce * (sprungHeight - frontRollCentre) + rearLinkForce * (sprungHeight - rearRollCentre);
    }
}
