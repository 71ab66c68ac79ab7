package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

/**
 * A strut: the line on which it slides is fixed to the upright and passes through its top.
 *
 * @param top on the body
 * @param bottom on the upright
 */
public record Strut(Point top, Point bottom) {
    public Strut {
        require(bottom.up() < top.up(), "bottom", "must stand below the top");
        require(top.distanceTo(bottom) >= Rod.SHORTEST, "bottom", Rod.TOO_SHORT);
    }
}
