package evenhand.tyre;

/** How a tyre is built and meant, as far as its estimates need it. */
public enum TyreKind {
    CROSS_PLY,
    TALL_RADIAL,
    TOURING_RADIAL,
    PERFORMANCE_RADIAL,
    SEMI_SLICK
}
