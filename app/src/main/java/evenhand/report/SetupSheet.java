package evenhand.report;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.scenario.Setup;
import evenhand.scenario.ShopRecord;
import evenhand.turn.Wheel;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything a workshop needs to set a car up again, each with what it was in the set-up before. All of it is of the car as it stands
 * at rest, {@code lowered} carried out, with what was in it when it was weighed: heights and weights of one load.
 *
 * @param freeWords of the set-up, by their heads
 */
public record SetupSheet(Setup setup, Optional<Setup> before, List<Item> items, List<Note> freeWords) {
    /** Where something is set. */
    public enum Group {
        CAR,
        /** At a wheel; on both sides alike where no side is named. */
        CORNER,
        AXLE,
        /** A link or an eye; in the middle of the car where no side is named. */
        LINK
    }

    /**
     * One thing to be set or checked.
     *
     * @param path as in the file; what is worked out has the path of what it follows from
     * @param value with its unit, or why there is none
     * @param tolerance to build it within, with its unit; empty where it is no measure to be set
     * @param usual whether that is a usual one
     * @param measurable whether it can be measured on the car, so that a box for it makes sense
     * @param before the value in the set-up before; empty where there is none
     */
    public record Item(
            Group group,
            Optional<End> end,
            Optional<Side> side,
            String path,
            String what,
            String value,
            String tolerance,
            boolean usual,
            boolean measurable,
            String before) {
        /** Whether it is another value than before. */
        public boolean changed() {
            return !before.isEmpty() && !before.equals(value);
        }

        /** The value, and what it was where that is another; its unit is said once. */
        public String told() {
            if (!changed()) {
                return value;
            }
            int unit = value.lastIndexOf(' ');
            String was = unit > 0 && before.lastIndexOf(' ') > 0 && before.endsWith(value.substring(unit))
                    ? before.substring(0, before.lastIndexOf(' '))
                    : before;
            return value + ", was " + was;
        }

        /** What it is, with its place where the path does not say it. */
        public String called() {
            if (side.isEmpty()) {
                return what;
            }
            return (end.isPresent() && group == Group.CORNER
                            ? Wheel.of(end.get(), side.get()).words()
                            : side.get().name().toLowerCase(java.util.Locale.ROOT))
                    + " " + what;
        }

        private boolean isSameThing(Item other) {
            return group == other.group && end.equals(other.end) && side.equals(other.side) && what.equals(other.what);
        }

        private Item against(String earlier) {
            return new Item(group, end, side, path, what, value, tolerance, usual, measurable, earlier);
        }

        private Item gone() {
            return new Item(group, end, side, path, what, NONE, "", false, false, value);
        }
    }

    /** Free words under their head. */
    public record Note(String head, String text) {}

    private static final String NONE = "none";

    public SetupSheet {
        items = List.copyOf(items);
        freeWords = List.copyOf(freeWords);
    }

    /** The sheet of a set-up of a job that nothing else was written down of. */
    public static SetupSheet of(Setup setup, Optional<Setup> before, Units units) {
        return of(ShopRecord.NOTHING, setup, before, units);
    }

    /** The sheet of a set-up, against the one before where there is one. */
    public static SetupSheet of(ShopRecord record, Setup setup, Optional<Setup> before, Units units) {
        Optional<Setup> other = before.filter(one -> !one.equals(setup));
        List<Item> now = new SheetReadings(record, setup, units).all();
        List<Item> was =
                other.map(one -> new SheetReadings(record, one, units).all()).orElse(List.of());
        List<Note> notes = new ArrayList<>();
        setup.sheet().forEach((head, text) -> notes.add(new Note(head, text)));
        return new SetupSheet(setup, other, other.isPresent() ? compared(now, was) : now, notes);
    }

    private static List<Item> compared(List<Item> now, List<Item> was) {
        List<Item> items = new ArrayList<>();
        for (Item item : now) {
            items.add(item.against(was.stream()
                    .filter(item::isSameThing)
                    .map(Item::value)
                    .findFirst()
                    .orElse(NONE)));
        }
        for (Item gone : was) {
            if (now.stream().noneMatch(gone::isSameThing)) {
                items.add(gone.gone());
            }
        }
        return items;
    }

    /** What is set in one kind of place. */
    List<Item> of(Group group) {
        return items.stream().filter(item -> item.group() == group).toList();
    }
}
