package evenhand.structure;

import evenhand.car.Side;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One side of an axle where it stands in a case.
 *
 * @param part that the wheel goes with
 * @param carried where a point of that part is, that was measured at a place
 */
record Station(Side side, String part, Vector3D centre, Vector3D contact, UnaryOperator<Vector3D> carried) {
    /** Behind the name of what acts on it. */
    static String words(Side side) {
        return side == Side.LEFT ? " left" : " right";
    }
}
