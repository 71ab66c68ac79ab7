package evenhand.tyre;

import evenhand.quantity.Unit;
import java.util.OptionalDouble;

/**
 * What a tyre is likely to do, from its size, kind and pressure, where nobody has measured it. Each value is a guess with a wide
 * tolerance, good for comparing set-ups of one car and poor for absolute balance; it is listed in every answer.
 *
 * <p>Everything starts from the load that a tyre of this size is made to carry: half of that or a little more is the {@link
 * #referenceLoad}, at which a kind of tyre has its cornering coefficient and its friction. So a wide tyre holds more at the same
 * load, and a soft one less.
 */
public final class TyreEstimate {
    /** A usual rim over the width of the tyre. Common practice, no source. */
    private static final double USUAL_RIM = 0.75;
    /** The narrowest rim that any tyre of a road car is mounted on, over the tyre's width. Common practice, no source. */
    public static final double NARROWEST_RIM = 1.0 / 3;

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
     * Way of one turn over 2π, m.
     *
     * <pre>  3.05·D/(2π) of a radial, 2.99·D/(2π) of a cross-ply  </pre>
     * D overall diameter, m.
     *
     * <p>Source: ETRTO Standards Manual, from memory.
     */
    public static double rollingRadius(TyreSize size, boolean crossPly) {
        return (crossPly ? 2.99 : 3.05) * 2 * size.freeRadius() / (2 * Math.PI);
    }

    /** How the rolling radius is estimated, for an answer. */
    public static final String ROLLING_RULE =
            "from the size of the tyre: 3.05 times its overall diameter over 2 pi, 2.99 of a cross-ply; ETRTO, from memory";

    /** How far it may be off, as a part of it. Common practice, no source. */
    public static final double ROLLING_TOLERANCE = 0.015;

    /**
     * Mass that a tyre of this size is made to carry at 250 kPa, kg, with {@code w} section width (mm), {@code a} aspect as a ratio,
     * {@code d} rim (mm):
     * <pre>  Q = 6.451e-4·w^1.6414·a^0.9724·d^0.9279 </pre>
     *
     * <p>Source: a fit of ours to the load indices of standard load tyres (ETRTO Standards Manual, from memory), off by 6 % at most on
     * 46 sizes.
     */
    public static double loadCapacity(TyreSize size) {
        return 6.451e-4
                * Math.pow(size.width() * 1000, 1.6414)
                * Math.pow(size.aspect(), 0.9724)
                * Math.pow(size.rim() * 1000, 0.9279);
    }

    /**
     * Load at which the other estimates are stated, N, with {@code Q} {@link #loadCapacity} and {@code p} pressure:
     * <pre>  F0 = 0.58·g·Q·(p/220 kPa)^0.585 </pre>
     *
     * <p>Source: the exponent is that of the Tire and Rim Association's load formula (Clark, Mechanics of Pneumatic Tires, 1981, from
     * memory); the part of the capacity is common practice, no source.
     *
     * @param pressure above the air's, Pa
     */
    public static double referenceLoad(TyreSize size, double pressure) {
        return 0.58 * Unit.GRAVITY * loadCapacity(size) * Math.pow(pressure / 220e3, 0.585);
    }

    /**
     * Cornering stiffness at a reference load, N/rad:
     * <pre>  K0 = c·F0·aspect correction·rim correction </pre>
     * c the kind's cornering coefficient, 1/rad. See {@link TyreKind}, {@link #aspectCorrection}, {@link #rimCorrection}.
     */
    public static double corneringStiffness(
            TyreSize size, TyreKind kind, double referenceLoad, OptionalDouble rimWidth) {
        return kind.corneringCoefficient()
                * referenceLoad
                * aspectCorrection(size, kind)
                * (rimWidth.isPresent() ? rimCorrection(size, rimWidth.getAsDouble()) : 1);
    }

    /**
     * What a section lower than its kind's adds to the cornering stiffness, as a factor:
     * <pre>  1 + 0.005·(a0 − 100·a) </pre>
     * a0 the kind's usual aspect, %; a aspect as a ratio. Common practice, no source.
     */
    public static double aspectCorrection(TyreSize size, TyreKind kind) {
        return 1 + 0.005 * 100 * (kind.usualAspect() - size.aspect());
    }

    /**
     * What a wide rim adds to the cornering stiffness, as a factor from 0.9 to 1.1, with {@code w} the tyre's width:
     * <pre>  1 + 0.5·(rimWidth/w − 0.75) </pre>
     * Common practice, no source.
     *
     * @param rimWidth between the flanges, m
     */
    public static double rimCorrection(TyreSize size, double rimWidth) {
        return Math.max(0.9, Math.min(1.1, 1 + 0.5 * (rimWidth / size.width() - USUAL_RIM)));
    }

    /** Greatest side force over load at the reference load, on dry asphalt: the kind's. Common practice, no source. */
    public static double friction(TyreKind kind) {
        return kind.friction();
    }

    /** Part of the friction that is lost per reference load of extra load: the kind's. Common practice, no source. */
    public static double frictionLoadSensitivity(TyreKind kind) {
        return kind.frictionLoss();
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

    /**
     * Pneumatic trail at a load and no slip, m, with {@code r} free radius and {@code k} vertical rate:
     * <pre>  p = 0.28·√(2·r·F0/k) </pre>
     * The root is half the chord that the ground cuts off the free circle; the tyre touches on 0.85 of it, and the trail is a third of
     * that half length.
     *
     * <p>Source: a third by the brush model (Pacejka 2012, ch. 3); 0.85 is common practice, no source.
     *
     * @param load N
     * @param verticalRate N/m
     */
    public static double pneumaticTrail(TyreSize size, double load, double verticalRate) {
        return 0.28 * Math.sqrt(2 * size.freeRadius() * load / verticalRate);
    }

    /** Slip angle that a lean is worth, angle for angle. Source: Gillespie 1992, ch. 6, from memory. */
    public static double camberThrustRatio(TyreKind kind) {
        return kind == TyreKind.CROSS_PLY ? 0.18 : 0.06;
    }

    /** Part of the friction lost per squared lean out of the turn, 1/rad². Common practice, no source. */
    public static double frictionCamberLoss() {
        return 2.9;
    }

    /** Lean into the turn at which friction is greatest, rad: 2 degrees. Common practice, no source. */
    public static double bestLeanIn() {
        return Math.toRadians(2);
    }
}
