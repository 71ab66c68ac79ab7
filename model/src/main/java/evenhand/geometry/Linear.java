package evenhand.geometry;

import java.util.Optional;

/**
 * An axle whose links are known by coefficients: at rest as measured, and from there along straight lines.
 *
 * @param rollCentreHeight above the ground at rest, m
 * @param rollCentreByTravel perBump, rise of the roll centre above the ground per bump travel, the wheels standing still
 * @param rollSteer steer per suspension roll, rad/rad, positive towards understeer at either end
 * @param rollCamber lean of the wheels per suspension roll: 0 stays upright, 1 leans with the body; 0 of a live axle
 * @param leanByTravel c, how a wheel of its own leans against the body per bump travel, top inwards, rad/m; 0 of a live axle
 * @param springs their leverage
 * @param dampers their leverage, where there are any
 */
public record Linear(
        double rollCentreHeight,
        double rollCentreByTravel,
        double rollSteer,
        double rollCamber,
        double leanByTravel,
        Lever springs,
        Optional<Lever> dampers) {
    /**
     * Height of the roll centre above the ground on which the wheels stand still, m.
     *
     * <pre>  z = height + perBump·u  </pre>
     *
     * @param travel u, mean bump travel of both wheels, m
     */
    public double rollCentreHeight(double travel) {
        return rollCentreHeight + rollCentreByTravel * travel;
    }

    /**
     * Lean of a wheel of its own against the body, top inwards, rad, from rest.
     *
     * <pre>  c·u  </pre>
     *
     * @param travel u, bump travel of this wheel, m
     */
    public double lean(double travel) {
        return leanByTravel * travel;
    }

    /**
     * How a wheel of its own leans against the body per bump travel, rad/m: in roll the wheels of an axle travel by half the
     * track times the roll, one up and one down, and lean by what rollCamber leaves of it.
     *
     * <pre>  c = 2·(1 − rollCamber)/t  </pre>
     *
     * @param track t, m
     */
    public static double leanByTravel(double rollCamber, double track) {
        return 2 * (1 - rollCamber) / track;
    }

    /**
     * Steer of the axle by its links, rad, positive towards understeer.
     *
     * <pre>  rollSteer·φs  </pre>
     *
     * @param suspensionRoll φs, rad
     */
    public double steer(double suspensionRoll) {
        return rollSteer * suspensionRoll;
    }
}
