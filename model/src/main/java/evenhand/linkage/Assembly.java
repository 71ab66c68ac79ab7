package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.LinkedWheels;
import java.util.List;
import java.util.Optional;

/** What comes of putting an axle together by its points: one that stands at rest, or why there is none. */
public sealed interface Assembly permits Assembly.Standing, Assembly.Free, Assembly.OutOfReach {
    /**
     * An axle at rest.
     *
     * @param hold how well its links hold a live axle
     */
    record Standing(AxleLinkage linkage, Optional<Hold> hold) implements Assembly {}

    /** Links that leave the axle free to move; of a wheel, that hold it twice in one way, the list is empty. */
    record Free(List<Freedom> ways) implements Assembly {
        public Free {
            ways = List.copyOf(ways);
        }
    }

    /** Links that cannot be made so long, or do not let the body down so far. */
    record OutOfReach(Reach.Stage stage, double far) implements Assembly {}

    /** Puts an axle together. */
    static Assembly of(LinkedAxle axle) {
        return axle instanceof LinkedLiveAxle live ? ofLive(live) : ofWheels((LinkedWheels) axle);
    }

    private static Assembly ofLive(LinkedLiveAxle given) {
        LiveAxlePose pose = new LiveAxlePose(given);
        boolean leaves = given.links().leaf().isPresent();
        List<Freedom> free = Hold.free(pose.heldSlopes(), leaves, given.stance());
        if (!free.isEmpty()) {
            return new Free(free);
        }
        if (!pose.measured()) {
            return new Free(List.of(Freedom.SIDEWAYS));
        }
        Hold hold = Hold.of(pose, given.stance());
        if (!hold.holds()) {
            return new Free(List.of(hold.where()));
        }
        Reach reach = pose.toRest();
        return reach.isRest()
                ? new Standing(new LiveAxleLinkage(pose), Optional.of(hold))
                : new OutOfReach(reach.stage(), reach.far());
    }

    private static Assembly ofWheels(LinkedWheels given) {
        WheelPose[] poses = new WheelPose[2];
        for (Side side : Side.values()) {
            WheelPose pose = new WheelPose(given, side);
            if (!pose.measured()) {
                return new Free(List.of());
            }
            Reach reach = pose.toRest();
            if (!reach.isRest()) {
                return new OutOfReach(reach.stage(), reach.far());
            }
            poses[side.index()] = pose;
        }
        return new Standing(new WheelPairLinkage(given, poses[0], poses[1]), Optional.empty());
    }
}
