package evenhand.window.desk;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.choice.Change;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.ChangeWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One change of a set-up against what it is based on.
 *
 * @param path of the value
 * @param words old and new, with units
 * @param brief in a few words: "front −30 mm", "front bar 310 N·m/deg"
 */
public record SetupChange(String path, String words, String brief) {
    private static final String LOWERED = ".lowered";
    private static final int DIGITS = 3;

    /** A longer word is not read out in brief. */
    private static final int LONGEST = 18;

    /** By how much these are changed says more than what they come to. */
    private static final Set<Dimension> BY_HOW_MUCH = Set.of(Dimension.LENGTH, Dimension.ANGLE);

    /** The changes of a set-up against the one it is based on, or against the car as measured, in the units of show. */
    public static List<SetupChange> of(Scenario scenario, Setup setup, Units units) {
        Optional<Setup> base = setup.basedOn().flatMap(scenario::setup);
        Entries before = base.map(Setup::entries).orElse(scenario.car());
        List<Adjustable> old = base.map(Setup::values).orElseGet(() -> Catalogue.adjustments(scenario.car()));
        return Catalogue.differences(before, setup.entries()).stream()
                .map(difference -> of(Change.of(difference), old, setup.values(), units))
                .toList();
    }

    private static SetupChange of(Change change, List<Adjustable> old, List<Adjustable> now, Units units) {
        Optional<Adjustable> from = find(old, change.path());
        Optional<Adjustable> to = find(now, change.path());
        Optional<Dimension> dimension = to.or(() -> from).map(Adjustable::dimension);
        return new SetupChange(
                change.path(),
                ChangeWords.name(change) + ": " + wasAndIs(change, dimension, units),
                brief(change, from, to, units));
    }

    private static Optional<Adjustable> find(List<Adjustable> values, String path) {
        return values.stream()
                .filter(value -> value.path().equals(path) && Double.isFinite(value.si()))
                .findFirst();
    }

    private static String brief(Change change, Optional<Adjustable> from, Optional<Adjustable> to, Units units) {
        String path = change.path();
        boolean down = path.endsWith(LOWERED);
        String name = ChangeWords.inShort(down ? path.substring(0, path.length() - LOWERED.length()) : path);
        if (to.isEmpty()) {
            String word = InPrint.given(change.to());
            return change.to().equals(ChangeWords.NONE)
                    ? "no " + name
                    : word.length() <= LONGEST && word.matches("[\\p{L} ]+") ? name + " " + word : name + " another";
        }
        Adjustable value = to.get();
        if (!BY_HOW_MUCH.contains(value.dimension()) || (from.isEmpty() && !down)) {
            return name + " " + FormField.show(value.si(), value.dimension(), units);
        }
        Unit unit = FormField.unit(value.dimension(), units);
        double more =
                unit.fromSi(value.si()) - unit.fromSi(from.map(Adjustable::si).orElse(0.0));
        double seen = down ? -more : more;
        return name + " " + (seen > 0 ? "+" : "") + Numbers.significant(seen, DIGITS) + " " + InPrint.symbol(unit);
    }

    /** Old and new of a change of a set-up, in the units of show: "was 255 mm, is 275 mm". */
    public static String wasAndIs(Change change, Setup setup, Units units) {
        return wasAndIs(change, find(setup.values(), change.path()).map(Adjustable::dimension), units);
    }

    private static String wasAndIs(Change change, Optional<Dimension> dimension, Units units) {
        String[] sides = ChangeWords.fromTo(change).split(" → ", -1);
        return sides.length == 2
                ? "was " + given(sides[0], dimension, units) + ", is " + given(sides[1], dimension, units)
                : "is another";
    }

    private static String given(String side, Optional<Dimension> dimension, Units units) {
        return side.equals(ChangeWords.NONE) ? "not given" : FormField.given(side, dimension, units);
    }
}
