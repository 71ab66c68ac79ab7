package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import java.util.Optional;

/**
 * The propeller shaft of a live axle. Slopes are those of the gearbox's and the pinion's own axes, rad: front end up, in
 * plan front end to the left.
 *
 * @param gearbox joint behind the gearbox, on the body
 * @param centre joint behind a centre bearing, on the body, where there is one
 * @param pinion joint at the pinion, on the axle
 */
public record PropShaft(
        MiddlePoint gearbox,
        double gearboxSlope,
        double gearboxPlan,
        Optional<MiddlePoint> centre,
        MiddlePoint pinion,
        double pinionSlope,
        double pinionPlan) {
    public PropShaft {
        require(Math.abs(gearboxSlope) < 1, "gearboxSlope", "must be less than 57 deg");
        require(Math.abs(gearboxPlan) < 1, "gearboxPlan", "must be less than 57 deg");
        require(Math.abs(pinionSlope) < 1, "pinionSlope", "must be less than 57 deg");
        require(Math.abs(pinionPlan) < 1, "pinionPlan", "must be less than 57 deg");
        MiddlePoint last = centre.orElse(gearbox);
        require(last.ahead() > pinion.ahead(), "pinion", "must stand behind the joint in front of it");
        require(last.distanceTo(pinion) >= Rod.SHORTEST, "pinion", Rod.TOO_SHORT);
        require(centre.isEmpty() || gearbox.ahead() > last.ahead(), "centre", "must stand behind the gearbox's joint");
    }
}
