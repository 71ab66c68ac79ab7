package evenhand.tyre;

/**
 * How a tyre is built and meant, and what is usual for such a tyre.
 *
 * <p>Cornering coefficients of cross-ply and tall radials: the middle of the ranges of Gillespie 1992 ch. 6; all else is common
 * practice, no source.
 */
public enum TyreKind {
    CROSS_PLY(0.11, 0.78, 0.21, 0.80),
    TALL_RADIAL(0.14, 0.83, 0.16, 0.80),
    TOURING_RADIAL(0.18, 0.91, 0.14, 0.65),
    PERFORMANCE_RADIAL(0.24, 1.02, 0.13, 0.50),
    SEMI_SLICK(0.31, 1.22, 0.16, 0.45);

    private final double corneringCoefficient;
    private final double friction;
    private final double frictionLoss;
    private final double usualAspect;

    TyreKind(double perDegree, double friction, double frictionLoss, double usualAspect) {
        this.corneringCoefficient = perDegree / Math.toRadians(1);
        this.friction = friction;
        this.frictionLoss = frictionLoss;
        this.usualAspect = usualAspect;
    }

    /** Cornering stiffness over load at the reference load, 1/rad, of a tyre with the usual aspect. */
    double corneringCoefficient() {
        return corneringCoefficient;
    }

    /** Greatest side force over load at the reference load, on dry asphalt. */
    double friction() {
        return friction;
    }

    /** Part of the friction that is lost per reference load of extra load. */
    double frictionLoss() {
        return frictionLoss;
    }

    /** Height of the section over its width of most tyres of this kind. */
    double usualAspect() {
        return usualAspect;
    }
}
