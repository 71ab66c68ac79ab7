package evenhand.scenario;

import static evenhand.quantity.InvalidValue.require;

import java.util.List;

/** People and luggage that come on top of the car as weighed. */
public record LoadCase(String name, List<Added> added) {
    /**
     * @param mass kg
     * @param behindFrontAxle m
     * @param height of its centre above the ground, m
     */
    public record Added(String what, double mass, double behindFrontAxle, double height) {}

    public LoadCase {
        added = List.copyOf(added);
        require(!name.isBlank(), "name", "is empty; give the load case a name");
    }
}
