package evenhand.words.loads;

import evenhand.structure.CarLoads;
import evenhand.structure.MountFigure;
import evenhand.structure.Peak;
import evenhand.structure.WorstMember;
import evenhand.structure.WorstMount;
import java.util.ArrayList;
import java.util.List;

/**
 * What the worst of a part is in one set-up and in another.
 *
 * @param part a member such as {@code rear.upperRod}, or the name of a mount
 * @param figure of a member its greatest force
 */
public record LoadsDifference(String part, boolean isMount, MountFigure figure, double base, double value) {
    public double difference() {
        return value - base;
    }

    /** Of parts that both have, in the order of the second. */
    public static List<LoadsDifference> between(CarLoads base, CarLoads other) {
        List<LoadsDifference> all = new ArrayList<>();
        List<WorstMember> members = base.worstMembers();
        for (WorstMember member : other.worstMembers()) {
            members.stream()
                    .filter(before -> before.part().equals(member.part()))
                    .findFirst()
                    .ifPresent(before -> all.add(new LoadsDifference(
                            member.part(),
                            false,
                            MountFigure.TOTAL,
                            before.greatest().value(),
                            member.greatest().value())));
        }
        List<WorstMount> mounts = base.worstMounts();
        for (WorstMount mount : other.worstMounts()) {
            for (WorstMount before : mounts) {
                if (before.mount().equals(mount.mount())) {
                    mount.peaks().forEach((figure, peak) -> {
                        Peak was = before.peaks().get(figure);
                        if (was != null) {
                            all.add(new LoadsDifference(mount.mount(), true, figure, was.value(), peak.value()));
                        }
                    });
                }
            }
        }
        return List.copyOf(all);
    }
}
