package evenhand.turn;

/**
 * One wheel in the turn. Forces along the car's axes, N; angles rad, to the left positive, lean to the right positive.
 *
 * @param load of the tyre, N
 * @param lateralForce along the car's y axis, N
 * @param longitudinalForce along the car's x axis, N
 * @param aligningMoment about z, N·m
 * @param slip α, rad, positive when it makes force to the left
 * @param steer rad
 * @param lean to the right, rad
 * @param travel in bump, m; of a live axle at the track
 * @param gripLeftForSide e, part of the side force that drive leaves
 */
public record WheelState(
        double load,
        double lateralForce,
        double longitudinalForce,
        double aligningMoment,
        double slip,
        double steer,
        double lean,
        double travel,
        double gripLeftForSide) {
    /** The same wheel seen in a mirror: it is then on the other side of the car. */
    WheelState mirrored() {
        return new WheelState(
                load, -lateralForce, longitudinalForce, -aligningMoment, -slip, -steer, -lean, travel, gripLeftForSide);
    }
}
