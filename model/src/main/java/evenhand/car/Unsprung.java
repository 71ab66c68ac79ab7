package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

/** Mass of a whole axle that the springs do not carry, kg, and the height of its centre, m. */
public record Unsprung(double mass, double height) {
    public Unsprung {
        require(mass > 0, "unsprungMass", "must be above zero");
        require(height > 0, "unsprungHeight", "must be above the ground");
    }

    Unsprung lower(double by) {
        return new Unsprung(mass, height - by);
    }
}
