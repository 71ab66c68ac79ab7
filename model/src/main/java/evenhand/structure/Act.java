package evenhand.structure;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A force and a moment that act on an axle from outside its links, springs and dampers.
 *
 * @param on the part that feels it: {@code axle}, {@code uprightLeft}, {@code lowerArmLeft}
 * @param what such as {@code wheel left}
 */
public record Act(String on, String what, Vector3D at, Vector3D force, Vector3D moment) {
    static Act force(String on, String what, Vector3D at, Vector3D force) {
        return new Act(on, what, at, force, Vector3D.ZERO);
    }

    Act times(double factor) {
        return new Act(on, what, at, force.scalarMultiply(factor), moment.scalarMultiply(factor));
    }

    Act moved(Vector3D by) {
        return new Act(on, what, at.add(by), force, moment);
    }
}
