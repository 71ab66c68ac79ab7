package evenhand.linkage;

import evenhand.car.Side;
import java.util.OptionalDouble;

/**
 * What the links of an axle say where both its wheels have risen alike.
 *
 * @param dropLinkLean of a torque arm's drop link, top forwards positive, rad; absent where it does not stand upright
 * @param bumpSteer mean over both wheels of d(toe)/d(travel), toeing in as the wheel rises positive, rad/m; absent of a live
 *     axle
 */
public record LinkPlace(AxleState state, OptionalDouble dropLinkLean, OptionalDouble bumpSteer) {
    private static final String DROP_LINK = "dropLink";

    /** Of the present pose. */
    static LinkPlace of(AxleLinkage axle) {
        return new LinkPlace(axle.state(), lean(axle), bumpSteer(axle));
    }

    private static OptionalDouble lean(AxleLinkage axle) {
        return axle.links().stream()
                .filter(link -> link.name.equals(DROP_LINK))
                .map(JointedLink::presentSlopes)
                .filter(LinkSlopes.Upright.class::isInstance)
                .mapToDouble(slopes -> ((LinkSlopes.Upright) slopes).leanForward())
                .findFirst();
    }

    /** A wheel that steers to the left toes out on the left and in on the right. */
    private static OptionalDouble bumpSteer(AxleLinkage axle) {
        if (!(axle instanceof WheelPairLinkage wheels)) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (Side side : Side.values()) {
            sum -= side.sign() * wheels.wheel(side).steerByTravel();
        }
        return OptionalDouble.of(sum / Side.values().length);
    }
}
