package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Stops;

/**
 * What an axle's springs carry and on what, to find the height at which they stand.
 *
 * @param load static load of the axle on its springs and stops, both sides together, N
 * @param rate of one spring along its line, N/m
 * @param freeLength of one spring, m
 * @param stops as they are given, from the heights as drawn
 */
public record Carried(double load, double rate, double freeLength, Stops stops) {
    public Carried {
        require(load > 0, "load", "must be above zero");
        require(rate > 0, "rate", "must be above zero");
        require(freeLength > 0, "freeLength", "must be above zero");
    }
}
