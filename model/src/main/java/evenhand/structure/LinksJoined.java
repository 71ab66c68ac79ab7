package evenhand.structure;

import static evenhand.structure.Joining.vector;

import evenhand.car.Side;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.car.mounts.PartEnd;
import evenhand.linkage.AxleJoints;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The links of an axle known by points, put to its bodies. */
final class LinksJoined {
    private LinksJoined() {}

    /** Rods, Watt's crank, leaves and ideal locator of a live axle. */
    static void live(Joining joining, AxleJoints joints, LinkedLiveAxle given) {
        Vector3D left = vector(joints.left().centre());
        Vector3D right = vector(joints.right().centre());
        joining.body(Joining.AXLE, left.add(right).scalarMultiply(0.5));
        if (joints.crank().isPresent()) {
            joining.body(Joining.CRANK, vector(joints.crank().get().pivot()));
        }
        for (AxleJoints.RodAt rod : joints.rods()) {
            rod(joining, rod);
        }
        if (joints.crank().isPresent()) {
            crank(joining, joints.crank().get());
        }
        boolean locatorByPoints = given.locator()
                .filter(locator -> !(locator instanceof Locator.Ideal))
                .isPresent();
        for (AxleJoints.LeafAt leaf : joints.leaves()) {
            leaf(joining, leaf, joints.side(leaf.side()).carrier(), given, locatorByPoints);
        }
        if (given.locator().isPresent() && given.locator().get() instanceof Locator.Ideal ideal) {
            boolean held = ideal.byLeaves() && !joints.leaves().isEmpty();
            if (!held) {
                double measured = joints.left().carrier().measured().z();
                locator(joining, left.add(right).scalarMultiply(0.5), measured, ideal);
            }
        }
    }

    /** A rod of the live axle, with the force that binding holds in it; either end may be a pin of the crank. */
    private static void rod(Joining joining, AxleJoints.RodAt rod) {
        Joining.Line line = new Joining.Line(
                bodyEnd(rod),
                rod.pin() == AxleJoints.Pin.BODY_END ? Joining.CRANK : Joining.SHELL,
                vector(rod.body()),
                axleEnd(rod),
                rod.pin() == AxleJoints.Pin.AXLE_END ? Joining.CRANK : Joining.AXLE,
                vector(rod.moving()));
        joining.line(rod.name(), line, 1 / rod.rate(), rod.rate() * rod.stretch());
    }

    /** How a rod's end on the body, or on the crank that it carries, is named. */
    static String bodyEnd(AxleJoints.RodAt rod) {
        if (rod.name().equals(DROP_LINK)) {
            return "hanger";
        }
        return switch (rod.pin()) {
            case NONE -> "body";
            case BODY_END -> "pin";
            case AXLE_END -> "end";
        };
    }

    /** How its other end is named. */
    static String axleEnd(AxleJoints.RodAt rod) {
        if (rod.name().equals(DROP_LINK)) {
            return "end";
        }
        return switch (rod.pin()) {
            case NONE -> "axle";
            case BODY_END -> "end";
            case AXLE_END -> "pin";
        };
    }

    private static final String DROP_LINK = "dropLink";

    /** A bell-crank's pivot: three forces, and two moments across its axis. */
    private static void crank(Joining joining, AxleJoints.CrankAt crank) {
        Sketch sketch = joining.member("crankPivot");
        String on = crank.onAxle() ? Joining.AXLE : Joining.SHELL;
        joining.joint(sketch, Joining.CRANK, "pivot", on, vector(crank.pivot()), Joining.ALL_WAYS, Joining.BALL);
        Vector3D axis = vector(crank.axis());
        Vector3D across = Vector3D.PLUS_K.crossProduct(axis).normalize();
        joining.moment(sketch, 0, Joining.CRANK, on, across, Joining.PIVOT_TILT);
        joining.moment(sketch, 0, Joining.CRANK, on, axis.crossProduct(across), Joining.PIVOT_TILT);
    }

    static String leafBody(Side side) {
        return PartEnd.on(side, "leaf");
    }

