package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

/**
 * @param ratio steering-wheel angle over reference steer
 * @param ackermannShare 1 = both front wheels aim at one turning centre, 0 = parallel
 */
public record Steering(double ratio, double ackermannShare) {
    public static final Steering USUAL = new Steering(16, 1);

    public Steering {
        require(ratio > 0, "ratio", "must be above zero");
        require(Math.abs(ackermannShare) <= 2, "ackermannShare", "must lie between -2 and 2");
    }
}
