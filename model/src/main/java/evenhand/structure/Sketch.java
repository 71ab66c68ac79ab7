package evenhand.structure;

import evenhand.car.End;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A member before its forces are known: what each of its ends does per unit of the unknowns. */
final class Sketch {
    /** Per unit of one unknown. */
    private record Share(int end, int unknown, Vector3D force, Vector3D moment) {}

    private record Joint(String end, String on, Vector3D at) {}

    private final String member;
    private final List<Joint> joints = new ArrayList<>();
    private final List<Vector3D> known = new ArrayList<>();
    private final List<Share> shares = new ArrayList<>();
    private final List<double[]> along = new ArrayList<>(); // unknown, sign
    private double alongKnown;
    private boolean hasLine;

    Sketch(String member) {
        this.member = member;
    }

    String member() {
        return member;
    }

    /** Adds an end; its number. */
    int end(String end, String on, Vector3D at) {
        joints.add(new Joint(end, on, at));
        known.add(Vector3D.ZERO);
        return joints.size() - 1;
    }

    void pushes(int end, int unknown, Vector3D force) {
        shares.add(new Share(end, unknown, force, Vector3D.ZERO));
    }

    void turns(int end, int unknown, Vector3D moment) {
        shares.add(new Share(end, unknown, Vector3D.ZERO, moment));
    }

    void pushes(int end, Vector3D force) {
        known.set(end, known.get(end).add(force));
    }

    /** It works along one line, and this unknown is its tension, or with the other sign its push. */
    void along(int unknown, double sign) {
        hasLine = true;
        along.add(new double[] {unknown, sign});
    }

    /** The same of a known tension, N. */
    void along(double tension) {
        hasLine = true;
        alongKnown += tension;
    }

    MemberLoad load(End axle, double[] unknowns, boolean handSum) {
        List<EndLoad> ends = new ArrayList<>();
        for (int i = 0; i < joints.size(); i++) {
            Joint joint = joints.get(i);
            Vector3D force = known.get(i);
            Vector3D moment = Vector3D.ZERO;
            for (Share share : shares) {
                if (share.end() == i) {
                    force = force.add(unknowns[share.unknown()], share.force());
                    moment = moment.add(unknowns[share.unknown()], share.moment());
                }
            }
            ends.add(new EndLoad(joint.end(), joint.on(), joint.at(), force, moment));
        }
        double tension = alongKnown;
        for (double[] each : along) {
            tension += each[1] * unknowns[(int) each[0]];
        }
        return new MemberLoad(
                axle, member, hasLine ? OptionalDouble.of(tension) : OptionalDouble.empty(), ends, handSum);
    }
}
