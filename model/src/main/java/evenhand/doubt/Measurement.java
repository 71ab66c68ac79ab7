package evenhand.doubt;

/**
 * An input worth measuring better.
 *
 * @param tolerance that it has now
 * @param halfWidth that a workshop's better measurement leaves, SI
 * @param low end of the first figure's interval afterwards, SI
 * @param high end of it
 */
public record Measurement(Tolerance tolerance, double halfWidth, double low, double high) {}
