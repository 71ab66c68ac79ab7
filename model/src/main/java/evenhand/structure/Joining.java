package evenhand.structure;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.CarriedOn;
import evenhand.car.mounts.PartEnd;
import evenhand.linkage.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The bodies of one axle while joints, springs and acts are put to them: each way to join two is one method. */
final class Joining {
    /** Compliance of a ball joint in each direction, m/N: 10 kN/mm. Common practice, no source. */
    static final double BALL = 1e-7;

    /** The same of a leaf's eye and shackle: 2.5 kN/mm. Common practice, no source. */
    static final double LEAF_EYE = 4e-7;

    /** Compliance of a crank's pivot against tilting, rad/(N·m): a hundredth of a ball's stiffness per metre. */
    static final double PIVOT_TILT = 1e-5;

    /** What does not give, or yields without effort because its travel is given. */
    static final double NONE = 0;

    static final String SHELL = "body";
    static final String AXLE = "axle";
    static final String CRANK = "crank";

    static final List<Vector3D> ALL_WAYS = List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);

    private final End end;
    private final boolean handSum;
    private final FreeBodies bodies = new FreeBodies();
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final List<Sketch> sketches = new ArrayList<>();
    private final List<Act> acts = new ArrayList<>();

    Joining(End end, boolean handSum) {
        this.end = end;
        this.handSum = handSum;
        numbers.put(SHELL, FreeBodies.SHELL);
    }

    static Vector3D vector(Place place) {
        return new Vector3D(place.x(), place.y(), place.z());
    }

    static Place place(Vector3D vector) {
        return new Place(vector.getX(), vector.getY(), vector.getZ());
    }

    static String upright(Side side) {
        return PartEnd.on(side, "upright");
    }

    /** Name of the part of a side that carries something. */
    static String part(CarriedOn on, Side side) {
        return switch (on) {
            case AXLE -> AXLE;
            case UPRIGHT -> upright(side);
            case LOWER_ARM -> PartEnd.on(side, "lowerArm");
            case UPPER_ARM -> PartEnd.on(side, "upperArm");
        };
    }

    void body(String name, Vector3D reference) {
        numbers.put(name, bodies.body(reference));
    }

    private int number(String name) {
        Integer number = numbers.get(name);
        if (number == null) {
            throw new IllegalStateException("no part " + name);
        }
        return number;
    }

    Sketch member(String name) {
        Sketch sketch = new Sketch(name);
        sketches.add(sketch);
        return sketch;
    }

    /** Something acts on a part from outside. */
    void act(Act act) {
        acts.add(act);
        bodies.act(number(act.on()), act.at(), act.force(), act.moment());
    }

    /** Something that a member does already, told among what acts. */
    void tell(Act act) {
        acts.add(act);
    }

    /** Two ends of a thing that works along the line between them. */
    record Line(String top, String topOn, Vector3D topAt, String bottom, String bottomOn, Vector3D bottomAt) {
        /** From the bottom to the top, a unit vector. */
        Vector3D up() {
            return topAt.subtract(bottomAt).normalize();
        }
    }

    /** A rod, spring or damper whose tension is unknown; between these directions where both ends stand in one place. */
    int line(Sketch sketch, Line line, Vector3D up, double compliance, double bound) {
        int tension =
                bodies.force(number(line.bottomOn()), number(line.topOn()), line.bottomAt(), up, compliance, bound);
        int top = sketch.end(line.top(), line.topOn(), line.topAt());
        int bottom = sketch.end(line.bottom(), line.bottomOn(), line.bottomAt());
        sketch.pushes(top, tension, up.negate());
        sketch.pushes(bottom, tension, up);
        sketch.along(tension, 1);
        return tension;
    }

    void line(String member, Line line, double compliance, double bound) {
        line(member(member), line, line.up(), compliance, bound);
    }

    /** The same with a known tension, N; the acts do not list it, since members do. */
    void line(Sketch sketch, Line line, Vector3D up, double tension) {
        Vector3D pull = up.scalarMultiply(tension);
        bodies.act(number(line.bottomOn()), line.bottomAt(), pull, Vector3D.ZERO);
        bodies.act(number(line.topOn()), line.bottomAt(), pull.negate(), Vector3D.ZERO);
        int top = sketch.end(line.top(), line.topOn(), line.topAt());
        int bottom = sketch.end(line.bottom(), line.bottomOn(), line.bottomAt());
        sketch.pushes(top, pull.negate());
        sketch.pushes(bottom, pull);
        sketch.along(tension);
    }

    /** A joint of a part, which is a member itself, with another part: a force in each of some directions. */
    void joint(
            Sketch sketch, String of, String endName, String on, Vector3D at, List<Vector3D> ways, double compliance) {
        int joint = sketch.end(endName, on, at);
        for (Vector3D way : ways) {
            int force = bodies.force(number(on), number(of), at, way, compliance, 0);
            sketch.pushes(joint, force, way);
        }
    }

    /** Forces and moments between two parts that a member only stands for: told at both of its ends. */
    void clamp(
            Sketch sketch,
            String oneEnd,
            String one,
            String otherEnd,
            String other,
            Vector3D at,
            List<Vector3D> forces,
            List<Vector3D> moments) {
        int first = sketch.end(oneEnd, one, at);
        int second = sketch.end(otherEnd, other, at);
        for (Vector3D way : forces) {
            int force = bodies.force(number(other), number(one), at, way, NONE, 0);
            sketch.pushes(first, force, way.negate());
            sketch.pushes(second, force, way);
        }
        for (Vector3D about : moments) {
            int moment = bodies.moment(number(other), number(one), about, NONE);
            sketch.turns(first, moment, about.negate());
            sketch.turns(second, moment, about);
        }
    }

    /** A moment of a joint on another part. */
    void moment(Sketch sketch, int jointEnd, String of, String on, Vector3D about, double compliance) {
        int moment = bodies.moment(number(on), number(of), about, compliance);
        sketch.turns(jointEnd, moment, about);
    }

    /** A force between two parts that belongs to a member's end on the first: unknown, along a direction. */
    int unknown(String on, String from, Vector3D at, Vector3D way) {
        return bodies.force(number(on), number(from), at, way, NONE, 0);
    }

    /** A moment between two parts, unknown. */
    void unknownMoment(String on, String from, Vector3D about) {
        bodies.moment(number(on), number(from), about, NONE);
    }

    /** A known force on a part that its members tell. */
    void push(String on, Vector3D at, Vector3D force) {
        bodies.act(number(on), at, force, Vector3D.ZERO);
    }

    /** Equilibrium of every body. */
    Solved solve() {
        double[] unknowns = bodies.solve();
        List<MemberLoad> members = new ArrayList<>();
        for (Sketch sketch : sketches) {
            members.add(sketch.load(end, unknowns, handSum));
        }
        return new Solved(unknowns, acts, members);
    }

    /** What came of it. */
    record Solved(double[] unknowns, List<Act> acts, List<MemberLoad> members) {}
}
