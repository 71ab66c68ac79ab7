package evenhand.structure;

import evenhand.car.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What a link, spring, damper, stop or arm carries.
 *
 * @param member such as {@code lowerLinkLeft}
 * @param axial along itself, tension positive, N; of what works along one line
 * @param handSum whether it comes of an axle that is known by coefficients, so that one joint stands for its links
 */
public record MemberLoad(End axle, String member, OptionalDouble axial, List<EndLoad> ends, boolean handSum) {
    public MemberLoad {
        ends = List.copyOf(ends);
    }

    /** Such as {@code rear.lowerLinkLeft}. */
    public String part() {
        return axle.key() + "." + member;
    }

    public Optional<EndLoad> end(String name) {
        return ends.stream().filter(end -> end.end().equals(name)).findFirst();
    }

    /** The larger force of its ends, N. */
    public double greatest() {
        return ends.stream().mapToDouble(end -> end.force().getNorm()).max().orElse(0);
    }

    MemberLoad times(double factor) {
        return new MemberLoad(
                axle,
                member,
                axial.isPresent() ? OptionalDouble.of(factor * axial.getAsDouble()) : axial,
                ends.stream().map(end -> end.times(factor)).toList(),
                handSum);
    }

    MemberLoad moved(Vector3D by) {
        return new MemberLoad(
                axle, member, axial, ends.stream().map(end -> end.moved(by)).toList(), handSum);
    }

    /** This one and so many times what it has in another case more than in a third. */
    MemberLoad plus(double times, MemberLoad more, MemberLoad than) {
        List<EndLoad> sums = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            sums.add(ends.get(i).plus(times, more.ends.get(i), than.ends.get(i)));
        }
        OptionalDouble along = axial.isPresent()
                ? OptionalDouble.of(axial.getAsDouble() + times * (more.axial.orElseThrow() - than.axial.orElseThrow()))
                : axial;
        return new MemberLoad(axle, member, along, sums, handSum);
    }
}
