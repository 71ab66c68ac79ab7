package evenhand.suspension;

import evenhand.geometry.Lever;

/**
 * Rates of an axle's springs as the wheel or the axle feels them, one method for each formula.
 *
 * <p>Source: Milliken &amp; Milliken 1995 ch. 16 (motion ratio, leaning springs); Gillespie 1992 ch. 6 (roll stiffness of an
 * axle by its spring base).
 */
final class SpringRates {
    private SpringRates() {}

    /**
     * Wheel rate of a spring, N/m: force at the wheel over travel of the wheel, which the motion ratio makes less twice,
     * once for the spring's travel and once for its force. Of a spring that leans the ratio is cos(lean).
     *
     * <pre>  k = rate·MR²  </pre>
     *
     * @param rate along the spring, N/m
     * @param motionRatio MR, spring travel over wheel travel
     */
    static double wheelRate(double rate, double motionRatio) {
        return rate * motionRatio * motionRatio;
    }

    /**
     * What a leaning spring loses of its rate in heave because it turns more upright or flatter under load, N/m; it does not
     * in roll about a centre on its line.
     *
     * <pre>  S0/cos(lean)·sin²(lean)/l  </pre>
     *
     * @param load S0 that one spring carries upright at rest, N
     * @param lean rad
     * @param installedLength l, m
     */
    static double rateLostByTurning(double load, double lean, double installedLength) {
        double sin = Math.sin(lean);
        return load / Math.cos(lean) * sin * sin / installedLength;
    }

    /**
     * Rate of one spring in heave, N/m.
     *
     * @param rate along the spring, N/m
     * @param loadAtRest that it carries, N; it counts where the spring leans and its length is known
     */
    static double heaveRate(double rate, Lever lever, double loadAtRest) {
        double rollRate = wheelRate(rate, lever.ratio());
        return lever.length().isPresent()
                ? rollRate
                        - rateLostByTurning(
                                loadAtRest, lever.lean(), lever.length().getAsDouble())
                : rollRate;
    }

    /**
     * Axle roll stiffness: moment of springs and bar against the suspension roll, per rad, N·m/rad.
     *
     * <pre>  Ks = Σk·e² + K_bar  </pre>
     *
     * @param arm e of the springs from the middle, m
     * @param rates Σk of the springs that carry something, in roll, N/m
     * @param bar K_bar, N·m/rad
     */
    static double axleRollStiffness(double arm, double rates, double bar) {
        return rollStiffnessOfPair(arm, rates) + bar;
    }

    /**
     * Roll stiffness of a left and a right spring or stop, N·m/rad.
     *
     * <pre>  Σk·e²  </pre>
     *
     * @param arm e of both from the middle, m
     * @param rates Σk of both, N/m
     */
    static double rollStiffnessOfPair(double arm, double rates) {
        return arm * arm * rates;
    }

    /**
     * Elastic moment: what springs and bar hold against the suspension roll, N·m, right side down positive.
     *
     * <pre>  M = e·(S_R − S_L) + K_bar·φs  </pre>
     *
     * @param arm e of the springs from the middle, m
     * @param difference S_R − S_L, right spring's load less the left one's, from rest, N
     * @param bar K_bar, N·m/rad
     * @param suspensionRoll φs, rad
     */
    static double elasticMoment(double arm, double difference, double bar, double suspensionRoll) {
        return momentOfPair(arm, difference) + bar * suspensionRoll;
    }

    /**
     * Moment of a left and a right spring or stop against the roll, N·m.
     *
     * <pre>  e·(S_R − S_L)  </pre>
     *
     * @param arm e of both from the middle, m
     * @param difference S_R − S_L, N
     */
    static double momentOfPair(double arm, double difference) {
        return arm * difference;
    }

    /**
     * What a spring pushes more at the wheel by the way of its perch along the spring, body and wheel held, N/m.
     *
     * <pre>  k·MR  </pre>
     *
     * @param rate k along the spring's line, N/m
     * @param ratio MR, spring travel over wheel travel
     */
    static double perchRate(double rate, double ratio) {
        return rate * ratio;
    }
}
