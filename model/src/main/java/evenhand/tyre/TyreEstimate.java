package evenhand.tyre;

import evenhand.quantity.Unit;

/**
 * What a tyre is likely to do, from its size, kind and pressure, where nobody has measured it. Each value is a guess with a wide
 * tolerance, good for comparing set-ups of one car and poor for absolute balance; it is listed in every answer.
 */
public final class TyreEstimate {
    /** Load at which the other estimates are stated, N: about that of a car's tyre. A choice, no measurement. */
    public static final double REFERENCE_LOAD = 3500;

    private TyreEstimate() {}

    /**
     * Vertical rate, N/m, with {@code p} pressure (kPa), {@code SN} section width (mm), {@code AR} aspect (%), {@code DR} rim (mm):
     * <pre>  k = 0.00028·p·√((1.03 − 0.004·AR)·SN·(SN·AR/50 + DR)) + 3.45  in kgf/mm </pre>
     * A cross-ply tyre is stiffer by a quarter.
     *
     * <p>Source: Rhyne 2005, Tire Science and Technology 33(3), whose coefficients were taken from memory; the quarter is common
     * practice (1.15 to 1.35), no source.
     *
     * @param pressure above the air's, Pa
     */
    public static double verticalRate(TyreSize size, TyreKind kind, double pressure) {
        double width = size.width() * 1000;
        double aspect = size.aspect() * 100;
        double rim = size.rim() * 1000;
        double patch = (1.03 - 0.004 * aspect) * width * (width * aspect / 50 + rim);
        double radial = (0.00028 * pressure / 1000 * Math.sqrt(patch) + 3.45) * Unit.GRAVITY * 1000;
        return kind == TyreKind.CROSS_PLY ? 1.25 * radial : radial;
    }

    /** Height of the wheel's centre under load, m: 96.5 % of the free radius. Common practice, no source. */
    public static double loadedRadius(TyreSize size) {
        return 0.965 * size.freeRadius();
    }

    /**
     * Cornering stiffness at a load, N/rad: the kind's cornering coefficient times the load.
     *
     * <p>Coefficients per degree: the middle of the ranges of Gillespie 1992 ch. 6 for cross-ply and radial tyres; later kinds by
     * common practice, no source.
     */
    public static double corneringStiffness(TyreKind kind, double load) {
        double perDegree = switch (kind) {
            case CROSS_PLY -> 0.11;
            case TALL_RADIAL -> 0.14;
            case TOURING_RADIAL -> 0.18;
            case PERFORMANCE_RADIAL -> 0.24;
            case SEMI_SLICK -> 0.31;
        };
        return perDegree * load / Math.toRadians(1);
    }

    /** Greatest side force over load, at a load of 3 kN on dry asphalt, taken to this load. Common practice, no source. */
    public static double friction(TyreKind kind, double load) {
        double atThreeKilonewtons = switch (kind) {
            case CROSS_PLY -> 0.80;
            case TALL_RADIAL -> 0.85;
            case TOURING_RADIAL -> 0.93;
            case PERFORMANCE_RADIAL -> 1.04;
            case SEMI_SLICK -> 1.25;
        };
        return atThreeKilonewtons * Math.max(0.5, 1 - lossPerKilonewton(kind) * (load - 3000) / 1000);
    }

    /** Part of the friction that is lost per reference load of extra load. Common practice, no source. */
    public static double frictionLoadSensitivity(TyreKind kind, double referenceLoad) {
        return lossPerKilonewton(kind) * referenceLoad / 1000;
    }

    private static double lossPerKilonewton(TyreKind kind) {
        return switch (kind) {
            case CROSS_PLY -> 0.06;
            case TALL_RADIAL, SEMI_SLICK -> 0.045;
            case TOURING_RADIAL -> 0.04;
            case PERFORMANCE_RADIAL -> 0.0375;
        };
    }

    /** Load of the greatest cornering stiffness over the reference load. Common practice, no source. */
    public static double stiffnessPeakLoadRatio(TyreKind kind) {
        return kind == TyreKind.CROSS_PLY ? 1.7 : 1.9;
    }

    /** Shape C of the side force. Source: Bakker, Nyborg and Pacejka 1987 (SAE 870421): 1.30. */
    public static double shape() {
        return 1.3;
    }

    /** Curvature E of the side force: a rounder peak for a cross-ply. Common practice, no source. */
    public static double curvature(TyreKind kind) {
        return kind == TyreKind.CROSS_PLY ? 0 : -0.6;
    }
}
