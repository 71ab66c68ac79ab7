package evenhand.catalogue;

import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;

/**
 * One number of a car, as it was built.
 *
 * @param path relative to the car, such as {@code rear.lateralLocator.height}
 * @param slot its declaration
 * @param si its value
 * @param tolerance half-width that the person gave, or that of the estimate; 0 if none, SI
 * @param origin where the value comes from
 * @param rule of an estimate, in words; else empty
 * @param unit that the person used, or the metric one
 */
public record Adjustable(
        String path, Slot<Double> slot, double si, double tolerance, Origin origin, String rule, Unit unit) {
    /** Where a value comes from. */
    public enum Origin {
        GIVEN,
        DEFAULT,
        ESTIMATED
    }

    /** Whether it is of what carries load alone, so that it moves no figure of turn, ride, links or of what is straight ahead. */
    public boolean isOfMount() {
        return path.startsWith(CarCatalogue.MOUNTS.key() + ".");
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** One usual step here, SI; a twentieth of the usual range where none is declared, or 5 % of the value. */
    public double step() {
        return slot.step()
                .map(step -> step.at(si))
                .filter(step -> step > 0)
                .orElseGet(() -> slot.usual()
                        .map(range -> (range.high() - range.low()) / 20)
                        .orElse(Math.abs(si) / 20));
    }

    /** The tolerance of a shop's usual measurement here, SI. */
    public double usualTolerance() {
        return slot.tolerance().at(si);
    }
}
