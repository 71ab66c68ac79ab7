package evenhand.structure;

import evenhand.car.links.MiddlePoint;
import evenhand.car.mounts.Mount;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Closed forms of a mount: a pin in bending and shear, a washer or plate on sheet, a beam between two supports. Tightening, the
 * notches of threads and fatigue are left out.
 *
 * <p>Source: any strength text (Roark), from memory; ISO 898-1 for the areas of threads and the steels' yield.
 */
public final class MountSums {
    private MountSums() {}

    /**
     * What a mount makes of a force.
     *
     * @param at where the forces are gathered
     * @param force F, sum of the carried ends
     * @param moment M, of those about {@code at}, with a pivot's own
     * @param eye how far the rubber eye is turned
     * @param origin of the axle's points in the car, to which the beam's ends count
     */
    public static MountLoad of(
            Mount mount, Vector3D at, Vector3D force, Vector3D moment, Optional<MountLoad.OfEye> eye, Vector3D origin) {
        Vector3D n =
                new Vector3D(mount.faces().x(), mount.faces().y(), mount.faces().z());
        double along = force.dotProduct(n);
        double across = force.subtract(along, n).getNorm();
        double eyeMoment = eye.map(MountLoad.OfEye::moment).orElse(0.0);
        return new MountLoad(
                mount.name(),
                at,
                force,
                moment,
                along,
                across,
                mount.pin().map(pin -> pin(pin, n, force, moment, eyeMoment)),
                mount.spread().map(spread -> spread(spread, along, eyeMoment)),
                eye,
                mount.between().map(beam -> beam(beam, origin, at, force, moment)),
                mount.ratedLoad().isPresent()
                        ? OptionalDouble.of(force.getNorm() / mount.ratedLoad().getAsDouble())
                        : OptionalDouble.empty());
    }

    /**
     * A pin of shearing area A, d' = √(4A/π):
     *
     * <pre>
     *   bending   single shear  |overhang·n × F + M − (M·n)·n| + M_eye,  double shear  F_t·span/4 + M_eye
     *   stresses  32·bending/(π·d'³),  F_t/(p·A),  |F_n|/A,  √((bending + along)² + 3·shear²)
     * </pre>
     * F_n along the face's direction n, F_t across it, p planes that shear.
     */
    private static MountLoad.OfPin pin(Mount.Pin pin, Vector3D n, Vector3D force, Vector3D moment, double eyeMoment) {
        double along = force.dotProduct(n);
        double across = force.subtract(along, n).getNorm();
        double bending = eyeMoment
                + (pin.shear() == Mount.Shear.DOUBLE
                        ? across * pin.span() / 4
                        : n.scalarMultiply(pin.overhang())
                                .crossProduct(force)
                                .add(moment.subtract(moment.dotProduct(n), n))
                                .getNorm());
        double d = pin.effectiveDiameter();
        double bendingStress = 32 * bending / (Math.PI * d * d * d);
        double shearStress = across / (pin.planes() * pin.area());
        double tensionStress = Math.abs(along) / pin.area();
        double combined = Math.sqrt(
                (bendingStress + tensionStress) * (bendingStress + tensionStress) + 3 * shearStress * shearStress);
        return new MountLoad.OfPin(
                bending,
                bendingStress,
                shearStress,
                tensionStress,
                combined,
                pin.yield().isPresent()
                        ? OptionalDouble.of(combined / pin.yield().getAsDouble())
                        : OptionalDouble.empty());
    }

    /** Pressure |F_n|/area, at its greatest with M_eye/W more; shear of the edge |F_n|/(edge·sheet). */
    private static MountLoad.OfSpread spread(Mount.Spread spread, double along, double eyeMoment) {
        double pressure = Math.abs(along) / spread.area();
        return new MountLoad.OfSpread(
                spread.area(),
                pressure,
                pressure + eyeMoment / spread.modulus(),
                spread.sheet().isPresent()
                        ? OptionalDouble.of(Math.abs(along)
                                / (spread.edge() * spread.sheet().getAsDouble()))
                        : OptionalDouble.empty());
    }

    /**
     * A beam from the left support P to the right one Q that ends in swivels, u along it, L its length, s the place of {@code at}
     * along it:
     *
     * <pre>
     *   F_a = (F·u)·u,  F_c = F − F_a,  C = (at − foot) × F + M,  pair = C × u/L
     *   left   (1 − s)·F_c + F_a/2 − pair,   right   s·F_c + F_a/2 + pair,   twist  C·u
     * </pre>
     */
    static MountLoad.OfBeam beam(Mount.Between between, Vector3D origin, Vector3D at, Vector3D force, Vector3D moment) {
        Vector3D left = origin.add(vector(between.left()));
        Vector3D right = origin.add(vector(between.right()));
        Vector3D u = right.subtract(left).normalize();
        double length = right.subtract(left).getNorm();
        double along = at.subtract(left).dotProduct(u);
        double s = along / length;
        Vector3D axial = u.scalarMultiply(force.dotProduct(u));
        Vector3D across = force.subtract(axial);
        Vector3D foot = left.add(along, u);
        Vector3D couple = at.subtract(foot).crossProduct(force).add(moment);
        Vector3D pair = couple.crossProduct(u).scalarMultiply(1 / length);
        return new MountLoad.OfBeam(
                across.scalarMultiply(1 - s).add(0.5, axial).subtract(pair),
                across.scalarMultiply(s).add(0.5, axial).add(pair),
                couple.dotProduct(u));
    }

    static Vector3D vector(MiddlePoint point) {
        return new Vector3D(point.ahead(), point.left(), point.up());
    }
}
