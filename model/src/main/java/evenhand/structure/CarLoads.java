package evenhand.structure;

import evenhand.car.Car;
import evenhand.car.Side;
import evenhand.car.mounts.HardUse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the parts of one car carry in all that it is put through.
 *
 * @param cases in the order of the list, to the left and to the right where a case has hands
 */
public record CarLoads(List<UseAnswer> cases) {
    public CarLoads {
        cases = List.copyOf(cases);
    }

    /**
     * Asks a car.
     *
     * @param car at rest, its {@code lowered} carried out
     * @param uses what it is put through; a combined case stands behind those that it is made of
     * @param radius of the circle that it corners on, m
     * @param hands left, right or both
     */
    public static CarLoads of(Car car, List<HardUse> uses, double radius, Set<Side> hands) {
        HardUseSums sums = new HardUseSums(car, radius);
        List<UseAnswer> cases = new ArrayList<>();
        List<HardUse> handed = new ArrayList<>();
        if (uses.stream().noneMatch(HardUse.Standing.class::isInstance)) {
            cases.add(sums.answer(new HardUse.Standing("Standing", 1), Optional.empty()));
        }
        for (HardUse use : uses) {
            if (isHanded(use, handed)) {
                handed.add(use);
                for (Side side : Side.values()) {
                    if (hands.contains(side)) {
                        cases.add(sums.answer(use, Optional.of(side)));
                    }
                }
            } else {
                cases.add(sums.answer(use, Optional.empty()));
            }
        }
        return new CarLoads(cases);
    }

    /** Whether a case has hands, or is made of one that has. */
    private static boolean isHanded(HardUse use, List<HardUse> handed) {
        return use.handed()
                || (use instanceof HardUse.Combined combined
                        && combined.of().stream()
                                .anyMatch(part ->
                                        HardUse.named(handed, part.name()).isPresent()));
    }

    /** Those that have an answer. */
    public List<UseAnswer.Carried> carried() {
        List<UseAnswer.Carried> carried = new ArrayList<>();
        for (UseAnswer answer : cases) {
            if (answer instanceof UseAnswer.Carried one) {
                carried.add(one);
            }
        }
        return carried;
    }

    /** The worst of each member, in the order in which they are met. */
    public List<WorstMember> worstMembers() {
        Map<String, WorstMember> worst = new LinkedHashMap<>();
        for (UseAnswer.Carried one : carried()) {
            for (MemberLoad member : one.members()) {
                worst.merge(member.part(), WorstMember.of(member, one.title()), WorstMember::or);
            }
        }
        return List.copyOf(worst.values());
    }

    /** The worst of each mount, in the order of the file. */
    public List<WorstMount> worstMounts() {
        Map<String, WorstMount> worst = new LinkedHashMap<>();
        for (UseAnswer.Carried one : carried()) {
            for (MountLoad mount : one.mounts()) {
                worst.merge(mount.mount(), WorstMount.of(mount, one.title()), WorstMount::or);
            }
        }
        return List.copyOf(worst.values());
    }
}
