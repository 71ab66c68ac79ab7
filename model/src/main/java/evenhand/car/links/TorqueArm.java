package evenhand.car.links;

/**
 * An arm that is part of the axle and keeps it from turning about its own line.
 *
 * @param hanger where its drop link hangs on the body
 * @param end its front end, part of the axle
 * @param dropLink the rod between both
 */
public record TorqueArm(MiddlePoint hanger, MiddlePoint end, Rod dropLink) {
    public TorqueArm {
        dropLink.fits(hanger.distanceTo(end), "end");
    }
}
