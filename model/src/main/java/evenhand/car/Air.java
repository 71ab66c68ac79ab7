package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.OptionalDouble;

/**
 * Forces of the air, by areas: force = ½·ρ·area·V².
 *
 * @param dragArea m²
 * @param dragHeight height at which the drag acts, m; that of the centre of gravity where absent
 * @param frontLiftArea m², positive lifts the front
 * @param rearLiftArea m², positive lifts the rear
 */
public record Air(double dragArea, OptionalDouble dragHeight, double frontLiftArea, double rearLiftArea) {
    /** Density of the air, kg/m³ (15 °C at sea level). */
    public static final double DENSITY = 1.225;

    public static final Air NONE = new Air(0, OptionalDouble.empty(), 0, 0);

    public Air {
        require(dragArea >= 0, "dragArea", "must not be below zero");
        require(dragHeight.orElse(0) >= 0, "dragHeight", "must not be below the ground");
        require(Double.isFinite(frontLiftArea), "frontLiftArea", "must be finite");
        require(Double.isFinite(rearLiftArea), "rearLiftArea", "must be finite");
    }
}
