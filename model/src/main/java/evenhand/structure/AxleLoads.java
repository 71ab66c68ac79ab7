package evenhand.structure;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * An axle in equilibrium.
 *
 * @param leftTravel of the wheel, bump positive, m
 * @param acts all that acts on it from outside its members
 * @param springPulls whether a spring would have to pull
 */
public record AxleLoads(
        double leftTravel, double rightTravel, List<Act> acts, List<MemberLoad> members, boolean springPulls) {
    public AxleLoads {
        acts = List.copyOf(acts);
        members = List.copyOf(members);
    }

    AxleLoads times(double factor) {
        return new AxleLoads(
                leftTravel,
                rightTravel,
                acts.stream().map(act -> act.times(factor)).toList(),
                members.stream().map(member -> member.times(factor)).toList(),
                springPulls);
    }

    AxleLoads moved(Vector3D by) {
        return new AxleLoads(
                leftTravel,
                rightTravel,
                acts.stream().map(act -> act.moved(by)).toList(),
                members.stream().map(member -> member.moved(by)).toList(),
                springPulls);
    }
}
