package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

/**
 * One end of an anti-roll bar that turns in the body about an axis across the car.
 *
 * @param pivot on the bar's axis
 * @param armEnd upper or lower end of the drop link on the bar's arm
 * @param linkEnd the drop link's other end
 * @param on the moving part that carries {@code linkEnd}
 */
public record BarArm(Point pivot, Point armEnd, Point linkEnd, CarriedOn on) {
    public BarArm {
        require(
                pivot.sideDistanceTo(armEnd) >= Rod.SHORTEST,
                "armEnd",
                "must stand at least 10 mm from the bar's axis in side view");
        require(armEnd.distanceTo(linkEnd) >= Rod.SHORTEST, "linkEnd", Rod.TOO_SHORT);
    }
}
