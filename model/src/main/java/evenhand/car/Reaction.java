package evenhand.car;

import evenhand.car.links.SideView.BrakesAt;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How an axle takes what pulls it along the car.
 *
 * @param swingArm its side view, where it is known without the links' points
 * @param brakesAt what reacts the torque of its brakes
 * @param windUpStiffness of a live axle's leaves against turning about its own line, N·m/rad, where there are leaves
 */
public record Reaction(Optional<SwingArm> swingArm, BrakesAt brakesAt, OptionalDouble windUpStiffness) {
    /** Nothing known of it: no side-view forces. */
    public static final Reaction UNKNOWN = new Reaction(Optional.empty(), BrakesAt.WHEELS, OptionalDouble.empty());

    /** How the stiffness of leaves is estimated, for an answer. */
    public static final String WIND_UP_RULE =
            "2*rate*leafLength^2/4, of two symmetrical leaves; SAE spring manual, from memory";

    /** How far that may be off. Common practice, no source. */
    public static final double WIND_UP_TOLERANCE = 0.2;

    /**
     * Wind-up stiffness of two symmetrical leaves: each half a cantilever of half the length, half as stiff as the leaf.
     *
     * <pre>  2·k·l²/4  </pre>
     *
     * @param rate k of one spring, N/m
     * @param leafLength l between its eyes, m
     */
    public static double windUp(double rate, double leafLength) {
        return 2 * rate * leafLength * leafLength / 4;
    }
}
