package evenhand.handsums;

import evenhand.car.Weights;

/**
 * How far body and axles roll: stiffnesses, arms and angles of the hand sums, one method each.
 *
 * <p>Axes ISO 8855: angles and moments about the long axis of the car, the right side down positive, as in a left turn.
 * Heights above the ground. Source: Milliken &amp; Milliken 1995 ch. 16 and 18; Gillespie 1992 ch. 6.
 */
public final class RollStiffness {
    private RollStiffness() {}

    /**
     * Roll arm: how far the sprung centre of gravity stands above the roll axis, m.
     *
     * <pre>  H = hs − (z_f·s_f + z_r·s_r)  </pre>
     *
     * @param sprungHeight hs, m
     * @param frontRollCentre z_f, m
     * @param frontShare s_f, part of the sprung mass over the front axle
     * @param rearRollCentre z_r, m
     * @param rearShare s_r
     */
    public static double rollArm(
            double sprungHeight, double frontRollCentre, double frontShare, double rearRollCentre, double rearShare) {
        return sprungHeight - frontRollCentre * frontShare - rearRollCentre * rearShare;
    }

    /**
     * Tyre roll stiffness of an axle: its two tyres, half the track from the middle, against the axle's tilt, N·m/rad.
     *
     * <pre>  Kz = ½·t²·k  </pre>
     *
     * @param track t, m
     * @param verticalRate k of one tyre, N/m
     */
    public static double tyreRollStiffness(double track, double verticalRate) {
        return track * track * verticalRate / 2;
    }

    /**
     * Roll stiffness that the tyres of an axle have left to hold what stands above: as they tilt, the axle and the body
     * on its roll centre move outwards and turn it further over, N·m/rad. Not above zero: the axle falls over.
     *
     * <pre>  Kt = Kz − g·(ms·s·z + mu·hu)  </pre>
     *
     * @param tyreRollStiffness Kz, N·m/rad
     * @param sprungMass ms·s, the sprung mass over this axle, kg
     * @param rollCentre z, m
     * @param unsprungMass mu, kg
     * @param unsprungHeight hu, m
     */
    public static double tyreRollStiffnessLeft(
            double tyreRollStiffness,
            double sprungMass,
            double rollCentre,
            double unsprungMass,
            double unsprungHeight) {
        return tyreRollStiffness - Weights.GRAVITY * (sprungMass * rollCentre + unsprungMass * unsprungHeight);
    }

    /**
     * Roll stiffness of suspension and tyres in series, as springs one on top of the other, N·m/rad.
     *
     * <pre>  k = Ks·Kt/(Ks + Kt)  </pre>
     *
     * @param suspension Ks of springs and bar, N·m/rad
     * @param tyresLeft Kt, see {@link #tyreRollStiffnessLeft}, N·m/rad
     */
    public static double rollStiffnessInSeries(double suspension, double tyresLeft) {
        return suspension * tyresLeft / (suspension + tyresLeft);
    }

    /**
     * Roll moment of gravity: what the sprung mass adds to its own roll as it leans outwards, N·m/rad. Where it is no less
     * than the roll stiffness of both axles, the car falls over on its springs.
     *
     * <pre>  ms·g·H  </pre>
     *
     * @param sprungMass ms, kg
     * @param rollArm H, m
     */
    public static double gravityRollMoment(double sprungMass, double rollArm) {
        return sprungMass * Weights.GRAVITY * rollArm;
    }

    /**
     * Roll angle of the body in balance, rad; positive in a left turn.
     *
     * <pre>  φ = (E + k_f·G_f/Kt_f + k_r·G_r/Kt_r)/(k_f + k_r − ms·g·H)  </pre>
     *
     * @param overturningMoment E of the side forces about the roll centres, N·m
     * @param frontMomentOfTyres k_f·G_f/Kt_f: what the tilt of the tyres under the links' moment adds at the front, N·m
     * @param rearMomentOfTyres the same at the rear, N·m
     * @param rollStiffness k_f + k_r, N·m/rad
     * @param gravityRollMoment ms·g·H, N·m/rad
     */
    public static double rollAngle(
            double overturningMoment,
            double frontMomentOfTyres,
            double rearMomentOfTyres,
            double rollStiffness,
            double gravityRollMoment) {
        return (overturningMoment + frontMomentOfTyres + rearMomentOfTyres) / (rollStiffness - gravityRollMoment);
    }

    /**
     * Tyre tilt: how far an axle leans on its tyres, rad; outwards positive in a left turn.
     *
     * <pre>  ψ = (M + G)/Kt  </pre>
     *
     * @param elasticMoment M through springs and bar, N·m
     * @param momentPastSprings G by the links and of the unsprung mass, N·m
     * @param tyresLeft Kt, N·m/rad
     */
    public static double tyreTilt(double elasticMoment, double momentPastSprings, double tyresLeft) {
        return (elasticMoment + momentPastSprings) / tyresLeft;
    }
}
