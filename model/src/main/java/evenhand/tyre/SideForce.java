package evenhand.tyre;

/**
 * Side force and pneumatic trail of one tyre at a slip angle, a lean and a load, with their slopes, before drive takes
 * its share. Made once from a law; {@link #at} sets the fields and allocates nothing. One per thread.
 *
 * <p>Slip angle, rad, is positive when it makes force to the left; lean, rad, is positive to the right; force N,
 * positive to the left. All values are zero without load.
 */
public abstract sealed class SideForce permits MagicFormulaForce, PacejkaForce {
    /** Side force, N, and its slopes over slip, lean (1/rad) and load. */
    public double force;

    public double forceBySlip;
    public double forceByLean;
    public double forceByLoad;

    /** Greatest side force at this load and lean, N, and its slopes. */
    public double peak;

    public double peakByLean;
    public double peakByLoad;

    /** Pneumatic trail, m: aligning moment = −trail · side force that is left; and its slopes. */
    public double trail;

    public double trailBySlip;
    public double trailByLean;
    public double trailByLoad;

    /** Part of the aligning moment that does not come from the trail, N·m, and its slopes. */
    public double residualMoment;

    public double residualMomentBySlip;
    public double residualMomentByLean;
    public double residualMomentByLoad;

    /** Slip that enters the formula, camber thrust taken off, rad. */
    public double enteredSlip;

    /** An evaluator of the law. */
    public static SideForce of(LateralLaw law) {
        return law instanceof MagicFormula formula
                ? new MagicFormulaForce(formula)
                : new PacejkaForce((PacejkaCoefficients) law);
    }

    /** Sets all fields for this slip, lean and load. */
    public abstract void at(double slip, double lean, double load);

    final void unloaded() {
        force = 0;
        forceBySlip = 0;
        forceByLean = 0;
        forceByLoad = 0;
        peak = 0;
        peakByLean = 0;
        peakByLoad = 0;
        trail = 0;
        trailBySlip = 0;
        trailByLean = 0;
        trailByLoad = 0;
        residualMoment = 0;
        residualMomentBySlip = 0;
        residualMomentByLean = 0;
        residualMomentByLoad = 0;
    }
}
