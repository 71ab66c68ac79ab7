package evenhand.tyre;

import static evenhand.quantity.InvalidValue.require;

/**
 * Coefficients of the tyre's side force by the Magic Formula, with camber and pneumatic trail.
 *
 * <p>Source: Pacejka 2012, ch. 4; brush-model trail ch. 3. Evaluated by {@link SideForce}.
 *
 * @param referenceLoad load Fz0 at which stiffness and friction are stated, N
 * @param corneringStiffness K0, slope of side force over slip angle at the reference load, N/rad
 * @param friction μ0, peak side force over load at the reference load
 * @param frictionLoadSensitivity s, part of μ0 lost per reference load of extra load
 * @param stiffnessPeakLoadRatio p, the load of greatest cornering stiffness over the reference load
 * @param shape C
 * @param curvature E
 * @param camberThrustRatio slip angle that a lean of one radian is worth, rad/rad
 * @param frictionCamberLoss part of the friction lost per squared lean, 1/rad²
 * @param bestLeanIn lean into the turn at which friction is greatest, rad
 * @param pneumaticTrail trail at the reference load and no slip, m
 */
public record MagicFormula(
        double referenceLoad,
        double corneringStiffness,
        double friction,
        double frictionLoadSensitivity,
        double stiffnessPeakLoadRatio,
        double shape,
        double curvature,
        double camberThrustRatio,
        double frictionCamberLoss,
        double bestLeanIn,
        double pneumaticTrail)
        implements LateralLaw {

    /** The lowest part of μ0 that a heavy load can leave. */
    static final double FRICTION_FLOOR = 0.2;

    public MagicFormula {
        require(referenceLoad > 0, "referenceLoad", "must be above zero");
        require(corneringStiffness > 0, "corneringStiffness", "must be above zero");
        require(friction > 0, "friction", "must be above zero");
        require(frictionLoadSensitivity >= 0, "frictionLoadSensitivity", "must not be below zero");
        require(stiffnessPeakLoadRatio >= 1, "stiffnessPeakLoadRatio", "must be 1 or more");
        require(shape >= 1 && shape < 2, "shape", "must be from 1 to below 2");
        require(curvature <= 1, "curvature", "must be 1 or less");
        require(camberThrustRatio >= 0, "camberThrustRatio", "must not be below zero");
        require(frictionCamberLoss >= 0, "frictionCamberLoss", "must not be below zero");
        require(Double.isFinite(bestLeanIn), "bestLeanIn", "must be a finite angle");
        require(pneumaticTrail >= 0, "pneumaticTrail", "must not be below zero");
    }

    /**
     * Cornering stiffness at a load, N/rad:
     * <pre>  K = K0·sin(2·atan(Fz/(p·Fz0))) / sin(2·atan(1/p)) </pre>
     * Source: Pacejka 2012 eq. 4.E25 with pKy4 = 2. Written with sin(2·atan x) = 2x/(1 + x²).
     */
    @Override
    public double corneringStiffness(double load) {
        if (load <= 0) {
            return 0;
        }
        double x = load / (stiffnessPeakLoadRatio * referenceLoad);
        double reference = 1 / stiffnessPeakLoadRatio;
        return corneringStiffness * (x / (1 + x * x)) / (reference / (1 + reference * reference));
    }

    @Override
    public double corneringStiffnessByLoad(double load) {
        if (load <= 0) {
            return 0;
        }
        double x = load / (stiffnessPeakLoadRatio * referenceLoad);
        return corneringStiffness(load) / load * (1 - x * x) / (1 + x * x);
    }

    @Override
    public double pneumaticTrail(double load) {
        return load <= 0 ? 0 : pneumaticTrail * Math.sqrt(load / referenceLoad);
    }
}
