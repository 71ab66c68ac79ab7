package evenhand.words.loads;

import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.Side;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.Mount;
import evenhand.scenario.Scenario;
import evenhand.structure.CarLoads;
import evenhand.structure.UseAnswer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which cases of hard use are asked, of which parts, and to which hand.
 *
 * @param uses all that the file puts the car through
 * @param usual whether they are the usual ones, for it lists none
 * @param cases names of those that are told; all where empty
 * @param parts beginnings of the members and mounts that are told; all where empty
 */
public record LoadsAsked(List<HardUse> uses, boolean usual, List<String> cases, List<String> parts, Set<Side> hands) {
    public LoadsAsked {
        uses = List.copyOf(uses);
        cases = List.copyOf(cases);
        parts = List.copyOf(parts);
        hands = Set.copyOf(hands);
    }

    /** All parts in all cases, to both hands. */
    public static LoadsAsked all(Scenario scenario) {
        return new LoadsAsked(
                scenario.hardUse(), !scenario.listsHardUse(), List.of(), List.of(), Set.of(Side.values()));
    }

    /** Radius of the circle that the car corners on, m. */
    public double radius() {
        return Trial.USUAL_RADIUS;
    }

    /** Whether single cases are asked, which are then told end by end. */
    public boolean inCases() {
        return !cases.isEmpty();
    }

    /** The same without cases that a car cannot be asked. */
    LoadsAsked without(List<HardUse> out) {
        return new LoadsAsked(uses.stream().filter(use -> !out.contains(use)).toList(), usual, cases, parts, hands);
    }

    /** @param car at rest with its load, its {@code lowered} carried out */
    CarLoads of(Car car) {
        List<UseAnswer> told = new ArrayList<>();
        for (UseAnswer answer : CarLoads.of(car, needed(), radius(), hands).cases()) {
            if (cases.isEmpty() || cases.contains(answer.use().name())) {
                told.add(answer instanceof UseAnswer.Carried carried ? ofParts(carried, car.mounts()) : answer);
            }
        }
        return new CarLoads(told);
    }

    /** The cases that are told, and those that they combine. */
    private List<HardUse> needed() {
        if (cases.isEmpty()) {
            return uses;
        }
        Set<String> names = new HashSet<>(cases);
        List<HardUse> needed = new ArrayList<>();
        for (int i = uses.size() - 1; i >= 0; i--) { // what is combined stands before what combines it
            HardUse use = uses.get(i);
            if (use instanceof HardUse.Standing || names.contains(use.name())) {
                needed.add(0, use);
                if (use instanceof HardUse.Combined combined) {
                    combined.of().forEach(part -> names.add(part.name()));
                }
            }
        }
        return needed;
    }

    private UseAnswer.Carried ofParts(UseAnswer.Carried all, List<Mount> mounts) {
        return parts.isEmpty()
                ? all
                : new UseAnswer.Carried(
                        all.use(),
                        all.hand(),
                        all.axles(),
                        all.members().stream()
                                .filter(member -> begins(member.part()))
                                .toList(),
                        all.mounts().stream()
                                .filter(load -> begins(load.mount())
                                        || mounts.stream()
                                                .filter(mount -> mount.name().equals(load.mount()))
                                                .flatMap(mount -> mount.carries().stream())
                                                .anyMatch(end -> begins(end.key())))
                                .toList(),
                        all.notes(),
                        all.leftOut());
    }

    private boolean begins(String part) {
        return parts.stream().anyMatch(part::startsWith);
    }
}
