package evenhand.structure;

import static evenhand.structure.Joining.vector;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.CarriedOn;
import evenhand.car.mounts.PartEnd;
import evenhand.linkage.AxleJoints;
import evenhand.linkage.Place;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Which way each member points at each of its ends in one pose, seen from the part to which that end is bolted: what a rubber eye
 * there is turned by, from one pose to another.
 */
final class EyeDirections {
    private final End end;
    private final AxleJoints joints;
    private final Map<PartEnd, Vector3D> directions = new HashMap<>();

    private EyeDirections(End end, AxleJoints joints) {
        this.end = end;
        this.joints = joints;
    }

    /** By end, unit vectors; ends without a direction of their own, as that of a crank's pivot, are not among them. */
    static Map<PartEnd, Vector3D> of(End end, AxleJoints joints) {
        EyeDirections of = new EyeDirections(end, joints);
        joints.rods().forEach(of::rod);
        joints.leaves().forEach(of::leaf);
        of.side(joints.left());
        of.side(joints.right());
        return Map.copyOf(of.directions);
    }

    private void put(String member, String at, Place from, Place to, UnaryOperator<Place> seen) {
        Place along = seen.apply(to.minus(from));
        directions.put(new PartEnd(end, member, at), vector(along).normalize());
    }

    private void rod(AxleJoints.RodAt rod) {
        UnaryOperator<Place> body = rod.pin() == AxleJoints.Pin.BODY_END ? this::fromCrank : UnaryOperator.identity();
        UnaryOperator<Place> axle = rod.pin() == AxleJoints.Pin.AXLE_END
                ? this::fromCrank
                : joints.left().carrier()::seen;
        put(rod.name(), LinksJoined.bodyEnd(rod), rod.body(), rod.moving(), body);
        put(rod.name(), LinksJoined.axleEnd(rod), rod.moving(), rod.body(), axle);
    }

    /** A crank turns about the x axis of what carries it. */
    private Place fromCrank(Place direction) {
        AxleJoints.CrankAt crank = joints.crank().orElseThrow();
        Place on = crank.onAxle() ? joints.left().carrier().seen(direction) : direction;
        double cosine = Math.cos(crank.turn());
        double sine = Math.sin(crank.turn());
        return new Place(on.x(), cosine * on.y() + sine * on.z(), -sine * on.y() + cosine * on.z());
    }

    private void leaf(AxleJoints.LeafAt leaf) {
        String name = LinksJoined.leafBody(leaf.side());
        put(name, "frontEye", leaf.frontEye(), leaf.rearEye(), UnaryOperator.identity());
        put(name, "shackle", leaf.shackle(), leaf.rearEye(), UnaryOperator.identity());
    }

    private void side(AxleJoints.SideAt at) {
        Side side = at.side();
        for (AxleJoints.ArmAt arm : at.arms()) {
            String name = Joining.part(arm.is(), side);
            put(name, "front", arm.front(), arm.outer(), UnaryOperator.identity());
            put(name, "rear", arm.rear(), arm.outer(), UnaryOperator.identity());
            put(name, "outer", arm.outer(), arm.front(), at.carrier()::seen);
        }
        at.tieRod().ifPresent(rod -> {
            put(rod.name(), "inner", rod.body(), rod.moving(), UnaryOperator.identity());
            put(rod.name(), "outer", rod.moving(), rod.body(), at.carrier()::seen);
        });
        at.strut()
                .ifPresent(strut -> directions.put(
                        new PartEnd(end, PartEnd.on(side, "strut"), "top"),
                        vector(strut.along()).normalize()));
        at.spring().ifPresent(line -> line(at, "spring", line));
        at.damper().ifPresent(line -> line(at, "damper", line));
        at.bar()
                .ifPresent(link -> put(
                        PartEnd.on(side, "barLink"),
                        "linkEnd",
                        link.linkEnd(),
                        link.armEnd(),
                        seenFrom(at, link.on())));
    }

    private void line(AxleJoints.SideAt at, String member, AxleJoints.LineAt line) {
        String name = PartEnd.on(at.side(), member);
        put(name, "top", line.top(), line.bottom(), UnaryOperator.identity());
        put(name, "bottom", line.bottom(), line.top(), seenFrom(at, line.on()));
    }

    private static UnaryOperator<Place> seenFrom(AxleJoints.SideAt at, CarriedOn on) {
        return at.arms().stream()
                .filter(arm -> arm.is() == on)
                .findFirst()
                .<UnaryOperator<Place>>map(arm -> arm.frame()::seen)
                .orElse(at.carrier()::seen);
    }
}
