package evenhand.structure;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What a member does to the part that one of its ends is bolted to: +x pulls it forwards, +y to the left, +z up.
 *
 * @param end such as {@code body} or {@code top}
 * @param on the part: {@code body}, {@code axle}, {@code crank}, {@code uprightLeft}, {@code lowerArmLeft}
 * @param moment about the end itself
 */
public record EndLoad(String end, String on, Vector3D at, Vector3D force, Vector3D moment) {
    EndLoad times(double factor) {
        return new EndLoad(end, on, at, force.scalarMultiply(factor), moment.scalarMultiply(factor));
    }

    EndLoad moved(Vector3D by) {
        return new EndLoad(end, on, at.add(by), force, moment);
    }

    /** This one and so many times what another case has more than a third: their ends are the same ones. */
    EndLoad plus(double times, EndLoad more, EndLoad than) {
        return new EndLoad(
                end,
                on,
                at,
                force.add(times, more.force.subtract(than.force)),
                moment.add(times, more.moment.subtract(than.moment)));
    }
}
