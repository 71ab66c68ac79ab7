package evenhand.structure;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What a mount takes in one case.
 *
 * @param at where the forces are gathered
 * @param force sum of those of the ends it carries, N
 * @param moment of those ends about it, N·m
 * @param along part of the force along its face's direction, N
 * @param across the rest of it, N
 * @param ratedUsed total over the rated load
 */
public record MountLoad(
        String mount,
        Vector3D at,
        Vector3D force,
        Vector3D moment,
        double along,
        double across,
        Optional<OfPin> pin,
        Optional<OfSpread> spread,
        Optional<OfEye> eye,
        Optional<OfBeam> beam,
        OptionalDouble ratedUsed) {
    /** N. */
    public double total() {
        return force.getNorm();
    }

    /** Bending N·m, stresses Pa; {@code yieldUsed} where the steel is known. */
    public record OfPin(
            double bending,
            double bendingStress,
            double shearStress,
            double tensionStress,
            double combinedStress,
            OptionalDouble yieldUsed) {}

    /** m², Pa; {@code edgeShear} where the sheet's thickness is known. */
    public record OfSpread(double area, double pressure, double greatestPressure, OptionalDouble edgeShear) {}

    /** A rubber eye: how far it is turned, rad, and the moment that takes, N·m. */
    public record OfEye(double angle, double moment) {}

    /** What the beam does to its supports, N, and the moment about its own line that both must hold together, N·m. */
    public record OfBeam(Vector3D left, Vector3D right, double twist) {}
}
