package evenhand.structure;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.mounts.HardUse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What comes of one case of hard use, to one hand where it has hands. */
public sealed interface UseAnswer {
    HardUse use();

    /** To which hand: of a turn, or the wheels that are struck. */
    Optional<Side> hand();

    /** Name of the case, with its hand. */
    default String title() {
        return hand().map(side -> HardUse.handed(use().name(), side)).orElse(use().name());
    }

    /**
     * It has an answer.
     *
     * @param axles as they stand and what acts on them; none of a combined case, of whose axles only the members are known
     * @param members of both axles
     * @param mounts of the file
     * @param leftOut axles that the case says nothing of, and why
     */
    record Carried(
            HardUse use,
            Optional<Side> hand,
            Map<End, AxleLoads> axles,
            List<MemberLoad> members,
            List<MountLoad> mounts,
            Set<Note> notes,
            List<String> leftOut)
            implements UseAnswer {
        public Carried {
            axles = Map.copyOf(axles);
            members = List.copyOf(members);
            mounts = List.copyOf(mounts);
            notes = Set.copyOf(notes);
            leftOut = List.copyOf(leftOut);
        }

        public Optional<MemberLoad> member(String part) {
            return members.stream().filter(member -> member.part().equals(part)).findFirst();
        }

        public Optional<MountLoad> mount(String name) {
            return mounts.stream().filter(mount -> mount.mount().equals(name)).findFirst();
        }
    }

    /** There is no such state of the car: why, as a clause. */
    record NoState(HardUse use, Optional<Side> hand, String why) implements UseAnswer {}

    /** The file does not say enough for it: what is missing, as a clause. */
    record LeftOut(HardUse use, Optional<Side> hand, String why) implements UseAnswer {}
}
