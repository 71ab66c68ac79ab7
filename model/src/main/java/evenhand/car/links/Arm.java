package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

/**
 * A wishbone or lower arm of one wheel: two pivots on the body, the ball joint on the upright.
 */
public record Arm(Point front, Point rear, Point outer) {
    public Arm {
        require(
                front.distanceTo(rear) > 1e-6,
                "rear",
                "the arm's pivots stand in one place; give the two ends of the line about which it turns");
        require(outer.distanceTo(front) >= Rod.SHORTEST, "outer", Rod.TOO_SHORT);
        require(outer.distanceTo(rear) >= Rod.SHORTEST, "outer", Rod.TOO_SHORT);
    }
}
