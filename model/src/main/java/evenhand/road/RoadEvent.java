package evenhand.road;

/** Something on the road, as each wheel meets it: square edges are rounded by the wheel that rolls over them. */
@FunctionalInterface
public interface RoadEvent {
    /**
     * The path of the wheel.
     *
     * @param loadedRadius of the wheel, m
     * @throws evenhand.quantity.InvalidValue where a wheel of this radius cannot get over it
     */
    Profile under(double loadedRadius);
}
