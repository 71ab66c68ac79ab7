package evenhand.linkage;

import evenhand.car.End;
import evenhand.car.links.SideView;
import java.util.OptionalDouble;

/**
 * Shares of longitudinal load transfer that the links carry, from the slopes of side-view force lines.
 *
 * <p>Source: Gillespie 1992 ch. 7; signs by the body: positive is against dive, lift or squat.
 */
final class SideForces {
    private SideForces() {}

    /** Front axle, braking: −p_f·slope·L/h, slope at C, or at W where the brakes are on the body. */
    static OptionalDouble antiDive(End end, SideView car, double atContact, double atWheel) {
        return end == End.FRONT
                ? OptionalDouble.of(-car.frontBrakeShare() * brakes(car, atContact, atWheel) * lever(car))
                : OptionalDouble.empty();
    }

    /** Rear axle, braking: (1 − p_f)·slope·L/h; a driven front's drive: −slope·L/h. */
    static OptionalDouble antiLift(End end, SideView car, double atContact, double atWheel, double drive) {
        if (end == End.REAR) {
            return OptionalDouble.of((1 - car.frontBrakeShare()) * brakes(car, atContact, atWheel) * lever(car));
        }
        return car.driven() ? OptionalDouble.of(-drive * lever(car)) : OptionalDouble.empty();
    }

    /** Driven rear axle: slope·L/h, slope at C of a live axle, at W else. */
    static OptionalDouble antiSquat(End end, SideView car, double drive) {
        return end == End.REAR && car.driven() ? OptionalDouble.of(drive * lever(car)) : OptionalDouble.empty();
    }

    private static double brakes(SideView car, double atContact, double atWheel) {
        return car.brakesAt() == SideView.BrakesAt.BODY ? atWheel : atContact;
    }

    private static double lever(SideView car) {
        return car.wheelbase() / car.cgHeight();
    }
}