    /**
     * A leaf as a body of its own: its front eye and its shackle on the shell, its seat clamped to the axle in all but what is its
     * load, the force upwards there, which is the spring's ({@link AxleStatics}). Where a locator by points holds the axle sideways
     * the leaves do not.
     */
    private static void leaf(
            Joining joining,
            AxleJoints.LeafAt leaf,
            AxleJoints.Frame axle,
            LinkedLiveAxle given,
            boolean locatorByPoints) {
        String name = leafBody(leaf.side());
        Vector3D seat = seat(leaf.side(), axle, given);
        joining.body(name, seat);
        Sketch sketch = joining.member(name);
        List<Vector3D> eye = locatorByPoints ? List.of(Vector3D.PLUS_I, Vector3D.PLUS_K) : Joining.ALL_WAYS;
        joining.joint(sketch, name, "frontEye", Joining.SHELL, vector(leaf.frontEye()), eye, Joining.LEAF_EYE);
        Vector3D hangs = vector(leaf.shackle());
        Vector3D along = hangs.subtract(vector(leaf.rearEye())).normalize();
        List<Vector3D> shackle = locatorByPoints ? List.of(along) : List.of(along, Vector3D.PLUS_J);
        joining.joint(sketch, name, "shackle", Joining.SHELL, hangs, shackle, Joining.LEAF_EYE);
        joining.unknown(Joining.AXLE, name, seat, Vector3D.PLUS_I);
        joining.unknown(Joining.AXLE, name, seat, Vector3D.PLUS_J);
        for (Vector3D about : Joining.ALL_WAYS) {
            joining.unknownMoment(Joining.AXLE, name, about);
        }
    }

    /** Where a leaf is clamped to the axle, now. */
    static Vector3D seat(Side side, AxleJoints.Frame axle, LinkedLiveAxle given) {
        var measured = given.links().leaf().orElseThrow().of(side).seat();
        return vector(
                axle.place(new evenhand.linkage.Place(measured.ahead(), side.sign() * measured.out(), measured.up())));
    }

    /**
     * A locator of which the height alone is known, {@code height + (1 + perBump)·u} in the body: it gives nothing, and holds straight
     * across the car.
     *
     * @param measured height of the wheel centres' middle where it was measured, m
     */
    private static void locator(Joining joining, Vector3D middle, double measured, Locator.Ideal ideal) {
        double rise = middle.getZ() - measured;
        Vector3D at = new Vector3D(middle.getX(), 0, ideal.height() + (1 + ideal.perBump()) * rise);
        joining.clamp(
                joining.member("lateralLocator"),
                "body",
                Joining.SHELL,
                "axle",
                Joining.AXLE,
                at,
                List.of(Vector3D.PLUS_J),
                List.of());
    }

    /** Upright, arms, tie rod of one wheel; what its strut does besides across its line is the spring's affair. */
    static void wheel(Joining joining, AxleJoints.SideAt at) {
        Side side = at.side();
        String upright = Joining.upright(side);
        joining.body(upright, vector(at.centre()));
        for (AxleJoints.ArmAt arm : at.arms()) {
            String name = Joining.part(arm.is(), side);
            joining.body(name, vector(arm.outer()));
            Sketch sketch = joining.member(name);
            joining.joint(sketch, name, "front", Joining.SHELL, vector(arm.front()), Joining.ALL_WAYS, Joining.BALL);
            joining.joint(sketch, name, "rear", Joining.SHELL, vector(arm.rear()), Joining.ALL_WAYS, Joining.BALL);
            joining.joint(sketch, name, "outer", upright, vector(arm.outer()), Joining.ALL_WAYS, Joining.BALL);
        }
        at.tieRod().ifPresent(rod -> {
            Joining.Line line = new Joining.Line(
                    "inner", Joining.SHELL, vector(rod.body()), "outer", upright, vector(rod.moving()));
            joining.line(rod.name(), line, 1 / rod.rate(), 0);
        });
    }

    /** A strut's top: two forces across its line; along it comes what is put to the sketch that is given back. */
    static Sketch strut(Joining joining, AxleJoints.StrutAt strut, Side side) {
        Sketch sketch = joining.member(PartEnd.on(side, "strut"));
        int top = sketch.end("top", Joining.SHELL, vector(strut.top()));
        Vector3D along = vector(strut.along());
        Vector3D one = along.crossProduct(Vector3D.PLUS_I).normalize();
        for (Vector3D way : List.of(one, along.crossProduct(one))) {
            int force = joining.unknown(Joining.upright(side), Joining.SHELL, vector(strut.top()), way);
            sketch.pushes(top, force, way.negate());
        }
        return sketch;
    }
}
