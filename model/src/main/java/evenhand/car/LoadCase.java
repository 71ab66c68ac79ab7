package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.List;

/**
 * People and luggage that come on top of the car as weighed, as sprung mass in its middle plane.
 *
 * @param name as it is chosen by
 */
public record LoadCase(String name, List<Added> added) {
    /**
     * One of them.
     *
     * @param mass kg
     * @param behindFrontAxle m
     * @param height of its centre above the ground in the car at rest without it, before any {@code lowered}, m
     */
    public record Added(String what, double mass, double behindFrontAxle, double height) {
        public Added {
            require(mass >= 0, "mass", "must not be below zero");
            require(Double.isFinite(behindFrontAxle), "behindFrontAxle", "must be a finite length");
            require(Double.isFinite(height), "height", "must be a finite length");
        }
    }

    public LoadCase {
        added = List.copyOf(added);
        require(!name.isBlank(), "name", "is empty; give the load case a name");
    }

    /** All that is added, kg. */
    public double mass() {
        return added.stream().mapToDouble(Added::mass).sum();
    }

    /** The part that one axle carries, kg, by moments about the other; below zero where the load lifts that end. */
    public double mass(End end, double wheelbase) {
        double rear = added.stream()
                .mapToDouble(one -> one.mass() * one.behindFrontAxle() / wheelbase)
                .sum();
        return end == End.REAR ? rear : mass() - rear;
    }
}
