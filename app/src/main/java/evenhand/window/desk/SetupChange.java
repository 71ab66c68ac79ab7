package evenhand.window.desk;

import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.choice.Change;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.ChangeWords;
import evenhand.words.InPrint;
import java.util.List;

/**
 * One change of a set-up against what it is based on.
 *
 * @param path of the value
 * @param words old and new, with units
 */
public record SetupChange(String path, String words) {
    /** The changes of a set-up against the one it is based on, or against the car as measured. */
    public static List<SetupChange> of(Scenario scenario, Setup setup) {
        Entries before =
                setup.basedOn().flatMap(scenario::setup).map(Setup::entries).orElse(scenario.car());
        return Catalogue.differences(before, setup.entries()).stream()
                .map(difference -> {
                    Change change = Change.of(difference);
                    return new SetupChange(change.path(), ChangeWords.name(change) + ": " + wasAndIs(change));
                })
                .toList();
    }

    /** Old and new of a change: "was 255 mm, is 275 mm". */
    public static String wasAndIs(Change change) {
        String[] sides = InPrint.given(ChangeWords.fromTo(change)).split(" → ", -1);
        return sides.length == 2 ? "was " + given(sides[0]) + ", is " + given(sides[1]) : "is another";
    }

    private static String given(String side) {
        return side.equals(ChangeWords.NONE) ? "not given" : side;
    }
}
