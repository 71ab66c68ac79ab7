package evenhand.tyre;

/** A published law of side force, by its coefficients. */
public sealed interface LateralLaw permits MagicFormula, PacejkaCoefficients {
    /** Load at which the coefficients are stated, N. */
    double referenceLoad();

    /** Slope of side force over slip angle at no slip and no lean, N/rad, positive; zero without load. */
    double corneringStiffness(double load);

    /** Slope of the cornering stiffness over load, 1/rad. */
    double corneringStiffnessByLoad(double load);

    /** Pneumatic trail at no slip, m; zero without load. */
    double pneumaticTrail(double load);

    /** Slip angle that one radian of lean to the right takes away, rad/rad: camber stiffness over cornering stiffness. */
    double camberThrustRatio();
}
