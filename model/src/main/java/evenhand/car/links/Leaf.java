package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

/**
 * One leaf spring of a live axle.
 *
 * @param frontEye on the body
 * @param rearEye lower end of the shackle, as measured
 * @param shackle the shackle's pivot on the body
 * @param seat on the axle
 */
public record Leaf(Point frontEye, Point rearEye, Point shackle, Point seat) {
    public Leaf {
        require(frontEye.ahead() > seat.ahead(), "frontEye", "must stand ahead of the seat");
        require(rearEye.ahead() < seat.ahead(), "rearEye", "must stand behind the seat");
        require(frontEye.sideDistanceTo(seat) >= Rod.SHORTEST, "frontEye", Rod.TOO_SHORT);
        require(rearEye.sideDistanceTo(seat) >= Rod.SHORTEST, "rearEye", Rod.TOO_SHORT);
        require(shackle.sideDistanceTo(rearEye) >= Rod.SHORTEST, "shackle", Rod.TOO_SHORT);
    }
}
