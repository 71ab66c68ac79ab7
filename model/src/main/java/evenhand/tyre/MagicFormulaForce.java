package evenhand.tyre;

/**
 * The Magic Formula with camber and brush-model trail.
 * <pre>
 *   Fy = D·sin(C·atan(B·a − E·(B·a − atan(B·a)))),  a = slip − camberThrustRatio·lean
 *   D = μ·Fz,  B = K/(C·D),  μ = max(μ0·(1 − s·dfz), 0.2·μ0)·(1 − loss·((λs + best)² − best²))
 *   trail = t0·√(Fz/Fz0)·3q³(1 − q)/(1 − q³),  q = ∛(1 − |Fy|/D)
 * </pre>
 * λs is the lean out of the turn.
 *
 * <p>Source: Pacejka 2012 ch. 4.3.1 (formula), eq. 4.E25 (stiffness), ch. 3.2.1 (trail of the brush model).
 */
final class MagicFormulaForce extends SideForce {
    /** A lean so great that the law would leave no friction keeps this part: the parabola is fitted to small leans. */
    private static final double LEAST_CAMBER_FACTOR = 0.05;

    private final double fz0;
    private final double mu0;
    private final double sensitivity;
    private final double peakLoad;
    private final double stiffnessOverLoad; // of an unloaded tyre, 1/rad
    private final double shape;
    private final double curvature;
    private final double camberThrustRatio;
    private final double camberLoss;
    private final double bestLean;
    private final double trail0;

    MagicFormulaForce(MagicFormula formula) {
        fz0 = formula.referenceLoad();
        mu0 = formula.friction();
        sensitivity = formula.frictionLoadSensitivity();
        double p = formula.stiffnessPeakLoadRatio();
        peakLoad = p * fz0;
        stiffnessOverLoad = formula.corneringStiffness() * (1 + 1 / (p * p)) / fz0;
        shape = formula.shape();
        curvature = formula.curvature();
        camberThrustRatio = formula.camberThrustRatio();
        camberLoss = formula.frictionCamberLoss();
        bestLean = formula.bestLeanIn();
        trail0 = formula.pneumaticTrail();
    }

    @Override
    public void at(double slip, double lean, double load) {
        double entered = slip - camberThrustRatio * lean;
        enteredSlip = entered;
        if (load <= 0) {
            unloaded();
            return;
        }
        double loadRatio = load / peakLoad;
        double bend = 1 + loadRatio * loadRatio;
        double kappa = stiffnessOverLoad / bend; // K/Fz
        double kappaSlope = -2 * loadRatio / (bend * peakLoad); // of ln(K/Fz) over load

        double mu = mu0 * (1 - sensitivity * (load - fz0) / fz0);
        double muSlope = -mu0 * sensitivity / fz0;
        if (mu < MagicFormula.FRICTION_FLOOR * mu0) {
            mu = MagicFormula.FRICTION_FLOOR * mu0;
            muSlope = 0;
        }
        double outwards = entered < 0 ? -1 : 1;
        double leanOut = outwards * lean + bestLean;
        double camberFactor = 1 - camberLoss * (leanOut * leanOut - bestLean * bestLean);
        double camberFactorSlope = -2 * camberLoss * leanOut * outwards;
        if (camberFactor < LEAST_CAMBER_FACTOR) {
            camberFactor = LEAST_CAMBER_FACTOR;
            camberFactorSlope = 0;
        }
        double friction = mu * camberFactor;
        peak = friction * load;
        peakByLoad = friction + muSlope * camberFactor * load;
        peakByLean = mu * load * camberFactorSlope;

        double b = kappa / (shape * friction);
        double x = b * entered;
        double psi = x - curvature * (x - Math.atan(x));
        double psiByX = 1 - curvature * (x * x) / (1 + x * x);
        double theta = shape * Math.atan(psi);
        double sin = Math.sin(theta);
        double sinByX = Math.cos(theta) * shape / (1 + psi * psi) * psiByX;
        double xByLoad = x * (kappaSlope - muSlope / mu);
        double xByLean = -b * camberThrustRatio - x * camberFactorSlope / camberFactor;

        force = peak * sin;
        forceBySlip = peak * sinByX * b;
        forceByLoad = peakByLoad * sin + peak * sinByX * xByLoad;
        forceByLean = peakByLean * sin + peak * sinByX * xByLean;
        trailOf(load, sin, Math.abs(theta) < Math.PI / 2, sinByX, b, xByLoad, xByLean);
    }

    private void trailOf(
            double load, double sin, boolean beforePeak, double sinByX, double b, double xByLoad, double xByLean) {
        if (trail0 == 0 || !beforePeak) {
            trail = 0;
            trailBySlip = 0;
            trailByLoad = 0;
            trailByLean = 0;
            return;
        }
        double left = 1 - Math.abs(sin); // q³
        double q = Math.cbrt(left);
        double g = 1 / (1 + q + q * q);
        double unloadedTrail = trail0 * Math.sqrt(load / fz0);
        double slope = unloadedTrail * (3 * g - q * (1 + 2 * q) * g * g) * -Math.signum(sin) * sinByX;
        trail = unloadedTrail * 3 * left * g;
        trailBySlip = slope * b;
        trailByLean = slope * xByLean;
        trailByLoad = slope * xByLoad + trail / (2 * load);
    }
}
