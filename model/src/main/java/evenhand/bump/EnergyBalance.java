package evenhand.bump;

/**
 * Where the work of the road went, J: roadWork = damped + left.
 *
 * @param roadWork what the road did to the tyre
 * @param damped what the damper took
 * @param left energy of motion, springs, tyre and height at the end, from the balance before the event
 */
public record EnergyBalance(double roadWork, double damped, double left) {}
