package evenhand.ride;

/**
 * The road classes, each by its geometric mean: Gd(n) = Gd(n0)·(n/n0)⁻², n0 = 0.1 cycle/m, from 0.011 to 2.83 cycle/m.
 *
 * <p>Source: ISO 8608:2016, table of classes.
 */
public enum RoadClass implements Road {
    A(16e-6),
    B(64e-6),
    C(256e-6),
    D(1024e-6),
    E(4096e-6),
    F(16384e-6),
    G(65536e-6),
    H(262144e-6);

    /** n0, cycle/m. */
    public static final double REFERENCE = 0.1;

    private static final double LOWEST = 0.011;
    private static final double HIGHEST = 2.83;
    private static final double[] NO_CORNERS = {};

    private final double roughness;

    RoadClass(double roughness) {
        this.roughness = roughness;
    }

    /** Geometric mean of the class, Gd(n0), m³. */
    public double roughness() {
        return roughness;
    }

    /** Where the class ends towards the rougher ones: twice the mean, m³. */
    public double upperLimit() {
        return 2 * roughness;
    }

    @Override
    public double lowest() {
        return LOWEST;
    }

    @Override
    public double highest() {
        return HIGHEST;
    }

    @Override
    public double density(double spatialFrequency) {
        double over = REFERENCE / spatialFrequency;
        return roughness * over * over;
    }

    @Override
    public double[] corners() {
        return NO_CORNERS;
    }
}
